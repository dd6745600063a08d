// An attempt looked at afterwards: its mark sheet, and the bench at any moment of it. Reads only.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "sim/desk/panels/time_line.h"
#include "sim/record/marking.h"
#include "sim/record/replayer.h"
#include "sim/report/mark_sheet.h"
#include "sim/report/moment.h"

namespace proofstand::desk {

/// Adds what needs physics or a replay to a sheet: curves, film maps, runout, the range of preload.
using CompleteSheet = std::function<void(report::MarkSheet&, const record::Marking&)>;

class Review {
 public:
  /// errors: those of reading and marking an attempt
  static base::Result<std::unique_ptr<Review>> open(const std::string& path, const std::string& language,
                                                    const CompleteSheet& complete);

  [[nodiscard]] const report::MarkSheet& sheet() const { return sheet_; }
  [[nodiscard]] const record::Marking& marking() const { return marking_; }
  [[nodiscard]] const std::string& path() const { return path_; }
  /// Where to look for a line of `lost`; null when nothing more is known of it.
  [[nodiscard]] const report::FindingMoments* moments_of(std::size_t lost_line) const;
  [[nodiscard]] const std::vector<TimeMark>& marks() const { return marks_; }
  [[nodiscard]] base::Tick end() const { return end_; }

  /// The bench at a moment; false when this program's bench is another and nothing can be replayed.
  [[nodiscard]] bool can_replay() const { return replayer_ != nullptr; }
  void seek(base::Tick tick) { tick_ = tick; }
  [[nodiscard]] base::Tick tick() const { return tick_; }
  const bench::Bench& bench() { return replayer_->at(tick_); }

 private:
  explicit Review(record::Marking marking);
  record::Marking marking_;
  report::MarkSheet sheet_;
  std::vector<report::FindingMoments> moments_;
  std::unique_ptr<record::Replayer> replayer_;
  std::vector<TimeMark> marks_;
  std::string path_;
  base::Tick end_ = 0;
  base::Tick tick_ = 0;
};

/// One mark an event, as tall as it matters; those at `attention` ticks stand out.
std::vector<TimeMark> time_marks(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records,
                                 const std::vector<base::Tick>& attention);

}  // namespace proofstand::desk
