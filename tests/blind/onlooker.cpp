#include "tests/blind/onlooker.h"

#include "sim/base/assert.h"
#include "sim/base/number_text.h"
#include "sim/bench/senses.h"
#include "sim/desk/route/place_list.h"
#include "sim/record/marking.h"
#include "sim/report/guidance.h"
#include "sim/rules/text_fill.h"

namespace proofstand::testing {
namespace {

void add(std::string& text, const scenario::Texts& texts) {
  for (const auto& [language, words] : texts) text += language + ": " + words + "\n";
}

std::string number(double value) { return base::text_from_double(value) + " "; }

rules::RuleProgram program_of(const scenario::DrawnScenario& scenario) {
  auto program = record::program_of(scenario);
  STAND_ASSERT(program.has_value());
  return std::move(*program);
}

std::shared_ptr<const hand::HandScript> script_of(const std::string& script, const bench::BenchSetup& setup) {
  const hand::ReadScript read = hand::read_hand_script(script, "script", setup);
  STAND_ASSERT(read.script != nullptr);
  return read.script;
}

hand::HandSkill steady_hand() {
  hand::HandSkill skill = hand::journeyman();
  skill.pull_again_1 = 0.0;
  return skill;
}

// what is left at hand-over is nobody's percept
bool is_closing(const event::Kind& kind) { return kind.name.rfind("left_", 0) == 0; }

void add_event(std::string& text, const event::Vocabulary& vocabulary, const event::Record& record) {
  const event::Kind& kind = vocabulary.kinds[record.kind];
  if (is_closing(kind)) return;
  text += base::text_from_int(record.tick) + " " + kind.name;
  for (std::size_t f = 0; f < kind.fields.size(); ++f) {
    if (kind.fields[f].standing != event::Standing::Felt) continue;
    text += " " + kind.fields[f].name + "=" + (record.knows(f) ? number(record.values[f]) : "?");
  }
  text += "\n";
}

void add_hand(std::string& text, const bench::Bench& bench, event::HandId hand) {
  const bench::HandSense sense = bench::sense_hand(bench, hand);
  text += number(static_cast<double>(sense.stage)) + number(static_cast<double>(event::index_of(sense.holding))) +
          number(sense.turn_rad) + number(sense.torque_nm) + number(sense.fastener_rad) + number(sense.press_n) +
          number(static_cast<double>(sense.clicks)) + number(static_cast<double>(sense.slips)) + number(sense.home) +
          number(sense.caught) + number(sense.dropped) + number(sense.dead_stop) + number(sense.bears);
  const bench::HandState& state = bench.state().hands[static_cast<std::size_t>(hand)];
  if (state.stage != bench::HandStage::At) return;
  // what a lamp, a pick or fingers are at is looked at
  if (state.at_bolt != event::kNoBolt) {
    const bench::BoltSight sight = bench::see_bolt(bench, state.at_bolt);
    text += number(sight.head_gap_m) + number(sight.askew) + number(sight.recess_ruined) + number(sight.recess_dirty) +
            number(sight.boss_dirty);
  }
  if (sense.holding != event::kNoThing) text += number(bench::see_scale_m(bench, sense.holding));
}

}  // namespace

std::string papers_text(const scenario::DrawnScenario& scenario) {
  std::string text = scenario.id + "\n";
  add(text, scenario.title);
  add(text, scenario.task);
  add(text, scenario.sheet_note);
  add(text, scenario.cautions);
  for (const scenario::SheetLine& line : scenario.sheet_lines) {
    text += line.name + " " + number(line.value.value_si) + number(line.tolerance_si) + "\n";
    add(text, line.label);
  }
  for (const scenario::CardLine& line : scenario.card_lines) {
    text += line.name + "\n";
    add(text, line.label);
  }
  for (const scenario::Stage& stage : scenario.stages) text += stage.name + (stage.in_this_job ? " yes\n" : " no\n");
  for (const bench::Thing& thing : scenario.setup.things) text += thing.name + "\n";
  return text + number(static_cast<double>(scenario.time_limit));
}

Onlooker::Onlooker(const scenario::DrawnScenario& scenario, const scene::Workshop& workshop, const std::string& script,
                   std::uint64_t hand_seed)
    : scenario_(scenario),
      workshop_(workshop),
      program_(program_of(scenario)),
      engine_(rules::start(program_)),
      bench_(scenario.setup),
      hand_(script_of(script, scenario.setup), steady_hand(), hand_seed) {}

bool Onlooker::step() {
  const auto step = hand_.step(bench_, [this](const event::Action& action) { bench_.apply(action); });
  for (; watched_ < bench_.events().size(); ++watched_) rules::feed(program_, engine_, bench_.events()[watched_]);
  rules::advance(program_, engine_, bench_.tick());
  return step == hand::ModelledHand::Step::Going && !bench_.over();
}

std::string Onlooker::percepts_text() {
  std::string text = base::text_from_int(bench_.tick()) + "\n";
  for (; told_ < bench_.events().size(); ++told_) add_event(text, bench_.vocabulary(), bench_.events()[told_]);
  add_hand(text, bench_, event::HandId::Left);
  add_hand(text, bench_, event::HandId::Right);
  const event::ThingId dial = bench::first_of(scenario_.setup, bench::ThingKind::DialGauge);
  if (dial != event::kNoThing) text += number(bench::see_dial_sweep_m(bench_, dial));
  return text;
}

std::string Onlooker::places_text() const {
  const scene::Scene scene = workshop_.compute_scene(bench_);
  std::string text;
  for (const char* name : {"workplace", "flange", "tray"}) {
    const auto view = scene::view_named(bench_, scene, name);
    if (!view) continue;
    for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) {
      const desk::route::ListView from{scene, bench_, *view, {1280.0, 720.0}, hand, false, nullptr};
      text += std::string(name) + "\n";
      for (const desk::route::ListedPlace& place : desk::route::list_places(from)) {
        text += std::string(desk::route::words_of(place.group)) + " " + place.words + "\n";
      }
    }
  }
  return text;
}

std::string Onlooker::guidance_text() const {
  std::string text;
  for (const char* language : {"en", "de"}) {
    const report::Guidance guidance = report::compute_guidance(program_, engine_, scenario_, bench_, language);
    text += guidance.title + "\n" + guidance.why + "\n" + guidance.say_owed + "\n" + guidance.say_stuck + "\n";
    for (const std::string& mind : guidance.mind) text += mind + "\n";
    for (const report::GuideLate& late : guidance.late) text += late.title + late.say + "\n";
    if (!guidance.next) continue;
    text += guidance.next->say + "\n";
    for (const std::string& line : guidance.next->lines) text += line + "\n";
    for (const report::GuideTarget& target : guidance.next->targets) {
      text += number(static_cast<double>(event::index_of(target.thing))) + number(static_cast<double>(target.place)) +
              number(static_cast<double>(event::index_of(target.bolt)));
    }
  }
  return text;
}

}  // namespace proofstand::testing
