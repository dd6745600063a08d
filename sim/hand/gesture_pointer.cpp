#include "sim/hand/gesture_pointer.h"

#include <algorithm>

namespace proofstand::hand {

void SteadyPointer::put(base::Tick now, const Spot& spot) {
  if (!samples_.empty() && samples_.back().since == now) samples_.pop_back();
  samples_.push_back({now, spot});
  while (samples_.size() > 1 && samples_[1].since <= now - window_) samples_.erase(samples_.begin());
}

void SteadyPointer::begin(base::Tick now, const Spot& spot) {
  samples_.clear();
  samples_.push_back({now, spot});
}

Spot SteadyPointer::at(base::Tick now) const {
  if (samples_.empty()) return {};
  if (window_ <= 0) return samples_.back().spot;
  const base::Tick from = now - window_;
  double x = 0.0, y = 0.0;
  for (std::size_t i = 0; i < samples_.size(); ++i) {
    // the first one counts for all that was before it
    const base::Tick since = i == 0 ? from : std::max(from, samples_[i].since);
    const base::Tick until = i + 1 < samples_.size() ? samples_[i + 1].since : now;
    const double share = static_cast<double>(std::max<base::Tick>(0, until - since)) / static_cast<double>(window_);
    x += share * samples_[i].spot.x_pt;
    y += share * samples_[i].spot.y_pt;
  }
  return {x, y};
}

}  // namespace proofstand::hand
