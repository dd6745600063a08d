// Who reads which kind of record: built once, so that a record costs only the rules that it concerns.
#include <algorithm>

#include "sim/base/byte_stream.h"
#include "sim/base/hash.h"
#include "sim/rules/draft.h"

namespace proofstand::rules {
namespace {

// everything of one rule that one kind of record may mean
struct Reading {
  event::KindId kind = event::kNoKind;
  RuleIndex rule = kNoRule;
  std::uint8_t bits = 0;
  std::int8_t step = -1;
  std::vector<Probe> probes;
};

class Readings {
 public:
  void add(const Selector& selector, RuleIndex rule, std::uint8_t bits, std::int8_t step = -1) {
    if (!selector.given()) return;
    Reading& reading = of(selector.kind, rule);
    if (selector.where >= 0) {
      reading.probes.push_back({selector.where, bits, step});
    } else if (step >= 0) {
      reading.step = step;
    } else {
      reading.bits = static_cast<std::uint8_t>(reading.bits | bits);
    }
  }
  void add_condition(const Expression& condition, RuleIndex rule) {
    for (const Instruction& step : condition.code) {
      if (step.op != Op::FluentValue && step.op != Op::KnownFluent) continue;
      Reading& reading = of(step.index, rule);
      reading.bits = static_cast<std::uint8_t>(reading.bits | kBitCondition);
    }
  }
  std::vector<Reading> list;

 private:
  Reading& of(event::KindId kind, RuleIndex rule) {
    for (Reading& reading : list) {
      if (reading.kind == kind && reading.rule == rule) return reading;
    }
    list.push_back({kind, rule, 0, -1, {}});
    return list.back();
  }
};

void add_rule(const RuleProgram& program, RuleIndex index, Readings& readings) {
  const Rule& rule = program.rules[static_cast<std::size_t>(index)];
  readings.add(rule.x, index, kBitX);
  readings.add(rule.y, index, kBitY);
  readings.add(rule.voided_by, index, kBitVoid);
  readings.add(rule.open, index, kBitOpen);
  readings.add(rule.close, index, kBitClose);
  for (std::size_t s = 0; s < rule.steps.size(); ++s) {
    readings.add(rule.steps[s], index, 0, static_cast<std::int8_t>(s));
  }
  if (rule.condition >= 0) {
    readings.add_condition(program.expressions[static_cast<std::size_t>(rule.condition)], index);
  }
}

void put_selector(base::ByteWriter& bytes, const Selector& selector) {
  bytes.put(static_cast<std::uint64_t>(selector.kind));
  bytes.put(static_cast<std::int64_t>(selector.where));
}

std::uint64_t fingerprint_of(const RuleProgram& program) {
  base::ByteWriter bytes;
  bytes.put(static_cast<std::uint64_t>(program.vocabulary.kinds.size()));
  bytes.put(program.ticks_per_s);
  bytes.put(static_cast<std::int64_t>(program.evidence.bad_cases));
  for (std::size_t i = 0; i < program.rules.size(); ++i) {
    const Rule& rule = program.rules[i];
    bytes.put(std::string_view(program.specs[i].id.text));
    for (std::int64_t number :
         {static_cast<std::int64_t>(rule.kind), static_cast<std::int64_t>(rule.form), rule.within, rule.gap,
          rule.duration, rule.budget, rule.count_lo, rule.count_hi, static_cast<std::int64_t>(rule.passes),
          static_cast<std::int64_t>(rule.number), static_cast<std::int64_t>(rule.set_size)}) {
      bytes.put(number);
    }
    for (const Selector* selector : {&rule.x, &rule.y, &rule.voided_by, &rule.open, &rule.close}) {
      put_selector(bytes, *selector);
    }
    for (const Selector& step : rule.steps) put_selector(bytes, step);
  }
  for (const Expression& expression : program.expressions) {
    for (const Instruction& step : expression.code) {
      bytes.put(static_cast<std::uint64_t>(step.op) * 65536u + step.index);
      bytes.put(step.value_si);
    }
  }
  return base::keyed_word(0x72756c65, 1, bytes.bytes());
}

FastPath fast_path(const Rule& rule, std::uint8_t bits) {
  if (rule.form != ScopeForm::Run) return FastPath::None;
  if (rule.kind == RuleKind::Needs && rule.same_x < 0 && rule.gap < 0 && !rule.fresh && !rule.keep_y && !rule.keep_z) {
    if (bits == kBitX) return FastPath::NeedsX;
    if (bits == kBitY) return FastPath::NeedsY;
    if (bits == kBitVoid) return FastPath::NeedsVoid;
  }
  const bool presence = rule.kind == RuleKind::Must || rule.kind == RuleKind::Never || rule.kind == RuleKind::Count;
  return presence && rule.distinct < 0 && bits == kBitX ? FastPath::PresenceX : FastPath::None;
}

bool passes_with_time(const Rule& rule) {
  switch (rule.kind) {
    case RuleKind::Leads:
    case RuleKind::Within:
      return rule.within >= 0;
    case RuleKind::Hold:
    case RuleKind::Keep:
    case RuleKind::Recur:
      return true;
    default:
      return false;
  }
}

}  // namespace

void build_dispatch(RuleProgram& program) {
  for (Rule& rule : program.rules) {
    rule.timed = rule.condition >= 0 || (rule.kind == RuleKind::Leads && rule.within >= 0);
  }
  Readings readings;
  for (std::size_t i = 0; i < program.rules.size(); ++i) {
    const auto index = static_cast<RuleIndex>(i);
    add_rule(program, index, readings);
    if (passes_with_time(program.rules[i])) program.timed.push_back(index);
    if (program.rules[i].stop) program.stops.push_back(index);
  }
  // rules of one kind side by side: the same code runs for a whole row of them
  std::sort(readings.list.begin(), readings.list.end(), [&](const Reading& a, const Reading& b) {
    const RuleKind ka = program.rules[static_cast<std::size_t>(a.rule)].kind;
    const RuleKind kb = program.rules[static_cast<std::size_t>(b.rule)].kind;
    if (a.kind != b.kind) return a.kind < b.kind;
    if (ka != kb) return ka < kb;
    if (a.bits != b.bits) return a.bits < b.bits;
    return a.rule < b.rule;
  });
  const std::size_t kinds = program.vocabulary.kinds.size();
  program.first_of_kind.assign(kinds + 1, 0);
  for (const Reading& reading : readings.list) {
    Subscription subscription;
    subscription.rule = reading.rule;
    subscription.bits = reading.bits;
    subscription.step = reading.step;
    subscription.probes = static_cast<std::uint16_t>(reading.probes.size());
    subscription.first_probe = static_cast<std::uint32_t>(program.probes.size());
    program.probes.insert(program.probes.end(), reading.probes.begin(), reading.probes.end());
    const Rule& rule = program.rules[static_cast<std::size_t>(reading.rule)];
    subscription.slot = rule.slot;
    subscription.within = rule.within;
    subscription.fast = reading.probes.empty() ? fast_path(rule, reading.bits) : FastPath::None;
    program.subscriptions.push_back(subscription);
    ++program.first_of_kind[reading.kind + 1u];
  }
  for (std::size_t k = 0; k < kinds; ++k) program.first_of_kind[k + 1] += program.first_of_kind[k];
  program.is_fluent.assign(kinds, 0);
  for (std::size_t k = 0; k < kinds; ++k) {
    const event::Kind& kind = program.vocabulary.kinds[k];
    program.is_fluent[k] = kind.type == event::KindType::Change && !kind.fields.empty() ? 1 : 0;
  }
  program.fingerprint = fingerprint_of(program);
}

}  // namespace proofstand::rules
