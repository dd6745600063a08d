// Numbers as text and back: the only place that does it. Shortest round trip, the same text on every machine.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace proofstand::base {

/// Shortest decimal text that reads back to the same double; never locale-dependent. value must be finite (asserted).
std::string text_from_double(double value_1);
/// A rounded figure for people: significant digits, no exponent within 1e-4..1e9, '-' as U+2212 only in screens.
std::string text_for_people(double value_1, int significant_digits);
/// Fixed decimals, e.g. (1.5, 2) -> "1.50".
std::string text_fixed(double value_1, int decimals);
std::string text_from_int(std::int64_t value);
/// The whole text must be one decimal number ("." or "," as decimal mark when comma_too); no inf, no nan, no hex.
std::optional<double> double_from_text(std::string_view text, bool comma_too = false);
/// The whole text must be one decimal integer that fits.
std::optional<std::int64_t> int_from_text(std::string_view text);

}  // namespace proofstand::base
