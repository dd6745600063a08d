// Danger: a shipped exercise that its own check would refuse, that draws something else than it says, or that marks in
// one language what it cannot explain in the other.
#include <filesystem>
#include <set>
#include <string>

#include "sim/rules/compile.h"
#include "sim/rules/engine.h"
#include "sim/rules/text_fill.h"
#include "sim/scenario/scenario.h"
#include "tests/support/catch.h"

namespace {

using namespace proofstand;

std::string shipped(const std::string& name) {
  return std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt/" + name + ".toml";
}

scenario::Loaded loaded(const std::string& name) {
  auto file = scenario::load_scenario(shipped(name));
  for (const base::Error& fault : file.faults.list) UNSCOPED_INFO(fault.sentence());
  REQUIRE(file.usable);
  return file;
}

const char* const kNames[] = {"worn-front-rotor", "mixed-tray-front", "ruined-or-bent"};

}  // namespace

TEST_CASE("every shipped exercise passes its check without a word, and every variant can be judged") {
  for (const char* name : kNames) {
    CAPTURE(name);
    const auto file = loaded(name);
    CHECK(file.faults.list.empty());
    const std::size_t count = scenario::variant_count(*file.file);
    CHECK(count >= 5);
    CHECK(count <= 24);
    for (std::size_t variant = 0; variant < count; ++variant) {
      const auto drawn = scenario::draw_variant(*file.file, variant, 7);
      REQUIRE(drawn.has_value());
      CHECK(drawn->variant == variant);
      CHECK(drawn->setup.seed == 7);
      CHECK(rules::compile_rules(scenario::compile_input(*drawn)).program.has_value());
    }
  }
}

TEST_CASE("seeds from nought on reach every variant, and the same seed draws the same bytes") {
  const auto file = loaded("worn-front-rotor");
  std::set<std::size_t> reached;
  std::set<std::string> words;
  for (std::uint64_t seed = 0; seed < scenario::variant_count(*file.file); ++seed) {
    const auto drawn = scenario::draw(*file.file, seed);
    REQUIRE(drawn.has_value());
    reached.insert(drawn->variant);
    std::string all;
    for (const std::string& word : drawn->drawn) all += word + "; ";
    words.insert(all);
    CHECK(drawn->bench_text == scenario::draw(*file.file, seed)->bench_text);
    CHECK(drawn->rules_text == scenario::draw(*file.file, seed)->rules_text);
  }
  CHECK(reached.size() == scenario::variant_count(*file.file));
  CHECK(words.size() == reached.size());
  const auto large = scenario::draw(*file.file, 0xFFFFFFFFFFFFFFFFull);
  REQUIRE(large.has_value());
  CHECK(large->setup.seed == 0xFFFFFFFFFFFFFFFFull);
}

TEST_CASE("what an attempt embeds makes the same exercise again, without any file") {
  for (const char* name : kNames) {
    const auto file = loaded(name);
    const auto drawn = scenario::draw(*file.file, 3);
    const auto again = scenario::read_resolved(drawn->bench_text, drawn->rules_text);
    REQUIRE(again.has_value());
    CHECK(again->id == name);
    CHECK(again->drawn == drawn->drawn);
    CHECK(again->variants == scenario::variant_count(*file.file));
    CHECK(again->title == drawn->title);
    CHECK(again->cautions == drawn->cautions);
    CHECK(again->setup.things.size() == drawn->setup.things.size());
    CHECK(again->setup.hub.bosses.size() == 6);
    CHECK(again->rules.size() == drawn->rules.size());
    CHECK(again->marks.points_milli == drawn->marks.points_milli);
    CHECK(again->time_limit == drawn->time_limit);
    // one changed figure in the text is one changed figure on the bench
    const std::string figure = "value = \"5.0 N·m\"";
    std::string edited = drawn->bench_text;
    const std::size_t at = edited.find(figure);
    REQUIRE(at != std::string::npos);
    edited.replace(at, figure.size(), "value = \"4.8 N·m\"");
    const auto changed = scenario::read_resolved(edited, drawn->rules_text);
    REQUIRE(changed.has_value());
    CHECK(changed->setup.sheet_torque_nm == 4.8);
  }
}

TEST_CASE("the worn front rotor is what its file says") {
  const auto file = loaded("worn-front-rotor");
  const auto first = scenario::draw(*file.file, 0);
  const bench::BenchSetup& setup = first->setup;
  const bench::RotorPart& old_rotor = setup.rotors[setup.things[event::index_of(setup.fitted_rotor)].part];
  CHECK(old_rotor.stamp_m == Approx(0.0015));
  CHECK(old_rotor.thickness_new_m - old_rotor.worn_m < old_rotor.stamp_m);
  CHECK(setup.fitted_bolts.size() == 6);
  CHECK(setup.sheet_torque_nm == 5.0);
  CHECK(setup.hub.bosses[2].dirt_m == Approx(15e-6));
  CHECK_FALSE(setup.wheel_in_bike);
  CHECK(setup.tools.size() == 3);
  CHECK(setup.tools[2].start_setting_nm == 8.0);
  CHECK(setup.card.size() == 6);
  CHECK(setup.card_words.size() == 6);
  CHECK(scenario::reference_script(*file.file) == "worn-front-rotor");
  // the second option of the first group is the plain bolts with a sheet that allows locker
  const auto plain = scenario::draw(*file.file, 1);
  CHECK(first->drawn[0] == "bolts = with a patch");
  CHECK(plain->drawn[0] == "bolts = plain, with threadlocker beside them");
  std::size_t patches = 0;
  for (const bench::BoltPart& bolt : plain->setup.bolts) patches += bolt.patch ? 1 : 0;
  CHECK(patches == 6);  // the old ones
  CHECK(plain->sheet[2].value.value_si == Approx(40e-9));
  CHECK(first->sheet[2].value.value_si == 0.0);
}

TEST_CASE("every rule says in each language what it is, why the trade asks for it, and why it was lost") {
  for (const char* name : kNames) {
    const auto file = loaded(name);
    const auto drawn = scenario::draw(*file.file, 0);
    const auto program = rules::compile_rules(scenario::compile_input(*drawn)).program;
    REQUIRE(program.has_value());
    REQUIRE(drawn->rule_lines.size() == drawn->rules.size());
    // a run in which nothing was done loses whatever can be lost
    event::Trace nothing;
    nothing.end_tick = 240;
    const rules::Report report = rules::judge(*program, nothing);
    CHECK(report.overall != rules::Overall::Passed);
    for (std::size_t i = 0; i < drawn->rules.size(); ++i) {
      CAPTURE(name, drawn->rules[i].id.text);
      for (const char* language : {"en", "de"}) {
        CHECK_FALSE(scenario::text_in(drawn->rule_lines[i].title, language).empty());
        CHECK(scenario::text_in(drawn->rule_lines[i].why, language).size() > 20);
      }
      if (report.rules[i].verdict == rules::Verdict::Fail) {
        const std::string english = rules::fill_text(*program, report, static_cast<rules::RuleIndex>(i), "en");
        const std::string german = rules::fill_text(*program, report, static_cast<rules::RuleIndex>(i), "de");
        CHECK(english.size() > 10);
        CHECK(english.find('{') == std::string::npos);
        CHECK(german != english);
      }
    }
  }
}

TEST_CASE("about eight rules are critical, and most of them look at what was left") {
  const auto file = loaded("worn-front-rotor");
  const auto drawn = scenario::draw(*file.file, 0);
  std::size_t critical = 0;
  std::size_t closing = 0;
  for (const rules::RuleSpec& rule : drawn->rules) {
    if (rule.severity.text != "critical") continue;
    ++critical;
    closing += rule.x.event.text.rfind("left_", 0) == 0 ? 1 : 0;
  }
  CHECK(critical >= 6);
  CHECK(critical <= 9);
  CHECK(closing + 1 == critical);  // all but the hand at a turning rotor
}

TEST_CASE("stages outside of the job are named and carry no points") {
  const auto file = loaded("worn-front-rotor");
  const auto drawn = scenario::draw(*file.file, 0);
  REQUIRE(drawn->stages.size() == 11);
  CHECK(drawn->stages[0].name == "take-in");
  CHECK_FALSE(drawn->stages[0].in_this_job);
  for (const rules::RuleSpec& rule : drawn->rules) CHECK(rule.competence.text != "take-in");
}
