#include "sim/picture/program.h"

#include <glm/gtc/type_ptr.hpp>
#include <utility>

#include "sim/picture/shader_text.h"

namespace proofstand::picture {
namespace {

base::Error refused(std::string_view file, const std::string& words) {
  return base::Error{"shader", std::string(file), "this graphics driver does not take the shader: " + words,
                     "update the graphics driver, or set GALLIUM_DRIVER=llvmpipe to draw on the processor"};
}

base::Result<GLuint> compile(GLenum kind, std::string_view file, const std::vector<std::string_view>& shared,
                             const std::string& defines) {
  std::string text = "#version 330 core\n" + defines + std::string(shader_text("frame.glsl"));
  for (const std::string_view name : shared) text += shader_text(name);
  text += shader_text(file);
  const GLuint shader = glCreateShader(kind);
  const char* begin = text.c_str();
  glShaderSource(shader, 1, &begin, nullptr);
  glCompileShader(shader);
  GLint good = 0;
  glGetShaderiv(shader, GL_COMPILE_STATUS, &good);
  if (good == GL_TRUE) return shader;
  std::string words(2000, '\0');
  GLsizei length = 0;
  glGetShaderInfoLog(shader, static_cast<GLsizei>(words.size()), &length, words.data());
  words.resize(static_cast<std::size_t>(length));
  glDeleteShader(shader);
  return refused(file, words);
}

}  // namespace

base::Result<Program> Program::make(std::string_view vertex, std::string_view fragment,
                                    const std::vector<std::string_view>& shared, const std::string& defines) {
  const auto first = compile(GL_VERTEX_SHADER, vertex, {}, defines);
  if (!first) return first.error();
  const auto second = compile(GL_FRAGMENT_SHADER, fragment, shared, defines);
  if (!second) {
    glDeleteShader(*first);
    return second.error();
  }
  Program program;
  program.name_ = glCreateProgram();
  glAttachShader(program.name_, *first);
  glAttachShader(program.name_, *second);
  glLinkProgram(program.name_);
  glDeleteShader(*first);
  glDeleteShader(*second);
  GLint good = 0;
  glGetProgramiv(program.name_, GL_LINK_STATUS, &good);
  if (good != GL_TRUE) {
    std::string words(2000, '\0');
    GLsizei length = 0;
    glGetProgramInfoLog(program.name_, static_cast<GLsizei>(words.size()), &length, words.data());
    words.resize(static_cast<std::size_t>(length));
    return refused(fragment, words);
  }
  const GLuint block = glGetUniformBlockIndex(program.name_, "Frame");
  if (block != GL_INVALID_INDEX) glUniformBlockBinding(program.name_, block, kFrameBinding);
  return program;
}

Program::~Program() {
  if (name_ != 0) glDeleteProgram(name_);
}

Program::Program(Program&& other) noexcept : name_(std::exchange(other.name_, 0U)) {}

Program& Program::operator=(Program&& other) noexcept {
  std::swap(name_, other.name_);
  return *this;
}

void Program::use() const { glUseProgram(name_); }

GLint Program::place_of(const char* uniform) const { return glGetUniformLocation(name_, uniform); }

void Program::set(const char* uniform, int value) const { glUniform1i(place_of(uniform), value); }

void Program::set(const char* uniform, const glm::mat4& value) const {
  glUniformMatrix4fv(place_of(uniform), 1, GL_FALSE, glm::value_ptr(value));
}

}  // namespace proofstand::picture
