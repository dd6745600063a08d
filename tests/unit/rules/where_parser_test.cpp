// Danger: a condition means something else than it says, or a slip of the pen is taken for a meaning.
#include "sim/rules/where_parser.h"

#include "tests/support/catch.h"
#include "tests/support/rules_toy.h"

namespace proofstand::testing {
namespace {

const std::vector<rules::SheetFigure>& sheet() {
  static const std::vector<rules::SheetFigure> figures = {{"bolt_torque", {5.0, base::Dimension::Torque}, 0.4},
                                                          {"cure", {60.0, base::Dimension::Time}, std::nullopt}};
  return figures;
}

struct World {
  event::Vocabulary vocabulary = toy_vocabulary();
  rules::WhereContext context{vocabulary, sheet(), *vocabulary.find_kind("T")};
};

event::Record record_with(double item, double value, double hand, double torque_nm) {
  event::Record record;
  record.kind = 'T' - 'A';
  record.values = {item, value, hand, torque_nm, 0.0};
  return record;
}

std::string truth(const std::string& where, const event::Record& record, bool phi) {
  World world;
  const auto made = rules::parse_condition(world.context, at(where));
  if (!made.has_value()) return made.error().sentence();
  std::vector<rules::Fluent> fluents(world.vocabulary.kinds.size());
  fluents[26] = {phi ? 1.0 : 0.0, true};
  switch (truth_of(made.value(), &record, fluents)) {
    case rules::Truth::Yes:
      return "yes";
    case rules::Truth::No:
      return "no";
    case rules::Truth::Unknown:
      return "unknown";
  }
  return "";
}

std::string fault(const std::string& where) {
  World world;
  const auto made = rules::parse_condition(world.context, {where, {"toy.toml", 7, 10}});
  return made.has_value() ? "none" : made.error().code + " " + made.error().where;
}

}  // namespace

TEST_CASE("conditions join, compare and calculate as written") {
  const event::Record r = record_with(3, 40, 0, 5.0);
  CHECK(truth("torque >= 5 N·m and hand == bare and not phi", r, false) == "yes");
  CHECK(truth("torque >= 5 N·m and hand == bare and not phi", r, true) == "no");
  CHECK(truth("hand == gloved or value < 50 and phi", r, true) == "yes");
  CHECK(truth("(hand == gloved or value < 50) and phi", r, false) == "no");
  CHECK(truth("not phi == yes", r, false) == "yes");
  CHECK(truth("hand in [gloved, tool]", r, false) == "no");
  CHECK(truth("hand in [gloved, bare]", r, false) == "yes");
  CHECK(truth("item == 'bolt 4'", r, false) == "yes");
  CHECK(truth("item == 4", r, false) == "yes");
  CHECK(truth("item in [1, 2, 3]", r, false) == "no");
  CHECK(truth("torque in 4.6 N·m..5.4 N·m", r, false) == "yes");
  CHECK(truth("torque in sheet.bolt_torque", r, false) == "yes");
  CHECK(truth("torque in sheet.bolt_torque +- 10 mN·m", record_with(0, 0, 0, 5.02), false) != "yes");
  CHECK(truth("torque > 0.5 * sheet.bolt_torque", r, false) == "yes");
  CHECK(truth("torque / sheet.bolt_torque == 1", r, false) == "yes");
  CHECK(truth("value in ..40", r, false) == "yes");
  CHECK(truth("value in 40..", r, false) == "yes");
  CHECK(truth("value - 10 <= 30 and -value < 0", r, false) == "yes");
}

TEST_CASE("bounds are closed and exact") {
  CHECK(truth("torque in 4.6 N·m..5.4 N·m", record_with(0, 0, 0, 4.6), false) == "yes");
  CHECK(truth("torque in 4.6 N·m..5.4 N·m", record_with(0, 0, 0, 4.5999999), false) == "no");
}

TEST_CASE("what is not known is neither true nor false, unless the rest decides") {
  event::Record r = record_with(3, 40, 0, 5.0);
  r.unknown = 1u << 1;
  CHECK(truth("value > 3", r, false) == "unknown");
  CHECK(truth("value > 3 and phi", r, false) == "no");
  CHECK(truth("value > 3 or not phi", r, false) == "yes");
  CHECK(truth("not value > 3", r, false) == "unknown");
  CHECK(truth("known(value)", r, false) == "no");
  CHECK(truth("known(value) and value > 3", r, false) == "no");
}

TEST_CASE("a slip in a condition is refused at its own column") {
  CHECK(fault("torqe >= 5 N·m") == "E05 toy.toml:7:10");
  CHECK(fault("torque >= 5") == "E08 toy.toml:7:17");
  CHECK(fault("torque >= 30 s") == "E08 toy.toml:7:17");
  CHECK(fault("torque >= 5 furlong") == "E08 toy.toml:7:20");
  CHECK(fault("torque >= 400 N·m") == "E10 toy.toml:7:20");
  CHECK(fault("hand == bear") == "E07 toy.toml:7:18");
  CHECK(fault("hand < bare") == "E07 toy.toml:7:15");
  CHECK(fault("hand = bare") == "E07 toy.toml:7:15");
  CHECK(fault("torque in 5 N·m..4 N·m") == "E09 toy.toml:7:20");
  CHECK(fault("torque in sheet.bolt_torqe") == "E06 toy.toml:7:20");
  CHECK(fault("torque") == "E07 toy.toml:7:10");
  CHECK(fault("(phi") == "E07 toy.toml:7:14");
  CHECK(fault("phi phi") == "E07 toy.toml:7:14");
  CHECK(fault("item == side") == "E07 toy.toml:7:15");
  CHECK(fault("'torque") == "E07 toy.toml:7:10");
  CHECK(fault("phi and") == "E07 toy.toml:7:17");
  CHECK(fault("hand in []") != "none");
  CHECK(fault("5 N·m + 3 s > torque") == "E08 toy.toml:7:16");
  CHECK(fault("phi $ phi") == "E07 toy.toml:7:14");
  CHECK(fault(std::string(200, '(') + "phi" + std::string(200, ')')).substr(0, 3) == "E07");
}

TEST_CASE("the fault of a misspelt name offers the nearest right one") {
  World world;
  const auto made = rules::parse_condition(world.context, at("torqe >= 5 N·m"));
  REQUIRE(!made.has_value());
  CHECK(made.error().sentence().find("'torque'") != std::string::npos);
}

TEST_CASE("columns count letters, not bytes") {
  // the dot before the fault is two bytes
  CHECK(fault("torque > 3 N·m and hand == bear") == "E07 toy.toml:7:37");
}

}  // namespace proofstand::testing
