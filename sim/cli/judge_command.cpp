#include "sim/base/number_text.h"
#include "sim/cli/commands.h"
#include "sim/cli/judged_text.h"
#include "sim/cli/talk.h"
#include "sim/record/files.h"
#include "sim/record/trace_file.h"
#include "sim/rules/compile.h"
#include "sim/rules/engine.h"
#include "sim/scenario/rules_alone.h"

namespace proofstand::cli {

ExitCode judge_trace(const JudgeOptions& options) {
  const auto bytes = options.events == "-" ? record::load_standard_input(record::kLargestTrace)
                                           : record::load_bytes(options.events, record::kLargestTrace);
  if (!bytes) return say_error(bytes.error());
  auto file = record::read_trace(*bytes, options.events == "-" ? "standard input" : options.events);
  if (!file) return say_error(file.error());
  scenario::RulesAlone rules = scenario::load_rules_alone(options.rules);
  if (!rules.faults.any_error()) {
    rules::CompileInput input;
    input.rules = std::move(rules.specs);
    input.vocabulary = std::move(file->vocabulary);
    input.sheet = std::move(rules.sheet);
    input.marks = std::move(rules.marks);
    input.ticks_per_s = file->trace.ticks_per_s;
    rules::Compiled compiled = rules::compile_rules(input);
    for (base::Error& fault : compiled.faults.list) rules.faults.add(std::move(fault));
    if (compiled.program) {
      say_faults(rules.faults);
      const rules::Report report = rules::judge(*compiled.program, file->trace);
      print_data(options.json ? judged_json(*compiled.program, file->trace, report)
                              : judged_text(*compiled.program, file->trace, report));
      return report.overall == rules::Overall::Passed ? ExitCode::Done : ExitCode::Negative;
    }
  }
  say_faults(rules.faults);
  return ExitCode::Unreadable;
}

}  // namespace proofstand::cli
