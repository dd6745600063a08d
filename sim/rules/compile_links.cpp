// What rules say about each other: children of composites and excuses, neither in circles.
#include "sim/rules/draft.h"
#include "sim/rules/where_names.h"

namespace proofstand::rules {
namespace {

bool is_composite(RuleKind kind) {
  return kind == RuleKind::AnyOf || kind == RuleKind::AllOf || kind == RuleKind::AtLeast;
}

std::vector<RuleIndex> named_rules(const Draft& draft, const std::vector<Text>& names, RuleIndex self) {
  std::vector<RuleIndex> found;
  for (const Text& name : names) {
    const std::optional<RuleIndex> rule = draft.program.find_rule(name.text);
    if (rule && *rule != self) {
      found.push_back(*rule);
      continue;
    }
    if (rule) {
      draft.fault("E27", name.at, "'" + name.text + "' names itself", "name another rule");
      continue;
    }
    std::vector<std::string_view> known;
    for (const RuleSpec& spec : draft.program.specs) known.push_back(spec.id.text);
    draft.fault("E06", name.at, "there is no rule '" + name.text + "'",
                "write a rule's id" + nearest_hint(name.text, known));
  }
  return found;
}

void check_composite(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  const auto n = static_cast<std::int32_t>(rule.children.size());
  if (n == 0) draft.fault("E02", spec.kind.at, "'" + spec.id.text + "' has no rules inside", "name its children");
  if (rule.kind == RuleKind::AnyOf) rule.number = 1;
  if (rule.kind == RuleKind::AllOf) rule.number = n;
  if (rule.kind == RuleKind::AtLeast && (rule.number < 1 || rule.number > n)) {
    draft.fault("E09", spec.kind.at, "'" + spec.id.text + "' asks for an impossible number of its rules",
                "write number = 1 to the number of children");
  }
}

// visits what a rule depends on first; a rule met again on the way down closes a circle
class Visit {
 public:
  explicit Visit(const Draft& draft) : draft_(draft), mark_(draft.program.rules.size(), 0) {}
  template <class Next>
  bool down(RuleIndex rule, const Next& next, std::vector<RuleIndex>& order, std::string_view what) {
    std::int8_t& mark = mark_[static_cast<std::size_t>(rule)];
    if (mark == 2) return true;
    const Text& id = draft_.program.specs[static_cast<std::size_t>(rule)].id;
    if (mark == 1) {
      draft_.fault("E27", id.at, "'" + id.text + "' depends on itself through " + std::string(what),
                   "break the circle");
      return false;
    }
    mark = 1;
    bool good = true;
    for (RuleIndex other : next(rule)) good = good && down(other, next, order, what);
    mark = 2;
    order.push_back(rule);
    return good;
  }

 private:
  const Draft& draft_;
  std::vector<std::int8_t> mark_;
};

// every rounds rule whose passes a selector of this rule may read
std::vector<RuleIndex> read_passes(const RuleProgram& program, const Rule& rule) {
  std::vector<RuleIndex> found;
  if (program.pass_done == event::kNoKind) return found;
  bool reads = false;
  for (const Selector* selector : {&rule.x, &rule.y, &rule.voided_by, &rule.open, &rule.close}) {
    reads = reads || selector->kind == program.pass_done;
  }
  for (const Selector& step : rule.steps) reads = reads || step.kind == program.pass_done;
  if (!reads || rule.kind != RuleKind::Rounds) return found;
  for (std::size_t i = 0; i < program.rules.size(); ++i) {
    if (program.rules[i].kind == RuleKind::Rounds) found.push_back(static_cast<RuleIndex>(i));
  }
  return found;
}

}  // namespace

void compile_links(const Draft& draft) {
  RuleProgram& program = draft.program;
  const auto n = static_cast<RuleIndex>(program.rules.size());
  for (RuleIndex i = 0; i < n; ++i) {
    Rule& rule = program.rules[static_cast<std::size_t>(i)];
    const RuleSpec& spec = program.specs[static_cast<std::size_t>(i)];
    rule.children = named_rules(draft, spec.children, i);
    rule.after_failure_of = named_rules(draft, spec.after_failure_of, i);
    if (is_composite(rule.kind)) check_composite(draft, spec, rule);
  }
  const auto rule_at = [&](RuleIndex i) -> const Rule& { return program.rules[static_cast<std::size_t>(i)]; };
  std::vector<RuleIndex> ignored;
  Visit inside(draft);
  Visit excuses(draft);
  Visit passes(draft);
  for (RuleIndex i = 0; i < n; ++i) {
    inside.down(
        i, [&](RuleIndex r) { return rule_at(r).children; }, program.children_first, "its children");
    excuses.down(
        i, [&](RuleIndex r) { return rule_at(r).after_failure_of; }, ignored, "after_failure_of");
    passes.down(
        i, [&](RuleIndex r) { return read_passes(program, rule_at(r)); }, ignored, "pass_done");
  }
}

}  // namespace proofstand::rules
