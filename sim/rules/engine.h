// Judging a run record by record. The state is a value: copy it, write it, restore it bit for bit, go on from there.
//
//     EngineState state = start(program);
//     for (const event::Record& record : trace.records) feed(program, state, record);
//     Report report = finish(program, state, trace.end_tick, trace.end);
#pragma once

#include <optional>
#include <string_view>

#include "sim/base/byte_stream.h"
#include "sim/base/result.h"
#include "sim/event/record.h"
#include "sim/rules/program.h"
#include "sim/rules/report.h"
#include "sim/rules/state.h"

namespace proofstand::rules {

/// State before the first record, at tick 0.
EngineState start(const RuleProgram& program);

/// Takes the next record. record.tick must not be below that of the record before, nor below the last advance().
/// Cost is proportional to the number of rules that read this kind of record. Kinds that no rule reads are skipped.
void feed(const RuleProgram& program, EngineState& state, const event::Record& record);

/// Nothing more happens before this tick: deadlines that have passed are settled. Never changes what finish() says.
void advance(const RuleProgram& program, EngineState& state, base::Tick tick);

/// The report if the run ended here. The state itself stays as it was, so one can go on feeding.
Report finish(const RuleProgram& program, const EngineState& state, base::Tick end_tick, event::EndReason end);

/// The whole run at once.
Report judge(const RuleProgram& program, const event::Trace& trace);

/// The first rule with `stop` that is broken by now, and since when. Call after feed() or advance().
struct StopRequest {
  RuleIndex rule = kNoRule;
  base::Tick tick = 0;
};
std::optional<StopRequest> stop_asked(const RuleProgram& program, const EngineState& state);

/// The state as bytes, and back. A state of another program or version is refused.
void write_state(const RuleProgram& program, const EngineState& state, base::ByteWriter& out);
base::Result<EngineState> read_state(const RuleProgram& program, base::ByteReader& in);

}  // namespace proofstand::rules
