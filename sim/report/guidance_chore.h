// The chores that guidance knows: each a thing a hand does at one go, the stage of the job it belongs to, and the kinds
// of events it brings about. The one table between rules, which speak of events, and hands. Private to the guidance.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "sim/event/ids.h"
#include "sim/event/places.h"

namespace proofstand::report {

/// In the order in which they come within a stage.
enum class ChoreKind : std::uint8_t {
  WheelToStand,
  LookAt,
  Measure,
  MeasureAcross,
  ReadRunoutBefore,  ///< of the rotor that was on the hub at the start
  WriteBefore,       ///< card entries about that rotor
  WriteDecision,
  PickRecess,
  Crack,
  RunOut,
  TakeOff,
  PickHole,
  PickBoss,
  WipeSeat,
  WipeBoss,
  Glove,
  Locker,
  PutOn,
  Start,
  RunIn,
  HoldRotor,
  LetGo,
  Snug,
  SetTool,
  Tighten,
  WipeFace,
  Dry,
  ReadRunout,
  WheelToBike,
  Spin,
  Write,  ///< the other card entries
  HandOver,
};

/// One thing to do, and to what.
struct Chore {
  ChoreKind kind = ChoreKind::HandOver;
  std::int32_t item = -1;                  ///< bolt from 0 · sixth of a turn · face: 0 printed, 1 other · card entry
  event::ThingId thing = event::kNoThing;  ///< which rotor
  event::PlaceKind place = event::PlaceKind::None;  ///< of LookAt

  friend bool operator==(const Chore& a, const Chore& b) {
    return a.kind == b.kind && a.item == b.item && a.thing == b.thing && a.place == b.place;
  }
};

/// A row of the table.
struct ChoreRow {
  ChoreKind kind = ChoreKind::HandOver;
  std::string_view stage;               ///< the scenario's word
  std::string_view key;                 ///< of its sentence in the catalogue: "guide." + key
  std::vector<std::string_view> makes;  ///< kinds of events, the telling one first
};
const std::vector<ChoreRow>& chore_table();
const ChoreRow& row_of(ChoreKind kind);

/// Which chore brings about a record of this kind; of records about what is left, which one puts this field right.
struct EventRow {
  std::string_view event;
  std::string_view field;  ///< "": whichever fields a rule looks at
  ChoreKind chore = ChoreKind::HandOver;
};
const std::vector<EventRow>& event_table();

}  // namespace proofstand::report
