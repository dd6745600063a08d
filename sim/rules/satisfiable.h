// Can a record match at all, or two selectors at once? Answers "yes" where it cannot tell.
#pragma once

#include "sim/rules/program.h"

namespace proofstand::rules {

/// False only when no record of the declared ranges and words matches.
bool can_match(const RuleProgram& program, const Selector& selector);
/// False only when no record matches both.
bool can_match_both(const RuleProgram& program, const Selector& a, const Selector& b);
/// True only when every record that matches `inner` is known to match `outer`.
bool always_matches(const RuleProgram& program, const Selector& inner, const Selector& outer);
/// Can a condition over fluents be true, can it be false?
bool can_be(const RuleProgram& program, std::int32_t condition, Truth value);

}  // namespace proofstand::rules
