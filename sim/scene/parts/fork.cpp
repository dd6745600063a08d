#include "sim/scene/parts/fork.h"

#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/dimensions.h"
#include "sim/scene/extrude.h"
#include "sim/scene/outline.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"
#include "sim/scene/sweep.h"

namespace proofstand::scene {
namespace {

constexpr double kSag_m = 0.0002;
constexpr double kLean_rad = 0.33161;  // 19° back from upright: head angle 71°

// an oval blade that grows from the axle up to the crown
Mesh leg(float side) {
  const auto rake = static_cast<float>(size::kForkRake);
  const float along = std::sqrt(static_cast<float>(size::kAxleToCrown * size::kAxleToCrown) - rake * rake);
  const std::vector<glm::vec3> path = smooth_path({{0.0150F, 0.001F, side * 0.0535F},
                                                   {0.060F, 0.006F, side * 0.0580F},
                                                   {0.130F, 0.020F, side * 0.0600F},
                                                   {0.260F, 0.039F, side * 0.0540F},
                                                   {along - 0.02F, rake, side * 0.0450F},
                                                   {along + 0.012F, rake, side * 0.0330F}},
                                                  6);
  std::vector<float> scale;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const float share = static_cast<float>(i) / static_cast<float>(path.size() - 1);
    scale.push_back(0.62F + 0.38F * std::min(1.0F, 1.6F * share));
  }
  Loop oval = circle(1.0, {0.0, 0.0}, 0.02);
  for (glm::dvec2& p : oval) p *= glm::dvec2(0.0150, 0.0115);
  return sweep(oval, path, {0.0F, 1.0F, 0.0F}, scale);
}

Mesh end(double side) {
  const double inner_m = size::kOverEnds / 2.0 - size::kDropoutRecess;
  const Outline ring = {circle(size::kDropoutBoss / 2.0, {0.0, 0.0}, kSag_m),
                        reversed(circle(0.0061, {0.0, 0.0}, kSag_m))};
  const double from = side * inner_m;
  const double to = side * (inner_m + size::kDropoutThick + 0.003);
  return extrude(ring, {std::min(from, to), std::max(from, to), 0.0012, 0.0012});
}

}  // namespace

glm::mat4 fork_frame() {
  const auto c = static_cast<float>(std::cos(kLean_rad));
  const auto s = static_cast<float>(std::sin(kLean_rad));
  glm::mat4 frame(1.0F);
  frame[0] = {-s, c, 0.0F, 0.0F};
  frame[1] = {-c, -s, 0.0F, 0.0F};
  return frame;
}

ForkMeshes build_fork() {
  ForkMeshes meshes;
  meshes.legs = leg(-1.0F);
  append(meshes.legs, leg(1.0F));
  const auto rake = static_cast<float>(size::kForkRake);
  const float along = std::sqrt(static_cast<float>(size::kAxleToCrown * size::kAxleToCrown) - rake * rake);
  append(meshes.legs, rounded_box({0.038F, 0.040F, 0.084F}, 0.012F, 3),
         glm::translate(glm::mat4(1.0F), glm::vec3(along - 0.004F, rake, 0.0F)));
  meshes.ends = end(-1.0);
  append(meshes.ends, end(1.0));
  const double out_m = size::kOverEnds / 2.0 - size::kDropoutRecess + size::kDropoutThick + 0.003;
  meshes.axle = bar(0.00595, -out_m - 0.001, out_m + 0.001, 0.0004, kSag_m);
  append(meshes.axle, extrude({circle(0.0088, {0.0, 0.0}, kSag_m), reversed(regular_polygon(6, 0.006))},
                              {-out_m - 0.0055, -out_m, 0.0010, 0.0002}));
  append(meshes.axle, bar(0.0050, -out_m - 0.0015, -out_m, 0.0001, kSag_m));
  return meshes;
}

}  // namespace proofstand::scene
