#include "sim/rules/case.h"

#include <array>

#include "sim/base/assert.h"

namespace proofstand::rules {

std::string_view reason_word(Reason reason) {
  static constexpr std::array<std::string_view, 26> kWords = {
      "done",         "never-came", "happened",   "too-few",       "too-many", "none-before",   "only-other-items",
      "too-old",      "too-recent", "undone",     "used-up",       "late",     "ended-open",    "out-of-order",
      "incomplete",   "too-short",  "not-kept",   "below",         "above",    "wrong-pattern", "slips",
      "gap-too-long", "children",   "no-stretch", "value-missing", "cut-off"};
  const auto index = static_cast<std::size_t>(reason);
  STAND_ASSERT(index < kWords.size());
  return kWords[index];
}

const Cite* Case::cited(Role role) const {
  for (const Cite& cite : cites) {
    if (cite.role == role) return &cite;
  }
  return nullptr;
}

}  // namespace proofstand::rules
