#include "sim/report/live_standing.h"

#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/event/job_events.h"
#include "sim/report/catalogue.h"
#include "sim/report/guidance_words.h"
#include "sim/report/sheet_parts.h"

namespace proofstand::report {
namespace {

using rules::LiveStatus;

// words of what is owed by item; empty where the rule does not count by item
std::vector<std::string> owed_items(const rules::RuleProgram& program, const rules::LiveRule& live,
                                    std::string_view language) {
  std::vector<std::string> items;
  const auto set = program.vocabulary.find_set(event::kBoltSet);
  const rules::Rule& rule = program.rules[static_cast<std::size_t>(live.rule)];
  const std::int32_t most = set ? static_cast<std::int32_t>(program.vocabulary.sets[*set].items.size()) : 0;
  if (rule.set_size != most) return items;
  for (const rules::Owed& owed : live.owed) {
    if (owed.item >= 0 && owed.item < most) {
      items.push_back(phrase("guide.bolt", language, {base::text_from_int(owed.item + 1)}));
    }
  }
  return items;
}

std::string say(const rules::RuleProgram& program, const rules::LiveRule& live, const LiveLine& line,
                std::string_view language) {
  const std::string worth = points_words(line.points_milli);
  switch (live.status) {
    case LiveStatus::Met:
      return std::string(phrase("live.met", language));
    case LiveStatus::GoodSoFar:
      return std::string(phrase("live.kept", language));
    case LiveStatus::Broken:
      return phrase("live.broken", language,
                    {points_words(line.lost_milli), clock_words(std::max(line.since_tick, base::Tick{0}))});
    case LiveStatus::BadSoFar:
    case LiveStatus::Idle:
      break;
  }
  const std::vector<std::string> items = owed_items(program, live, language);
  if (!items.empty()) return phrase("live.owed", language, {list_words(items), worth});
  return phrase(live.status == LiveStatus::Idle ? "live.idle" : "live.open", language, {worth});
}

}  // namespace

LiveStanding compute_live_standing(const rules::RuleProgram& program, const rules::EngineState& engine,
                                   const scenario::DrawnScenario& scenario, std::string_view language) {
  LiveStanding standing;
  for (const rules::LiveRule& live : rules::live_view(program, engine)) {
    const rules::Rule& rule = program.rules[static_cast<std::size_t>(live.rule)];
    if (rule.points_milli == 0) continue;
    LiveLine line;
    line.rule = live.rule;
    line.status = live.status;
    line.title = rule_title(scenario, program, live.rule, language);
    line.why = rule_why(scenario, live.rule, language);
    line.points_milli = rule.points_milli;
    line.lost_milli = live.lost_milli;
    line.at_stake_milli = live.at_stake_milli;
    line.since_tick = live.since_tick;
    line.say = say(program, live, line, language);
    standing.points_milli += line.points_milli;
    standing.lost_milli += line.lost_milli;
    standing.at_stake_milli += line.at_stake_milli;
    const bool met = live.status == LiveStatus::Met || live.status == LiveStatus::GoodSoFar;
    std::vector<LiveLine>& list = met                                 ? standing.met
                                  : live.status == LiveStatus::Broken ? standing.broken
                                                                      : standing.open;
    list.push_back(std::move(line));
  }
  return standing;
}

}  // namespace proofstand::report
