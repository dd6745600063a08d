// How long the rules take per record, beside a hand-written loop and general engines, on the workload whose numbers of
// violations are known. Numbers that do not agree end the program with an error: a fast wrong engine is none.
#include "tests/speed/rules_bench.h"

#include <benchmark/benchmark.h>

#include <cstdio>
#include <map>
#include <string>

#include "sim/rules/engine.h"
#include "tests/support/rules_toy.h"
#include "tests/support/rules_workload.h"

namespace proofstand::speed {
namespace {

// known from several engines, by number of records
const std::map<std::size_t, std::int64_t>& known_sums() {
  static const std::map<std::size_t, std::int64_t> sums = {
      {1000, 254}, {8000, 1771}, {100'000, 21027}, {1'000'000, 212199}};
  return sums;
}

bool all_agree = true;
std::map<std::string, double> best_ns;

const Records& records_of(std::size_t n) {
  static std::map<std::size_t, Records> kept;
  if (kept.count(n) == 0) kept[n] = testing::workload_records(n);
  return kept[n];
}

void tell(benchmark::State& state, const std::string& name, std::size_t n, std::int64_t lost, std::int64_t times) {
  // a sum that nobody else has counted is compared with the loop's
  const auto known = known_sums().find(n);
  const std::int64_t expected = (known != known_sums().end() ? known->second : loop_twenty(records_of(n))) * times;
  if (lost != expected) {
    all_agree = false;
    state.SkipWithError("another number of violations");
  }
  state.counters["violations"] = static_cast<double>(lost);
  state.counters["ns_per_event"] = benchmark::Counter(
      static_cast<double>(n) * 1e-9, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(n));
  (void)name;
}

void engine(benchmark::State& state, int times) {
  const auto n = static_cast<std::size_t>(state.range(0));
  const Records& records = records_of(n);
  const rules::RuleProgram program = testing::compiled(testing::workload_twenty(times));
  std::int64_t lost = 0;
  for (auto _ : state) {
    rules::EngineState run = rules::start(program);
    for (const event::Record& record : records) rules::feed(program, run, record);
    lost = testing::violations(rules::finish(program, run, run.tick, event::EndReason::Finished));
  }
  tell(state, "engine", n, lost, times);
}

void twenty_rules(benchmark::State& state) { engine(state, 1); }
void two_hundred_rules(benchmark::State& state) { engine(state, 10); }

void hand_written_loop(benchmark::State& state) {
  const auto n = static_cast<std::size_t>(state.range(0));
  const Records& records = records_of(n);
  std::int64_t lost = 0;
  for (auto _ : state) benchmark::DoNotOptimize(lost = loop_twenty(records));
  tell(state, "loop", n, lost, 1);
}

#if defined(STAND_LUA)
void lua_closures(benchmark::State& state) {
  const auto n = static_cast<std::size_t>(state.range(0));
  LuaTwenty lua;
  std::int64_t lost = 0;
  for (auto _ : state) lost = lua.take(records_of(n));
  tell(state, "lua", n, lost, 1);
}
#endif

#if defined(STAND_CLIPS)
void clips_facts(benchmark::State& state) {
  const auto n = static_cast<std::size_t>(state.range(0));
  ClipsTwenty clips;
  std::int64_t lost = 0;
  for (auto _ : state) lost = clips.take(records_of(n));
  tell(state, "clips", n, lost, 1);
}
#endif

// remembers the best time of each engine for the last line
class Reporter : public benchmark::ConsoleReporter {
 public:
  void ReportRuns(const std::vector<Run>& runs) override {
    for (const Run& run : runs) {
      const auto counter = run.counters.find("ns_per_event");
      if (counter == run.counters.end()) continue;
      const std::string name = run.benchmark_name();
      double& best = best_ns.try_emplace(name, counter->second.value).first->second;
      if (counter->second.value < best) best = counter->second.value;
    }
    ConsoleReporter::ReportRuns(runs);
  }
};

BENCHMARK(hand_written_loop)->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(twenty_rules)->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(two_hundred_rules)->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);
#if defined(STAND_LUA)
BENCHMARK(lua_closures)->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);
#endif
#if defined(STAND_CLIPS)
BENCHMARK(clips_facts)->Arg(10'000)->Arg(100'000)->Unit(benchmark::kMillisecond);
#endif

}  // namespace
}  // namespace proofstand::speed

int main(int argc, char** argv) {
  using namespace proofstand::speed;
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 2;
  Reporter reporter;
  benchmark::RunSpecifiedBenchmarks(&reporter);
#if !defined(STAND_LUA)
  std::printf("left out: Lua 5.4 is not installed\n");
#endif
#if !defined(STAND_CLIPS)
  std::printf("left out: CLIPS 6.30 is not installed\n");
#endif
  const auto ns = [](const char* name) { return best_ns.count(name) > 0 ? best_ns[name] : 0.0; };
  std::printf("rules: %.1f ns/event with 20 rules, %.1f with 200 (loop %.1f); counts %s\n", ns("twenty_rules/1000000"),
              ns("two_hundred_rules/1000000"), ns("hand_written_loop/1000000"), all_agree ? "agree" : "DIFFER");
  return all_agree ? 0 : 1;
}
