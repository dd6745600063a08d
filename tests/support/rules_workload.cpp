#include "tests/support/rules_workload.h"

#include "tests/support/rules_toy.h"

namespace proofstand::testing {

std::uint64_t Workload::draw() {
  state_ ^= state_ >> 12;
  state_ ^= state_ << 25;
  state_ ^= state_ >> 27;
  return state_ * 2685821657736338717u;
}

std::uint64_t Workload::below(std::uint64_t n) { return ((draw() >> 32) * n) >> 32; }

event::Record Workload::next() {
  event::Record record;
  // the workload's own clock; the bounds of these rule sets count records instead
  below(199);
  record.tick = index_++;
  record.kind = static_cast<event::KindId>(below(24));
  record.values[1] = static_cast<double>(draw() >> 11) / 9007199254740992.0 * 100.0;
  return record;
}

std::vector<event::Record> workload_records(std::size_t n) {
  Workload workload;
  std::vector<event::Record> records;
  records.reserve(n);
  for (std::size_t i = 0; i < n; ++i) records.push_back(workload.next());
  return records;
}

namespace {

std::string kind_name(int k) { return std::string(1, static_cast<char>('A' + k % 24)); }

rules::CompileInput usual(std::vector<rules::RuleSpec> specs) {
  rules::CompileInput input = toy_input(std::move(specs));
  input.evidence = {};
  return input;
}

rules::RuleSpec needs(const std::string& id, int x, int y) {
  rules::RuleSpec spec = rule("needs", id);
  spec.x = on(kind_name(x));
  spec.y = on(kind_name(y));
  return spec;
}

}  // namespace

rules::CompileInput workload_needs_within(std::int64_t n) {
  rules::RuleSpec spec = needs("f1", 1, 0);
  spec.within = at(std::to_string(n) + " s");
  return usual({spec});
}

rules::CompileInput workload_needs_void() {
  rules::RuleSpec spec = needs("f2", 1, 2);
  spec.voided_by = on(kind_name(0));
  return usual({spec});
}

rules::CompileInput workload_twenty(int times) {
  std::vector<rules::RuleSpec> specs;
  for (int i = 0; i < 20 * times; ++i) {
    const int p = i % 20;
    const std::string id = "r" + std::to_string(i);
    rules::RuleSpec spec = needs(id, p + 1, p % 4 == 2 ? p + 2 : p);
    if (p % 4 == 0) spec.within = at("100 s");
    if (p % 4 == 3) spec.voided_by = on(kind_name(p + 2));
    if (p % 4 == 1) {
      spec = rule("never", id);
      spec.x = on(kind_name(p + 1));
      spec.scope = scope("from_to", on(kind_name(p)), on(kind_name(p + 2)));
    }
    specs.push_back(spec);
  }
  return usual(std::move(specs));
}

std::int64_t violations(const rules::Report& report) {
  std::int64_t sum = 0;
  for (const rules::RuleResult& result : report.rules) sum += result.slips > 0 ? result.slips : result.bad;
  return sum;
}

}  // namespace proofstand::testing
