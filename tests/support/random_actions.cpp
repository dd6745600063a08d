#include "tests/support/random_actions.h"

#include "sim/base/random.h"

namespace proofstand::testing {
namespace {

using event::Action;
using event::ActionKind;
using event::Grip;
using event::HandId;
using event::PlaceKind;

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : seed_(seed) {}
  std::uint64_t below(std::uint64_t n) { return base::draw_below({seed_, "random actions", 0, count_++}, n); }
  std::int64_t between(std::int64_t lo, std::int64_t hi) {
    return lo + static_cast<std::int64_t>(below(static_cast<std::uint64_t>(hi - lo) + 1));
  }
  bool chance(double share_1) { return static_cast<double>(below(1000)) < share_1 * 1000.0; }
  template <class T>
  T one_of(const std::vector<T>& list) {
    return list[below(list.size())];
  }

 private:
  std::uint64_t seed_;
  std::uint64_t count_ = 0;
};

Action nonsense(Dice& dice, base::Tick tick) {
  Action action;
  action.tick = tick;
  action.kind = static_cast<ActionKind>(dice.below(event::action_table().size() - 4));
  if (action.kind == ActionKind::HandOver) action.kind = ActionKind::Leave;
  static const std::vector<std::int64_t> odd = {0,   1,     -1,       2,       7,         255,
                                                256, 65535, -1000000, 3141592, INT64_MAX, INT64_MIN};
  for (std::int64_t& number : action.numbers) number = dice.one_of(odd);
  if (dice.chance(0.5)) action.numbers[0] = dice.between(0, 1);
  if (action.kind == ActionKind::Write) action.text = "1,2,3 \xff";
  if (action.kind == ActionKind::Gap) action.numbers[0] = dice.between(-5, 5);
  return action;
}

Action bring(Dice& dice, const SixBolt& job, base::Tick tick, HandId hand) {
  const auto bolt = static_cast<event::BoltId>(dice.below(7));
  const std::vector<std::pair<ThingId, PlaceKind>> spots = {
      {job.old_rotor, PlaceKind::BoltRecess}, {job.old_rotor, PlaceKind::TrackOuter},
      {job.old_rotor, PlaceKind::TrackInner}, {job.new_rotor, PlaceKind::TrackOuter},
      {job.new_rotor, PlaceKind::Edge},       {job.wheel, PlaceKind::HubSeat},
      {job.wheel, PlaceKind::Hole},           {job.wheel, PlaceKind::Boss},
      {job.bench_top, PlaceKind::BenchTop},   {job.tray, PlaceKind::Tray},
      {job.clean_rag, PlaceKind::Body},       {job.new_bolts[0], PlaceKind::BoltThread},
      {job.stand, PlaceKind::StandSlot},      {job.bike, PlaceKind::ForkEnds}};
  const auto [thing, place] = dice.one_of(spots);
  return event::make_bring(tick, hand, thing, place, bolt, dice.between(0, 80000), dice.between(-7000000, 7000000),
                           dice.between(-100000, 100000), dice.between(-100000, 100000));
}

Action touch(Dice& dice, const SixBolt& job, base::Tick tick, HandId hand) {
  const std::vector<std::pair<ThingId, PlaceKind>> spots = {
      {job.wheel, PlaceKind::Tyre},         {job.old_rotor, PlaceKind::TrackOuter}, {job.old_rotor, PlaceKind::Arms},
      {job.new_rotor, PlaceKind::Edge},     {job.wheel, PlaceKind::BoltHead},       {job.wheel, PlaceKind::Boss},
      {job.old_rotor, PlaceKind::InnerEdge}};
  const auto [thing, place] = dice.one_of(spots);
  return event::make_touch(tick, hand, thing, place, static_cast<event::BoltId>(dice.below(7)), dice.between(0, 80000),
                           dice.between(-7000000, 7000000));
}

Action sensible(Dice& dice, const SixBolt& job, base::Tick tick) {
  const HandId hand = dice.chance(0.6) ? HandId::Right : HandId::Left;
  const std::vector<ThingId> things = {job.key,       job.driver,       job.click_driver, job.micrometer,
                                       job.vernier,   job.dial,         job.pick,         job.lamp,
                                       job.alcohol,   job.locker,       job.clean_rag,    job.dirty_rag,
                                       job.new_rotor, job.new_bolts[0], job.old_rotor,    job.wheel};
  switch (dice.below(20)) {
    case 0:
    case 1:
    case 2:
      return event::make_take(tick, hand, dice.one_of(things), dice.chance(0.7) ? Grip::None : Grip::Pinched);
    case 3:
    case 4:
    case 5:
    case 6:
      return bring(dice, job, tick, hand);
    case 7:
      return touch(dice, job, tick, hand);
    case 8:
    case 9:
      return event::make_aim_turn(tick, hand, dice.between(-3000000, 3000000));
    case 10:
      return event::make_aim_along(tick, hand, dice.between(-20000, 45000));
    case 11:
    case 12:
    case 13:
      return event::make_aim_face(tick, hand, dice.between(0, 82000), dice.between(-13000000, 13000000),
                                  dice.between(0, 35000));
    case 14:
      return event::make_plain(tick, dice.one_of<ActionKind>({ActionKind::Leave, ActionKind::Slack, ActionKind::Keep}),
                               hand);
    case 15:
      return event::make_plain(
          tick,
          dice.one_of<ActionKind>({ActionKind::PutBack, ActionKind::Pass, ActionKind::Regrip, ActionKind::TurnOver}),
          hand);
    case 16:
      return event::make_grip(tick, hand, static_cast<Grip>(dice.below(16)));
    case 17:
      return event::make_glove(tick, hand, dice.chance(0.5));
    case 18:
      return event::make_squeeze(tick, hand, dice.between(0, 6));
    default:
      return dice.chance(0.5) ? event::make_throw(tick, hand, dice.between(-9000000, 9000000))
                              : event::make_write(tick, static_cast<CardEntryId>(dice.below(9)), "1,42");
  }
}

}  // namespace

std::vector<event::Action> random_actions(const SixBolt& job, std::uint64_t seed, std::size_t count,
                                          double nonsense_1) {
  Dice dice(seed);
  std::vector<event::Action> actions;
  base::Tick tick = 0;
  for (std::size_t i = 0; i < count; ++i) {
    tick += dice.chance(0.05) ? dice.between(0, 5000) : dice.between(0, 200);
    actions.push_back(dice.chance(nonsense_1) ? nonsense(dice, tick) : sensible(dice, job, tick));
  }
  return actions;
}

}  // namespace proofstand::testing
