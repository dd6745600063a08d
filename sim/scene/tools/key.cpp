#include "sim/scene/mesh_normals.h"
#include "sim/scene/sweep.h"
#include "sim/scene/tools/pieces.h"

namespace proofstand::scene {
namespace {

constexpr float kBend_m = 0.006F;
constexpr float kChamfer_m = 0.0004F;

Mesh arm(const Loop& section, std::vector<glm::vec3> path, bool chamfered_start, bool chamfered_end) {
  std::vector<float> scale(path.size(), 1.0F);
  const auto pull = [&path, &scale](bool start) {
    const std::size_t end = start ? 0 : path.size() - 1;
    const std::size_t next = start ? 1 : path.size() - 2;
    const glm::vec3 along = glm::normalize(path[next] - path[end]);
    const auto at = path.begin() + static_cast<std::ptrdiff_t>(start ? 1 : path.size() - 1);
    const auto at_scale = scale.begin() + static_cast<std::ptrdiff_t>(start ? 1 : scale.size() - 1);
    const glm::vec3 shoulder = path[end] + along * kChamfer_m;
    path.insert(at, shoulder);
    scale.insert(at_scale, 1.0F);
    (start ? scale.front() : scale.back()) = 0.84F;
  };
  if (chamfered_start) pull(true);
  if (chamfered_end) pull(false);
  return sweep(section, path, {0.0F, 1.0F, 0.0F}, scale);
}

}  // namespace

// Three pieces, so that each grip is one: the arm at the origin, the elbow, the arm that stands off along x.
Pieces build_key(MeshStore& store, const bench::ToolPart& tool) {
  const Loop section = bit_contour(tool.drive);
  const auto up = static_cast<float>(tool.short_arm_m);
  const auto out = static_cast<float>(tool.arm_m);
  const std::vector<glm::vec3> bend = bent_path({{0.0F, 0.0F, 0.0F}, {0.0F, 0.0F, up}, {out, 0.0F, up}}, kBend_m, 8);
  Material steel = black_oxide();
  steel.roughness_1 = 0.34F;
  Pieces pieces;
  const glm::vec3 below(0.0F, 0.0F, up - kBend_m);
  const glm::vec3 beyond(kBend_m, 0.0F, up);
  pieces.push_back({store.keep(arm(section, {{0.0F, 0.0F, 0.0F}, below}, true, false)), steel, event::Grip::Shaft});
  pieces.push_back({store.keep(arm(section, {beyond, {out, 0.0F, up}}, false, true)), steel, event::Grip::Handle});
  const std::vector<glm::vec3> elbow(bend.begin() + 1, bend.end() - 1);
  pieces.push_back({store.keep(arm(section, elbow, false, false)), steel, event::Grip::End});
  return pieces;
}

}  // namespace proofstand::scene
