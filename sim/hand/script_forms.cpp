#include "sim/hand/script_forms.h"

namespace proofstand::hand {
namespace {

using base::Dimension;

// clauses that several forms share
const Clause kWithTool{"with <tool>"};
const Clause kWithHand{"with <hand>"};
const Clause kAtRate{"at <rate>"};
const Clause kTilted{"tilted <tilt>"};
const Clause kDepth{"at <share> depth"};
const Clause kPressed{"pressed <force>"};
const Clause kOf{"of <thing>"};
const Clause kFor{"for <time>"};
const Clause kFree{"without holding wheel", Say::Unsteadied};

std::vector<Form> hand_forms() {
  return {
      {Doing::WorkHanded,
       "work right-handed",
       {},
       "the right hand leads (so it is at the start)",
       "work right-handed",
       Say::RightHanded},
      {Doing::WorkHanded, "work left-handed", {}, "the left hand leads", "work left-handed", Say::LeftHanded},
      {Doing::Glove, "glove <hand>", {}, "put a glove on", "glove both hands"},
      {Doing::Bare, "bare <hand>", {}, "take a glove off", "bare the left hand"},
      {Doing::Take,
       "take <thing>",
       {{"by <grip>"}, {"in <hand>"}},
       "take a loose thing; what the hand held goes back first",
       "take the new rotor by its arms in the other hand"},
      {Doing::PutBack, "put back <thing>", {}, "put a thing back where it lies", "put back the key"},
      {Doing::Pass, "pass <thing>", {}, "give it to the other hand", "pass the key"},
      {Doing::LetGo, "let go", {{"of <thing>"}, kWithHand}, "slacken and draw away", "let go with the other hand"},
      {Doing::TurnOver,
       "turn over <thing>",
       {},
       "other side of a rotor out, a fresh fold of a rag, the other arm of a key",
       "turn over the clean rag"},
      {Doing::Touch,
       "touch <place>",
       {kOf, kWithHand, {"at <length>"}, {"at <angle>"}, kFor},
       "rest the fingers on a place",
       "touch the outer track of the new rotor with the left hand"},
      {Doing::HoldNear,
       "hold a hand near <place>",
       {kOf, kWithHand, kFor},
       "is it warm?",
       "hold a hand near the outer track of the old rotor"},
      {Doing::Bring,
       "bring <tool> to <place>",
       {kOf, {"at <length>"}, {"at <angle>"}, kTilted, kFor},
       "bring a thing to a place and leave it there",
       "bring the pick to boss 3, for 1 s"},
      {Doing::Wait, "wait <time>", {}, "let time pass", "wait 30 s"},
      {Doing::HandOver, "hand over", {}, "declare the job done", "hand over"},
  };
}

std::vector<Form> bolt_forms() {
  return {
      {Doing::Crack,
       "crack bolt <n>",
       {kWithTool, kPressed, kTilted, kDepth, kAtRate, kFree},
       "press the tool home and pull until the bolt gives",
       "crack bolt 4 with the key"},
      {Doing::RunOut,
       "run bolt <n> out",
       {kWithTool, {"with fingers", Say::Fingers}, kTilted, kDepth, kFree},
       "turn a cracked bolt out and put it in the tray",
       "run bolt 4 out with the key"},
      {Doing::Start,
       "start <thing> in hole <n>",
       {{"turning back", Say::TurningBack},
        {"without turning back", Say::NoTurningBack},
        kTilted,
        {"off by <offset>"},
        {"for <count> turns"}},
       "bring a bolt to its hole by the fingers, find the start, turn it in",
       "start new bolt 3 in hole 3, turning back"},
      {Doing::Start,
       "start any loose bolt of <length> in hole <n>",
       {{"turning back", Say::TurningBack}, {"without turning back", Say::NoTurningBack}},
       "the first in the tray that is of this length, tried against a ruler",
       "start any loose bolt of 10 mm in hole 3, turning back",
       Say::AnyBolt},
      {Doing::RunIn,
       "run bolt <n> in",
       {kWithTool, {"with fingers", Say::Fingers}, {"leaving <count> turns"}, kTilted},
       "turn a started bolt in to just off the face",
       "run bolt 3 in with the key"},
      {Doing::Snug,
       "snug bolt <n>",
       {kWithTool, {"to <torque>"}, kTilted, kDepth, kFree},
       "turn until the head bears, about 1 N·m unless told",
       "snug bolt 1 with the key, to 1 N·m"},
      {Doing::Tighten,
       "tighten bolt <n> until it clicks",
       {kWithTool, kAtRate, {"pulling on <over>"}, {"clicking <count> times"}, kPressed, kTilted, kDepth, kFree},
       "press home and pull the torque tool until it lets go",
       "tighten bolt 4 until it clicks, with the click driver, at 10°/s",
       Say::ToClick},
      {Doing::Tighten,
       "tighten bolt <n>",
       {kWithTool, {"to <torque>"}, {"by <angle>"}, kAtRate, kPressed, kTilted, kDepth, kFree},
       "press home and pull by feel to a torque, or by an angle",
       "tighten bolt 4 with the key, to 3 N·m"},
      {Doing::SetTool,
       "set <tool> to <torque>",
       {},
       "draw the collar back, turn the scale, lock it",
       "set the click driver to 5.0 N·m"},
      {Doing::PickClean,
       "pick <place> clean",
       {kWithTool},
       "dirt or old locker out of a recess, a hole, a seat",
       "pick recess 3 clean with the pick"},
  };
}

std::vector<Form> rotor_forms() {
  return {
      {Doing::HoldAgainst,
       "hold <thing> against the bolts",
       {{"by <grip>"}, kWithHand},
       "turn a rotor to the end of its play the way braking drags it, and keep it there with the other hand",
       "hold the new rotor against the bolts by its arms"},
      {Doing::TurnAgainst,
       "turn <thing> against the bolts",
       {{"by <grip>"}, kWithHand},
       "the same, and let go again",
       "turn the new rotor against the bolts by its arms"},
      {Doing::TurnWith,
       "turn <thing> away from the bolts",
       {{"by <grip>"}, kWithHand},
       "the other way, and let go",
       "turn the new rotor away from the bolts by its arms"},
      {Doing::TakeOff,
       "take <thing> off",
       {{"by <grip>"}, kWithHand},
       "a rotor off the hub, into the hand",
       "take the old rotor off by its edge"},
      {Doing::PutOn,
       "put <thing> on",
       {{"printed side out", Say::PrintedOut},
        {"printed side in", Say::PrintedIn},
        {"by <grip>"},
        kWithHand,
        {"turned <angle>"}},
       "a rotor onto the hub",
       "put the new rotor on, printed side out, by its edge"},
      {Doing::LayDown,
       "lay <thing> down",
       {{"printed side up", Say::PrintedOut}, {"printed side down", Say::PrintedIn}},
       "a rotor onto the bench",
       "lay the old rotor down, printed side up"},
  };
}

std::vector<Form> surface_forms() {
  return {
      {Doing::Wet,
       "wet <thing> with <count> drops of <tool>",
       {{"on a fresh fold", Say::FreshFold}},
       "let drops onto a rag",
       "wet the clean rag with 20 drops of alcohol"},
      {Doing::Squeeze,
       "squeeze <count> drops of <tool>",
       {{"onto <place>"}, {"into <place>"}, kOf, {"onto <thing>"}, {"unless it has a patch", Say::UnlessPatch}},
       "let drops onto a bolt's thread, into a hole, onto a place",
       "squeeze 1 drop of threadlocker onto new bolt 3"},
      {Doing::WipeBoth,
       "wipe both faces of <thing>",
       {kWithTool, {"on a fresh fold", Say::FreshFold}, {"for <angle>"}, {"pressing <force>"}},
       "rag pinched over both faces while the other hand turns the wheel slowly",
       "wipe both faces of the new rotor with the clean rag, on a fresh fold"},
      {Doing::Wipe,
       "wipe <place>",
       {kOf,
        kWithTool,
        {"on a fresh fold", Say::FreshFold},
        {"<count> times"},
        {"pressing <force>"},
        {"half round", Say::HalfFace},
        kWithHand},
       "stroke a rag over a face, a seat, a thread",
       "wipe the outer track of the new rotor with the clean rag, 3 times"},
  };
}

std::vector<Form> check_forms() {
  return {
      {Doing::Measure,
       "measure the thickness of <thing>",
       {kWithTool, {"at <length>"}, {"at <angle>"}, {"squeezing", Say::Squeezing}},
       "close an instrument on a spot of the track and read it",
       "measure the thickness of the old rotor with the micrometer at 72 mm, at 90°"},
      {Doing::MeasureAcross,
       "measure the diameter of <thing>",
       {kWithTool},
       "outside diameter, with a vernier",
       "measure the diameter of the new rotor with the vernier"},
      {Doing::ReadRunout,
       "read the runout of <thing>",
       {kWithTool, {"at <length>"}, {"over <angle>"}},
       "stand a dial at the track and turn the wheel by its tyre",
       "read the runout of the new rotor with the dial gauge, over 1.1 turns"},
      {Doing::LookAt,
       "look at <place>",
       {kOf, kWithTool, kFor},
       "hold a lamp or a pick at a place",
       "look at recess 3 with the lamp, for 1.5 s"},
      {Doing::WriteRead,
       "write the least reading of <thing> as <entry>",
       {},
       "thinnest that was measured of a rotor",
       "write the least reading of the old rotor as old thickness",
       Say::ReadLeast},
      {Doing::WriteRead,
       "write the diameter read of <thing> as <entry>",
       {},
       "last outside diameter measured of a rotor",
       "write the diameter read of the new rotor as remarks",
       Say::ReadAcross},
      {Doing::WriteRead,
       "write the runout read as <entry>",
       {},
       "last reading of the dial",
       "write the runout read as new runout",
       Say::ReadRunout},
      {Doing::WriteRead,
       "write the stamp of <thing> as <entry>",
       {},
       "least thickness stamped on a rotor",
       "write the stamp of the old rotor as stamp",
       Say::ReadStamp},
      {Doing::WriteRead,
       "write the setting of <tool> as <entry>",
       {},
       "figure a torque tool stands at",
       "write the setting of the click driver as torque",
       Say::ReadSetting},
      {Doing::WriteRead,
       "write how the bolts are locked as <entry>",
       {},
       "by what was done and what can be seen on the bolts",
       "write how the bolts are locked as locking",
       Say::ReadLocking},
      {Doing::WriteRead,
       "write what <thing> calls for as <entry>",
       {{"replacing beyond <length> of runout"}},
       "stop and report with a ruined recess seen, replace below the stamp or bent too far, else keep",
       "write what the old rotor calls for as decision, replacing beyond 0.5 mm of runout",
       Say::ReadVerdict},
      {Doing::Write, "write <entry>: <text>", {}, "anything on the job card", "write decision: replace"},
      {Doing::MoveWheel,
       "move the wheel to the stand",
       {},
       "both hands lift it",
       "move the wheel to the stand",
       Say::Stand},
      {Doing::MoveWheel,
       "move the wheel to the bike",
       {},
       "both hands lift it",
       "move the wheel to the bike",
       Say::Bike},
      {Doing::SpinWheel,
       "spin the wheel",
       {kAtRate, {"backwards", Say::Backwards}, kFor},
       "throw the tyre and watch until it stands, or for a time",
       "spin the wheel at 1 turn/s"},
      {Doing::StopWheel, "stop the wheel", {}, "a hand on the tyre", "stop the wheel"},
      {Doing::HoldTyre,
       "hold the tyre",
       {kWithHand},
       "and keep it until told to let go",
       "hold the tyre with the other hand"},
  };
}

}  // namespace

const std::vector<Form>& script_forms() {
  static const std::vector<Form> forms = [] {
    std::vector<Form> all = hand_forms();
    for (const auto& part : {bolt_forms(), rotor_forms(), surface_forms(), check_forms()}) {
      all.insert(all.end(), part.begin(), part.end());
    }
    return all;
  }();
  return forms;
}

const std::vector<Slot>& script_slots() {
  static const std::vector<Slot> slots = {
      {"thing", SlotType::Thing, Dimension::Number, nullptr, "a thing of this workplace"},
      {"tool", SlotType::Tool, Dimension::Number, nullptr, "a tool, rag, bottle or instrument of this workplace"},
      {"n", SlotType::Bolt, Dimension::Number, nullptr, "a bolt position, counted from 1"},
      {"place", SlotType::Place, Dimension::Number, nullptr, "a place, such as recess 3 or outer track"},
      {"grip", SlotType::Grip, Dimension::Number, nullptr, "a grip, such as arms, edge or inner edge"},
      {"hand", SlotType::Hand, Dimension::Number, nullptr,
       "left hand, right hand, main hand, other hand or both hands"},
      {"entry", SlotType::Entry, Dimension::Number, nullptr, "an entry of the job card"},
      {"text", SlotType::Text, Dimension::Number, nullptr, "what is to be written"},
      {"torque", SlotType::Quantity, Dimension::Torque, &Instruction::torque_nm, "a torque, such as 5 N·m"},
      {"angle", SlotType::Quantity, Dimension::Angle, &Instruction::angle_rad, "an angle, such as 90° or 1.1 turns"},
      {"tilt", SlotType::Quantity, Dimension::Angle, &Instruction::tilt_rad, "an angle, such as 3°"},
      {"over", SlotType::Quantity, Dimension::Angle, &Instruction::over_rad, "an angle, such as 6°"},
      {"length", SlotType::Quantity, Dimension::Length, &Instruction::length_m, "a length, such as 72 mm"},
      {"offset", SlotType::Quantity, Dimension::Length, &Instruction::offset_m, "a length, such as 0.2 mm"},
      {"time", SlotType::Quantity, Dimension::Time, &Instruction::time_s, "a time, such as 30 s"},
      {"rate", SlotType::Quantity, Dimension::Rate, &Instruction::rate_rad_s, "a turning rate, such as 10°/s"},
      {"force", SlotType::Quantity, Dimension::Force, &Instruction::force_n, "a force, such as 40 N"},
      {"share", SlotType::Quantity, Dimension::Number, &Instruction::share_1, "a share, such as 60 %"},
      {"count", SlotType::Quantity, Dimension::Number, &Instruction::count_1, "a number, such as 3"},
  };
  return slots;
}

bool is_filler(std::string_view word) { return word == "the" || word == "its" || word == "a" || word == ","; }

}  // namespace proofstand::hand
