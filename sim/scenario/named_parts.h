// The setup while it is being read: things by name, each remembering where in the file it stands.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/bench/setup.h"
#include "sim/scenario/field_reader.h"

namespace proofstand::scenario {

struct NamedParts {
  bench::BenchSetup setup;
  std::vector<Spot> thing_spots;  ///< by ThingId

  /// A set of bolts: its name and the things of its bolts in order.
  struct BoltSet {
    std::string name;
    std::vector<event::ThingId> bolts;
  };
  std::vector<BoltSet> bolt_sets;
  Spot hub_at;
  Spot sheet_torque_at;
  Spot sheet_tolerance_at;

  /// Adds a thing; S14 when the name is taken or unusable (empty, longer than 40 letters, with a dot or a quote).
  event::ThingId add(const Reading& reading, std::string name, bench::ThingKind kind, std::size_t part, const Spot& at);
  [[nodiscard]] std::optional<event::ThingId> find(std::string_view name) const;
  [[nodiscard]] const BoltSet* find_set(std::string_view name) const;
  /// Names of all things of a kind, for "did you mean".
  [[nodiscard]] std::vector<std::string_view> names_of(bench::ThingKind kind) const;
};

}  // namespace proofstand::scenario
