// Danger: a variant that changes nothing, or something else than its words say, is marked as if it were the one
// announced.
#include <string>
#include <vector>

#include "sim/scenario/toml_text.h"
#include "sim/scenario/variants.h"
#include "tests/support/catch.h"

namespace {

using namespace proofstand;
using namespace proofstand::scenario;

struct Case {
  std::vector<std::string> names = {"test.toml"};
  base::Faults faults;
  Node root;
  explicit Case(const std::string& text) : root(*parse_toml(text, 0)) {}
  [[nodiscard]] Reading reading() { return {&names, &faults}; }
};

Override change(const std::string& path, const std::string& value) {
  return {path, Spot{0, 1, 1}, text_node(value, Spot{0, 1, 2})};
}

}  // namespace

TEST_CASE("an option changes the entry that it names, and makes tables by number on the way") {
  Case test("hub.bosses = 6\n[rotor.new]\nstamp = \"1.5 mm\"\n");
  apply_override(test.reading(), test.root, change("rotor.new.stamp", "1.6 mm"));
  apply_override(test.reading(), test.root, change("hub.boss.3.dirt", "0.05 mm"));
  CHECK(test.faults.list.empty());
  CHECK(test.root.find("rotor")->find("new")->find("stamp")->text == "1.6 mm");
  CHECK(test.root.find("hub")->find("boss")->find("3")->find("dirt")->text == "0.05 mm");
}

TEST_CASE("an option that names nothing is a fault") {
  for (const char* path : {"rotor.neww.stamp", "rule.x.points", "marks.total", "rotor", "hub.bosses.deep", ""}) {
    Case test("hub.bosses = 6\n[rotor.new]\nstamp = \"1.5 mm\"\n");
    apply_override(test.reading(), test.root, change(path, "1"));
    CAPTURE(path);
    REQUIRE(test.faults.list.size() == 1);
    CHECK(test.faults.list[0].code == "S07");
  }
}

TEST_CASE("variants are counted and each is drawn once") {
  Case test(
      "[[variant]]\nname = \"a\"\noption = [{ is = \"1\" }, { is = \"2\" }]\n"
      "[[variant]]\nname = \"b\"\noption = [{ is = \"1\" }, { is = \"2\" }, { is = \"3\" }]\n");
  const auto groups = read_variants(test.reading(), *test.root.find("variant"));
  CHECK(test.faults.list.empty());
  CHECK(count_variants(groups) == 6);
  CHECK(count_variants({}) == 1);
  std::vector<std::vector<std::size_t>> all;
  for (std::size_t i = 0; i < 6; ++i) {
    const auto chosen = options_of(groups, i);
    for (const auto& before : all) CHECK(before != chosen);
    all.push_back(chosen);
  }
}
