// Danger: an action that reads back as another one makes every replay a lie, quietly.
#include "sim/record/action_codec.h"

#include <limits>

#include "tests/support/catch.h"

namespace proofstand::record {
namespace {

using event::Action;
using event::HandId;

base::Result<std::vector<Action>> read_back(const std::string& object) {
  static JsonReader reader;
  const auto line = reader.read(object, "test");
  REQUIRE(line);
  return read_actions(line->whole("t").value_or(-1), *line->list("do"), "test");
}

void require_same(const std::vector<Action>& a, const std::vector<Action>& b) {
  REQUIRE(a.size() == b.size());
  for (std::size_t i = 0; i < a.size(); ++i) {
    CHECK(a[i].tick == b[i].tick);
    CHECK(a[i].kind == b[i].kind);
    CHECK(a[i].numbers == b[i].numbers);
    CHECK(a[i].text == b[i].text);
  }
}

}  // namespace

TEST_CASE("every action of the list reads back as it was") {
  std::vector<Action> actions;
  base::Tick tick = 100;
  for (const event::ActionSpec& spec : event::action_table()) {
    Action action;
    action.kind = spec.kind;
    action.tick = tick += 3;
    for (std::size_t i = 0; i < spec.fields.size(); ++i) {
      action.numbers[i] = static_cast<std::int64_t>(i * i + 1) * (i % 2 == 0 ? 1 : -1) * 12345;
    }
    if (spec.has_text) action.text = "1,78 mm \"gemessen\" \\ \n 6 \xC2\xB5m";
    actions.push_back(action);
  }
  const auto back = read_back(actions_object(actions));
  REQUIRE(back);
  require_same(actions, *back);
}

TEST_CASE("aims of two hands in turn read back as they were, and repeated ones are short") {
  std::vector<Action> actions;
  for (int i = 0; i < 30; ++i) {
    const HandId hand = i % 7 == 3 ? HandId::Left : HandId::Right;
    actions.push_back(event::make_aim_face(i * 4, hand, 70000 - 13 * i, 1000000 + 2500 * i, 4000 + i));
    if (i % 10 == 0) actions.push_back(event::make_plain(i * 4, event::ActionKind::Slack, HandId::Left));
  }
  const std::string object = actions_object(actions);
  const auto back = read_back(object);
  REQUIRE(back);
  require_same(actions, *back);
  CHECK(object.find("[4,-13,2500,1]") != std::string::npos);
}

TEST_CASE("rows that no program of ours writes are refused, not believed") {
  const std::vector<std::string> faulty = {
      R"({"t":0,"do":[]})",
      R"({"t":0,"do":[[0]]})",
      R"({"t":0,"do":[7]})",
      R"({"t":0,"do":[[0,"fly",1]]})",
      R"({"t":0,"do":[[0,"slack"]]})",
      R"({"t":0,"do":[[0,"slack",1,2]]})",
      R"({"t":0,"do":[[-1,"slack",1]]})",
      R"({"t":0,"do":[[0,"slack","left"]]})",
      R"({"t":0,"do":[[0,"write",1]]})",
      R"({"t":0,"do":[[0,5]]})",
      R"({"t":0,"do":[[0,"slack",1],[0,5]]})",
      R"({"t":0,"do":[[0,"aim_turn",1,5],[4,5,6]]})",
      R"({"t":0,"do":[[0,"aim_turn",1,9223372036854775807]]})",
      R"({"t":0,"do":[[0,"aim_turn",1,5],[4,9223372036854775807]]})",
      R"({"t":0,"do":[[9223372036854775807,"slack",1]]})",
      R"({"t":0,"do":[[20000000,"slack",1],[20000000,"slack",1]]})",
      R"({"t":0,"do":[[0,"aim_turn",1,1.5]]})",
  };
  for (const std::string& line : faulty) {
    INFO(line);
    CHECK_FALSE(read_back(line));
  }
}

}  // namespace proofstand::record
