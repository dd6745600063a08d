// The parts of a mark sheet, each from what it needs. Private to this floor.
#pragma once

#include <string>
#include <string_view>

#include "sim/record/marking.h"
#include "sim/report/mark_sheet.h"

namespace proofstand::report {

/// Findings: lost (critical first, then by points lost), met, aside.
void add_findings(MarkSheet& sheet, const record::Marking& marking, std::string_view language);
/// Verdict and its reason line.
void add_verdict(MarkSheet& sheet, const record::Marking& marking, std::string_view language);
/// Bolts, faces, joint, order of tightening: from the closing events.
void add_computed(MarkSheet& sheet, const record::Marking& marking, std::string_view language);
/// The job card, as it was last written.
void add_card(MarkSheet& sheet, const record::Marking& marking, std::string_view language);
/// Rewinds, gaps, recovery, versions.
void add_notes(MarkSheet& sheet, const record::Marking& marking, std::string_view language);

/// "12" or "12.5" from thousandths of a point.
std::string points_words(std::int64_t milli);
/// "12:05" from ticks.
std::string clock_words(base::Tick tick);
/// A record in one line: which things, what holds, and the figure that the case judged (or the first few figures that
/// are not nought). proof may be null.
std::string event_words(const event::Vocabulary& vocabulary, const event::Record& record, const rules::Case* proof,
                        std::string_view language);

}  // namespace proofstand::report
