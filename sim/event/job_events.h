// Every kind of record that the bench can make, declared once: names, fields, units, ranges, what may be felt. Files,
// rules, the author's help and the tests all come from this list.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "sim/event/ids.h"
#include "sim/event/record.h"
#include "sim/event/vocabulary.h"

namespace proofstand::event {

/// What varies from scenario to scenario in the vocabulary: the words of its items.
struct JobItems {
  std::size_t bolts = 0;                ///< fasteners of the joint, on a ring
  std::vector<std::string> things;      ///< every thing of the workplace, by ThingId
  std::vector<std::string> rotors;      ///< rotors in play, in the order of their things
  std::vector<std::string> card;        ///< job card entries, by CardEntryId
  std::vector<std::string> card_words;  ///< every word that a choice on the card offers
};

/// Names of the sets in the vocabulary.
inline constexpr std::string_view kBoltSet = "bolts";
inline constexpr std::string_view kThingSet = "things";
inline constexpr std::string_view kRotorSet = "rotors";
inline constexpr std::string_view kCardSet = "card";
inline constexpr std::string_view kCardWordSet = "card_words";

/// The bench's vocabulary for one scenario.
Vocabulary job_vocabulary(const JobItems& items);

/// One field by name. Quantities in SI; items and choices as index; flags as 0 or 1.
struct FieldValue {
  std::string_view name;
  double value = 0.0;
};

/// Builds a record of a kind of the vocabulary; fields not given are unknown. An unknown name or a value that is not
/// finite is our bug (asserted).
Record make_record(const Vocabulary& vocabulary, std::string_view kind, base::Tick tick,
                   std::initializer_list<FieldValue> fields);

/// Index of a choice word of a field, as a value; asserted to exist.
double choice_value(const Vocabulary& vocabulary, std::string_view kind, std::string_view field, std::string_view word);

}  // namespace proofstand::event
