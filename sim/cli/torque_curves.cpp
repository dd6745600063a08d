#include "sim/cli/torque_curves.h"

#include <cmath>

#include "sim/bench/probe.h"

namespace proofstand::cli {
namespace {

// what a drawing can show; below it a sample adds nothing
constexpr double kLeastStep_rad = 0.008;
constexpr double kLeastStep_nm = 0.04;
constexpr double kLeastPull_nm = 0.05;
// a head that bears, and how much of the turning before it is drawn
constexpr double kBears_n = 100.0;
constexpr double kBefore_rad = 0.35;

}  // namespace

TorqueCurves::TorqueCurves(std::size_t bolts) : bolts_(bolts) {}

void TorqueCurves::look(const bench::Bench& bench) {
  // a bolt that is started anew begins a curve of its own
  const std::vector<event::Record>& events = bench.events();
  for (; events_ < events.size(); ++events_) {
    const event::Kind& kind = bench.vocabulary().kinds[events[events_].kind];
    if (kind.name != "started") continue;
    const auto field = event::Vocabulary::find_field(kind, "bolt");
    if (!field || !events[events_].knows(*field)) continue;
    const auto bolt = static_cast<std::size_t>(events[events_].values[*field]);
    if (bolt < bolts_.size()) bolts_[bolt] = {};
  }
  std::vector<bool> pulled(bolts_.size(), false);
  for (const bench::PullProbe& pull : bench::probe_pulls(bench)) {
    const std::size_t at = event::index_of(pull.bolt);
    if (at >= bolts_.size()) continue;
    Bolt& bolt = bolts_[at];
    const bool click = pull.clicks > bolt.clicks;
    bolt.clicks = pull.clicks;
    if (pull.torque_nm < kLeastPull_nm) continue;
    pulled[at] = true;
    const Sample sample{pull.fastener_rad, pull.torque_nm, pull.preload_n, click};
    const bool much = bolt.samples.empty() || click ||
                      std::fabs(sample.angle_rad - bolt.samples.back().angle_rad) > kLeastStep_rad ||
                      std::fabs(sample.torque_nm - bolt.samples.back().torque_nm) > kLeastStep_nm;
    if (much) bolt.samples.push_back(sample);
  }
  for (std::size_t i = 0; i < bolts_.size(); ++i) {
    Bolt& bolt = bolts_[i];
    if (bolt.pulled && !pulled[i] && !bolt.samples.empty()) {
      bolt.samples.push_back({bolt.samples.back().angle_rad, 0.0, bolt.samples.back().preload_n, false});
      bolt.clicks = 0;
    }
    bolt.pulled = pulled[i];
  }
}

std::vector<report::TorqueCurve> TorqueCurves::finish() const {
  std::vector<report::TorqueCurve> curves;
  for (std::size_t i = 0; i < bolts_.size(); ++i) {
    const std::vector<Sample>& samples = bolts_[i].samples;
    std::size_t snug = 0;
    while (snug < samples.size() && samples[snug].preload_n < kBears_n) ++snug;
    if (snug == samples.size()) continue;
    report::TorqueCurve curve;
    curve.bolt = i;
    const double zero_rad = samples[snug].angle_rad;
    for (const Sample& sample : samples) {
      if (sample.angle_rad < zero_rad - kBefore_rad) continue;
      if (sample.click) curve.clicks.push_back(curve.angle_rad.size());
      curve.angle_rad.push_back(sample.angle_rad - zero_rad);
      curve.torque_nm.push_back(sample.torque_nm);
    }
    curves.push_back(std::move(curve));
  }
  return curves;
}

}  // namespace proofstand::cli
