// Actions as rows of integers. A batch begins at a tick; each row begins with the ticks since the row before:
//   [ticks, "aim_turn", hand, angle]   an action by its name with its numbers, and its text when it has one
//   [ticks, angle step]                the last aim of this batch again, same kind and hand: only what changed, as
//                                      differences from its numbers
// so a stroke made with a mouse costs a few bytes a sample.
#pragma once

#include <string>
#include <vector>

#include "sim/base/result.h"
#include "sim/event/actions.h"
#include "sim/record/json_text.h"

namespace proofstand::record {

/// {"t":TICK,"do":[...]} of actions in order, ticks not decreasing; at least one (asserted).
std::string actions_object(const std::vector<event::Action>& actions);

/// The actions of such a line. errors: bad-actions: unknown name, wrong number of numbers, ticks that go back or beyond
/// what an attempt may last, numbers out of range
base::Result<std::vector<event::Action>> read_actions(base::Tick begin, JsonView rows, std::string_view where);

}  // namespace proofstand::record
