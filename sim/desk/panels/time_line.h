// Time as a line: every event a tick as tall as it matters. One drags along it, or walks it by keys.
#pragma once

#include <string>
#include <vector>

#include "sim/desk/layout.h"
#include "sim/desk/orders.h"

namespace proofstand::desk {

struct TimeMark {
  base::Tick tick = 0;
  float height_1 = 0.4F;   ///< 0..1
  bool attention = false;  ///< stands out
};

struct TimeLineState {
  base::Tick at = 0;  ///< where it stands
  bool dragging = false;
};

struct TimeLineView {
  base::Tick end = 0;
  base::Tick now = 0;      ///< of the picture
  bool can_go_on = false;  ///< practice: going on from there is offered
  const std::vector<TimeMark>* marks = nullptr;
};

void draw_time_line(const Rect& at, const TimeLineView& view, TimeLineState& state, Orders& orders);
/// "04:12"
std::string clock_words(base::Tick tick);

}  // namespace proofstand::desk
