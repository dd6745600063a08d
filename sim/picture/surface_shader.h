// The shader of all surfaces, in one of its three editions, and the backdrop behind them.
#pragma once

#include <memory>
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
  static base::Result<std::unique_ptr<SurfaceShader>> make(const std::string& defines);

  /// Draws these items and the backdrop onto the plate that was begun, after clearing its depths.
  /// sky_map: 0 where the edition looks into none
  void draw(const std::vector<scene::Item>& items, const std::vector<std::size_t>& order, const MeshShelf& shelf,
            const FilmShelf& films, GLuint key_map, GLuint sky_map) const;

 private:
  SurfaceShader(Program surface, Program backdrop);
  void draw_item(const scene::Item& item, const MeshShelf& shelf, const FilmShelf& films) const;
  Program surface_;
  Program backdrop_;
  GLint pose_, color_, grain_, film_on_;
};

}  // namespace proofstand::picture
