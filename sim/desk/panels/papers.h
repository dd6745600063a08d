// The papers of a job: the card that one fills in, and the maker's sheet that one reads.
#pragma once

#include <string>
#include <vector>

#include "sim/desk/layout.h"
#include "sim/desk/orders.h"
#include "sim/scenario/scenario.h"

namespace proofstand::desk {

/// What is being typed, until it is written. Forgotten with the window.
struct JobCardState {
  std::vector<std::string> typed;                    ///< by entry
  std::vector<std::string> written;                  ///< what was last written, by entry
  std::size_t field = static_cast<std::size_t>(-1);  ///< last one used; none at first
  bool focus = false;                                ///< put the cursor there
  bool confirm = false;                              ///< handing over was pressed once
};

struct JobCardView {
  const scenario::DrawnScenario* scenario = nullptr;
  std::string language;
  std::string refused;  ///< what was wrong with the last entry
  bool over = false;
};

void draw_job_card(const Rect& at, const JobCardView& view, JobCardState& state, Orders& orders);
void draw_makers_sheet(const Rect& at, const scenario::DrawnScenario& scenario, const std::string& language,
                       Orders& orders);
/// A card that has given way: its name on a tab that brings it back.
void draw_tab(const Rect& at, const char* words, Orders& orders);
/// Units printed beside the card's fields: "mm", "N·m", or nothing.
const char* unit_of(bench::CardKind kind);

}  // namespace proofstand::desk
