// The sounds of the workplace: a short list, so that each can be told apart by ear, by its caption and by what is seen.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

namespace proofstand::desk {

enum class Sound : std::uint8_t {
  Tick,     ///< play taken up, a start found, a ratchet's tooth
  Click,    ///< a torque tool lets go
  Crack,    ///< old locker breaks
  Creak,    ///< it gives way slowly
  Scrape,   ///< a tool slips, a pick drags
  Grating,  ///< a crossed thread
  Knock,    ///< a rotor slips on its bolts
  DullTap,  ///< a tool at full depth; a thing set down
  Hiss,     ///< a rotor rubs
  Squeak,   ///< cloth on a clean dry face
  Drip,     ///< a drop falls
  Hum,      ///< a patch drags
};

/// What captions call it: the sound, never its meaning. English; the catalogue translates it.
std::string_view caption_of(Sound sound);
/// All of them, in order.
const std::vector<Sound>& all_sounds();

}  // namespace proofstand::desk
