// Danger: an attempt that was cut, damaged or changed must be recognised, told with its line, and lose nothing else.
#include "sim/record/attempt_reader.h"

#include "sim/base/random.h"
#include "sim/event/job_events.h"
#include "sim/record/chain.h"
#include "sim/record/recorder.h"
#include "tests/support/catch.h"
#include "tests/support/memory_sink.h"

namespace proofstand::record {
namespace {

using event::HandId;

AttemptHead some_head(Way way) {
  AttemptHead head;
  head.program = "0.1.0";
  head.bench = 1;
  head.scenario = "test";
  head.seed = 7;
  head.way = way;
  head.who = "A. Trainee";
  head.aids = {"steady"};
  head.bench_text = "wheel = \"stand\"\n";
  head.rules_text = "# none\n";
  return head;
}

event::Vocabulary small_vocabulary() {
  event::JobItems items;
  items.bolts = 6;
  items.things = {"key", "wheel"};
  items.rotors = {"old rotor"};
  return event::job_vocabulary(items);
}

std::vector<event::Record> small_trace(const event::Vocabulary& vocabulary) {
  std::vector<event::Record> records;
  for (int i = 0; i < 100; ++i) {
    records.push_back(
        event::make_record(vocabulary, "cracked", 10 + i,
                           {{"bolt", static_cast<double>(i % 6)}, {"peak_torque", 4.0 + 0.1 * i}, {"tool", 0.0}}));
  }
  return records;
}

// a small attempt; `closed`: with hand-over and trace
std::string small_attempt(bool closed, Way way = Way::Practice) {
  const auto bytes = std::make_shared<std::string>();
  auto recorder = Recorder::begin(std::make_unique<MemorySink>(bytes), some_head(way));
  REQUIRE(recorder);
  for (int i = 0; i < 300; ++i) {
    REQUIRE(recorder->action(event::make_aim_turn(i * 4, HandId::Right, 1000 * i)));
    if (i % 60 == 59) REQUIRE(recorder->state(i * 4, base::digest_of("state")));
  }
  const event::Vocabulary vocabulary = small_vocabulary();
  if (closed) {
    REQUIRE(recorder->action(event::make_hand_over(1300)));
    REQUIRE(recorder->close(vocabulary, small_trace(vocabulary), 1300, event::EndReason::Finished));
  } else {
    REQUIRE(recorder->flush());
  }
  return *bytes;
}

std::size_t lines_of(const std::string& bytes) {
  std::size_t lines = 0;
  for (const char c : bytes) lines += c == '\n' ? 1 : 0;
  return lines;
}

}  // namespace

TEST_CASE("an attempt reads back whole") {
  const std::string bytes = small_attempt(true);
  const auto attempt = read_attempt(bytes, "a.attempt");
  REQUIRE(attempt);
  CHECK(attempt->head.who == "A. Trainee");
  CHECK(attempt->head.seed == 7);
  CHECK(attempt->head.aids == std::vector<std::string>{"steady"});
  CHECK(attempt->head.bench_text == "wheel = \"stand\"\n");
  CHECK(attempt->actions.size() == 301);
  CHECK(attempt->actions[299].numbers[1] == 299000);
  CHECK(attempt->states.size() == 5);
  CHECK(attempt->states[0].actions_before == 60);
  REQUIRE(attempt->closing);
  const event::Vocabulary vocabulary = small_vocabulary();
  const auto records = in_vocabulary(attempt->closing->trace, vocabulary);
  REQUIRE(records);
  CHECK(trace_hash(vocabulary, *records, 1300, event::EndReason::Finished) == attempt->closing->trace_hash);
  CHECK(attempt->torn_bytes == 0);
  CHECK(attempt->lines == lines_of(bytes));
}

TEST_CASE("batches never span more than a quarter of a second") {
  const std::string bytes = small_attempt(true);
  JsonReader json;
  std::size_t batches = 0;
  std::size_t at = 0;
  while (at < bytes.size()) {
    const std::size_t stop = bytes.find('\n', at);
    const auto line = json.read(std::string_view(bytes).substr(at, stop - at), "test");
    REQUIRE(line);
    at = stop + 1;
    const auto rows = line->list("do");
    if (!rows) continue;
    ++batches;
    const auto actions = *line->whole("t");
    base::Tick last = actions;
    for (const JsonView row : rows->children()) last += row.first().node().whole;
    CHECK(last - actions <= kBatchTicks);
  }
  CHECK(batches >= 20);
}

TEST_CASE("cut at any byte, an open attempt is recovered up to its last whole line") {
  const std::string bytes = small_attempt(false);
  const std::size_t first_line = bytes.find('\n') + 1;
  for (std::size_t cut = 0; cut < bytes.size(); cut += cut < first_line + 300 ? 1 : 37) {
    const auto attempt = read_attempt(std::string_view(bytes).substr(0, cut), "a.attempt");
    INFO("cut at " << cut);
    if (cut < first_line) {
      CHECK_FALSE(attempt);
      continue;
    }
    REQUIRE(attempt);
    CHECK(attempt->good_bytes + attempt->torn_bytes == cut);
    CHECK(attempt->good_bytes == bytes.rfind('\n', cut - 1) + 1);
    CHECK(torn_words(*attempt).empty() == (attempt->torn_bytes == 0));
  }
}

TEST_CASE("any changed byte is reported with its line") {
  const std::string bytes = small_attempt(true);
  std::size_t line = 1;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    if (bytes[i] == '\n') {
      ++line;
      continue;
    }
    // every byte of the short lines' ends and a sample of the rest
    if (i % 11 != 0) continue;
    std::string changed = bytes;
    changed[i] = changed[i] == '1' ? '2' : '1';
    const auto attempt = read_attempt(changed, "a.attempt");
    INFO("byte " << i << " of line " << line);
    REQUIRE_FALSE(attempt);
    CHECK(attempt.error().where == "a.attempt:" + std::to_string(line));
  }
}

TEST_CASE("lines taken out, doubled or put in another order are reported") {
  const std::string bytes = small_attempt(true);
  std::vector<std::string> lines;
  std::size_t at = 0;
  while (at < bytes.size()) {
    const std::size_t stop = bytes.find('\n', at) + 1;
    lines.push_back(bytes.substr(at, stop - at));
    at = stop;
  }
  const auto joined = [&](const std::vector<std::size_t>& order) {
    std::string out;
    for (const std::size_t i : order) out += lines[i];
    return out;
  };
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < lines.size(); ++i) all.push_back(i);
  REQUIRE(read_attempt(joined(all), "a"));
  auto without = all;
  without.erase(without.begin() + 3);
  CHECK(read_attempt(joined(without), "a").error().where == "a:4");
  auto doubled = all;
  doubled.insert(doubled.begin() + 3, 3);
  CHECK(read_attempt(joined(doubled), "a").error().where == "a:5");
  auto swapped = all;
  std::swap(swapped[4], swapped[5]);
  CHECK(read_attempt(joined(swapped), "a").error().where == "a:5");
  CHECK(read_attempt(bytes + lines[2], "a").error().where == "a:" + std::to_string(lines.size() + 1));
  CHECK_FALSE(read_attempt(bytes + "x", "a"));
}

TEST_CASE("an upper-case seal is not the seal") {
  std::string bytes = small_attempt(false);
  for (std::size_t i = bytes.size() - 67; i < bytes.size(); ++i) {
    if (bytes[i] >= 'a' && bytes[i] <= 'f') bytes[i] = static_cast<char>(bytes[i] - 'a' + 'A');
  }
  CHECK_FALSE(read_attempt(bytes, "a"));
}

TEST_CASE("an exam refuses to be taken back, in writing and in reading") {
  const auto bytes = std::make_shared<std::string>();
  auto exam = Recorder::begin(std::make_unique<MemorySink>(bytes), some_head(Way::Exam));
  REQUIRE(exam);
  REQUIRE(exam->action(event::make_plain(100, event::ActionKind::Slack, HandId::Left)));
  CHECK(exam->rewind(100, 0).error().code == "exam-sealed");
  REQUIRE(exam->flush());
  // somebody seals such a line all the same
  const auto attempt = read_attempt(*bytes, "a");
  REQUIRE(attempt);
  const std::string forged = *bytes + sealed(attempt->last_hash, R"({"t":100,"rewind":0})") + "\n";
  CHECK(read_attempt(forged, "a").error().where == "a:3");
}

TEST_CASE("marks follow the last branch of a practice run") {
  const auto bytes = std::make_shared<std::string>();
  auto practice = Recorder::begin(std::make_unique<MemorySink>(bytes), some_head(Way::Practice));
  REQUIRE(practice);
  for (int i = 0; i < 10; ++i) REQUIRE(practice->action(event::make_aim_turn(i * 24, HandId::Left, i)));
  REQUIRE(practice->state(216, base::digest_of("late")));
  REQUIRE(practice->rewind(216, 50));
  REQUIRE(practice->action(event::make_aim_turn(60, HandId::Left, 77)));
  REQUIRE(practice->flush());
  const auto attempt = read_attempt(*bytes, "a");
  REQUIRE(attempt);
  REQUIRE(attempt->actions.size() == 4);
  CHECK(attempt->actions[2].tick == 48);
  CHECK(attempt->actions[3].numbers[1] == 77);
  CHECK(attempt->states.empty());
  REQUIRE(attempt->rewinds.size() == 1);
  CHECK(attempt->rewinds[0].from == 216);
  CHECK(attempt->last_tick == 60);
}

TEST_CASE("a scenario that was exchanged inside a resealed first line is recognised") {
  AttemptHead head = some_head(Way::Practice);
  const auto bytes = std::make_shared<std::string>();
  REQUIRE(Recorder::begin(std::make_unique<MemorySink>(bytes), head));
  std::string object = bytes->substr(0, bytes->rfind(",\"hash\"")) + "}";
  const std::size_t at = object.find("# none");
  REQUIRE(at != std::string::npos);
  object.replace(at, 6, "# some");
  const auto attempt = read_attempt(sealed(chain_start(), object) + "\n", "a");
  REQUIRE_FALSE(attempt);
  CHECK(attempt.error().code == "bad-head");
}

TEST_CASE("files that are no attempt at all give a sentence") {
  for (const std::string& text :
       {std::string(), std::string("\n"), std::string("[scenario]\nname = 1\n"), std::string(5000, '\0'),
        std::string("{\"proofstand\":\"attempt\"}\n"), std::string(1 << 20, '[') + "\n"}) {
    const auto attempt = read_attempt(text, "a");
    REQUIRE_FALSE(attempt);
    CHECK(attempt.error().code == "not-an-attempt");
    CHECK_FALSE(attempt.error().instead.empty());
  }
}

TEST_CASE("fifteen minutes made with a mouse at 60 samples a second stay under 2 MB") {
  const auto bytes = std::make_shared<std::string>();
  auto recorder = Recorder::begin(std::make_unique<MemorySink>(bytes), some_head(Way::Practice));
  REQUIRE(recorder);
  // a hand that strokes faces, the richest of the aims, with a state hash every second
  for (std::int64_t i = 0; i < 15 * 60 * 60; ++i) {
    const std::int64_t jitter =
        static_cast<std::int64_t>(base::draw_below({1, "mouse", 0, static_cast<std::uint64_t>(i)}, 4001)) - 2000;
    REQUIRE(recorder->action(
        event::make_aim_face(i * 4, HandId::Right, 72000 + jitter, 30000 * (i % 200) + jitter, 12000 + jitter)));
    if (i % 60 == 59) REQUIRE(recorder->state(i * 4, base::digest_of("s")));
  }
  REQUIRE(recorder->flush());
  WARN("15 minutes of mouse: " << bytes->size() / 1000 << " kB");
  CHECK(bytes->size() < 2'000'000);
  CHECK(read_attempt(*bytes, "a")->actions.size() == 54'000);
}

}  // namespace proofstand::record
