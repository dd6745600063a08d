#include "tests/support/rules_toy.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "sim/base/number_text.h"
#include "sim/base/words.h"

namespace proofstand::testing {

using event::Field;
using event::FieldType;

event::Vocabulary toy_vocabulary(std::size_t ring) {
  event::Vocabulary vocabulary;
  event::ItemSet set{"ring", event::Geometry::Ring, {}};
  for (std::size_t i = 0; i < ring; ++i) set.items.push_back("bolt " + std::to_string(i + 1));
  vocabulary.sets.push_back(set);
  vocabulary.sets.push_back({"plain", event::Geometry::Plain, {"left", "right", "upper"}});
  Field item;
  item.name = "item";
  item.type = FieldType::Item;
  item.set = 0;
  Field value;
  value.name = "value";
  value.type = FieldType::Quantity;
  value.hi_si = 200.0;
  Field hand;
  hand.name = "hand";
  hand.type = FieldType::Choice;
  hand.choices = {"bare", "gloved", "tool"};
  Field torque;
  torque.name = "torque";
  torque.type = FieldType::Quantity;
  torque.dimension = base::Dimension::Torque;
  torque.hi_si = 60.0;
  Field side;
  side.name = "side";
  side.type = FieldType::Item;
  side.set = 1;
  for (char letter = 'A'; letter <= 'Z'; ++letter) {
    event::Kind kind;
    kind.name = std::string(1, letter);
    kind.fields = {item, value, hand, torque, side};
    vocabulary.kinds.push_back(kind);
  }
  event::Kind phi;
  phi.name = "phi";
  phi.type = event::KindType::Change;
  Field now;
  now.name = "now";
  now.hi_si = 1.0;
  phi.fields = {now};
  vocabulary.kinds.push_back(phi);
  return vocabulary;
}

event::Trace toy_trace(std::string_view text) {
  event::Trace trace;
  trace.ticks_per_s = 1;
  event::Record start;
  start.kind = 26;
  for (std::string_view word : base::split_words(text)) {
    const std::size_t colon = word.find(':');
    if (colon == std::string_view::npos) {
      trace.end_tick = *base::int_from_text(word);
      continue;
    }
    event::Record record;
    record.tick = *base::int_from_text(word.substr(0, colon));
    std::string_view rest = word.substr(colon + 1);
    if (rest == "S1" || rest == "S0") {
      record.kind = 26;
      record.values[0] = rest == "S1" ? 1.0 : 0.0;
      trace.records.push_back(record);
      continue;
    }
    record.kind = static_cast<event::KindId>(rest[0] - 'A');
    const std::size_t equal = rest.find('=');
    if (equal != std::string_view::npos) record.values[1] = *base::double_from_text(rest.substr(equal + 1));
    const std::string_view before = rest.substr(0, equal);
    const std::size_t hash = before.find('#');
    if (hash != std::string_view::npos) record.values[0] = *base::double_from_text(before.substr(hash + 1));
    trace.records.push_back(record);
  }
  if (!trace.records.empty()) trace.end_tick = std::max(trace.end_tick, trace.records.back().tick);
  return trace;
}

rules::Text at(std::string text, int line, int column) { return {std::move(text), {"toy.toml", line, column}}; }

rules::SelectorSpec on(std::string event, std::string where) { return {at(std::move(event)), at(std::move(where))}; }

rules::RuleSpec rule(std::string kind, std::string id) {
  rules::RuleSpec spec;
  spec.id = at(std::move(id));
  spec.kind = at(std::move(kind));
  spec.severity = at("minor");
  spec.points_milli = 1000;
  return spec;
}

rules::ScopeSpec scope(std::string form, rules::SelectorSpec a, rules::SelectorSpec b) {
  return {at(std::move(form)), std::move(a), std::move(b), false};
}

rules::CompileInput toy_input(std::vector<rules::RuleSpec> specs, std::size_t ring) {
  rules::CompileInput input;
  input.rules = std::move(specs);
  input.vocabulary = toy_vocabulary(ring);
  input.ticks_per_s = 1;
  input.evidence = {1000, 1000};
  return input;
}

rules::RuleProgram compiled(const rules::CompileInput& input) {
  rules::Compiled out = rules::compile_rules(input);
  if (out.program) return std::move(*out.program);
  for (const base::Error& fault : out.faults.list) std::fprintf(stderr, "%s\n", fault.sentence().c_str());
  std::abort();
}

rules::RuleProgram compiled(std::vector<rules::RuleSpec> specs, std::size_t ring) {
  return compiled(toy_input(std::move(specs), ring));
}

std::string case_words(const rules::RuleResult& result) {
  std::vector<rules::Case> all = result.bad_cases;
  all.insert(all.end(), result.ok_cases.begin(), result.ok_cases.end());
  std::stable_sort(all.begin(), all.end(),
                   [](const rules::Case& a, const rules::Case& b) { return a.anchor < b.anchor; });
  std::string words;
  for (const rules::Case& made : all) {
    const char* status = made.status == rules::CaseStatus::Ok    ? "ok"
                         : made.status == rules::CaseStatus::Bad ? "bad"
                                                                 : "unknown";
    words +=
        (words.empty() ? "" : ", ") + (made.anchor < 0 ? std::string() : std::to_string(made.anchor) + ":") + status;
  }
  return words.empty() ? "idle" : words;
}

rules::RuleResult judged(const rules::RuleProgram& program, std::string_view trace, std::size_t rule) {
  event::Trace run = toy_trace(trace);
  rules::EngineState state = rules::start(program);
  // phi is no from the start, set by a record that has no position of its own in the tables
  state.fluents[26] = {0.0, true};
  for (rules::ConditionState& condition : state.conditions) condition.value = rules::Truth::No;
  for (const event::Record& record : run.records) rules::feed(program, state, record);
  return rules::finish(program, state, run.end_tick, run.end).rules[rule];
}

}  // namespace proofstand::testing
