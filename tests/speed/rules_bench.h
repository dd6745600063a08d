// The engines that race on the rules workload. Each takes records and gives back the number of violations of the twenty
// rules; only taking the records is timed.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/event/record.h"

namespace proofstand::speed {

using Records = std::vector<event::Record>;

/// A loop written by hand for exactly these rules; keeps no evidence. The floor under any engine.
std::int64_t loop_twenty(const Records& records);

#if defined(STAND_LUA)
/// Lua 5.4: one closure per rule, found by kind.
struct LuaTwenty {
  LuaTwenty();
  ~LuaTwenty();
  LuaTwenty(const LuaTwenty&) = delete;
  LuaTwenty& operator=(const LuaTwenty&) = delete;
  std::int64_t take(const Records& records);
  void* lua = nullptr;
};
#endif

#if defined(STAND_CLIPS)
/// CLIPS 6.30: twenty rules over facts that remember the last record of each kind.
struct ClipsTwenty {
  ClipsTwenty();
  ~ClipsTwenty();
  ClipsTwenty(const ClipsTwenty&) = delete;
  ClipsTwenty& operator=(const ClipsTwenty&) = delete;
  std::int64_t take(const Records& records);
  void* shell = nullptr;
};
#endif

}  // namespace proofstand::speed
