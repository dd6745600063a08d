#include "sim/rules/tokens.h"

#include "sim/base/number_text.h"
#include "sim/base/words.h"

namespace proofstand::rules {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
// bytes of a multi-byte letter (N·m, µ, °) count as letters
bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || static_cast<unsigned char>(c) >= 0x80;
}
bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool starts(std::string_view text, std::size_t at, std::string_view with) {
  return text.substr(at, with.size()) == with;
}

// a letter, or a mark that belongs to a unit when letters follow: in-lbf, kg/m², N.m
std::size_t unit_end(std::string_view text, std::size_t at) {
  std::size_t end = at;
  if (end < text.size() && text[end] == '%') return end + 1;
  while (end < text.size()) {
    const char c = text[end];
    if (starts(text, end, "±")) break;
    const bool joins = (c == '.' || c == '-' || c == '/' || c == '*' || c == '^') && end > at &&
                       end + 1 < text.size() && is_letter(text[end + 1]);
    if (!(is_letter(c) || joins || (is_digit(c) && end > at))) break;
    ++end;
  }
  return end;
}

std::size_t number_end(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_digit(text[end])) ++end;
  // ".." is a range, not a decimal point
  if (end + 1 < text.size() && text[end] == '.' && is_digit(text[end + 1])) {
    ++end;
    while (end < text.size() && is_digit(text[end])) ++end;
  }
  return end;
}

bool is_joining_word(std::string_view word) { return word == "and" || word == "or" || word == "not"; }

class Reader {
 public:
  explicit Reader(const Text& text) : source_(text), text_(text.text) {}

  base::Result<std::vector<Token>> read() {
    while (true) {
      while (at_ < text_.size() && is_blank(text_[at_])) ++at_;
      if (at_ >= text_.size()) break;
      const char c = text_[at_];
      bool good = false;
      if (starts(text_, at_, "±")) {
        good = sign("+-", 2);
      } else if (is_digit(c)) {
        good = number();
      } else if (is_letter(c)) {
        good = name();
      } else if (c == '\'' || c == '"') {
        good = quoted(c);
      } else {
        good = symbol();
      }
      if (!good) return error_;
    }
    push(TokenKind::End, "", at_);
    return std::move(tokens_);
  }

 private:
  void push(TokenKind kind, std::string_view text, std::size_t offset) {
    tokens_.push_back(Token{kind, std::string(text), {}, offset});
  }
  bool sign(std::string_view meaning, std::size_t width) {
    push(TokenKind::Sign, meaning, at_);
    at_ += width;
    return true;
  }
  bool fail(std::string code, std::string what, std::string instead) {
    error_ = {std::move(code), place_words(place_in(source_, at_)), std::move(what), std::move(instead)};
    return false;
  }

  bool number() {
    const std::size_t start = at_;
    std::size_t end = number_end(text_, at_);
    std::size_t unit = end;
    while (unit < text_.size() && is_blank(text_[unit])) ++unit;
    const std::size_t after = unit_end(text_, unit);
    const std::string_view unit_text = text_.substr(unit, after - unit);
    if (!unit_text.empty() && !is_joining_word(unit_text)) end = after;
    const std::string_view written = text_.substr(start, end - start);
    const base::Result<base::Quantity> quantity = base::parse_quantity(written);
    if (!quantity.has_value()) return fail("E08", quantity.error().what, quantity.error().instead);
    push(TokenKind::Number, written, start);
    tokens_.back().quantity = quantity.value();
    at_ = end;
    return true;
  }

  bool name() {
    const std::size_t start = at_;
    while (at_ < text_.size()) {
      const char c = text_[at_];
      const char then = at_ + 1 < text_.size() ? text_[at_ + 1] : ' ';
      const bool joins = (c == '.' && is_letter(then)) || (c == '-' && (is_letter(then) || is_digit(then)));
      if (!(is_letter(c) || is_digit(c) || joins) || starts(text_, at_, "±")) break;
      ++at_;
    }
    const std::string_view word = text_.substr(start, at_ - start);
    push(is_joining_word(word) || word == "in" ? TokenKind::Sign : TokenKind::Name, word, start);
    return true;
  }

  bool quoted(char mark) {
    const std::size_t start = at_;
    const std::size_t end = text_.find(mark, at_ + 1);
    if (end == std::string_view::npos)
      return fail("E07", "this quotation is not closed", "close it with the same mark");
    push(TokenKind::Quoted, text_.substr(start + 1, end - start - 1), start);
    at_ = end + 1;
    return true;
  }

  bool symbol() {
    for (std::string_view two : {"==", "!=", "<=", ">=", "+-", ".."}) {
      if (starts(text_, at_, two)) return sign(two, 2);
    }
    const std::string_view one = text_.substr(at_, 1);
    if (std::string_view("<>+-*/()[],").find(one) != std::string_view::npos) return sign(one, 1);
    if (one == "=") return fail("E07", "a single = compares nothing", "write ==");
    return fail("E07", "'" + std::string(one) + "' means nothing in a condition",
                "use == != < <= > >= in and or not + - * / +- .. ( ) [ ]");
  }

  const Text& source_;
  std::string_view text_;
  std::size_t at_ = 0;
  std::vector<Token> tokens_;
  base::Error error_;
};

}  // namespace

SourcePos place_in(const Text& text, std::size_t offset) {
  SourcePos at = text.at;
  // columns count characters, not bytes
  for (std::size_t i = 0; i < offset && i < text.text.size(); ++i) {
    if (text.text[i] == '\n') {
      ++at.line;
      at.column = 1;
    } else if ((static_cast<unsigned char>(text.text[i]) & 0xC0u) != 0x80u) {
      ++at.column;
    }
  }
  return at;
}

std::string place_words(const SourcePos& at) {
  if (at.line <= 0) return at.file;
  return at.file + ":" + base::text_from_int(at.line) + ":" + base::text_from_int(at.column);
}

base::Result<std::vector<Token>> tokens_of(const Text& text) { return Reader(text).read(); }

}  // namespace proofstand::rules
