// A toy world for tests of rules: kinds named by one capital letter, one fluent, and traces written in one line.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/event/record.h"
#include "sim/rules/compile.h"
#include "sim/rules/engine.h"

namespace proofstand::testing {

/// Kinds A..Z with the fields item (of the ring), value (a number 0..200), hand (bare, gloved, tool) and torque; the
/// fluent phi (yes or no); the sets ring (0..ring-1) and plain.
event::Vocabulary toy_vocabulary(std::size_t ring = 6);

/// "1:T 2:R 3:M#1=84.9 4:S1 10": tick, kind, item, value; S1 and S0 set phi; the last number ends the run. Phi is no
/// from the start.
event::Trace toy_trace(std::string_view text);

/// Texts at a place in "toy.toml".
rules::Text at(std::string text, int line = 1, int column = 1);
rules::SelectorSpec on(std::string event, std::string where = "");
/// A minor rule with one point. One tick is one second in this world.
rules::RuleSpec rule(std::string kind, std::string id = "r");
rules::ScopeSpec scope(std::string form, rules::SelectorSpec a = {}, rules::SelectorSpec b = {});

rules::CompileInput toy_input(std::vector<rules::RuleSpec> specs, std::size_t ring = 6);
/// Compiled; stops the test program with the faults otherwise.
rules::RuleProgram compiled(const rules::CompileInput& input);
rules::RuleProgram compiled(std::vector<rules::RuleSpec> specs, std::size_t ring = 6);

/// Every case of a report's rule, "position:status" in order of position, e.g. "0:bad, 2:ok"; "idle" without cases.
std::string case_words(const rules::RuleResult& result);
/// Judges one rule on one trace.
rules::RuleResult judged(const rules::RuleProgram& program, std::string_view trace, std::size_t rule = 0);

}  // namespace proofstand::testing
