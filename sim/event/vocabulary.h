// What can be said about a run: kinds of records, their fields, and the sets their items come from. The bench's own
// list is made by job_vocabulary(); a trace of somebody's own may bring another in its header. Rules see nothing else.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/quantity.h"

namespace proofstand::event {

using KindId = std::uint16_t;
using SetId = std::uint16_t;
inline constexpr KindId kNoKind = 0xFFFF;
inline constexpr SetId kNoSet = 0xFFFF;

/// The type of one field.
enum class FieldType : std::uint8_t {
  Flag,      ///< yes or no
  Count,     ///< whole number without unit
  Item,      ///< one of an item set, kept as its index
  Choice,    ///< one of the field's own words, kept as its index
  Quantity,  ///< SI number of the field's dimension
};

/// May a mechanic perceive it (felt), or does only the bench know (truth)? Exams show and say felt fields alone.
enum class Standing : std::uint8_t { Felt, Truth };

/// One field of a kind.
struct Field {
  std::string name;
  FieldType type = FieldType::Flag;
  base::Dimension dimension = base::Dimension::Number;  ///< of a Quantity
  SetId set = kNoSet;                                   ///< of an Item
  std::vector<std::string> choices;                     ///< of a Choice
  double lo_si = 0.0;  ///< physical range of a Quantity or Count, for checking scenarios
  double hi_si = 0.0;
  Standing standing = Standing::Felt;
  std::string what;  ///< one line for authors
};

/// An occurrence happens at an instant. A change sets a fluent (a value that then stays until the next change); its one
/// field holds the new value and the fluent bears the kind's name.
enum class KindType : std::uint8_t { Occurrence, Change };

/// One kind of record.
struct Kind {
  std::string name;
  KindType type = KindType::Occurrence;
  std::vector<Field> fields;
  bool later = false;  ///< declared, not yet emitted by this bench
  std::string what;
};

/// How the items of a set lie, for rules about their order.
enum class Geometry : std::uint8_t {
  Plain,  ///< no neighbourhood
  Ring,   ///< index 0..n-1 round a circle
};

/// A named set of items: the bolts of the joint, the card's entries, the rotors in play.
struct ItemSet {
  std::string name;
  Geometry geometry = Geometry::Plain;
  std::vector<std::string> items;  ///< words as people use them; the index is the value in records
};

/// All of it. At most kMostFields fields a kind.
struct Vocabulary {
  static constexpr std::size_t kMostFields = 16;
  std::vector<Kind> kinds;
  std::vector<ItemSet> sets;

  [[nodiscard]] std::optional<KindId> find_kind(std::string_view name) const;
  [[nodiscard]] std::optional<SetId> find_set(std::string_view name) const;
  [[nodiscard]] static std::optional<std::size_t> find_field(const Kind& kind, std::string_view name);
  /// Index of an item's word in a set.
  [[nodiscard]] std::optional<std::size_t> find_item(SetId set, std::string_view word) const;
};

}  // namespace proofstand::event
