#include "sim/hand/script_match.h"

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/event/grips.h"
#include "sim/event/places.h"
#include "sim/hand/script_forms.h"

namespace proofstand::hand {
namespace {

using bench::BenchSetup;

// where one form stands in one line
struct Walk {
  std::string_view line;
  const std::vector<Word>& words;
  const BenchSetup& setup;
  Instruction out;
  std::size_t at = 0;
  std::size_t furthest = 0;
  std::string wanted;

  bool fail(std::string want) {
    if (at >= furthest) {
      furthest = at;
      wanted = std::move(want);
    }
    return false;
  }
  [[nodiscard]] bool more() const { return at < words.size(); }
};

const Slot& slot_named(std::string_view name) {
  for (const Slot& slot : script_slots()) {
    if (slot.name == name) return slot;
  }
  STAND_ASSERT(false && "every slot of a form is in the list of slots");
  return script_slots().front();
}

// "drop" stands for "drops" too
bool same_word(std::string_view written, std::string_view known) {
  return written == known ||
         (known.size() == written.size() + 1 && known.back() == 's' && known.substr(0, written.size()) == written);
}

// how many words of the line spell this name; 0 when it is another
std::size_t spells(const Walk& walk, std::string_view name) {
  const std::vector<std::string> parts = words_of_pattern(name);
  if (parts.empty() || walk.at + parts.size() > walk.words.size()) return 0;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (walk.words[walk.at + i].text != parts[i]) return 0;
  }
  return parts.size();
}

// the longest of several names that the line spells here; its index, or n when none
template <class NameAt>
std::size_t longest_name(Walk& walk, std::size_t n, NameAt name_at) {
  std::size_t best = n;
  std::size_t longest = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const std::size_t length = spells(walk, name_at(i));
    if (length > longest) {
      longest = length;
      best = i;
    }
  }
  walk.at += longest;
  return best;
}

bool take_thing(Walk& walk, const Slot& slot) {
  const auto& things = walk.setup.things;
  const std::size_t i = longest_name(walk, things.size(), [&](std::size_t k) { return things[k].name; });
  if (i == things.size()) return walk.fail(std::string(slot.words));
  const event::ThingId id = static_cast<event::ThingId>(i);
  (slot.type == SlotType::Tool ? walk.out.tool : walk.out.thing) = id;
  return true;
}

bool take_bolt(Walk& walk, const Slot& slot) {
  if (!walk.more()) return walk.fail(std::string(slot.words));
  const auto number = base::int_from_text(walk.words[walk.at].text);
  const auto count = static_cast<std::int64_t>(walk.setup.bolt_count());
  if (!number || *number < 1 || *number > count) {
    return walk.fail("a bolt position from 1 to " + base::text_from_int(count));
  }
  walk.out.bolt = static_cast<event::BoltId>(*number - 1);
  ++walk.at;
  return true;
}

bool take_place(Walk& walk, const Slot& slot) {
  const auto& places = event::place_table();
  const std::size_t i = longest_name(walk, places.size(), [&](std::size_t k) { return places[k].words; });
  if (i == places.size() || places[i].kind == event::PlaceKind::None) return walk.fail(std::string(slot.words));
  walk.out.place = places[i].kind;
  return !places[i].numbered || take_bolt(walk, slot_named("n"));
}

bool take_hand(Walk& walk, const Slot& slot) {
  static const std::vector<std::pair<std::string_view, WhichHand>> hands = {
      {"left hand", WhichHand::Left},   {"right hand", WhichHand::Right}, {"main hand", WhichHand::Main},
      {"other hand", WhichHand::Other}, {"both hands", WhichHand::Both},
  };
  const std::size_t i = longest_name(walk, hands.size(), [&](std::size_t k) { return hands[k].first; });
  if (i == hands.size()) return walk.fail(std::string(slot.words));
  walk.out.hand = hands[i].second;
  return true;
}

bool take_quantity(Walk& walk, const Slot& slot) {
  if (!walk.more()) return walk.fail(std::string(slot.words));
  // "5 N·m" is two words, "5N·m" one: the longer reading wins
  for (std::size_t n = 2; n >= 1; --n) {
    if (walk.at + n > walk.words.size()) continue;
    std::string text = walk.words[walk.at].text;
    if (n == 2) text += " " + walk.words[walk.at + 1].text;
    const base::Result<double> value = base::parse_quantity_as(text, slot.dimension);
    if (!value.has_value()) continue;
    walk.out.*slot.number = value.value();
    walk.at += n;
    return true;
  }
  return walk.fail(std::string(slot.words));
}

bool take_slot(Walk& walk, const Slot& slot) {
  switch (slot.type) {
    case SlotType::Thing:
    case SlotType::Tool:
      return take_thing(walk, slot);
    case SlotType::Bolt:
      return take_bolt(walk, slot);
    case SlotType::Place:
      return take_place(walk, slot);
    case SlotType::Hand:
      return take_hand(walk, slot);
    case SlotType::Quantity:
      return take_quantity(walk, slot);
    case SlotType::Grip: {
      const auto& grips = event::grip_words();
      const std::size_t i = longest_name(walk, grips.size(), [&](std::size_t k) { return grips[k]; });
      if (i == grips.size() || i == 0) return walk.fail(std::string(slot.words));
      walk.out.grip = static_cast<event::Grip>(i);
      return true;
    }
    case SlotType::Entry: {
      const auto& card = walk.setup.card;
      const std::size_t i = longest_name(walk, card.size(), [&](std::size_t k) { return card[k].name; });
      if (i == card.size()) return walk.fail(std::string(slot.words));
      walk.out.entry = static_cast<event::CardEntryId>(i);
      return true;
    }
    case SlotType::Text: {
      if (!walk.more()) return walk.fail(std::string(slot.words));
      walk.out.words = std::string(base::trimmed(walk.line.substr(walk.words[walk.at].begin)));
      walk.at = walk.words.size();
      return true;
    }
  }
  return false;
}

bool take_pattern(Walk& walk, std::string_view pattern) {
  for (const std::string& part : words_of_pattern(pattern)) {
    if (part.front() == '<') {
      if (!take_slot(walk, slot_named(std::string_view(part).substr(1, part.size() - 2)))) return false;
    } else if (walk.more() && same_word(walk.words[walk.at].text, part)) {
      ++walk.at;
    } else {
      return walk.fail("\"" + part + "\"");
    }
  }
  return true;
}

// clauses in any order, each a whole or not at all
bool take_clauses(Walk& walk, const Form& form) {
  while (walk.more()) {
    bool taken = false;
    for (const Clause& clause : form.clauses) {
      const std::size_t before = walk.at;
      const Instruction kept = walk.out;
      if (take_pattern(walk, clause.pattern)) {
        walk.out.said |= static_cast<std::uint32_t>(clause.says);
        taken = true;
        break;
      }
      walk.at = before;
      walk.out = kept;
    }
    if (!taken) {
      if (walk.furthest <= walk.at) {
        walk.furthest = walk.at;
        walk.wanted.clear();
      }
      return false;
    }
  }
  return true;
}

}  // namespace

Matched match_line(std::string_view line, const std::vector<Word>& words, const BenchSetup& setup) {
  Matched best;
  for (const Form& form : script_forms()) {
    Walk walk{line, words, setup, {}, 0, 0, {}};
    walk.out.doing = form.doing;
    walk.out.said = static_cast<std::uint32_t>(form.says);
    const bool head = take_pattern(walk, form.head);
    if (head && take_clauses(walk, form)) {
      best.ok = true;
      best.instruction = walk.out;
      return best;
    }
    if (best.nearest.empty() ? walk.furthest > 0 : walk.furthest > best.at) {
      best.at = walk.furthest;
      best.wanted = walk.wanted;
      best.nearest = form.head;
      best.clauses.clear();
      if (head) {
        for (const Clause& clause : form.clauses) best.clauses.emplace_back(clause.pattern);
      }
    }
  }
  return best;
}

}  // namespace proofstand::hand
