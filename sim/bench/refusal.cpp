#include "sim/bench/refusal.h"

#include <array>

namespace proofstand::bench {

std::string_view code_of(Refusal refusal) {
  static constexpr std::array<std::string_view, 21> codes = {
      "wheel_in_bike", "both_hands_needed", "hand_full",     "hand_empty",      "does_not_fit",
      "covered",       "out_of_reach",      "locked",        "tool_in_the_way", "not_a_number",
      "bolts_hold_it", "no_such_place",     "already_there", "nothing_to_do",   "busy",
      "rotor_missing", "hole_taken",        "handed_over",   "would_fall",      "not_part_of_this_job",
      "wheel_turning"};
  return refusal == Refusal::None ? std::string_view{} : codes[static_cast<std::size_t>(refusal)];
}

}  // namespace proofstand::bench
