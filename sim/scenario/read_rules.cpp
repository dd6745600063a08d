#include "sim/scenario/read_rules.h"

#include <utility>

#include "sim/scenario/rule_reader.h"

namespace proofstand::scenario {
namespace {

/// What every rule has, whatever its kind.
void read_common(RuleReader& rule, rules::RuleSpec& spec) {
  spec.id = rule.text("id");
  spec.kind = rule.text("kind");
  spec.scope = rule.scope();
  spec.severity = rule.text("severity");
  spec.points_milli = rule.thousandths("points", {0.0, 1000.0}, 0);
  spec.points_at = rule.pos("points");
  spec.credit = rule.text("credit");
  spec.idle = rule.text("idle");
  spec.competence = rule.text("competence");
  spec.after_failure_of = rule.texts("after_failure_of");
  spec.stop = rule.flag("stop");
  spec.silenced = rule.texts("silence");
  spec.say = rule.say();
}

/// What only some kinds read; the compiler refuses what does not go with the kind.
void read_special(RuleReader& rule, rules::RuleSpec& spec) {
  spec.x = rule.selector("x");
  spec.y = rule.selector("y");
  spec.voided_by = rule.selector("void");
  spec.same = rule.text("same");
  spec.within = rule.text("within");
  spec.gap = rule.text("gap");
  spec.fresh = rule.flag("fresh");
  spec.one_each = rule.flag("one_each");
  spec.look_run = rule.flag("look_in_whole_run");
  spec.range = rule.text("range");
  spec.distinct = rule.text("distinct");
  spec.steps = rule.selectors("steps");
  spec.first = rule.flag("first");
  spec.groups = rule.groups("groups");
  spec.condition = rule.text("condition");
  spec.duration = rule.text("duration");
  spec.budget = rule.text("budget");
  spec.value = rule.text("value");
  spec.pick = rule.text("pick");
  spec.per = rule.text("per");
  spec.bands = rule.bands("bands");
  spec.partial = rule.flag("partial");
  spec.per_slip_milli = static_cast<int>(rule.thousandths("per_slip", {0.0, 1.0}, 0));
  spec.over = rule.text("over");
  spec.item = rule.text("item");
  spec.pattern = rule.text("pattern");
  spec.number = rule.whole("number", {0.0, 64.0}, 0);
  spec.sequences = rule.sequences("sequences");
  spec.symmetry = rule.text("symmetry");
  spec.passes = rule.whole("passes", {1.0, 64.0}, 1);
  spec.strict = rule.flag("strict");
  spec.if_any = rule.flag("if_any");
  spec.children = rule.texts("children");
}

}  // namespace

rules::SourcePos source_pos(const Reading& reading, const Spot& at) {
  return {at.file < reading.files->size() ? (*reading.files)[at.file] : std::string(), at.line, at.column};
}

ReadRules read_rules(const Reading& reading, const Node& rules_node) {
  ReadRules out;
  for (const Member& member : rules_node.members) {
    if (!is_table(reading, member, "rule")) continue;
    const Node* id = member.node.find("id");
    const std::string name = id != nullptr && id->kind == NodeKind::Text ? "rule \"" + id->text + "\"" : "rule";
    RuleReader rule(reading, member.node, name);
    rule.fields().needs("id", "give the rule a name of its own, e.g. id = \"rotor-direction\"");
    rule.fields().needs("kind", "say what kind of rule it is, e.g. kind = \"never\"");
    rule.fields().needs("severity", "write severity = \"note\", \"minor\", \"major\" or \"critical\"");
    rules::RuleSpec spec;
    RuleLine line;
    read_common(rule, spec);
    read_special(rule, spec);
    rule.fields().texts("title", line.title);
    rule.fields().texts("why", line.why);
    rule.fields().done();
    line.id = spec.id.text;
    out.specs.push_back(std::move(spec));
    out.lines.push_back(std::move(line));
  }
  return out;
}

rules::MarksSpec read_marks(const Reading& reading, const Node& marks_node) {
  rules::MarksSpec marks;
  RuleReader reader(reading, marks_node, "marks");
  marks.at = source_pos(reading, marks_node.at);
  if (reader.fields().has("total")) {
    marks.points_milli = reader.thousandths("total", {0.0, 100000.0}, 0);
    marks.at = reader.pos("total");
  }
  marks.pass_mark_milli = static_cast<int>(reader.thousandths("pass_mark", {0.0, 1.0}, 800));
  marks.min_coverage_milli = static_cast<int>(reader.thousandths("least_coverage", {0.0, 1.0}, 800));
  marks.idle = reader.text("idle");
  if (const Node* competences = reader.fields().table_at("competence")) {
    for (const Member& member : competences->members) {
      rules::MarksSpec::Competence row;
      row.at = source_pos(reading, member.node.at);
      row.name = {member.key, source_pos(reading, member.key_at)};
      FieldReader one(reading, *competences, "marks.competence");
      double points = 0.0;
      one.quantity(member.key, base::Dimension::Number, {0.0, 100000.0}, points);
      row.points_milli = static_cast<std::int64_t>(points * 1000.0 + 0.5);
      marks.competences.push_back(std::move(row));
    }
  }
  reader.fields().done();
  return marks;
}

}  // namespace proofstand::scenario
