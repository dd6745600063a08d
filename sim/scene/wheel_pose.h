// Frames of the wheel and of what sits on it, from bench state.
#pragma once

#include <glm/glm.hpp>

#include "sim/bench/bench.h"

namespace proofstand::scene {

/// Wheel to world: where the wheel is (stand, bike, hands) and how far it has turned.
glm::mat4 wheel_pose(const bench::Bench& bench);
/// Wheel to world but for its turning: what stands still beside it.
glm::mat4 wheel_stands(const bench::Bench& bench);
/// The disc side's frame in the wheel: origin in the middle of the seat, z out of it (to the mechanic), x where angles
/// start, to the mechanic's right.
glm::mat4 disc_frame();
/// The rotor on the hub: its own frame (origin in the middle of its inner face, z out of its printed side) to world.
/// Play, tilt while it hangs loose or is locked askew, and which side is out.
glm::mat4 rotor_on_hub_pose(const bench::Bench& bench);
/// Bolt position k, origin in the hole's mouth, z out; in the wheel.
glm::mat4 hole_frame(const bench::BenchSetup& setup, std::size_t position);
/// The bolt in a hole: its own frame (origin under the head, z out of the head) to world.
glm::mat4 bolt_in_hole_pose(const bench::Bench& bench, std::size_t position);

}  // namespace proofstand::scene
