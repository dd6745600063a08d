#include "tests/support/rules_certificates.h"

#include <algorithm>
#include <set>

namespace proofstand::testing {
namespace {

using rules::Case;
using rules::CaseStatus;
using rules::Reason;
using rules::Role;
using rules::Rule;
using rules::RuleKind;
using rules::Selector;
using rules::Truth;

class Checker {
 public:
  Checker(const rules::RuleProgram& program, const Rule& rule, const event::Trace& trace, const Case& made)
      : program_(program), rule_(rule), trace_(trace), c_(made), n_(static_cast<std::int64_t>(trace.records.size())) {}

  std::string complaint() {
    if (c_.segment_a < -1 || c_.segment_a >= n_ || c_.segment_b <= c_.segment_a - 1 || c_.segment_b > n_)
      return "no such stretch";
    if (c_.segment_a >= 0 && !is(rule_.open, c_.segment_a)) return "the opener does not open";
    if (c_.segment_b < n_ && !is(rule_.close, c_.segment_b)) return "the closer does not close";
    for (const rules::Cite& cite : c_.cites) {
      if (cite.position < -1 || cite.position >= n_) return "a cited record does not exist";
      if (cite.position >= 0 && tick(cite.position) != cite.tick && cite.role != Role::False)
        return "a cited tick is wrong";
    }
    if ((c_.status == CaseStatus::Ok) != (c_.score_ppm == rules::kFullPpm)) return "score and status differ";
    switch (rule_.kind) {
      case RuleKind::Must:
      case RuleKind::Never:
      case RuleKind::Count:
        return presence();
      case RuleKind::Needs:
        return needs();
      case RuleKind::Leads:
        return leads();
      case RuleKind::Order:
        return order();
      case RuleKind::Hold:
      case RuleKind::Steady:
      case RuleKind::Keep:
        return stretch();
      case RuleKind::Measure:
        return measure();
      case RuleKind::Rounds:
        return rounds();
      case RuleKind::Within:
        return within();
      case RuleKind::Recur:
        return recur();
      default:
        return "";
    }
  }

 private:
  base::Tick tick(std::int64_t i) const { return trace_.records[static_cast<std::size_t>(i)].tick; }
  double field(std::int64_t i, std::int32_t f) const {
    return trace_.records[static_cast<std::size_t>(i)].values[static_cast<std::size_t>(f)];
  }
  std::vector<rules::Fluent> fluents_at(std::int64_t last) const {
    std::vector<rules::Fluent> fluents(program_.vocabulary.kinds.size());
    for (std::int64_t i = 0; i <= last; ++i) {
      const event::Record& r = trace_.records[static_cast<std::size_t>(i)];
      if (program_.vocabulary.kinds[r.kind].type == event::KindType::Change) fluents[r.kind] = {r.values[0], true};
    }
    return fluents;
  }
  bool is(const Selector& s, std::int64_t i) const {
    const event::Record& r = trace_.records[static_cast<std::size_t>(i)];
    return s.given() && s.kind == r.kind && matches(program_, s, r, fluents_at(i)) == Truth::Yes;
  }
  bool inside(std::int64_t i) const { return i > c_.segment_a && i < c_.segment_b; }
  bool ok() const { return c_.status == CaseStatus::Ok; }
  const rules::Cite* cite(Role role) const { return c_.cited(role); }

  std::string presence() const {
    std::int64_t k = 0;
    std::set<double> values;
    for (std::int64_t i = c_.segment_a + 1; i < c_.segment_b; ++i) {
      if (is(rule_.x, i) && (rule_.distinct < 0 || values.insert(field(i, rule_.distinct)).second)) ++k;
    }
    if (ok() != (k >= rule_.count_lo && (rule_.count_hi < 0 || k <= rule_.count_hi))) return "the number is otherwise";
    if (k > 0 && c_.cites.empty()) return "nothing is cited";
    for (const rules::Cite& one : c_.cites) {
      if (!is(rule_.x, one.position) || !inside(one.position)) return "a cited record is no x of the stretch";
    }
    return "";
  }

  bool serves(std::int64_t x, std::int64_t y) const {
    if (!is(rule_.y, y) || (rule_.same_x >= 0 && field(x, rule_.same_x) != field(y, rule_.same_y))) return false;
    const base::Tick age = tick(x) > tick(y) ? tick(x) - tick(y) : tick(y) - tick(x);
    if ((rule_.gap >= 0 && age < rule_.gap) || (rule_.within >= 0 && age > rule_.within)) return false;
    for (std::int64_t z = std::min(x, y) + 1; z < std::max(x, y); ++z) {
      const bool here = inside(z) || rule_.look_run;
      if (here && is(rule_.voided_by, z) &&
          (rule_.same_void < 0 || field(z, rule_.same_void) == field(x, rule_.same_x)))
        return false;
    }
    // another x of the key from y on has used it up
    for (std::int64_t p = y; rule_.fresh && p < x; ++p) {
      if (inside(p) && is(rule_.x, p) && (rule_.same_x < 0 || field(p, rule_.same_x) == field(x, rule_.same_x)))
        return false;
    }
    return true;
  }

  std::string needs() const {
    const rules::Cite* x = cite(Role::X);
    const rules::Cite* y = cite(Role::Y);
    if (x == nullptr || x->position != c_.anchor || !is(rule_.x, x->position) || !inside(x->position))
      return "x is no x";
    if (ok())
      return y != nullptr && y->position < x->position && serves(x->position, y->position) ? "" : "y does not serve x";
    for (std::int64_t i = 0; i < x->position; ++i) {
      if ((rule_.look_run || inside(i)) && serves(x->position, i)) return "there was a y that serves";
    }
    const base::Tick age = y != nullptr ? x->tick - y->tick : 0;
    switch (c_.reason) {
      case Reason::NoneBefore:
        return y == nullptr ? "" : "none, yet one is cited";
      case Reason::TooOld:
        return age > rule_.within ? "" : "not too old";
      case Reason::TooRecent:
        return age < rule_.gap ? "" : "not too recent";
      case Reason::Undone: {
        const rules::Cite* z = cite(Role::Void);
        const bool between = z != nullptr && z->position > y->position && z->position < x->position;
        return between && is(rule_.voided_by, z->position) ? "" : "nothing undid it";
      }
      case Reason::UsedUp:
        return rule_.fresh ? "" : "nothing is used up";
      case Reason::OnlyOtherItems:
        return field(y->position, rule_.same_y) != field(x->position, rule_.same_x) ? "" : "the same item";
      default:
        return "not a reason of needs";
    }
  }

  std::string leads() const {
    const rules::Cite* x = cite(Role::X);
    if (x == nullptr || !is(rule_.x, x->position) || !inside(x->position)) return "x is no x";
    if (ok()) {
      const rules::Cite* y = cite(Role::Y);
      return y != nullptr && y->position > x->position && inside(y->position) && serves(x->position, y->position)
                 ? ""
                 : "y does not answer x";
    }
    for (std::int64_t y = x->position + 1; y < c_.segment_b && !rule_.one_each; ++y) {
      if (serves(x->position, y)) return "there was an answer";
    }
    if (c_.reason == Reason::Late) return c_.settled_tick == x->tick + rule_.within + 1 ? "" : "another deadline";
    if (c_.reason == Reason::Undone) return is(rule_.voided_by, cite(Role::Void)->position) ? "" : "nothing undid it";
    return c_.reason == Reason::EndedOpen ? "" : "not a reason of leads";
  }

  std::string order() const {
    std::int64_t before = c_.segment_a;
    std::int64_t step_before = -1;
    if (rule_.first) {
      if (c_.items.size() != 2) return "no pair";
      const rules::Cite* u = cite(Role::Step);
      const bool right = is(rule_.steps[static_cast<std::size_t>(c_.items[1])], cite(Role::X)->position);
      return right && ok() == (u != nullptr && u->position < c_.anchor) ? "" : "the pair is otherwise";
    }
    for (std::size_t i = 0; i < c_.cites.size(); ++i) {
      const std::int64_t step = c_.items[i];
      if (c_.cites[i].position <= before || step <= step_before) return "the chain is not in order";
      if (!is(rule_.steps[static_cast<std::size_t>(step)], c_.cites[i].position)) return "a link is not its step";
      before = c_.cites[i].position;
      step_before = step;
    }
    const bool whole = c_.cites.size() == rule_.steps.size();
    return ok() == whole && c_.missing.size() + c_.items.size() == rule_.steps.size() ? ""
                                                                                      : "the chain has another length";
  }

  bool phi(base::Tick at) const {
    std::int64_t last = -1;
    for (std::int64_t i = 0; i < n_; ++i) last = tick(i) <= at ? i : last;
    const rules::Expression& condition = program_.expressions[static_cast<std::size_t>(rule_.condition)];
    return truth_of(condition, nullptr, fluents_at(last)) == Truth::Yes;
  }

  std::string stretch() const {
    base::Tick yes = 0;
    for (base::Tick t = std::max<base::Tick>(c_.window_from, 0); t < c_.window_to; ++t) yes += phi(t) ? 1 : 0;
    const base::Tick length = c_.window_to - c_.window_from;
    if (rule_.kind == RuleKind::Steady) return ok() == (yes == rule_.duration) ? "" : "it was otherwise";
    if (rule_.kind == RuleKind::Hold) {
      if (yes < length && c_.found_si > 0.0) return "the stretch shown is not true throughout";
      return ok() == (c_.found_si >= static_cast<double>(rule_.duration)) ? "" : "the stretch has another length";
    }
    base::Tick no = 0;
    for (base::Tick t = c_.a_tick; t < c_.b_tick; ++t) no += phi(t) ? 0 : 1;
    if (c_.found_si != static_cast<double>(no)) return "it was false for another time";
    return ok() == (no <= rule_.budget) ? "" : "the budget says otherwise";
  }

  std::string measure() const {
    if (!is(rule_.x, c_.anchor) || !inside(c_.anchor)) return "x is no x";
    const event::Record& r = trace_.records[static_cast<std::size_t>(c_.anchor)];
    const auto value = evaluate(program_.expressions[static_cast<std::size_t>(rule_.value)], &r, fluents_at(c_.anchor));
    if (value.value_si != c_.found_si) return "another value was found";
    if (ok() != (c_.lo_si <= c_.found_si && c_.found_si <= c_.hi_si)) return "the bounds say otherwise";
    if (!ok() && c_.reason != (c_.found_si < c_.lo_si ? Reason::Below : Reason::Above)) return "the wrong side";
    for (std::int64_t i = c_.anchor + 1; rule_.pick == rules::Pick::Last && i < c_.segment_b; ++i) {
      if (is(rule_.x, i) && (rule_.per < 0 || field(i, rule_.per) == field(c_.anchor, rule_.per)))
        return "not the last one";
    }
    return "";
  }

  std::string rounds() const {
    for (std::size_t i = 0; i < c_.cites.size(); ++i) {
      if (!is(rule_.x, c_.cites[i].position) || !inside(c_.cites[i].position)) return "a cited record is no x";
      if (ok() && field(c_.cites[i].position, rule_.item) != static_cast<double>(c_.items[i])) return "another item";
    }
    const auto size = static_cast<std::size_t>(rule_.set_size);
    if (ok() && c_.items.size() != size * static_cast<std::size_t>(rule_.passes)) return "not that many passes";
    for (std::size_t from = 0; ok() && from < c_.items.size(); from += size) {
      std::set<std::int64_t> all(c_.items.begin() + static_cast<std::ptrdiff_t>(from),
                                 c_.items.begin() + static_cast<std::ptrdiff_t>(from + size));
      if (all.size() != size) return "a pass leaves an item out";
    }
    return "";
  }

  std::string within() const {
    const rules::Cite* x = cite(Role::X);
    const rules::Cite* y = cite(Role::Y);
    if (x == nullptr || !is(rule_.x, x->position)) return "x is no x";
    if (y != nullptr && (!is(rule_.y, y->position) || y->position <= x->position)) return "y is no answer";
    return ok() == (y != nullptr && y->tick - x->tick <= rule_.within) ? "" : "the time says otherwise";
  }

  std::string recur() const {
    for (std::int64_t i = c_.segment_a + 1; i < c_.segment_b; ++i) {
      if (is(rule_.x, i) && tick(i) > c_.window_from && tick(i) < c_.window_to) return "an x lies in the gap shown";
    }
    return ok() == (c_.window_to - c_.window_from <= rule_.duration) ? "" : "the gap says otherwise";
  }

  const rules::RuleProgram& program_;
  const Rule& rule_;
  const event::Trace& trace_;
  const Case& c_;
  std::int64_t n_;
};

}  // namespace

std::string complaint_about(const rules::RuleProgram& program, rules::RuleIndex rule, const event::Trace& trace,
                            const Case& made) {
  return Checker(program, program.rules[static_cast<std::size_t>(rule)], trace, made).complaint();
}

}  // namespace proofstand::testing
