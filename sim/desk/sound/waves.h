// Sounds made by code: short mono waves from decaying tones and filtered noise. The same bytes on every machine.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/desk/sound/sound_kinds.h"

namespace proofstand::desk {

inline constexpr int kWaveRate_hz = 44100;

/// 16-bit samples; between 10 ms and 0.6 s long, begins and ends at silence.
std::vector<std::int16_t> make_wave(Sound sound);

}  // namespace proofstand::desk
