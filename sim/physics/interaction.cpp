#include "sim/physics/interaction.h"

#include "sim/base/assert.h"

namespace proofstand::physics {
namespace {

double coupling(const Couplings& couplings, std::size_t n, std::size_t i, std::size_t j) {
  if (i == j) return 1.0;
  const std::size_t apart = i > j ? i - j : j - i;
  const std::size_t distance = apart < n - apart ? apart : n - apart;
  return distance <= couplings.size() ? couplings[distance - 1] : 0.0;
}

// Gaussian elimination with the largest pivot; the matrix is strongly diagonal and small
std::vector<double> solved(std::vector<std::vector<double>> a, std::vector<double> b) {
  const std::size_t n = b.size();
  for (std::size_t k = 0; k < n; ++k) {
    std::size_t pivot = k;
    for (std::size_t i = k + 1; i < n; ++i) {
      const double size = a[i][k] < 0.0 ? -a[i][k] : a[i][k];
      const double best = a[pivot][k] < 0.0 ? -a[pivot][k] : a[pivot][k];
      if (size > best) pivot = i;
    }
    std::swap(a[k], a[pivot]);
    std::swap(b[k], b[pivot]);
    for (std::size_t i = k + 1; i < n; ++i) {
      const double factor = a[i][k] / a[k][k];
      for (std::size_t j = k; j < n; ++j) a[i][j] -= factor * a[k][j];
      b[i] -= factor * b[k];
    }
  }
  for (std::size_t k = n; k-- > 0;) {
    for (std::size_t j = k + 1; j < n; ++j) b[k] -= a[k][j] * b[j];
    b[k] /= a[k][k];
  }
  return b;
}

}  // namespace

Couplings measured_couplings() { return {0.0, 0.0003, 0.0}; }
Couplings soft_layer_couplings() { return {0.05, 0.02, 0.01}; }

std::vector<double> pull_one(const Couplings& couplings, const std::vector<double>& force_n,
                             const std::vector<bool>& tight, std::size_t j, double target_n) {
  const std::size_t n = force_n.size();
  STAND_ASSERT(tight.size() == n && j < n);
  const double change = target_n - force_n[j];
  std::vector<std::size_t> locked;
  for (std::size_t i = 0; i < n; ++i) {
    if (tight[i] && i != j) locked.push_back(i);
  }
  std::vector<std::vector<double>> a(locked.size(), std::vector<double>(locked.size()));
  std::vector<double> b(locked.size());
  for (std::size_t r = 0; r < locked.size(); ++r) {
    for (std::size_t c = 0; c < locked.size(); ++c) a[r][c] = coupling(couplings, n, locked[r], locked[c]);
    b[r] = -coupling(couplings, n, locked[r], j) * change;
  }
  const std::vector<double> loss = solved(a, b);
  std::vector<double> out = force_n;
  for (std::size_t r = 0; r < locked.size(); ++r) out[locked[r]] += loss[r];
  out[j] = target_n;
  return out;
}

}  // namespace proofstand::physics
