// A reproducible workload for rule engines: random records of 24 kinds, and rule sets whose number of violations is
// known from other engines. Kind k of the toy world's letters stands for kind k of the workload.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/event/record.h"
#include "sim/rules/compile.h"
#include "sim/rules/report.h"

namespace proofstand::testing {

/// The records, one after the other. Ticks count records, so that bounds are numbers of records.
/// source: xorshift64*, Vigna, ACM Transactions on Mathematical Software 42(4), 2016
class Workload {
 public:
  event::Record next();

 private:
  std::uint64_t draw();
  std::uint64_t below(std::uint64_t n);
  std::uint64_t state_ = 42 * 0x9E3779B97F4A7C15u + 1;
  std::int64_t index_ = 0;
};

/// The first n records at once.
std::vector<event::Record> workload_records(std::size_t n);

/// Every kind-1 record needs a kind-0 record at most n records back.
rules::CompileInput workload_needs_within(std::int64_t n);
/// Every kind-1 record needs a kind-2 record before it and no kind-0 record since.
rules::CompileInput workload_needs_void();
/// 20 rules, i = 0..19, on the kinds p = i, q = i+1, r = i+2 (from 24 round), by i mod 4: q needs p within 100 records;
/// never q from p to r; q needs r; q needs p void r. `times` such sets side by side.
rules::CompileInput workload_twenty(int times);

/// Lost cases and slips of all rules together.
std::int64_t violations(const rules::Report& report);

}  // namespace proofstand::testing
