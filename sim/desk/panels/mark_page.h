// The mark sheet in the window: the verdict, what to work on, and for each finding the moment, the place and the plot
// that show it. Everything it says comes from the sheet that files carry too.
#pragma once

#include <string>
#include <vector>

#include "sim/desk/layout.h"
#include "sim/desk/orders.h"
#include "sim/report/mark_sheet.h"
#include "sim/report/moment.h"

namespace proofstand::desk {

struct MarkPageState {
  int shown = -1;  ///< finding that is shown, index into the lost lines; -1: none
  report::PlotKind plot = report::PlotKind::Preload;
  std::size_t bolt = 0;
  bool printed_face = true;
  std::string saved;  ///< where the page was saved, or why not
};

struct MarkPageView {
  const report::MarkSheet* sheet = nullptr;
};

/// Where its parts lie: words to the left, the picture free at the upper right, plots below it.
struct MarkPageLayout {
  Rect words;
  Rect picture;
  Rect plots;
  Rect time_line;
};
MarkPageLayout mark_page_layout(const Rect& window, float u_px);

void draw_mark_words(const Rect& at, const MarkPageView& view, MarkPageState& state, Orders& orders);
void draw_mark_plots(const Rect& at, const MarkPageView& view, MarkPageState& state);

}  // namespace proofstand::desk
