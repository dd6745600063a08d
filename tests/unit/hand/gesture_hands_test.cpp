// Which hand does what, and when an input is an action: clicks, drags, keeping, stopping.
#include <array>

#include "sim/bench/hand_law.h"
#include "tests/unit/hand/gesture_rig.h"

namespace proofstand::testing {
namespace {

std::size_t events_of(const bench::Bench& bench, std::string_view word) {
  const auto kind = bench.vocabulary().find_kind(word);
  std::size_t n = 0;
  for (const event::Record& record : bench.events()) n += kind && record.kind == *kind ? 1 : 0;
  return n;
}

}  // namespace

// danger: a press that was thought better of acts all the same
TEST_CASE("a click takes once, at release; taken back before that it does nothing") {
  HandsRig rig(six_bolt());
  const Pointed key = rig.place(rig.job.key, PlaceKind::Body);
  rig.down({640.0, 360.0}, key);
  rig.frame();
  CHECK(rig.actions.empty());
  CHECK(rig.hands.command(HandCommand::Escape) == hand::Answer::Done);
  rig.up(key);
  rig.settle();
  CHECK(rig.actions.empty());
  rig.click(key);
  CHECK(rig.count(ActionKind::Take) == 1);
  rig.settle();
  CHECK(rig.actions.size() == 1);
  CHECK(rig.sense(kRight).holding == rig.job.key);
  CHECK(rig.sense(kRight).grip == Grip::Handle);
}

// danger: looking about is recorded as work, or touches something
TEST_CASE("hovering, and the wheel over nothing held, send no action") {
  HandsRig rig(six_bolt());
  for (int i = 0; i < 150; ++i) {
    rig.to({100.0 + 7.0 * i, 300.0}, i % 3 == 0 ? std::optional(rig.recess(bolt_at(0))) : std::nullopt);
    rig.frame(16);
  }
  for (int i = 0; i < 20; ++i) CHECK(rig.hands.wheel(1.0, false) == hand::Answer::NotMine);
  CHECK(rig.hands.tap(Tap::Right, false) == hand::Answer::NotMine);
  CHECK(rig.hands.command(HandCommand::Escape) == hand::Answer::NotMine);
  rig.frame();
  CHECK(rig.actions.empty());
}

// danger: a click brings the tool to the middle, however badly it was aimed
TEST_CASE("a thing held is brought to the true point, leaning six degrees at the rim") {
  HandsRig rig(six_bolt());
  rig.click(rig.place(rig.job.key, PlaceKind::Body));
  rig.settle();
  Pointed rim = rig.recess(bolt_at(2));
  rim.u_um = 0;
  rim.v_urad = 1125;
  rim.off_y_m = 0.001125;
  rim.radius_m = 0.00225;
  rig.click(rim);
  REQUIRE(rig.count(ActionKind::Bring) == 1);
  const event::Action& bring = rig.actions.back();
  CHECK(bring.numbers[3] == 2);
  CHECK(bring.numbers[5] == 1125);
  CHECK(bring.numbers[6] == 0);
  CHECK(static_cast<double>(bring.numbers[7]) == Approx(base::radians(3.0) * 1e6).margin(1.0));
  rig.settle();
  CHECK(rig.hands.doing(kRight) == HandDoing::At);
  // the same place once more: nothing; another one: it goes there
  rig.click(rim);
  CHECK(rig.count(ActionKind::Bring) == 1);
  rig.click(rig.recess(bolt_at(3)));
  CHECK(rig.count(ActionKind::Bring) == 2);
  rig.settle();
  rig.click_nothing();
  CHECK(rig.actions.back().kind == ActionKind::Leave);
  rig.click_nothing();
  CHECK(rig.count(ActionKind::Leave) == 1);
  CHECK(rig.sense(kRight).holding == rig.job.key);
}

// danger: "keep" loses the pull, or the button that is still down undoes it
TEST_CASE("kept in a drag a hand keeps its level; back again it pulls still; escape ends the pull, not the hold") {
  HandsRig rig(stuck_bolts());
  rig.seat(rig.job.key, bolt_at(0));
  rig.press_home(bolt_at(0));
  rig.circle(bolt_at(0), 120.0, 0.0, -(2.0 + 76.0 * 300.0 / 512.0), 120.0);
  rig.frames_s(1.5);
  CHECK(rig.level(kRight) == 300);
  CHECK(rig.hands.command(HandCommand::Keep) == hand::Answer::Done);
  CHECK(rig.hands.active() == kLeft);
  CHECK(rig.actions.back().kind == ActionKind::Keep);
  const std::size_t sent = rig.actions.size();
  rig.to({20.0, 20.0});
  rig.up();
  rig.frames_s(3.0);
  CHECK(rig.actions.size() == sent);
  CHECK(rig.level(kRight) == 300);
  CHECK(rig.hands.doing(kRight) == HandDoing::Work);
  rig.hands.command(HandCommand::Keep);
  CHECK(rig.hands.active() == kRight);
  rig.frames_s(0.5);
  CHECK(rig.level(kRight) == 300);
  // a new drag goes on from there
  rig.down(rig.round(bolt_at(0), 120.0, 40.0));
  rig.to(rig.round(bolt_at(0), 120.0, 38.0));
  rig.frame();
  CHECK(rig.target_deg(kRight) == Approx(-(2.0 + 76.0 * 300.0 / 512.0)).margin(1e-6));
  rig.hands.command(HandCommand::Escape);
  rig.up();
  CHECK(rig.actions.back().kind == ActionKind::Slack);
  rig.frames_s(0.2);
  CHECK(rig.level(kRight) == 0);
  CHECK(rig.sense(kRight).holding == rig.job.key);
  CHECK(rig.hands.doing(kRight) == HandDoing::At);
  rig.hands.command(HandCommand::Escape);
  CHECK(rig.actions.back().kind == ActionKind::Leave);
}

// danger: somebody looks at another window and comes back to a stripped bolt
TEST_CASE("losing the keyboard slackens the active hand within 24 ticks and leaves the kept one alone") {
  HandsRig rig(stuck_bolts());
  rig.seat(rig.job.key, bolt_at(0));
  rig.press_home(bolt_at(0));
  rig.circle(bolt_at(0), 120.0, 0.0, -59.0, 120.0);
  rig.frames_s(1.5);
  REQUIRE(rig.level(kRight) == 384);
  rig.hands.command(HandCommand::Keep);
  rig.up();
  rig.hands.focus_lost();
  rig.bench.advance_to(rig.bench.tick() + 24);
  CHECK(rig.level(kRight) == 384);  // the left hand was the active one
  rig.hands.focus_back(true);
  const std::size_t sent = rig.actions.size();
  rig.click(rig.place(rig.job.card, PlaceKind::Body));
  CHECK(rig.actions.size() == sent);
  rig.hands.command(HandCommand::Keep);
  rig.hands.focus_lost();
  rig.bench.advance_to(rig.bench.tick() + 24);
  CHECK(rig.level(kRight) == 0);
  CHECK(rig.sense(kRight).holding == rig.job.key);
  rig.hands.focus_back(false);
}

// danger: a slow machine charges the trainee with a jerk
TEST_CASE("a stall in a pull goes straight on over the ticks that are run") {
  std::array<double, 2> peak{};
  for (const bool stalls : {false, true}) {
    HandsRig rig(stuck_bolts());
    rig.seat(rig.job.key, bolt_at(0));
    rig.press_home(bolt_at(0));
    for (int i = 1; i <= 40; ++i) {
      rig.to(rig.round(bolt_at(0), 120.0, -1.5 * i));
      if (stalls && i == 20) rig.bench.apply(event::make_gap(rig.bench.tick(), 108));
      rig.frame();
    }
    rig.frames_s(1.0);
    peak[stalls ? 1 : 0] = static_cast<double>(rig.level(kRight));
  }
  CHECK(peak[0] == Approx(peak[1]).margin(1.0));
}

// danger: a loose thing that is dragged is dropped on the way, or a fixed one torn off
TEST_CASE("a loose thing dragged comes along and is brought where it is let go") {
  HandsRig rig(six_bolt());
  const Pointed key = rig.place(rig.job.key, PlaceKind::Body);
  rig.down({300.0, 500.0}, key);
  rig.to({300.0, 480.0}, key);
  CHECK(rig.count(ActionKind::Take) == 1);
  rig.frames_s(0.1);
  rig.to({640.0, 360.0}, rig.recess(bolt_at(1)));
  rig.up(rig.recess(bolt_at(1)));
  CHECK(rig.count(ActionKind::Bring) == 0);  // the hand is still on its way
  rig.settle();
  rig.settle();
  CHECK(rig.count(ActionKind::Bring) == 1);
  CHECK(rig.sense(kRight).stage == bench::HandStage::At);
}

// danger: a drag from a place works on another one than the hand went to
TEST_CASE("dragged from a place with a tool in the hand: brought, then pulled in the same drag") {
  HandsRig rig(stuck_bolts());
  rig.click(rig.place(rig.job.key, PlaceKind::Body));
  rig.settle();
  rig.look_at(rig.bolt_point(bolt_at(4)), 1.0);
  rig.down(rig.round(bolt_at(4), 172.0, 0.0), rig.recess(bolt_at(4)));
  rig.to(rig.round(bolt_at(4), 120.0, 0.0), rig.recess(bolt_at(4)));
  rig.frame();
  CHECK(rig.count(ActionKind::Bring) == 1);
  CHECK(rig.count(ActionKind::AimAlong) == 0);
  rig.settle();
  rig.frame();
  CHECK(rig.count(ActionKind::AimAlong) > 0);
  CHECK(rig.bench.state().hands[1].along.target_1 == Approx(0.040).margin(0.0002 + 0.040 * 1.0 / 60.0 * 20.0));
  rig.up();
  CHECK(rig.actions.back().kind == ActionKind::Slack);
}

// danger: a wheel let go of in motion stands still, or a hand that stops throws it
TEST_CASE("a hand on the tyre that lets go moving throws the wheel as fast as it moved, forward when drawn forward") {
  const auto thrown = [](double rate_turns_s, bool stops) {
    HandsRig rig(six_bolt());
    rig.hands.act_on(rig.place(rig.job.wheel, PlaceKind::Tyre));
    rig.settle();
    rig.look_at({0.0, 0.0, 0.0}, 1.0);
    const auto at = [&](double angle_deg) {
      const double a = base::radians(angle_deg);
      return Spot{640.0 + 200.0 * base::cos_rad(a), 360.0 + 200.0 * base::sin_rad(a)};
    };
    rig.down(at(0.0));
    double angle = 0.0;
    for (int i = 0; i < 24; ++i) {
      angle -= rate_turns_s * 360.0 / 60.0;
      rig.to(at(angle));
      rig.frame();
    }
    if (stops) {
      rig.frames_s(0.2);
    } else {
      rig.to(at(angle - rate_turns_s * 360.0 / 60.0));  // the motion that comes with letting go
    }
    rig.up();
    std::int64_t rate = 0;
    for (const event::Action& action : rig.actions) {
      if (action.kind == ActionKind::Throw) rate = action.numbers[1];
    }
    return static_cast<double>(rate) * 1e-6 / base::kTwoPi;
  };
  CHECK(thrown(0.8, false) == Approx(0.8).epsilon(0.03));
  CHECK(thrown(-0.8, false) == Approx(-0.8).epsilon(0.03));
  CHECK(thrown(3.5, false) == Approx(2.0).epsilon(0.001));
  CHECK(thrown(0.05, false) == 0.0);
  CHECK(thrown(0.8, true) == 0.0);
}

// danger: without a mouse the wheel cannot be thrown, or only one way
TEST_CASE("the throw command turns the wheel the way of the last tap") {
  for (const Tap way : {Tap::Left, Tap::Right}) {
    HandsRig rig(six_bolt());
    rig.hands.act_on(rig.place(rig.job.wheel, PlaceKind::Tyre));
    rig.settle();
    rig.hands.tap(way, false);
    rig.frame();
    CHECK(rig.hands.command(HandCommand::Throw, way == Tap::Right) == hand::Answer::Done);
    const double rate = static_cast<double>(rig.actions.back().numbers[1]) * 1e-6 / base::kTwoPi;
    CHECK(rate == Approx(way == Tap::Left ? 1.0 : -0.3).epsilon(1e-5));
    rig.frame();
    CHECK(bench::see_wheel_turning(rig.bench));
  }
}

// danger: a notch of the wheel spins a bolt for ever, or by no known amount
TEST_CASE("a notch turns a loose bolt by sixty degrees and goes slack again; fine by six") {
  SixBolt clean = nearly_tight_bolts();
  for (auto& boss : clean.setup.hub.bosses) boss.old_locker_nm = 0.0;
  HandsRig rig(clean);
  rig.seat(rig.job.driver, bolt_at(0));
  rig.hands.tap(Tap::Up, false, 8);
  rig.frames_s(0.7);
  for (int i = 0; i < 24; ++i) {
    rig.hands.tap(Tap::Left, false);
    rig.frames_s(0.3);
    if (rig.sense(kRight).fastener_rad < -0.6) break;
  }
  rig.hands.command(HandCommand::Escape);
  rig.hands.command(HandCommand::Escape);
  rig.settle();
  rig.hands.command(HandCommand::PutBack);
  rig.settle();
  rig.hands.act_on(rig.place(rig.job.old_rotor, PlaceKind::BoltHead, bolt_at(0)));
  rig.settle();
  for (const bool fine : {false, true}) {
    const double before = rig.sense(kRight).fastener_rad;
    CHECK(rig.hands.wheel(-0.6, fine) == hand::Answer::Done);
    rig.frames_s(0.2);
    CHECK(rig.sense(kRight).fastener_rad == before);  // not yet a notch
    CHECK(rig.hands.wheel(-0.4, fine) == hand::Answer::Done);
    rig.frames_s(2.0);
    const double turned = base::degrees(rig.sense(kRight).fastener_rad - before);
    CHECK(turned == Approx(fine ? -6.0 : -60.0).margin(2.0));
    CHECK(rig.hands.doing(kRight) == HandDoing::At);
  }
}

// danger: the hand that is kept waits for ever for the other, or one hand drops what both hold
TEST_CASE("with both hands on the wheel there is no other hand to change to") {
  HandsRig rig(six_bolt());
  rig.hands.act_on(rig.place(rig.job.wheel, PlaceKind::Axle));
  rig.settle();
  REQUIRE(rig.sense(kLeft).holding == rig.job.wheel);
  CHECK(rig.hands.command(HandCommand::Keep) == hand::Answer::BothHands);
  CHECK(rig.hands.active() == kRight);
  CHECK(rig.count(ActionKind::Keep) == 0);
  rig.click(rig.place(rig.job.bike, PlaceKind::ForkEnds));
  rig.settle();
  CHECK(bench::see_wheel(rig.bench) == bench::WheelAt::Bike);
}

// danger: what is asked of a hand on its way is lost, or done twice
TEST_CASE("the latest input waits for a busy hand, and only the latest") {
  HandsRig rig(six_bolt());
  rig.click(rig.place(rig.job.key, PlaceKind::Body));
  rig.frame();
  rig.click(rig.recess(bolt_at(0)));
  rig.click(rig.recess(bolt_at(5)));
  CHECK(rig.actions.size() == 1);
  rig.settle();
  rig.settle();
  REQUIRE(rig.count(ActionKind::Bring) == 1);
  CHECK(rig.actions.back().numbers[3] == 5);
  CHECK(events_of(rig.bench, "refused") == 0);
}

// danger: a hand held near counts as a touch
TEST_CASE("control and click holds near: twenty millimetres off, nothing touched") {
  HandsRig rig(six_bolt());
  rig.near = true;
  rig.click(rig.place(rig.job.old_rotor, PlaceKind::TrackOuter));
  rig.near = false;
  CHECK(rig.actions.back().kind == ActionKind::Near);
  rig.settle();
  CHECK(rig.hands.doing(kRight) == HandDoing::At);
  rig.down({640.0, 360.0});
  rig.to({700.0, 360.0});
  rig.frame();
  rig.up();
  CHECK(rig.actions.size() == 1);
  CHECK(events_of(rig.bench, "touched") == 0);
}

// danger: a shaking hand cannot work, or the help against it works by itself
TEST_CASE("steadied over 80 ms a pointer that shakes by four points is read within one") {
  hand::SteadyPointer steady;
  steady.steady_over(19);
  steady.begin(0, {100.0, 100.0});
  double worst = 0.0;
  for (base::Tick t = 1; t <= 480; ++t) {
    steady.put(t, {100.0 + (t / 3 % 2 == 0 ? 4.0 : -4.0), 100.0});
    if (t > 40) worst = std::max(worst, std::fabs(steady.at(t).x_pt - 100.0));
  }
  CHECK(worst < 1.0);
  for (base::Tick t = 481; t <= 520; ++t) steady.put(t, {200.0, 100.0});
  CHECK(steady.at(520).x_pt == Approx(200.0));
}

// danger: squeezing a bottle floods what wanted one drop
TEST_CASE("each tap on a bottle at a place is one drop") {
  HandsRig rig(six_bolt());
  rig.hands.act_on(rig.place(rig.job.alcohol, PlaceKind::Body));
  rig.settle();
  rig.hands.act_on(rig.place(rig.job.clean_rag, PlaceKind::Body));
  rig.settle();
  rig.hands.tap(Tap::Right, false);
  rig.hands.tap(Tap::Right, false, 4);
  CHECK(rig.count(ActionKind::Squeeze) == 2);
  CHECK(rig.actions.back().numbers[1] == 4);
  CHECK(events_of(rig.bench, "applied") == 2);
}

// danger: the rag slides without being pressed, or presses harder than it says
TEST_CASE("a rag strokes where the pointer goes, at five, fifteen or thirty newton, and lifts at slack") {
  HandsRig rig(six_bolt());
  rig.inner_m = 0.065;
  rig.outer_m = 0.080;
  rig.hands.act_on(rig.place(rig.job.clean_rag, PlaceKind::Body));
  rig.settle();
  Pointed track = rig.place(rig.job.old_rotor, PlaceKind::TrackOuter);
  track.u_um = 72000;
  rig.hands.act_on(track);
  rig.settle();
  rig.look_at({0.0, 0.0, 0.0}, 1.0);
  rig.down({640.0 + 144.0, 360.0});
  rig.to({640.0 + 144.0, 340.0});
  rig.frame();
  REQUIRE(rig.actions.back().kind == ActionKind::AimFace);
  CHECK(rig.actions.back().numbers[3] == 15000);
  CHECK(rig.actions.back().numbers[2] == Approx(std::atan2(20.0, 144.0) * 1e6).epsilon(1e-3));
  rig.hands.wheel(1.0, false);
  CHECK(rig.actions.back().numbers[3] == 30000);
  rig.hands.wheel(-2.0, false);
  CHECK(rig.actions.back().numbers[3] == 5000);
  // twice round: the angle goes on, it does not jump back
  std::int64_t before = rig.actions.back().numbers[2];
  for (int i = 1; i <= 80; ++i) {
    const double a = base::radians(8.0 + 9.0 * i);
    rig.to({640.0 + 144.0 * base::cos_rad(a), 360.0 - 144.0 * base::sin_rad(a)});
    rig.frame(12);
    CHECK(rig.actions.back().numbers[2] > before);
    before = rig.actions.back().numbers[2];
  }
  CHECK(static_cast<double>(before) > 4.0 * base::kPi * 1e6);
  rig.up();
  CHECK(rig.actions.back().kind == ActionKind::Slack);
}

}  // namespace proofstand::testing
