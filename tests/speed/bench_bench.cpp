// How fast a whole attempt is worked, recorded, read and marked, and what it costs in memory, as it grows tenfold.
// Goals: 15 minutes at 2,000 times real time or more on one core; marking within 20 ms; static check within 50 ms; peak
// memory under 64 MiB.
#include <benchmark/benchmark.h>
#include <sys/resource.h>

#include <cstdio>

#include "sim/record/attempt_reader.h"
#include "sim/record/marking.h"
#include "sim/record/recorder.h"
#include "sim/scenario/scenario.h"
#include "tests/support/scripted_attempt.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {
namespace {

using event::Action;
using event::ActionKind;
using event::HandId;

constexpr base::Tick kSample = 4;  // a mouse at 60 samples a second
constexpr base::Tick kStretch = 10 * base::kTicksPerSecond;
constexpr base::Tick kQuarterHour = 15 * 60 * base::kTicksPerSecond;

// a hand that never rests: ten seconds of wiping, ten of pulling at a bolt, and so on
std::vector<Action> restless_hand(base::Tick length) {
  const SixBolt job = six_bolt();
  std::vector<Action> actions;
  for (base::Tick start = 0; start < length; start += kStretch) {
    const bool wiping = (start / kStretch) % 2 == 0;
    const HandId hand = HandId::Right;
    const event::ThingId thing = wiping ? job.clean_rag : job.key;
    actions.push_back(event::make_take(start + 1, hand, thing, wiping ? event::Grip::Flat : event::Grip::Handle));
    actions.push_back(event::make_bring(start + 150, hand, job.old_rotor,
                                        wiping ? event::PlaceKind::TrackOuter : event::PlaceKind::BoltRecess,
                                        wiping ? event::kNoBolt : event::BoltId{1}, wiping ? 72000 : 0, 0, 0, 0));
    if (!wiping) actions.push_back(event::make_aim_along(start + 320, hand, 40000));
    for (base::Tick t = 340; t < kStretch - 240; t += kSample) {
      const std::int64_t phase = t % 240;
      if (wiping) {
        actions.push_back(event::make_aim_face(start + t, hand, 70000 + 40 * phase, 26000 * t / 4, 12000));
      } else {
        actions.push_back(event::make_aim_turn(start + t, hand, 2500 * (phase - 120)));
      }
    }
    actions.push_back(event::make_plain(start + kStretch - 230, ActionKind::Slack, hand));
    actions.push_back(event::make_plain(start + kStretch - 220, ActionKind::Leave, hand));
    actions.push_back(event::make_plain(start + kStretch - 100, ActionKind::PutBack, hand));
  }
  return actions;
}

void report_pace(benchmark::State& state, base::Tick ticks) {
  state.counters["x_real_time"] =
      benchmark::Counter(base::seconds(ticks), benchmark::Counter::kIsIterationInvariantRate);
}

// range: minutes. Every tick has a hand in motion: the worst case.
void work_restless(benchmark::State& state) {
  const base::Tick length = state.range(0) * 60 * base::kTicksPerSecond;
  const std::vector<Action> actions = restless_hand(length);
  const bench::BenchSetup setup = six_bolt().setup;
  for (auto _ : state) {
    bench::Bench bench(setup);
    for (const Action& action : actions) bench.apply(action);
    bench.advance_to(length);
    benchmark::DoNotOptimize(bench.events().size());
  }
  report_pace(state, length);
}

// the same, recorded with state hashes as the window does it
void record_restless(benchmark::State& state) {
  const base::Tick length = state.range(0) * 60 * base::kTicksPerSecond;
  const std::vector<Action> actions = restless_hand(length);
  const bench::BenchSetup setup = six_bolt().setup;
  std::size_t bytes_written = 0;
  for (auto _ : state) {
    const auto bytes = std::make_shared<std::string>();
    auto recorder = record::Recorder::begin(std::make_unique<record::MemorySink>(bytes), {});
    bench::Bench bench(setup);
    base::Tick kept = 0;
    for (const Action& action : actions) {
      bench.apply(action);
      if (!recorder->action(action)) state.SkipWithError("recording failed");
      if (bench.tick() < kept + record::kStateTicks) continue;
      kept = bench.tick();
      if (!recorder->state(kept, bench.state_hash())) state.SkipWithError("recording failed");
    }
    bytes_written = bytes->size();
  }
  report_pace(state, length);
  state.counters["file_kB"] = static_cast<double>(bytes_written) / 1000.0;
}

// the reference job by the modelled hand, rules watching, written as it goes
void work_reference(benchmark::State& state) {
  const scenario::DrawnScenario scenario = worn_front_rotor(0);
  const std::string script = reference_script();
  base::Tick ticks = 0;
  for (auto _ : state) {
    const ScriptedAttempt worked = work_attempt(scenario, script);
    state.PauseTiming();
    const auto attempt = record::read_attempt(*worked.bytes, "reference");
    ticks = attempt ? attempt->last_tick : 0;
    state.ResumeTiming();
  }
  report_pace(state, ticks);
  state.counters["minutes"] = base::seconds(ticks) / 60.0;
}

// from the file's bytes to the report
void mark_reference(benchmark::State& state) {
  const ScriptedAttempt worked = work_attempt(worn_front_rotor(0), reference_script());
  double events = 0.0;
  for (auto _ : state) {
    auto attempt = record::read_attempt(*worked.bytes, "reference");
    const auto marking = record::mark_attempt(std::move(*attempt));
    if (!marking) {
      state.SkipWithError("marking failed");
      break;
    }
    events = static_cast<double>(marking->trace.records.size());
  }
  state.counters["events"] = events;
}

void check_scenario(benchmark::State& state) {
  const std::string path = std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt/worn-front-rotor.toml";
  for (auto _ : state) benchmark::DoNotOptimize(scenario::load_scenario(path).usable);
}

long peak_kib() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return usage.ru_maxrss;
}

}  // namespace
}  // namespace proofstand::testing

int main(int argc, char** argv) {
  using namespace proofstand::testing;
  for (const long minutes : {15L, 150L}) {
    benchmark::RegisterBenchmark("work/minutes", work_restless)->Arg(minutes)->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("record/minutes", record_restless)->Arg(minutes)->Unit(benchmark::kMillisecond);
  }
  benchmark::RegisterBenchmark("work/reference", work_reference)->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("mark/reference", mark_reference)->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("check/static", check_scenario)->Unit(benchmark::kMillisecond);
  // memory before anything ten times as long has been worked, and after
  {
    const std::vector<proofstand::event::Action> actions = restless_hand(kQuarterHour);
    proofstand::bench::Bench bench(six_bolt().setup);
    for (const proofstand::event::Action& action : actions) bench.apply(action);
    const ScriptedAttempt worked = work_attempt(worn_front_rotor(0), reference_script());
    auto attempt = proofstand::record::read_attempt(*worked.bytes, "reference");
    if (attempt) benchmark::DoNotOptimize(proofstand::record::mark_attempt(std::move(*attempt)).has_value());
  }
  const long quarter_hour_kib = peak_kib();
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  std::printf("peak memory: %.1f MiB for 15 minutes, %.1f MiB with 150 minutes\n",
              static_cast<double>(quarter_hour_kib) / 1024.0, static_cast<double>(peak_kib()) / 1024.0);
  return 0;
}
