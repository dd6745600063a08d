#include "sim/scene/tools/pieces.h"

namespace proofstand::scene {
namespace {

constexpr double kTipClear_m = 0.00002;  // a tip is so much smaller all round than its gauge
constexpr double kBitSag_m = 0.00003;

}  // namespace

Loop bit_contour(bench::DriveKind drive) {
  switch (drive) {
    case bench::DriveKind::Hexalobular20:
      return contour(hexalobular_20().grown(-kTipClear_m), kBitSag_m);
    case bench::DriveKind::Hexagon3_0:
      return regular_polygon(6, 0.0030);
    case bench::DriveKind::Hexagon3_2:
      return regular_polygon(6, 0.0032);
    case bench::DriveKind::FlatBlade:
      return rounded_rectangle(0.0055, 0.0010, 0.0002);
    default:
      return contour(hexalobular_25().grown(-kTipClear_m), kBitSag_m);
  }
}

}  // namespace proofstand::scene
