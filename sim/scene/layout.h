// Where everything stands and lies: one table for furniture, things put away, and hands at rest. World frame, metres.
#pragma once

#include <glm/glm.hpp>

#include "sim/bench/bench.h"

namespace proofstand::scene {

/// Heights and middles. The wheel stand stands on the bench so that the wheel's hub is the origin.
inline constexpr float kBenchTop_y = -0.365F;  ///< upper face of the bench top: room for the tyre and a hand's breadth
inline constexpr float kFloor_y = kBenchTop_y - 0.95F;
inline constexpr float kBenchLeft_x = 0.78F;    ///< ends and edges of the top: the mechanic's left ...
inline constexpr float kBenchRight_x = -0.62F;  ///< ... right ...
inline constexpr float kBenchNear_z = -0.48F;   ///< ... near ...
inline constexpr float kBenchFar_z = 0.24F;     ///< ... and far
inline constexpr float kWall_z = 1.15F;         ///< the workshop's wall behind

/// The fork's axle when the bike hangs in the work stand beside the bench, to the mechanic's right; the bike points to
/// +x.
inline constexpr glm::vec3 kBikeAxle{-1.08F, -0.10F, 0.0F};
/// Hub of a wheel that both hands hold, before the mechanic.
inline constexpr glm::vec3 kHeldWheel{-0.42F, 0.02F, -0.42F};

/// The tray on the bench: middle of its floor, inside size. Its long side lies along x, compartments from left to
/// right.
inline constexpr glm::vec3 kTrayMiddle{0.50F, kBenchTop_y + 0.003F, -0.27F};
inline constexpr glm::vec2 kTraySize{0.36F, 0.24F};
inline constexpr float kTrayRim_m = 0.022F;

/// A spot to lie on: x and z of the frame lie in the surface, y looks up.
/// The pose of a thing that is put away (tray or bench): its own frame to world. Lying parts have their z axis along
/// the surface or upwards as `upright` says.
struct Spot {
  glm::vec3 at{0.0F};       ///< the point of the surface under its middle
  float turn_rad = 0.0F;    ///< about y
  glm::mat4 frame() const;  ///< x along, y up, z across
};

/// Where a thing lies when it is in the tray, standing on the bench or laid there. The same for the same thing,
/// whatever else lies about.
Spot spot_of(const bench::BenchSetup& setup, event::ThingId thing);
/// Where a rotor lies on the bench top.
Spot rotor_spot(const bench::BenchSetup& setup, event::ThingId rotor);
/// Job card and maker's sheet: flat on the bench, left of the tray or right of the stand.
Spot card_spot();
Spot sheet_spot();

/// Where a hand rests when it has nothing to do, and where it holds what it holds: the frame's origin is the point
/// between thumb and fingers, z looks towards the mechanic, y up.
glm::mat4 hand_home(event::HandId hand);
/// The same beside the bike, where the wheel in the bike is worked on.
glm::mat4 hand_home_at_bike(event::HandId hand);

}  // namespace proofstand::scene
