#include "sim/physics/settling.h"

#include "sim/base/math.h"

namespace proofstand::physics {

double embedding_loss_n(double embedding_m, double compliance_m_n) { return embedding_m / compliance_m_n; }

double relaxed_share_1(double time_s) { return time_s <= 0.0 ? 0.0 : 0.05 * (1.0 - base::exp_1(-time_s / 1800.0)); }

double embedding_left_m(double dirt_m, double settled_m) {
  const double whole_m = 2.0e-6 + 0.1 * dirt_m;
  return whole_m > settled_m ? whole_m - settled_m : 0.0;
}

}  // namespace proofstand::physics
