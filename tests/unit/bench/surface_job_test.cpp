// Films, instruments, wheel and card worked through the bench by actions alone, as any hand does it.
#include "sim/bench/surface.h"
#include "tests/support/catch.h"
#include "tests/unit/bench/job_driver.h"

namespace proofstand::bench {
namespace {

using testing::JobDriver;
using testing::kLeft;
using testing::kRight;

void bring_to(JobDriver& d, HandId hand, ThingId thing, PlaceKind place, double radius_mm, double angle_rad = 0.0) {
  d.bench.apply(event::make_bring(d.bench.tick(), hand, thing, place, event::kNoBolt,
                                  static_cast<std::int64_t>(radius_mm * 1000.0),
                                  static_cast<std::int64_t>(angle_rad * 1e6), 0, 0));
  d.settle(hand);
}

void stroke(JobDriver& d, HandId hand, double radius_mm, double angle_rad, double press_n, double time_s) {
  d.bench.apply(event::make_aim_face(d.bench.tick(), hand, static_cast<std::int64_t>(radius_mm * 1000.0),
                                     static_cast<std::int64_t>(angle_rad * 1e6),
                                     static_cast<std::int64_t>(press_n * 1000.0)));
  d.wait_s(time_s);
}

// danger: the wipe that every job ends with does not come about by moving hands
TEST_CASE("alcohol on a rag, pinched over both faces, wheel turned by the tyre: both faces wiped and clean") {
  testing::SixBolt job = testing::six_bolt();
  job.setup.rotors[0].film_outer.oil_kg_m2 = job.setup.rotors[0].film_inner.oil_kg_m2 = 20e-5;
  JobDriver d(job);
  d.take(kLeft, job.clean_rag, Grip::Flat);
  d.take(kRight, job.alcohol);
  bring_to(d, kRight, job.clean_rag, PlaceKind::Body, 0.0);
  d.bench.apply(event::make_squeeze(d.bench.tick(), kRight, 5));
  d.plain(kRight, event::ActionKind::PutBack);
  d.grip(kLeft, Grip::Pinched);
  bring_to(d, kLeft, job.old_rotor, PlaceKind::TrackOuter, 72.0);
  d.touch(kRight, job.wheel, PlaceKind::Tyre);
  d.grip(kRight, Grip::Fingers);
  stroke(d, kLeft, 72.0, 0.0, 15.0, 0.6);
  d.bench.apply(event::make_plain(d.bench.tick(), event::ActionKind::Keep, kLeft));
  d.turn_to(kRight, 90.0);
  d.wait_s(5.0);
  CHECK(see_wiped_share_1(d.bench, kLeft, true) > 0.98);
  CHECK(see_wiped_share_1(d.bench, kLeft, false) > 0.98);
  CHECK(see_wet_share_1(d.bench, job.old_rotor, true) > 0.5);
  d.plain(kRight, event::ActionKind::Slack);
  d.plain(kLeft, event::ActionKind::Leave);
  const auto wiped = d.of_kind("wiped");
  REQUIRE(wiped.size() == 2);
  for (const event::Record& record : wiped) {
    CHECK(d.field(record, "coverage") > 0.98);
    CHECK(d.field(record, "solvent") == 1.0);
    CHECK(d.field(record, "clean_fold") == 1.0);
    CHECK(d.field(record, "film") < 8e-5);
  }
  // turning the wheel by hand is no danger, and no spin
  CHECK(d.of_kind("endangered").empty());
  CHECK(d.of_kind("wheel_spun").empty());
  d.wait_s(60.0);
  CHECK(see_wet_share_1(d.bench, job.old_rotor, true) == 0.0);
}

// danger: a reading taken with all care never reaches scale, event and card
TEST_CASE("micrometer by its ratchet: scale, event and card agree") {
  const testing::SixBolt job = testing::six_bolt();
  JobDriver d(job);
  d.take(kRight, job.micrometer);
  d.grip(kRight, Grip::Ratchet);
  bring_to(d, kRight, job.old_rotor, PlaceKind::TrackOuter, 72.0, 0.7);
  CHECK(see_scale_m(d.bench, job.micrometer) == Approx(0.003));
  d.turn_to(kRight, 80.0);
  d.wait_s(8.0);
  CHECK(see_scale_m(d.bench, job.micrometer) == Approx(0.00142));
  REQUIRE(d.of_kind("measured").size() == 1);
  CHECK(d.field(d.of_kind("measured")[0], "squeezed") == 0.0);
  CHECK(d.field(d.of_kind("measured")[0], "reading") == Approx(0.00142));
  d.plain(kRight, event::ActionKind::Leave);
  CHECK(see_scale_m(d.bench, job.micrometer) == Approx(0.00142));
  d.bench.apply(event::make_write(d.bench.tick(), job.old_thickness, "1,42"));
  REQUIRE(d.of_kind("card_length").size() == 1);
  CHECK(d.field(d.of_kind("card_length")[0], "off_indicated") == Approx(0.0).margin(1e-9));
  CHECK(d.field(d.of_kind("card_length")[0], "off_truth") < 1e-5);
}

// danger: screwed down by the thimble with all the fingers have, it reads as by the ratchet
TEST_CASE("micrometer squeezed by its thimble reads too thin") {
  const testing::SixBolt job = testing::six_bolt();
  JobDriver d(job);
  d.take(kRight, job.micrometer);
  d.grip(kRight, Grip::Thimble);
  bring_to(d, kRight, job.old_rotor, PlaceKind::TrackOuter, 72.0, 0.7);
  d.turn_to(kRight, 80.0);
  d.wait_s(8.0);
  REQUIRE(d.of_kind("measured").size() == 1);
  CHECK(d.field(d.of_kind("measured")[0], "squeezed") == 1.0);
  CHECK(see_scale_m(d.bench, job.micrometer) < 0.00142);
}

// danger: a dial set up by hand sees nothing of a bent rotor
TEST_CASE("dial set against a bent rotor shows its bend over a slow turn of the wheel") {
  testing::SixBolt job = testing::six_bolt();
  job.setup.rotors[0].bends = {{1.0, 0.0004}};
  JobDriver d(job);
  d.take(kRight, job.dial);
  bring_to(d, kRight, job.old_rotor, PlaceKind::TrackOuter, 72.0);
  d.press_to(kRight, 1.6);
  d.wait_s(1.0);
  d.plain(kRight, event::ActionKind::Leave);
  CHECK(see_where(d.bench, job.dial) == Whereabouts::Standing);
  d.touch(kLeft, job.wheel, PlaceKind::Tyre);
  d.grip(kLeft, Grip::Fingers);
  d.turn_to(kLeft, 90.0);
  d.wait_s(5.0);
  CHECK(see_dial_turns_1(d.bench, job.dial) > 1.0);
  CHECK(see_dial_sweep_m(d.bench, job.dial) > 0.0003);
  const auto watched = d.of_kind("watched_runout");
  REQUIRE(watched.size() == 1);
  CHECK(d.field(watched[0], "shown") == Approx(d.field(watched[0], "truth")).margin(2.1e-5));
  d.plain(kLeft, event::ActionKind::Leave);
  d.take(kRight, job.dial);
  CHECK(see_dial_sweep_m(d.bench, job.dial) == 0.0);
}

// danger: the wheel cannot be carried into the bike and spun there, or spins for ever
TEST_CASE("wheel into the bike by both hands, thrown, runs down by itself") {
  const testing::SixBolt job = testing::six_bolt();
  JobDriver d(job);
  CHECK(d.take(kRight, job.wheel, Grip::Both) == Refusal::None);
  CHECK(see_wheel(d.bench) == WheelAt::Hands);
  bring_to(d, kRight, job.bike, PlaceKind::ForkEnds, 0.0);
  CHECK(see_wheel(d.bench) == WheelAt::Bike);
  d.touch(kRight, job.wheel, PlaceKind::Tyre);
  d.bench.apply(event::make_throw(d.bench.tick(), kRight, 6283185));
  CHECK(see_wheel_turning(d.bench));
  d.wait_s(120.0);
  CHECK_FALSE(see_wheel_turning(d.bench));
  REQUIRE(d.of_kind("wheel_spun").size() == 1);
  CHECK(d.field(d.of_kind("wheel_spun")[0], "turns") > 10.0);
  CHECK(d.field(d.of_kind("wheel_spun")[0], "forward") == 1.0);
  CHECK(d.of_kind("wheel_moved").size() == 2);
}

// danger: a hand at a turning rotor goes unpunished, or the run goes on
TEST_CASE("a rag brought to a turning rotor stops the run") {
  const testing::SixBolt job = testing::six_bolt();
  JobDriver d(job);
  d.take(kLeft, job.clean_rag);
  d.touch(kRight, job.wheel, PlaceKind::Tyre);
  d.bench.apply(event::make_throw(d.bench.tick(), kRight, 6283185));
  bring_to(d, kLeft, job.old_rotor, PlaceKind::TrackOuter, 72.0);
  CHECK(d.bench.over());
  CHECK(d.bench.end_reason() == event::EndReason::Stopped);
  CHECK(d.of_kind("endangered").size() == 1);
}

// danger: hand-over loses a wipe under way, or leaves faces, card and tools untold
TEST_CASE("hand-over tells what is left on faces, card and tools") {
  const testing::SixBolt job = testing::six_bolt();
  JobDriver d(job);
  d.bench.apply(event::make_write(d.bench.tick(), job.decision, "keep"));
  d.touch(kLeft, job.old_rotor, PlaceKind::TrackOuter, event::kNoBolt, 72.0);
  d.take(kRight, job.clean_rag);
  bring_to(d, kRight, job.old_rotor, PlaceKind::TrackOuter, 72.0, 3.0);
  stroke(d, kRight, 72.0, 3.0, 15.0, 1.0);
  d.bench.apply(event::make_hand_over(d.bench.tick()));
  CHECK(d.of_kind("wiped").size() == 1);
  CHECK(d.of_kind("touched").size() == 1);
  const auto faces = d.of_kind("left_face");
  REQUIRE(faces.size() == 2);
  CHECK(d.field(faces[0], "film_worst") > 3e-5);
  CHECK(d.field(faces[1], "film_worst") == 0.0);
  CHECK(d.field(faces[0], "friction_factor") < 1.0);
  const auto card = d.of_kind("left_card");
  REQUIRE(card.size() == 9);
  CHECK(d.field(card[3], "filled") == 1.0);
  CHECK(d.field(card[0], "filled") == 0.0);
  CHECK(d.field(card[8], "needed") == 0.0);
  const auto tools = d.of_kind("left_tool");
  REQUIRE(tools.size() == 3);
  CHECK(d.field(tools[2], "setting") == Approx(8.0));
  CHECK_FALSE(d.knows(tools[0], "setting"));
  CHECK(d.bench.over());
}

// danger: a key left sticking in a bolt is not noticed at hand-over
TEST_CASE("a key left in a recess is told") {
  const testing::SixBolt job = testing::six_bolt();
  JobDriver d(job);
  d.take(kRight, job.key);
  d.bring(kRight, job.wheel, PlaceKind::BoltRecess, testing::bolt_at(3));
  d.bench.apply(event::make_hand_over(d.bench.tick()));
  CHECK(d.field(d.of_kind("left_tool")[0], "in_joint") == 1.0);
  CHECK(d.field(d.of_kind("left_tool")[1], "in_joint") == 0.0);
}

// danger: printed facts and the state of a rag cannot be seen, or things that do not exist crash the eye
TEST_CASE("what is printed and what is black can be seen; what is not there cannot") {
  testing::SixBolt job = testing::six_bolt();
  job.setup.rotors[0].has_arrow = false;
  job.setup.rotors[0].printed = false;
  JobDriver d(job);
  CHECK(see_stamp_m(d.bench, job.new_rotor) == Approx(0.0015));
  CHECK(see_marked_diameter_m(d.bench, job.new_rotor) == Approx(0.160));
  CHECK(see_marked_diameter_m(d.bench, job.old_rotor) == 0.0);
  CHECK(see_arrow(d.bench, job.new_rotor));
  CHECK_FALSE(see_arrow(d.bench, job.old_rotor));
  CHECK(see_rag_black(d.bench, job.dirty_rag));
  CHECK_FALSE(see_rag_black(d.bench, job.clean_rag));
  CHECK(see_folds_left(d.bench, job.clean_rag) == 8);
  const auto nowhere = static_cast<ThingId>(60000);
  CHECK(see_scale_m(d.bench, nowhere) == 0.0);
  CHECK(see_scale_m(d.bench, job.key) == 0.0);
  CHECK_FALSE(see_rag_black(d.bench, job.key));
  CHECK(see_stamp_m(d.bench, nowhere) == 0.0);
  CHECK(see_where(d.bench, nowhere) == Whereabouts::Fixed);
}

}  // namespace
}  // namespace proofstand::bench
