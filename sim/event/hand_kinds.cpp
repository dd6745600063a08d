#include "sim/event/job_fields.h"

namespace proofstand::event {

using base::Dimension;

void add_hand_kinds(std::vector<Kind>& kinds, const JobSets& sets) {
  const Field hand = choice("hand", hand_choices(), kFelt, "which hand");
  const Field skin = choice("skin", skin_choices(), kFelt, "bare or gloved at that moment");
  const Field thing = item("thing", sets.things, kFelt, "which thing");
  const Field rotor = item("rotor", sets.rotors, kFelt, "which rotor; unknown when it is no rotor");
  const Field part = choice("part", part_choices(), kFelt, "where on the workplace");
  const Field bolt = item("bolt", sets.bolts, kFelt, "which position; unknown when it is none");
  const Field mass =
      quantity("film", Dimension::FilmLoad, 0.0, 1.0, kTruth,
               "skin grease, oil, grease and brake fluid at the worst spot of what was touched, afterwards");

  kinds.push_back({"took", KindType::Occurrence, {hand, thing, skin}, false, "a thing was taken into a hand"});
  kinds.push_back({"put_down", KindType::Occurrence, {hand, thing}, false, "a thing was put down or let go of"});
  kinds.push_back({"touched",
                   KindType::Occurrence,
                   {hand, skin, part, rotor, bolt, thing,
                    quantity("area", Dimension::Area, 0.0, 0.05, kFelt, "area under the fingers"), mass,
                    quantity("time", Dimension::Time, 0.0, 3600.0, kFelt, "how long")},
                   false,
                   "fingers left a place they had rested on: one record per visit"});
  kinds.push_back(
      {"gloved", KindType::Occurrence, {hand, flag("on", kFelt, "put on, or taken off")}, false, "glove on or off"});
  kinds.push_back({"laid_down",
                   KindType::Occurrence,
                   {rotor, choice("face", {"outer", "inner"}, kFelt, "the face that lies on the bench"), mass},
                   false,
                   "a rotor was laid on the bench"});
  kinds.push_back({"applied",
                   KindType::Occurrence,
                   {hand, choice("fluid", fluid_choices(), kFelt, "what"), part, bolt, rotor, thing,
                    quantity("amount", Dimension::Volume, 0.0, 1e-4, kFelt, "how much")},
                   false,
                   "a fluid was let out of its bottle onto something"});
  kinds.push_back(
      {"wiped",
       KindType::Occurrence,
       {hand, part, rotor, bolt, item("rag", sets.things, kFelt, "which rag"),
        quantity("coverage", Dimension::Number, 0.0, 1.0, kFelt, "share of the area that the rag passed over"),
        flag("solvent", kFelt, "was the rag, or the surface, wet with alcohol?"),
        flag("fresh_fold", kFelt, "had this fold wiped nothing before?"),
        flag("clean_fold", kTruth, "was the fold below the load that counts as dirty when the wipe began?"),
        quantity("rag_load", Dimension::FilmLoad, 0.0, 1.0, kTruth, "load of the fold when the wipe began"), mass,
        count("passes", 1000, kFelt, "strokes over it"),
        quantity("press", Dimension::Force, 0.0, 100.0, kFelt, "mean press")},
       false,
       "a wipe ended: the rag left the place, or turned to a fresh fold"});
  kinds.push_back(
      {"refused",
       KindType::Occurrence,
       {hand,
        choice("why", {"wheel_in_bike", "both_hands_needed", "hand_full",     "hand_empty",      "does_not_fit",
                       "covered",       "out_of_reach",      "locked",        "tool_in_the_way", "not_a_number",
                       "bolts_hold_it", "no_such_place",     "already_there", "nothing_to_do",   "busy",
                       "rotor_missing", "hole_taken",        "handed_over",   "would_fall",      "not_part_of_this_job",
                       "wheel_turning"},
               kFelt, "what stood in the way")},
       false,
       "the bench refused something impossible"});
  kinds.push_back({"gap",
                   KindType::Occurrence,
                   {quantity("time", Dimension::Time, 0.0, 1e6, kTruth, "time not simulated")},
                   false,
                   "the machine fell behind; the trainee is not charged for it"});
  kinds.push_back({"endangered",
                   KindType::Occurrence,
                   {hand, skin, choice("how", {"turning_rotor", "heat_with_alcohol"}, kFelt, "what would have hurt")},
                   false,
                   "something that would have hurt the trainee: the run stops"});
  kinds.push_back({"skin_left",
                   KindType::Change,
                   {choice("skin", skin_choices(), kFelt, "state of the left hand")},
                   false,
                   "whether the left hand is gloved"});
  kinds.push_back({"skin_right",
                   KindType::Change,
                   {choice("skin", skin_choices(), kFelt, "state of the right hand")},
                   false,
                   "whether the right hand is gloved"});
}

}  // namespace proofstand::event
