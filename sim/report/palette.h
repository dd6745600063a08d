// The colours of paper: one accent, one for attention; they differ in lightness and, wherever they mean something, in
// shape too, so that nothing hangs on hue. Contrast on paper is at least 4.5:1 for every text colour.
#pragma once

#include <string_view>

namespace proofstand::report {

inline constexpr std::string_view kPaper = "#FBF9F4";
inline constexpr std::string_view kGround = "#EFECE4";
inline constexpr std::string_view kInk = "#1D2A33";
inline constexpr std::string_view kSecondary = "#4B5963";
inline constexpr std::string_view kRuleLine = "#D8D3C6";
inline constexpr std::string_view kAccent = "#0B6E6E";
inline constexpr std::string_view kAccentWash = "#D7E5E1";
inline constexpr std::string_view kAttention = "#9A4A00";
inline constexpr std::string_view kAttentionWash = "#F0DFCB";

}  // namespace proofstand::report
