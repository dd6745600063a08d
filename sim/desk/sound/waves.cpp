#include "sim/desk/sound/waves.h"

#include <algorithm>
#include <cmath>

#include "sim/base/random.h"

namespace proofstand::desk {
namespace {

// one ingredient: a decaying tone with some noise around it
struct Part {
  double start_s;
  double length_s;
  double tone_hz;
  double tone_1;  // share of full scale
  double noise_1;
  double noise_hz;  // noise is smoothed below this
  double decay_1;   // how much faster than its length it dies away
};

// figures chosen by ear, but for the click's 12 ms at 2.8 kHz; common practice, no source
std::vector<Part> parts_of(Sound sound) {
  switch (sound) {
    case Sound::Tick:
      return {{0.0, 0.018, 1900.0, 0.35, 0.10, 6000.0, 6.0}};
    case Sound::Click:
      return {{0.0, 0.012, 2800.0, 0.70, 0.20, 9000.0, 4.0}, {0.004, 0.040, 900.0, 0.25, 0.0, 1.0, 6.0}};
    case Sound::Crack:
      return {{0.0, 0.020, 700.0, 0.35, 0.80, 8000.0, 5.0}, {0.010, 0.120, 180.0, 0.40, 0.10, 1200.0, 6.0}};
    case Sound::Creak:
      return {{0.0, 0.10, 320.0, 0.20, 0.12, 900.0, 2.0}, {0.05, 0.14, 270.0, 0.22, 0.12, 900.0, 2.5}};
    case Sound::Scrape:
      return {{0.0, 0.16, 3400.0, 0.12, 0.60, 9000.0, 3.0}};
    case Sound::Grating:
      return {{0.0, 0.08, 140.0, 0.15, 0.50, 2500.0, 2.0}, {0.09, 0.09, 120.0, 0.15, 0.55, 2500.0, 2.0}};
    case Sound::Knock:
      return {{0.0, 0.15, 110.0, 0.80, 0.25, 1500.0, 6.0}};
    case Sound::DullTap:
      return {{0.0, 0.06, 210.0, 0.45, 0.10, 700.0, 7.0}};
    case Sound::Hiss:
      return {{0.0, 0.18, 5200.0, 0.04, 0.30, 12000.0, 1.5}};
    case Sound::Squeak:
      return {{0.0, 0.10, 2350.0, 0.20, 0.04, 8000.0, 2.0}};
    case Sound::Drip:
      return {{0.0, 0.05, 1250.0, 0.28, 0.0, 1.0, 5.0}};
    case Sound::Hum:
      return {{0.0, 0.20, 96.0, 0.30, 0.06, 500.0, 1.5}};
  }
  return {};
}

constexpr double kFade_s = 0.0008;  // no step at either end

}  // namespace

std::vector<std::int16_t> make_wave(Sound sound) {
  const std::vector<Part> parts = parts_of(sound);
  double length_s = 0.0;
  for (const Part& part : parts) length_s = std::max(length_s, part.start_s + part.length_s);
  std::vector<double> mix(static_cast<std::size_t>(length_s * kWaveRate_hz), 0.0);
  for (std::size_t p = 0; p < parts.size(); ++p) {
    const Part& part = parts[p];
    const auto first = static_cast<std::size_t>(part.start_s * kWaveRate_hz);
    const auto count = std::min(mix.size() - first, static_cast<std::size_t>(part.length_s * kWaveRate_hz));
    const double smooth_1 = std::min(1.0, 2.0 * 3.141592653589793 * part.noise_hz / kWaveRate_hz);
    double noise = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
      const double t_s = static_cast<double>(i) / kWaveRate_hz;
      const double share_1 = t_s / part.length_s;
      const double fade_1 = std::min({1.0, t_s / kFade_s, (part.length_s - t_s) / kFade_s});
      const double body_1 = std::exp(-part.decay_1 * share_1) * std::max(0.0, fade_1);
      const double grain = base::draw_between({1, "sound", static_cast<std::uint64_t>(sound) * 16 + p, i}, -1.0, 1.0);
      noise += smooth_1 * (grain - noise);
      mix[first + i] +=
          body_1 * (part.tone_1 * std::sin(2.0 * 3.141592653589793 * part.tone_hz * t_s) + part.noise_1 * noise);
    }
  }
  std::vector<std::int16_t> wave;
  wave.reserve(mix.size());
  for (const double sample : mix) {
    wave.push_back(static_cast<std::int16_t>(std::clamp(sample, -1.0, 1.0) * 32000.0));
  }
  return wave;
}

}  // namespace proofstand::desk
