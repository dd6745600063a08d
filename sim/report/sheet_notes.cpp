#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/record/attempt_reader.h"
#include "sim/report/catalogue.h"
#include "sim/report/record_fields.h"
#include "sim/report/sheet_parts.h"

namespace proofstand::report {
namespace {

std::string count_words(std::size_t count) { return base::text_from_int(static_cast<std::int64_t>(count)); }

std::string joined(const std::vector<std::string>& words) {
  std::string out;
  for (const std::string& word : words) out += (out.empty() ? "" : ", ") + word;
  return out;
}

}  // namespace

void add_notes(MarkSheet& sheet, const record::Marking& marking, std::string_view language) {
  const record::Attempt& attempt = marking.attempt;
  std::vector<std::string>& notes = sheet.notes;
  if (!attempt.closing) notes.emplace_back(phrase("note.open", language));
  if (attempt.torn_bytes > 0) notes.push_back(phrase("note.torn", language, {record::torn_words(attempt)}));
  if (!attempt.resumptions.empty()) {
    notes.push_back(phrase("note.resumed", language, {count_words(attempt.resumptions.size())}));
  }
  if (!attempt.rewinds.empty()) {
    notes.push_back(phrase("note.rewound", language, {count_words(attempt.rewinds.size())}));
  }
  double gap_s = 0.0;
  for (const event::Record& record : marking.trace.records) {
    const RecordFields fields(marking.program.vocabulary, record);
    if (fields.is("gap")) gap_s += fields.value_or("time", 0.0);
  }
  if (gap_s > 0.0) notes.push_back(phrase("note.gap", language, {base::quantity_words(gap_s, base::Dimension::Time)}));
  if (!attempt.head.aids.empty()) notes.push_back(phrase("note.aids", language, {joined(attempt.head.aids)}));
  if (!attempt.head.hand.empty()) notes.push_back(phrase("note.hand", language, {attempt.head.hand}));
  std::vector<std::string> outside;
  for (const scenario::Stage& stage : marking.scenario.stages) {
    if (!stage.in_this_job) outside.push_back(stage.name);
  }
  if (!outside.empty()) notes.push_back(phrase("note.stages", language, {joined(outside)}));
  if (attempt.closing) notes.emplace_back(phrase("note.unsigned", language));
  const base::Tick gap_ticks = base::ticks_from(gap_s);
  sheet.time = marking.trace.end_tick > gap_ticks ? marking.trace.end_tick - gap_ticks : 0;
}

}  // namespace proofstand::report
