#include "sim/physics/settling.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {

double embedding_loss_n(double embed_m, double compliance_m_n) { return embed_m / compliance_m_n; }

double embed_in_pull_m(double full_m, double settled_m, double preload_n, double reference_n) {
  STAND_ASSERT(reference_n > 0.0);
  const double reached_m = full_m * base::clamp_1(preload_n / reference_n, 0.0, 2.0);
  // one pull takes most of what the load can still settle
  const double left_m = reached_m - settled_m;
  return left_m > 0.0 ? kEmbedShare_1 * left_m : 0.0;
}

double relaxed_preload_n(double preload_n, double relaxation_1, double time_s, double time_constant_s) {
  return time_s <= 0.0 ? preload_n : preload_n * (1.0 - relaxation_1 * (1.0 - base::exp_1(-time_s / time_constant_s)));
}

double thermal_preload_change_n(double clamped_expansion_1_k, double bolt_expansion_1_k, double warming_k,
                                double grip_m, double compliance_m_n) {
  return (clamped_expansion_1_k - bolt_expansion_1_k) * warming_k * grip_m / compliance_m_n;
}

}  // namespace proofstand::physics
