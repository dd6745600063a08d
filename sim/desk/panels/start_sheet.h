// The first thing one sees: the jobs there are, what was left open, and earlier goes. One press starts.
#pragma once

#include <string>
#include <vector>

#include "sim/desk/layout.h"
#include "sim/desk/orders.h"

namespace proofstand::desk {

/// A job as a line of the sheet.
struct JobLine {
  std::string file;
  std::string title;
  std::string trains;     ///< its stages in words
  std::string minutes;    ///< "45 min"; empty when it has no limit
  std::size_t bolts = 6;  ///< drawn as its mount
  std::string last;       ///< how the last go went; empty when there was none
};
/// An attempt that was kept.
struct AttemptLine {
  std::string file;
  std::string title;
  std::string words;  ///< way, and how far or how it ended
  bool open = false;
};

struct StartView {
  std::vector<JobLine> jobs;
  std::vector<AttemptLine> attempts;  ///< newest first
  std::string note;                   ///< something that went wrong, for people
  std::string caution;
};

void draw_start_sheet(const Rect& window, const StartView& view, Orders& orders);

}  // namespace proofstand::desk
