// A field that a kind does not read is a slip of the author's: what was meant would be judged otherwise than written.
#include <initializer_list>

#include "sim/rules/draft.h"

namespace proofstand::rules {
namespace {

struct Given {
  std::string_view name;
  bool given;
  SourcePos at;
  std::initializer_list<RuleKind> readers;
};

}  // namespace

void check_unread(const Draft& draft, const RuleSpec& spec, RuleKind kind) {
  using K = RuleKind;
  const SourcePos& id = spec.id.at;
  const Given rows[] = {
      {"x",
       spec.x.given(),
       spec.x.event.at,
       {K::Must, K::Never, K::Count, K::Needs, K::Leads, K::Steady, K::Measure, K::Rounds, K::Within, K::Recur}},
      {"y", spec.y.given(), spec.y.event.at, {K::Needs, K::Leads, K::Within}},
      {"void", spec.voided_by.given(), spec.voided_by.event.at, {K::Needs, K::Leads}},
      {"same", spec.same.given(), spec.same.at, {K::Needs, K::Leads}},
      {"within", spec.within.given(), spec.within.at, {K::Needs, K::Leads, K::Within}},
      {"gap", spec.gap.given(), spec.gap.at, {K::Needs}},
      {"fresh", spec.fresh, id, {K::Needs}},
      {"one_each", spec.one_each, id, {K::Leads}},
      {"look", spec.look_run, id, {K::Needs}},
      {"range", spec.range.given(), spec.range.at, {K::Count, K::Measure}},
      {"distinct", spec.distinct.given(), spec.distinct.at, {K::Count}},
      {"steps", !spec.steps.empty(), id, {K::Order}},
      {"first", spec.first, id, {K::Order}},
      {"groups", !spec.groups.empty(), id, {K::Order}},
      {"condition", spec.condition.given(), spec.condition.at, {K::Hold, K::Steady, K::Keep}},
      {"duration", spec.duration.given(), spec.duration.at, {K::Hold, K::Steady, K::Recur}},
      {"budget", spec.budget.given(), spec.budget.at, {K::Keep}},
      {"value", spec.value.given(), spec.value.at, {K::Measure}},
      {"pick", spec.pick.given(), spec.pick.at, {K::Measure}},
      {"per", spec.per.given(), spec.per.at, {K::Measure}},
      {"bands", !spec.bands.empty(), id, {K::Count, K::Hold, K::Keep, K::Measure, K::Within}},
      {"partial", spec.partial, id, {K::Count, K::Hold, K::Keep, K::Rounds}},
      {"per_slip", spec.per_slip_milli != 0, id, {K::Never, K::Rounds}},
      {"over", spec.over.given(), spec.over.at, {K::Rounds}},
      {"item", spec.item.given(), spec.item.at, {K::Rounds}},
      {"pattern", spec.pattern.given(), spec.pattern.at, {K::Rounds}},
      {"number", spec.number != 0, id, {K::Rounds, K::AtLeast}},
      {"sequences", !spec.sequences.empty(), id, {K::Rounds}},
      {"symmetry", spec.symmetry.given(), spec.symmetry.at, {K::Rounds}},
      {"passes", spec.passes != 1, id, {K::Rounds}},
      {"strict", spec.strict, id, {K::Rounds}},
      {"if_any", spec.if_any, id, {K::Rounds}},
      {"children", !spec.children.empty(), id, {K::AnyOf, K::AllOf, K::AtLeast}},
  };
  const std::string kind_name(rule_kind_words()[static_cast<std::size_t>(kind)]);
  for (const Given& row : rows) {
    if (!row.given) continue;
    bool reads = false;
    for (RuleKind reader : row.readers) reads = reads || reader == kind;
    if (reads) continue;
    std::string instead = "leave it out, or use a kind that reads it:";
    for (RuleKind reader : row.readers) {
      instead += " " + std::string(rule_kind_words()[static_cast<std::size_t>(reader)]);
    }
    draft.fault("E02", row.at,
                "'" + spec.id.text + "' has '" + std::string(row.name) + "', which " + kind_name + " does not read",
                std::move(instead));
  }
  const bool composite = kind == K::AnyOf || kind == K::AllOf || kind == K::AtLeast;
  if (composite && spec.scope.form.given() && spec.scope.form.text != "run") {
    draft.fault("E02", spec.scope.form.at, "a composite has no scope of its own", "give scopes to the rules inside");
  }
}

}  // namespace proofstand::rules
