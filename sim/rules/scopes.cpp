#include "sim/rules/scopes.h"

namespace proofstand::rules {
namespace {

void open_kind(const Work& work, base::Tick tick) {
  switch (work.rule.kind) {
    case RuleKind::Must:
    case RuleKind::Never:
    case RuleKind::Count:
      return open_presence(work);
    case RuleKind::Needs:
      return open_needs(work);
    case RuleKind::Leads:
      return open_leads(work);
    case RuleKind::Order:
      return open_order(work);
    case RuleKind::Hold:
    case RuleKind::Steady:
    case RuleKind::Keep:
      return open_condition(work, tick);
    case RuleKind::Measure:
      return open_measure(work);
    case RuleKind::Rounds:
      return open_rounds(work);
    case RuleKind::Within:
    case RuleKind::Recur:
      return open_limit(work);
    case RuleKind::AnyOf:
    case RuleKind::AllOf:
    case RuleKind::AtLeast:
      return;
  }
}

void take_kind(const Work& work, const Happening& now) {
  switch (work.rule.kind) {
    case RuleKind::Must:
    case RuleKind::Never:
    case RuleKind::Count:
      return take_presence(work, now);
    case RuleKind::Needs:
      return take_needs(work, now);
    case RuleKind::Leads:
      return take_leads(work, now);
    case RuleKind::Order:
      return take_order(work, now);
    case RuleKind::Hold:
    case RuleKind::Steady:
    case RuleKind::Keep:
      return take_steady(work, now);
    case RuleKind::Measure:
      return take_measure(work, now);
    case RuleKind::Rounds:
      return take_rounds(work, now);
    case RuleKind::Within:
    case RuleKind::Recur:
      return take_limit(work, now);
    case RuleKind::AnyOf:
    case RuleKind::AllOf:
    case RuleKind::AtLeast:
      return;
  }
}

void close_kind(const Work& work, const Ending& ending) {
  switch (work.rule.kind) {
    case RuleKind::Must:
    case RuleKind::Never:
    case RuleKind::Count:
      return close_presence(work, ending);
    case RuleKind::Leads:
      return close_leads(work, ending);
    case RuleKind::Order:
      return close_order(work, ending);
    case RuleKind::Hold:
    case RuleKind::Steady:
    case RuleKind::Keep:
      return close_condition(work, ending);
    case RuleKind::Measure:
      return close_measure(work, ending);
    case RuleKind::Rounds:
      return close_rounds(work, ending);
    case RuleKind::Within:
    case RuleKind::Recur:
      return close_limit(work, ending);
    case RuleKind::Needs:
    case RuleKind::AnyOf:
    case RuleKind::AllOf:
    case RuleKind::AtLeast:
      return;
  }
}

void open_scope(const Work& work, Position position, base::Tick tick) {
  ScopeState& scope = work.scope;
  scope.open = true;
  scope.a = position;
  scope.a_tick = tick;
  ++scope.opened;
  open_kind(work, tick);
}

// cases of the stretch that has just ended learn where it did
void name_end(Tally& tally, const Ending& ending) {
  if (tally.unnamed == 0) return;
  tally.unnamed = 0;
  for (std::vector<Case>* list : {&tally.bad_cases, &tally.ok_cases, &tally.worst}) {
    for (Case& made : *list) {
      if (made.b_tick != kNoTick) continue;
      made.segment_b = ending.position;
      made.b_tick = ending.tick;
    }
  }
}

void close_scope(const Work& work, const Ending& ending) {
  close_kind(work, ending);
  work.scope.open = false;
  ++work.scope.counted;
  name_end(work.tally(), ending);
  if (!work.rule.discards) return;
  const auto i = static_cast<std::size_t>(work.index);
  merge(work.state.kept[i], std::move(work.state.current[i]), work.program.evidence);
  work.state.current[i] = Tally{};
}

void discard_scope(const Work& work) {
  work.scope.open = false;
  work.state.current[static_cast<std::size_t>(work.index)] = Tally{};
}

// true when the record opened or closed a stretch, so that it lies in none
bool take_delimiter(const Work& work, const Happening& now) {
  ScopeState& scope = work.scope;
  const bool opens = now.is(kBitOpen);
  const bool closes = now.is(kBitClose);
  const Ending ending{now.position, now.tick, false};
  bool taken = false;
  switch (work.rule.form) {
    case ScopeForm::Run:
      return false;
    case ScopeForm::AfterFirst:
      if (!opens || scope.over) return false;
      scope.over = true;
      open_scope(work, now.position, now.tick);
      return true;
    case ScopeForm::AfterLast:
      if (!opens) return false;
      if (scope.open) discard_scope(work);
      open_scope(work, now.position, now.tick);
      return true;
    case ScopeForm::BeforeFirst:
    case ScopeForm::UntilFirst:
      if (!closes || scope.over) return false;
      scope.over = true;
      close_scope(work, ending);
      return true;
    case ScopeForm::Between:
    case ScopeForm::FromTo:
      if (closes && scope.open) {
        close_scope(work, ending);
        taken = true;
      }
      // one record may close a stretch and open the next; inside of one, a further opener is a record like any other
      if (opens && !scope.open) {
        open_scope(work, now.position, now.tick);
        taken = true;
      }
      return taken;
  }
  return false;
}

}  // namespace

void begin_scope(const Work& work) {
  const ScopeForm form = work.rule.form;
  if (form == ScopeForm::Run || form == ScopeForm::BeforeFirst || form == ScopeForm::UntilFirst) {
    open_scope(work, kNoPosition, 0);
  } else if (work.rule.condition >= 0) {
    // the condition is followed outside of stretches too
    open_condition(work, 0);
  }
}

void step_rule(const Work& work, const Happening& now) {
  if (work.rule.timed) pass_time(work, now.tick);
  if (now.is(kBitCondition)) turn_condition(work, now);
  const bool delimiter = (now.bits & (kBitOpen | kBitClose)) != 0 && take_delimiter(work, now);
  if (!delimiter && work.scope.open) return take_kind(work, now);
  if (work.rule.look_run) note_needs(work, now);
}

void end_scope(const Work& work, const Ending& ending) {
  pass_time(work, ending.tick);
  if (!work.scope.open) return;
  const ScopeForm form = work.rule.form;
  if (form == ScopeForm::BeforeFirst || form == ScopeForm::Between) return discard_scope(work);
  close_scope(work, ending);
}

}  // namespace proofstand::rules
