#include "sim/hand/work.h"

#include "sim/base/number_text.h"
#include "sim/base/random.h"

namespace proofstand::hand {

const std::string& Work::name(ThingId thing) const {
  static const std::string nothing = "nothing";
  return thing == kNoThing ? nothing : setup().things[event::index_of(thing)].name;
}

HandId Work::hand_of(WhichHand which, HandId unsaid) const {
  switch (which) {
    case WhichHand::Left:
      return HandId::Left;
    case WhichHand::Right:
      return HandId::Right;
    case WhichHand::Main:
      return memory.main;
    case WhichHand::Other:
      return other(memory.main);
    case WhichHand::Unsaid:
    case WhichHand::Both:
      break;
  }
  return unsaid;
}

void Work::act(event::Action action) {
  action.tick = now();
  events_before_ = bench->events().size();
  (*sink)(action);
}

void Work::Pause::await_suspend(std::coroutine_handle<> self) const noexcept {
  work.waiting.innermost = self;
  work.wake = work.now() + (ticks < 1 ? 1 : ticks);
}

// the dull tap of a refusal is felt; its code tells why
std::string Work::last_refusal() const {
  const auto& events = bench->events();
  const auto refused = bench->vocabulary().find_kind("refused");
  for (std::size_t i = events.size(); i > 0; --i) {
    const event::Record& record = events[i - 1];
    if (now() - record.tick > base::kTicksPerSecond) break;
    if (!refused || record.kind != *refused) continue;
    const event::Kind& kind = bench->vocabulary().kinds[*refused];
    const auto why = event::Vocabulary::find_field(kind, "why");
    if (!why || !record.knows(*why)) break;
    return " (refused: " + kind.fields[*why].choices[static_cast<std::size_t>(record.values[*why])] + ")";
  }
  return "";
}

Work::Pause Work::give_up(std::string what, std::string instead) {
  stuck = true;
  trouble.code = "hand-stuck";
  trouble.where = script_.file + ":" + base::text_from_int(static_cast<std::int64_t>(line ? line->line : 0));
  trouble.what = "\"" + (line ? line->text : std::string()) + "\": " + what + last_refusal();
  trouble.instead = std::move(instead);
  return {*this, 1};
}

double Work::normal(std::string_view purpose, std::uint64_t count) const {
  return base::draw_normal({seed_, purpose, serial(), count});
}
double Work::unit(std::string_view purpose, std::uint64_t count) const {
  return base::draw_unit({seed_, purpose, serial(), count});
}

}  // namespace proofstand::hand
