// Samples of a still, summed up in linear light and developed into a picture.
#pragma once

#include <memory>

#include "sim/base/result.h"
#include "sim/picture/plate.h"
#include "sim/picture/program.h"

namespace proofstand::picture {

class Gathering {
 public:
  static base::Result<std::unique_ptr<Gathering>> make();
  ~Gathering();
  Gathering(const Gathering&) = delete;
  Gathering& operator=(const Gathering&) = delete;

  /// Forgets all samples; the picture stays.
  void clear(Size size);
  /// Begins the plate for one more sample: linear light is drawn onto it.
  void begin_sample();
  /// Adds what was drawn.
  void add_sample();
  [[nodiscard]] int count() const { return count_; }
  [[nodiscard]] Size size() const { return size_; }
  /// The mean of all samples as a picture.
  void develop();
  [[nodiscard]] const Plate& picture() const { return picture_; }

 private:
  Gathering(Program add, Program develop);
  void cover(const Program& program, GLuint texture) const;
  Program add_;
  Program develop_;
  Plate sample_;
  Plate sum_;
  Plate picture_;
  GLuint empty_list_ = 0;  ///< core contexts draw nothing without a vertex array
  Size size_;
  int count_ = 0;
};

}  // namespace proofstand::picture
