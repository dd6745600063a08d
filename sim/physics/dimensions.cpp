#include "sim/physics/dimensions.h"

#include "sim/base/assert.h"

namespace proofstand::physics {

std::string_view standing_words(Standing standing) {
  switch (standing) {
    case Standing::Published:
      return "published";
    case Standing::CommonPractice:
      return "common practice, no source";
    case Standing::FromMemory:
      return "from memory";
  }
  return "";
}

TrackRadii track_radii(double diameter_m) {
  STAND_ASSERT(diameter_m > 0.1 && diameter_m < 0.3);
  TrackRadii radii;
  radii.outer_m = diameter_m / 2.0;
  radii.inner_m = radii.outer_m - size_m(Size::TrackWidth);
  radii.middle_m = radii.outer_m - 0.008;
  radii.lining_outer_m = radii.outer_m - size_m(Size::LiningTopBelowEdge);
  radii.lining_inner_m = radii.lining_outer_m - size_m(Size::LiningRadial);
  return radii;
}

}  // namespace proofstand::physics
