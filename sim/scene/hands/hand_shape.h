// What a hand can look like: a few shapes, each with the spot where it holds what it holds.
#pragma once

#include <glm/glm.hpp>
#include <string_view>

#include "sim/scene/hands/hand_bones.h"

namespace proofstand::scene {

enum class HandShape : int {
  Rest,       ///< half open, at ease; also held near something
  Flat,       ///< fingers stretched side by side: a rag under them
  Touch,      ///< fore and middle finger on a spot
  Palm,       ///< heel of the palm on an end, fingers away from it
  Pinch,      ///< thumb against two fingers round something thin
  PinchMid,   ///< the same round about 18 mm: thimble, setting handle
  PinchWide,  ///< round about 27 mm: small bottles, setting handles
  Aside,      ///< two fingers and thumb from the side on a thin end that points past them
  AsideMid,   ///< the same round about 18 mm
  Sheet,      ///< thumb against two fingers, both sides of something flat
  Cloth,      ///< the same with a folded cloth between: about 8 mm
  Fist,       ///< closed round about 15 mm
  FistWide,   ///< closed round about 31 mm: handles, tyre
  Grasp,      ///< closed round about 48 mm: bottles
};
inline constexpr int kHandShapes = 14;

/// A right hand in a shape. hold: frame of what is held, in the hand's frame. Its z axis is the axis of a thing that
/// is pinched or gripped, or the outward normal of a surface that is touched; its origin lies on that axis or surface.
struct ShapedHand {
  HandChains chains;
  glm::mat4 hold{1.0F};
};
ShapedHand shape_hand(HandShape shape);
/// Diameter of what fits into a shape [m]; 0 when it closes round nothing.
float held_diameter_m(HandShape shape);

}  // namespace proofstand::scene
