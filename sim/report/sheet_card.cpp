#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/event/job_events.h"
#include "sim/report/catalogue.h"
#include "sim/report/record_fields.h"
#include "sim/report/sheet_parts.h"

namespace proofstand::report {
namespace {

using base::Dimension;
using base::quantity_words;

// how far a written figure may lie from the true one before the sheet points at it: what a careful reading of the
// instruments of this trade leaves open (common practice, no source). Marks come from the rules, not from here.
constexpr double kReadLength_m = 0.00003;
constexpr double kReadTorque_nm = 0.05;

std::string label_of(const record::Marking& marking, std::size_t entry, const std::string& name,
                     std::string_view language) {
  if (entry < marking.scenario.card_lines.size()) {
    const std::string_view label = scenario::text_in(marking.scenario.card_lines[entry].label, language);
    if (!label.empty()) return std::string(label);
  }
  return name;
}

// what was written, letter for letter, by the last time it was
std::string written_text(const record::Marking& marking, std::size_t entry) {
  std::string text;
  for (const event::Action& action : marking.attempt.actions) {
    if (action.kind == event::ActionKind::Write && action.numbers[0] == static_cast<std::int64_t>(entry)) {
      text = action.text;
    }
  }
  return text;
}

void fill(CardLine& line, const RecordFields& fields, std::string_view language) {
  if (fields.is("card_length")) {
    line.written = quantity_words(fields.value_or("written", 0.0), Dimension::Length);
    if (const auto truth = fields.value("truth")) line.truth = quantity_words(*truth, Dimension::Length);
    line.agrees = fields.value_or("off_truth", 0.0) <= kReadLength_m;
  } else if (fields.is("card_torque")) {
    line.written = quantity_words(fields.value_or("written", 0.0), Dimension::Torque);
    const auto indicated = fields.value("indicated");
    line.truth = indicated ? phrase("card.tool-at", language, {quantity_words(*indicated, Dimension::Torque)})
                           : std::string(phrase("card.tool-never", language));
    line.agrees = indicated && fields.value_or("off_indicated", 1.0) <= kReadTorque_nm;
  } else if (fields.is("card_choice")) {
    line.written = fields.word("word");
    line.truth = fields.word("right");
    line.agrees = fields.value_or("agrees", 1.0) != 0.0;
  } else if (fields.is("card_note")) {
    line.written = phrase("card.letters", language,
                          {base::text_from_int(static_cast<std::int64_t>(fields.value_or("letters", 0.0)))});
    line.truth.clear();
    line.agrees = true;
  }
}

}  // namespace

void add_card(MarkSheet& sheet, const record::Marking& marking, std::string_view language) {
  const auto set = marking.program.vocabulary.find_set(event::kCardSet);
  if (!set) return;
  const std::vector<std::string>& entries = marking.program.vocabulary.sets[*set].items;
  for (std::size_t e = 0; e < entries.size(); ++e) {
    CardLine line;
    line.entry = label_of(marking, e, entries[e], language);
    line.needed = e < marking.scenario.setup.card.size() && marking.scenario.setup.card[e].needed;
    for (const event::Record& record : marking.trace.records) {
      const RecordFields fields(marking.program.vocabulary, record);
      if (fields.index("entry") == e) fill(line, fields, language);
    }
    const std::string letters = written_text(marking, e);
    if (!letters.empty()) line.written = letters;
    sheet.card.push_back(std::move(line));
  }
}

}  // namespace proofstand::report
