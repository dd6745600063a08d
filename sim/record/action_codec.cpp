#include "sim/record/action_codec.h"

#include "sim/base/assert.h"
#include "sim/record/attempt.h"

namespace proofstand::record {
namespace {

using event::Action;
using event::ActionKind;

// far beyond every length, angle and force of the bench, and far from where sums overflow
constexpr std::int64_t kMostNumber = std::int64_t{1} << 48;

bool is_aim(ActionKind kind) {
  return kind == ActionKind::AimTurn || kind == ActionKind::AimAlong || kind == ActionKind::AimFace ||
         kind == ActionKind::Tip;
}

bool same_aim(const Action& a, const Action& b) {
  return is_aim(a.kind) && a.kind == b.kind && a.numbers[0] == b.numbers[0];
}

base::Error bad(std::string_view where, const std::string& what) {
  return {"bad-actions", std::string(where), what, "take the file as the program wrote it"};
}

// a row with a name: the numbers must be exactly those of the list of actions
base::Result<Action> read_named(JsonView row, std::string_view where) {
  Action action;
  const event::ActionSpec* spec = nullptr;
  std::size_t at = 0;
  bool text_seen = false;
  for (const JsonView cell : row.children()) {
    const JsonNode& node = cell.node();
    if (at == 1) {
      const auto kind = event::action_from_name(node.text);
      if (!kind) return bad(where, "there is no action \"" + std::string(node.text) + "\"");
      action.kind = *kind;
      spec = &event::spec_of(*kind);
    } else if (at > 1) {
      const std::size_t field = at - 2;
      if (field < spec->fields.size() && node.type == JsonType::Whole) {
        action.numbers[field] = node.whole;
      } else if (field == spec->fields.size() && spec->has_text && node.type == JsonType::Text) {
        action.text = std::string(node.text);
        text_seen = true;
      } else {
        return bad(where, "the numbers of \"" + std::string(spec->name) + "\" are not what it takes");
      }
    }
    ++at;
  }
  if (at != 2 + spec->fields.size() + (spec->has_text ? 1U : 0U) || text_seen != spec->has_text) {
    return bad(where, "\"" + std::string(spec->name) + "\" has too few numbers");
  }
  return action;
}

base::Result<Action> read_again(JsonView row, const Action& last, std::string_view where) {
  if (!is_aim(last.kind)) return bad(where, "a row without a name follows no aim");
  Action action = last;
  const std::size_t numbers = event::spec_of(last.kind).fields.size() - 1;
  if (row.size() != 1 + numbers) return bad(where, "a repeated aim has the wrong number of numbers");
  std::size_t at = 0;
  for (const JsonView cell : row.children()) {
    const JsonNode& node = cell.node();
    if (node.type != JsonType::Whole || node.whole > kMostNumber || node.whole < -kMostNumber) {
      return bad(where, "a repeated aim has a number out of range");
    }
    if (at > 0) action.numbers[at] += node.whole;
    ++at;
  }
  return action;
}

bool in_range(const Action& action) {
  for (const std::int64_t number : action.numbers) {
    if (number > kMostNumber || number < -kMostNumber) return false;
  }
  return true;
}

}  // namespace

std::string actions_object(const std::vector<Action>& actions) {
  STAND_ASSERT(!actions.empty());
  JsonWriter json;
  json.begin_object().member("t", actions.front().tick).key("do").begin_list();
  base::Tick before = actions.front().tick;
  const Action* last_aim = nullptr;
  for (const Action& action : actions) {
    const event::ActionSpec& spec = event::spec_of(action.kind);
    json.begin_list().whole(action.tick - before);
    before = action.tick;
    if (last_aim != nullptr && same_aim(*last_aim, action)) {
      for (std::size_t i = 1; i < spec.fields.size(); ++i) json.whole(action.numbers[i] - last_aim->numbers[i]);
    } else {
      json.text(spec.name);
      for (std::size_t i = 0; i < spec.fields.size(); ++i) json.whole(action.numbers[i]);
      if (spec.has_text) json.text(action.text);
    }
    json.end_list();
    if (is_aim(action.kind)) last_aim = &action;
  }
  json.end_list().end_object();
  return json.text();
}

base::Result<std::vector<Action>> read_actions(base::Tick begin, JsonView rows, std::string_view where) {
  std::vector<Action> actions;
  Action last_aim;
  base::Tick tick = begin;
  for (const JsonView row : rows.children()) {
    if (row.type() != JsonType::List || row.size() < 2 || row.first().type() != JsonType::Whole) {
      return bad(where, "an action is not [ticks, ...]");
    }
    const std::int64_t ticks = row.first().node().whole;
    if (ticks < 0 || ticks > kLongestAttempt) return bad(where, "an action's ticks go back or too far ahead");
    const JsonView second = *(++row.children().begin());
    auto action = second.type() == JsonType::Text ? read_named(row, where) : read_again(row, last_aim, where);
    if (!action) return action.error();
    tick += ticks;
    action->tick = tick;
    if (tick > kLongestAttempt || !in_range(*action)) return bad(where, "an action's number is out of range");
    if (is_aim(action->kind)) last_aim = *action;
    actions.push_back(std::move(*action));
  }
  if (actions.empty()) return bad(where, "a batch without actions");
  return actions;
}

}  // namespace proofstand::record
