// What every rule has, whatever its kind: scope, severity, points, how it counts.
#include "sim/rules/draft.h"

namespace proofstand::rules {
namespace {

void compile_scope(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  const ScopeSpec& scope = spec.scope;
  const std::optional<std::size_t> form = draft.word(scope.form, scope_words(), "scope", 0);
  rule.required = scope.required;
  if (!form) return;
  rule.form = static_cast<ScopeForm>(*form);
  const bool opens = rule.form == ScopeForm::AfterFirst || rule.form == ScopeForm::AfterLast ||
                     rule.form == ScopeForm::Between || rule.form == ScopeForm::FromTo;
  const bool closes = rule.form == ScopeForm::BeforeFirst || rule.form == ScopeForm::UntilFirst ||
                      rule.form == ScopeForm::Between || rule.form == ScopeForm::FromTo;
  rule.discards =
      rule.form == ScopeForm::AfterLast || rule.form == ScopeForm::BeforeFirst || rule.form == ScopeForm::Between;
  const std::string name(scope_words()[*form]);
  if (opens != scope.a.given()) {
    draft.fault("E02", opens ? scope.form.at : scope.a.event.at,
                opens ? "the scope " + name + " needs the event that opens it" : "the scope " + name + " has no opener",
                opens ? "give it an opener" : "leave the opener out or choose another scope");
  }
  if (closes != scope.b.given()) {
    draft.fault(
        "E02", closes ? scope.form.at : scope.b.event.at,
        closes ? "the scope " + name + " needs the event that closes it" : "the scope " + name + " has no closer",
        closes ? "give it a closer" : "leave the closer out or choose another scope");
  }
  if (opens) rule.open = draft.selector(scope.a);
  if (closes) rule.close = draft.selector(scope.b);
}

void compile_counting(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  static const std::vector<std::string_view> kCredits = {"all", "share", "worst"};
  static const std::vector<std::string_view> kIdles = {"exclude", "pass", "fail"};
  const auto severity = draft.word(spec.severity, severity_words(), "severity");
  if (severity) rule.severity = static_cast<Severity>(*severity);
  const bool critical = rule.severity == Severity::Critical;
  const Credit usual = critical ? Credit::All : Credit::Share;
  const auto credit = draft.word(spec.credit, kCredits, "way of giving credit", static_cast<std::size_t>(usual));
  if (credit) rule.credit = static_cast<Credit>(*credit);
  const Text& idle_text = spec.idle.given() ? spec.idle : draft.program.marks.idle;
  const auto idle = draft.word(idle_text, kIdles, "way of counting an idle rule", 0);
  if (idle) rule.idle = static_cast<IdlePolicy>(*idle);
  // a scenario-wide "pass" is meant for notes; where points hang on a rule, only the rule itself may say so, and that
  // is refused
  if (rule.idle == IdlePolicy::Pass && rule.severity != Severity::Note) {
    if (spec.idle.given()) {
      draft.fault("E31", spec.idle.at, "'" + spec.id.text + "' would give points for a job not begun",
                  "use exclude or fail, or make the rule a note");
    }
    rule.idle = IdlePolicy::Exclude;
  }
  const bool partial = !spec.bands.empty() || spec.partial || spec.per_slip_milli > 0 || rule.credit == Credit::Share;
  if (critical && partial) {
    draft.fault("E33", spec.severity.at, "'" + spec.id.text + "' is critical and gives part marks",
                "leave out bands, partial, per_slip and credit = share, or make it major");
  }
  rule.stop = spec.stop;
  if (spec.stop && !critical) {
    draft.fault("E33", spec.severity.at, "only a critical rule can stop the run", "make it critical or leave stop out");
  }
  rule.points_milli = spec.points_milli;
  const std::vector<MarksSpec::Competence>& competences = draft.program.marks.competences;
  std::vector<std::string_view> names;
  for (const MarksSpec::Competence& row : competences) names.push_back(row.name.text);
  if (spec.competence.given() && !names.empty()) {
    if (const auto row = draft.word(spec.competence, names, "competence")) {
      rule.competence = static_cast<std::int32_t>(*row);
    }
  }
}

void compile_bands(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  base::Dimension dimension = base::Dimension::Time;
  if (rule.kind == RuleKind::Count) dimension = base::Dimension::Number;
  if (rule.kind == RuleKind::Measure) dimension = rule.dimension;
  double before_si = 0.0;
  int score_before = 1000;
  for (const BandSpec& band : spec.bands) {
    const base::Result<double> miss_si = parse_fixed(draft.context(event::kNoKind), band.miss, dimension);
    if (!miss_si.has_value()) {
      draft.faults.add(miss_si.error());
      continue;
    }
    const bool climbs = band.score_milli >= 1000 || band.score_milli < 0 || band.score_milli > score_before;
    if (miss_si.value() <= before_si || climbs) {
      draft.fault("E09", band.miss.at, "the bands do not go outwards with falling scores",
                  "write growing distances with scores from 999 down to 0");
    }
    before_si = miss_si.value();
    score_before = band.score_milli;
    rule.bands.push_back({miss_si.value(), band.score_milli * 1000});
  }
  rule.per_slip_ppm = spec.per_slip_milli * 1000;
  if (spec.per_slip_milli < 0 || spec.per_slip_milli > 1000) {
    draft.fault("E09", spec.id.at, "per_slip is a share from 0 to 1", "write how much one slip takes off");
  }
  rule.partial = spec.partial;
}

}  // namespace

void compile_rule(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  const auto kind = draft.word(spec.kind, rule_kind_words(), "kind of rule");
  compile_scope(draft, spec, rule);
  compile_counting(draft, spec, rule);
  if (!kind) return;
  rule.kind = static_cast<RuleKind>(*kind);
  check_unread(draft, spec, rule.kind);
  compile_kind(draft, spec, rule);
  compile_bands(draft, spec, rule);
}

}  // namespace proofstand::rules
