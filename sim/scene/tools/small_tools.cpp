#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/extrude.h"
#include "sim/scene/glyphs.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"
#include "sim/scene/sweep.h"
#include "sim/scene/tools/look.h"
#include "sim/scene/tools/pieces.h"

namespace proofstand::scene {
namespace {

constexpr double kSag_m = 0.0001;

}  // namespace

// a slim bar, its end bent over square and drawn out to a point
Pieces build_pick(MeshStore& store) {
  Pieces pieces;
  const auto length = static_cast<float>(kPickLength_m);
  std::vector<glm::vec3> path = bent_path(
      {{0.0F, 0.0F, 0.0F}, {-0.0045F, 0.0F, 0.0050F}, {0.0F, 0.0F, 0.016F}, {0.0F, 0.0F, 0.066F}}, 0.0025F, 5);
  std::vector<float> scale;
  for (const glm::vec3& p : path) scale.push_back(std::min(1.0F, 0.26F + 0.74F * p.z / 0.024F));
  const Loop section = circle(0.0015, {0.0, 0.0}, 0.00003);
  pieces.push_back({store.keep(sweep(section, path, {0.0F, 1.0F, 0.0F}, scale)), stainless(), event::Grip::Fingers});
  Mesh handle = revolve({{0.0, 0.062},
                         {0.0022, 0.062},
                         {0.0030, 0.0635},
                         {0.0044, 0.072},
                         {0.0044, 0.098},
                         {0.0036, 0.112},
                         {0.0042, static_cast<double>(length) - 0.016},
                         {0.0038, static_cast<double>(length) - 0.003},
                         {0.0020, static_cast<double>(length)},
                         {0.0, static_cast<double>(length)}},
                        kSag_m);
  pieces.push_back({store.keep(handle), handle_green(), event::Grip::Fingers});
  return pieces;
}

Pieces build_lamp(MeshStore& store) {
  Pieces pieces;
  const double end = kLampLength_m;
  Mesh body = revolve_ring({{0.0088, 0.0006},
                            {0.0106, 0.0},
                            {0.0114, 0.0008},
                            {0.0114, 0.020},
                            {0.0100, 0.026},
                            {0.0088, 0.030},
                            {0.0088, end - 0.002},
                            {0.0080, end},
                            {0.0004, end},
                            {0.0004, end - 0.006},
                            {0.0070, end - 0.006},
                            {0.0070, 0.010},
                            {0.0088, 0.004}},
                           kSag_m);
  pieces.push_back({store.keep(body), anodised({0.16F, 0.20F, 0.17F}), event::Grip::Fingers});
  Material lens = plastic({1.0F, 0.97F, 0.90F});
  lens.glow_1 = 1.0F;
  lens.roughness_1 = 0.15F;
  pieces.push_back({store.keep(bar(0.0090, 0.0012, 0.0100, 0.0010, kSag_m)), lens, event::Grip::Fingers});
  Mesh grip = pipe(0.0086, 0.0096, 0.046, 0.100, 0.0006, kSag_m);
  Mesh clip;
  append(clip, rounded_box({0.0060F, 0.0012F, 0.050F}, 0.0005F),
         glm::translate(glm::mat4(1.0F), glm::vec3(0.0F, 0.0125F, static_cast<float>(end) - 0.031F)));
  append(clip, rounded_box({0.0060F, 0.0052F, 0.0020F}, 0.0005F),
         glm::translate(glm::mat4(1.0F), glm::vec3(0.0F, 0.0105F, static_cast<float>(end) - 0.006F)));
  pieces.push_back({store.keep(grip), handle_green(), event::Grip::Fingers});
  pieces.push_back({store.keep(clip), stainless(), event::Grip::Fingers});
  return pieces;
}

Pieces build_glove_box(MeshStore& store) {
  Pieces pieces;
  const Typeface face = Typeface::find(false);
  Mesh box;
  append(box, rounded_box({0.220F, 0.110F, 0.070F}, 0.002F),
         glm::translate(glm::mat4(1.0F), glm::vec3(0.0F, 0.0F, 0.035F)));
  Material card = paper();
  card.color = {0.72F, 0.70F, 0.62F};
  using event::PlaceKind;
  pieces.push_back({store.keep(box), card, event::Grip::None, Move::None, PlaceKind::GloveBox});
  // the opening, and a glove that stands out of it
  Mesh slot_face = flat_face({slot(0.110, 0.034)}, 0.0704);
  pieces.push_back({store.keep(slot_face), ink(), event::Grip::None, Move::None, PlaceKind::GloveBox});
  Mesh tongue;
  for (int i = 0; i < 3; ++i) {
    const float x = -0.022F + 0.020F * static_cast<float>(i);
    const float lean = 0.006F * static_cast<float>(i - 1);
    append(tongue, capsule({x, 0.002F, 0.064F}, 0.0085F,
                           {x + lean, 0.004F + lean, 0.082F + 0.006F * static_cast<float>(i % 2)}, 0.0052F, 12));
  }
  pieces.push_back({store.keep(tongue), glove(), event::Grip::None, Move::None, PlaceKind::GloveBox});
  Mesh words = face.flat("gloves", 0.020, Align::Middle, 0.0);
  Mesh front;
  append(front, words, glm::mat4({1, 0, 0, 0}, {0, 0, 1, 0}, {0, -1, 0, 0}, {0.0F, -0.0552F, 0.026F, 1}));
  pieces.push_back({store.keep(front), ink(), event::Grip::None, Move::None, PlaceKind::GloveBox, false});
  return pieces;
}

}  // namespace proofstand::scene
