#include "sim/scenario/check_rules.h"

#include <algorithm>

#include "sim/rules/lint.h"
#include "sim/scenario/check_parts.h"

namespace proofstand::scenario {
namespace {

using base::Dimension;
using base::quantity_words;

std::string place(const rules::SourcePos& at, const Reading& reading) {
  Spot spot{0, at.line, at.column};
  for (std::size_t i = 0; i < reading.files->size(); ++i) {
    if ((*reading.files)[i] == at.file) spot.file = i;
  }
  return reading.where(spot);
}

/// Stages outside of the job carry no points.
void check_stages(const Reading& reading, const DrawnScenario& scenario) {
  for (const rules::RuleSpec& rule : scenario.rules) {
    if (rule.points_milli == 0) continue;
    for (const Stage& stage : scenario.stages) {
      if (stage.in_this_job || stage.name != rule.competence.text) continue;
      reading.faults->add(
          {"S17", place(rule.competence.at, reading),
           "rule \"" + rule.id.text + "\" gives points for the stage " + stage.name + ", which is not part of this job",
           "add the stage to stages, or give the rule no points", false});
    }
  }
}

/// The constant that an expression is, if it is one.
std::optional<double> constant(const rules::RuleProgram& program, std::int32_t expression) {
  if (expression < 0) return std::nullopt;
  const rules::Expression& e = program.expressions[static_cast<std::size_t>(expression)];
  return e.is_constant() ? std::optional<double>(e.code[0].value_si) : std::nullopt;
}

/// A rule about the true torque must leave room for the tool's own error, which is nobody's fault.
void check_torque_bounds(const Reading& reading, const DrawnScenario& scenario, const rules::RuleProgram& program) {
  const auto kind = program.vocabulary.find_kind("tightened");
  if (!kind) return;
  const auto peak = event::Vocabulary::find_field(program.vocabulary.kinds[*kind], "peak_torque");
  double class_1 = 1.0;
  for (const bench::Thing& thing : scenario.setup.things) {
    if (thing.kind == bench::ThingKind::ClickDriver)
      class_1 = std::min(class_1, scenario.setup.tools[thing.part].class_1);
  }
  const double torque_nm = scenario.setup.sheet_torque_nm;
  const double lo_nm = torque_nm * (1.0 - class_1);
  const double hi_nm = torque_nm * (1.0 + class_1 + kCleanOvershoot_1);
  for (std::size_t i = 0; i < program.rules.size(); ++i) {
    const rules::Rule& rule = program.rules[i];
    if (rule.kind != rules::RuleKind::Measure || rule.x.kind != *kind || rule.value < 0) continue;
    const rules::Expression& value = program.expressions[static_cast<std::size_t>(rule.value)];
    if (value.code.size() != 1 || value.code[0].op != rules::Op::Field || value.code[0].index != peak) continue;
    const auto lo = constant(program, rule.range_lo);
    const auto hi = constant(program, rule.range_hi);
    if ((!lo || *lo <= lo_nm) && (!hi || *hi >= hi_nm)) continue;
    const rules::RuleSpec& spec = program.specs[i];
    reading.faults->add(
        {"S12", place(spec.range.at, reading),
         "rule \"" + spec.id.text + "\" asks for a torque more narrowly than the tool's class and overshoot allow",
         "let the range contain " + quantity_words(lo_nm, Dimension::Torque) + " to " +
             quantity_words(hi_nm, Dimension::Torque),
         false});
  }
}

}  // namespace

void check_rules(const Reading& reading, const DrawnScenario& scenario) {
  check_stages(reading, scenario);
  const rules::Compiled compiled = rules::compile_rules(compile_input(scenario));
  for (const base::Error& fault : compiled.faults.list) reading.faults->add(fault);
  if (!compiled.program) return;
  check_torque_bounds(reading, scenario, *compiled.program);
  for (const base::Error& fault : rules::lint(*compiled.program).list) reading.faults->add(fault);
}

}  // namespace proofstand::scenario
