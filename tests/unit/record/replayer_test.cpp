// Danger: a viewer that jumps about in a recorded run must show what happened, not something near it.
#include "sim/record/replayer.h"

#include "sim/base/random.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::record {
namespace {

using event::Action;
using event::ActionKind;
using event::HandId;

// takes, aims and lets go at random: many of them refused, all of them legal to ask for
std::vector<Action> random_actions(std::uint64_t seed, const testing::SixBolt& job) {
  std::vector<Action> actions;
  base::Tick tick = 0;
  const event::ThingId things[] = {job.key, job.driver, job.micrometer, job.clean_rag, job.alcohol, job.pick};
  for (std::uint64_t i = 0; i < 120; ++i) {
    const auto below = [&](std::string_view what, std::uint64_t n) { return base::draw_below({seed, what, 0, i}, n); };
    tick += static_cast<base::Tick>(below("pause", 400));
    const HandId hand = below("hand", 2) == 0 ? HandId::Left : HandId::Right;
    switch (below("kind", 8)) {
      case 0:
        actions.push_back(event::make_take(tick, hand, things[below("thing", 6)], event::Grip::Fingers));
        break;
      case 1:
        actions.push_back(event::make_bring(tick, hand, job.old_rotor, event::PlaceKind::BoltRecess,
                                            static_cast<event::BoltId>(below("bolt", 6)), 0, 0, 0, 0));
        break;
      case 2:
        actions.push_back(event::make_aim_along(tick, hand, static_cast<std::int64_t>(below("depth", 40000))));
        break;
      case 3:
        actions.push_back(
            event::make_aim_turn(tick, hand, static_cast<std::int64_t>(below("angle", 4000000)) - 2000000));
        break;
      case 4:
        actions.push_back(event::make_plain(tick, ActionKind::Leave, hand));
        break;
      case 5:
        actions.push_back(event::make_plain(tick, ActionKind::PutBack, hand));
        break;
      case 6:
        actions.push_back(event::make_touch(tick, hand, job.old_rotor, event::PlaceKind::TrackOuter, event::kNoBolt,
                                            72000, static_cast<std::int64_t>(below("angle", 6000000))));
        break;
      default:
        actions.push_back(event::make_plain(tick, ActionKind::Slack, hand));
    }
  }
  return actions;
}

}  // namespace

TEST_CASE("any moment reached by jumping has the state of a straight run") {
  const testing::SixBolt job = testing::six_bolt();
  for (std::uint64_t seed = 1; seed <= 3; ++seed) {
    const std::vector<Action> actions = random_actions(seed, job);
    const base::Tick last = actions.back().tick + 500;
    Replayer replay(job.setup, actions);
    for (std::uint64_t jump = 0; jump < 12; ++jump) {
      const auto tick =
          static_cast<base::Tick>(base::draw_below({seed, "jump", 0, jump}, static_cast<std::uint64_t>(last)));
      bench::Bench straight(job.setup);
      for (const Action& action : actions) {
        if (action.tick <= tick) straight.apply(action);
      }
      straight.advance_to(tick);
      const bench::Bench& reached = replay.at(tick);
      INFO("seed " << seed << ", tick " << tick << ": "
                   << bench::Bench::first_difference(straight.state(), reached.state()));
      CHECK(reached.state_hash() == straight.state_hash());
      CHECK(reached.events().size() == straight.events().size());
    }
  }
}

}  // namespace proofstand::record
