// Event traces by name: an attempt keeps with its events the names of kinds, fields and words that they use, so that a
// later edition of the vocabulary still knows which is which.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "sim/base/result.h"
#include "sim/base/ticks.h"
#include "sim/event/record.h"
#include "sim/record/json_text.h"

namespace proofstand::record {

/// A field as the trace was written with it.
struct NamedField {
  std::string name;
  std::vector<std::string> choices;  ///< of a choice
};
struct NamedKind {
  std::string name;
  std::vector<NamedField> fields;
};
/// Records whose kind is an index into `kinds`.
struct NamedTrace {
  std::vector<NamedKind> kinds;
  std::vector<event::Record> records;
};

/// {"trace":{"kinds":[["took",["hand",["left","right"]],["thing"], ...], ...]}}: only kinds that occur.
std::string trace_begin_object(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records);
/// {"events":[[ticks since the one before, kind, value or null, ...], ...]} for records first .. first+count-1; the
/// first one's ticks count from the start. Unknown values at a record's end are left out.
std::string events_object(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records,
                          std::size_t first, std::size_t count);

/// errors: bad-trace
base::Result<std::vector<NamedKind>> read_trace_begin(JsonView trace, std::string_view where);
/// Appends the records of one line. errors: bad-trace; ticks that go back or beyond `last`
base::Result<std::vector<event::Record>> read_events(JsonView list, const std::vector<NamedKind>& kinds,
                                                     std::string_view where);

/// Records by this vocabulary, matched by names. errors: unknown-kind, when this edition does not know one
base::Result<std::vector<event::Record>> in_vocabulary(const NamedTrace& trace, const event::Vocabulary& vocabulary);

/// Hash text of a trace: by names, so that it does not depend on the vocabulary's order.
std::string trace_hash(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records,
                       base::Tick end_tick, event::EndReason end);
/// The same of a trace as it was read.
std::string trace_hash(const NamedTrace& trace, base::Tick end_tick, event::EndReason end);

}  // namespace proofstand::record
