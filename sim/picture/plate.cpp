#include "sim/picture/plate.h"

#include <utility>

namespace proofstand::picture {
namespace {

GLuint buffer_of(GLenum format, Size size, int samples) {
  GLuint name = 0;
  glGenRenderbuffers(1, &name);
  glBindRenderbuffer(GL_RENDERBUFFER, name);
  glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples, format, size.width, size.height);
  return name;
}

// of an internal format that nothing is uploaded to: any client format that goes with it
GLuint texture_of(GLenum format, Size size) {
  GLuint name = 0;
  glGenTextures(1, &name);
  glBindTexture(GL_TEXTURE_2D, name);
  glTexImage2D(GL_TEXTURE_2D, 0, static_cast<GLint>(format), size.width, size.height, 0, GL_RGBA,
               format == GL_RGBA8 ? GL_UNSIGNED_BYTE : GL_FLOAT, nullptr);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
  return name;
}

}  // namespace

Plate::Plate(std::vector<GLenum> formats, bool with_depth, int samples)
    : formats_(std::move(formats)), with_depth_(with_depth), samples_(samples) {}

Plate::~Plate() { drop(); }

void Plate::drop() {
  if (frame_ == 0) return;
  glDeleteFramebuffers(1, &frame_);
  if (depth_ != 0) glDeleteRenderbuffers(1, &depth_);
  const auto count = static_cast<GLsizei>(colours_.size());
  if (samples_ > 1) {
    glDeleteRenderbuffers(count, colours_.data());
  } else {
    glDeleteTextures(count, colours_.data());
  }
  colours_.clear();
  frame_ = 0;
  depth_ = 0;
}

void Plate::make(Size size) {
  drop();
  size_ = size;
  glGenFramebuffers(1, &frame_);
  glBindFramebuffer(GL_FRAMEBUFFER, frame_);
  std::vector<GLenum> targets;
  for (const GLenum format : formats_) {
    const GLenum target = GL_COLOR_ATTACHMENT0 + static_cast<GLenum>(targets.size());
    if (samples_ > 1) {
      colours_.push_back(buffer_of(format, size, samples_));
      glFramebufferRenderbuffer(GL_FRAMEBUFFER, target, GL_RENDERBUFFER, colours_.back());
    } else {
      colours_.push_back(texture_of(format, size));
      glFramebufferTexture2D(GL_FRAMEBUFFER, target, GL_TEXTURE_2D, colours_.back(), 0);
    }
    targets.push_back(target);
  }
  glDrawBuffers(static_cast<GLsizei>(targets.size()), targets.data());
  if (!with_depth_) return;
  depth_ = buffer_of(GL_DEPTH_COMPONENT24, size, samples_);
  glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_RENDERBUFFER, depth_);
}

void Plate::begin(Size size) {
  if (frame_ == 0 || !(size == size_)) make(size);
  glBindFramebuffer(GL_FRAMEBUFFER, frame_);
  glViewport(0, 0, size.width, size.height);
}

void Plate::copy_to(const Plate& other) const {
  glBindFramebuffer(GL_READ_FRAMEBUFFER, frame_);
  glBindFramebuffer(GL_DRAW_FRAMEBUFFER, other.frame_);
  glBlitFramebuffer(0, 0, size_.width, size_.height, 0, 0, size_.width, size_.height, GL_COLOR_BUFFER_BIT, GL_NEAREST);
  glBindFramebuffer(GL_FRAMEBUFFER, other.frame_);
}

}  // namespace proofstand::picture
