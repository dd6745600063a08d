// Depths as a light sees them.
#pragma once

#include <glad/gl.h>

#include <glm/glm.hpp>
#include <vector>

#include "sim/picture/mesh_shelf.h"
#include "sim/picture/program.h"
#include "sim/scene/scene.h"

namespace proofstand::picture {

class ShadowMap {
 public:
  explicit ShadowMap(int texels) : texels_(texels) {}
  ~ShadowMap();
  ShadowMap(const ShadowMap&) = delete;
  ShadowMap& operator=(const ShadowMap&) = delete;

  /// Draws the casters among these items. program: of shadow.vert. world_to_map: from light_matrix().
  void draw(const Program& program, const MeshShelf& shelf, const std::vector<scene::Item>& items,
            const glm::mat4& world_to_map);
  [[nodiscard]] GLuint texture() const { return texture_; }
  [[nodiscard]] int texels() const { return texels_; }

 private:
  void make();
  int texels_;
  GLuint texture_ = 0;
  GLuint frame_ = 0;
};

/// What casts shadows and where it stands: equal lists mean an equal map.
struct Caster {
  scene::MeshId mesh = 0;
  glm::mat4 pose{1.0F};
  friend bool operator==(const Caster& a, const Caster& b) { return a.mesh == b.mesh && a.pose == b.pose; }
};
std::vector<Caster> casters_of(const std::vector<scene::Item>& items);

}  // namespace proofstand::picture
