// Everything the hands can be asked, as buttons: places in a list, verbs for the chosen one, rows of taps. No drag is
// ever needed.
#pragma once

#include <string>
#include <vector>

#include "sim/desk/layout.h"
#include "sim/desk/orders.h"
#include "sim/desk/route/step_panel_model.h"

namespace proofstand::desk {

struct StepPanelState {
  bool fine = false;  ///< the switch: a tenth of every tap
};

struct StepPanelView {
  const std::vector<route::ListedPlace>* list = nullptr;
  std::int32_t chosen = -1;
  route::StepPanel rows;
  std::vector<std::string> views;  ///< names of views to look at
};

void draw_step_panel(const Rect& at, const StepPanelView& view, StepPanelState& state, Orders& orders);

}  // namespace proofstand::desk
