#include "sim/record/recorder.h"

#include "sim/record/action_codec.h"
#include "sim/record/attempt_head.h"
#include "sim/record/chain.h"
#include "sim/record/trace_codec.h"

namespace proofstand::record {
namespace {

constexpr std::size_t kRecordsPerLine = 64;

}  // namespace

Recorder::Recorder(std::unique_ptr<ByteSink> sink, Way way, std::string hash)
    : sink_(std::move(sink)), way_(way), hash_(std::move(hash)) {}

base::Result<Recorder> Recorder::begin(std::unique_ptr<ByteSink> sink, const AttemptHead& head) {
  Recorder recorder(std::move(sink), head.way, std::string(chain_start()));
  const auto done = recorder.line(head_object(head));
  if (!done) return done.error();
  return recorder;
}

base::Result<Recorder> Recorder::go_on(std::unique_ptr<ByteSink> sink, const Attempt& attempt) {
  if (attempt.closing) {
    return base::Error{"closed", "", "this attempt was closed; nothing can be added to it", "begin another one"};
  }
  Recorder recorder(std::move(sink), attempt.head.way, attempt.last_hash);
  JsonWriter json;
  json.begin_object().member("t", attempt.last_tick).key("resumed").flag(true).end_object();
  const auto done = recorder.line(json.text());
  if (!done) return done.error();
  return recorder;
}

base::Result<base::Done> Recorder::line(const std::string& object) {
  if (failed_) return *failed_;
  STAND_ASSERT(!closed_);
  const std::string text = sealed(hash_, object);
  const auto done = sink_->append(text + "\n");
  if (!done) {
    failed_ = done.error();
    return done;
  }
  hash_ = std::string(link_of(hash_, text).hash);
  return done;
}

base::Result<base::Done> Recorder::action(const event::Action& action) {
  if (failed_) return *failed_;
  if (!batch_.empty() && action.tick - batch_.front().tick > kBatchTicks) {
    const auto done = flush();
    if (!done) return done;
  }
  batch_.push_back(action);
  return base::Done{};
}

base::Result<base::Done> Recorder::flush() {
  if (failed_) return *failed_;
  if (batch_.empty()) return base::Done{};
  const std::string object = actions_object(batch_);
  batch_.clear();
  return line(object);
}

base::Result<base::Done> Recorder::state(base::Tick tick, const base::Digest& digest) {
  const auto flushed = flush();
  if (!flushed) return flushed;
  JsonWriter json;
  json.begin_object().member("t", tick).member("state", base::digest_text(digest)).end_object();
  return line(json.text());
}

base::Result<base::Done> Recorder::rewind(base::Tick from, base::Tick to) {
  if (way_ == Way::Exam) {
    return base::Error{"exam-sealed", "", "an exam cannot be taken back", "go on from here"};
  }
  const auto flushed = flush();
  if (!flushed) return flushed;
  JsonWriter json;
  json.begin_object().member("t", from).member("rewind", to).end_object();
  return line(json.text());
}

base::Result<base::Done> Recorder::close(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records,
                                         base::Tick end, event::EndReason reason) {
  auto done = flush();
  if (done) done = line(trace_begin_object(vocabulary, records));
  for (std::size_t first = 0; done && first < records.size(); first += kRecordsPerLine) {
    const std::size_t left = records.size() - first;
    done = line(events_object(vocabulary, records, first, left < kRecordsPerLine ? left : kRecordsPerLine));
  }
  if (!done) return done;
  JsonWriter json;
  json.begin_object().member("end", end).member("reason", event::end_words(reason));
  json.member("records", static_cast<std::int64_t>(records.size()));
  json.member("trace_hash", trace_hash(vocabulary, records, end, reason)).end_object();
  done = line(json.text());
  closed_ = static_cast<bool>(done);
  return done;
}

std::optional<base::Tick> Recorder::waiting_since() const {
  if (batch_.empty()) return std::nullopt;
  return batch_.front().tick;
}

}  // namespace proofstand::record
