// Trace files: events as JSON lines that a person can read and write, for trying rules on.
//
//   {"proofstand":"trace","format":1,"ticks_per_s":240,"kinds":"job","sets":[{"name":"bolts","ring":true,"items":[...]}]}
//   {"t":512,"kind":"clicked","hand":"right","bolt":"bolt 4","tool":"click driver"}
//   {"end":9000,"reason":"finished"}
//
// "kinds" is "job" for the bench's own vocabulary over these sets, or a list of the author's own:
//   {"name":"poured","fields":[{"name":"amount","type":"quantity","of":"volume"},{"name":"by","type":"choice",
//    "words":["left","right"]},{"name":"bolt","type":"item","set":"bolts"}]}, with "change":true for one that sets a
// lasting value. Field types: flag, count, item, choice, quantity. In records, quantities are SI numbers or texts with
// their unit ("5 N·m"), items and choices their words, flags true or false; a field that is left out is not known.
#pragma once

#include <string>
#include <string_view>

#include "sim/base/result.h"
#include "sim/event/record.h"

namespace proofstand::record {

inline constexpr int kTraceFormat = 1;
inline constexpr std::size_t kLargestTrace = std::size_t{512} << 20;

/// A trace with the vocabulary it is written in.
struct TraceFile {
  event::Vocabulary vocabulary;
  event::Trace trace;
};

/// errors: not-a-trace, newer-format, bad-header, bad-record (with its line), no-end: the last line is missing
base::Result<TraceFile> read_trace(std::string_view bytes, std::string_view name);

/// The first line, without line end. own_kinds: write the vocabulary out instead of "job".
std::string trace_header_line(const event::Vocabulary& vocabulary, std::int64_t ticks_per_s, bool own_kinds);
/// One record.
std::string trace_record_line(const event::Vocabulary& vocabulary, const event::Record& record);
/// The last line.
std::string trace_end_line(base::Tick end_tick, event::EndReason end);

}  // namespace proofstand::record
