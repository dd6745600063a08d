#include "sim/record/attempt_reader.h"

#include "sim/base/number_text.h"
#include "sim/record/action_codec.h"
#include "sim/record/attempt_head.h"
#include "sim/record/chain.h"
#include "sim/record/files.h"

namespace proofstand::record {
namespace {

std::optional<event::EndReason> reason_from(std::string_view word) {
  using event::EndReason;
  for (const EndReason reason : {EndReason::Finished, EndReason::Timeout, EndReason::Stopped, EndReason::Aborted}) {
    if (event::end_words(reason) == word) return reason;
  }
  return std::nullopt;
}

// one line after another, each by its own function
class LineReader {
 public:
  explicit LineReader(Attempt& attempt) : attempt_(attempt) {}

  base::Result<base::Done> take(JsonView line, std::string_view where) {
    where_ = where;
    if (attempt_.closing) return bad("a line after the one that closes the attempt");
    if (attempt_.lines == 0) return take_head(line);
    if (const auto trace = line.find("trace")) return take_trace(*trace);
    if (const auto events = line.list("events")) return take_events(*events);
    if (const auto end = line.whole("end")) return take_end(line, *end);
    const auto tick = line.whole("t");
    if (!tick || *tick < 0 || *tick > kLongestAttempt) return bad("a line of no known kind");
    if (*tick < now_) return bad("time goes back");
    if (const auto rows = line.list("do")) return take_actions(*tick, *rows);
    if (const auto state = line.text("state")) return take_state(*tick, *state);
    if (line.find("resumed")) return take_resumed(*tick);
    if (const auto to = line.whole("rewind")) return take_rewind(*tick, *to);
    return bad("a line of no known kind");
  }

 private:
  base::Error bad(std::string_view what) const {
    return {"bad-line", std::string(where_), std::string(what), "take the file as the program wrote it"};
  }
  void move_to(base::Tick tick) {
    now_ = tick;
    attempt_.last_tick = tick;
    trace_open_ = false;  // a run that goes on writes its trace anew
  }
  base::Result<base::Done> take_head(JsonView line) {
    auto head = read_head(line, where_);
    if (!head) return head.error();
    attempt_.head = std::move(*head);
    return base::Done{};
  }
  base::Result<base::Done> take_actions(base::Tick tick, JsonView rows) {
    auto actions = read_actions(tick, rows, where_);
    if (!actions) return actions.error();
    move_to(actions->back().tick);
    for (event::Action& action : *actions) attempt_.actions.push_back(std::move(action));
    return base::Done{};
  }
  base::Result<base::Done> take_state(base::Tick tick, std::string_view hash) {
    move_to(tick);
    attempt_.states.push_back({tick, attempt_.actions.size(), std::string(hash), attempt_.lines + 1});
    return base::Done{};
  }
  base::Result<base::Done> take_resumed(base::Tick tick) {
    move_to(tick);
    attempt_.resumptions.push_back({tick, attempt_.actions.size()});
    return base::Done{};
  }
  base::Result<base::Done> take_rewind(base::Tick tick, base::Tick to) {
    if (attempt_.head.way == Way::Exam) return bad("an exam cannot be taken back, yet this line does so");
    if (to < 0 || to > tick) return bad("taken back to a moment that lies ahead");
    attempt_.rewinds.push_back({tick, to});
    while (!attempt_.actions.empty() && attempt_.actions.back().tick > to) attempt_.actions.pop_back();
    const std::size_t kept = attempt_.actions.size();
    while (!attempt_.states.empty() && attempt_.states.back().tick > to) attempt_.states.pop_back();
    while (!attempt_.resumptions.empty() && attempt_.resumptions.back().actions_before > kept) {
      attempt_.resumptions.pop_back();
    }
    move_to(to);
    return base::Done{};
  }
  base::Result<base::Done> take_trace(JsonView trace) {
    auto kinds = read_trace_begin(trace, where_);
    if (!kinds) return kinds.error();
    trace_ = {std::move(*kinds), {}};
    trace_open_ = true;
    return base::Done{};
  }
  base::Result<base::Done> take_events(JsonView list) {
    if (!trace_open_) return bad("events without the line that begins the trace");
    auto records = read_events(list, trace_.kinds, where_);
    if (!records) return records.error();
    for (const event::Record& record : *records) {
      if (!trace_.records.empty() && record.tick < trace_.records.back().tick) return bad("an event goes back in time");
      trace_.records.push_back(record);
    }
    return base::Done{};
  }
  base::Result<base::Done> take_end(JsonView line, base::Tick end) {
    const auto reason = reason_from(line.text("reason").value_or(""));
    const auto hash = line.text("trace_hash");
    if (!trace_open_ || !reason || !hash || end < now_ || end > kLongestAttempt)
      return bad("a closing line lacks a part");
    if (line.whole("records") != static_cast<std::int64_t>(trace_.records.size())) {
      return bad("the closing line counts other events than there are");
    }
    if (!trace_.records.empty() && trace_.records.back().tick > end) return bad("an event lies after the end");
    if (trace_hash(trace_, end, *reason) != *hash) return bad("the events do not have the hash that closes them");
    attempt_.last_tick = end;
    attempt_.closing = Closing{end, *reason, std::move(trace_), std::string(*hash)};
    return base::Done{};
  }

  Attempt& attempt_;
  std::string_view where_;
  base::Tick now_ = 0;
  NamedTrace trace_;
  bool trace_open_ = false;
};

base::Error changed(std::string_view where, Seal seal) {
  const std::string what =
      seal == Seal::Missing ? "this line does not end with its hash: it was changed, cut, or is no line of an attempt"
                            : "this line, or one before it, was changed: its hash is not that of its bytes";
  return {"changed", std::string(where), what, "take the file as the program wrote it; the lines before are unharmed"};
}

}  // namespace

base::Result<Attempt> read_attempt(std::string_view bytes, std::string_view name) {
  Attempt attempt;
  attempt.last_hash = std::string(chain_start());
  LineReader lines(attempt);
  JsonReader json;
  std::size_t at = 0;
  while (at < bytes.size()) {
    const std::string where =
        std::string(name) + ":" + base::text_from_int(static_cast<std::int64_t>(attempt.lines + 1));
    const std::size_t stop = bytes.find('\n', at);
    if (stop == std::string_view::npos) {
      if (attempt.closing)
        return base::Error{"changed", where, "bytes after the line that closes the attempt",
                           "take the file as the program wrote it"};
      if (attempt.lines == 0) break;
      attempt.torn_bytes = bytes.size() - at;
      return attempt;
    }
    const std::string_view line = bytes.substr(at, stop - at);
    const Link link = link_of(attempt.last_hash, line);
    if (link.seal != Seal::Right) {
      if (attempt.lines == 0) break;
      return changed(where, link.seal);
    }
    const auto view = json.read(line, where);
    if (!view) return view.error();
    const auto taken = lines.take(*view, where);
    if (!taken) return taken.error();
    attempt.last_hash = std::string(link.hash);
    ++attempt.lines;
    at = stop + 1;
    attempt.good_bytes = at;
  }
  if (attempt.lines > 0) return attempt;
  return base::Error{"not-an-attempt", std::string(name) + ":1",
                     bytes.empty() ? "the file is empty" : "the first line is not the sealed first line of an attempt",
                     "name a file that `run` wrote"};
}

base::Result<Attempt> load_attempt(const std::string& path) {
  const auto bytes = load_bytes(path, kLargestAttempt);
  if (!bytes) return bytes.error();
  return read_attempt(*bytes, path);
}

std::string torn_words(const Attempt& attempt) {
  if (attempt.torn_bytes == 0) return {};
  return "the last line had been torn off while it was written; its " +
         base::text_from_int(static_cast<std::int64_t>(attempt.torn_bytes)) +
         " bytes (at most a quarter of a second) are left out, everything before is whole";
}

}  // namespace proofstand::record
