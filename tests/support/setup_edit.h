// Changing one datum of a workplace by words, for cases kept as text: "bolt new bolt 3: length = 16 mm",
// "boss 2: dirt = 0.05 mm", "tool click driver: bias = 1.5", "rotor old rotor: stamp = 1.3 mm", "hands: strength = 20
// %".
#pragma once

#include <string_view>

#include "sim/base/result.h"
#include "sim/bench/setup.h"

namespace proofstand::testing {

/// errors: a thing or datum that is not known, a value of another kind
base::Result<base::Done> edit_setup(bench::BenchSetup& setup, std::string_view words);

}  // namespace proofstand::testing
