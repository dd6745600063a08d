// What each kind of rule reads.
#include "sim/base/number_text.h"
#include "sim/rules/draft.h"
#include "sim/rules/satisfiable.h"
#include "sim/rules/tokens.h"

namespace proofstand::rules {
namespace {

void missing(const Draft& draft, const RuleSpec& spec, std::string_view what) {
  draft.fault("E02", spec.kind.at, "'" + spec.id.text + "' (" + spec.kind.text + ") needs '" + std::string(what) + "'",
              "add it");
}

void compile_x(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  if (!spec.x.given()) missing(draft, spec, "x");
  rule.x = draft.selector(spec.x);
}

bool alike(const event::Field& a, const event::Field& b) {
  return a.type == b.type && a.dimension == b.dimension && a.set == b.set && a.choices == b.choices;
}

std::int32_t size_of_set(const Draft& draft, const event::Field& field) {
  if (field.type != event::FieldType::Item || field.set == event::kNoSet) return 0;
  return static_cast<std::int32_t>(draft.program.vocabulary.sets[field.set].items.size());
}

// the field that ties x, y and what voids together
void compile_same(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  if (!spec.same.given() || !rule.x.given() || !rule.y.given()) return;
  rule.same_x = draft.field(rule.x.kind, spec.same);
  rule.same_y = draft.field(rule.y.kind, spec.same);
  if (rule.same_x < 0 || rule.same_y < 0) return;
  const event::Field& field = draft.field_of(rule.x.kind, rule.same_x);
  if (!alike(field, draft.field_of(rule.y.kind, rule.same_y))) {
    draft.fault("E07", spec.same.at, "'" + spec.same.text + "' is not of one kind in x and y",
                "compare like with like");
  }
  rule.set_size = size_of_set(draft, field);
  if (!rule.voided_by.given()) return;
  const event::Kind& kind = draft.program.vocabulary.kinds[rule.voided_by.kind];
  const auto in_void = event::Vocabulary::find_field(kind, spec.same.text);
  if (in_void && alike(field, kind.fields[*in_void])) rule.same_void = static_cast<std::int32_t>(*in_void);
}

void compile_pair(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  compile_x(draft, spec, rule);
  if (!spec.y.given()) missing(draft, spec, "y");
  rule.y = draft.selector(spec.y);
  rule.voided_by = draft.selector(spec.voided_by);
  compile_same(draft, spec, rule);
  rule.within = draft.ticks(spec.within);
  rule.gap = draft.ticks(spec.gap);
  rule.fresh = spec.fresh;
  rule.one_each = spec.one_each;
  rule.look_run = spec.look_run;
  if (rule.gap >= 0 && rule.within >= 0 && rule.gap > rule.within) {
    draft.fault("E09", spec.gap.at,
                "'" + spec.id.text + "' asks for at least " + spec.gap.text + " and at most " + spec.within.text,
                "make the gap no longer than within");
  }
}

void compile_count(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  compile_x(draft, spec, rule);
  if (spec.distinct.given()) {
    rule.distinct = draft.field(rule.x.kind, spec.distinct);
    if (rule.distinct >= 0) rule.set_size = size_of_set(draft, draft.field_of(rule.x.kind, rule.distinct));
  }
  if (!spec.range.given()) return missing(draft, spec, "range");
  const WhereContext context = draft.context(event::kNoKind);
  double lo_1 = 0.0;
  double hi_1 = -1.0;
  if (spec.range.text.find("..") == std::string::npos) {
    const base::Result<double> exact = parse_fixed(context, spec.range, base::Dimension::Number);
    if (!exact.has_value()) return draft.faults.add(exact.error());
    lo_1 = hi_1 = exact.value();
  } else {
    const base::Result<RangeExpression> range = parse_range(context, spec.range, base::Dimension::Number);
    if (!range.has_value()) return draft.faults.add(range.error());
    for (const auto* bound : {&range.value().lo, &range.value().hi}) {
      if (bound->has_value() && !(*bound)->is_constant()) {
        return draft.fault("E07", spec.range.at, "a count needs fixed bounds", "write whole numbers");
      }
    }
    if (range.value().lo) lo_1 = range.value().lo->code[0].value_si;
    if (range.value().hi) hi_1 = range.value().hi->code[0].value_si;
    if (range.value().hi && hi_1 < 0.0) lo_1 = -1.0;
  }
  rule.count_lo = static_cast<std::int64_t>(lo_1);
  rule.count_hi = static_cast<std::int64_t>(hi_1);
  const bool whole = static_cast<double>(rule.count_lo) == lo_1 && static_cast<double>(rule.count_hi) == hi_1;
  if (!whole || lo_1 < 0.0) {
    draft.fault("E09", spec.range.at, "'" + spec.range.text + "' is no range of whole numbers from 0 up",
                "write such as 2.. or 1..3");
  }
}

void compile_order(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  if (spec.steps.size() < 2 || spec.steps.size() > 64) {
    draft.fault(
        "E12", spec.kind.at,
        "'" + spec.id.text + "' has " + base::text_from_int(static_cast<std::int64_t>(spec.steps.size())) + " steps",
        "give 2 to 64 steps");
  }
  for (const SelectorSpec& step : spec.steps) rule.steps.push_back(draft.selector(step));
  rule.first = spec.first || !spec.groups.empty();
  if (spec.groups.empty()) {
    for (std::size_t i = 0; i < rule.steps.size(); ++i) rule.group_of_step.push_back(static_cast<std::int32_t>(i));
  } else {
    rule.group_of_step.assign(rule.steps.size(), -1);
    for (std::size_t g = 0; g < spec.groups.size(); ++g) {
      for (int step : spec.groups[g]) {
        const bool there = step >= 0 && static_cast<std::size_t>(step) < rule.steps.size();
        if (!there || rule.group_of_step[static_cast<std::size_t>(step)] >= 0) {
          draft.fault("E12", spec.kind.at, "the groups of '" + spec.id.text + "' do not share out its steps",
                      "name every step in one group");
          return;
        }
        rule.group_of_step[static_cast<std::size_t>(step)] = static_cast<std::int32_t>(g);
      }
    }
    for (std::int32_t group : rule.group_of_step) {
      if (group < 0) {
        return draft.fault("E12", spec.kind.at, "a step of '" + spec.id.text + "' is in no group",
                           "name every step in one group");
      }
    }
  }
  for (std::size_t i = 0; i < rule.steps.size(); ++i) {
    for (std::size_t j = i + 1; j < rule.steps.size(); ++j) {
      if (!can_match_both(draft.program, rule.steps[i], rule.steps[j])) continue;
      draft.fault("E12", spec.steps[j].event.at,
                  "one record could be two steps of '" + spec.id.text + "': step " +
                      base::text_from_int(static_cast<std::int64_t>(i + 1)) + " and step " +
                      base::text_from_int(static_cast<std::int64_t>(j + 1)),
                  "tell them apart in their conditions");
    }
  }
}

void compile_stretch(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  if (!spec.condition.given()) {
    missing(draft, spec, "condition");
  } else {
    rule.condition = draft.keep(parse_condition(draft.context(event::kNoKind), spec.condition));
  }
  if (rule.kind == RuleKind::Steady) compile_x(draft, spec, rule);
  if (rule.kind == RuleKind::Keep) {
    const base::Tick budget = draft.ticks(spec.budget);
    rule.budget = budget < 0 ? 0 : budget;
    return;
  }
  if (!spec.duration.given()) return missing(draft, spec, "duration");
  rule.duration = draft.ticks(spec.duration);
  if (rule.duration == 0)
    draft.fault("E09", spec.duration.at, "a duration of nothing is always kept", "write how long");
}

void compile_measure(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  static const std::vector<std::string_view> kPicks = {"each", "first", "last"};
  compile_x(draft, spec, rule);
  if (const auto pick = draft.word(spec.pick, kPicks, "pick", 0)) rule.pick = static_cast<Pick>(*pick);
  if (spec.per.given()) {
    if (rule.pick == Pick::Each) {
      draft.fault("E02", spec.per.at, "'per' goes with pick first or last", "write pick = last");
    }
    rule.per = draft.field(rule.x.kind, spec.per);
    if (rule.per >= 0) rule.set_size = size_of_set(draft, draft.field_of(rule.x.kind, rule.per));
  }
  if (!spec.value.given()) return missing(draft, spec, "value");
  if (!spec.range.given()) return missing(draft, spec, "range");
  if (!rule.x.given()) return;
  base::Result<NumberExpression> value = parse_number(draft.context(rule.x.kind), spec.value);
  if (!value.has_value()) return draft.faults.add(value.error());
  rule.dimension = value->dimension;
  base::Result<RangeExpression> range = parse_range(draft.context(rule.x.kind), spec.range, rule.dimension);
  if (!range.has_value()) return draft.faults.add(range.error());
  const bool field = value->expression.code.size() == 1 && value->expression.code[0].op == Op::Field;
  rule.value = draft.keep(std::move(value->expression));
  for (auto* bound : {&range->lo, &range->hi}) {
    if (!bound->has_value()) continue;
    if (field && (*bound)->is_constant()) {
      const auto& of = draft.field_of(rule.x.kind, draft.program.expressions.back().code[0].index);
      const double bound_si = (*bound)->code[0].value_si;
      if (of.lo_si < of.hi_si && (bound_si < of.lo_si || bound_si > of.hi_si)) {
        draft.fault("E10", spec.range.at,
                    base::quantity_words(bound_si, rule.dimension) + " is outside of what " + of.name + " can be",
                    "check the unit and the figure");
        return;
      }
    }
  }
  if (range->lo) rule.range_lo = draft.keep(std::move(*range->lo));
  if (range->hi) rule.range_hi = draft.keep(std::move(*range->hi));
}

void compile_limit(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  if (rule.kind == RuleKind::Within) {
    compile_pair(draft, spec, rule);
    if (!spec.within.given()) missing(draft, spec, "within");
    return;
  }
  compile_x(draft, spec, rule);
  if (!spec.duration.given()) return missing(draft, spec, "duration");
  rule.duration = draft.ticks(spec.duration);
}

}  // namespace

void compile_kind(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  switch (rule.kind) {
    case RuleKind::Must:
      rule.count_lo = 1;
      compile_x(draft, spec, rule);
      break;
    case RuleKind::Never:
      rule.count_hi = 0;
      compile_x(draft, spec, rule);
      break;
    case RuleKind::Count:
      compile_count(draft, spec, rule);
      break;
    case RuleKind::Needs:
    case RuleKind::Leads:
      compile_pair(draft, spec, rule);
      break;
    case RuleKind::Order:
      compile_order(draft, spec, rule);
      break;
    case RuleKind::Hold:
    case RuleKind::Steady:
    case RuleKind::Keep:
      compile_stretch(draft, spec, rule);
      break;
    case RuleKind::Measure:
      compile_measure(draft, spec, rule);
      break;
    case RuleKind::Rounds:
      compile_x(draft, spec, rule);
      compile_rounds(draft, spec, rule);
      break;
    case RuleKind::Within:
    case RuleKind::Recur:
      compile_limit(draft, spec, rule);
      break;
    case RuleKind::AnyOf:
    case RuleKind::AllOf:
    case RuleKind::AtLeast:
      rule.number = spec.number;
      break;
  }
}

}  // namespace proofstand::rules
