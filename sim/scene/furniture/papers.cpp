#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/extrude.h"
#include "sim/scene/furniture/furniture.h"
#include "sim/scene/layout.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"
#include "sim/scene/tools/marks.h"

namespace proofstand::scene {
namespace {

constexpr float kWide_m = 0.165F;
constexpr float kTall_m = 0.220F;

// papers lie with their feet to the mechanic: x to the mechanic's right, y away, z up
glm::mat4 lying(const Spot& spot) {
  return glm::translate(spot.frame() * level_frame(glm::vec3(0.0F)), {0.0F, 0.0F, 0.0002F});
}

// printed lines as one sees them from where one stands; to be read, they are opened as a card
Mesh ruled(const Typeface& face, std::string_view title, int lines, bool boxes) {
  Mesh marks;
  const float left = -0.5F * kWide_m + 0.014F;
  const float right = 0.5F * kWide_m - 0.014F;
  append(marks, face.flat(title, 0.0075),
         glm::translate(glm::mat4(1.0F), {left, 0.5F * kTall_m - 0.030F, kMarkLift_m}));
  for (int i = 0; i < lines; ++i) {
    const float y = 0.5F * kTall_m - 0.050F - 0.0185F * static_cast<float>(i);
    add_bar(marks, {left, y}, {right, y + 0.0004F});
    add_bar(marks, {left, y + 0.0045F}, {left + 0.030F + 0.008F * static_cast<float>((i * 5) % 4), y + 0.0068F});
    if (boxes) {
      add_bar(marks, {right - 0.036F, y + 0.0118F}, {right, y + 0.0122F});
      add_bar(marks, {right - 0.036F, y}, {right - 0.0356F, y + 0.0122F});
      add_bar(marks, {right - 0.0004F, y}, {right, y + 0.0122F});
    }
  }
  return marks;
}

}  // namespace

PartItems build_papers(MeshStore& store, const bench::BenchSetup& setup) {
  PartItems parts;
  const Typeface face = Typeface::find(true);
  Mesh sheet;
  append(sheet, rounded_box({kWide_m, kTall_m, 0.0006F}, 0.0002F, 1));
  const auto raised = [](const glm::mat4& pose, float z) { return glm::translate(pose, {0.0F, 0.0F, z}); };
  const auto add = [&](Mesh mesh, const glm::mat4& pose, const Material& material, event::ThingId thing) {
    parts.push_back(
        placed_item(store, std::move(mesh), pose, material, thing, event::PlaceKind::Body, pose, glm::vec3(pose[3])));
  };
  const event::ThingId card = bench::first_of(setup, bench::ThingKind::Card);
  const glm::mat4 card_at = lying(card_spot());
  // job card on a board with a spring clip
  Material board = wood();
  board.color = {0.40F, 0.29F, 0.18F};
  add(rounded_box({kWide_m + 0.022F, kTall_m + 0.030F, 0.004F}, 0.0015F), raised(card_at, 0.0020F), board, card);
  add(sheet, raised(card_at, 0.0044F), paper(), card);
  parts.push_back(plain_item(store, ruled(face, "Job card", 9, true), raised(card_at, 0.0048F), ink()));
  Mesh clip;
  append(clip, rounded_box({0.070F, 0.016F, 0.006F}, 0.002F),
         glm::translate(glm::mat4(1.0F), {0.0F, 0.5F * kTall_m + 0.002F, 0.0F}));
  append(clip, rounded_box({0.034F, 0.012F, 0.004F}, 0.0018F),
         glm::translate(glm::mat4(1.0F), {0.0F, 0.5F * kTall_m + 0.014F, 0.0015F}));
  add(std::move(clip), raised(card_at, 0.0075F), stainless(), card);
  const event::ThingId spec = bench::first_of(setup, bench::ThingKind::Sheet);
  const glm::mat4 spec_at = lying(sheet_spot());
  Material laminated = paper();
  laminated.color = {0.86F, 0.88F, 0.86F};
  laminated.roughness_1 = 0.30F;
  add(sheet, raised(spec_at, 0.0004F), laminated, spec);
  Mesh print = ruled(face, "Maker's sheet", 6, false);
  // a small drawing: a disc with its six holes
  for (int i = 0; i < 6; ++i) {
    const float angle = 1.0472F * static_cast<float>(i);
    append(print, flat_face({circle(0.0022, {}, 0.0001)}, static_cast<double>(kMarkLift_m)),
           glm::translate(glm::mat4(1.0F), {0.011F * std::cos(angle), -0.080F + 0.011F * std::sin(angle), 0.0F}));
  }
  append(print,
         flat_face({circle(0.026, {}, 0.0001), reversed(circle(0.0255, {}, 0.0001))}, static_cast<double>(kMarkLift_m)),
         glm::translate(glm::mat4(1.0F), {0.0F, -0.080F, 0.0F}));
  parts.push_back(plain_item(store, std::move(print), raised(spec_at, 0.0008F), ink()));
  return parts;
}

}  // namespace proofstand::scene
