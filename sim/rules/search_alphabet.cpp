// The letters of the search: one record for every difference that some rule can see.
#include <algorithm>
#include <set>

#include "sim/rules/record_space.h"
#include "sim/rules/search_parts.h"

namespace proofstand::rules {
namespace {

constexpr double kHuge = 1.7976931348623157e308;
constexpr std::int64_t kMostCombinations = 100'000;
constexpr std::int64_t kMostSettings = 64;
constexpr std::size_t kMostLettersOfKind = 400;
// a prime that shares no divisor with a product of small numbers, so that its multiples visit all of them in turn
constexpr std::int64_t kSpread = 1'000'003;

// what is judged about the records of one kind
struct KindUse {
  bool read = false;
  std::vector<std::int32_t> conditions;  ///< expressions
  std::vector<std::int32_t> keys;        ///< fields of which every value counts
  std::int64_t different = 1;            ///< most different values that a count asks for
};

// "the value lies in its range", as a condition like any other
std::int32_t add_range(RuleProgram& program, const Rule& rule) {
  Expression inside = program.expressions[static_cast<std::size_t>(rule.value)];
  const auto append = [&](std::int32_t bound, double open_si) {
    if (bound < 0) {
      inside.code.push_back({Op::Constant, 0, open_si});
      return;
    }
    const std::vector<Instruction>& code = program.expressions[static_cast<std::size_t>(bound)].code;
    inside.code.insert(inside.code.end(), code.begin(), code.end());
  };
  append(rule.range_lo, -kHuge);
  append(rule.range_hi, kHuge);
  inside.code.push_back({Op::Inside, 0, 0.0});
  program.expressions.push_back(std::move(inside));
  return static_cast<std::int32_t>(program.expressions.size()) - 1;
}

void note_selector(const Selector& selector, std::vector<KindUse>& uses) {
  if (!selector.given()) return;
  uses[selector.kind].read = true;
  if (selector.where >= 0) uses[selector.kind].conditions.push_back(selector.where);
}

void note_key(const Selector& selector, std::int32_t field, std::vector<KindUse>& uses) {
  if (selector.given() && field >= 0) uses[selector.kind].keys.push_back(field);
}

void note_fluents(const RuleProgram& program, std::int32_t expression, std::vector<KindUse>& uses) {
  if (expression < 0) return;
  for (const Instruction& step : program.expressions[static_cast<std::size_t>(expression)].code) {
    if (step.op == Op::FluentValue || step.op == Op::KnownFluent) uses[step.index].read = true;
  }
}

std::vector<KindUse> uses_of(RuleProgram& program) {
  std::vector<KindUse> uses(program.vocabulary.kinds.size());
  for (const Rule& rule : program.rules) {
    std::vector<Selector> all = {rule.x, rule.y, rule.voided_by, rule.open, rule.close};
    all.insert(all.end(), rule.steps.begin(), rule.steps.end());
    for (const Selector& selector : all) {
      note_selector(selector, uses);
      note_fluents(program, selector.where, uses);
    }
    note_fluents(program, rule.condition, uses);
    for (std::int32_t field : {rule.same_x, rule.distinct, rule.per, rule.item}) note_key(rule.x, field, uses);
    if (rule.distinct >= 0 && rule.x.given()) {
      std::int64_t& most = uses[rule.x.kind].different;
      most = std::max(most, std::min<std::int64_t>(16, std::max(rule.count_lo, rule.count_hi)));
    }
    note_key(rule.y, rule.same_y, uses);
    note_key(rule.voided_by, rule.same_void, uses);
    if (rule.kind == RuleKind::Measure) uses[rule.x.kind].conditions.push_back(add_range(program, rule));
  }
  return uses;
}

// values of a change record: whatever some condition compares the fluent with
std::vector<double> fluent_values(const RuleProgram& program, event::KindId kind) {
  std::vector<std::int32_t> readers;
  for (std::size_t e = 0; e < program.expressions.size(); ++e) {
    for (const Instruction& step : program.expressions[e].code) {
      if ((step.op == Op::FluentValue || step.op == Op::KnownFluent) && step.index == kind) {
        readers.push_back(static_cast<std::int32_t>(e));
      }
    }
  }
  for (const TriedName& name : record_space(program, event::kNoKind, readers).names) {
    if (name.fluent && name.index == kind) return name.values_si;
  }
  return {};
}

void try_all_items(const RuleProgram& program, event::KindId kind, const KindUse& use, RecordSpace& space) {
  for (std::int32_t key : use.keys) {
    const event::Field& field = program.vocabulary.kinds[kind].fields[static_cast<std::size_t>(key)];
    const auto index = static_cast<std::uint16_t>(key);
    auto at = std::find_if(space.names.begin(), space.names.end(),
                           [&](const TriedName& name) { return !name.fluent && name.index == index; });
    if (at == space.names.end()) {
      space.names.push_back({false, index, {0.0, 1.0}});
      at = space.names.end() - 1;
    }
    std::size_t words = 0;
    if (field.type == event::FieldType::Item) words = program.vocabulary.sets[field.set].items.size();
    if (field.type == event::FieldType::Choice) words = field.choices.size();
    if (words == 0) {
      // numbers: as many different ones as a count may ask for, and one more
      at->values_si.clear();
      for (std::int64_t i = 0; i <= use.different; ++i) at->values_si.push_back(field.lo_si + static_cast<double>(i));
      continue;
    }
    at->values_si.clear();
    for (std::size_t i = 0; i < words; ++i) at->values_si.push_back(static_cast<double>(i));
  }
}

// what every condition says of a record, under every setting of the fluents they read (as far as there are few)
void add_answers(const RuleProgram& program, const KindUse& use, const RecordSpace& settings,
                 const event::Record& record, std::vector<double>& signature) {
  std::vector<Fluent> fluents(program.vocabulary.kinds.size());
  event::Record unused;
  for (std::int64_t i = 0; i < std::min(settings.size, kMostSettings); ++i) {
    settings.make(i, unused, fluents);
    for (std::int32_t condition : use.conditions) {
      const Expression& expression = program.expressions[static_cast<std::size_t>(condition)];
      signature.push_back(static_cast<double>(truth_of(expression, &record, fluents)));
    }
  }
}

void add_letters(const RuleProgram& program, event::KindId kind, const KindUse& use, Alphabet& alphabet) {
  RecordSpace space = record_space(program, kind, use.conditions);
  RecordSpace settings;
  settings.kind = kind;
  // fluents are set by letters of their own; here only the record's fields vary
  for (const TriedName& name : space.names) {
    if (name.fluent) settings.names.push_back(name);
  }
  const auto is_fluent = [](const TriedName& name) { return name.fluent; };
  space.names.erase(std::remove_if(space.names.begin(), space.names.end(), is_fluent), space.names.end());
  for (const TriedName& name : settings.names) settings.size *= name.choices();
  try_all_items(program, kind, use, space);
  if (program.is_fluent[kind] != 0) {
    const std::vector<double> values_si = fluent_values(program, kind);
    if (!values_si.empty()) space.names.push_back({false, 0, values_si, false});
  }
  std::int64_t size = 1;
  for (const TriedName& name : space.names) size *= name.choices();
  alphabet.exact = alphabet.exact && space.exact && size <= kMostCombinations && settings.size <= kMostSettings;
  // records that every condition answers alike are one letter; where there are too many to try, a spread of them
  std::set<std::vector<double>> seen;
  std::vector<Fluent> fluents(program.vocabulary.kinds.size());
  for (std::int64_t i = 0; i < std::min(size, kMostCombinations) && seen.size() < kMostLettersOfKind; ++i) {
    event::Record record;
    space.make(size <= kMostCombinations ? i : i * kSpread % size, record, fluents);
    std::vector<double> signature;
    for (std::int32_t key : use.keys) signature.push_back(record.values[static_cast<std::size_t>(key)]);
    if (program.is_fluent[kind] != 0) signature.push_back(record.values[0]);
    add_answers(program, use, settings, record, signature);
    if (seen.insert(std::move(signature)).second) alphabet.letters.push_back(record);
  }
  if (seen.size() >= kMostLettersOfKind) alphabet.exact = false;
}

}  // namespace

Alphabet alphabet_of(const RuleProgram& given) {
  RuleProgram program = given;
  const std::vector<KindUse> uses = uses_of(program);
  Alphabet alphabet;
  for (std::size_t k = 0; k < uses.size(); ++k) {
    const auto kind = static_cast<event::KindId>(k);
    if (uses[k].read && kind != program.pass_done) add_letters(program, kind, uses[k], alphabet);
  }
  std::set<base::Tick> pauses;
  for (const Rule& rule : program.rules) {
    for (base::Tick bound : {rule.within, rule.gap, rule.duration, rule.budget}) {
      if (bound <= 0) continue;
      pauses.insert(bound);
      pauses.insert(bound + 1);
      alphabet.exact = false;
    }
  }
  alphabet.pauses = {1};
  for (base::Tick pause : pauses) {
    if (pause > 1) alphabet.pauses.push_back(pause);
  }
  return alphabet;
}

}  // namespace proofstand::rules
