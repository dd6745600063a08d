#include <rapidcheck.h>
#include <array>
#include <cmath>

#include "sim/hand/gesture_pull.h"
#include "tests/unit/hand/gesture_rig.h"

namespace proofstand::testing {
namespace {

// the angle that the hands ask for when the pointer goes round an axis seen with |cosine| g
double turned_deg(double g_1, double angle_deg) {
  HandsRig rig(stuck_bolts());
  rig.look_at(rig.bolt_point(bolt_at(0)), g_1);
  hand::Grasp grasp;
  grasp.axis = {0.0, 0.0, 1.0};
  grasp.grip = rig.bolt_point(bolt_at(0));
  double sum = 0.0;
  const double seen = hand::towards_eye_1(rig.lens, grasp);
  Spot at = rig.round(bolt_at(0), 120.0, 0.0);
  for (int i = 1; i <= 40; ++i) {
    const Spot next = rig.round(bolt_at(0), 120.0, angle_deg * i / 40.0);
    sum += hand::turn_step(rig.lens, grasp, seen, at, next).turn_rad;
    at = next;
  }
  return base::degrees(sum);
}

// pointer moved sideways by 100 pt over an axis seen from the side
double across_deg(double g_1) {
  HandsRig rig(stuck_bolts());
  rig.look_at(rig.bolt_point(bolt_at(0)), g_1);
  hand::Grasp grasp;
  grasp.axis = {0.0, 0.0, 1.0};
  grasp.grip = rig.bolt_point(bolt_at(0));
  const double seen = hand::towards_eye_1(rig.lens, grasp);
  CHECK(seen == Approx(g_1).margin(1e-9));
  // the axis lies across the window; the near side moves up or down
  const Spot from{640.0, 360.0};
  const Spot to{640.0, 260.0};
  return base::degrees(hand::turn_step(rig.lens, grasp, seen, from, to).turn_rad);
}

}  // namespace

// danger: the same turn of the wrist turns the bolt by another angle when one looks from another side
TEST_CASE("one angle drawn round an axis is one angle from every side it can be seen from") {
  for (const double angle : {90.0, -90.0, 200.0, -360.0}) {
    for (const double g : {0.999, 0.9, 0.5, 0.31}) CHECK(turned_deg(g, angle) == Approx(angle).margin(0.5));
  }
}

// danger: an axis seen from the side is turned the wrong way, or by nobody knows how much
TEST_CASE("across an axis seen from the side a hundred points are fifty degrees") {
  for (const double g : {0.29, 0.05}) CHECK(std::fabs(across_deg(g)) == Approx(50.0).margin(0.05));
}

// danger: sign by view: from one side clockwise, from the next anti-clockwise
TEST_CASE("seen from the side, the near side of what is turned follows the pointer") {
  HandsRig rig(stuck_bolts());
  for (const double g : {0.05, 0.15, 0.25}) {
    rig.look_at({0.0, 0.0, 0.0}, g);
    hand::Grasp grasp;
    grasp.axis = {0.0, 0.0, 1.0};
    // a point of the near side, 20 mm off the axis towards the eye, moved by a small turn
    const Vec3 towards_eye = hand::unit(rig.lens.eye - hand::Vec3{});
    const Vec3 out = hand::unit(towards_eye - grasp.axis * hand::dot(towards_eye, grasp.axis));
    const Vec3 before = out * 0.02;
    const Vec3 after = before + hand::cross(grasp.axis, before) * 0.01;
    const Spot a = hand::project(rig.lens, before).value_or(Spot{});
    const Spot b = hand::project(rig.lens, after).value_or(Spot{});
    const double seen = hand::towards_eye_1(rig.lens, grasp);
    CHECK(hand::turn_step(rig.lens, grasp, seen, a, b).turn_rad > 0.0);
  }
}

// danger: over the axis itself a hair's breadth of pointer spins the tool
TEST_CASE("nothing turns within ten points of the axis, and nothing faster than two degrees a point") {
  HandsRig rig(stuck_bolts());
  rig.look_at({0.0, 0.0, 0.0}, 1.0);
  hand::Grasp grasp;
  grasp.axis = {0.0, 0.0, 1.0};
  const Spot middle{640.0, 360.0};
  CHECK(hand::turn_step(rig.lens, grasp, 1.0, {middle.x_pt + 9.0, middle.y_pt}, {middle.x_pt + 5.0, middle.y_pt - 7.0})
            .turn_rad == 0.0);
  const auto near_by = hand::turn_step(rig.lens, grasp, 1.0, {middle.x_pt + 11.0, middle.y_pt - 1.0},
                                       {middle.x_pt + 11.0, middle.y_pt + 1.0});
  CHECK(base::degrees(near_by.turn_rad) == Approx(4.0).margin(1e-6));
  const bool found = rc::check("no move turns more than two degrees a point", [&] {
    const auto spot = [&] {
      return Spot{640.0 + static_cast<double>(*rc::gen::inRange(-300, 300)),
                  360.0 + static_cast<double>(*rc::gen::inRange(-300, 300))};
    };
    const Spot from = spot();
    const Spot to = spot();
    const double turned = base::degrees(hand::turn_step(rig.lens, grasp, 1.0, from, to).turn_rad);
    RC_ASSERT(std::fabs(turned) <= 2.0 * hand::distance_pt(from, to) + 1e-9);
  });
  CHECK(found);
}

// danger: a long move between two frames is read as the short way round
TEST_CASE("a move is followed in small pieces: half round in one frame keeps its way") {
  HandsRig rig(stuck_bolts());
  rig.look_at({0.0, 0.0, 0.0}, 1.0);
  hand::Grasp grasp;
  grasp.axis = {0.0, 0.0, 1.0};
  // a straight line past the axis, 60 pt below it
  const auto past = hand::turn_step(rig.lens, grasp, 1.0, {640.0 + 400.0, 360.0 + 60.0}, {640.0 - 400.0, 360.0 + 60.0});
  const double exact = 180.0 - 2.0 * base::degrees(std::atan2(60.0, 400.0));
  CHECK(base::degrees(past.turn_rad) == Approx(exact).margin(0.5));
}

// danger: pressing needs another drag than its force stands for
TEST_CASE("sixty points nearer the axis are forty millimetres of press, whichever way they are drawn") {
  HandsRig rig(stuck_bolts());
  rig.look_at({0.0, 0.0, 0.0}, 1.0);
  hand::Grasp grasp;
  grasp.axis = {0.0, 0.0, 1.0};
  for (const double angle : {0.0, 77.0, 200.0}) {
    const double c = std::cos(base::radians(angle)), s = std::sin(base::radians(angle));
    const auto step = hand::turn_step(rig.lens, grasp, 1.0, {640.0 + 180.0 * c, 360.0 + 180.0 * s},
                                      {640.0 + 120.0 * c, 360.0 + 120.0 * s});
    CHECK(step.press_m == Approx(0.040).epsilon(1e-6));
    CHECK(step.turn_rad == Approx(0.0).margin(1e-9));
  }
}

// danger: a palm that presses along an axis seen from the side goes another way than the pointer
TEST_CASE("along the axis the pointer's point on it is followed; seen end on, up is in") {
  HandsRig rig(stuck_bolts());
  hand::Grasp grasp;
  grasp.axis = {0.0, 0.0, 1.0};
  rig.look_at({0.0, 0.0, 0.0}, 0.1);
  const Spot a = hand::project(rig.lens, {0.0, 0.0, 0.0}).value_or(Spot{});
  const Spot b = hand::project(rig.lens, {0.0, 0.0, 0.010}).value_or(Spot{});
  const double seen = hand::towards_eye_1(rig.lens, grasp);
  CHECK(hand::along_step_m(rig.lens, grasp, seen, a, b) == Approx(0.010).epsilon(0.02));
  rig.look_at({0.0, 0.0, 0.0}, 0.95);
  const double end_on = hand::towards_eye_1(rig.lens, grasp);
  CHECK(hand::along_step_m(rig.lens, grasp, end_on, {640.0, 360.0}, {640.0, 340.0}) == Approx(0.005));
}

// danger: beside the disc a rag follows the pointer into the air
TEST_CASE("beside a face the nearest point of it counts, and sixty points off the rag lifts") {
  HandsRig rig(stuck_bolts());
  rig.look_at({0.0, 0.0, 0.0}, 1.0);
  hand::Grasp grasp;
  grasp.frame.z = {0.0, 0.0, -1.0};
  grasp.inner_m = 0.065;
  grasp.outer_m = 0.080;
  const auto on = hand::face_point(rig.lens, grasp, {640.0 + 2000.0 * 0.072, 360.0});
  REQUIRE(on);
  CHECK(std::hypot(on->x_m, on->y_m) == Approx(0.072));
  CHECK_FALSE(on->lifted);
  const auto beside = hand::face_point(rig.lens, grasp, {640.0 + 2000.0 * 0.080 + 59.0, 360.0});
  REQUIRE(beside);
  CHECK(std::hypot(beside->x_m, beside->y_m) == Approx(0.080));
  CHECK_FALSE(beside->lifted);
  const auto off = hand::face_point(rig.lens, grasp, {640.0 + 2000.0 * 0.080 + 61.0, 360.0});
  REQUIRE(off);
  CHECK(off->lifted);
}

}  // namespace proofstand::testing
