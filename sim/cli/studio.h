// Takes pictures of a bench without a display.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "sim/base/result.h"
#include "sim/bench/bench.h"
#include "sim/cli/exit_code.h"
#include "sim/picture/dark_room.h"
#include "sim/picture/image.h"
#include "sim/picture/painter.h"
#include "sim/picture/quality.h"
#include "sim/scene/scene.h"

namespace proofstand::cli {

/// "1280x720". errors  "size": not two whole numbers, or beyond 64 .. 8192
base::Result<picture::Size> size_from_words(std::string_view words);

/// Says an error of what draws. What was typed is a matter of usage; OpenGL that is missing is the machine's fault, as
/// a missing file is.
ExitCode say_picture_error(const base::Error& error);

/// A context, a painter and the meshes of one workplace.
class Studio {
 public:
  /// errors  "no-opengl", "shader"
  static base::Result<Studio> open(const bench::BenchSetup& setup);

  /// view: one of scene::view_names()
  /// errors  "view": no such view, or nothing to be seen there now; names those there are
  base::Result<picture::Image> take(const bench::Bench& bench, std::string_view view, picture::Size size,
                                    const picture::Quality& quality);
  [[nodiscard]] const std::string& renderer() const { return painter_->renderer(); }

 private:
  Studio(std::unique_ptr<picture::DarkRoom> room, std::unique_ptr<picture::Painter> painter, scene::Workshop workshop);
  std::unique_ptr<picture::DarkRoom> room_;  // outlives the painter, which belongs to its context
  std::unique_ptr<picture::Painter> painter_;
  scene::Workshop workshop_;
};

}  // namespace proofstand::cli
