// How much a picture may cost.
#pragma once

#include <cstdint>
#include <string_view>

namespace proofstand::picture {

/// Draft: a software renderer while something moves. Normal: a graphics card, always. Still: at rest; samples gathered
/// one by one until edges are clean, shadows soft and corners darker.
enum class Fineness : std::uint8_t { Draft, Normal, Still };

struct Quality {
  Fineness fineness = Fineness::Normal;
  /// Draft only: side of the picture that is drawn, as a share of the size asked for. 0.5 .. 1
  float scale_1 = 1.0F;
  /// Still only: samples until it is done. 32 .. 64; fewer leave grain in soft shadows.
  int samples = 48;
};

/// Does this renderer (the name OpenGL gives) compute on the processor? Then Draft and Still are for it.
bool is_software(std::string_view renderer);

/// Chooses the scale of drafts so that a frame costs what it may.
class DraftScale {
 public:
  /// frame_s: what the last draft took [s]. Returns the scale of the next one, 0.5 .. 1 in steps of 1/16.
  float next(double frame_s);
  [[nodiscard]] float scale_1() const { return scale_1_; }

 private:
  float scale_1_ = 1.0F;
  double mean_s_ = 0.0;
};

}  // namespace proofstand::picture
