#include "sim/picture/painter.h"

#include <glad/gl.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "sim/picture/draw_list.h"
#include "sim/picture/film_shelf.h"
#include "sim/picture/frame_block.h"
#include "sim/picture/gathering.h"
#include "sim/picture/light.h"
#include "sim/picture/mesh_shelf.h"
#include "sim/picture/pick_glass.h"
#include "sim/picture/plate.h"
#include "sim/picture/program.h"
#include "sim/picture/shadow_map.h"
#include "sim/picture/sightings.h"
#include "sim/picture/surface_shader.h"

namespace proofstand::picture {
namespace {

constexpr int kKeyTexels = 2048;
constexpr int kMovingTexels = 1024;
constexpr int kSkyTexels = 1024;          // of one direction among many: its steps vanish in the mean
constexpr int kFirstShown = 8;            // fewer samples of a still look worse than the draft that they replace
constexpr int kShownEach = 4;             // developing costs a pass; the eye needs no more
constexpr float kLeastSeen = 4e-4F;       // of the picture's height: a quarter of a texel
constexpr float kLeastInDraft = 1.5e-3F;  // half a texel or two: nobody sees it go while things move

float aspect_of(Size size) { return static_cast<float>(size.width) / static_cast<float>(size.height); }

std::string words_of(GLenum what) {
  const GLubyte* words = glGetString(what);
  return words == nullptr ? std::string() : std::string(reinterpret_cast<const char*>(words));  // NOLINT: its type
}

glm::vec4 with_texel(const glm::vec3& towards, const ShadowBall& ball, int texels) {
  return {towards, 2.0F * ball.radius / static_cast<float>(texels)};
}

}  // namespace

struct Painter::Inside {
  std::string renderer;
  MeshShelf shelf;
  FilmShelf films;
  FrameUniforms uniforms;
  Program shadow;
  std::unique_ptr<SurfaceShader> draft, normal, still;
  std::unique_ptr<PickGlass> glass;
  std::unique_ptr<Gathering> gathering;
  Plate quick{{GL_RGBA8}, true};
  Plate smooth{{GL_RGBA8}, true, 4};
  Plate smooth_done{{GL_RGBA8}, false};
  const Plate* last = nullptr;

  ShadowMap key{kKeyTexels};
  ShadowMap soft_key{kKeyTexels};
  ShadowMap sky{kSkyTexels};
  ShadowBall ball;
  ShadowMap moving_key{kMovingTexels};
  ShadowBall key_ball;           // the one that the map was drawn for
  std::vector<Caster> key_cast;  // and the things
  std::vector<Caster> last_cast;

  // what refine() goes on with
  scene::Scene scene;
  scene::View view;
  int wanted_samples = 0;

  base::Result<base::Done> make_shaders();
  const ShadowMap& draw_key(FrameBlock& block, bool roughly);
  void draw_quick(Size size, const Quality& quality);
  void draw_smooth(Size size);
  void draw_one(SurfaceShader& shader, FrameBlock block, GLuint key_map, GLuint sky_map, float least_1);
  void add_sample();
};

base::Result<base::Done> Painter::Inside::make_shaders() {
  auto drafts = SurfaceShader::make("#define TAPS 1\n");
  if (!drafts) return drafts.error();
  auto normals = SurfaceShader::make("#define TAPS 4\n");
  if (!normals) return normals.error();
  auto stills = SurfaceShader::make("#define STILL\n");
  if (!stills) return stills.error();
  auto shadows = Program::make("shadow.vert", "shadow.frag");
  if (!shadows) return shadows.error();
  auto glasses = PickGlass::make();
  if (!glasses) return glasses.error();
  auto gatherings = Gathering::make();
  if (!gatherings) return gatherings.error();
  draft = std::move(*drafts);
  normal = std::move(*normals);
  still = std::move(*stills);
  shadow = std::move(*shadows);
  glass = std::move(*glasses);
  gathering = std::move(*gatherings);
  return base::Done{};
}

Painter::Painter() : inside_(std::make_unique<Inside>()) {}
Painter::~Painter() = default;

base::Result<std::unique_ptr<Painter>> Painter::create(GlLoad load) {
  const int edition = gladLoadGL(load);
  if (GLAD_VERSION_MAJOR(edition) * 10 + GLAD_VERSION_MINOR(edition) < 33) {
    return base::Error{"no-opengl", "", "the graphics driver offers no OpenGL 3.3",
                       "update the graphics driver, or install Mesa's software renderer (Debian: libgl1-mesa-dri)"};
  }
  std::unique_ptr<Painter> painter(new Painter());
  painter->inside_->renderer = words_of(GL_RENDERER) + ", OpenGL " + words_of(GL_VERSION);
  const auto made = painter->inside_->make_shaders();
  if (!made) return made.error();
  return painter;
}

void Painter::keep(const std::vector<scene::Mesh>& meshes) {
  inside_->shelf.keep(meshes);
  inside_->key_cast.clear();
  inside_->key_ball = {};
  inside_->wanted_samples = 0;
}

const std::string& Painter::renderer() const { return inside_->renderer; }

// the key light's map, drawn again only when something moved or the view went out of the ball; coarser in a draft while
// things move from picture to picture
const ShadowMap& Painter::Inside::draw_key(FrameBlock& block, bool roughly) {
  std::vector<Caster> cast = casters_of(scene.items);
  const bool serves = key_ball.radius == ball.radius && key_ball.centre == ball.centre && cast == key_cast;
  const bool rests = cast == last_cast;
  ShadowMap& map = roughly && !serves && !rests ? moving_key : key;
  const glm::mat4 world_to_map = light_matrix(ball, key_middle(), map.texels());
  if (&map == &moving_key || !serves) map.draw(shadow, shelf, scene.items, world_to_map);
  if (&map == &key) {
    key_ball = ball;
    key_cast = cast;
  }
  last_cast = std::move(cast);
  block.world_to_key = to_texture(world_to_map);
  block.key_towards = with_texel(key_middle(), ball, map.texels());
  return map;
}

void Painter::Inside::draw_one(SurfaceShader& shader, FrameBlock block, GLuint key_map, GLuint sky_map, float least_1) {
  uniforms.send(block);
  const std::vector<std::size_t> order =
      seen_items(scene.items, shelf, block.world_to_clip, glm::vec3(block.eye), least_1);
  shader.draw(scene.items, order, shelf, films, key_map, sky_map, scene.lamp.strength_1 > 0.0F);
}

void Painter::Inside::draw_quick(Size size, const Quality& quality) {
  FrameBlock block = frame_block(view, aspect_of(size), scene.lamp);
  const ShadowMap& map = draw_key(block, true);
  const float scale = std::clamp(quality.scale_1, 0.5F, 1.0F);
  quick.begin({std::max(1, static_cast<int>(std::lround(static_cast<float>(size.width) * scale))),
               std::max(1, static_cast<int>(std::lround(static_cast<float>(size.height) * scale)))});
  draw_one(*draft, block, map.texture(), 0, kLeastInDraft);
  last = &quick;
}

void Painter::Inside::draw_smooth(Size size) {
  FrameBlock block = frame_block(view, aspect_of(size), scene.lamp);
  const ShadowMap& map = draw_key(block, false);
  smooth_done.begin(size);
  smooth.begin(size);
  glEnable(GL_MULTISAMPLE);
  draw_one(*normal, block, map.texture(), 0, kLeastSeen);
  smooth.copy_to(smooth_done);
  last = &smooth_done;
}

void Painter::Inside::add_sample() {
  const int number = gathering->count() + 1;
  const Size size = gathering->size();
  // a tent of 1.4 texels across: sharp without steps
  const auto tent = [](float u) { return u < 0.5F ? std::sqrt(2.0F * u) - 1.0F : 1.0F - std::sqrt(2.0F - 2.0F * u); };
  const glm::vec2 spot = strewn(number);
  const glm::vec2 other = strewn(number + 1000);  // the same evenness, elsewhere in the row
  const glm::vec2 jitter(0.7F * tent(spot.x), 0.7F * tent(spot.y));
  FrameBlock block =
      frame_block(view, aspect_of(size), scene.lamp,
                  2.0F * jitter / glm::vec2(static_cast<float>(size.width), static_cast<float>(size.height)));
  const glm::vec3 key_towards = key_sample(other.x, other.y);
  const glm::vec3 sky_towards = sky_sample(spot.y, spot.x);
  const glm::vec2 nudge = glm::vec2(other.y, spot.x) - 0.5F;
  const glm::mat4 to_key = light_matrix(ball, key_towards, kKeyTexels, nudge);
  const glm::mat4 to_sky = light_matrix(ball, sky_towards, kSkyTexels, -nudge);
  soft_key.draw(shadow, shelf, scene.items, to_key);
  sky.draw(shadow, shelf, scene.items, to_sky);
  block.world_to_key = to_texture(to_key);
  block.world_to_sky = to_texture(to_sky);
  block.key_towards = with_texel(key_towards, ball, kKeyTexels);
  block.sky_towards = with_texel(sky_towards, ball, kSkyTexels);
  block.eye.w = other.x;
  gathering->begin_sample();
  draw_one(*still, block, soft_key.texture(), sky.texture(), kLeastSeen);
  gathering->add_sample();
}

void Painter::draw(const scene::Scene& scene, const scene::View& view, Size size, const Quality& quality) {
  Inside& in = *inside_;
  STAND_ASSERT(size.width > 0 && size.height > 0);
  in.scene = scene;
  in.view = view;
  in.ball = ball_for(view, in.ball);
  in.films.keep(scene.films);
  in.wanted_samples = 0;
  switch (quality.fineness) {
    case Fineness::Draft:
      in.draw_quick(size, quality);
      break;
    case Fineness::Normal:
      in.draw_smooth(size);
      break;
    case Fineness::Still:
      in.wanted_samples = std::max(1, quality.samples);
      in.gathering->clear(size);
      refine();
      break;
  }
  glBindFramebuffer(GL_FRAMEBUFFER, 0);
}

bool Painter::refine() {
  Inside& in = *inside_;
  if (in.gathering->count() >= in.wanted_samples) return false;
  in.add_sample();
  const int count = in.gathering->count();
  const bool done = count >= in.wanted_samples;
  if (done || in.last == nullptr || (count >= kFirstShown && count % kShownEach == 0)) {
    in.gathering->develop();
    in.last = &in.gathering->picture();
  }
  glBindFramebuffer(GL_FRAMEBUFFER, 0);
  return !done;
}

unsigned Painter::texture() const { return inside_->last == nullptr ? 0 : inside_->last->texture(); }

Size Painter::texture_size() const { return inside_->last == nullptr ? Size{} : inside_->last->size(); }

Image Painter::read() const {
  Image image;
  if (inside_->last == nullptr) return image;
  image.size = inside_->last->size();
  const std::size_t row = static_cast<std::size_t>(image.size.width) * 3;
  const auto rows = static_cast<std::size_t>(image.size.height);
  std::vector<std::uint8_t> upwards(row * rows);
  glBindFramebuffer(GL_FRAMEBUFFER, inside_->last->frame());
  glReadBuffer(GL_COLOR_ATTACHMENT0);
  glPixelStorei(GL_PACK_ALIGNMENT, 1);
  glReadPixels(0, 0, image.size.width, image.size.height, GL_RGB, GL_UNSIGNED_BYTE, upwards.data());
  glBindFramebuffer(GL_FRAMEBUFFER, 0);
  image.bytes.resize(upwards.size());
  for (std::size_t y = 0; y < rows; ++y)
    std::copy_n(upwards.begin() + static_cast<std::ptrdiff_t>((rows - 1 - y) * row), row,
                image.bytes.begin() + static_cast<std::ptrdiff_t>(y * row));
  return image;
}

std::vector<Hit> Painter::pick_around(const scene::Scene& scene, const scene::View& view, Size size, glm::vec2 point_px,
                                      float reach_px) {
  const int side = 2 * static_cast<int>(std::ceil(std::max(0.0F, reach_px))) + 1;
  const glm::vec3 eye = scene::eye_of(view);
  const glm::mat4 world_to_clip = scene::projection_matrix(view, aspect_of(size)) * scene::view_matrix(view);
  const auto glimpses = inside_->glass->look(scene, inside_->shelf,
                                             narrowed(world_to_clip, size, point_px, {side, side}), eye, {side, side});
  glBindFramebuffer(GL_FRAMEBUFFER, 0);
  return nearest_of(glimpses, {side, side}, point_px, reach_px, eye);
}

std::optional<Hit> Painter::pick(const scene::Scene& scene, const scene::View& view, Size size, glm::vec2 point_px,
                                 float reach_px) {
  const std::vector<Hit> hits = pick_around(scene, view, size, point_px, reach_px);
  if (hits.empty()) return std::nullopt;
  return hits.front();
}

std::vector<Hit> Painter::look_over(const scene::Scene& scene, const scene::View& view, Size size) {
  constexpr float kSide_px = 2.0F;
  const Size window{std::max(1, size.width / 2), std::max(1, size.height / 2)};
  const glm::vec3 eye = scene::eye_of(view);
  const glm::mat4 world_to_clip = scene::projection_matrix(view, aspect_of(size)) * scene::view_matrix(view);
  const auto glimpses = inside_->glass->look(scene, inside_->shelf, world_to_clip, eye, window);
  glBindFramebuffer(GL_FRAMEBUFFER, 0);
  return middles_of(glimpses, window, kSide_px, eye);
}

}  // namespace proofstand::picture
