#include <algorithm>
#include <glm/gtc/matrix_transform.hpp>
#include <string_view>

#include "sim/scene/extrude.h"
#include "sim/scene/revolve.h"
#include "sim/scene/tools/look.h"
#include "sim/scene/tools/marks.h"
#include "sim/scene/tools/pieces.h"

namespace proofstand::scene {
namespace {

constexpr double kSag_m = 0.00012;

struct Looks {
  std::string_view word;
  std::string_view second;  // line of the label
  double radius_m;          // of the body
  double body_m;            // foot to shoulder
  double nozzle_m;          // shoulder to tip
  double tip_radius_m;
  glm::vec3 body;
  glm::vec3 cap;
  glm::vec3 band;
};

Looks looks_of(bench::FluidKind fluid) {
  switch (fluid) {
    case bench::FluidKind::Alcohol:
      return {"alcohol",
              "",
              0.0240,
              0.118,
              0.052,
              0.0014,
              {0.78F, 0.80F, 0.80F},
              {0.30F, 0.36F, 0.40F},
              {0.42F, 0.56F, 0.62F}};
    case bench::FluidKind::Locker:
      return {"thread-",
              "locker",
              0.0140,
              0.058,
              0.037,
              0.0009,
              {0.20F, 0.13F, 0.18F},
              {0.62F, 0.60F, 0.56F},
              {0.74F, 0.70F, 0.62F}};
    case bench::FluidKind::Grease:
      return {"grease",
              "",
              0.0255,
              0.046,
              0.016,
              0.0225,
              {0.70F, 0.66F, 0.52F},
              {0.36F, 0.38F, 0.28F},
              {0.50F, 0.50F, 0.36F}};
    case bench::FluidKind::Oil:
      return {
          "oil", "", 0.0225, 0.088, 0.044, 0.0013, {0.52F, 0.38F, 0.16F}, {0.20F, 0.20F, 0.20F}, {0.66F, 0.54F, 0.32F}};
  }
  return {"", "", 0.02, 0.08, 0.03, 0.001, {0.5F, 0.5F, 0.5F}, {0.3F, 0.3F, 0.3F}, {0.6F, 0.6F, 0.6F}};
}

}  // namespace

double bottle_height_m(bench::FluidKind fluid) {
  const Looks looks = looks_of(fluid);
  return looks.body_m + looks.nozzle_m;
}

// the tip at the origin, the foot along +z: as it is held over a thread; it stands upside down
Pieces build_bottle(MeshStore& store, const bench::BottlePart& bottle) {
  const Looks looks = looks_of(bottle.fluid);
  const Typeface face = Typeface::find(false);
  const double r = looks.radius_m;
  const double shoulder = looks.nozzle_m;
  const double foot = looks.nozzle_m + looks.body_m;
  const bool tub = bottle.fluid == bench::FluidKind::Grease;
  Pieces pieces;
  using event::Grip;
  using event::PlaceKind;
  Material body = plastic(looks.body);
  body.roughness_1 = 0.34F;
  pieces.push_back({store.keep(revolve({{0.0, shoulder - 0.001},
                                        {r * (tub ? 0.95 : 0.46), shoulder - 0.001},
                                        {r * (tub ? 0.98 : 0.62), shoulder + 0.0015},
                                        {r * 0.93, shoulder + r * (tub ? 0.08 : 0.30)},
                                        {r, shoulder + r * (tub ? 0.14 : 0.48)},
                                        {r, foot - 0.0030},
                                        {r - 0.0009, foot - 0.0008},
                                        {r - 0.0030, foot},
                                        {0.0, foot}},
                                       kSag_m)),
                    body, Grip::Fingers});
  const Material cap = plastic(looks.cap);
  if (tub) {
    // open tub: the rim, and the grease in it
    pieces.push_back({store.keep(pipe(r * 0.88, r * 0.97, 0.0, shoulder + 0.001, 0.0008, kSag_m)), cap, Grip::Fingers});
    Material paste = plastic({0.66F, 0.58F, 0.30F});
    paste.roughness_1 = 0.25F;
    pieces.push_back({store.keep(revolve({{0.0, 0.0060},
                                          {r * 0.30, 0.0048},
                                          {r * 0.62, 0.0072},
                                          {r * 0.885, 0.0058},
                                          {r * 0.885, 0.012},
                                          {0.0, 0.012}},
                                         kSag_m)),
                      paste, Grip::Fingers, Move::None, PlaceKind::Mouth});
  } else {
    const double collar = 0.30 * shoulder;
    pieces.push_back({store.keep(revolve({{0.0, shoulder - collar},
                                          {r * 0.40, shoulder - collar},
                                          {r * 0.50, shoulder - collar + 0.0012},
                                          {r * 0.50, shoulder + 0.0006},
                                          {0.0, shoulder + 0.0006}},
                                         kSag_m)),
                      cap, Grip::Fingers});
    pieces.push_back({store.keep(revolve({{0.0, 0.0},
                                          {looks.tip_radius_m * 0.8, 0.0},
                                          {looks.tip_radius_m, 0.0004},
                                          {looks.tip_radius_m * 1.5, 0.35 * shoulder},
                                          {r * 0.26, shoulder - collar - 0.001},
                                          {r * 0.30, shoulder - collar + 0.0006},
                                          {0.0, shoulder - collar + 0.0006}},
                                         kSag_m)),
                      plastic(glm::mix(looks.cap, glm::vec3(0.8F), 0.5F)), Grip::Fingers, Move::None,
                      PlaceKind::Mouth});
  }
  const double band_from = shoulder + looks.body_m * (tub ? 0.26 : 0.36);
  const double band_to = foot - looks.body_m * (tub ? 0.18 : 0.12);
  pieces.push_back({store.keep(pipe(r - 0.0004, r + 0.00025, band_from, band_to, 0.0001, kSag_m)),
                    [&looks] {
                      Material label = paper();
                      label.color = looks.band;
                      return label;
                    }(),
                    Grip::Fingers});
  Mesh words;
  const double longest = std::max(face.width_m(looks.word, 0.001), face.width_m(looks.second, 0.001)) / 0.001;
  const double tall = longest > 0.0 ? std::min(0.34 * (band_to - band_from), 1.35 * r / longest) : 0.004;
  const bool two = !looks.second.empty();
  const auto on = static_cast<float>(r + 0.0003);
  const auto cap_m = static_cast<float>(tall);
  add_words_round(words, face, looks.word, cap_m, on, 0.0F, two ? 0.85F * cap_m : 0.0F);
  if (two) add_words_round(words, face, looks.second, cap_m, on, 0.0F, -0.85F * cap_m);
  // it stands foot down: upside down in this frame, so are its words
  Mesh turned;
  append(turned, words,
         glm::rotate(
             glm::translate(glm::mat4(1.0F), glm::vec3(0.0F, 0.0F, static_cast<float>(0.5 * (band_from + band_to)))),
             3.14159265F, glm::vec3(1.0F, 0.0F, 0.0F)));
  pieces.push_back({store.keep(turned), ink(), Grip::Fingers, Move::None, PlaceKind::Body, false});
  return pieces;
}

}  // namespace proofstand::scene
