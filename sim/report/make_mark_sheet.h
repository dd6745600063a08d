// From a marking to its sheet: verdicts become sentences, closing events become figures.
#pragma once

#include <string_view>

#include "sim/record/marking.h"
#include "sim/report/mark_sheet.h"

namespace proofstand::report {

/// language: of the sentences, "en" where a text is not there in it. Curves and film maps need the bench and are added
/// by whoever replays it.
MarkSheet make_mark_sheet(const record::Marking& marking, std::string_view language);

}  // namespace proofstand::report
