// Random rules and runs of the toy world, leaning towards ties, exact bounds, empty runs and stretches that never
// close. Every draw is a function of the seed, so a failure can be repeated from the number it prints.
#pragma once

#include <cstdint>

#include "tests/support/rules_toy.h"

namespace proofstand::testing {

/// A row of draws under one seed.
class Draws {
 public:
  explicit Draws(std::uint64_t seed) : seed_(seed) {}
  /// 0..n-1
  std::uint64_t below(std::uint64_t n);
  bool one_in(std::uint64_t n) { return below(n) == 0; }

 private:
  std::uint64_t seed_;
  std::uint64_t count_ = 0;
};

/// A rule of any kind but the composites, in any scope, over the kinds A to F.
rules::RuleSpec random_rule(Draws& draws, const std::string& id = "r");
/// The same kind of rule with a given kind.
rules::RuleSpec random_rule_of(Draws& draws, const std::string& kind, const std::string& id = "r");
/// 0..most records of the kinds A to F and changes of phi, which is no from tick 0.
event::Trace random_trace(Draws& draws, std::size_t most = 14);

}  // namespace proofstand::testing
