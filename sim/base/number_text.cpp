#include "sim/base/number_text.h"

#include <charconv>
#include <cmath>

#include "sim/base/assert.h"

namespace proofstand::base {
namespace {

template <class... Format>
std::string written(double value, Format... format) {
  STAND_ASSERT(std::isfinite(value));
  char out[400];
  const auto end = std::to_chars(out, out + sizeof out, value + 0.0, format...);
  STAND_ASSERT(end.ec == std::errc{});
  return std::string(out, end.ptr);
}

std::string without_trailing_zeros(std::string text) {
  if (text.find('.') == std::string::npos) return text;
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

}  // namespace

std::string text_from_double(double value_1) { return written(value_1); }

std::string text_fixed(double value_1, int decimals) {
  std::string text = written(value_1, std::chars_format::fixed, decimals);
  // "-0.00" says less than "0.00"
  if (text[0] == '-' && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
  return text;
}

std::string text_for_people(double value_1, int significant_digits) {
  STAND_ASSERT(significant_digits >= 1 && significant_digits <= 15);
  const double size = value_1 < 0.0 ? -value_1 : value_1;
  if (size == 0.0) return "0";
  if (size < 1e-4 || size >= 1e9) return written(value_1, std::chars_format::scientific, significant_digits - 1);
  int whole = 0;
  for (double rest = size; rest >= 1.0; rest /= 10.0) ++whole;
  int leading = 0;
  for (double rest = size; rest < 0.1; rest *= 10.0) ++leading;
  int decimals = significant_digits - whole + leading;
  if (decimals < 0) decimals = 0;
  return without_trailing_zeros(text_fixed(value_1, decimals));
}

std::string text_from_int(std::int64_t value) {
  char out[24];
  const auto end = std::to_chars(out, out + sizeof out, value);
  return std::string(out, end.ptr);
}

std::optional<double> double_from_text(std::string_view text, bool comma_too) {
  std::string plain(text);
  if (comma_too) {
    const std::size_t comma = plain.find(',');
    if (comma != std::string::npos) {
      if (plain.find_first_of(".,", comma + 1) != std::string::npos || plain.find('.') < comma) return std::nullopt;
      plain[comma] = '.';
    }
  }
  const char* begin = plain.data();
  if (*begin == '+') ++begin;
  const char* end = plain.data() + plain.size();
  if (begin == end || (*begin != '-' && *begin != '.' && (*begin < '0' || *begin > '9'))) return std::nullopt;
  if (*begin == '-' && (begin + 1 == end || (begin[1] != '.' && (begin[1] < '0' || begin[1] > '9'))))
    return std::nullopt;
  double value = 0.0;
  const auto read = std::from_chars(begin, end, value);
  if (read.ec != std::errc{} || read.ptr != end || !std::isfinite(value)) return std::nullopt;
  return value;
}

std::optional<std::int64_t> int_from_text(std::string_view text) {
  std::int64_t value = 0;
  const char* begin = text.data();
  const char* end = begin + text.size();
  if (begin != end && *begin == '+') ++begin;
  if (begin == end || (*begin == '-' && begin != text.data())) return std::nullopt;
  const auto read = std::from_chars(begin, end, value);
  if (read.ec != std::errc{} || read.ptr != end) return std::nullopt;
  return value;
}

}  // namespace proofstand::base
