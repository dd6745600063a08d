// What a picture is drawn on: colour textures and a depth buffer of one size.
#pragma once

#include <glad/gl.h>

#include <vector>

#include "sim/picture/image.h"

namespace proofstand::picture {

class Plate {
 public:
  /// formats: of its colour textures, such as GL_RGBA8. samples: > 1 makes buffers that can only be copied from.
  Plate(std::vector<GLenum> formats, bool with_depth, int samples = 0);
  ~Plate();
  Plate(const Plate&) = delete;
  Plate& operator=(const Plate&) = delete;

  /// Makes it this size, if it is not, and draws onto it from now on.
  void begin(Size size);
  /// Copies its first colours to another plate of the same size.
  void copy_to(const Plate& other) const;
  [[nodiscard]] GLuint texture(std::size_t number = 0) const { return colours_[number]; }
  [[nodiscard]] GLuint frame() const { return frame_; }
  [[nodiscard]] Size size() const { return size_; }

 private:
  void make(Size size);
  void drop();
  std::vector<GLenum> formats_;
  bool with_depth_;
  int samples_;
  Size size_;
  GLuint frame_ = 0;
  GLuint depth_ = 0;
  std::vector<GLuint> colours_;  ///< textures, or renderbuffers where there are samples
};

}  // namespace proofstand::picture
