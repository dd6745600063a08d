// A right hand's bones: where its joints are when its fingers are bent so. The left hand is its mirror image.
//
// The hand's frame: origin at the wrist's middle, x towards the fingers, y out of the back of the hand, z towards the
// little finger; the thumb lies at -z, the palm looks to -y. Metres and radians.
#pragma once

#include <array>
#include <glm/glm.hpp>

namespace proofstand::scene {

enum class Finger : int { Thumb, Index, Middle, Ring, Little };
inline constexpr int kFingers = 5;

/// How a finger is bent. Of the thumb: `aside` swings it away from the index finger along the palm, `root` lifts it
/// off the palm, `middle` and `tip` bend its two joints.
struct FingerBend {
  float aside_rad = 0.0F;   ///< positive towards the thumb
  float root_rad = 0.0F;    ///< knuckle, positive into the palm
  float middle_rad = 0.0F;  ///< middle joint
  float tip_rad = 0.0F;     ///< last joint
};
using HandBend = std::array<FingerBend, kFingers>;

/// A finger's joints from the knuckle (of the thumb: from the wrist) to the middle of its round tip, and the half
/// thickness at each.
struct FingerChain {
  std::array<glm::vec3, 4> joints{};
  std::array<float, 4> radius_m{};
  glm::vec3 along{1.0F, 0.0F, 0.0F};  ///< of the last bone, towards the tip
  glm::vec3 nail{0.0F, 1.0F, 0.0F};   ///< where its nail looks
  /// Middle of the pad that touches what the finger touches.
  [[nodiscard]] glm::vec3 pad() const;
};
using HandChains = std::array<FingerChain, kFingers>;

/// Sizes of the design hand: 183 mm long, 80 mm broad.
/// source  finger bones as shares of a hand's length, kinematics of the human hand, Ergonomics 35(3) 1992: from memory;
///         hand 183 x 80 mm between published means of men and women (Asian J. Medical Sciences 3(8) 2011); thickness
///         of fingers common practice, no source
inline constexpr float kHandLength_m = 0.183F;

FingerChain chain_of(Finger finger, const FingerBend& bend);
HandChains chains_of(const HandBend& bend);
/// Where the four long fingers begin.
glm::vec3 knuckle(Finger finger);
/// Length from knuckle to finger tip when stretched out [m]; of the thumb from its saddle joint.
float finger_length_m(Finger finger);

/// Bends a finger so that its pad comes as near as it can to a point.
/// start: bend to begin from; the last joint follows the middle one as it does in a living hand
FingerBend reach_with(Finger finger, const glm::vec3& pad, const FingerBend& start);
/// Closes a long finger round a bar along the hand's z axis until each bone touches it.
FingerBend close_round(Finger finger, const glm::vec2& bar_xy, float bar_radius_m);

}  // namespace proofstand::scene
