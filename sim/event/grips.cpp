#include "sim/event/grips.h"

namespace proofstand::event {

const std::vector<std::string_view>& grip_words() {
  static const std::vector<std::string_view> words = {
      "none", "fingers", "shaft", "handle", "end",   "setting",    "thimble", "ratchet",
      "flat", "pinched", "arms",  "edge",   "track", "inner edge", "tyre",    "both hands",
  };
  return words;
}

std::string_view words_of(Grip grip) { return grip_words()[static_cast<std::size_t>(grip)]; }

std::optional<Grip> grip_from_words(std::string_view words) {
  const std::vector<std::string_view>& all = grip_words();
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i] == words) return static_cast<Grip>(i);
  }
  return std::nullopt;
}

}  // namespace proofstand::event
