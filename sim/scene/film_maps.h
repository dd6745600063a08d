// Films on braking faces and patches as the eye sees them.
#pragma once

#include "sim/bench/bench.h"
#include "sim/scene/scene.h"

namespace proofstand::scene {

/// One face of a rotor, now: alcohol dries from its value and tick. [kRings x kSectors], angles as seen at that face.
/// thin films show as a loss of gloss, dust as grey; what a clean eye would not see maps to 0.
FilmMap compute_film(const bench::FaceState& face, base::Tick tick);
/// The same scale for a single patch.
glm::u8vec4 film_look(const bench::FilmCell& cell, base::Tick tick);

}  // namespace proofstand::scene
