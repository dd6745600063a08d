#include "tests/causes/sheet_of_run.h"

#include <utility>

#include "sim/record/marking.h"
#include "sim/report/make_mark_sheet.h"
#include "sim/report/mark_sheet_text.h"
#include "tests/support/judged_job.h"

namespace proofstand::testing {

nlohmann::json sheet_of_run(const scenario::DrawnScenario& scenario, const std::string& script) {
  hand::HandSkill skill = hand::journeyman();
  skill.pull_again_1 = 0.0;
  skill.strength_percentile_1 = scenario.setup.strength_percentile_1;
  JudgedJob job = judge_job(script, scenario, skill, 1);
  record::Marking marking;
  marking.scenario = scenario;
  marking.trace.records = job.work.bench.events();
  marking.trace.end_tick = job.work.bench.tick();
  marking.trace.end = job.work.bench.over() ? job.work.bench.end_reason() : event::EndReason::Aborted;
  marking.report = job.report;
  marking.program = std::move(job.program);
  return nlohmann::json::parse(report::mark_sheet_json(report::make_mark_sheet(marking, "en")));
}

double figure_of(const nlohmann::json& sheet, const char* pointer) {
  const nlohmann::json& value = sheet.at(nlohmann::json::json_pointer(pointer));
  return value.is_number() ? value.get<double>() : 0.0;
}

}  // namespace proofstand::testing
