#include "sim/physics/thread_geometry.h"

#include "sim/base/math.h"

namespace proofstand::physics {

ThreadGeometry thread_geometry(Thread thread) {
  const double d = thread.diameter_m;
  const double p = thread.pitch_m;
  ThreadGeometry g;
  g.triangle_m = 0.8660254037844386 * p;
  g.pitch_diameter_m = d - 0.6495190528383290 * p;
  g.minor_internal_m = d - 1.0825317547305484 * p;
  g.minor_external_m = d - 1.2268693220279548 * p;
  g.stress_diameter_m = 0.5 * (g.pitch_diameter_m + g.minor_external_m);
  g.stress_area_m2 = 0.25 * base::kPi * g.stress_diameter_m * g.stress_diameter_m;
  g.root_area_m2 = 0.25 * base::kPi * g.minor_external_m * g.minor_external_m;
  g.lead_rad = base::atan_rad(p / (base::kPi * g.pitch_diameter_m));
  return g;
}

}  // namespace proofstand::physics
