#include "sim/base/math.h"
#include "sim/event/job_fields.h"

namespace proofstand::event {

using base::Dimension;

void add_closing_kinds(std::vector<Kind>& kinds, const JobSets& sets) {
  const Field bolt = item("bolt", sets.bolts, kFelt, "which position");
  const Field rotor = item("rotor", sets.rotors, kFelt, "which rotor");
  kinds.push_back(
      {"left_bolt",
       KindType::Occurrence,
       {bolt, item("thing", sets.things, kFelt, "which bolt is in it; unknown when empty"),
        flag("present", kFelt, "is there a bolt?"),
        quantity("last_torque", Dimension::Torque, 0.0, 60.0, kTruth, "torque held at the last visit's end"),
        quantity("preload", Dimension::Force, 0.0, 30000.0, kTruth, "axial force in the bolt"),
        quantity("clamp", Dimension::Force, 0.0, 30000.0, kTruth,
                 "force with which rotor and hub are pressed together there"),
        choice("locker", {"none", "patch", "worn_patch", "wet", "set"}, kTruth, "what locks the thread"),
        flag("greasy", kTruth, "grease or oil in the thread?"), flag("crossed", kTruth, "threads crossed?"),
        flag("stripped", kTruth, "hub thread stripped?"),
        quantity("stretch", Dimension::Length, 0.0, 0.01, kTruth, "permanent stretch"),
        quantity("recess_wear", Dimension::Length, 0.0, 0.002, kTruth, "wear of the drive recess"),
        quantity("engagement", Dimension::Length, 0.0, 0.05, kTruth, "length of full thread engaged"),
        quantity("head_gap", Dimension::Length, 0.0, 0.05, kTruth, "gap left under the head"),
        flag("bottomed", kTruth, "does its end stand on the bottom of the hole?"),
        quantity("locker_amount", Dimension::Volume, 0.0, 1e-6, kTruth, "liquid locker on the engaged thread")},
       false,
       "what a bolt position is like at hand-over"});
  kinds.push_back(
      {"left_boss",
       KindType::Occurrence,
       {bolt,
        quantity("dirt", Dimension::Length, 0.0, 0.002, kTruth, "height of grit, paint or burr left on the seat there"),
        quantity("gap", Dimension::Length, 0.0, 0.005, kTruth, "gap between rotor and seat there")},
       false,
       "what the seat round a hole is like at hand-over"});
  kinds.push_back(
      {"left_face",
       KindType::Occurrence,
       {rotor, choice("face", {"outer", "inner"}, kFelt, "printed side, or the other"),
        quantity("film_worst", Dimension::FilmLoad, 0.0, 1.0, kTruth,
                 "largest load of grease, oil, fluid and locker on a spot"),
        quantity("film_mean", Dimension::FilmLoad, 0.0, 1.0, kTruth, "mean load over the track"),
        quantity("coverage", Dimension::Number, 0.0, 1.0, kTruth, "share of friction surface that films cover"),
        quantity("oily", Dimension::Number, 0.0, 1.0, kTruth, "share of the track with a full oil or grease film"),
        quantity("alcohol", Dimension::FilmLoad, 0.0, 1.0, kTruth, "alcohol still wet, at most"),
        quantity("friction_factor", Dimension::Number, 0.0, 1.0, kTruth,
                 "friction with these films, of clean friction")},
       false,
       "what a braking face of the rotor on the hub is like at hand-over"});
  kinds.push_back(
      {"left_rotor",
       KindType::Occurrence,
       {rotor, flag("printed_out", kFelt, "printed side away from the hub?"),
        flag("arrow_forward", kFelt, "does its arrow point the way the wheel rolls? unknown without an arrow"),
        flag("seated", kTruth, "flat on its seat within 0.02 mm?"),
        quantity("tilt", Dimension::Angle, 0.0, 0.1, kTruth, "tilt against the hub's seat"),
        quantity("runout", Dimension::Length, 0.0, 0.05, kTruth, "total lateral runout at the middle of the track"),
        quantity("thickness", Dimension::Length, 0.0, 0.01, kTruth, "thinnest place of the track"),
        quantity("stamp", Dimension::Length, 0.0, 0.01, kFelt, "least thickness stamped on it"),
        quantity("above_stamp", Dimension::Length, -0.01, 0.01, kTruth, "thinnest place less the stamp"),
        flag("fits_mount", kTruth, "right size and mount for this bike?"),
        quantity("cracked", Dimension::Number, 0.0, 1.0, kTruth, "1 with a crack")},
       false,
       "the rotor on the hub at hand-over; no record when there is none"});
  kinds.push_back(
      {"left_joint",
       KindType::Occurrence,
       {count("bolts", 64, kFelt, "bolts in"),
        quantity("clamp", Dimension::Force, 0.0, 200000.0, kTruth, "all clamp forces together"),
        quantity("capacity", Dimension::Torque, 0.0, 2000.0, kTruth,
                 "brake torque that friction under the bolts can carry"),
        quantity("demand", Dimension::Torque, 0.0, 2000.0, kTruth, "brake torque of a hard stop"),
        flag("slips", kTruth, "does the rotor move on a hard stop?"),
        quantity("clearance", Dimension::Length, 0.0, 0.001, kTruth, "play left in the direction of braking drag"),
        quantity("slip_angle", Dimension::Angle, 0.0, 0.1, kTruth, "how far it turns until it bears"),
        quantity("knock", Dimension::Energy, 0.0, 100.0, kTruth, "energy of the knock when it does"),
        quantity("bolt_shear", Dimension::Force, 0.0, 50000.0, kTruth, "largest shear on one bolt"),
        quantity("friction", Dimension::Number, 0.0, 1.0, kTruth, "pad friction on this track"),
        quantity("stop", Dimension::Length, 0.0, 1000.0, kTruth, "stopping distance from 25 km/h"),
        quantity("spread", Dimension::Number, 0.0, 10.0, kTruth, "largest less smallest clamp, of the mean"),
        count("below", 64, kTruth, "bolts under half of the preload that the sheet's torque gives"),
        count("passes", 64, kFelt, "complete rounds of tightening")},
       false,
       "what the joint as it was fitted is worth at hand-over"});
  kinds.push_back({"left_card",
                   KindType::Occurrence,
                   {item("entry", sets.card, kFelt, "which entry"), flag("filled", kFelt, "is something written?"),
                    flag("needed", kFelt, "does the scenario ask for it?")},
                   false,
                   "a job card entry at hand-over"});
  kinds.push_back(
      {"left_tool",
       KindType::Occurrence,
       {item("tool", sets.things, kFelt, "which tool"), flag("in_joint", kFelt, "left sticking in the joint?"),
        quantity("setting", Dimension::Torque, 0.0, 60.0, kFelt, "where a torque tool stands; unknown for others")},
       false,
       "where a tool was left"});
  kinds.push_back({"handed_over",
                   KindType::Occurrence,
                   {quantity("time", Dimension::Time, 0.0, 1e6, kFelt, "since the start, less gaps"),
                    flag("wheel_in_bike", kFelt, "is the wheel back in?")},
                   false,
                   "the trainee declared the job done"});
}

}  // namespace proofstand::event
