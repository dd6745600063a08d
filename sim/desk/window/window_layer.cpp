#include "sim/desk/window/window_layer.h"

#include <glad/gl.h>

#include <GLFW/glfw3.h>

namespace proofstand::desk {
namespace {

// what the window library said last; asked for once after something has failed
std::string last_words() {
  const char* words = nullptr;
  glfwGetError(&words);
  return words == nullptr ? std::string("the system gives no reason") : std::string(words);
}

base::Error no_opengl(const std::string& reason) {
  return base::Error{"no-opengl", "the window", "OpenGL 3.3 could not be had: " + reason,
                     "install the graphics driver of this machine, or a software renderer (package libgl1-mesa-dri); "
                     "attempts can be marked and replayed without it"};
}

int g_open = 0;

}  // namespace

base::Result<std::unique_ptr<WindowLayer>> WindowLayer::open(const WindowAsk& ask) {
  std::unique_ptr<WindowLayer> out(new WindowLayer(ask));
  const auto created = out->create();
  if (!created) return created.error();
  return out;
}

WindowLayer::WindowLayer(const WindowAsk& ask) : ask_(ask) {}

WindowLayer::~WindowLayer() {
  if (window_ != nullptr) {
    glfwMakeContextCurrent(window_);
    if (canvas_ != 0) {
      glDeleteFramebuffers(1, &canvas_);
      glDeleteTextures(1, &canvas_colour_);
    }
    glfwDestroyWindow(window_);
  }
  if (--g_open == 0) glfwTerminate();
}

base::Result<base::Done> WindowLayer::create() {
  if (g_open++ == 0) {
    if (ask_.screenless) glfwInitHint(GLFW_PLATFORM, GLFW_PLATFORM_NULL);
    if (glfwInit() == GLFW_FALSE) {
      return base::Error{"no-window", "the window", "no window can be opened here: " + last_words(),
                         "start it where there is a display, or use the other commands, which need none"};
    }
  }
  glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
  glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
  glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
  glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
  glfwWindowHint(GLFW_SCALE_TO_MONITOR, GLFW_TRUE);
  glfwWindowHint(GLFW_DEPTH_BITS, 0);  // the workplace is drawn elsewhere; here are only cards
  glfwWindowHint(GLFW_STENCIL_BITS, 0);
  if (ask_.screenless) {
    glfwWindowHint(GLFW_CONTEXT_CREATION_API, GLFW_EGL_CONTEXT_API);
    glfwWindowHint(GLFW_VISIBLE, GLFW_FALSE);
  }
  window_ = glfwCreateWindow(ask_.size_px.x, ask_.size_px.y, ask_.title.c_str(), nullptr, nullptr);
  if (window_ == nullptr && ask_.screenless) {
    glfwWindowHint(GLFW_CONTEXT_CREATION_API, GLFW_OSMESA_CONTEXT_API);
    window_ = glfwCreateWindow(ask_.size_px.x, ask_.size_px.y, ask_.title.c_str(), nullptr, nullptr);
  }
  if (window_ == nullptr) return no_opengl(last_words());
  glfwMakeContextCurrent(window_);
  if (gladLoadGL(&gl_address) == 0) return no_opengl("its functions cannot be found");
  if (!ask_.screenless) glfwSwapInterval(1);
  if (ask_.screenless) make_canvas();
  return base::Done{};
}

// without a screen there may be no frame buffer to draw into, so one is made
void WindowLayer::make_canvas() {
  if (canvas_size_ == ask_.size_px) return;
  if (canvas_ == 0) {
    glGenFramebuffers(1, &canvas_);
    glGenTextures(1, &canvas_colour_);
  }
  glBindTexture(GL_TEXTURE_2D, canvas_colour_);
  glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA8, ask_.size_px.x, ask_.size_px.y, 0, GL_RGBA, GL_UNSIGNED_BYTE, nullptr);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
  glBindFramebuffer(GL_FRAMEBUFFER, canvas_);
  glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, canvas_colour_, 0);
  canvas_size_ = ask_.size_px;
}

glm::ivec2 WindowLayer::size_px() const {
  if (ask_.screenless) return ask_.size_px;
  glm::ivec2 size{0, 0};
  glfwGetFramebufferSize(window_, &size.x, &size.y);
  return size;
}

float WindowLayer::content_scale() const {
  if (ask_.screenless) return ask_.content_scale;
  float x = 1.0F, y = 1.0F;
  glfwGetWindowContentScale(window_, &x, &y);
  return x > 0.0F ? x : 1.0F;
}

void WindowLayer::resize(const glm::ivec2& size_px) { ask_.size_px = size_px; }

bool WindowLayer::closing() const { return glfwWindowShouldClose(window_) != 0; }

void WindowLayer::ask_to_close() { glfwSetWindowShouldClose(window_, GLFW_TRUE); }

void WindowLayer::set_full_screen(bool full) {
  if (ask_.screenless || full == full_screen_) return;
  GLFWmonitor* monitor = glfwGetPrimaryMonitor();
  const GLFWvidmode* mode = monitor == nullptr ? nullptr : glfwGetVideoMode(monitor);
  if (full && mode != nullptr) {
    glfwGetWindowPos(window_, &windowed_.x, &windowed_.y);
    glfwGetWindowSize(window_, &windowed_.z, &windowed_.w);
    glfwSetWindowMonitor(window_, monitor, 0, 0, mode->width, mode->height, mode->refreshRate);
    full_screen_ = true;
  } else if (!full) {
    glfwSetWindowMonitor(window_, nullptr, windowed_.x, windowed_.y, windowed_.z, windowed_.w, 0);
    full_screen_ = false;
  }
}

bool WindowLayer::focused() const { return ask_.screenless || glfwGetWindowAttrib(window_, GLFW_FOCUSED) != 0; }

void WindowLayer::take_events(double wait_s) {
  if (ask_.screenless || wait_s <= 0.0) {
    glfwPollEvents();
  } else {
    glfwWaitEventsTimeout(wait_s);
  }
}

void WindowLayer::begin_picture() {
  glfwMakeContextCurrent(window_);
  if (ask_.screenless) make_canvas();
  glBindFramebuffer(GL_FRAMEBUFFER, ask_.screenless ? canvas_ : 0);
  const glm::ivec2 size = size_px();
  glViewport(0, 0, size.x, size.y);
  glDisable(GL_SCISSOR_TEST);
  glClearColor(0.9843F, 0.9765F, 0.9569F, 1.0F);
  glClear(GL_COLOR_BUFFER_BIT);
}

bool WindowLayer::show_picture() {
  if (!ask_.screenless) glfwSwapBuffers(window_);
  bool whole = true;
  for (GLenum trouble = glGetError(); trouble != GL_NO_ERROR; trouble = glGetError()) {
    // a lost context answers with errors for ever, so one is enough
    if (trouble == GL_OUT_OF_MEMORY || trouble == 0x0507) return false;  // 0x0507: context lost
    whole = whole && trouble != GL_NO_ERROR;
  }
  return whole;
}

Picture WindowLayer::read() const {
  Picture out;
  const glm::ivec2 size = size_px();
  out.width = size.x;
  out.height = size.y;
  const std::size_t row = static_cast<std::size_t>(size.x) * 4;
  std::vector<std::uint8_t> upside_down(row * static_cast<std::size_t>(size.y));
  glBindFramebuffer(GL_FRAMEBUFFER, ask_.screenless ? canvas_ : 0);
  glPixelStorei(GL_PACK_ALIGNMENT, 1);
  glReadPixels(0, 0, size.x, size.y, GL_RGBA, GL_UNSIGNED_BYTE, upside_down.data());
  out.bytes.resize(upside_down.size());
  for (int y = 0; y < size.y; ++y) {
    const auto from = upside_down.begin() + static_cast<std::ptrdiff_t>(row) * (size.y - 1 - y);
    std::copy(from, from + static_cast<std::ptrdiff_t>(row), out.bytes.begin() + static_cast<std::ptrdiff_t>(row) * y);
  }
  return out;
}

WindowLayer::GlAddress WindowLayer::gl_address(const char* name) { return glfwGetProcAddress(name); }

}  // namespace proofstand::desk
