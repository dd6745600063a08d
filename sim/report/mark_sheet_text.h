// The mark sheet as plain text and as JSON.
#pragma once

#include <string>
#include <string_view>

#include "sim/report/mark_sheet.h"

namespace proofstand::report {

/// Lines of at most 100 columns, UTF-8, for a terminal or a file.
std::string mark_sheet_text(const MarkSheet& sheet, std::string_view language);

/// One JSON object with stable keys that name their units (preload_n, slip_angle_deg ...); ends with a line end.
std::string mark_sheet_json(const MarkSheet& sheet);

}  // namespace proofstand::report
