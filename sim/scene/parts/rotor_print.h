// What is printed and etched on a rotor's printed side.
#pragma once

#include "sim/bench/setup.h"
#include "sim/scene/glyphs.h"
#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// A hair above the face, in the rotor's frame: arrow the way it turns, least thickness, diameter. Empty when it bears
/// none.
Mesh build_rotor_print(const bench::RotorPart& part, const Typeface& face);

}  // namespace proofstand::scene
