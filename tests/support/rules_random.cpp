#include "tests/support/rules_random.h"

#include "sim/base/random.h"

namespace proofstand::testing {
namespace {

const char* const kKinds[] = {"must",   "never", "count",   "needs",  "leads",  "order", "hold",
                              "steady", "keep",  "measure", "rounds", "within", "recur"};

std::string letter(Draws& draws) { return std::string(1, static_cast<char>('A' + draws.below(6))); }

rules::SelectorSpec selector(Draws& draws) {
  switch (draws.below(7)) {
    case 0:
      return on(letter(draws), "value >= 2");
    case 1:
      return on(letter(draws), "item in [1, 2]");
    case 2:
      return on(letter(draws), "phi and not item == 3");
    default:
      return on(letter(draws));
  }
}

std::string seconds(Draws& draws, std::uint64_t least, std::uint64_t most) {
  return std::to_string(least + draws.below(most - least + 1)) + " s";
}

void give_scope(Draws& draws, rules::RuleSpec& spec) {
  const rules::SelectorSpec a = selector(draws);
  const rules::SelectorSpec b = draws.one_in(5) ? a : selector(draws);
  switch (draws.below(9)) {
    case 0:
      spec.scope = scope("after_first", a);
      break;
    case 1:
      spec.scope = scope("after_last", a);
      break;
    case 2:
      spec.scope = scope("before_first", {}, b);
      break;
    case 3:
      spec.scope = scope("until_first", {}, b);
      break;
    case 4:
      spec.scope = scope("between", a, b);
      break;
    case 5:
      spec.scope = scope("from_to", a, b);
      break;
    default:
      break;
  }
}

void give_pair(Draws& draws, rules::RuleSpec& spec) {
  spec.x = selector(draws);
  spec.y = selector(draws);
  if (draws.one_in(3)) spec.within = at(seconds(draws, 0, 6));
  if (spec.kind.text == "within") {
    spec.within = at(seconds(draws, 0, 6));
    return;
  }
  if (draws.one_in(3)) spec.voided_by = selector(draws);
  if (draws.one_in(3)) spec.same = at("item");
  if (spec.kind.text == "leads") {
    spec.one_each = draws.one_in(4);
    return;
  }
  spec.fresh = draws.one_in(4);
  spec.look_run = draws.one_in(4);
  if (draws.one_in(3) && !spec.within.given()) spec.gap = at(seconds(draws, 0, 5));
  if (draws.one_in(6)) {
    spec.gap = at(seconds(draws, 0, 3));
    spec.within = at(seconds(draws, 3, 7));
  }
}

void give_order(Draws& draws, rules::RuleSpec& spec) {
  spec.steps = {on("A"), on("B"), on("C", "value >= 2"), on("C", "value < 2")};
  if (draws.one_in(2)) spec.steps.pop_back();
  if (draws.one_in(3)) spec.first = true;
  if (draws.one_in(3))
    spec.groups = spec.steps.size() == 4 ? std::vector<std::vector<int>>{{0, 1}, {2, 3}}
                                         : std::vector<std::vector<int>>{{2}, {0, 1}};
}

void give_rounds(Draws& draws, rules::RuleSpec& spec) {
  static const char* const kPatterns[] = {"any", "opposite", "crosswise", "skip", "listed"};
  spec.x = on(letter(draws));
  spec.over = at("ring");
  spec.pattern = at(kPatterns[draws.below(5)]);
  if (spec.pattern.text == "crosswise") spec.number = static_cast<int>(1 + draws.below(2));
  if (spec.pattern.text == "skip") spec.number = 1;
  if (spec.pattern.text == "listed") {
    spec.sequences = {{at("bolt 1"), at("bolt 3"), at("bolt 2"), at("bolt 4")}};
    if (draws.one_in(2)) spec.symmetry = at(draws.one_in(2) ? "rotate" : "both");
  }
  spec.passes = static_cast<int>(1 + draws.below(2));
  spec.strict = draws.one_in(4);
  spec.if_any = draws.one_in(3);
  if (draws.one_in(4)) spec.per_slip_milli = 250;
}

}  // namespace

std::uint64_t Draws::below(std::uint64_t n) { return base::draw_below({seed_, "random rules", 0, count_++}, n); }

rules::RuleSpec random_rule_of(Draws& draws, const std::string& kind, const std::string& id) {
  static const char* const kCounts[] = {"1..", "2..", "0..1", "1..2", "2", "0..0", "3.."};
  rules::RuleSpec spec = rule(kind, id);
  give_scope(draws, spec);
  if (kind == "must" || kind == "never" || kind == "recur") spec.x = selector(draws);
  if (kind == "never" && draws.one_in(3)) spec.per_slip_milli = 300;
  if (kind == "recur") spec.duration = at(seconds(draws, 1, 6));
  if (kind == "count") {
    spec.x = selector(draws);
    spec.range = at(kCounts[draws.below(7)]);
    if (draws.one_in(3)) spec.distinct = at("item");
    spec.partial = draws.one_in(3);
  }
  if (kind == "needs" || kind == "leads" || kind == "within") give_pair(draws, spec);
  if (kind == "order") give_order(draws, spec);
  if (kind == "hold" || kind == "steady" || kind == "keep") {
    spec.condition = at("phi");
    if (kind == "keep") {
      spec.budget = at(seconds(draws, 0, 4));
    } else {
      spec.duration = at(seconds(draws, 1, 6));
    }
    if (kind == "steady") spec.x = selector(draws);
    spec.partial = kind != "steady" && draws.one_in(3);
  }
  if (kind == "measure") {
    static const char* const kPicks[] = {"each", "first", "last"};
    static const char* const kRanges[] = {"1..3", "2..", "..2", "2 +- 1"};
    spec.x = selector(draws);
    spec.value = at("value");
    spec.range = at(kRanges[draws.below(4)]);
    spec.pick = at(kPicks[draws.below(3)]);
    if (spec.pick.text != "each" && draws.one_in(2)) spec.per = at("item");
  }
  if (kind == "rounds") give_rounds(draws, spec);
  return spec;
}

rules::RuleSpec random_rule(Draws& draws, const std::string& id) {
  return random_rule_of(draws, kKinds[draws.below(13)], id);
}

event::Trace random_trace(Draws& draws, std::size_t most) {
  static constexpr base::Tick kSteps[] = {0, 0, 0, 1, 1, 1, 2, 3, 5};
  event::Trace trace;
  trace.ticks_per_s = 1;
  event::Record start;
  start.kind = 26;
  trace.records.push_back(start);
  base::Tick tick = 0;
  // a short alphabet now and then, so that rounds and chains have a chance
  const std::uint64_t letters = draws.one_in(3) ? 2 : 6;
  const std::uint64_t n = draws.below(most + 1);
  for (std::uint64_t i = 0; i < n; ++i) {
    tick += kSteps[draws.below(9)];
    event::Record record;
    record.tick = tick;
    if (draws.one_in(5)) {
      record.kind = 26;
      record.values[0] = static_cast<double>(draws.below(2));
    } else {
      record.kind = static_cast<event::KindId>(draws.below(letters));
      record.values[0] = static_cast<double>(draws.one_in(2) ? draws.below(4) : i % 4);
      record.values[1] = static_cast<double>(draws.below(5));
    }
    trace.records.push_back(record);
  }
  trace.end_tick = tick + static_cast<base::Tick>(draws.below(7));
  return trace;
}

}  // namespace proofstand::testing
