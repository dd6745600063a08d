// Danger: guidance that knows one job by heart: another number of bolts, another order or another exercise, and it
// sends a trainee wrong; or it names one of several equal choices, and gives the choice away.
#include "sim/report/guidance.h"

#include <algorithm>

#include "sim/record/marking.h"
#include "sim/report/guidance_wants.h"
#include "sim/report/live_standing.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

using report::Guidance;

// a job worked so far by a script, and what the rules make of it
struct Midway {
  scenario::DrawnScenario scenario;
  rules::RuleProgram program;
  bench::Bench bench;
  rules::EngineState engine;

  explicit Midway(scenario::DrawnScenario drawn, const std::string& script = "")
      : scenario(std::move(drawn)),
        program(std::move(*record::program_of(scenario))),
        bench(scenario.setup),
        engine(rules::start(program)) {
    if (!script.empty()) work(script);
    for (const event::Record& record : bench.events()) rules::feed(program, engine, record);
    rules::advance(program, engine, bench.tick());
  }

  void work(const std::string& script) {
    const hand::ReadScript read = hand::read_hand_script(script, "test", scenario.setup);
    REQUIRE(read.script != nullptr);
    hand::HandSkill skill = hand::journeyman();
    skill.pull_again_1 = 0.0;
    hand::ModelledHand worker(read.script, skill, 1);
    auto step = hand::ModelledHand::Step::Going;
    while (step == hand::ModelledHand::Step::Going) {
      step = worker.step(bench, [this](const event::Action& action) { bench.apply(action); });
    }
    REQUIRE(step == hand::ModelledHand::Step::Finished);
  }

  [[nodiscard]] Guidance guidance(std::string_view language = "en") const {
    return report::compute_guidance(program, engine, scenario, bench, language);
  }
};

bool speaks_of(const Guidance& guidance, const std::string& words) {
  return guidance.next && !guidance.next->lines.empty() &&
         guidance.next->lines.front().find(words) != std::string::npos;
}

const std::string kDecided =
    "measure the thickness of the old rotor with the micrometer at 72 mm, at 30°\n"
    "measure the thickness of the old rotor with the micrometer at 72 mm, at 90°\n"
    "measure the thickness of the old rotor with the micrometer at 72 mm, at 210°\n"
    "measure the thickness of the old rotor with the micrometer at 72 mm, at 270°\n"
    "write the least reading of the old rotor as old thickness\n"
    "write the stamp of the old rotor as stamp\n"
    "write what the old rotor calls for as decision\n";

}  // namespace

TEST_CASE("the first advice of a job: its requirement, why, how, and a place to look") {
  const Midway job(worn_front_rotor(1));
  const Guidance guidance = job.guidance();
  REQUIRE(guidance.next);
  CHECK(guidance.title == "Old rotor measured in the worn track, at four places");
  CHECK_FALSE(guidance.why.empty());
  CHECK(guidance.stage == "diagnose");
  CHECK(guidance.next->items.size() == 4);
  CHECK_FALSE(guidance.next->targets.empty());
  CHECK(guidance.late.empty());
}

TEST_CASE("bolts that serve equally well are framed alike; after the first one only its opposite") {
  const Midway fresh(worn_front_rotor(1), kDecided);
  REQUIRE(speaks_of(fresh.guidance(), "crack bolt 1"));
  CHECK(fresh.guidance().next->targets.size() == 6);
  CHECK(fresh.guidance().say_owed == "Owed alike: bolt 2, bolt 3, bolt 4, bolt 5, bolt 6.");
  const Midway begun(worn_front_rotor(1), kDecided + "crack bolt 2 with the key\n");
  const Guidance next = begun.guidance();
  // two below the first by the crosswise reading, the opposite by both
  CHECK(speaks_of(next, "crack bolt"));
  for (const report::GuideTarget& target : next.next->targets) {
    CHECK(event::index_of(target.bolt) != 0);
    CHECK(event::index_of(target.bolt) != 1);
    CHECK(event::index_of(target.bolt) != 2);
  }
}

TEST_CASE("a bolt run out too early is said to be too late, with what it costs, and the rest goes on") {
  const Midway job(worn_front_rotor(1), kDecided + "crack bolt 1 with the key\nrun bolt 1 out with the driver\n");
  const Guidance guidance = job.guidance();
  REQUIRE(guidance.late.size() == 1);
  CHECK(guidance.late.front().title == "Every bolt cracked before any is run out");
  CHECK(guidance.late.front().lost_milli > 0);
  CHECK(guidance.late.front().since_tick > 0);
  CHECK(guidance.late.front().since_tick <= job.bench.tick());
  CHECK(guidance.next);
}

TEST_CASE("what was decided to stay on is not taken off") {
  std::string kept = kDecided;
  kept.replace(kept.find("write what"), std::string::npos, "write decision: keep\n");
  const Midway job(worn_front_rotor(1), kept);
  // the monitor still asks for the right word; nothing is taken apart on a wrong one
  CHECK(speaks_of(job.guidance(), "decision"));
}

TEST_CASE("the advice's sentence is there in every language, and its lines are the same in all") {
  const Midway job(worn_front_rotor(1), kDecided);
  const Guidance en = job.guidance("en"), de = job.guidance("de");
  REQUIRE(en.next);
  REQUIRE(de.next);
  CHECK(en.next->say != de.next->say);
  CHECK(en.title != de.title);
  CHECK(en.next->lines == de.next->lines);
}

TEST_CASE("after hand-over nothing is owed") {
  const Midway job(worn_front_rotor(1), "hand over\n");
  CHECK(job.guidance().over);
  CHECK_FALSE(job.guidance().next);
}

TEST_CASE("fewer bolts or more: the rules are asked, no number is known by heart") {
  for (const std::size_t bolts : {4U, 5U}) {
    scenario::DrawnScenario drawn = worn_front_rotor(1);
    drawn.setup.hub.bosses.resize(bolts);
    drawn.setup.fitted_bolts.resize(bolts);
    for (bench::RotorPart& rotor : drawn.setup.rotors) rotor.holes = static_cast<int>(bolts);
    for (rules::RuleSpec& rule : drawn.rules) {
      if (rule.pattern.text == "opposite" && bolts % 2 != 0) rule.pattern.text = "any";
      if (rule.range.text == "6" || rule.range.text == "6..") rule.range.text[0] = static_cast<char>('0' + bolts);
    }
    const Midway job(drawn, kDecided);
    const Guidance guidance = job.guidance();
    REQUIRE(speaks_of(guidance, "crack bolt 1"));
    CHECK(guidance.next->items.size() == bolts);
  }
}

TEST_CASE("values that a condition allows are found by trying, whatever its form") {
  const Midway job(worn_front_rotor(1));
  const auto rule = job.program.find_rule("both-faces-wiped");
  REQUIRE(rule);
  const rules::Selector& wiped = job.program.rules[static_cast<std::size_t>(*rule)].x;
  CHECK(report::possible_values(job.program, wiped, "part") == std::vector<std::size_t>{0, 1});
  CHECK(report::possible_values(job.program, wiped, "solvent") == std::vector<std::size_t>{1});
  CHECK(report::possible_values(job.program, wiped, "rotor").size() == 1);
  CHECK(report::possible_values(job.program, wiped, "no such field").empty());
}

TEST_CASE("how a run stands: every point in one list, losses with their moment, what is owed by name") {
  const Midway job(worn_front_rotor(1), kDecided + "crack bolt 1 with the key\nrun bolt 1 out with the driver\n");
  const report::LiveStanding standing = report::compute_live_standing(job.program, job.engine, job.scenario, "en");
  std::int64_t declared = 0, listed = 0;
  for (const rules::Rule& rule : job.program.rules) declared += rule.points_milli;
  for (const auto* list : {&standing.met, &standing.broken, &standing.open}) {
    for (const report::LiveLine& line : *list) listed += line.points_milli;
  }
  CHECK(listed == declared);
  CHECK(standing.points_milli == declared);
  REQUIRE(standing.broken.size() == 1);
  CHECK(standing.lost_milli == standing.broken.front().lost_milli);
  CHECK(standing.broken.front().since_tick > 0);
  const auto threads = std::find_if(standing.open.begin(), standing.open.end(), [](const report::LiveLine& line) {
    return line.title == "Old locker picked out of the threads";
  });
  REQUIRE(threads != standing.open.end());
  CHECK(threads->say == "still owed: bolt 1, bolt 2, bolt 3, bolt 4, bolt 5, bolt 6; worth 3 points");
}

}  // namespace proofstand::testing
