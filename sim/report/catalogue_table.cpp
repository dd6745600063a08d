#include "sim/report/catalogue_table.h"

#include "sim/report/guidance_phrases.h"

namespace proofstand::report {
namespace {

std::vector<Phrase> joined(std::vector<Phrase> table, const std::vector<Phrase>& more) {
  table.insert(table.end(), more.begin(), more.end());
  return table;
}

}  // namespace

const std::vector<Phrase>& phrase_table() {
  static const std::vector<Phrase> table = {
      {"verdict.passed", "Passed", "Bestanden"},
      {"verdict.not-yet", "Not yet", "Noch nicht"},
      {"verdict.not-judged", "Not judged", "Nicht bewertet"},

      {"reason.reached-pass-mark", "{0} of {1} points judged; {2} % are needed.", ""},
      {"reason.below-pass-mark", "{0} of {1} points judged; {2} % are needed.", ""},
      {"reason.critical-failed", "A critical point stands against it, whatever the points: {0}", ""},
      {"reason.little-seen", "Only {0} % of the points could be judged; {1} % are needed for a verdict.", ""},
      {"reason.cut-off", "The run was cut off by something that is not the trainee's doing.", ""},
      {"reason.critical-unjudged", "The record does not tell whether a critical point was met: {0}", ""},

      {"idle.opener-never-came", "not applicable: what it is about never began", ""},
      {"idle.trigger-never-came", "not applicable: there was nothing of the kind to judge", ""},
      {"idle.closer-never-came", "not applicable: what it is about was never finished", ""},
      {"idle.children-idle", "not applicable: none of its parts had a chance", ""},
      {"aside.excused", "not counted: it follows from \"{0}\", which is counted already", ""},
      {"aside.unjudged", "not judged: the record does not tell", ""},

      {"case.done", "done as asked", ""},
      {"case.never-came", "it never happened", ""},
      {"case.happened", "it happened, and must not", ""},
      {"case.too-few", "too few", ""},
      {"case.too-many", "too many", ""},
      {"case.none-before", "what must come before had not been done", ""},
      {"case.only-other-items", "what must come before had been done, but elsewhere", ""},
      {"case.too-old", "what must come before was too long ago", ""},
      {"case.too-recent", "what must come before was too short a time ago", ""},
      {"case.undone", "it was undone in between", ""},
      {"case.used-up", "it needed doing again, and was not", ""},
      {"case.late", "it came too late", ""},
      {"case.ended-open", "it had not come when the stretch ended", ""},
      {"case.out-of-order", "out of order", ""},
      {"case.incomplete", "parts are missing", ""},
      {"case.too-short", "not long enough", ""},
      {"case.not-kept", "not kept up", ""},
      {"case.below", "below the range: {0}, asked {1}", ""},
      {"case.above", "above the range: {0}, asked {1}", ""},
      {"case.wrong-pattern", "not in the pattern asked for", ""},
      {"case.slips", "repeated within a round", ""},
      {"case.gap-too-long", "the pause in between was too long", ""},
      {"case.children", "by its parts", ""},
      {"case.no-stretch", "what it asks for never came about", ""},
      {"case.value-missing", "a value that it needs was never known", ""},
      {"case.cut-off", "the run ended before it was due", ""},

      {"refusal.wheel_in_bike", "the wheel is still in the bike", ""},
      {"refusal.both_hands_needed", "this needs both hands", ""},
      {"refusal.hand_full", "the hand holds something already", ""},
      {"refusal.hand_empty", "the hand holds nothing", ""},
      {"refusal.does_not_fit", "it does not fit there", ""},
      {"refusal.covered", "something lies over it", ""},
      {"refusal.out_of_reach", "it is out of reach", ""},
      {"refusal.locked", "it is locked", ""},
      {"refusal.tool_in_the_way", "a tool is in the way", ""},
      {"refusal.not_a_number", "this entry of the card takes a number", ""},
      {"refusal.bolts_hold_it", "the bolts still hold it", ""},
      {"refusal.no_such_place", "there is no such place", ""},
      {"refusal.already_there", "it is there already", ""},
      {"refusal.nothing_to_do", "there is nothing to do there", ""},
      {"refusal.busy", "the hand is still on its way", ""},
      {"refusal.rotor_missing", "there is no rotor on the hub", ""},
      {"refusal.hole_taken", "there is a bolt in that hole", ""},
      {"refusal.handed_over", "the job has been handed over", ""},
      {"refusal.would_fall", "it would fall", ""},
      {"refusal.not_part_of_this_job", "this is not part of this job", ""},
      {"refusal.wheel_turning", "the wheel is turning: stop it first", ""},

      {"remark.no-bolt", "no bolt in the hole", ""},
      {"remark.crossed", "thread crossed", ""},
      {"remark.stripped", "hub thread stripped", ""},
      {"remark.greasy", "grease or oil in the thread", ""},
      {"remark.bottomed", "stands on the bottom of its hole", ""},
      {"remark.stretched", "stretched for good by {0}", ""},
      {"remark.worn", "recess worn by {0}", ""},
      {"remark.proud", "head stands off by {0}", ""},
      {"locker.none", "none", ""},
      {"locker.patch", "patch", ""},
      {"locker.worn_patch", "worn patch", ""},
      {"locker.wet", "liquid locker, not yet set", ""},
      {"locker.set", "locker, set", ""},
      {"locker.unknown", "not known", ""},
      {"face.outer", "printed side", ""},
      {"face.inner", "other side", ""},

      {"card.letters", "{0} letters", ""},
      {"card.tool-at", "the tool clicked at {0}", ""},
      {"card.tool-never", "no torque tool clicked", ""},

      {"note.open", "The attempt was not handed over; it is judged as far as it goes.", ""},
      {"note.torn", "{0}.", ""},
      {"note.resumed", "The program had ended {0} times in between and was gone on with; both hands were let go then.",
       ""},
      {"note.rewound", "Taken back {0} times; the marks follow the last branch.", ""},
      {"note.gap", "{0} could not be shown by a slow machine and are not charged.", ""},
      {"note.aids", "Aids used: {0}.", ""},
      {"note.hand", "Worked by the modelled hand, set {0}.", ""},
      {"note.other-bench", "Recorded with bench version {0}: marked from its events; it cannot be replayed here.", ""},
      {"note.unsigned", "The record's chain is whole. It is not signed: a chain shows damage, not forgery.", ""},
      {"note.stages", "Not part of this exercise: {0}.", ""},

      {"text.points", "{0} of {1} points judged ({2} in the exercise), pass mark {3} %", ""},
      {"text.time", "time {0}", ""},
      {"text.competences", "By competence", ""},
      {"text.competence", "{0}: {1} of {2}", ""},
      {"text.competence-part", "{0}: {1} of {2} judged; {3} in the exercise", ""},
      {"text.lost", "What to work on", ""},
      {"text.met", "Right", ""},
      {"text.aside", "Not counted", ""},
      {"text.computed", "What the bench computed", ""},
      {"text.card", "Job card against the bench", ""},
      {"text.about", "About this attempt", ""},
      {"text.cautions", "Cautions", ""},
      {"text.why", "why: {0}", ""},
      {"text.bolt", "bolt {0}: last {1}, preload {2}, clamp {3}, locking: {4}", ""},
      {"text.bolt-missing", "bolt {0}: {1}", ""},
      {"text.rounds", "pulled in the order {0}", ""},
      {"text.joint", "clamp {0} in all; friction carries {1} of the {2} that a hard stop asks", ""},
      {"text.stays", "the rotor stays where it is", ""},
      {"text.bears", "beyond that the bolts bear at once: no play, no knock, as is usual", ""},
      {"text.knocks", "the rotor turns {0} through {1} of play and knocks with {2}", ""},
      {"text.shear", "largest shear on one bolt {0}; stop from 25 km/h in {1}", ""},
      {"text.runout", "lateral runout {0}", ""},
      {"text.face", "{0}: heaviest film {1}, {2} % covered, {3} % of the friction left", ""},
      {"text.card-line", "{0}: {1}", ""},
      {"text.card-truth", "{0}: {1} (true: {2})", ""},
      {"text.nothing", "nothing written", ""},
      {"text.drawn", "in this variant: {0}", ""},
      {"text.differs", "differs", ""},
  };
  static const std::vector<Phrase> whole = joined(table, guidance_phrases());
  return whole;
}

}  // namespace proofstand::report
