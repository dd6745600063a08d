// Figures that chores are done to: the sheet's, found through the rules that judge them.
#include "sim/base/math.h"
#include "sim/report/guidance_plan.h"
#include "sim/rules/expression.h"

namespace proofstand::report {
namespace {

// first rounds go to three fifths of the figure and rise from there (common practice, no source)
constexpr double kFirstRound_1 = 0.6;

const scenario::SheetLine* sheet_line(const GuideWorld& world, std::string_view name) {
  for (const scenario::SheetLine& line : world.scenario.sheet_lines) {
    if (line.name == name) return &line;
  }
  return nullptr;
}

double constant_si(const GuideWorld& world, std::int32_t expression, double otherwise_si) {
  if (expression < 0) return otherwise_si;
  const std::vector<rules::Fluent> none(world.program.vocabulary.kinds.size());
  const event::Record record;
  const rules::Value value =
      rules::evaluate(world.program.expressions[static_cast<std::size_t>(expression)], &record, none);
  return value.known ? value.value_si : otherwise_si;
}

double on_scale_nm(const GuideWorld& world, double torque_nm) {
  const event::ThingId tool = bench::first_of(world.bench.setup(), bench::ThingKind::ClickDriver);
  if (tool == event::kNoThing) return torque_nm;
  const bench::BenchSetup& setup = world.bench.setup();
  const double step_nm = setup.tools[setup.things[event::index_of(tool)].part].scale_step_nm;
  if (step_nm <= 0.0) return torque_nm;
  return static_cast<double>(static_cast<std::int64_t>(torque_nm / step_nm + 0.5)) * step_nm;
}

}  // namespace

double figure_nm(const GuideWorld& world) {
  for (const rules::Rule& rule : world.program.rules) {
    if (rule.kind != rules::RuleKind::Measure || !rule.x.given()) continue;
    if (world.program.vocabulary.kinds[rule.x.kind].name != "tightened") continue;
    for (const std::string_view field : fields_read(world.program, rule.x.kind, rule.value)) {
      if (field != "setting") continue;
      const double lo_nm = constant_si(world, rule.range_lo, constant_si(world, rule.range_hi, 0.0));
      const double hi_nm = constant_si(world, rule.range_hi, lo_nm);
      if (hi_nm > 0.0) return on_scale_nm(world, 0.5 * (lo_nm + hi_nm));
    }
  }
  return on_scale_nm(world, world.bench.setup().sheet_torque_nm);
}

double setting_now_nm(const GuideWorld& world) {
  const double full_nm = figure_nm(world);
  for (const rules::Rule& rule : world.program.rules) {
    if (rule.kind != rules::RuleKind::Rounds || world.program.vocabulary.kinds[rule.x.kind].name != "tightened")
      continue;
    const std::int32_t round = world.engine.rounds[static_cast<std::size_t>(rule.slot)].conforming;
    if (round + 1 >= rule.passes) return full_nm;
    const double share_1 =
        kFirstRound_1 + (1.0 - kFirstRound_1) * static_cast<double>(round) / static_cast<double>(rule.passes - 1);
    return on_scale_nm(world, share_1 * full_nm);
  }
  return full_nm;
}

double sheet_bolt_length_m(const GuideWorld& world) {
  const scenario::SheetLine* line = sheet_line(world, "bolt_length");
  return line == nullptr ? 0.0 : line->value.value_si;
}

event::ThingId bolt_for_hole(const GuideWorld& world, std::size_t bolt) {
  constexpr double kRuler_m = 0.0005;
  const bench::BenchSetup& setup = world.bench.setup();
  const double length_m = sheet_bolt_length_m(world);
  std::vector<event::ThingId> fresh;
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    const auto thing = static_cast<event::ThingId>(i);
    if (setup.things[i].kind != bench::ThingKind::Bolt) continue;
    bool old = false;
    for (const event::ThingId fitted : setup.fitted_bolts) old = old || fitted == thing;
    const double off_m = bench::see_bolt_length_m(world.bench, thing) - length_m;
    const bool fits = length_m <= 0.0 || (off_m < kRuler_m && off_m > -kRuler_m);
    if (!old && fits) fresh.push_back(thing);
  }
  const auto loose = [&](event::ThingId thing) {
    return bench::see_where(world.bench, thing) == bench::Whereabouts::Tray;
  };
  if (bolt < fresh.size() && loose(fresh[bolt])) return fresh[bolt];
  for (const event::ThingId thing : fresh) {
    if (loose(thing)) return thing;
  }
  return event::kNoThing;
}

}  // namespace proofstand::report
