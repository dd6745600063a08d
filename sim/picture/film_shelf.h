// Films on faces as textures; only what changed is sent again.
#pragma once

#include <glad/gl.h>

#include <vector>

#include "sim/scene/scene.h"

namespace proofstand::picture {

class FilmShelf {
 public:
  FilmShelf() = default;
  ~FilmShelf();
  FilmShelf(const FilmShelf&) = delete;
  FilmShelf& operator=(const FilmShelf&) = delete;

  void keep(const std::vector<scene::FilmMap>& films);
  /// 0 for a number that is none.
  [[nodiscard]] GLuint texture(std::int32_t film) const;

 private:
  struct Sheet {
    GLuint texture = 0;
    scene::FilmMap map;
  };
  std::vector<Sheet> sheets_;
};

}  // namespace proofstand::picture
