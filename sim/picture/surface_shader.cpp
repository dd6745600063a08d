#include "sim/picture/surface_shader.h"

#include <glm/gtc/type_ptr.hpp>
#include <utility>

namespace proofstand::picture {
namespace {

constexpr GLint kFilmUnit = 0;
constexpr GLint kKeyUnit = 1;
constexpr GLint kSkyUnit = 2;

void bind_at(GLint unit, GLuint texture) {
  glActiveTexture(GL_TEXTURE0 + static_cast<GLenum>(unit));
  glBindTexture(GL_TEXTURE_2D, texture);
}

}  // namespace

SurfaceShader::SurfaceShader(Program surface, Program backdrop)
    : surface_(std::move(surface)),
      backdrop_(std::move(backdrop)),
      pose_(surface_.place_of("part_to_world")),
      color_(surface_.place_of("color")),
      grain_(surface_.place_of("surface")),
      film_on_(surface_.place_of("film_on")) {}

base::Result<std::unique_ptr<SurfaceShader>> SurfaceShader::make(const std::string& defines) {
  auto surface = Program::make("surface.vert", "surface.frag", {"studio.glsl", "tone.glsl"}, defines);
  if (!surface) return surface.error();
  auto backdrop = Program::make("whole.vert", "backdrop.frag", {"tone.glsl"}, defines);
  if (!backdrop) return backdrop.error();
  std::unique_ptr<SurfaceShader> shader(new SurfaceShader(std::move(*surface), std::move(*backdrop)));
  shader->surface_.use();
  shader->surface_.set("film", kFilmUnit);
  shader->surface_.set("key_map", kKeyUnit);
  shader->surface_.set("sky_map", kSkyUnit);
  return shader;
}

void SurfaceShader::draw_item(const scene::Item& item, const MeshShelf& shelf, const FilmShelf& films) const {
  const scene::Material& material = item.material;
  glUniformMatrix4fv(pose_, 1, GL_FALSE, glm::value_ptr(item.pose));
  glUniform3fv(color_, 1, glm::value_ptr(material.color));
  glUniform4f(grain_, material.roughness_1, material.metal_1, material.glow_1, static_cast<float>(material.grain));
  const GLuint film = films.texture(item.film);
  glUniform1i(film_on_, film != 0 ? 1 : 0);
  if (film != 0) bind_at(kFilmUnit, film);
  shelf.draw(item.mesh);
}

void SurfaceShader::draw(const std::vector<scene::Item>& items, const std::vector<std::size_t>& order,
                         const MeshShelf& shelf, const FilmShelf& films, GLuint key_map, GLuint sky_map) const {
  glDisable(GL_BLEND);
  glDisable(GL_SCISSOR_TEST);
  glDisable(GL_STENCIL_TEST);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  glEnable(GL_DEPTH_TEST);
  glDepthMask(GL_TRUE);
  glDepthFunc(GL_LESS);
  glEnable(GL_CULL_FACE);
  glCullFace(GL_BACK);
  glFrontFace(GL_CCW);
  glClear(GL_DEPTH_BUFFER_BIT);  // colours are all covered by the backdrop
  bind_at(kSkyUnit, sky_map);
  bind_at(kKeyUnit, key_map);
  bind_at(kFilmUnit, 0);
  surface_.use();
  shelf.bind();
  for (const std::size_t i : order) draw_item(items[i], shelf, films);
  // last, so that only what is still empty is shaded
  glDepthFunc(GL_LEQUAL);
  backdrop_.use();
  glDrawArrays(GL_TRIANGLES, 0, 3);
  glDepthFunc(GL_LESS);
}

}  // namespace proofstand::picture
