// Short ways through the engine for rules over the whole run that have nothing to tell apart: most records only need a
// place noted or a count raised. They do exactly what the long way does. Private to the engine.
#pragma once

#include "sim/rules/kinds.h"

namespace proofstand::rules {

/// True when the record was dealt with.
inline bool take_fast(const RuleProgram& program, EngineState& state, const Subscription& reader,
                      const event::Record& record, Position position) {
  const auto slot = static_cast<std::size_t>(reader.slot);
  switch (reader.fast) {
    case FastPath::None:
      return false;
    case FastPath::NeedsY: {
      NeedsState& needs = state.needs[slot];
      needs.only.last = {position, record.tick};
      needs.any_y = needs.only.last;
      return true;
    }
    case FastPath::NeedsVoid:
      state.needs[slot].only.undone = {position, record.tick};
      return true;
    case FastPath::NeedsX: {
      NeedsKey& key = state.needs[slot].only;
      Tally& tally = state.kept[static_cast<std::size_t>(reader.rule)];
      const Mark& y = key.last;
      const bool ok = y.position != kNoPosition && key.undone.position <= y.position &&
                      (reader.within < 0 || record.tick - y.tick <= reader.within);
      if (ok ? wants_ok(tally, program.evidence) : wants_bad(tally, program.evidence)) return false;
      ok ? count_ok(tally) : count_bad(tally, 0, record.tick, record.tick);
      key.previous_x = position;
      return true;
    }
    case FastPath::PresenceX: {
      PresenceState& presence = state.presence[slot];
      // beyond these nothing but the number changes: evidence is full and the bound was passed
      if (presence.cites.size() < 8 || presence.settled == kNoTick) return false;
      ++presence.hits;
      ++presence.n;
      return true;
    }
  }
  return false;
}

}  // namespace proofstand::rules
