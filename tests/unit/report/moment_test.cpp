// Danger: a finding that jumps to the wrong moment or lights up the wrong bolt accuses the wrong deed.
#include "sim/report/moment.h"

#include "sim/record/attempt_reader.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

record::Marking marked(const std::string& script) {
  const ScriptedAttempt work = work_attempt(worn_front_rotor(1), script);
  REQUIRE_FALSE(work.error);
  auto attempt = record::read_attempt(*work.bytes, "test");
  REQUIRE(attempt.has_value());
  auto marking = record::mark_attempt(std::move(*attempt));
  REQUIRE(marking.has_value());
  return std::move(*marking);
}

const report::FindingMoments& of(const std::vector<report::FindingMoments>& all, const record::Marking& marking,
                                 std::string_view rule) {
  const auto index = marking.program.find_rule(rule);
  REQUIRE(index);
  return all[static_cast<std::size_t>(*index)];
}

}  // namespace

TEST_CASE("a finding leads to its record, its place and its plot") {
  const record::Marking marking = marked("crack bolt 3 with the key, at 62 % depth, tilted 0°\nhand over\n");
  const auto all = report::compute_moments(marking);
  REQUIRE(all.size() == marking.program.rules.size());
  const report::FindingMoments& home = of(all, marking, "tool-home-loosening");
  REQUIRE(home.moments.size() == 1);
  const event::Record& record = marking.trace.records[home.moments.front().position];
  CHECK(marking.program.vocabulary.kinds[record.kind].name == "cracked");
  CHECK(home.moments.front().tick == record.tick);
  REQUIRE(home.bolt);
  CHECK(*home.bolt == 2);
  REQUIRE(home.places.size() == 1);
  CHECK(home.places.front().place == event::PlaceKind::BoltRecess);
  CHECK(home.plot == report::PlotKind::TorqueAngle);
}

TEST_CASE("each family of findings has its own plot; an order that never came still has its places") {
  const record::Marking marking = marked("touch the outer track of the new rotor with the left hand\nhand over\n");
  const auto all = report::compute_moments(marking);
  const report::FindingMoments& touched = of(all, marking, "hands-off-track");
  CHECK(touched.plot == report::PlotKind::FilmMap);
  REQUIRE(touched.printed_face);
  CHECK(*touched.printed_face);
  CHECK(of(all, marking, "order-and-passes").plot == report::PlotKind::Order);
  CHECK(of(all, marking, "loosening-order").plot == report::PlotKind::Order);
  CHECK(of(all, marking, "every-bolt-clicked").moments.empty());
  CHECK(of(all, marking, "every-bolt-clicked").places.size() == 6);
  CHECK(of(all, marking, "card-complete").places.size() == 1);
  for (const report::FindingMoments& found : all) CHECK(found.moments.size() <= 8);
}

}  // namespace proofstand::testing
