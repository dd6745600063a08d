#include "sim/report/make_mark_sheet.h"

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/report/sheet_parts.h"

namespace proofstand::report {

std::string points_words(std::int64_t milli) {
  const double points = static_cast<double>(milli) / 1000.0;
  if (milli % 1000 == 0) return base::text_from_int(milli / 1000);
  return base::text_fixed(points, milli % 100 == 0 ? 1 : 2);
}

std::string clock_words(base::Tick tick) {
  const std::int64_t total = tick / base::kTicksPerSecond;
  const std::string rest = base::text_from_int(total % 60);
  return base::text_from_int(total / 60) + ":" + (rest.size() < 2 ? "0" : "") + rest;
}

MarkSheet make_mark_sheet(const record::Marking& marking, std::string_view language) {
  MarkSheet sheet;
  sheet.title = std::string(scenario::text_in(marking.scenario.title, language));
  sheet.who = marking.attempt.head.who;
  sheet.way = std::string(record::words_of(marking.attempt.head.way));
  sheet.scenario = marking.scenario.id;
  sheet.seed = marking.scenario.seed;
  sheet.drawn = marking.scenario.drawn;
  add_verdict(sheet, marking, language);
  add_findings(sheet, marking, language);
  add_computed(sheet, marking, language);
  add_card(sheet, marking, language);
  add_notes(sheet, marking, language);
  for (const std::string_view line : base::split_lines(scenario::text_in(marking.scenario.cautions, language))) {
    const std::string_view caution = base::trimmed(line);
    if (!caution.empty()) sheet.cautions.emplace_back(caution);
  }
  return sheet;
}

}  // namespace proofstand::report
