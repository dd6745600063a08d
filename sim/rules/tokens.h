// The words of a condition or a range, each with its place, so that a fault can point at its column.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/base/quantity.h"
#include "sim/base/result.h"
#include "sim/rules/spec.h"

namespace proofstand::rules {

enum class TokenKind : std::uint8_t {
  Name,    ///< hand, sheet.bolt_torque
  Number,  ///< 5, 5 N·m
  Quoted,  ///< 'bolt 4', "bolt 4"
  Sign,    ///< == != < <= > >= + - * / +- .. ( ) [ ] , and or not in
  End,
};

struct Token {
  TokenKind kind = TokenKind::End;
  std::string text;         ///< without quotes; of a number as written
  base::Quantity quantity;  ///< of a number
  std::size_t offset = 0;   ///< bytes from the start of the text
};

/// The place of a byte offset in a text.
SourcePos place_in(const Text& text, std::size_t offset);
/// "file:line:column".
std::string place_words(const SourcePos& at);

/// errors: E07 a character that means nothing here, E08 an unknown unit; `where` points at it.
base::Result<std::vector<Token>> tokens_of(const Text& text);

}  // namespace proofstand::rules
