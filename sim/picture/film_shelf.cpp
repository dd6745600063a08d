#include "sim/picture/film_shelf.h"

namespace proofstand::picture {
namespace {

bool is_same(const scene::FilmMap& a, const scene::FilmMap& b) {
  return a.sectors == b.sectors && a.rings == b.rings && a.cells == b.cells;
}

bool is_whole(const scene::FilmMap& map) {
  return map.sectors > 0 && map.rings > 0 &&
         map.cells.size() == static_cast<std::size_t>(map.sectors) * static_cast<std::size_t>(map.rings);
}

GLuint make_texture() {
  GLuint name = 0;
  glGenTextures(1, &name);
  glBindTexture(GL_TEXTURE_2D, name);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_REPEAT);  // the last sector meets the first
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
  return name;
}

}  // namespace

FilmShelf::~FilmShelf() {
  for (const Sheet& sheet : sheets_) glDeleteTextures(1, &sheet.texture);
}

void FilmShelf::keep(const std::vector<scene::FilmMap>& films) {
  while (sheets_.size() < films.size()) sheets_.push_back({make_texture(), {}});
  for (std::size_t i = 0; i < films.size(); ++i) {
    Sheet& sheet = sheets_[i];
    if (!is_whole(films[i]) || is_same(sheet.map, films[i])) continue;
    sheet.map = films[i];
    glBindTexture(GL_TEXTURE_2D, sheet.texture);
    glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA8, sheet.map.sectors, sheet.map.rings, 0, GL_RGBA, GL_UNSIGNED_BYTE,
                 sheet.map.cells.data());
  }
}

GLuint FilmShelf::texture(std::int32_t film) const {
  if (film < 0 || static_cast<std::size_t>(film) >= sheets_.size()) return 0;
  const Sheet& sheet = sheets_[static_cast<std::size_t>(film)];
  return sheet.map.cells.empty() ? 0 : sheet.texture;
}

}  // namespace proofstand::picture
