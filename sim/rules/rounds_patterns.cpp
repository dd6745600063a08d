#include "sim/rules/rounds_patterns.h"

namespace proofstand::rules {
namespace {

void keep_or_note(PassFit& fit, bool kept, std::size_t at) {
  ++fit.of;
  if (kept) {
    ++fit.kept;
  } else if (fit.wrong_at < 0) {
    fit.wrong_at = static_cast<std::int32_t>(at);
  }
}

int ring_distance(int a, int b, int n) {
  const int way = (b - a + n) % n;
  return way < n - way ? way : n - way;
}

PassFit fit_opposite(const std::vector<std::uint8_t>& pass, int n) {
  PassFit fit;
  for (std::size_t j = 1; j < pass.size(); j += 2) keep_or_note(fit, (pass[j - 1] + n / 2) % n == pass[j], j);
  return fit;
}

PassFit fit_crosswise(const std::vector<std::uint8_t>& pass, int n, int least) {
  PassFit fit;
  for (std::size_t j = 1; j < pass.size(); ++j) keep_or_note(fit, ring_distance(pass[j - 1], pass[j], n) >= least, j);
  return fit;
}

PassFit fit_step(const std::vector<std::uint8_t>& pass, int n, int step) {
  PassFit fit;
  for (std::size_t j = 1; j < pass.size(); ++j) keep_or_note(fit, (pass[j - 1] + step + n) % n == pass[j], j);
  return fit;
}

PassFit better(const PassFit& a, const PassFit& b) {
  if (a.conforms() != b.conforms()) return a.conforms() ? a : b;
  return b.kept > a.kept ? b : a;
}

// a pass equals a sequence when it starts alike and every step is the sequence's next
PassFit fit_listed(const std::vector<std::uint8_t>& pass, const std::vector<std::uint8_t>& sequence) {
  PassFit fit;
  for (std::size_t j = 0; j < pass.size(); ++j) keep_or_note(fit, pass[j] == sequence[j], j);
  return fit;
}

}  // namespace

PassFit fit_of_pass(const Rule& rule, const std::vector<std::uint8_t>& pass) {
  const int n = rule.set_size;
  switch (rule.pattern) {
    case Pattern::Any:
      return {1, 1, -1};
    case Pattern::Opposite:
      return fit_opposite(pass, n);
    case Pattern::Crosswise:
      return fit_crosswise(pass, n, rule.number);
    case Pattern::Skip:
      return better(fit_step(pass, n, rule.number), fit_step(pass, n, -rule.number));
    case Pattern::Listed:
      break;
  }
  PassFit best = fit_listed(pass, rule.sequences[0]);
  for (std::size_t i = 1; i < rule.sequences.size(); ++i) best = better(best, fit_listed(pass, rule.sequences[i]));
  return best;
}

}  // namespace proofstand::rules
