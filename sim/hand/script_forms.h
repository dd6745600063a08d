// The table of instruction forms: what the reader accepts, what messages suggest and what the page for authors prints
// all come from it. Private to this floor.
#pragma once

#include <string_view>
#include <vector>

#include "sim/base/quantity.h"
#include "sim/hand/script.h"

namespace proofstand::hand {

/// A further thing that a line may say, in any order after its head.
struct Clause {
  std::string_view pattern;  ///< words and <slots>
  Say says = Say::Nothing;
};

/// One instruction form.
struct Form {
  Doing doing = Doing::Wait;
  std::string_view head;  ///< words and <slots>, in order
  std::vector<Clause> clauses;
  std::string_view what;     ///< one line for authors
  std::string_view example;  ///< reads cleanly against any six-bolt setup with the usual names
  Say says = Say::Nothing;
};

/// What a slot takes.
enum class SlotType : std::uint8_t { Thing, Tool, Bolt, Place, Grip, Hand, Entry, Text, Quantity };

/// A slot by name: its type and, for a quantity, where its number goes.
struct Slot {
  std::string_view name;
  SlotType type = SlotType::Thing;
  base::Dimension dimension = base::Dimension::Number;
  std::optional<double> Instruction::*number = nullptr;
  std::string_view words;  ///< for messages: "an angle, such as 3°"
};

/// Every form once; forms that begin alike stand longest first.
const std::vector<Form>& script_forms();
/// Every slot once.
const std::vector<Slot>& script_slots();
/// Words that a line may contain without saying anything.
bool is_filler(std::string_view word);

}  // namespace proofstand::hand
