#include "sim/scene/tools/vernier.h"

#include <string>

#include "sim/scene/extrude.h"
#include "sim/scene/tools/look.h"
#include "sim/scene/tools/marks.h"
#include "sim/scene/tools/pieces.h"
#include "sim/scene/tools/scales.h"

namespace proofstand::scene {
namespace {

constexpr float kLine_m = 0.0001F;  // width of the engraved lines
constexpr double kHalf_m = 0.5 * kBeamThick_m;

// the tips taper to a millimetre over twelve, so that they reach inside a lip
Loop jaw(double side) {
  return {{0.0, 0.0},
          {side * 0.0010, 0.0},
          {side * 0.0046, 0.012},
          {side * 0.0105, 0.030},
          {side * 0.0150, kJawLength_m + 0.001},
          {0.0, kJawLength_m + 0.001}};
}

Loop upright(Loop loop) {
  if (area_m2(loop) < 0.0) loop = reversed(loop);
  return loop;
}

Loop small_jaw(double side) {
  const double top = kJawLength_m + kBeamHeight_m;
  return upright({{0.0, top - 0.001},
                  {side * 0.0085, top - 0.001},
                  {side * 0.0065, top + 0.008},
                  {side * 0.0014, top + 0.016},
                  {0.0, top + 0.016}});
}

Mesh beam_marks(const bench::InstrumentPart& part, const Typeface& face) {
  Mesh marks;
  const auto zero = static_cast<float>(kBeamZero_m);
  const auto meets = static_cast<float>(kScaleMeets_m);
  const auto z = static_cast<float>(kHalf_m) + kMarkLift_m;
  for (int i = 0; i < beam_lines(part); ++i) {
    const float x = zero + static_cast<float>(beam_line_m(i));
    const float tall = i % 10 == 0 ? 0.0052F : i % 5 == 0 ? 0.0042F : 0.0030F;
    add_bar(marks, {x - 0.5F * kLine_m, meets}, {x + 0.5F * kLine_m, meets + tall}, z);
    if (i % 10 == 0) {
      append(marks, face.flat(std::to_string(i), 0.0026, Align::Middle, static_cast<double>(z)),
             glm::mat4({1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}, {x, meets + 0.0060F, 0, 1}));
    }
  }
  return marks;
}

// moves with the slide: at rest its zero line meets the beam's
Mesh vernier_marks(const bench::InstrumentPart& part, const Typeface& face) {
  Mesh marks;
  const auto zero = static_cast<float>(kBeamZero_m);
  const auto meets = static_cast<float>(kScaleMeets_m);
  const float z = static_cast<float>(kHalf_m) + 0.0006F + kMarkLift_m;
  const int last = vernier_lines(part) - 1;
  for (int k = 0; k <= last; ++k) {
    const float x = zero + static_cast<float>(vernier_line_m(part, 0.0, k));
    const bool fifth = k % 5 == 0;
    add_bar(marks, {x - 0.5F * kLine_m, meets - (fifth ? 0.0040F : 0.0026F)}, {x + 0.5F * kLine_m, meets}, z);
    if (fifth && last > 0) {
      append(marks, face.flat(std::to_string(10 * k / last), 0.0019, Align::Middle, static_cast<double>(z)),
             glm::mat4({1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}, {x, meets - 0.0064F, 0, 1}));
    }
  }
  return marks;
}

}  // namespace

Pieces build_vernier(MeshStore& store, const bench::InstrumentPart& part) {
  const Typeface face = Typeface::find(true);
  Pieces pieces;
  using event::Grip;
  using event::PlaceKind;
  const double length = kBeamZero_m + part.range_m + 0.045;
  const double foot = kJawLength_m;
  Mesh beam = extrude(
      {upright({{-0.0150, foot}, {length, foot}, {length, foot + kBeamHeight_m}, {-0.0150, foot + kBeamHeight_m}})},
      {-kHalf_m, kHalf_m, 0.0004, 0.0004});
  append(beam, extrude({upright(jaw(-1.0))}, {-kHalf_m, kHalf_m, 0.0003, 0.0003}));
  append(beam, extrude({small_jaw(-1.0)}, {-kHalf_m + 0.0008, kHalf_m - 0.0008, 0.0002, 0.0002}));
  pieces.push_back({store.keep(beam), scale_chrome(), Grip::Fingers});
  pieces.push_back({store.keep(beam_marks(part, face)), ink(), Grip::Fingers, Move::None, PlaceKind::Body, false});
  // the slide: jaw, a body round the beam with a window over the scale, a thumb wheel below
  const double vernier_to = kBeamZero_m + vernier_line_m(part, 0.0, vernier_lines(part) - 1) + 0.004;
  Mesh slide = extrude({upright(jaw(1.0))}, {-kHalf_m, kHalf_m, 0.0003, 0.0003});
  append(slide, extrude({small_jaw(1.0)}, {-kHalf_m + 0.0008, kHalf_m - 0.0008, 0.0002, 0.0002}));
  const double to = vernier_to;
  // vernier plate: its upper edge is where the two scales meet
  append(slide, extrude({upright({{0.0, foot - 0.004}, {to, foot - 0.004}, {to, kScaleMeets_m}, {0.0, kScaleMeets_m}})},
                        {-kHalf_m - 0.0024, kHalf_m + 0.0006, 0.0003, 0.0}));
  append(slide, extrude({upright({{0.0, foot + kBeamHeight_m - 0.0008},
                                  {to, foot + kBeamHeight_m - 0.0008},
                                  {to, foot + kBeamHeight_m + 0.0022},
                                  {0.0, foot + kBeamHeight_m + 0.0022}})},
                        {-kHalf_m - 0.0024, kHalf_m + 0.0014, 0.0003, 0.0003}));
  append(slide, extrude({upright({{0.0, foot - 0.003},
                                  {to, foot - 0.003},
                                  {to, foot + kBeamHeight_m + 0.001},
                                  {0.0, foot + kBeamHeight_m + 0.001}})},
                        {-kHalf_m - 0.0024, -kHalf_m, 0.0004, 0.0}));
  pieces.push_back({store.keep(slide), scale_chrome(), Grip::Fingers, Move::Slide});
  pieces.push_back({store.keep(vernier_marks(part, face)), ink(), Grip::Fingers, Move::Slide, PlaceKind::Body, false});
  Loop wheel;
  for (int i = 0; i < 48; ++i) {
    const double angle = 6.28318530717958647693 * i / 48.0;
    const double r = i % 2 == 0 ? 0.0052 : 0.0047;
    wheel.push_back({to - 0.012 + r * std::cos(angle), foot - 0.0062 + r * std::sin(angle)});
  }
  pieces.push_back(
      {store.keep(extrude({wheel}, {-0.0026, 0.0018, 0.0004, 0.0004})), handle_green(), Grip::Fingers, Move::Slide});
  return pieces;
}

}  // namespace proofstand::scene
