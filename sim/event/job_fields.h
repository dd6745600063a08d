// Short words with which the list of job events is written: one function per type of field. Private to this floor.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "sim/event/vocabulary.h"

namespace proofstand::event {

inline constexpr Standing kFelt = Standing::Felt;
inline constexpr Standing kTruth = Standing::Truth;

inline Field flag(std::string name, Standing standing, std::string what) {
  Field field;
  field.name = std::move(name);
  field.type = FieldType::Flag;
  field.hi_si = 1.0;
  field.standing = standing;
  field.what = std::move(what);
  return field;
}
inline Field count(std::string name, double hi, Standing standing, std::string what) {
  Field field = flag(std::move(name), standing, std::move(what));
  field.type = FieldType::Count;
  field.hi_si = hi;
  return field;
}
inline Field item(std::string name, SetId set, Standing standing, std::string what) {
  Field field = flag(std::move(name), standing, std::move(what));
  field.type = FieldType::Item;
  field.set = set;
  return field;
}
inline Field choice(std::string name, std::vector<std::string> words, Standing standing, std::string what) {
  Field field = flag(std::move(name), standing, std::move(what));
  field.type = FieldType::Choice;
  field.choices = std::move(words);
  return field;
}
/// lo and hi in SI.
inline Field quantity(std::string name, base::Dimension dimension, double lo_si, double hi_si, Standing standing,
                      std::string what) {
  Field field = flag(std::move(name), standing, std::move(what));
  field.type = FieldType::Quantity;
  field.dimension = dimension;
  field.lo_si = lo_si;
  field.hi_si = hi_si;
  return field;
}

/// Item sets by their place in the vocabulary, in the order job_vocabulary() adds them.
struct JobSets {
  SetId bolts = 0;
  SetId things = 1;
  SetId rotors = 2;
  SetId card = 3;
  SetId card_words = 4;
};

/// Parts of the list, by theme.
void add_hand_kinds(std::vector<Kind>& kinds,
                    const JobSets& sets);  ///< taking, touching, wiping, fluids, gloves, refusals
void add_joint_kinds(std::vector<Kind>& kinds, const JobSets& sets);    ///< bolts, tools in them, the rotor on its seat
void add_check_kinds(std::vector<Kind>& kinds, const JobSets& sets);    ///< measuring, looking, card, wheel
void add_closing_kinds(std::vector<Kind>& kinds, const JobSets& sets);  ///< what is left at hand-over
void add_later_kinds(std::vector<Kind>& kinds, const JobSets& sets);    ///< the rest of the whole job

/// Words shared by several kinds.
std::vector<std::string> hand_choices();
std::vector<std::string> skin_choices();
std::vector<std::string> part_choices();
std::vector<std::string> fluid_choices();

}  // namespace proofstand::event
