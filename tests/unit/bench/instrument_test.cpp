#include "sim/bench/instrument.h"

#include "sim/bench/hand_law.h"
#include "sim/bench/wheel.h"
#include "tests/support/bench_parts.h"
#include "tests/support/catch.h"

namespace proofstand::bench {
namespace {

using testing::BenchParts;

constexpr double kMiddle = 0.072;

BenchParts micrometer_at(PlaceKind place, double radius_m, double angle_rad, Grip grip = Grip::Ratchet) {
  BenchParts parts;
  parts.hold(HandId::Right, parts.job.micrometer, parts.job.old_rotor, place, radius_m, angle_rad);
  parts.state.hands[1].grip = grip;
  return parts;
}

// the thimble is twirled on for so many ticks, as the bench does it each tick
void twirl(BenchParts& parts, int ticks, double lead_rad = 1.2) {
  HandState& hand = parts.state.hands[1];
  for (int i = 0; i < ticks; ++i) {
    ++parts.state.tick;
    hand.turn.target_1 = hand.turn.press_1 + lead_rad;
    step_twirl(hand.turn, turn_law(), 0.7 * base::kTwoPi);
    step_instrument(parts.world(), HandId::Right);
  }
}

// danger: the thickness read is that of the lip, or not the true one
TEST_CASE("a micrometer inside the track reads the worn thickness, and says so after a second") {
  BenchParts parts = micrometer_at(PlaceKind::TrackOuter, kMiddle, 1.2);
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  CHECK(parts.state.instruments[0].shown_m == Approx(0.003));
  twirl(parts, 1700);
  REQUIRE(parts.state.instruments[0].closed);
  const auto measured = parts.of_kind("measured");
  REQUIRE(measured.size() == 1);
  CHECK(parts.field(measured[0], "reading") == Approx(0.00142));
  CHECK(parts.field(measured[0], "truth") == Approx(0.00142));
  CHECK(parts.choice(measured[0], "part") == "track");
  CHECK(parts.field(measured[0], "angle") == Approx(1.2));
  CHECK(parts.field(measured[0], "spot") == 1.0);
  CHECK(parts.field(measured[0], "squeezed") == 0.0);
  leave_instrument(parts.world(), HandId::Right);
  CHECK(parts.of_kind("measured").size() == 1);
  // stays set when drawn off
  CHECK(parts.state.instruments[0].shown_m == Approx(0.00142));
  CHECK(parts.state.card[0].was_indicated);
}

// danger: seen at the other face, the spot is booked on the wrong side of the rotor
TEST_CASE("a spot on the other face is mirrored into the rotor's own frame") {
  BenchParts parts = micrometer_at(PlaceKind::TrackInner, kMiddle, 1.2);
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  twirl(parts, 1700);
  CHECK(parts.field(parts.of_kind("measured").at(0), "angle") == Approx(base::kTwoPi - 1.2));
}

// danger: an anvil over the lip passes for a reading of the track
TEST_CASE("an anvil on the lip reads the lip and the event says across") {
  BenchParts parts = micrometer_at(PlaceKind::TrackOuter, 0.0785, 0.0);
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  twirl(parts, 1700);
  const auto measured = parts.of_kind("measured");
  REQUIRE(measured.size() == 1);
  CHECK(parts.choice(measured[0], "part") == "across");
  CHECK(parts.field(measured[0], "reading") == Approx(0.0018).margin(1e-5));
}

// danger: drawn off at once it still counts as read
TEST_CASE("less than a second closed is no reading") {
  BenchParts parts = micrometer_at(PlaceKind::TrackOuter, kMiddle, 0.0);
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  for (int i = 0; i < 4000 && !parts.state.instruments[0].closed; ++i) twirl(parts, 1);
  twirl(parts, 100);
  CHECK(instrument_due_at(parts.world()) == parts.state.instruments[0].closed_since + kReadTicks);
  leave_instrument(parts.world(), HandId::Right);
  CHECK(parts.of_kind("measured").empty());
  CHECK(instrument_due_at(parts.world()) == kNever);
}

// danger: screwed down like a clamp, it reads as well as by its ratchet
TEST_CASE("squeezing the thimble reads too thin and is known") {
  BenchParts parts = micrometer_at(PlaceKind::TrackOuter, kMiddle, 0.0, Grip::Thimble);
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  twirl(parts, 1700, 1.36);
  const auto measured = parts.of_kind("measured");
  REQUIRE(measured.size() == 1);
  CHECK(parts.field(measured[0], "squeezed") == 1.0);
  // 0.01 to 0.03 mm: common practice, no source
  CHECK(parts.field(measured[0], "reading") < 0.00142 - 5e-6);
  CHECK(parts.field(measured[0], "reading") >= 0.00142 - 31e-6);
}

// danger: zero error and resolution of the drawn instrument do not reach its scale
TEST_CASE("zero error shows in the reading") {
  BenchParts parts = micrometer_at(PlaceKind::TrackOuter, kMiddle, 0.0);
  parts.job.setup.instruments[0].zero_error_m = 0.00002;
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  twirl(parts, 1700);
  CHECK(parts.field(parts.of_kind("measured").at(0), "reading") == Approx(0.00144));
  CHECK(parts.field(parts.of_kind("measured").at(0), "truth") == Approx(0.00142));
}

// danger: blades across the rim never find wear, and nobody is told; tips inside the track must
TEST_CASE("vernier: blades rest on the lip, tips go inside, edge to edge is the diameter") {
  const auto slide = [](BenchParts& parts) {
    HandState& hand = parts.state.hands[1];
    for (int i = 0; i < 1500; ++i) {
      ++parts.state.tick;
      hand.along.target_1 = hand.along.hand_1 + 0.005;
      step_cord(hand.along, along_law());
      step_instrument(parts.world(), HandId::Right);
    }
  };
  BenchParts blades;
  blades.hold(HandId::Right, blades.job.vernier, blades.job.old_rotor, PlaceKind::TrackOuter, kMiddle, 0.0);
  REQUIRE(bring_instrument(blades.world(), HandId::Right) == Refusal::None);
  slide(blades);
  CHECK(blades.choice(blades.of_kind("measured").at(0), "part") == "across");
  CHECK(blades.field(blades.of_kind("measured").at(0), "reading") == Approx(0.0018).margin(2e-5));

  BenchParts tips;
  tips.hold(HandId::Right, tips.job.vernier, tips.job.old_rotor, PlaceKind::TrackOuter, kMiddle, 0.0);
  tips.state.hands[1].turned_over = true;
  REQUIRE(bring_instrument(tips.world(), HandId::Right) == Refusal::None);
  slide(tips);
  CHECK(tips.choice(tips.of_kind("measured").at(0), "part") == "track");
  CHECK(tips.field(tips.of_kind("measured").at(0), "reading") == Approx(0.00142).margin(2e-5));

  BenchParts diameter;
  diameter.hold(HandId::Right, diameter.job.vernier, diameter.job.new_rotor, PlaceKind::Edge);
  REQUIRE(bring_instrument(diameter.world(), HandId::Right) == Refusal::None);
  slide(diameter);
  CHECK(diameter.field(diameter.of_kind("measured_size").at(0), "reading") == Approx(0.160));
}

// danger: an instrument at a place where it cannot measure crashes or measures something
TEST_CASE("instruments refuse what they cannot measure") {
  BenchParts parts;
  parts.hold(HandId::Right, parts.job.micrometer, parts.job.clean_rag, PlaceKind::Body);
  CHECK(bring_instrument(parts.world(), HandId::Right) == Refusal::DoesNotFit);
  parts.hold(HandId::Right, parts.job.micrometer, parts.job.old_rotor, PlaceKind::CarrierOuter, 0.022);
  CHECK(bring_instrument(parts.world(), HandId::Right) == Refusal::Covered);
  parts.hold(HandId::Right, parts.job.dial, parts.job.new_rotor, PlaceKind::TrackOuter, kMiddle);
  CHECK(bring_instrument(parts.world(), HandId::Right) == Refusal::NothingToDo);
  parts.hold(HandId::Right, parts.job.micrometer, parts.job.old_rotor, PlaceKind::TrackOuter, 0.5, 1e9);
  CHECK(bring_instrument(parts.world(), HandId::Right) == Refusal::NoSuchPlace);
}

// danger: a glance with the lamp in passing counts as an inspection, or a proper one does not
TEST_CASE("lamp and pick prove a look after a second") {
  BenchParts parts;
  parts.hold(HandId::Left, parts.job.lamp, parts.job.wheel, PlaceKind::Hole, 0.0, 0.0, BoltId{1});
  REQUIRE(bring_instrument(parts.world(), HandId::Left) == Refusal::None);
  parts.state.tick += 200;
  leave_instrument(parts.world(), HandId::Left);
  CHECK(parts.of_kind("inspected").empty());
  REQUIRE(bring_instrument(parts.world(), HandId::Left) == Refusal::None);
  parts.state.tick += 240;
  leave_instrument(parts.world(), HandId::Left);
  const auto looks = parts.of_kind("inspected");
  REQUIRE(looks.size() == 1);
  CHECK(parts.choice(looks[0], "with") == "lamp");
  CHECK(parts.choice(looks[0], "part") == "hole");
  CHECK(parts.field(looks[0], "bolt") == 1.0);
  CHECK_FALSE(parts.knows(looks[0], "rotor"));
}

// danger: packed dirt stays in a recess that was picked, or vanishes by holding the pick there
TEST_CASE("a pick clears a recess by strokes, and a hole of old locker") {
  BenchParts parts;
  const auto scratch = [&parts](int ticks, bool moving) {
    HandState& hand = parts.state.hands[1];
    hand.aim_press_n = 3.0;
    hand.aim_radius_m = 0.002;
    for (int i = 0; i < ticks; ++i) {
      if (moving) hand.aim_angle_rad += 0.2;
      ++parts.state.tick;
      step_instrument(parts.world(), HandId::Right);
    }
  };
  parts.hold(HandId::Right, parts.job.pick, parts.job.old_bolts[2], PlaceKind::BoltRecess, 0.002, 0.0, BoltId{2});
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  scratch(300, false);
  CHECK(parts.state.bolts[2].recess_debris_m == 0.0006);
  scratch(300, true);
  CHECK(parts.state.bolts[2].recess_debris_m == 0.0);
  leave_instrument(parts.world(), HandId::Right);
  REQUIRE(parts.of_kind("recess_cleaned").size() == 1);
  CHECK(parts.field(parts.of_kind("recess_cleaned")[0], "debris") == 0.0);

  parts.state.holes[4].bolt = event::kNoThing;
  parts.hold(HandId::Right, parts.job.pick, parts.job.wheel, PlaceKind::Hole, 0.002, 0.0, BoltId{4});
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  scratch(600, true);
  leave_instrument(parts.world(), HandId::Right);
  REQUIRE(parts.of_kind("thread_cleaned").size() == 1);
  CHECK(parts.field(parts.of_kind("thread_cleaned")[0], "residue") < 0.05);
}

// danger: a wobbling rotor passes because the tip hung in the air, or a turn is not a turn
TEST_CASE("a dial follows the track under preload and tells the whole turn") {
  BenchParts parts;
  parts.hold(HandId::Right, parts.job.dial, parts.job.old_rotor, PlaceKind::TrackOuter, kMiddle, 0.0);
  REQUIRE(bring_instrument(parts.world(), HandId::Right) == Refusal::None);
  CHECK(dial_stands(parts.state));
  HandState& hand = parts.state.hands[1];
  for (int i = 0; i < 200; ++i) {
    hand.along.target_1 = 0.0005;
    step_cord(hand.along, along_law());
    step_instrument(parts.world(), HandId::Right);
  }
  CHECK(parts.state.instruments[2].pressed_m == Approx(0.0005));
  CHECK(parts.state.instruments[2].shown_m == Approx(0.0005));
  for (int i = 0; i < 400; ++i) {
    ++parts.state.tick;
    turn_wheel_by_hand(parts.world(), base::kTwoPi / 360.0);
    step_dial(parts.world());
  }
  const auto watched = parts.of_kind("watched_runout");
  REQUIRE(watched.size() == 1);
  CHECK(parts.field(watched[0], "turns") >= 1.0);
  CHECK(parts.field(watched[0], "snug") == 6.0);
  CHECK(parts.field(watched[0], "shown") == Approx(parts.field(watched[0], "truth")).margin(1.1e-5));
  CHECK(move_wheel(parts.world(), HandId::Left, WheelAt::Hands) == Refusal::ToolInTheWay);
  take_dial_away(parts.world(), parts.job.dial);
  CHECK(parts.of_kind("watched_runout").size() == 2);
  CHECK_FALSE(dial_stands(parts.state));
}

// danger: turning a rotor over in the hand, the way to find arrow and cracks, proves nothing
TEST_CASE("turning a rotor over is a look at its other face") {
  BenchParts parts;
  parts.state.hands[0].holding = parts.job.new_rotor;
  parts.state.things[event::index_of(parts.job.new_rotor)].inner_up = true;
  look_over(parts.world(), HandId::Left);
  REQUIRE(parts.of_kind("inspected").size() == 1);
  CHECK(parts.choice(parts.of_kind("inspected")[0], "with") == "turned_over");
  CHECK(parts.choice(parts.of_kind("inspected")[0], "part") == "inner_track");
}

}  // namespace
}  // namespace proofstand::bench
