#include "tests/speed/rules_bench.h"

namespace proofstand::speed {

std::int64_t loop_twenty(const Records& records) {
  constexpr std::int64_t kNever = -1'000'000'000;
  // which rules are checked at a kind, built once per call; a call is a whole run
  int checked[24] = {};
  for (int& rule : checked) rule = -1;
  for (int i = 0; i < 20; ++i) checked[(i + 1) % 24] = i;
  std::int64_t last[24];
  for (std::int64_t& seen : last) seen = kNever;
  std::int64_t lost = 0;
  std::int64_t index = 0;
  for (const event::Record& record : records) {
    const int rule = checked[record.kind];
    if (rule >= 0) {
      const std::int64_t p = last[rule];
      const std::int64_t r = last[(rule + 2) % 24];
      switch (rule % 4) {
        case 0:
          lost += index - p > 100 ? 1 : 0;
          break;
        case 1:
          lost += p > r ? 1 : 0;
          break;
        case 2:
          lost += r == kNever ? 1 : 0;
          break;
        default:
          lost += p == kNever || r > p ? 1 : 0;
          break;
      }
    }
    last[record.kind] = index++;
  }
  return lost;
}

}  // namespace proofstand::speed
