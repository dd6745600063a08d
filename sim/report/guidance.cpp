#include "sim/report/guidance.h"

#include <algorithm>

#include "sim/report/catalogue.h"
#include "sim/report/guidance_lines.h"
#include "sim/report/guidance_words.h"
#include "sim/report/sheet_parts.h"

namespace proofstand::report {
namespace {

constexpr std::size_t kMostMind = 3;

// requirements that watch how a chore is done: they read what it brings about, and ask for nothing themselves
std::vector<std::string> minding(const GuideWorld& world, const Need& need, std::string_view language) {
  std::vector<std::string> titles;
  const ChoreRow& row = row_of(need.chore.kind);
  for (const std::string_view made : row.makes) {
    for (std::size_t i = 0; i < world.program.rules.size() && titles.size() < kMostMind; ++i) {
      const rules::Rule& rule = world.program.rules[i];
      const bool watches = rule.kind == rules::RuleKind::Never || rule.kind == rules::RuleKind::Measure;
      const bool counts = rule.points_milli > 0 && static_cast<rules::RuleIndex>(i) != need.rule;
      if (!watches || !counts || world.program.vocabulary.kinds[rule.x.kind].name != made) continue;
      std::string title = rule_title(world.scenario, world.program, static_cast<rules::RuleIndex>(i), language);
      if (std::find(titles.begin(), titles.end(), title) == titles.end()) titles.push_back(std::move(title));
    }
  }
  return titles;
}

void add_late(const GuideWorld& world, const GuidePlan& plan, std::string_view language, Guidance& guidance) {
  const auto add = [&](rules::RuleIndex rule, std::string_view key, std::int64_t lost_milli, base::Tick since) {
    if (lost_milli <= 0) return;
    guidance.late.push_back({rule, rule_title(world.scenario, world.program, rule, language),
                             phrase(key, language, {points_words(lost_milli), clock_words(since)}), lost_milli, since});
  };
  for (const rules::LiveRule& live : world.live) {
    if (live.too_late) add(live.rule, "guide.late", live.lost_milli, std::max(live.since_tick, base::Tick{0}));
  }
  for (const Undoing& undoing : plan.undoing) {
    const auto index = static_cast<std::size_t>(undoing.rule);
    if (world.live[index].too_late) continue;
    add(undoing.rule, "guide.undo", world.program.rules[index].points_milli, undoing.since_tick);
  }
  std::stable_sort(guidance.late.begin(), guidance.late.end(),
                   [](const GuideLate& a, const GuideLate& b) { return a.since_tick > b.since_tick; });
}

void add_step(const GuideWorld& world, const GuidePlan& plan, std::string_view language, Guidance& guidance) {
  const Need& need = plan.needs[plan.ready.front()];
  GuideStep step;
  step.say = say_chore(world, need.chore, language);
  step.lines = lines_of(world, need.chore, phrase("guide.note", language));
  const auto add_targets = [&](const Chore& chore) {
    for (const GuideTarget& target : targets_of(world, chore)) {
      if (std::find(step.targets.begin(), step.targets.end(), target) == step.targets.end()) {
        step.targets.push_back(target);
      }
    }
  };
  const auto add_item = [&](const Chore& chore) {
    const std::string item = item_words(world, chore, language);
    if (!item.empty() && std::find(step.items.begin(), step.items.end(), item) == step.items.end()) {
      step.items.push_back(item);
    }
  };
  add_targets(need.chore);
  add_item(need.chore);
  const bool order_kept = keeps_order(world, need.chore);
  for (const std::size_t i : plan.ready) {
    const Chore& other = plan.needs[i].chore;
    if (other.kind == need.chore.kind && (!order_kept || keeps_order(world, other))) add_targets(other);
  }
  for (const Need& other : plan.needs) {
    if (other.chore.kind == need.chore.kind) add_item(other.chore);
  }
  if (step.items.size() > 1) {
    guidance.say_owed = phrase("guide.owed", language, {list_words({step.items.begin() + 1, step.items.end()})});
  }
  guidance.next = std::move(step);
  guidance.rule = need.rule;
  guidance.stage = std::string(row_of(need.chore.kind).stage);
  guidance.mind = minding(world, need, language);
  if (need.rule != rules::kNoRule) {
    guidance.title = rule_title(world.scenario, world.program, need.rule, language);
    guidance.why = rule_why(world.scenario, need.rule, language);
  } else if (need.chore.kind == ChoreKind::HandOver) {
    guidance.title = std::string(phrase("guide.hand-over-title", language));
    guidance.why = std::string(phrase("guide.hand-over-why", language));
  }
}

}  // namespace

Guidance compute_guidance(const rules::RuleProgram& program, const rules::EngineState& engine,
                          const scenario::DrawnScenario& scenario, const bench::Bench& bench,
                          std::string_view language) {
  const GuideWorld world = guide_world(program, engine, scenario, bench);
  const GuidePlan plan = compute_plan(world);
  Guidance guidance;
  add_late(world, plan, language, guidance);
  guidance.over = bench.over();
  if (guidance.over) return guidance;
  for (const rules::RuleIndex rule : plan.unknown_how) {
    guidance.say_stuck = phrase("guide.stuck", language, {rule_title(scenario, program, rule, language)});
    break;
  }
  if (!plan.ready.empty()) add_step(world, plan, language, guidance);
  return guidance;
}

}  // namespace proofstand::report
