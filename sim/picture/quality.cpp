#include "sim/picture/quality.h"

#include <algorithm>
#include <cmath>

namespace proofstand::picture {
namespace {

constexpr double kWanted_s = 0.033;  // 30 pictures a second
constexpr float kStep = 1.0F / 16.0F;

}  // namespace

bool is_software(std::string_view renderer) {
  for (const std::string_view name : {"llvmpipe", "softpipe", "SwiftShader", "Software Rasterizer"}) {
    if (renderer.find(name) != std::string_view::npos) return true;
  }
  return false;
}

float DraftScale::next(double frame_s) {
  // one slow frame says little; a row of them does
  mean_s_ = mean_s_ == 0.0 ? frame_s : mean_s_ + 0.35 * (frame_s - mean_s_);
  if (mean_s_ > 1.1 * kWanted_s || mean_s_ < 0.75 * kWanted_s) {
    // about half of a frame's cost goes with its area, the rest with its triangles
    const double change = std::clamp(std::sqrt(kWanted_s / mean_s_), 0.8, 1.06);
    const float steps = static_cast<float>(change) * scale_1_ / kStep;
    const float before = scale_1_;
    scale_1_ = std::clamp((change < 1.0 ? std::floor(steps) : std::ceil(steps)) * kStep, 0.5F, 1.0F);
    // what was measured belongs to the old scale
    mean_s_ *= static_cast<double>(scale_1_ * scale_1_) / static_cast<double>(before * before);
  }
  return scale_1_;
}

}  // namespace proofstand::picture
