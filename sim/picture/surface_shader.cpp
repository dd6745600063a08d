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

constexpr std::array<const char*, 5> kKindNames = {"GLOSS", "TURNED", "CLOTH", "SKIN", "MATT"};
constexpr std::size_t kGloss = 0;
constexpr std::size_t kMatt = 4;
constexpr float kMirrorsNothing = 0.5F;  // roughness of plastics and paints from which no lamp is made out in them

std::size_t kind_of(const scene::Material& material, bool film) {
  const auto grain = static_cast<std::size_t>(material.grain);
  if (grain == kGloss && !film && material.metal_1 == 0.0F && material.roughness_1 > kMirrorsNothing) return kMatt;
  return grain;
}

}  // namespace

SurfaceShader::SurfaceShader(std::string defines, Program backdrop)
    : defines_(std::move(defines)), backdrop_(std::move(backdrop)) {}

base::Result<std::unique_ptr<SurfaceShader>> SurfaceShader::make(const std::string& defines) {
  auto backdrop = Program::make("whole.vert", "backdrop.frag", {"tone.glsl"}, defines);
  if (!backdrop) return backdrop.error();
  std::unique_ptr<SurfaceShader> shader(new SurfaceShader(defines, std::move(*backdrop)));
  const auto compiled = shader->compile(kGloss);
  if (!compiled) return compiled.error();
  return shader;
}

base::Result<base::Done> SurfaceShader::compile(std::size_t number) {
  Edition& edition = editions_[number];
  edition.tried = true;
  std::string defines = defines_ + "#define " + kKindNames[number % kKinds] + "\n";
  if (number / kKinds % 2 == 1) defines += "#define FILM\n";
  if (number / kKinds / 2 == 1) defines += "#define LAMP\n";
  auto program = Program::make("surface.vert", "surface.frag", {"studio.glsl", "tone.glsl"}, defines);
  if (!program) return program.error();
  edition.program = std::move(*program);
  edition.pose = edition.program.place_of("part_to_world");
  edition.color = edition.program.place_of("color");
  edition.surface = edition.program.place_of("surface");
  edition.program.use();
  edition.program.set("film", kFilmUnit);
  edition.program.set("key_map", kKeyUnit);
  edition.program.set("sky_map", kSkyUnit);
  return base::Done{};
}

// a driver that takes one edition and not another is made do with the one it takes
SurfaceShader::Edition& SurfaceShader::edition_of(std::size_t kind, bool film, bool lamp) {
  const std::size_t number = kind + kKinds * ((film ? 1U : 0U) + (lamp ? 2U : 0U));
  Edition& edition = editions_[number];
  const bool good = edition.pose >= 0 || (!edition.tried && compile(number).has_value());
  return good ? edition : editions_[kGloss];
}

void SurfaceShader::draw(const std::vector<scene::Item>& items, const std::vector<std::size_t>& order,
                         const MeshShelf& shelf, const FilmShelf& films, GLuint key_map, GLuint sky_map, bool lamp) {
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
  shelf.bind();
  const Edition* current = nullptr;
  for (const std::size_t i : order) {
    const scene::Item& item = items[i];
    const GLuint film = films.texture(item.film);
    const Edition& edition = edition_of(kind_of(item.material, film != 0), film != 0, lamp);
    if (current != &edition) edition.program.use();
    current = &edition;
    if (film != 0) bind_at(kFilmUnit, film);
    glUniformMatrix4fv(edition.pose, 1, GL_FALSE, glm::value_ptr(item.pose));
    glUniform3fv(edition.color, 1, glm::value_ptr(item.material.color));
    glUniform3f(edition.surface, item.material.roughness_1, item.material.metal_1, item.material.glow_1);
    shelf.draw(item.mesh);
  }
  // last, so that only what is still empty is shaded
  glDepthFunc(GL_LEQUAL);
  backdrop_.use();
  glDrawArrays(GL_TRIANGLES, 0, 3);
  glDepthFunc(GL_LESS);
}

}  // namespace proofstand::picture
