#include "tests/support/rules_reference.h"

#include <algorithm>
#include <map>
#include <set>

namespace proofstand::testing {
namespace {

using base::Tick;
using rules::Rule;
using rules::RuleKind;
using rules::ScopeForm;
using rules::Selector;
using rules::Truth;

struct Segment {
  std::int64_t a = -1;
  std::int64_t b = 0;
  Tick ta = 0;
  Tick tb = 0;
};

class Reference {
 public:
  Reference(const rules::RuleProgram& program, const Rule& rule, const event::Trace& trace)
      : program_(program), rule_(rule), trace_(trace), n_(static_cast<std::int64_t>(trace.records.size())) {
    std::vector<rules::Fluent> fluents(program.vocabulary.kinds.size());
    for (const event::Record& record : trace.records) {
      if (program.vocabulary.kinds[record.kind].type == event::KindType::Change) {
        fluents[record.kind] = {record.values[0], true};
      }
      after_.push_back(fluents);
    }
  }

  std::vector<ReferenceCase> cases() {
    for (const Segment& segment : segments()) judge(segment);
    std::stable_sort(out_.begin(), out_.end(), [](const ReferenceCase& a, const ReferenceCase& b) {
      return a.anchor != b.anchor ? a.anchor < b.anchor : a.key < b.key;
    });
    return out_;
  }

 private:
  bool is(const Selector& selector, std::int64_t i) const {
    const auto u = static_cast<std::size_t>(i);
    return selector.given() && matches(program_, selector, trace_.records[u], after_[u]) == Truth::Yes;
  }
  Tick t(std::int64_t i) const { return trace_.records[static_cast<std::size_t>(i)].tick; }
  double f(std::int64_t i, std::int32_t field) const {
    return trace_.records[static_cast<std::size_t>(i)].values[static_cast<std::size_t>(field)];
  }

  std::vector<Segment> segments() const {
    std::vector<Segment> all;
    const Segment whole{-1, n_, 0, trace_.end_tick};
    std::int64_t first_a = -1, last_a = -1, first_b = -1;
    for (std::int64_t i = 0; i < n_; ++i) {
      if (is(rule_.open, i)) {
        if (first_a < 0) first_a = i;
        last_a = i;
      }
      if (is(rule_.close, i) && first_b < 0) first_b = i;
    }
    switch (rule_.form) {
      case ScopeForm::Run:
        all.push_back(whole);
        break;
      case ScopeForm::AfterFirst:
        if (first_a >= 0) all.push_back({first_a, n_, t(first_a), trace_.end_tick});
        break;
      case ScopeForm::AfterLast:
        if (last_a >= 0) all.push_back({last_a, n_, t(last_a), trace_.end_tick});
        break;
      case ScopeForm::BeforeFirst:
        if (first_b >= 0) all.push_back({-1, first_b, 0, t(first_b)});
        break;
      case ScopeForm::UntilFirst:
        all.push_back(first_b < 0 ? whole : Segment{-1, first_b, 0, t(first_b)});
        break;
      case ScopeForm::Between:
      case ScopeForm::FromTo: {
        std::int64_t i = 0;
        while (i < n_) {
          if (!is(rule_.open, i)) {
            ++i;
            continue;
          }
          std::int64_t j = i + 1;
          while (j < n_ && !is(rule_.close, j)) ++j;
          if (j < n_) all.push_back({i, j, t(i), t(j)});
          if (j >= n_ && rule_.form == ScopeForm::FromTo) all.push_back({i, n_, t(i), trace_.end_tick});
          i = j;
        }
        break;
      }
    }
    return all;
  }

  void add(std::int64_t anchor, bool ok, Tick settled, std::int32_t bad_ppm = 0, std::int64_t key = -1) {
    out_.push_back({anchor, ok, ok ? rules::kFullPpm : bad_ppm, settled, key});
  }

  void judge(const Segment& g) {
    switch (rule_.kind) {
      case RuleKind::Must:
      case RuleKind::Never:
      case RuleKind::Count:
        return presence(g);
      case RuleKind::Needs:
        return needs(g);
      case RuleKind::Leads:
        return leads(g);
      case RuleKind::Order:
        return rule_.first ? order_first(g) : order_longest(g);
      case RuleKind::Hold:
        return hold(g);
      case RuleKind::Steady:
        return steady(g);
      case RuleKind::Keep:
        return keep(g);
      case RuleKind::Measure:
        return measure(g);
      case RuleKind::Rounds:
        return rounds(g);
      case RuleKind::Within:
        return within(g);
      case RuleKind::Recur:
        return recur(g);
      default:
        return;
    }
  }

  void presence(const Segment& g) {
    std::int64_t k = 0;
    std::set<double> seen;
    Tick settled = g.tb;
    for (std::int64_t i = g.a + 1; i < g.b; ++i) {
      if (!is(rule_.x, i)) continue;
      if (rule_.distinct >= 0 && !seen.insert(f(i, rule_.distinct)).second) continue;
      ++k;
      if (rule_.count_hi >= 0 ? k == rule_.count_hi + 1 : k == rule_.count_lo) settled = t(i);
    }
    const bool ok = k >= rule_.count_lo && (rule_.count_hi < 0 || k <= rule_.count_hi);
    std::int64_t ppm = 0;
    if (rule_.kind == RuleKind::Never) ppm = rule_.per_slip_ppm > 0 ? 1000000 - rule_.per_slip_ppm * k : 0;
    if (rule_.kind == RuleKind::Count && rule_.partial && k < rule_.count_lo) {
      ppm = std::min<std::int64_t>(999999, (k * 2000000 + rule_.count_lo) / (2 * rule_.count_lo));
    }
    add(g.a, ok, settled, static_cast<std::int32_t>(std::max<std::int64_t>(0, ppm)));
  }

  bool same(std::int64_t x, std::int64_t y) const {
    return rule_.same_x < 0 || f(x, rule_.same_x) == f(y, rule_.same_y);
  }
  bool undone(std::int64_t from, std::int64_t to, std::int64_t x, const Segment& g) const {
    for (std::int64_t z = from + 1; z < to; ++z) {
      const bool here = rule_.look_run || (z > g.a && z < g.b);
      if (here && is(rule_.voided_by, z) && (rule_.same_void < 0 || f(z, rule_.same_void) == f(x, rule_.same_x))) {
        return true;
      }
    }
    return false;
  }

  void needs(const Segment& g) {
    for (std::int64_t x = g.a + 1; x < g.b; ++x) {
      if (!is(rule_.x, x)) continue;
      std::int64_t previous = -1;
      for (std::int64_t p = g.a + 1; p < x; ++p) {
        if (is(rule_.x, p) && (rule_.same_x < 0 || f(p, rule_.same_x) == f(x, rule_.same_x))) previous = p;
      }
      bool ok = false;
      for (std::int64_t y = rule_.look_run ? 0 : g.a + 1; y < x; ++y) {
        const Tick age = t(x) - t(y);
        ok = ok || (is(rule_.y, y) && same(x, y) && (rule_.gap < 0 || age >= rule_.gap) &&
                    (rule_.within < 0 || age <= rule_.within) && !undone(y, x, x, g) && (!rule_.fresh || y > previous));
      }
      // a look over the whole run must not see through the opener: it is a record like any other there
      add(x, ok, t(x), 0, rule_.same_x < 0 ? -1 : static_cast<std::int64_t>(f(x, rule_.same_x)));
    }
  }

  void leads(const Segment& g) {
    std::map<std::int64_t, std::int64_t> answered;
    if (rule_.one_each) {
      for (std::int64_t y = g.a + 1; y < g.b; ++y) {
        if (!is(rule_.y, y)) continue;
        for (std::int64_t x = g.a + 1; x < y; ++x) {
          const bool waits = is(rule_.x, x) && answered.count(x) == 0 && same(x, y) &&
                             (rule_.within < 0 || t(y) - t(x) <= rule_.within) && !undone(x, y, x, g);
          if (!waits) continue;
          answered[x] = y;
          break;
        }
      }
    }
    for (std::int64_t x = g.a + 1; x < g.b; ++x) {
      if (!is(rule_.x, x)) continue;
      bool ok = answered.count(x) > 0;
      Tick settled = ok ? t(answered[x]) : g.tb;
      for (std::int64_t y = x + 1; y < g.b && !rule_.one_each && !ok; ++y) {
        ok = is(rule_.y, y) && same(x, y) && (rule_.within < 0 || t(y) - t(x) <= rule_.within) && !undone(x, y, x, g);
        if (ok) settled = t(y);
      }
      if (!ok) {
        for (std::int64_t z = g.b - 1; z > x; --z) {
          if (is(rule_.voided_by, z) && (rule_.same_void < 0 || f(z, rule_.same_void) == f(x, rule_.same_x))) {
            settled = t(z);
          }
        }
        if (rule_.within >= 0 && t(x) + rule_.within < settled) settled = t(x) + rule_.within + 1;
      }
      add(x, ok, settled, 0, rule_.same_x < 0 ? -1 : static_cast<std::int64_t>(f(x, rule_.same_x)));
    }
  }

  int step_of(std::int64_t i) const {
    for (std::size_t s = 0; s < rule_.steps.size(); ++s) {
      if (is(rule_.steps[s], i)) return static_cast<int>(s);
    }
    return -1;
  }

  void order_longest(const Segment& g) {
    std::map<std::int64_t, std::int64_t> length;
    std::int64_t most = 0;
    std::int64_t end = g.a;
    for (std::int64_t i = g.a + 1; i < g.b; ++i) {
      if (step_of(i) < 0) continue;
      length[i] = 1;
      for (const auto& [j, l] : length) {
        if (j < i && step_of(j) < step_of(i)) length[i] = std::max(length[i], l + 1);
      }
      if (length[i] > most) {
        most = length[i];
        end = i;
      }
    }
    const auto k = static_cast<std::int64_t>(rule_.steps.size());
    const std::int64_t ppm = std::min<std::int64_t>(999999, (most * 2000000 + k) / (2 * k));
    add(most > 0 ? end : g.a, most == k, most == k ? t(end) : g.tb, static_cast<std::int32_t>(ppm));
  }

  void order_first(const Segment& g) {
    std::map<int, std::int64_t> first;
    for (std::int64_t i = g.a + 1; i < g.b; ++i) {
      if (step_of(i) >= 0) first.emplace(step_of(i), i);
    }
    const int k = static_cast<int>(rule_.steps.size());
    for (int v = 0; v < k; ++v) {
      for (int u = 0; u < k; ++u) {
        const bool asked =
            rule_.group_of_step[static_cast<std::size_t>(u)] < rule_.group_of_step[static_cast<std::size_t>(v)];
        if (asked && first.count(v) > 0) add(first[v], first.count(u) > 0 && first[u] < first[v], t(first[v]));
      }
    }
  }

  // the condition from this instant on
  bool phi(Tick tick) const {
    std::vector<rules::Fluent> fluents(program_.vocabulary.kinds.size());
    for (std::int64_t i = 0; i < n_; ++i) {
      if (t(i) <= tick) fluents = after_[static_cast<std::size_t>(i)];
    }
    return truth_of(program_.expressions[static_cast<std::size_t>(rule_.condition)], nullptr, fluents) == Truth::Yes;
  }

  void hold(const Segment& g) {
    Tick run = 0, best = 0, settled = g.tb;
    for (Tick tick = g.ta; tick < g.tb; ++tick) {
      run = phi(tick) ? run + 1 : 0;
      if (run == rule_.duration && best < rule_.duration) settled = tick + 1;
      best = std::max(best, run);
    }
    const std::int64_t ppm =
        rule_.partial ? std::min<std::int64_t>(999999, (best * 2000000 + rule_.duration) / (2 * rule_.duration)) : 0;
    add(g.a, best >= rule_.duration, settled, static_cast<std::int32_t>(ppm));
  }

  void steady(const Segment& g) {
    for (std::int64_t x = g.a + 1; x < g.b; ++x) {
      if (!is(rule_.x, x)) continue;
      bool ok = t(x) - rule_.duration >= 0;
      for (Tick tick = std::max<Tick>(0, t(x) - rule_.duration); tick < t(x); ++tick) ok = ok && phi(tick);
      add(x, ok, t(x));
    }
  }

  void keep(const Segment& g) {
    Tick lost = 0, settled = g.tb;
    for (Tick tick = g.ta; tick < g.tb; ++tick) {
      if (phi(tick)) continue;
      if (++lost == rule_.budget + 1) settled = tick + 1;
    }
    std::int64_t ppm = 0;
    if (rule_.partial && rule_.budget > 0 && lost < 2 * rule_.budget) {
      ppm = std::min<std::int64_t>(999999, ((2 * rule_.budget - lost) * 2000000 + rule_.budget) / (2 * rule_.budget));
    }
    add(g.a, lost <= rule_.budget, settled, static_cast<std::int32_t>(ppm));
  }

  void measure(const Segment& g) {
    std::map<double, std::int64_t> picked;
    const auto value_of = [&](std::int32_t expression, std::int64_t i, double open) {
      if (expression < 0) return open;
      const auto u = static_cast<std::size_t>(i);
      return evaluate(program_.expressions[static_cast<std::size_t>(expression)], &trace_.records[u], after_[u])
          .value_si;
    };
    const auto one = [&](std::int64_t x, Tick settled) {
      const double q = value_of(rule_.value, x, 0.0);
      const bool ok = value_of(rule_.range_lo, x, -1e300) <= q && q <= value_of(rule_.range_hi, x, 1e300);
      add(x, ok, settled, 0, rule_.per < 0 ? -1 : static_cast<std::int64_t>(f(x, rule_.per)));
    };
    for (std::int64_t x = g.a + 1; x < g.b; ++x) {
      if (!is(rule_.x, x)) continue;
      const double key = rule_.per < 0 ? 0.0 : f(x, rule_.per);
      if (rule_.pick == rules::Pick::Each) one(x, t(x));
      if (rule_.pick == rules::Pick::First && picked.count(key) == 0) one(x, t(x));
      picked[key] = x;
    }
    if (rule_.pick != rules::Pick::Last) return;
    for (const auto& [key, x] : picked) one(x, g.tb);
  }

  bool conforms(const std::vector<int>& pass) const {
    const int n = rule_.set_size;
    bool up = true, down = true, far = true, pairs = true;
    for (int j = 0; j + 1 < n; ++j) {
      const auto u = static_cast<std::size_t>(j);
      const int way = ((pass[u + 1] - pass[u]) % n + n) % n;
      up = up && way == rule_.number;
      down = down && way == n - rule_.number;
      far = far && std::min(way, n - way) >= rule_.number;
      if (j % 2 == 0) pairs = pairs && way == n / 2;
    }
    switch (rule_.pattern) {
      case rules::Pattern::Any:
        return true;
      case rules::Pattern::Opposite:
        return pairs;
      case rules::Pattern::Crosswise:
        return far;
      case rules::Pattern::Skip:
        return up || down;
      case rules::Pattern::Listed:
        break;
    }
    for (const auto& sequence : rule_.sequences) {
      if (std::equal(pass.begin(), pass.end(), sequence.begin(), [](int a, std::uint8_t b) { return a == b; }))
        return true;
    }
    return false;
  }

  void rounds(const Segment& g) {
    std::vector<int> pass, before;
    int x = 0, complete = 0, good = 0;
    std::int64_t slips = 0;
    Tick settled = g.tb;
    for (std::int64_t i = g.a + 1; i < g.b; ++i) {
      if (!is(rule_.x, i)) continue;
      ++x;
      const int item = static_cast<int>(f(i, rule_.item));
      const bool again = pass.empty() && !before.empty() && before.back() == item && rule_.set_size > 1;
      if (again || std::find(pass.begin(), pass.end(), item) != pass.end()) {
        ++slips;
        continue;
      }
      pass.push_back(item);
      if (static_cast<int>(pass.size()) < rule_.set_size) continue;
      ++complete;
      const bool fits = conforms(pass);
      if (fits && ++good == rule_.passes && !rule_.strict) settled = t(i);
      if (!fits && rule_.strict && complete - good == 1) settled = t(i);
      before = pass;
      pass.clear();
    }
    if (x == 0 && rule_.if_any) return;
    const bool ok = good >= rule_.passes && (!rule_.strict || good == complete);
    const std::int64_t left = (ok ? 1000000 : 0) - rule_.per_slip_ppm * slips;
    const auto ppm = static_cast<std::int32_t>(std::max<std::int64_t>(0, left));
    add(g.a, ok && ppm == 1000000, settled, ppm);
  }

  void within(const Segment& g) {
    for (std::int64_t x = g.a + 1; x < g.b; ++x) {
      if (!is(rule_.x, x)) continue;
      const Tick due = t(x) + rule_.within;
      for (std::int64_t y = x + 1; y < g.b; ++y) {
        if (is(rule_.y, y)) return add(x, t(y) <= due, t(y) <= due ? t(y) : due + 1);
      }
      return add(x, false, due < g.tb ? due + 1 : g.tb);
    }
  }

  void recur(const Segment& g) {
    Tick last = g.ta, worst = 0, settled = g.tb;
    bool over = false;
    const auto gap = [&](Tick now) {
      worst = std::max(worst, now - last);
      if (now - last > rule_.duration && !over) {
        over = true;
        settled = last + rule_.duration + 1;
      }
      last = now;
    };
    for (std::int64_t i = g.a + 1; i < g.b; ++i) {
      if (is(rule_.x, i)) gap(t(i));
    }
    gap(g.tb);
    add(g.a, worst <= rule_.duration, settled);
  }

  const rules::RuleProgram& program_;
  const Rule& rule_;
  const event::Trace& trace_;
  std::int64_t n_;
  std::vector<std::vector<rules::Fluent>> after_;  // fluents once this record has been taken
  std::vector<ReferenceCase> out_;
};

}  // namespace

std::vector<ReferenceCase> reference_cases(const rules::RuleProgram& program, rules::RuleIndex rule,
                                           const event::Trace& trace) {
  return Reference(program, program.rules[static_cast<std::size_t>(rule)], trace).cases();
}

}  // namespace proofstand::testing
