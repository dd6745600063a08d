// One window, on a screen or on none: the same code draws into a real window, into pictures and in tests. Without a
// display it stands on the window library's null platform.
#pragma once

#include <cstdint>
#include <glm/glm.hpp>
#include <memory>
#include <string>
#include <vector>

#include "sim/base/result.h"

struct GLFWwindow;

namespace proofstand::desk {

struct WindowAsk {
  glm::ivec2 size_px{1280, 720};
  float content_scale = 1.0F;  ///< px per 1/96 inch; of a real window the screen says it
  bool screenless = false;     ///< no display: null platform, drawn into memory
  std::string title = "Proofstand";
};

/// 8-bit RGBA, top row first.
struct Picture {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> bytes;
};

class WindowLayer {
 public:
  /// errors: no-window: no display or none that can be opened; no-opengl: no OpenGL 3.3
  static base::Result<std::unique_ptr<WindowLayer>> open(const WindowAsk& ask);
  ~WindowLayer();
  WindowLayer(const WindowLayer&) = delete;
  WindowLayer& operator=(const WindowLayer&) = delete;

  [[nodiscard]] GLFWwindow* handle() const { return window_; }
  [[nodiscard]] bool screenless() const { return ask_.screenless; }
  [[nodiscard]] glm::ivec2 size_px() const;
  [[nodiscard]] float content_scale() const;
  /// Screenless only: as if someone had pulled at the window's edge.
  void resize(const glm::ivec2& size_px);
  /// Someone asked to close it.
  [[nodiscard]] bool closing() const;
  void ask_to_close();
  void set_full_screen(bool full);
  [[nodiscard]] bool full_screen() const { return full_screen_; }
  [[nodiscard]] bool focused() const;

  /// Takes what has come in; waits for it at most this long [s], 0: not at all.
  void take_events(double wait_s);
  /// Makes what follows draw into the window, over all of it.
  void begin_picture();
  /// Shows it. returns false when the graphics context was lost: nothing can be drawn any more
  [[nodiscard]] bool show_picture();
  /// What stands in the window now.
  [[nodiscard]] Picture read() const;

  /// Address of an OpenGL function.
  using GlAddress = void (*)();
  static GlAddress gl_address(const char* name);

 private:
  explicit WindowLayer(const WindowAsk& ask);
  base::Result<base::Done> create();
  void make_canvas();

  WindowAsk ask_;
  GLFWwindow* window_ = nullptr;
  glm::ivec2 canvas_size_{0, 0};
  unsigned canvas_ = 0;
  unsigned canvas_colour_ = 0;
  bool full_screen_ = false;
  glm::ivec4 windowed_{0, 0, 1280, 720};  ///< place and size before full screen
};

}  // namespace proofstand::desk
