#include "sim/scenario/named_parts.h"

#include <utility>

namespace proofstand::scenario {
namespace {

bool usable_name(std::string_view name) {
  if (name.empty() || name.size() > 40 || name.front() == ' ' || name.back() == ' ') return false;
  return name.find_first_of(".\"\\\n\t") == std::string_view::npos;
}

}  // namespace

event::ThingId NamedParts::add(const Reading& reading, std::string name, bench::ThingKind kind, std::size_t part,
                               const Spot& at) {
  if (!usable_name(name)) {
    reading.error("S14", at, "\"" + name + "\" cannot be a name",
                  "use up to 40 letters, digits and blanks, without dots or quotes");
  } else if (find(name)) {
    reading.error("S14", at, "there is already a thing called \"" + name + "\"", "give each thing a name of its own");
  }
  const auto id = static_cast<event::ThingId>(setup.things.size());
  setup.things.push_back({std::move(name), kind, part});
  thing_spots.push_back(at);
  return id;
}

std::optional<event::ThingId> NamedParts::find(std::string_view name) const {
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    if (setup.things[i].name == name) return static_cast<event::ThingId>(i);
  }
  return std::nullopt;
}

const NamedParts::BoltSet* NamedParts::find_set(std::string_view name) const {
  for (const BoltSet& set : bolt_sets) {
    if (set.name == name) return &set;
  }
  return nullptr;
}

std::vector<std::string_view> NamedParts::names_of(bench::ThingKind kind) const {
  std::vector<std::string_view> names;
  for (const bench::Thing& thing : setup.things) {
    if (thing.kind == kind) names.emplace_back(thing.name);
  }
  return names;
}

}  // namespace proofstand::scenario
