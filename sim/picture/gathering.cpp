#include "sim/picture/gathering.h"

#include <utility>

namespace proofstand::picture {

Gathering::Gathering(Program add, Program develop)
    : add_(std::move(add)),
      develop_(std::move(develop)),
      sample_({GL_RGBA16F}, true),
      sum_({GL_RGBA32F}, false),
      picture_({GL_RGBA8}, false) {
  glGenVertexArrays(1, &empty_list_);
}

Gathering::~Gathering() { glDeleteVertexArrays(1, &empty_list_); }

base::Result<std::unique_ptr<Gathering>> Gathering::make() {
  auto add = Program::make("whole.vert", "gather.frag");
  if (!add) return add.error();
  auto develop = Program::make("whole.vert", "develop.frag", {"tone.glsl"});
  if (!develop) return develop.error();
  return std::unique_ptr<Gathering>(new Gathering(std::move(*add), std::move(*develop)));
}

void Gathering::clear(Size size) {
  size_ = size;
  count_ = 0;
  sum_.begin(size);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  glDisable(GL_SCISSOR_TEST);
  glClearColor(0.0F, 0.0F, 0.0F, 0.0F);
  glClear(GL_COLOR_BUFFER_BIT);
}

void Gathering::begin_sample() { sample_.begin(size_); }

void Gathering::cover(const Program& program, GLuint texture) const {
  glDisable(GL_DEPTH_TEST);
  glDisable(GL_CULL_FACE);
  program.use();
  glActiveTexture(GL_TEXTURE0);
  glBindTexture(GL_TEXTURE_2D, texture);
  glBindVertexArray(empty_list_);
  glDrawArrays(GL_TRIANGLES, 0, 3);
}

void Gathering::add_sample() {
  sum_.begin(size_);
  glEnable(GL_BLEND);
  glBlendEquation(GL_FUNC_ADD);
  glBlendFunc(GL_ONE, GL_ONE);
  cover(add_, sample_.texture());
  glDisable(GL_BLEND);
  ++count_;
}

void Gathering::develop() {
  picture_.begin(size_);
  cover(develop_, sum_.texture());
}

}  // namespace proofstand::picture
