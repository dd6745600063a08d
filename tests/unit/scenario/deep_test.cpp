// Danger: rules that cannot all be kept fail every trainee, and no single one of them looks wrong.
#include <algorithm>
#include <string>

#include "sim/rules/conflict_search.h"
#include "sim/scenario/scenario.h"
#include "tests/support/catch.h"

namespace {

using namespace proofstand;

rules::SearchResult searched(const std::string& path) {
  const auto loaded = scenario::load_scenario(std::string(PROOFSTAND_ROOT) + path);
  for (const base::Error& fault : loaded.faults.list) UNSCOPED_INFO(fault.sentence());
  REQUIRE(loaded.usable);
  const auto drawn = scenario::draw(*loaded.file, 0);
  REQUIRE(drawn.has_value());
  const auto program = rules::compile_rules(scenario::compile_input(*drawn)).program;
  REQUIRE(program.has_value());
  return rules::search_conflicts(*program);
}

}  // namespace

TEST_CASE("three rules that cannot all be kept are found, and only these three are named") {
  const auto found = searched("/tests/unit/scenario/faulty/deep/E23.toml");
  REQUIRE(found.conflicts.size() == 1);
  CHECK(found.conflicts[0].size() == 3);
  const bool told = std::any_of(found.faults.list.begin(), found.faults.list.end(),
                                [](const base::Error& e) { return e.code == "E23" && !e.instead.empty(); });
  CHECK(told);
}

TEST_CASE("the shipped exercise that only looks and decides can be worked to full marks") {
  CHECK(searched("/scenarios/six-bolt/ruined-or-bent.toml").conflicts.empty());
}
