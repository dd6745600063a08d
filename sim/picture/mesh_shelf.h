// All meshes of a workshop in the graphics memory, in one piece.
#pragma once

#include <glad/gl.h>

#include <vector>

#include "sim/scene/mesh.h"
#include "sim/scene/scene.h"

namespace proofstand::picture {

class MeshShelf {
 public:
  MeshShelf() = default;
  ~MeshShelf();
  MeshShelf(const MeshShelf&) = delete;
  MeshShelf& operator=(const MeshShelf&) = delete;

  /// Replaces what was kept.
  void keep(const std::vector<scene::Mesh>& meshes);
  /// Before draw().
  void bind() const;
  /// The triangles of one mesh; nothing for a number that was never kept.
  void draw(scene::MeshId mesh) const;
  /// In the part's own frame.
  [[nodiscard]] scene::Ball ball(scene::MeshId mesh) const;
  [[nodiscard]] bool holds(scene::MeshId mesh) const { return mesh < stretches_.size(); }

 private:
  struct Stretch {
    GLsizei count = 0;
    std::size_t first = 0;
    GLint base = 0;
    scene::Ball ball;
  };
  void drop();
  GLuint list_ = 0;
  GLuint vertices_ = 0;
  GLuint indices_ = 0;
  std::vector<Stretch> stretches_;
};

}  // namespace proofstand::picture
