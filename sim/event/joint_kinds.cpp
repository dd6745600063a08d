#include "sim/base/math.h"
#include "sim/event/job_fields.h"

namespace proofstand::event {

using base::Dimension;

void add_joint_kinds(std::vector<Kind>& kinds, const JobSets& sets) {
  const double whole_turns = 100.0 * base::kTwoPi;
  const Field hand = choice("hand", hand_choices(), kFelt, "which hand");
  const Field bolt = item("bolt", sets.bolts, kFelt, "which position");
  const Field tool = item("tool", sets.things, kFelt, "which tool");
  const Field rotor = item("rotor", sets.rotors, kFelt, "which rotor");
  const Field bolt_thing = item("thing", sets.things, kFelt, "which bolt out of the tray or the old set");
  const Field peak =
      quantity("peak_torque", Dimension::Torque, 0.0, 60.0, kTruth, "largest torque on the fastener in this visit");
  const Field turn =
      quantity("turn", Dimension::Angle, 0.0, whole_turns, kFelt, "how far the fastener turned in this visit");
  const Field depth =
      quantity("depth", Dimension::Length, 0.0, 0.02, kTruth, "engaged depth of the tool while it was pulled");
  const Field depth_share =
      quantity("depth_share", Dimension::Number, 0.0, 1.0, kTruth, "that depth of the full depth");
  const Field clearance =
      quantity("clearance", Dimension::Length, 0.0, 0.001, kTruth,
               "play left in the direction in which braking drags the rotor; 0 when it lies against the bolts");

  kinds.push_back({"cracked",
                   KindType::Occurrence,
                   {hand, bolt, tool, peak, depth_share},
                   false,
                   "a tight fastener moved for the first time, loosening"});
  kinds.push_back({"loosened",
                   KindType::Occurrence,
                   {hand, bolt, tool, turn, peak, depth, depth_share},
                   false,
                   "a visit of a tool or of fingers that turned a fastener out"});
  kinds.push_back({"bolt_out", KindType::Occurrence, {hand, bolt, bolt_thing}, false, "a bolt came out of its hole"});
  kinds.push_back({"tool_slipped",
                   KindType::Occurrence,
                   {hand, bolt, tool, peak, depth_share,
                    quantity("recess_wear", Dimension::Length, 0.0, 0.002, kTruth, "wear of the recess afterwards"),
                    count("slips", 100, kFelt, "slips in this recess so far")},
                   false,
                   "a tool slipped round in the recess"});
  kinds.push_back(
      {"recess_cleaned",
       KindType::Occurrence,
       {hand, bolt, quantity("debris", Dimension::Length, 0.0, 0.005, kTruth, "packed dirt left in the recess")},
       false,
       "dirt was picked out of a drive recess"});
  kinds.push_back(
      {"thread_cleaned",
       KindType::Occurrence,
       {hand, bolt,
        quantity("residue", Dimension::Torque, 0.0, 2.0, kTruth, "drag of the old locker left in the hole")},
       false,
       "old locker was picked out of a hole's thread"});
  kinds.push_back({"started",
                   KindType::Occurrence,
                   {hand, bolt, bolt_thing, choice("by", {"fingers", "key", "driver"}, kFelt, "what turned it"),
                    quantity("tilt", Dimension::Angle, 0.0, 1.0, kTruth, "tilt against the hole's axis"),
                    flag("turned_back", kFelt, "was it turned back until it dropped?"),
                    flag("crossed", kTruth, "did the threads cross?"),
                    quantity("torque", Dimension::Torque, 0.0, 10.0, kFelt, "torque by the first half turn")},
                   false,
                   "a bolt's thread caught in a hole"});
  kinds.push_back({"snugged",
                   KindType::Occurrence,
                   {hand, bolt, tool, clearance,
                    flag("rotor_held", kFelt, "did the other hand hold the rotor against the bolts meanwhile?"),
                    quantity("torque", Dimension::Torque, 0.0, 60.0, kTruth, "torque of the visit that snugged it"),
                    count("others", 64, kFelt, "fasteners already snug")},
                   false,
                   "a bolt's head came to bear for the first time since it was started"});
  kinds.push_back(
      {"tightened",
       KindType::Occurrence,
       {hand, bolt, tool, peak, turn, choice("by", {"fingers", "key", "driver", "click_driver"}, kFelt, "kind of tool"),
        quantity("setting", Dimension::Torque, 0.0, 60.0, kFelt, "figure the torque tool stood at; unknown for others"),
        count("clicks", 1000, kFelt, "clicks in this visit"),
        quantity("over_pull", Dimension::Angle, 0.0, whole_turns, kTruth,
                 "how far it was pulled on after the first click"),
        quantity("past_click", Dimension::Torque, 0.0, 60.0, kTruth,
                 "torque above the click that was reached after it"),
        quantity("preload", Dimension::Force, 0.0, 30000.0, kTruth, "axial force left in the bolt"), depth_share,
        quantity("speed", Dimension::Rate, 0.0, 60.0, kFelt, "mean turning speed over the last quarter second")},
       false,
       "a visit of a tool, seated to off, that pulled a fastener tight: one record a visit"});
  kinds.push_back({"driver_set",
                   KindType::Occurrence,
                   {hand, tool, quantity("setting", Dimension::Torque, 0.0, 60.0, kFelt, "figure on its scale now"),
                    quantity("before", Dimension::Torque, 0.0, 60.0, kFelt, "figure before")},
                   false,
                   "a torque tool was set and locked"});
  kinds.push_back({"clicked", KindType::Occurrence, {hand, bolt, tool}, false, "a torque tool let go at its setting"});
  kinds.push_back({"rotor_off", KindType::Occurrence, {hand, rotor}, false, "a rotor came off the hub"});
  kinds.push_back(
      {"rotor_on",
       KindType::Occurrence,
       {hand, rotor, flag("printed_out", kFelt, "printed side away from the hub?"),
        flag("arrow_forward", kFelt, "does its arrow point the way the wheel rolls? unknown without an arrow"),
        flag("wet", kTruth, "was alcohol or locker still wet between rotor and hub?")},
       false,
       "a rotor was put on the hub"});
  kinds.push_back({"rotor_turned",
                   KindType::Occurrence,
                   {hand, rotor,
                    choice("sense", {"against_bolts", "with_bolts"}, kFelt,
                           "against: the way braking drags it, taking up the play"),
                    clearance, count("snug", 64, kTruth, "bolts snug meanwhile")},
                   false,
                   "a rotor was turned within its play"});
  kinds.push_back({"rotor_eased",
                   KindType::Occurrence,
                   {rotor, clearance},
                   false,
                   "a rotor that nothing held any more went back into its play"});
  kinds.push_back({"rotor_fitted",
                   KindType::Change,
                   {item("rotor", sets.rotors, kFelt, "which rotor is on the hub")},
                   false,
                   "the rotor on the hub; unknown when there is none"});
  kinds.push_back(
      {"bolts_in", KindType::Change, {count("count", 64, kFelt, "how many")}, false, "bolts in the joint's holes"});
}

}  // namespace proofstand::event
