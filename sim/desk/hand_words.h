// What each hand does, in words: for its card, and for whoever has the window read aloud. Says what a person sees and
// feels of their own hands; never whether it is right.
#pragma once

#include <string>

#include "sim/hand/gesture_two_hands.h"

namespace proofstand::desk {

struct HandWords {
  std::string who;     ///< "right · gloved"
  std::string doing;   ///< "pulls the key"
  std::string where;   ///< "bolt 4, recess"; empty when it touches nothing
  std::string effort;  ///< light, firm, all you have; empty in an exam and when slack
  bool active = false;
  bool keeps = false;
};

/// exam: without the words of effort.
HandWords hand_words(const bench::Bench& bench, const hand::TwoHands& hands, event::HandId hand, bool exam);

}  // namespace proofstand::desk
