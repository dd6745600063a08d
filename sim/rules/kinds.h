// What every kind of rule does when its stretch begins, when something happens in it, when time passes and when it
// ends. One small file per family of kinds. Private to the engine.
#pragma once

#include <vector>

#include "sim/rules/program.h"
#include "sim/rules/state.h"
#include "sim/rules/tally.h"

namespace proofstand::rules {

/// One rule at work.
struct Work {
  const RuleProgram& program;
  EngineState& state;
  RuleIndex index = kNoRule;
  const Rule& rule;
  ScopeState& scope;
  std::vector<event::Record>* made = nullptr;  ///< records that the rule makes go here

  [[nodiscard]] Tally& tally() const {
    const auto i = static_cast<std::size_t>(index);
    return rule.discards ? state.current[i] : state.kept[i];
  }
};
Work work_on(const RuleProgram& program, EngineState& state, RuleIndex index);

/// A record, and what it is to the rule.
struct Happening {
  const event::Record& record;
  Position position;
  base::Tick tick;
  std::uint8_t bits;
  std::int8_t step;

  [[nodiscard]] bool is(RoleBit bit) const { return (bits & bit) != 0; }
};

/// How a stretch ends.
struct Ending {
  Position position = kNoPosition;
  base::Tick tick = 0;
  bool cut_off = false;  ///< the run was ended by something else than the trainee or the clock
};

// The stretch begins.
void open_presence(const Work& work);
void open_needs(const Work& work);
void open_leads(const Work& work);
void open_order(const Work& work);
void open_condition(const Work& work, base::Tick tick);
void open_measure(const Work& work);
void open_rounds(const Work& work);
void open_limit(const Work& work);

// Something happens in it.
void take_presence(const Work& work, const Happening& now);
void take_needs(const Work& work, const Happening& now);
void take_leads(const Work& work, const Happening& now);
void take_order(const Work& work, const Happening& now);
void take_steady(const Work& work, const Happening& now);
void take_measure(const Work& work, const Happening& now);
void take_rounds(const Work& work, const Happening& now);
void take_limit(const Work& work, const Happening& now);

/// needs with look_run: y and void outside of the stretch.
void note_needs(const Work& work, const Happening& now);
/// hold, steady, keep: some fluent of the condition was set.
void turn_condition(const Work& work, const Happening& now);

/// Everything that was due before this tick is settled.
void pass_time(const Work& work, base::Tick tick);
void pass_time_leads(const Work& work, base::Tick tick);
void pass_time_condition(const Work& work, base::Tick tick);

// The stretch ends.
void close_presence(const Work& work, const Ending& ending);
void close_leads(const Work& work, const Ending& ending);
void close_order(const Work& work, const Ending& ending);
void close_condition(const Work& work, const Ending& ending);
void close_measure(const Work& work, const Ending& ending);
void close_rounds(const Work& work, const Ending& ending);
void close_limit(const Work& work, const Ending& ending);

// -- small things that several kinds share
// -----------------------------------------------------------------------------

/// A case of the open stretch; anchored at its opener.
Case stretch_case(const Work& work);
/// A case about one record.
Case record_case(const Work& work, const Mark& anchor);
void cite(Case& made, Role role, const Mark& mark, const event::Record* record);
/// Seconds of ticks, for the figures of a case.
double duration_s(const Work& work, base::Tick ticks);
/// Expected lo..hi (nullptr = open), found, and the margin between; for durations in seconds.
void set_figures(Case& made, base::Dimension dimension, const double* lo_si, const double* hi_si, double found_si);
/// Score for a miss of this size, below full.
std::int32_t score_of_miss(const Rule& rule, double miss_si);
/// part of whole in millionths, below full.
std::int32_t share_ppm(std::int64_t part, std::int64_t whole);

}  // namespace proofstand::rules
