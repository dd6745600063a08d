// How a hand holds what it holds. A grip decides which way a drag moves the thing and how much force is behind it.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace proofstand::event {

enum class Grip : std::uint8_t {
  None,
  Fingers,    ///< a bolt, a ring, a rotor by what it was taken at
  Shaft,      ///< fingers on a tool's shaft: twirls
  Handle,     ///< hand on the handle: pulls; on an L-key the arm that is out
  End,        ///< palm on the tool's end: presses only
  Setting,    ///< fingers on a torque tool's setting handle
  Thimble,    ///< fingers on a micrometer's thimble: can squeeze too hard
  Ratchet,    ///< fingers on a micrometer's ratchet end
  Flat,       ///< rag under the fingers
  Pinched,    ///< rag folded over both faces
  Arms,       ///< rotor by its arms
  Edge,       ///< rotor by its rim edge
  Track,      ///< rotor by its braking faces
  InnerEdge,  ///< rotor by the inner edge of the track
  Tyre,       ///< wheel by its tyre
  Both,       ///< wheel in both hands
};

std::string_view words_of(Grip grip);
std::optional<Grip> grip_from_words(std::string_view words);
/// All of them, in order.
const std::vector<std::string_view>& grip_words();

}  // namespace proofstand::event
