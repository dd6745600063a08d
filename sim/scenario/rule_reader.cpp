#include "sim/scenario/rule_reader.h"

#include <utility>

#include "sim/base/math.h"
#include "sim/base/words.h"
#include "sim/scenario/read_rules.h"

namespace proofstand::scenario {
namespace {

constexpr std::string_view kVerdicts[] = {"fail", "partial", "pass", "idle"};

}  // namespace

RuleReader::RuleReader(const Reading& reading, const Node& table, std::string name)
    : reading_(&reading), fields_(reading, table, std::move(name)) {}

rules::SourcePos RuleReader::pos(std::string_view key) const {
  Spot at = fields_.spot_of(key);
  const Node* value = fields_.table().find(key);
  if (value != nullptr && value->kind == NodeKind::Text) ++at.column;
  return source_pos(*reading_, at);
}

rules::Text RuleReader::text_of(const Node& node, std::string_view key) {
  Spot at = node.at;
  if (node.kind != NodeKind::Text) {
    reading_->error("S04", at, fields_.name() + "." + std::string(key) + " is not a text", "write a text in quotes");
    return {};
  }
  if (node.text.empty()) {
    reading_->error("S04", at, fields_.name() + "." + std::string(key) + " is empty",
                    "write something, or leave the entry out");
  }
  ++at.column;
  return {node.text, source_pos(*reading_, at)};
}

rules::Text RuleReader::text(std::string_view key) {
  const Node* node = fields_.raw(key);
  return node != nullptr ? text_of(*node, key) : rules::Text{};
}

std::vector<rules::Text> RuleReader::texts(std::string_view key) {
  std::vector<rules::Text> all;
  const Node* node = fields_.list_at(key);
  if (node == nullptr) return all;
  for (const Member& member : node->members) all.push_back(text_of(member.node, key));
  return all;
}

bool RuleReader::flag(std::string_view key) {
  bool value = false;
  fields_.flag(key, value);
  return value;
}

int RuleReader::whole(std::string_view key, Span span, int usual) {
  fields_.count(key, span, usual);
  return usual;
}

std::int64_t RuleReader::thousandths(std::string_view key, Span span, std::int64_t usual) {
  if (!fields_.has(key)) {
    fields_.raw(key);
    return usual;
  }
  double value_1 = static_cast<double>(usual) / 1000.0;
  fields_.quantity(key, base::Dimension::Number, span, value_1);
  const double milli = value_1 * 1000.0;
  const auto whole = static_cast<std::int64_t>(milli + 0.5);
  const double off = milli - static_cast<double>(whole);
  if (off > 1e-6 || off < -1e-6) {
    reading_->error("S04", fields_.spot_of(key),
                    fields_.name() + "." + std::string(key) + " has more than three decimals", "write at most three");
  }
  return whole;
}

rules::SelectorSpec RuleReader::selector_of(const Node& node, std::string_view key) {
  rules::SelectorSpec selector;
  const rules::Text all = text_of(node, key);
  const std::string_view whole = all.text;
  constexpr std::string_view kWhere = " where ";
  const std::size_t split = whole.find(kWhere);
  const std::string_view event = base::trimmed(whole.substr(0, split));
  if (event.empty()) return selector;
  selector.event = {std::string(event), all.at};
  selector.event.at.column += static_cast<int>(event.data() - whole.data());
  if (split == std::string_view::npos) return selector;
  selector.where = {std::string(whole.substr(split + kWhere.size())), all.at};
  selector.where.at.column += static_cast<int>(split + kWhere.size());
  return selector;
}

rules::SelectorSpec RuleReader::selector(std::string_view key) {
  const Node* node = fields_.raw(key);
  return node != nullptr ? selector_of(*node, key) : rules::SelectorSpec{};
}

std::vector<rules::SelectorSpec> RuleReader::selectors(std::string_view key) {
  std::vector<rules::SelectorSpec> all;
  const Node* node = fields_.list_at(key);
  if (node == nullptr) return all;
  for (const Member& member : node->members) all.push_back(selector_of(member.node, key));
  return all;
}

rules::ScopeSpec RuleReader::scope() {
  rules::ScopeSpec scope;
  const Node* node = fields_.raw("scope");
  if (node == nullptr) return scope;
  if (!node->is_table()) {
    scope.form = text_of(*node, "scope");
    return scope;
  }
  RuleReader reader(*reading_, *node, fields_.name() + ".scope");
  reader.fields().needs("form", "say which part of the run is meant, e.g. form = \"after_last\"");
  scope.form = reader.text("form");
  scope.a = reader.selector("opens");
  scope.b = reader.selector("closes");
  scope.required = reader.flag("required");
  reader.fields().done();
  return scope;
}

std::vector<std::vector<int>> RuleReader::groups(std::string_view key) {
  std::vector<std::vector<int>> all;
  const Node* node = fields_.list_at(key);
  if (node == nullptr) return all;
  for (const Member& group : node->members) {
    std::vector<int> steps;
    for (const Member& step : group.node.members) {
      if (step.node.kind != NodeKind::Integer || step.node.integer < 1 || step.node.integer > 64) {
        reading_->error("S04", step.node.at, fields_.name() + ": a group names steps by number",
                        "write whole numbers from 1 up");
        continue;
      }
      steps.push_back(static_cast<int>(step.node.integer) - 1);
    }
    all.push_back(std::move(steps));
  }
  return all;
}

std::vector<std::vector<rules::Text>> RuleReader::sequences(std::string_view key) {
  std::vector<std::vector<rules::Text>> all;
  const Node* node = fields_.list_at(key);
  if (node == nullptr) return all;
  for (const Member& sequence : node->members) {
    std::vector<rules::Text> items;
    for (const Member& item : sequence.node.members) items.push_back(text_of(item.node, key));
    all.push_back(std::move(items));
  }
  return all;
}

std::vector<rules::BandSpec> RuleReader::bands(std::string_view key) {
  std::vector<rules::BandSpec> all;
  const Node* node = fields_.list_at(key);
  if (node == nullptr) return all;
  for (const Member& member : node->members) {
    if (!is_table(*reading_, member, fields_.name() + ".bands")) continue;
    RuleReader reader(*reading_, member.node, fields_.name() + ".bands");
    rules::BandSpec band;
    band.miss = reader.text("miss");
    band.score_milli = static_cast<int>(reader.thousandths("score", {0.0, 0.999}, 0));
    reader.fields().done();
    all.push_back(std::move(band));
  }
  return all;
}

std::vector<rules::SaySpec> RuleReader::say() {
  std::vector<rules::SaySpec> all;
  const Node* node = fields_.table_at("say");
  if (node == nullptr) return all;
  FieldReader reader(*reading_, *node, fields_.name() + ".say");
  for (const std::string_view verdict : kVerdicts) {
    const Node* by_language = reader.table_at(verdict);
    if (by_language == nullptr) continue;
    for (const Member& member : by_language->members) {
      all.push_back(
          {member.key, std::string(verdict), text_of(member.node, "say." + std::string(verdict) + "." + member.key)});
    }
  }
  reader.done();
  return all;
}

}  // namespace proofstand::scenario
