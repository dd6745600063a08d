// The two papers on the bench: the job card that the trainee fills in and the maker's sheet that binds.
#pragma once

#include <vector>

#include "sim/base/quantity.h"
#include "sim/scenario/field_reader.h"
#include "sim/scenario/named_parts.h"

namespace proofstand::scenario {

/// `[card.NAME]`: entries into setup.card with their choice words; labels come back in the same order.
std::vector<CardLine> read_card(const Reading& reading, const Node& card, NamedParts& parts);
/// `[sheet.NAME]`: value with unit, tolerance in the same unit, label. Sets setup.sheet_torque_nm from bolt_torque.
std::vector<SheetLine> read_sheet(const Reading& reading, const Node& sheet, NamedParts& parts);

}  // namespace proofstand::scenario
