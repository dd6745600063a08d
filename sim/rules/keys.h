// Places of what a rule remembers per value of a field: by index for items, sorted otherwise. Private to the engine.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/event/record.h"

namespace proofstand::rules {

inline constexpr std::size_t kNoKey = static_cast<std::size_t>(-1);

/// The key's place, made when new; kNoKey when the field's value is not known. Without a field there is one place, 0.
/// add(place) makes room at a place; places after it move up.
template <class Add>
std::size_t place_of_key(std::vector<double>& key_values_si, const event::Record& record, std::int32_t field,
                         Add&& add) {
  if (field < 0) {
    if (key_values_si.empty()) {
      key_values_si.push_back(0.0);
      add(0);
    }
    return 0;
  }
  const auto f = static_cast<std::size_t>(field);
  if (!record.knows(f)) return kNoKey;
  const double value_si = record.values[f];
  std::size_t place = 0;
  while (place < key_values_si.size() && key_values_si[place] < value_si) ++place;
  if (place < key_values_si.size() && key_values_si[place] == value_si) return place;
  key_values_si.insert(key_values_si.begin() + static_cast<std::ptrdiff_t>(place), value_si);
  add(place);
  return place;
}

}  // namespace proofstand::rules
