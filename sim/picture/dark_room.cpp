#include "sim/picture/dark_room.h"

#include <EGL/egl.h>
#include <EGL/eglext.h>
#include <dlfcn.h>

#include <array>
#include <string>
#include <utility>

namespace proofstand::picture {
namespace {

// the one entry of the library that gives all others; kept for GlLoad, which takes no companion
using GetAddress = GlFunction (*)(const char*);

template <class F>
F find_function(GetAddress address, const char* name) {
  return reinterpret_cast<F>(address(name));  // NOLINT: EGL hands out functions without their types
}

base::Error no_opengl(const std::string& library, const std::string& what) {
  return base::Error{"no-opengl", library, "there is no OpenGL 3.3 to draw with: " + what,
                     "install a graphics driver, or Mesa's software renderer (Debian: libegl1 libgl1-mesa-dri)"};
}

// platforms without a display: Mesa's, then the first graphics device
EGLDisplay open_display(GetAddress address, int attempt) {
  const auto get = find_function<PFNEGLGETPLATFORMDISPLAYEXTPROC>(address, "eglGetPlatformDisplayEXT");
  if (get == nullptr) return EGL_NO_DISPLAY;
  if (attempt == 0) return get(EGL_PLATFORM_SURFACELESS_MESA, nullptr, nullptr);
  const auto query = find_function<PFNEGLQUERYDEVICESEXTPROC>(address, "eglQueryDevicesEXT");
  EGLDeviceEXT device = nullptr;
  EGLint count = 0;
  if (query == nullptr || query(1, &device, &count) != EGL_TRUE || count < 1) return EGL_NO_DISPLAY;
  return get(EGL_PLATFORM_DEVICE_EXT, device, nullptr);
}

EGLContext open_context(GetAddress address, EGLDisplay display) {
  const auto bind = find_function<PFNEGLBINDAPIPROC>(address, "eglBindAPI");
  const auto choose = find_function<PFNEGLCHOOSECONFIGPROC>(address, "eglChooseConfig");
  const auto create = find_function<PFNEGLCREATECONTEXTPROC>(address, "eglCreateContext");
  if (bind == nullptr || choose == nullptr || create == nullptr || bind(EGL_OPENGL_API) != EGL_TRUE)
    return EGL_NO_CONTEXT;
  constexpr std::array<EGLint, 5> kWanted = {EGL_SURFACE_TYPE, 0, EGL_RENDERABLE_TYPE, EGL_OPENGL_BIT, EGL_NONE};
  EGLConfig config = nullptr;
  EGLint count = 0;
  if (choose(display, kWanted.data(), &config, 1, &count) != EGL_TRUE || count < 1) return EGL_NO_CONTEXT;
  constexpr std::array<EGLint, 7> kEdition = {
      EGL_CONTEXT_MAJOR_VERSION,           3,       EGL_CONTEXT_MINOR_VERSION, 3, EGL_CONTEXT_OPENGL_PROFILE_MASK,
      EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT, EGL_NONE};
  return create(display, config, EGL_NO_CONTEXT, kEdition.data());
}

}  // namespace

struct DarkRoom::Inside {
  void* library = nullptr;
  GetAddress address = nullptr;
  EGLDisplay display = EGL_NO_DISPLAY;
  EGLContext context = EGL_NO_CONTEXT;

  [[nodiscard]] bool become_current() const {
    const auto make = find_function<PFNEGLMAKECURRENTPROC>(address, "eglMakeCurrent");
    return make != nullptr && make(display, EGL_NO_SURFACE, EGL_NO_SURFACE, context) == EGL_TRUE;
  }

  void close() {
    if (display == EGL_NO_DISPLAY) return;
    const auto make = find_function<PFNEGLMAKECURRENTPROC>(address, "eglMakeCurrent");
    const auto destroy = find_function<PFNEGLDESTROYCONTEXTPROC>(address, "eglDestroyContext");
    if (make != nullptr) make(display, EGL_NO_SURFACE, EGL_NO_SURFACE, EGL_NO_CONTEXT);
    if (destroy != nullptr && context != EGL_NO_CONTEXT) destroy(display, context);
    context = EGL_NO_CONTEXT;
    display = EGL_NO_DISPLAY;
  }

  // library and display stay: drivers do not bear being taken away, and the next room is given the same ones
  ~Inside() { close(); }
};

DarkRoom::DarkRoom() : inside_(std::make_unique<Inside>()) {}
DarkRoom::~DarkRoom() = default;

base::Result<std::unique_ptr<DarkRoom>> DarkRoom::open(std::string_view library) {
  const std::string name(library);
  std::unique_ptr<DarkRoom> room(new DarkRoom());
  Inside& inside = *room->inside_;
  inside.library = dlopen(name.c_str(), RTLD_NOW | RTLD_LOCAL);
  if (inside.library == nullptr)
    return no_opengl(name, std::string("the library cannot be opened (") + dlerror() + ")");
  inside.address = reinterpret_cast<GetAddress>(dlsym(inside.library, "eglGetProcAddress"));  // NOLINT
  if (inside.address == nullptr) return no_opengl(name, "it is no EGL library");
  std::string tried;
  for (int attempt = 0; attempt < 2; ++attempt) {
    tried += attempt == 0 ? "without a surface: " : "; on a graphics device: ";
    inside.display = open_display(inside.address, attempt);
    const auto begin = find_function<PFNEGLINITIALIZEPROC>(inside.address, "eglInitialize");
    if (inside.display == EGL_NO_DISPLAY || begin == nullptr || begin(inside.display, nullptr, nullptr) != EGL_TRUE) {
      tried += "no display to begin with";
      inside.display = EGL_NO_DISPLAY;
      continue;
    }
    inside.context = open_context(inside.address, inside.display);
    if (inside.context != EGL_NO_CONTEXT && inside.become_current()) return room;
    tried += "no context of OpenGL 3.3";
    inside.close();
  }
  return no_opengl(name, tried);
}

GlLoad DarkRoom::load() const { return inside_->address; }

void DarkRoom::make_current() { STAND_ASSERT(inside_->become_current()); }

}  // namespace proofstand::picture
