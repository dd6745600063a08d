#include "sim/record/marking.h"

#include "sim/record/replay_check.h"
#include "sim/rules/compile.h"
#include "sim/rules/engine.h"

namespace proofstand::record {

base::Result<scenario::DrawnScenario> scenario_of(const Attempt& attempt) {
  auto scenario = scenario::read_resolved(attempt.head.bench_text, attempt.head.rules_text);
  if (!scenario) return scenario.error();
  return scenario;
}

base::Result<rules::RuleProgram> program_of(const scenario::DrawnScenario& scenario) {
  rules::Compiled compiled = rules::compile_rules(scenario::compile_input(scenario));
  if (compiled.program) return std::move(*compiled.program);
  for (const base::Error& fault : compiled.faults.list) {
    if (!fault.warning) return fault;
  }
  return base::Error{"rules", "", "the rules of this scenario cannot be understood", "run `check` on the scenario"};
}

base::Result<Marking> mark_attempt(Attempt attempt) {
  auto scenario = scenario_of(attempt);
  if (!scenario) return scenario.error();
  auto program = program_of(*scenario);
  if (!program) return program.error();
  Marking marking;
  if (attempt.closing) {
    auto records = in_vocabulary(attempt.closing->trace, program->vocabulary);
    if (!records) return records.error();
    marking.trace.records = std::move(*records);
    marking.trace.end_tick = attempt.closing->end;
    marking.trace.end = attempt.closing->reason;
  } else {
    auto replay = check_replay(attempt, *scenario);
    if (!replay) return replay.error();
    marking.trace = std::move(replay->trace);
    marking.replayed = true;
  }
  marking.report = rules::judge(*program, marking.trace);
  marking.attempt = std::move(attempt);
  marking.scenario = std::move(*scenario);
  marking.program = std::move(*program);
  return marking;
}

}  // namespace proofstand::record
