#include "sim/physics/interaction.h"

#include <utility>

#include "sim/base/assert.h"

namespace proofstand::physics {
namespace {

std::size_t distance(std::size_t i, std::size_t j, std::size_t n) {
  const std::size_t apart = i > j ? i - j : j - i;
  return apart < n - apart ? apart : n - apart;
}

double share_at(const InteractionRow& row, std::size_t apart) {
  return apart >= 1 && apart <= row.share_1.size() ? row.share_1[apart - 1] : 0.0;
}

double size_of(double value) { return value < 0.0 ? -value : value; }

// elimination with the largest pivot; [n x n] row-major
std::vector<double> solved(std::vector<double> a, std::vector<double> b) {
  const std::size_t n = b.size();
  for (std::size_t k = 0; k < n; ++k) {
    std::size_t pivot = k;
    for (std::size_t i = k + 1; i < n; ++i) {
      if (size_of(a[i * n + k]) > size_of(a[pivot * n + k])) pivot = i;
    }
    for (std::size_t j = 0; j < n; ++j) std::swap(a[k * n + j], a[pivot * n + j]);
    std::swap(b[k], b[pivot]);
    for (std::size_t i = k + 1; i < n; ++i) {
      const double factor = a[i * n + k] / a[k * n + k];
      for (std::size_t j = k; j < n; ++j) a[i * n + j] -= factor * a[k * n + j];
      b[i] -= factor * b[k];
    }
  }
  for (std::size_t k = n; k-- > 0;) {
    for (std::size_t j = k + 1; j < n; ++j) b[k] -= a[k * n + j] * b[j];
    b[k] /= a[k * n + k];
  }
  return b;
}

}  // namespace

InteractionRow clean_seat_interaction() { return {{0.0, 0.0003, 0.0}}; }
InteractionRow boss_seat_interaction() { return {{-0.00006, 0.00025, -0.00007}}; }
InteractionRow soft_layer_interaction() { return {{0.05, 0.02, 0.01}}; }

std::vector<double> interaction_matrix_1(const InteractionRow& row, std::size_t count) {
  STAND_ASSERT(count > 0);
  std::vector<double> matrix(count * count, 0.0);
  for (std::size_t i = 0; i < count; ++i) {
    for (std::size_t j = 0; j < count; ++j) matrix[i * count + j] = i == j ? 1.0 : share_at(row, distance(i, j, count));
  }
  return matrix;
}

std::vector<double> pull_one_n(const std::vector<double>& matrix_1, const std::vector<double>& preload_n,
                               const std::vector<bool>& locked, std::size_t pulled, double target_n) {
  const std::size_t n = preload_n.size();
  STAND_ASSERT(matrix_1.size() == n * n && locked.size() == n && pulled < n);
  std::vector<std::size_t> held;
  for (std::size_t i = 0; i < n; ++i) {
    if (locked[i] && i != pulled) held.push_back(i);
  }
  const double gained_n = target_n - preload_n[pulled];
  std::vector<double> a(held.size() * held.size());
  std::vector<double> b(held.size());
  for (std::size_t r = 0; r < held.size(); ++r) {
    for (std::size_t c = 0; c < held.size(); ++c) a[r * held.size() + c] = matrix_1[held[r] * n + held[c]];
    b[r] = -matrix_1[held[r] * n + pulled] * gained_n;
  }
  const std::vector<double> change_n = solved(std::move(a), std::move(b));
  std::vector<double> after_n = preload_n;
  for (std::size_t r = 0; r < held.size(); ++r) {
    const double left_n = after_n[held[r]] + change_n[r];
    after_n[held[r]] = left_n > 0.0 ? left_n : 0.0;
  }
  after_n[pulled] = target_n > 0.0 ? target_n : 0.0;
  return after_n;
}

std::vector<double> pull_one_weak_n(const InteractionRow& row, const std::vector<double>& preload_n,
                                    const std::vector<bool>& locked, std::size_t pulled, double gained_n) {
  std::vector<double> after_n = preload_n;
  for (std::size_t i = 0; i < after_n.size(); ++i) {
    if (i == pulled) {
      after_n[i] += gained_n;
    } else if (locked[i]) {
      const double left_n = after_n[i] - share_at(row, distance(i, pulled, after_n.size())) * gained_n;
      after_n[i] = left_n > 0.0 ? left_n : 0.0;
    }
  }
  return after_n;
}

}  // namespace proofstand::physics
