// Draws a scene with OpenGL 3.3 into a texture of its own: the same for the window, for pictures and for tests.
//
// A painter belongs to the context that was current when it was made, and every call needs that context current again.
// It leaves the context's state other than it found it; whoever shares the context sets what it needs.
#pragma once

#include <cstdint>
#include <glm/glm.hpp>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "sim/base/result.h"
#include "sim/picture/hit.h"
#include "sim/picture/image.h"
#include "sim/picture/quality.h"
#include "sim/scene/mesh.h"
#include "sim/scene/scene.h"
#include "sim/scene/view.h"

namespace proofstand::picture {

using GlFunction = void (*)();
/// Address of an OpenGL function by its name, or nothing: eglGetProcAddress, glfwGetProcAddress ...
using GlLoad = GlFunction (*)(const char* name);

class Painter {
 public:
  /// Compiles the shaders in the current context.
  /// errors  "no-opengl" when it offers no OpenGL 3.3, "shader" when the driver refuses a shader (with its words)
  static base::Result<std::unique_ptr<Painter>> create(GlLoad load);
  ~Painter();
  Painter(const Painter&) = delete;
  Painter& operator=(const Painter&) = delete;

  /// The meshes that scenes speak of by number; replaces those kept before.
  void keep(const std::vector<scene::Mesh>& meshes);

  /// Draws a scene. Still: draws its first sample, the picture stays as it was until enough have been gathered.
  void draw(const scene::Scene& scene, const scene::View& view, Size size, const Quality& quality);
  /// Still: adds a sample to what draw() began, with the same scene and view. False when there is nothing to add.
  bool refine();

  /// The last picture: an RGBA8 texture, sRGB bytes, first row at the bottom as OpenGL has it. 0 before the first draw.
  [[nodiscard]] unsigned texture() const;
  /// Its size in texels: less than asked for in a draft at a lower scale.
  [[nodiscard]] Size texture_size() const;
  /// The last picture's bytes; waits for the renderer.
  [[nodiscard]] Image read() const;

  /// The place under a point, or else the nearest one that is seen within reach of it. Items without a place hide
  /// nothing: a hand that hovers is in nobody's way.
  /// point_px  [px] from the upper left corner of a picture of this size
  /// reach_px  [px] 0: exactly under the point
  std::optional<Hit> pick(const scene::Scene& scene, const scene::View& view, Size size, glm::vec2 point_px,
                          float reach_px = 0.0F);
  /// Every place seen within reach, each at its nearest texel; nearest first, then by depth, then by number.
  std::vector<Hit> pick_around(const scene::Scene& scene, const scene::View& view, Size size, glm::vec2 point_px,
                               float reach_px);
  /// Every place seen in the whole picture, by number: met at the texel that lies nearest to the middle of what is
  /// seen of it. Judged at a lower resolution; texels_seen counts those of the picture's own size, about.
  std::vector<Hit> look_over(const scene::Scene& scene, const scene::View& view, Size size);

  /// OpenGL's names, for a message: renderer and version.
  [[nodiscard]] const std::string& renderer() const;

 private:
  Painter();
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace proofstand::picture
