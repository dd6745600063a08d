#include "sim/cli/moment.h"

#include <cmath>
#include <utility>

#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/cli/talk.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/files.h"
#include "sim/record/marking.h"

namespace proofstand::cli {
namespace {

constexpr double kLongest_s = 24.0 * 3600.0;

std::optional<double> seconds_of(std::string_view words) {
  if (words.find(':') == std::string_view::npos) {
    if (const auto number = base::double_from_text(words, true)) return number;
    const auto quantity = base::parse_quantity_as(words, base::Dimension::Time);
    return quantity ? std::optional<double>(*quantity) : std::nullopt;
  }
  double sum_s = 0.0;
  int parts = 0;
  for (std::string_view rest = words; parts < 3; ++parts) {
    const std::size_t colon = rest.find(':');
    const auto part = base::double_from_text(rest.substr(0, colon), true);
    const bool last = colon == std::string_view::npos;
    if (!part || *part < 0.0 || (parts > 0 && *part >= 60.0) || (!last && *part != std::floor(*part)))
      return std::nullopt;
    sum_s = sum_s * 60.0 + *part;
    if (last) return sum_s;
    rest.remove_prefix(colon + 1);
  }
  return std::nullopt;
}

base::Result<scenario::DrawnScenario> draw_scenario(const std::string& path, std::int64_t seed) {
  const scenario::Loaded loaded = scenario::load_scenario(path);
  if (!loaded.usable) {
    say_faults(loaded.faults);
    for (const base::Error& fault : loaded.faults.list) {
      if (fault.code.rfind("file-", 0) == 0) return fault;
    }
    return base::Error{"scenario", path, "the scenario has faults", "mend what is listed above"};
  }
  return scenario::draw(*loaded.file, static_cast<std::uint64_t>(seed));
}

}  // namespace

base::Result<base::Tick> tick_from_words(std::string_view words) {
  const auto seconds = seconds_of(words);
  if (!seconds || !(*seconds >= 0.0) || *seconds > kLongest_s)
    return base::Error{"time", std::string(words), "this is no time of an attempt", "write it as 83.5 or as 1:23.5"};
  return static_cast<base::Tick>(std::floor(*seconds * static_cast<double>(base::kTicksPerSecond) + 0.5));
}

std::string clock_words(base::Tick tick) {
  const std::int64_t tenths = tick * 10 / base::kTicksPerSecond;
  const std::string seconds = base::text_from_int(tenths / 10 % 60);
  return base::text_from_int(tenths / 600) + ":" + (seconds.size() < 2 ? "0" : "") + seconds + "." +
         base::text_from_int(tenths % 10);
}

Moments::Moments(scenario::DrawnScenario scenario, std::vector<event::Action> actions, bool is_attempt, base::Tick end)
    : scenario_(std::move(scenario)),
      replayer_(std::make_unique<record::Replayer>(scenario_.setup, std::move(actions))),
      is_attempt_(is_attempt),
      end_(end) {}

base::Result<Moments> Moments::open(const std::string& path, std::int64_t seed) {
  const auto bytes = record::load_bytes(path, record::kLargestAttempt);
  if (!bytes) return bytes.error();
  if (bytes->empty() || bytes->front() != '{') {
    auto scenario = draw_scenario(path, seed);
    if (!scenario) return scenario.error();
    return Moments(std::move(*scenario), {}, false, 0);
  }
  auto attempt = record::read_attempt(*bytes, path);
  if (!attempt) return attempt.error();
  if (attempt->torn_bytes > 0) say("proofstand: " + record::torn_words(*attempt));
  if (attempt->head.bench != bench::kBenchVersion) {
    return base::Error{"other-bench", path,
                       "it was recorded with bench version " + base::text_from_int(attempt->head.bench) +
                           ", this program has " + base::text_from_int(bench::kBenchVersion),
                       "look at it with the program that recorded it; marking it works all the same"};
  }
  auto scenario = record::scenario_of(*attempt);
  if (!scenario) return scenario.error();
  const base::Tick end = attempt->closing ? attempt->closing->end : attempt->last_tick;
  return Moments(std::move(*scenario), std::move(attempt->actions), true, end);
}

base::Result<const bench::Bench*> Moments::at(base::Tick tick) {
  if (tick > end_) {
    const std::string what = is_attempt_ ? "the attempt ends at " + clock_words(end_)
                                         : std::string("a scenario has no time yet; only an attempt has");
    return base::Error{"time", clock_words(tick), what,
                       is_attempt_ ? "ask for a moment before that" : "leave the time out, or give an attempt"};
  }
  return &replayer_->at(tick);
}

}  // namespace proofstand::cli
