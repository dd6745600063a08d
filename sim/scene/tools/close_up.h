// An instrument by itself, its scale square to the eye: what one sees who holds it close to read it. Nothing else is in
// the picture, so that a line's place in it follows from the scale's formula (scales.h) alone.
#pragma once

#include <optional>

#include "sim/scene/tools/loose_things.h"

namespace proofstand::scene {

/// The thing that a view of a scale is of: "micrometer", "vernier", "dial", "torque scale"; else kNoThing.
event::ThingId thing_with_scale(const bench::BenchSetup& setup, std::string_view name);

/// thing: micrometer, vernier, dial gauge or click driver; nothing for others.
///
/// In the picture the scale runs to the right. At along_m = 0 its middle is where the reading is taken: the thimble's
/// edge on the datum; the vernier's zero line where both scales meet; the dial's hub; the setting handle's edge on the
/// datum.
std::optional<CloseUp> compute_close_up(const LooseThings& things, const bench::Bench& bench, event::ThingId thing,
                                        const CloseUpOf& of);

}  // namespace proofstand::scene
