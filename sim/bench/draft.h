// An event in the making, for kinds whose fields are not all known each time.
#pragma once

#include <string_view>

#include "sim/bench/world.h"

namespace proofstand::bench {

/// A field's value as records keep it: SI, or the whole number of an item, choice, count or flag.
using FieldNumber = double;

/// Collects fields by name; emit() appends the record. Fields never named stay unknown.
class Draft {
 public:
  Draft(const World& world, std::string_view kind);
  /// A number or an index as it is.
  Draft& with(std::string_view field, FieldNumber value);
  /// Only when known; else the field stays unknown.
  Draft& with_if(bool known, std::string_view field, FieldNumber value);
  /// A choice by its word.
  Draft& choose(std::string_view field, std::string_view word);
  void emit();

 private:
  const World& world_;
  std::string_view kind_;
  event::Record record_;
};

/// A thing's value in the events' thing fields.
inline FieldNumber thing_value(ThingId thing) { return static_cast<double>(event::index_of(thing)); }
inline FieldNumber bolt_value(BoltId bolt) { return static_cast<double>(event::index_of(bolt)); }
inline FieldNumber hand_value(HandId hand) { return static_cast<double>(hand); }

}  // namespace proofstand::bench
