#include "sim/rules/kinds.h"

namespace proofstand::rules {
namespace {

constexpr double kHuge = 1.7976931348623157e308;
// a lost case never shows full marks, however small the miss
constexpr std::int32_t kNearlyFullPpm = kFullPpm - 1;

std::int32_t below_full(double score_ppm) {
  if (score_ppm <= 0.0) return 0;
  if (score_ppm >= static_cast<double>(kNearlyFullPpm)) return kNearlyFullPpm;
  return static_cast<std::int32_t>(score_ppm + 0.5);
}

}  // namespace

Work work_on(const RuleProgram& program, EngineState& state, RuleIndex index) {
  const auto i = static_cast<std::size_t>(index);
  return {program, state, index, program.rules[i], state.scopes[i], nullptr};
}

void pass_time(const Work& work, base::Tick tick) {
  switch (work.rule.kind) {
    case RuleKind::Leads:
      pass_time_leads(work, tick);
      break;
    case RuleKind::Hold:
    case RuleKind::Steady:
    case RuleKind::Keep:
      pass_time_condition(work, tick);
      break;
    default:
      break;
  }
}

Case stretch_case(const Work& work) {
  Case made;
  made.segment_a = work.scope.a;
  made.a_tick = work.scope.a_tick;
  made.anchor = work.scope.a;
  made.anchor_tick = work.scope.a_tick;
  made.since_tick = work.scope.a_tick;
  made.window_from = work.scope.a_tick;
  return made;
}

Case record_case(const Work& work, const Mark& anchor) {
  Case made = stretch_case(work);
  made.anchor = anchor.position;
  made.anchor_tick = anchor.tick;
  made.since_tick = anchor.tick;
  made.settled_tick = anchor.tick;
  made.window_to = anchor.tick;
  return made;
}

void cite(Case& made, Role role, const Mark& mark, const event::Record* record) {
  Cite cited;
  cited.role = role;
  cited.position = mark.position;
  cited.tick = mark.tick;
  if (record != nullptr) {
    cited.has_record = true;
    cited.record = *record;
  }
  made.cites.push_back(cited);
}

double duration_s(const Work& work, base::Tick ticks) {
  return static_cast<double>(ticks) / static_cast<double>(work.program.ticks_per_s);
}

void set_figures(Case& made, base::Dimension dimension, const double* lo_si, const double* hi_si, double found_si) {
  made.has_figures = true;
  made.dimension = dimension;
  made.lo_si = lo_si != nullptr ? *lo_si : -kHuge;
  made.hi_si = hi_si != nullptr ? *hi_si : kHuge;
  made.found_si = found_si;
  const double above_si = lo_si != nullptr ? found_si - *lo_si : kHuge;
  const double below_si = hi_si != nullptr ? *hi_si - found_si : kHuge;
  made.margin_si = above_si < below_si ? above_si : below_si;
}

std::int32_t score_of_miss(const Rule& rule, double miss_si) {
  double from_si = 0.0;
  double from_ppm = static_cast<double>(kFullPpm);
  for (const Band& band : rule.bands) {
    const double to_ppm = static_cast<double>(band.score_ppm);
    if (miss_si <= band.miss_si) {
      return below_full(from_ppm + (to_ppm - from_ppm) * ((miss_si - from_si) / (band.miss_si - from_si)));
    }
    from_si = band.miss_si;
    from_ppm = to_ppm;
  }
  return rule.bands.empty() ? 0 : rule.bands.back().score_ppm;
}

std::int32_t share_ppm(std::int64_t part, std::int64_t whole) {
  if (whole <= 0 || part <= 0) return 0;
  // very long times are halved alike, so that the product below fits
  while (whole > (std::int64_t{1} << 40) || part > (std::int64_t{1} << 40)) {
    whole /= 2;
    part /= 2;
  }
  if (whole == 0) return 0;
  const std::int64_t share = (part * kFullPpm + whole / 2) / whole;
  return share > kNearlyFullPpm ? kNearlyFullPpm : static_cast<std::int32_t>(share);
}

}  // namespace proofstand::rules
