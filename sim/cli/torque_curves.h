// Torque over angle of every bolt, gathered while an attempt is worked again.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/bench/bench.h"
#include "sim/report/pictures.h"

namespace proofstand::cli {

/// Looks at the bench whenever it is told to, and keeps what is new.
class TorqueCurves {
 public:
  explicit TorqueCurves(std::size_t bolts);
  /// Call it every tick or two while a hand is at work.
  void look(const bench::Bench& bench);
  /// One curve a bolt that was pulled, from just before its head first bore; loosening and running down are left out.
  [[nodiscard]] std::vector<report::TorqueCurve> finish() const;

 private:
  struct Sample {
    double angle_rad = 0.0;
    double torque_nm = 0.0;
    double preload_n = 0.0;
    bool click = false;
  };
  struct Bolt {
    std::vector<Sample> samples;
    std::int64_t clicks = 0;  ///< in the visit under way
    bool pulled = false;      ///< at the last look
  };
  std::vector<Bolt> bolts_;
  std::size_t events_ = 0;  ///< of the bench, seen
};

}  // namespace proofstand::cli
