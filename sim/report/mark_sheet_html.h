// The mark sheet as one self-contained page: no script, no link to anything outside, good on A4.
#pragma once

#include <string>

#include "sim/report/mark_sheet.h"

namespace proofstand::report {

/// The whole page as UTF-8 text.
std::string mark_sheet_html(const MarkSheet& sheet);

}  // namespace proofstand::report
