#include "sim/scene/extrude.h"
#include "sim/scene/revolve.h"
#include "sim/scene/tools/look.h"
#include "sim/scene/tools/pieces.h"

namespace proofstand::scene {
namespace {

constexpr double kTip_m = 0.007;
constexpr double kShaftRadius_m = 0.0025;
constexpr double kHandleFrom_m = 0.105;
constexpr double kFar_m = 0.0001;

// eight shallow flutes, so that it does not roll off the bench
Loop fluted(double radius_m) {
  Loop loop;
  constexpr int kPoints = 64;
  for (int i = 0; i < kPoints; ++i) {
    const double angle = 6.28318530717958647693 * i / kPoints;
    const double r = radius_m * (1.0 - 0.035 * (1.0 + std::cos(8.0 * angle)));
    loop.push_back({r * std::cos(angle), r * std::sin(angle)});
  }
  return loop;
}

}  // namespace

Pieces build_driver(MeshStore& store, const bench::ToolPart& tool) {
  const double radius = tool.arm_m;
  Pieces pieces;
  Mesh shaft = extrude({bit_contour(tool.drive)}, {0.0, kTip_m, 0.0003, 0.0});
  append(shaft, bar(kShaftRadius_m, kTip_m - 0.0012, kHandleFrom_m, 0.0006, kFar_m));
  pieces.push_back({store.keep(shaft), stainless(), event::Grip::Shaft});
  // neck, grip and a round end of the softer kind
  const double from = kHandleFrom_m;
  const double to = kDriverLength_m;
  Mesh grip = extrude({fluted(radius)}, {from + 0.022, to - 0.014, 0.0022, 0.0022});
  append(grip, revolve({{0.0, from},
                        {0.0062, from},
                        {0.0078, from + 0.0015},
                        {0.0098, from + 0.012},
                        {0.0118, from + 0.019},
                        {radius * 0.86, from + 0.0235},
                        {0.0, from + 0.0240}},
                       kFar_m));
  pieces.push_back({store.keep(grip), handle_green(), event::Grip::Handle});
  pieces.push_back({store.keep(revolve({{0.0, to - 0.0155},
                                        {radius * 0.88, to - 0.0155},
                                        {radius * 0.90, to - 0.0120},
                                        {radius * 0.84, to - 0.0060},
                                        {radius * 0.66, to - 0.0018},
                                        {radius * 0.36, to - 0.0001},
                                        {0.0, to}},
                                       kFar_m)),
                    handle_pale(), event::Grip::End});
  return pieces;
}

}  // namespace proofstand::scene
