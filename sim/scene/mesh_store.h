// Where a workshop's meshes are kept, each once.
#pragma once

#include <utility>
#include <vector>

#include "sim/scene/mesh.h"
#include "sim/scene/scene.h"

namespace proofstand::scene {

class MeshStore {
 public:
  MeshId keep(Mesh mesh) {
    meshes_.push_back(std::move(mesh));
    return static_cast<MeshId>(meshes_.size() - 1);
  }
  [[nodiscard]] const std::vector<Mesh>& all() const { return meshes_; }

 private:
  std::vector<Mesh> meshes_;
};

}  // namespace proofstand::scene
