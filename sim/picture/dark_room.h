// OpenGL without a window: a context that draws into memory, on machines with and without a display.
#pragma once

#include <memory>
#include <string_view>

#include "sim/base/result.h"
#include "sim/picture/painter.h"

namespace proofstand::picture {

/// Holds the context; current on the thread that opened it until it is closed or another is made current.
class DarkRoom {
 public:
  /// library: the EGL library to open.
  /// errors   "no-opengl" with what was tried: no library, no platform without a display, no OpenGL 3.3
  static base::Result<std::unique_ptr<DarkRoom>> open(std::string_view library = "libEGL.so.1");
  ~DarkRoom();
  DarkRoom(const DarkRoom&) = delete;
  DarkRoom& operator=(const DarkRoom&) = delete;

  /// For Painter::create().
  [[nodiscard]] GlLoad load() const;
  void make_current();

 private:
  DarkRoom();
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace proofstand::picture
