#include "sim/desk/hand_words.h"

#include "sim/base/number_text.h"
#include "sim/bench/hold_sight.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

// levels at which a pull is called firm, and all one has
constexpr std::int64_t kFirmLevel = 192;
constexpr std::int64_t kFullLevel = 448;

std::string name_of(const bench::Bench& bench, event::ThingId thing) {
  return tr(bench.setup().things[event::index_of(thing)].name.c_str());
}

std::string where_words(const bench::Bench& bench, const bench::HoldSight& sight) {
  if (sight.at_thing == event::kNoThing) return {};
  std::string out;
  if (sight.at_bolt != event::kNoBolt) {
    out = tr("bolt {0}", {base::text_from_int(static_cast<std::int64_t>(event::index_of(sight.at_bolt)) + 1)});
  } else {
    out = name_of(bench, sight.at_thing);
  }
  if (sight.at_place != event::PlaceKind::Body && sight.at_place != event::PlaceKind::None) {
    out += std::string(", ") + tr(std::string(event::words_of(sight.at_place)).c_str());
  }
  return out;
}

std::string doing_words(const bench::Bench& bench, const bench::HoldSight& sight, hand::HandDoing doing) {
  const bool holds = sight.holding != event::kNoThing;
  const std::string thing = holds ? name_of(bench, sight.holding) : std::string();
  switch (doing) {
    case hand::HandDoing::Busy:
      return holds ? tr("on its way with the {0}", {thing}) : std::string(tr("on its way"));
    case hand::HandDoing::Free:
      return holds ? tr("holds the {0}", {thing}) : std::string(tr("empty"));
    case hand::HandDoing::At:
      if (sight.near) return tr("near, not touching");
      return holds ? tr("rests with the {0}", {thing}) : std::string(tr("rests"));
    case hand::HandDoing::Work:
      break;
  }
  if (sight.hold.contact == bench::Contact::Face) return holds ? tr("strokes with the {0}", {thing}) : tr("strokes");
  if (sight.hold.twirls) return holds ? tr("twirls the {0}", {thing}) : std::string(tr("twirls"));
  if (sight.hold.turns && sight.turn_level > 0) {
    return holds ? tr("pulls the {0}", {thing}) : std::string(tr("pulls"));
  }
  return holds ? tr("presses the {0}", {thing}) : std::string(tr("presses"));
}

}  // namespace

HandWords hand_words(const bench::Bench& bench, const hand::TwoHands& hands, event::HandId hand, bool exam) {
  const bench::HoldSight sight = bench::see_hold(bench, hand);
  const hand::HandDoing doing = hands.doing(hand);
  HandWords out;
  out.who = hand == event::HandId::Left ? tr("left") : tr("right");
  out.who += std::string(" · ") + (sight.gloved ? tr("gloved") : tr("bare"));
  out.doing = doing_words(bench, sight, doing);
  if (doing == hand::HandDoing::At || doing == hand::HandDoing::Work) {
    out.where = where_words(bench, sight);
    const bool grips =
        sight.holding != event::kNoThing && sight.grip != event::Grip::None && sight.grip != event::Grip::Fingers;
    if (grips) out.where += std::string(" · ") + tr(std::string(event::words_of(sight.grip)).c_str());
  }
  out.active = hands.active() == hand;
  out.keeps = sight.kept || (!out.active && doing != hand::HandDoing::Free);
  const std::int64_t level = std::max(sight.turn_level, sight.along_level);
  if (!exam && doing == hand::HandDoing::Work && level > 0) {
    out.effort = level < kFirmLevel ? tr("light") : level < kFullLevel ? tr("firm") : tr("all you have");
  }
  return out;
}

}  // namespace proofstand::desk
