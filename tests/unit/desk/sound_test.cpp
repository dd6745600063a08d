// Danger: a hand hears what did not happen, or misses the one click that would have told it to stop.
#include <algorithm>
#include <cstdlib>
#include <map>

#include "sim/desk/sound/hearing.h"
#include "sim/desk/sound/waves.h"
#include "sim/record/attempt_reader.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

using desk::Heard;
using desk::Sound;

struct HeardJob {
  std::map<Sound, int> counts;
  int clicked_events = 0;
  int cracked_events = 0;
};

// works the reference script, then goes through its actions again with an ear at the bench
HeardJob hear_the_reference() {
  const scenario::DrawnScenario drawn = worn_front_rotor(1);
  const ScriptedAttempt worked = work_attempt(drawn, reference_script());
  REQUIRE(worked.closed);
  const auto attempt = record::read_attempt(*worked.bytes, "memory");
  REQUIRE(attempt.has_value());
  bench::Bench bench(drawn.setup);
  desk::Hearing hearing;
  HeardJob result;
  const auto listen_to = [&](base::Tick tick) {
    // quiet stretches may be crossed in one stride
    while (bench.tick() < tick) {
      const base::Tick left = tick - bench.tick();
      bench.advance_to(bench.tick() + std::min<base::Tick>(left, left > 2400 ? left : 12));
      for (const Heard& heard : hearing.listen(bench)) ++result.counts[heard.sound];
    }
  };
  for (const event::Action& action : attempt.value().actions) {
    listen_to(action.tick);
    bench.apply(action);
  }
  for (const event::Record& record : bench.events()) {
    const std::string& name = bench.vocabulary().kinds[record.kind].name;
    result.clicked_events += name == "clicked" ? 1 : 0;
    result.cracked_events += name == "cracked" ? 1 : 0;
  }
  return result;
}

}  // namespace

TEST_CASE("sound: each click and each breaking loose is heard once, and nothing slips in a good job") {
  HeardJob job = hear_the_reference();
  CHECK(job.clicked_events >= 12);
  CHECK(job.counts[Sound::Click] == job.clicked_events);
  CHECK(job.counts[Sound::Crack] >= 6);
  CHECK(job.counts[Sound::Scrape] == 0);
  CHECK(job.counts[Sound::Grating] == 0);
  CHECK(job.counts[Sound::Drip] > 0);
  CHECK(job.counts[Sound::Hum] > 0);  // new bolts have a patch
}

TEST_CASE("sound: every sound is short, audible, and begins and ends in silence") {
  for (const Sound sound : desk::all_sounds()) {
    INFO(desk::caption_of(sound));
    const std::vector<std::int16_t> wave = desk::make_wave(sound);
    REQUIRE(wave.size() > 400);
    CHECK(static_cast<double>(wave.size()) < 0.6 * desk::kWaveRate_hz);
    CHECK(std::abs(wave.front()) < 400);
    CHECK(std::abs(wave.back()) < 400);
    const auto loudest = std::max_element(wave.begin(), wave.end());
    CHECK(*loudest > 2000);
    CHECK(wave == desk::make_wave(sound));
  }
}

TEST_CASE("sound: captions tell sounds apart and say nothing of their meaning") {
  std::map<std::string, int> seen;
  for (const Sound sound : desk::all_sounds()) ++seen[std::string(desk::caption_of(sound))];
  CHECK(seen.size() == desk::all_sounds().size());
  for (const auto& [words, count] : seen) {
    CHECK(count == 1);
    CHECK(words.find("bolt") == std::string::npos);
  }
}

}  // namespace proofstand::testing
