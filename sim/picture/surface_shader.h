// The shader of all surfaces, in one of its three editions, and the backdrop behind them.
#pragma once

#include <array>
#include <memory>
#include <string>
#include <vector>

#include "sim/base/result.h"
#include "sim/picture/film_shelf.h"
#include "sim/picture/mesh_shelf.h"
#include "sim/picture/program.h"
#include "sim/scene/scene.h"

namespace proofstand::picture {

class SurfaceShader {
 public:
  /// defines: "#define TAPS 4\n" and the like; see surface.frag
  /// errors   "shader"; only the edition that most things need is compiled at once, the others when they are needed
  static base::Result<std::unique_ptr<SurfaceShader>> make(const std::string& defines);

  /// Draws these items and the backdrop onto the plate that was begun, after clearing its depths.
  /// sky_map: 0 where the edition looks into none. lamp: is the hand lamp on?
  void draw(const std::vector<scene::Item>& items, const std::vector<std::size_t>& order, const MeshShelf& shelf,
            const FilmShelf& films, GLuint key_map, GLuint sky_map, bool lamp);

 private:
  /// One edition's program and where its uniforms are.
  struct Edition {
    bool tried = false;
    Program program;
    GLint pose = -1, color = -1, surface = -1;
  };
  static constexpr std::size_t kKinds = 5;  ///< as scene::Grain, and what is too rough to mirror anything

  SurfaceShader(std::string defines, Program backdrop);
  base::Result<base::Done> compile(std::size_t number);
  Edition& edition_of(std::size_t kind, bool film, bool lamp);
  std::string defines_;
  Program backdrop_;
  std::array<Edition, 4 * kKinds> editions_;
};

}  // namespace proofstand::picture
