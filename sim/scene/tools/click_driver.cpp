#include "sim/scene/tools/click_driver.h"

#include <cmath>
#include <string>

#include "sim/scene/extrude.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"
#include "sim/scene/tools/look.h"
#include "sim/scene/tools/marks.h"
#include "sim/scene/tools/pieces.h"
#include "sim/scene/tools/scales.h"

namespace proofstand::scene {
namespace {

constexpr double kSag_m = 0.00003;
constexpr float kLine_m = 0.00022F;
// the datum looks to +y, square to the cross bar; with the bit to the left "above" it lies at smaller angles
constexpr float kDatum_rad = 1.5707963F;

// knurled: fine teeth round a sleeve
Loop toothed(double radius_m, int teeth, double depth_m) {
  Loop loop;
  for (int i = 0; i < 2 * teeth; ++i) {
    const double angle = 3.14159265358979323846 * i / teeth;
    const double r = radius_m - (i % 2 == 0 ? 0.0 : depth_m);
    loop.push_back({r * std::cos(angle), r * std::sin(angle)});
  }
  return loop;
}

Mesh scale_marks(const bench::ToolPart& tool, const Typeface& face) {
  Mesh marks;
  const auto radius = static_cast<float>(kBarrelRadius_m);
  const int whole = handle_lines(tool);
  for (int i = 0; i < setting_lines(tool); ++i) {
    const auto z = static_cast<float>(kLowestLine_m - setting_line_m(tool, i));
    const double figure = tool.scale_lo_nm + i * tool.scale_step_nm;
    const bool is_whole = whole > 0 && std::abs(figure - std::round(figure)) < 1.0e-6;
    const float reach = is_whole ? 0.42F : 0.24F;
    add_line_round(marks, radius, z, kDatum_rad - reach, kDatum_rad, kLine_m);
    if (is_whole) {
      add_words_along(marks, face, std::to_string(std::lround(figure)), 0.0023F, Cone{radius, 0.0F}, kDatum_rad - 0.62F,
                      z);
    }
  }
  add_line_along(marks, radius, kDatum_rad,
                 static_cast<float>(kLowestLine_m - setting_line_m(tool, setting_lines(tool) - 1)) - 0.003F,
                 static_cast<float>(kBarrelTo_m), kLine_m);
  add_words_along(marks, face, "N·m", 0.0023F, Cone{radius, 0.0F}, kDatum_rad - 0.35F,
                  static_cast<float>(kBarrelFrom_m) + 0.010F);
  return marks;
}

Mesh edge_marks(const bench::ToolPart& tool, const Typeface& face, const Cone& bevel) {
  Mesh marks;
  for (int k = 0; k < handle_lines(tool); ++k) {
    const float angle = kDatum_rad + static_cast<float>(handle_line_rad(tool, k));
    add_line_along(marks, bevel, angle, 0.0F, 0.0042F, kLine_m);
    add_words_along(marks, face, "." + std::to_string(std::lround(10.0 * k * tool.scale_step_nm)), 0.0022F, bevel,
                    angle, 0.0046F, Align::Left);
  }
  return marks;
}

}  // namespace

Pieces build_click_driver(MeshStore& store, const bench::ToolPart& tool) {
  const Typeface face = Typeface::find(true);
  Pieces pieces;
  Mesh shaft = extrude({bit_contour(tool.drive)}, {0.0, 0.007, 0.0003, 0.0});
  append(shaft, extrude({regular_polygon(6, 0.00635)}, {0.0068, 0.032, 0.0008, 0.0}));
  append(shaft,
         revolve({{0.0, 0.026}, {0.0052, 0.026}, {0.0058, 0.0266}, {0.0058, 0.046}, {0.0075, 0.050}, {0.0, 0.0505}},
                 kSag_m));
  pieces.push_back({store.keep(shaft), stainless(), event::Grip::Shaft});
  pieces.push_back({store.keep(revolve({{0.0, 0.0495},
                                        {0.0080, 0.0495},
                                        {0.0088, 0.0503},
                                        {kBarrelRadius_m - 0.0006, kBarrelFrom_m - 0.002},
                                        {kBarrelRadius_m, kBarrelFrom_m},
                                        {kBarrelRadius_m, kBarrelTo_m},
                                        {0.0, kBarrelTo_m}},
                                       kSag_m)),
                    scale_chrome(), event::Grip::Handle});
  pieces.push_back(
      {store.keep(scale_marks(tool, face)), ink(), event::Grip::Handle, Move::None, event::PlaceKind::Body, false});
  // the setting handle: origin on its lower edge, a bevel that carries the tenths, then knurling
  const double r = kHandleRadius_m;
  const Cone bevel{static_cast<float>(kBarrelRadius_m + 0.0006), 0.33F};
  Mesh handle = revolve_ring({{kBarrelRadius_m + 0.0002, 0.0},
                              {static_cast<double>(bevel.radius_m), 0.0},
                              {static_cast<double>(bevel.at(0.0075F)), 0.0075},
                              {r - 0.0002, 0.0082},
                              {r - 0.0002, 0.0100},
                              {kBarrelRadius_m + 0.0002, 0.0100}},
                             kSag_m);
  append(handle, extrude({toothed(r, 48, 0.0006), reversed(circle(kBarrelRadius_m + 0.0002))},
                         {0.0098, kHandleLength_m, 0.0004, 0.0006}));
  pieces.push_back({store.keep(handle), aluminium(), event::Grip::Setting, Move::Setting});
  pieces.push_back({store.keep(edge_marks(tool, face, bevel)), ink(), event::Grip::Setting, Move::Setting,
                    event::PlaceKind::Body, false});
  Mesh collar = pipe(kBarrelRadius_m + 0.0002, r - 0.0004, kHandleLength_m + 0.0004, kHandleLength_m + kCollarLength_m,
                     0.0008, kSag_m);
  pieces.push_back({store.keep(collar), handle_pale(), event::Grip::Setting, Move::Collar});
  // a warm ring that only shows when the collar is drawn back
  const Mesh ring = pipe(kBarrelRadius_m + 0.0002, kBarrelRadius_m + 0.0014, kHandleLength_m - 0.0010,
                         kHandleLength_m + 0.0034, 0.0002, kSag_m);
  pieces.push_back({store.keep(ring), paint({0.60F, 0.30F, 0.08F}), event::Grip::Setting, Move::Setting});
  // the cross bar on its block, and the round end for the palm
  const double arm = tool.arm_m;
  Mesh cross = capsule({static_cast<float>(-arm + 0.008), 0.0F, static_cast<float>(kCross_m)}, 0.0080F,
                       {static_cast<float>(arm - 0.008), 0.0F, static_cast<float>(kCross_m)}, 0.0080F, 20);
  append(cross, revolve({{0.0, kBarrelTo_m - 0.001},
                         {0.0150, kBarrelTo_m - 0.001},
                         {0.0165, kBarrelTo_m + 0.001},
                         {0.0165, kCross_m + 0.004},
                         {0.0, kCross_m + 0.0045}},
                        kSag_m));
  pieces.push_back({store.keep(cross), handle_green(), event::Grip::Handle});
  pieces.push_back({store.keep(revolve({{0.0, kCross_m + 0.002},
                                        {0.0162, kCross_m + 0.002},
                                        {0.0168, kCross_m + 0.006},
                                        {0.0150, kCross_m + 0.0110},
                                        {0.0085, kCross_m + 0.0140},
                                        {0.0, kCross_m + 0.0146}},
                                       kSag_m)),
                    handle_pale(), event::Grip::End});
  return pieces;
}

}  // namespace proofstand::scene
