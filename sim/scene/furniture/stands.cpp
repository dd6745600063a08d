#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/dimensions.h"
#include "sim/scene/extrude.h"
#include "sim/scene/furniture/furniture.h"
#include "sim/scene/layout.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"
#include "sim/scene/sweep.h"

namespace proofstand::scene {
namespace {

constexpr double kSag_m = 0.0002;

glm::mat4 at(float x, float y, float z) { return glm::translate(glm::mat4(1.0F), {x, y, z}); }

Material enamel() { return paint({0.235F, 0.300F, 0.265F}); }

// drawn in x and y, thick along z
Mesh plate(const Loop& outline, double from_z, double to_z, double chamfer_m) {
  return extrude({outline}, {from_z, to_z, chamfer_m, chamfer_m});
}

glm::mat4 pointing(const glm::vec3& from, const glm::vec3& to) {
  const glm::vec3 z = glm::normalize(to - from);
  const glm::vec3 x =
      glm::normalize(glm::cross(std::abs(z.y) < 0.9F ? glm::vec3(0.0F, 1.0F, 0.0F) : glm::vec3(0.0F, 0.0F, 1.0F), z));
  return {glm::vec4(x, 0.0F), glm::vec4(glm::cross(z, x), 0.0F), glm::vec4(z, 0.0F), glm::vec4(from, 1.0F)};
}

Mesh round_bar(const glm::vec3& from, const glm::vec3& to, double radius_m) {
  Mesh mesh;
  append(mesh, bar(radius_m, 0.0, static_cast<double>(glm::length(to - from)), 0.001, kSag_m), pointing(from, to));
  return mesh;
}

}  // namespace

// One upright on the far side carries the axle on a pin, so that nothing stands before the disc.
PartItems build_wheel_stand(MeshStore& store, const bench::BenchSetup& setup) {
  PartItems parts;
  const event::ThingId thing = bench::first_of(setup, bench::ThingKind::WheelStand);
  const double end = 0.5 * size::kOverEnds;
  glm::mat4 frame(1.0F);  // seen from the disc side: x to the mechanic's right, z to them
  frame[0] = {-1.0F, 0.0F, 0.0F, 0.0F};
  frame[2] = {0.0F, 0.0F, -1.0F, 0.0F};
  const auto add = [&](Mesh mesh, const Material& material) {
    parts.push_back(placed_item(store, std::move(mesh), glm::mat4(1.0F), material, thing, event::PlaceKind::StandSlot,
                                frame, glm::vec3(0.0F, 0.0F, static_cast<float>(end) + 0.01F)));
  };
  const double foot = static_cast<double>(kBenchTop_y) + 0.010;
  Loop upright = {
      {-0.060, foot - 0.002}, {0.060, foot - 0.002}, {0.040, foot + 0.05}, {0.021, foot + 0.18}, {0.020, -0.004}};
  for (const glm::dvec2& p : arc(0.020, 0.0, 3.14159265358979, {0.0, 0.0}, kSag_m)) upright.push_back(p);
  upright.insert(upright.end(), {{-0.020, -0.004}, {-0.021, foot + 0.18}, {-0.040, foot + 0.05}});
  add(plate(upright, end + 0.002, end + 0.020, 0.0022), enamel());
  // rib behind it
  add(plate({{-0.007, foot}, {0.007, foot}, {0.007, -0.05}, {-0.007, -0.05}}, end + 0.018, end + 0.046, 0.0025),
      enamel());
  Mesh base;
  append(base, rounded_box({0.250F, 0.010F, 0.210F}, 0.0035F, 3), at(0.0F, kBenchTop_y + 0.005F, 0.045F));
  add(std::move(base), enamel());
  Mesh pads;
  for (const float x : {-0.105F, 0.105F}) {
    for (const float z : {-0.045F, 0.135F})
      append(pads, bar(0.012, 0.0, 0.0045, 0.0012, kSag_m),
             at(x, kBenchTop_y + 0.0100F, z) * glm::rotate(glm::mat4(1.0F), -1.5707963F, glm::vec3(1.0F, 0.0F, 0.0F)));
  }
  add(std::move(pads), stainless());
  // the pin through the hub, its nut on the disc side, its grip on the other
  add(bar(0.0058, -end - 0.010, end + 0.055, 0.0010, kSag_m), stainless());
  Mesh nut = extrude({regular_polygon(6, 0.015), reversed(circle(0.0050, {0.0, 0.0}, kSag_m))},
                     {-end - 0.0065, -end - 0.0004, 0.0008, 0.0003});
  add(std::move(nut), aluminium());
  Loop knob;
  for (int i = 0; i < 60; ++i) {
    const double angle = 6.28318530717958647693 * i / 60.0;
    const double r = 0.021 + 0.0022 * std::cos(6.0 * angle);
    knob.push_back({r * std::cos(angle), r * std::sin(angle)});
  }
  add(extrude({knob}, {end + 0.048, end + 0.066, 0.003, 0.003}), plastic({0.235F, 0.318F, 0.225F}));
  return parts;
}

// A post beside the bench, its jaw round the top tube of a bicycle's front half.
PartItems build_work_stand(MeshStore& store, const bench::BenchSetup& /*setup*/) {
  PartItems parts;
  // steering axis as the fork's: leaning back 19° from upright, the axle a rake before it
  const glm::vec3 up(-0.3256F, 0.9455F, 0.0F);
  const glm::vec3 fore(0.9455F, 0.3256F, 0.0F);
  const auto rake = static_cast<float>(size::kForkRake);
  const auto reach = static_cast<float>(size::kAxleToCrown);
  const float along = std::sqrt(reach * reach - rake * rake);
  const glm::vec3 crown = kBikeAxle - rake * fore + along * up;
  const glm::vec3 head_foot = crown + 0.012F * up;
  const glm::vec3 head_top = head_foot + 0.135F * up;
  Material frame_paint = paint({0.62F, 0.57F, 0.47F});
  frame_paint.roughness_1 = 0.20F;
  const auto add = [&](Mesh mesh, const Material& material) {
    parts.push_back(plain_item(store, std::move(mesh), glm::mat4(1.0F), material));
  };
  add(round_bar(head_foot, head_top, 0.0225), frame_paint);
  Mesh cups = round_bar(head_foot - 0.010F * up, head_foot + 0.002F * up, 0.0245);
  append(cups, round_bar(head_top - 0.002F * up, head_top + 0.014F * up, 0.0245));
  add(std::move(cups), black_oxide());
  const glm::vec3 top_from = head_foot + 0.105F * up;
  const glm::vec3 down_from = head_foot + 0.035F * up;
  const glm::vec3 top_to = top_from + glm::vec3(-0.56F, -0.02F, 0.0F);
  Mesh tubes = round_bar(top_from, top_to, 0.0160);
  append(tubes, round_bar(down_from, down_from + glm::vec3(-0.42F, -0.40F, 0.0F), 0.0180));
  add(std::move(tubes), frame_paint);
  Mesh stem = round_bar(head_top + 0.014F * up, head_top + 0.060F * up, 0.0150);
  const glm::vec3 clamp = head_top + 0.045F * up + glm::vec3(0.075F, 0.012F, 0.0F);
  append(stem, round_bar(head_top + 0.045F * up, clamp, 0.0140));
  append(stem, round_bar(clamp + glm::vec3(0.0F, 0.0F, -0.024F), clamp + glm::vec3(0.0F, 0.0F, 0.024F), 0.0190));
  add(std::move(stem), black_oxide());
  add(tube({clamp + glm::vec3(0.0F, 0.0F, -0.20F), clamp, clamp + glm::vec3(0.0F, 0.0F, 0.20F)}, 0.0158F, 16),
      anodised({0.09F, 0.09F, 0.09F}));
  // the stand
  const glm::vec3 jaw = glm::mix(top_from, top_to, 0.72F);
  const glm::vec3 post_at(jaw.x, 0.0F, jaw.z + 0.20F);
  add(round_bar({post_at.x, kFloor_y + 0.02F, post_at.z}, {post_at.x, jaw.y + 0.09F, post_at.z}, 0.0190), enamel());
  add(round_bar({post_at.x, jaw.y, post_at.z + 0.03F}, {jaw.x, jaw.y, jaw.z + 0.03F}, 0.0150), stainless());
  Mesh head;
  append(head, rounded_box({0.075F, 0.026F, 0.075F}, 0.006F, 1), at(jaw.x, jaw.y + 0.031F, jaw.z + 0.004F));
  append(head, rounded_box({0.075F, 0.026F, 0.075F}, 0.006F, 1), at(jaw.x, jaw.y - 0.031F, jaw.z + 0.004F));
  append(head, rounded_box({0.075F, 0.080F, 0.018F}, 0.005F, 1), at(jaw.x, jaw.y, jaw.z + 0.036F));
  add(std::move(head), enamel());
  Mesh pads;
  append(pads, rounded_box({0.070F, 0.006F, 0.060F}, 0.002F, 1), at(jaw.x, jaw.y + 0.0170F, jaw.z));
  append(pads, rounded_box({0.070F, 0.006F, 0.060F}, 0.002F, 1), at(jaw.x, jaw.y - 0.0170F, jaw.z));
  add(std::move(pads), rubber());
  Mesh feet;
  for (int i = 0; i < 3; ++i) {
    const float angle = 2.0944F * static_cast<float>(i) + 0.5F;
    const glm::vec3 out(std::cos(angle), 0.0F, std::sin(angle));
    const glm::vec3 hub(post_at.x, kFloor_y + 0.075F, post_at.z);
    append(feet, round_bar(hub, hub + out * 0.52F - glm::vec3(0.0F, 0.055F, 0.0F), 0.0150));
  }
  append(feet, round_bar({post_at.x, kFloor_y + 0.03F, post_at.z}, {post_at.x, kFloor_y + 0.15F, post_at.z}, 0.0260));
  add(std::move(feet), enamel());
  return parts;
}

}  // namespace proofstand::scene
