#include "sim/desk/review.h"

#include <algorithm>

#include "sim/record/attempt_reader.h"
#include "sim/report/make_mark_sheet.h"

namespace proofstand::desk {
namespace {

// everyday movements are low, what hands did to the joint is taller
float height_of(std::string_view kind) {
  for (const std::string_view low : {"took", "put", "brought", "touched", "refused", "gap"}) {
    if (kind.substr(0, low.size()) == low) return 0.25F;
  }
  return 0.55F;
}

}  // namespace

std::vector<TimeMark> time_marks(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records,
                                 const std::vector<base::Tick>& attention) {
  std::vector<TimeMark> out;
  for (const event::Record& record : records) {
    if (record.tick == 0) continue;  // how things stood at the start is no event of the work
    out.push_back({record.tick, height_of(vocabulary.kinds[record.kind].name), false});
  }
  for (const base::Tick tick : attention) out.push_back({tick, 0.95F, true});
  std::stable_sort(out.begin(), out.end(), [](const TimeMark& a, const TimeMark& b) { return a.tick < b.tick; });
  return out;
}

Review::Review(record::Marking marking) : marking_(std::move(marking)) {}

base::Result<std::unique_ptr<Review>> Review::open(const std::string& path, const std::string& language,
                                                   const CompleteSheet& complete) {
  auto attempt = record::load_attempt(path);
  if (!attempt) return attempt.error();
  auto marking = record::mark_attempt(std::move(*attempt));
  if (!marking) return marking.error();
  std::unique_ptr<Review> out(new Review(std::move(*marking)));
  const record::Marking& marked = out->marking_;
  out->path_ = path;
  out->sheet_ = report::make_mark_sheet(marked, language);
  if (complete) complete(out->sheet_, marked);
  out->moments_ = report::compute_moments(marked);
  out->end_ = marked.trace.end_tick;
  out->tick_ = out->end_;
  if (marked.attempt.head.bench == bench::kBenchVersion) {
    out->replayer_ = std::make_unique<record::Replayer>(marked.scenario.setup, marked.attempt.actions);
  }
  std::vector<base::Tick> attention;
  for (std::size_t i = 0; i < out->sheet_.lost.size(); ++i) {
    const report::FindingMoments* found = out->moments_of(i);
    if (found != nullptr && !found->moments.empty()) attention.push_back(found->moments.front().tick);
  }
  out->marks_ = time_marks(marked.program.vocabulary, marked.trace.records, attention);
  return out;
}

const report::FindingMoments* Review::moments_of(std::size_t lost_line) const {
  if (lost_line >= sheet_.lost.size()) return nullptr;
  const auto rule = marking_.program.find_rule(sheet_.lost[lost_line].rule);
  if (!rule || static_cast<std::size_t>(*rule) >= moments_.size()) return nullptr;
  return &moments_[static_cast<std::size_t>(*rule)];
}

}  // namespace proofstand::desk
