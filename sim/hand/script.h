// A hand script as the modelled hand works it: one instruction after the other, blocks unrolled. Private to this floor.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "sim/event/actions.h"

namespace proofstand::hand {

/// What an instruction asks for; one row of the table of forms each, or several that differ in words.
enum class Doing : std::uint8_t {
  WorkHanded,     ///< which hand leads
  Glove,          ///< put a glove on
  Bare,           ///< take it off
  Take,           ///< a thing into a hand
  PutBack,        ///< what a hand holds, back where it lies
  Pass,           ///< to the other hand
  LetGo,          ///< of whatever a hand holds on to
  TurnOver,       ///< rotor, fold of a rag, arm of a key
  Touch,          ///< fingers on a place
  HoldNear,       ///< a hand near a place
  Bring,          ///< what is held, to a place
  Wait,           ///< let time pass
  Crack,          ///< break a bolt loose
  RunOut,         ///< turn it out
  Start,          ///< catch a bolt's thread
  RunIn,          ///< turn it in
  Snug,           ///< until its head bears
  Tighten,        ///< to the click, a torque or an angle
  SetTool,        ///< figure on a torque tool
  PickClean,      ///< dirt out of a recess, hole or seat
  HoldAgainst,    ///< rotor against its bolts, and keep it there
  TurnAgainst,    ///< the same and let go
  TurnWith,       ///< the wrong way
  TakeOff,        ///< rotor off the hub
  PutOn,          ///< rotor on the hub
  LayDown,        ///< rotor on the bench
  Wet,            ///< a rag with drops
  Squeeze,        ///< drops on something
  Wipe,           ///< one place
  WipeBoth,       ///< both faces between rag and fingers, the wheel turning
  Measure,        ///< thickness at a spot
  MeasureAcross,  ///< outside diameter
  ReadRunout,     ///< a dial, the wheel turning
  LookAt,         ///< lamp or pick held at a place
  Write,          ///< on the job card, as told
  WriteRead,      ///< on the job card, what was read
  MoveWheel,      ///< stand or bike
  SpinWheel,
  StopWheel,
  HoldTyre,  ///< and keep it
  HandOver,
};

/// Which hand a line names. Main and Other follow the line "work left-handed".
enum class WhichHand : std::uint8_t { Unsaid, Main, Other, Left, Right, Both };

/// What else a clause may say.
enum class Say : std::uint32_t {
  Nothing = 0,
  TurningBack = 1u << 0,
  NoTurningBack = 1u << 1,
  ToClick = 1u << 2,
  Fingers = 1u << 3,
  PrintedOut = 1u << 4,
  PrintedIn = 1u << 5,
  FreshFold = 1u << 6,
  Squeezing = 1u << 7,
  Backwards = 1u << 8,
  Unsteadied = 1u << 9,
  Stand = 1u << 10,
  Bike = 1u << 11,
  LeftHanded = 1u << 12,
  RightHanded = 1u << 13,
  HalfFace = 1u << 14,
  ShortArm = 1u << 15,
  ReadLeast = 1u << 16,
  ReadAcross = 1u << 17,
  ReadRunout = 1u << 18,
  ReadSetting = 1u << 19,
  ReadStamp = 1u << 20,
  PressLost = 1u << 21,
  ReadLocking = 1u << 22,
  UnlessPatch = 1u << 23,
  AnyBolt = 1u << 24,
  ReadVerdict = 1u << 25,
  AllYouHave = 1u << 26,
  NoFurther = 1u << 27,
};

/// One instruction. Numbers left out are decided by the hand's skill.
struct Instruction {
  Doing doing = Doing::Wait;
  std::size_t line = 0;                    ///< in the file, from 1
  std::size_t serial = 0;                  ///< which instruction of the run, from 0: names its scatter
  std::string text;                        ///< the line as written, for messages
  event::ThingId thing = event::kNoThing;  ///< what it is about
  event::ThingId tool = event::kNoThing;   ///< with what
  event::PlaceKind place = event::PlaceKind::None;
  event::BoltId bolt = event::kNoBolt;
  event::Grip grip = event::Grip::None;
  WhichHand hand = WhichHand::Unsaid;
  std::optional<event::CardEntryId> entry;
  std::string words;  ///< to be written
  std::uint32_t said = 0;
  std::optional<double> torque_nm, angle_rad, length_m, time_s, rate_rad_s, force_n, share_1, count_1, tilt_rad,
      over_rad, offset_m;

  [[nodiscard]] bool says(Say what) const { return (said & static_cast<std::uint32_t>(what)) != 0; }
};

class HandScript {
 public:
  std::string file;
  std::vector<Instruction> instructions;
};

}  // namespace proofstand::hand
