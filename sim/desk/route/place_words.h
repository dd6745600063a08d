// Places as words: thing, number, part, where. No state, no judgement.
#pragma once

#include <string>

#include "sim/desk/route/sight.h"

namespace proofstand::desk::route {

/// "bolt 4, head", "old rotor, outer face, track". Numbers as on the bench's table.
std::string words_of_place(const scene::ScenePlace& place, const bench::Bench& bench);
/// The same with where the point lies as one looks now: "..., upper left"; for places too small to say, without.
std::string words_of_point(const scene::ScenePlace& place, const bench::Bench& bench, const hand::Lens& lens,
                           const glm::vec3& world);
/// One of eight directions of the window: "right", "upper right", ... x to the right, y downwards [pt].
std::string direction_words(double x_pt, double y_pt);

}  // namespace proofstand::desk::route
