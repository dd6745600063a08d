// Danger: an attempt that was cut off goes on with both hands let go; a hand that cannot find its place again would
// leave a job half done, or do a step twice and lose the trainee points for a crash of the program.
#include <string>

#include "sim/bench/senses.h"
#include "sim/hand/hand_script.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

using namespace proofstand;
using event::ActionKind;
using event::HandId;

namespace {

constexpr std::string_view kJob =
    "pick recess 3 clean with the pick\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    crack bolt N with the key\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    run bolt N out with the driver\n"
    "take the old rotor off by its edge\n"
    "lay the old rotor down\n"
    "put the new rotor on, printed side out, by its edge\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    start new bolt N in hole N, turning back\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    run bolt N in with the driver\n"
    "hold the new rotor against the bolts by its arms\n"
    "for each N of 1, 4:\n"
    "    snug bolt N with the key, to 1.5 N·m\n"
    "let go with the other hand\n"
    "set the click driver to 5.0 N·m\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    tighten bolt N until it clicks, with the click driver, at 10°/s\n"
    "wet the clean rag with 20 drops of alcohol\n"
    "wipe the outer track of the new rotor with the clean rag, 2 times\n"
    "measure the thickness of the new rotor with the micrometer at 72 mm, at 45°\n"
    "read the runout of the new rotor with the dial gauge\n"
    "move the wheel to the bike\n"
    "spin the wheel at 1 turn/s\n"
    "hand over\n";

hand::HandSkill steady() {
  hand::HandSkill skill = hand::journeyman();
  skill.pull_again_1 = 0.0;
  return skill;
}

// what happens to both hands when a program that was cut off goes on
void let_both_go(bench::Bench& bench) {
  for (int i = 0; i < 240; ++i) {
    bool busy = false;
    for (const HandId hand : {HandId::Left, HandId::Right}) {
      busy = busy || bench::sense_hand(bench, hand).stage == bench::HandStage::Busy;
    }
    if (!busy) break;
    bench.advance_to(bench.tick() + 1);
  }
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    if (bench::sense_hand(bench, hand).stage != bench::HandStage::At) continue;
    bench.apply(event::make_plain(bench.tick(), ActionKind::Slack, hand));
    bench.apply(event::make_plain(bench.tick(), ActionKind::Leave, hand));
  }
}

struct CutOff {
  bool finished = false;
  std::string trouble;
  std::size_t tight = 0;
  double worst_clearance_m = 0.0;
};

// cuts the job off after so many steps, and again after as many more, `cuts` times in all
CutOff work_with_cuts(std::size_t steps_between, std::size_t cuts) {
  const bench::BenchSetup setup = testing::six_bolt().setup;
  bench::Bench bench(setup);
  const auto read = hand::read_hand_script(kJob, "job.hand", setup);
  hand::ModelledHand worker(read.script, steady(), 1);
  const hand::ModelledHand::Sink sink = [&bench](const event::Action& action) { bench.apply(action); };
  hand::ModelledHand::Step step = hand::ModelledHand::Step::Going;
  for (std::size_t n = 1; step == hand::ModelledHand::Step::Going && n < 200000; ++n) {
    step = worker.step(bench, sink);
    if (n % steps_between != 0 || n / steps_between > cuts) continue;
    let_both_go(bench);
    worker.begin_instruction_again();
  }
  CutOff end;
  end.finished = step == hand::ModelledHand::Step::Finished && bench.over();
  end.trouble = worker.trouble().sentence();
  const auto left = bench.vocabulary().find_kind("left_bolt");
  for (const event::Record& record : bench.events()) {
    if (record.kind != *left) continue;
    const auto torque = event::Vocabulary::find_field(bench.vocabulary().kinds[*left], "last_torque");
    if (record.values[*torque] > 4.4 && record.values[*torque] < 5.8) ++end.tight;
  }
  return end;
}

}  // namespace

TEST_CASE("cut off once at any moment, the job is finished all the same") {
  for (std::size_t at = 7; at < 2800; at += 61) {
    INFO("cut off after step " << at);
    const CutOff end = work_with_cuts(at, 1);
    INFO(end.trouble);
    REQUIRE(end.finished);
    CHECK(end.tight == 6);
  }
}

TEST_CASE("cut off again and again, the job is finished all the same") {
  for (const std::size_t every : {43u, 97u, 211u}) {
    INFO("cut off every " << every << " steps");
    const CutOff end = work_with_cuts(every, 12);
    INFO(end.trouble);
    REQUIRE(end.finished);
    CHECK(end.tight == 6);
  }
}
