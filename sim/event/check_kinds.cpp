#include "sim/base/math.h"
#include "sim/event/job_fields.h"

namespace proofstand::event {

using base::Dimension;

void add_check_kinds(std::vector<Kind>& kinds, const JobSets& sets) {
  const Field hand = choice("hand", hand_choices(), kFelt, "which hand");
  const Field rotor = item("rotor", sets.rotors, kFelt, "which rotor");
  const Field bolt = item("bolt", sets.bolts, kFelt, "which position; unknown when it is none");
  const Field instrument = item("instrument", sets.things, kFelt, "which instrument");

  kinds.push_back({"measured",
                   KindType::Occurrence,
                   {hand, instrument, rotor,
                    choice("part", {"track", "lip", "carrier", "across"}, kFelt,
                           "what lay under the jaws: worn track, unworn lip, carrier, or lip and track together"),
                    quantity("reading", Dimension::Length, 0.0, 0.3, kFelt, "what the scale showed"),
                    quantity("truth", Dimension::Length, 0.0, 0.3, kTruth, "the true size there"),
                    quantity("radius", Dimension::Length, 0.0, 0.2, kFelt, "where along the radius"),
                    quantity("angle", Dimension::Angle, 0.0, base::kTwoPi, kFelt, "where round the rotor"),
                    count("spot", 64, kFelt, "number of the sixth of a turn it lies in, from 0"),
                    flag("squeezed", kTruth, "screwed down harder than its ratchet allows?"),
                    quantity("temperature", Dimension::Temperature, 200.0, 1000.0, kTruth, "of the part")},
                   false,
                   "an instrument was closed on something for long enough to be read"});
  kinds.push_back(
      {"measured_size",
       KindType::Occurrence,
       {hand, instrument, rotor, quantity("reading", Dimension::Length, 0.0, 0.3, kFelt, "what the scale showed"),
        quantity("truth", Dimension::Length, 0.0, 0.3, kTruth, "true outside diameter")},
       false,
       "a rotor's outside diameter was measured"});
  kinds.push_back({"watched_runout",
                   KindType::Occurrence,
                   {instrument, rotor,
                    quantity("turns", Dimension::Number, 0.0, 1000.0, kFelt, "whole and part turns under the dial"),
                    quantity("shown", Dimension::Length, 0.0, 0.02, kFelt, "largest less smallest reading"),
                    quantity("truth", Dimension::Length, 0.0, 0.02, kTruth, "true runout there"),
                    count("snug", 64, kTruth, "bolts snug meanwhile")},
                   false,
                   "a wheel was turned under a dial gauge"});
  kinds.push_back(
      {"inspected",
       KindType::Occurrence,
       {hand, choice("with", {"lamp", "pick", "fingers", "turned_over"}, kFelt, "how"),
        choice("part", part_choices(), kFelt, "where"), rotor, bolt, item("thing", sets.things, kFelt, "which thing"),
        quantity("time", Dimension::Time, 0.0, 3600.0, kFelt, "how long")},
       false,
       "something was looked at in a way that hands prove"});
  kinds.push_back({"card_length",
                   KindType::Occurrence,
                   {item("entry", sets.card, kFelt, "which entry"),
                    quantity("written", Dimension::Length, 0.0, 1.0, kFelt, "what was written"),
                    quantity("indicated", Dimension::Length, 0.0, 1.0, kFelt,
                             "what the instrument last showed for it; unknown if never"),
                    quantity("truth", Dimension::Length, 0.0, 1.0, kTruth, "what is true"),
                    quantity("off_indicated", Dimension::Length, 0.0, 1.0, kTruth,
                             "distance of written from indicated; unknown if never"),
                    quantity("off_truth", Dimension::Length, 0.0, 1.0, kTruth, "distance of written from true")},
                   false,
                   "a length was written on the job card"});
  kinds.push_back({"card_torque",
                   KindType::Occurrence,
                   {item("entry", sets.card, kFelt, "which entry"),
                    quantity("written", Dimension::Torque, 0.0, 100.0, kFelt, "what was written"),
                    quantity("indicated", Dimension::Torque, 0.0, 100.0, kFelt,
                             "what the torque tool stood at when it last clicked; unknown if never"),
                    quantity("off_indicated", Dimension::Torque, 0.0, 100.0, kTruth,
                             "distance of written from indicated; unknown if never")},
                   false,
                   "a torque was written on the job card"});
  kinds.push_back(
      {"card_choice",
       KindType::Occurrence,
       {item("entry", sets.card, kFelt, "which entry"), item("word", sets.card_words, kFelt, "which word was chosen"),
        item("right", sets.card_words, kTruth,
             "the word that is true of this bench; unknown when there is no one truth"),
        flag("agrees", kTruth, "is it that word? unknown when there is no one truth")},
       false,
       "a choice was made on the job card"});
  kinds.push_back({"card_note",
                   KindType::Occurrence,
                   {item("entry", sets.card, kFelt, "which entry"), count("letters", 10000, kFelt, "how many letters")},
                   false,
                   "words were written on the job card"});
  kinds.push_back({"wheel_moved",
                   KindType::Occurrence,
                   {choice("to", {"stand", "bike", "hands"}, kFelt, "where to"),
                    choice("from", {"stand", "bike", "hands"}, kFelt, "where from"),
                    count("loose", 64, kTruth, "bolts not at a tenth of their clamp or missing at that moment")},
                   false,
                   "the wheel went from one place to another"});
  kinds.push_back({"wheel_spun",
                   KindType::Occurrence,
                   {choice("at", {"stand", "bike"}, kFelt, "where it turned"),
                    quantity("turns", Dimension::Number, 0.0, 10000.0, kFelt, "turns until it stood or was stopped"),
                    quantity("rate", Dimension::Rate, 0.0, 100.0, kFelt, "fastest turning"),
                    flag("rub_heard", kFelt, "did something rub?"),
                    quantity("rub_share", Dimension::Number, 0.0, 1.0, kTruth, "share of the turn that rubbed"),
                    flag("forward", kFelt, "the way the bike rolls?")},
                   false,
                   "a spin of the wheel ended"});
  kinds.push_back({"wheel_at",
                   KindType::Change,
                   {choice("place", {"stand", "bike", "hands"}, kFelt, "where the wheel is")},
                   false,
                   "where the wheel is"});
  kinds.push_back({"wheel_turning",
                   KindType::Change,
                   {flag("turning", kFelt, "faster than a tenth of a turn a second?")},
                   false,
                   "whether the wheel turns by itself"});
}

}  // namespace proofstand::event
