// A pair of shaders, compiled and linked.
#pragma once

#include <glad/gl.h>

#include <glm/glm.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/result.h"

namespace proofstand::picture {

class Program {
 public:
  /// vertex, fragment: file names in assets/shaders. shared: files put before the fragment shader.
  /// defines: lines such as "#define TAPS 4\n", put first.
  /// errors   "shader" with the file's name and the driver's words
  static base::Result<Program> make(std::string_view vertex, std::string_view fragment,
                                    const std::vector<std::string_view>& shared = {}, const std::string& defines = "");
  Program() = default;
  ~Program();
  Program(Program&& other) noexcept;
  Program& operator=(Program&& other) noexcept;
  Program(const Program&) = delete;
  Program& operator=(const Program&) = delete;

  void use() const;
  /// Where a uniform is; -1 when the shader has no use for it, which setting it then ignores.
  [[nodiscard]] GLint place_of(const char* uniform) const;
  void set(const char* uniform, int value) const;
  void set(const char* uniform, const glm::mat4& value) const;

 private:
  GLuint name_ = 0;
};

/// The uniform block's binding that every program with a Frame block uses.
inline constexpr GLuint kFrameBinding = 0;

}  // namespace proofstand::picture
