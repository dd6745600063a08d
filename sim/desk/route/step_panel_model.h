// What the step panel shows: the list of places, verbs for the chosen one, rows of taps. A button is one tap, by the
// same code as the keys. Nothing here draws.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sim/desk/commands.h"
#include "sim/desk/route/place_list.h"

namespace proofstand::desk::route {

struct VerbButton {
  hand::Verb verb = hand::Verb::Natural;
  std::string words;
};
struct TapButton {
  CommandId command = CommandId::TapOn;
  int count = 1;  ///< 4: "much"
  std::string words;
  bool works = true;
  std::string why_not;
};
struct PanelRow {
  std::string words;
  std::vector<TapButton> buttons;
};
struct StepPanel {
  std::vector<VerbButton> verbs;  ///< that fit the chosen place; empty when none is chosen
  std::vector<PanelRow> rows;     ///< cord, in and out, hand, thing held, look
};

/// chosen  null when no place is chosen
StepPanel step_panel(const ListedPlace* chosen, const hand::TwoHands& hands, const bench::Bench& bench, bool look_mode);

}  // namespace proofstand::desk::route
