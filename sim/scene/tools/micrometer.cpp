#include "sim/scene/tools/micrometer.h"

#include <glm/gtc/matrix_transform.hpp>
#include <string>

#include "sim/scene/extrude.h"
#include "sim/scene/outline_offset.h"
#include "sim/scene/revolve.h"
#include "sim/scene/tools/look.h"
#include "sim/scene/tools/marks.h"
#include "sim/scene/tools/pieces.h"
#include "sim/scene/tools/scales.h"

namespace proofstand::scene {
namespace {

constexpr double kSag_m = 0.000025;
constexpr float kLine_m = 0.00014F;
constexpr double kHalfPi = 1.57079632679489661923;

// the bow in its own plane: first number along the axis, second away from it
Outline bow() {
  const double middle = 0.5 * (kSleeveFrom_m - 0.005);
  const double reach = 0.5 * (kSleeveFrom_m + 0.005);
  Loop outer = {{-0.0115, -0.0058}, {-0.0045, -0.0058}, {-0.0045, 0.006}};
  for (const glm::dvec2& p : arc(reach - 0.006, 2.0 * kHalfPi, 0.0, {middle, kThroat_m - reach + 0.006}, kSag_m))
    outer.push_back(p);
  outer.push_back({kSleeveFrom_m - 0.008, 0.006});
  outer.push_back({kSleeveFrom_m - 0.008, -0.0068});
  outer.push_back({kSleeveFrom_m + 0.002, -0.0068});
  outer.push_back({kSleeveFrom_m + 0.002, 0.0105});
  for (const glm::dvec2& p :
       arc(reach + 0.0048, 0.0, 2.0 * kHalfPi, {middle - 0.001, kThroat_m - reach + 0.0065}, kSag_m))
    outer.push_back(p);
  outer.push_back({-0.0115, 0.006});
  return {rounded(outer, 0.0012, kSag_m)};
}

// drawn in (axis, bow) and turned so that the axis is z and the bow lies at +y
Mesh stood_up(const Mesh& flat) {
  Mesh mesh;
  append(mesh, flat,
         glm::mat4({0.0F, 0.0F, 1.0F, 0.0F}, {0.0F, 1.0F, 0.0F, 0.0F}, {-1.0F, 0.0F, 0.0F, 0.0F},
                   {0.0F, 0.0F, 0.0F, 1.0F}));
  return mesh;
}

Mesh sleeve_marks(const Typeface& face) {
  Mesh marks;
  const auto radius = static_cast<float>(kSleeveRadius_m);
  const auto zero = static_cast<float>(kSleeveZero_m);
  // read from +x with the anvil to the left: above the datum lies at -y, at negative angles
  add_line_along(marks, radius, 0.0F, zero - 0.002F,
                 zero + static_cast<float>(sleeve_line_m(kSleeveLines - 1)) + 0.004F, kLine_m);
  for (int i = 0; i < kSleeveLines; ++i) {
    const float z = zero + static_cast<float>(sleeve_line_m(i));
    const bool whole = i % 2 == 0;
    const float reach = (i % 10 == 0 ? 0.0026F : 0.0019F) / radius;
    add_line_round(marks, radius, z, whole ? -reach : 0.0F, whole ? 0.0F : 0.0017F / radius, kLine_m);
    if (i % 10 == 0) {
      add_words_along(marks, face, std::to_string(i / 2), 0.0019F, Cone{radius, 0.0F}, -0.0041F / radius, z);
    }
  }
  return marks;
}

Mesh thimble_marks(const Typeface& face, const Cone& bevel) {
  Mesh marks;
  for (int n = 0; n < kThimbleLines; ++n) {
    const auto angle = static_cast<float>(thimble_line_rad(n));
    const bool fifth = n % 5 == 0;
    add_line_along(marks, bevel, angle, 0.0001F, fifth ? 0.0036F : 0.0022F, kLine_m);
    if (fifth) add_words_along(marks, face, std::to_string(n), 0.0018F, bevel, angle, 0.0042F, Align::Left);
  }
  return marks;
}

Loop fine_teeth(double radius_m, int teeth) {
  Loop loop;
  for (int i = 0; i < 2 * teeth; ++i) {
    const double angle = 2.0 * kHalfPi * i / teeth;
    const double r = radius_m - (i % 2 == 0 ? 0.0 : 0.0003);
    loop.push_back({r * std::cos(angle), r * std::sin(angle)});
  }
  return loop;
}

}  // namespace

Pieces build_micrometer(MeshStore& store) {
  const Typeface face = Typeface::find(true);
  Pieces pieces;
  using event::Grip;
  using event::PlaceKind;
  pieces.push_back(
      {store.keep(stood_up(extrude(bow(), {-0.004, 0.004, 0.0009, 0.0009}))), frame_enamel(), Grip::Fingers});
  // a plate on either side keeps the warmth of the fingers off the bow
  const double middle = 0.5 * (kSleeveFrom_m - 0.005);
  const double reach = 0.5 * (kSleeveFrom_m + 0.005);
  Loop plate = arc(reach + 0.0028, 0.6, 2.54, {middle, kThroat_m - reach + 0.006}, kSag_m);
  for (const glm::dvec2& p : arc(reach - 0.0038, 2.54, 0.6, {middle, kThroat_m - reach + 0.006}, kSag_m))
    plate.push_back(p);
  pieces.push_back({store.keep(stood_up(extrude({rounded(plate, 0.0015)}, {-0.0052, 0.0052, 0.0006, 0.0006}))),
                    handle_green(), Grip::Fingers});
  Mesh ends = bar(kSpindleRadius_m, -0.0105, 0.0, 0.0002, kSag_m);
  pieces.push_back({store.keep(ends), stainless(), Grip::Fingers});
  pieces.push_back({store.keep(bar(kSleeveRadius_m, kSleeveFrom_m - 0.004, kSleeveZero_m + 0.032, 0.0004, kSag_m)),
                    scale_chrome(), Grip::Fingers});
  pieces.push_back({store.keep(sleeve_marks(face)), ink(), Grip::Fingers, Move::None, PlaceKind::Body, false});
  pieces.push_back({store.keep(bar(kSpindleRadius_m, 0.0, kSleeveFrom_m - 0.006, 0.0002, kSag_m)), stainless(),
                    Grip::Fingers, Move::Spindle});
  // thimble: origin on its edge at the sleeve's zero
  const Cone bevel{static_cast<float>(kSleeveRadius_m + 0.00045), 0.21F};
  const double r = kThimbleRadius_m;
  Mesh thimble = revolve_ring({{kSleeveRadius_m + 0.0001, 0.0},
                               {static_cast<double>(bevel.radius_m), 0.0},
                               {static_cast<double>(bevel.at(0.0068F)), 0.0068},
                               {r, 0.0078},
                               {r, 0.0240},
                               {kSleeveRadius_m + 0.0001, 0.0240}},
                              kSag_m);
  pieces.push_back({store.keep(thimble), scale_chrome(), Grip::Thimble, Move::Thimble});
  Mesh grip = extrude({fine_teeth(r, 52)}, {0.0238, kThimbleLength_m - 0.012, 0.0003, 0.0006});
  pieces.push_back({store.keep(grip), aluminium(), Grip::Thimble, Move::Thimble});
  pieces.push_back(
      {store.keep(thimble_marks(face, bevel)), ink(), Grip::Thimble, Move::Thimble, PlaceKind::Body, false});
  Mesh ratchet =
      extrude({fine_teeth(0.0043, 26)}, {kThimbleLength_m - 0.0105, kThimbleLength_m + 0.001, 0.0003, 0.0006});
  append(ratchet, bar(0.0034, kThimbleLength_m - 0.013, kThimbleLength_m - 0.010, 0.0001, kSag_m));
  pieces.push_back({store.keep(ratchet), stainless(), Grip::Ratchet, Move::Thimble});
  return pieces;
}

}  // namespace proofstand::scene
