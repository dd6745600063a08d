// The first line of an attempt, written and read.
#pragma once

#include <string>
#include <string_view>

#include "sim/record/attempt.h"

namespace proofstand::record {

/// The line's object, without its seal.
std::string head_object(const AttemptHead& head);
/// errors: not-an-attempt; newer-format; bad-head: a part missing, or a scenario part that does not have its hash
base::Result<AttemptHead> read_head(JsonView line, std::string_view where);

}  // namespace proofstand::record
