// The first line of a trace file: the vocabulary its records use. Private to this floor.
#pragma once

#include <string>
#include <string_view>

#include "sim/base/result.h"
#include "sim/event/vocabulary.h"
#include "sim/record/json_text.h"

namespace proofstand::record {

struct TraceHeader {
  std::int64_t ticks_per_s = 240;
  event::Vocabulary vocabulary;
};
/// errors: not-a-trace, newer-format, bad-header
base::Result<TraceHeader> read_trace_header(JsonView line, std::string_view where);
/// Word of a field type in files.
std::string_view words_of(event::FieldType type);

}  // namespace proofstand::record
