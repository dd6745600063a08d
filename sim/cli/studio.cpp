#include "sim/cli/studio.h"

#include <utility>

#include "sim/base/number_text.h"
#include "sim/cli/talk.h"

namespace proofstand::cli {
namespace {

constexpr std::int64_t kLeastSide = 64;
constexpr std::int64_t kMostSide = 8192;  // every OpenGL 3.3 in use draws this much

base::Error no_view(std::string_view view) {
  std::string names;
  for (const std::string_view name : scene::view_names()) names += (names.empty() ? "" : ", ") + std::string(name);
  return base::Error{"view", std::string(view), "there is no such view of this bench now", "choose one of: " + names};
}

}  // namespace

base::Result<picture::Size> size_from_words(std::string_view words) {
  const std::size_t cross = words.find('x');
  const auto side = [](std::string_view part) {
    const auto number = base::int_from_text(part);
    return number && *number >= kLeastSide && *number <= kMostSide ? static_cast<int>(*number) : 0;
  };
  if (cross != std::string_view::npos) {
    const picture::Size size{side(words.substr(0, cross)), side(words.substr(cross + 1))};
    if (size.width > 0 && size.height > 0) return size;
  }
  return base::Error{"size", std::string(words), "this is no size of a picture",
                     "write width x height in pixels, each 64 to 8192, such as 1280x720"};
}

ExitCode say_picture_error(const base::Error& error) {
  const ExitCode code = say_error(error);
  if (error.code == "view" || error.code == "size" || error.code == "time") return ExitCode::Usage;
  return error.code == "no-opengl" || error.code == "shader" ? ExitCode::Files : code;
}

Studio::Studio(std::unique_ptr<picture::DarkRoom> room, std::unique_ptr<picture::Painter> painter,
               scene::Workshop workshop)
    : room_(std::move(room)), painter_(std::move(painter)), workshop_(std::move(workshop)) {}

base::Result<Studio> Studio::open(const bench::BenchSetup& setup) {
  auto room = picture::DarkRoom::open();
  if (!room) return room.error();
  auto painter = picture::Painter::create((*room)->load());
  if (!painter) return painter.error();
  scene::Workshop workshop(setup);
  (*painter)->keep(workshop.meshes());
  return Studio(std::move(*room), std::move(*painter), std::move(workshop));
}

base::Result<picture::Image> Studio::take(const bench::Bench& bench, std::string_view view, picture::Size size,
                                          const picture::Quality& quality) {
  if (const auto close = workshop_.compute_close_up(bench, view)) {
    painter_->draw(close->scene, close->view, size, quality);
  } else {
    const scene::Scene scene = workshop_.compute_scene(bench);
    const auto seen = scene::view_named(bench, scene, view);
    if (!seen) return no_view(view);
    painter_->draw(scene, *seen, size, quality);
  }
  while (painter_->refine()) {
  }
  return painter_->read();
}

}  // namespace proofstand::cli
