#include "sim/report/guidance_chore.h"

namespace proofstand::report {

const std::vector<ChoreRow>& chore_table() {
  static const std::vector<ChoreRow> table = {
      {ChoreKind::WheelToStand, "take-in", "wheel-to-stand", {"wheel_moved"}},
      {ChoreKind::LookAt, "diagnose", "look", {"inspected"}},
      {ChoreKind::Measure, "diagnose", "measure", {"measured"}},
      {ChoreKind::MeasureAcross, "diagnose", "measure-across", {"measured_size"}},
      {ChoreKind::ReadRunoutBefore, "diagnose", "runout", {"watched_runout"}},
      {ChoreKind::WriteBefore, "diagnose", "write", {"card_length", "card_note"}},
      {ChoreKind::WriteDecision, "decide", "decide", {"card_choice"}},
      {ChoreKind::PickRecess, "remove", "pick-recess", {"recess_cleaned"}},
      {ChoreKind::Crack, "remove", "crack", {"cracked", "loosened", "tool_slipped"}},
      {ChoreKind::RunOut, "remove", "run-out", {"bolt_out", "loosened", "tool_slipped"}},
      {ChoreKind::TakeOff, "remove", "take-off", {"rotor_off", "laid_down"}},
      {ChoreKind::PickHole, "prepare", "pick-hole", {"thread_cleaned"}},
      {ChoreKind::PickBoss, "prepare", "pick-boss", {"inspected"}},
      {ChoreKind::WipeSeat, "prepare", "wipe-seat", {"wiped"}},
      {ChoreKind::WipeBoss, "prepare", "wipe-boss", {"wiped"}},
      {ChoreKind::Glove, "prepare", "glove", {"gloved"}},
      {ChoreKind::Locker, "prepare", "locker", {"applied"}},
      {ChoreKind::PutOn, "fit", "put-on", {"rotor_on", "touched"}},
      {ChoreKind::Start, "fit", "start", {"started"}},
      {ChoreKind::RunIn, "fit", "run-in", {"snugged", "tool_slipped"}},
      {ChoreKind::HoldRotor, "fit", "hold", {"rotor_turned", "touched"}},
      {ChoreKind::LetGo, "fit", "let-go", {"rotor_eased"}},
      {ChoreKind::Snug, "fit", "snug", {"snugged", "tightened", "tool_slipped"}},
      {ChoreKind::SetTool, "tighten", "set-tool", {"driver_set"}},
      {ChoreKind::Tighten, "tighten", "tighten", {"tightened", "clicked", "tool_slipped"}},
      {ChoreKind::WipeFace, "clean", "wipe-face", {"wiped", "touched"}},
      {ChoreKind::Dry, "clean", "dry", {}},
      {ChoreKind::ReadRunout, "verify", "runout", {"watched_runout"}},
      {ChoreKind::WheelToBike, "verify", "wheel-to-bike", {"wheel_moved"}},
      {ChoreKind::Spin, "verify", "spin", {"wheel_spun", "endangered"}},
      {ChoreKind::Write, "record", "write", {"card_length", "card_torque", "card_choice", "card_note"}},
      {ChoreKind::HandOver, "record", "hand-over", {"handed_over"}},
  };
  return table;
}

const ChoreRow& row_of(ChoreKind kind) { return chore_table()[static_cast<std::size_t>(kind)]; }

const std::vector<EventRow>& event_table() {
  static const std::vector<EventRow> table = {
      {"measured", "", ChoreKind::Measure},
      {"measured_size", "", ChoreKind::MeasureAcross},
      {"inspected", "", ChoreKind::LookAt},
      {"watched_runout", "", ChoreKind::ReadRunout},
      {"card_length", "", ChoreKind::Write},
      {"card_torque", "", ChoreKind::Write},
      {"card_choice", "", ChoreKind::Write},
      {"card_note", "", ChoreKind::Write},
      {"recess_cleaned", "", ChoreKind::PickRecess},
      {"cracked", "", ChoreKind::Crack},
      {"loosened", "", ChoreKind::RunOut},
      {"bolt_out", "", ChoreKind::RunOut},
      {"rotor_off", "", ChoreKind::TakeOff},
      {"thread_cleaned", "", ChoreKind::PickHole},
      {"gloved", "", ChoreKind::Glove},
      {"applied", "", ChoreKind::Locker},
      {"rotor_on", "", ChoreKind::PutOn},
      {"started", "", ChoreKind::Start},
      {"rotor_turned", "", ChoreKind::HoldRotor},
      {"snugged", "", ChoreKind::Snug},
      {"driver_set", "", ChoreKind::SetTool},
      {"tightened", "", ChoreKind::Tighten},
      {"clicked", "", ChoreKind::Tighten},
      {"wiped", "", ChoreKind::WipeFace},
      {"wheel_moved", "", ChoreKind::WheelToBike},
      {"wheel_spun", "", ChoreKind::Spin},
      {"handed_over", "", ChoreKind::HandOver},
      // what is left at hand-over, by what puts it right beforehand
      {"left_bolt", "last_torque", ChoreKind::Tighten},
      {"left_bolt", "preload", ChoreKind::Tighten},
      {"left_bolt", "clamp", ChoreKind::Tighten},
      {"left_bolt", "locker", ChoreKind::Locker},
      {"left_boss", "dirt", ChoreKind::WipeSeat},
      {"left_boss", "gap", ChoreKind::WipeSeat},
      {"left_face", "film_worst", ChoreKind::WipeFace},
      {"left_face", "film_mean", ChoreKind::WipeFace},
      {"left_face", "coverage", ChoreKind::WipeFace},
      {"left_face", "oily", ChoreKind::WipeFace},
      {"left_face", "alcohol", ChoreKind::Dry},
      {"left_face", "friction_factor", ChoreKind::WipeFace},
      {"left_rotor", "above_stamp", ChoreKind::PutOn},
      {"left_rotor", "fits_mount", ChoreKind::PutOn},
      {"left_rotor", "arrow_forward", ChoreKind::PutOn},
      {"left_rotor", "printed_out", ChoreKind::PutOn},
      {"left_joint", "clearance", ChoreKind::HoldRotor},
      {"left_joint", "slips", ChoreKind::HoldRotor},
      {"left_joint", "knock", ChoreKind::HoldRotor},
      {"left_joint", "passes", ChoreKind::Tighten},
      {"left_card", "", ChoreKind::Write},
  };
  return table;
}

}  // namespace proofstand::report
