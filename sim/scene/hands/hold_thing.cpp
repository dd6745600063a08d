#include "sim/scene/hands/hold_thing.h"

#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/tools/click_driver.h"
#include "sim/scene/tools/micrometer.h"
#include "sim/scene/tools/scales.h"
#include "sim/scene/tools/thing_pose.h"
#include "sim/scene/tools/vernier.h"

namespace proofstand::scene {
namespace {

using bench::ThingKind;
using event::Grip;

const glm::vec3 kX(1.0F, 0.0F, 0.0F);
const glm::vec3 kZ(0.0F, 0.0F, 1.0F);

// in the thing's own frame
struct Spot {
  HandShape shape = HandShape::Pinch;
  glm::vec3 at{0.0F};
  glm::vec3 axis = kZ;
  bool either_way = false;
  glm::vec3 back{0.0F};
  bool turns = false;  // the hand goes round with it
  bool walks = false;  // the fingers spin it
};

glm::vec3 up_z(double z_m) { return {0.0F, 0.0F, static_cast<float>(z_m)}; }

Spot palm_at(double z_m) { return {HandShape::Palm, up_z(z_m)}; }
Spot fingers_at(HandShape shape, double z_m) { return {shape, up_z(z_m), kZ, false, glm::vec3(0.0F), false, true}; }

Spot on_key(const bench::ToolPart& tool, Grip grip, bool long_arm_in) {
  const auto up = static_cast<float>(tool.short_arm_m);
  const auto out = static_cast<float>(tool.arm_m);
  const glm::vec3 elbow(0.0F, 0.0F, up);
  if (grip == Grip::End) {
    // the palm presses on the elbow, along the arm that is in
    return {HandShape::Palm, long_arm_in ? glm::vec3(-0.0023F, 0.0F, up) : elbow + 0.0023F * kZ,
            long_arm_in ? -kX : kZ};
  }
  const bool on_long = (grip == Grip::Shaft) == long_arm_in;
  if (grip == Grip::Shaft) {
    if (on_long) return {HandShape::Pinch, {0.48F * out, 0.0F, up}, -kX, false, glm::vec3(0.0F), false, true};
    return fingers_at(HandShape::Pinch, 0.62 * tool.short_arm_m);
  }
  Spot arm;
  arm.shape = HandShape::Fist;
  arm.either_way = true;
  arm.turns = true;
  if (on_long) {
    arm.at = {0.74F * out, 0.0F, up};
    arm.axis = kX;
    arm.back = 0.9F * (long_arm_in ? -kX : kZ);
  } else {
    arm.shape = HandShape::Pinch;
    arm.at = {0.0F, 0.0F, 0.35F * up};
    arm.axis = kZ;
  }
  return arm;
}

Spot on_driver(Grip grip) {
  if (grip == Grip::End) return palm_at(kDriverLength_m);
  if (grip == Grip::Shaft) return fingers_at(HandShape::Pinch, 0.060);
  Spot handle{HandShape::FistWide, up_z(0.160), -kZ};
  handle.turns = true;
  return handle;
}

Spot on_click_driver(const bench::ToolPart& part, const bench::ToolState& state, Grip grip) {
  if (grip == Grip::End) return palm_at(kCross_m + 0.0146);
  if (grip == Grip::Shaft) return fingers_at(HandShape::PinchMid, 0.037);
  if (grip == Grip::Setting) {
    return fingers_at(HandShape::PinchWide,
                      kLowestLine_m - setting_edge_m(part, state.setting_nm) + 0.6 * kHandleLength_m);
  }
  // palm over the cross bar, fingers round it on both sides of the stem
  Spot cross{HandShape::Fist, up_z(kCross_m), kX, true};
  cross.back = 2.5F * kZ;
  cross.turns = true;
  return cross;
}

Spot on_micrometer(const bench::InstrumentState& state, Grip grip) {
  const double edge_m = kSleeveZero_m + thimble_edge_m(state.shown_m);
  if (grip == Grip::Thimble) return fingers_at(HandShape::AsideMid, edge_m + 0.033);
  if (grip == Grip::Ratchet) return fingers_at(HandShape::Aside, edge_m + kThimbleLength_m - 0.004);
  return {HandShape::Cloth, {0.0F, static_cast<float>(kThroat_m) + 0.004F, 0.016F}, kX, true};
}

Spot spot_on(const bench::Bench& bench, const bench::Thing& thing, const bench::HandState& hand, Grip grip,
             const WorkFrame& work) {
  switch (thing.kind) {
    case ThingKind::LKey:
      return on_key(bench.setup().tools[thing.part], grip, hand.turned_over);
    case ThingKind::Driver:
      return on_driver(grip);
    case ThingKind::ClickDriver:
      return on_click_driver(bench.setup().tools[thing.part], bench.state().tools[thing.part], grip);
    case ThingKind::Micrometer:
      return on_micrometer(bench.state().instruments[thing.part], grip);
    case ThingKind::Vernier: {
      const auto open = static_cast<float>(bench.state().instruments[thing.part].shown_m);
      return {HandShape::Cloth, {open + 0.050F, static_cast<float>(kJawLength_m) - 0.003F, 0.0F}, kZ, work.at_work};
    }
    case ThingKind::DialGauge:
      // by its column, a hand's breadth below the arm
      return {HandShape::Fist,
              {-static_cast<float>(kDialArm_m), -0.075F, static_cast<float>(kDialHub_m) - 0.012F},
              {0.0F, 1.0F, 0.0F}};
    case ThingKind::Pick:
      return {HandShape::Pinch, up_z(0.086), kZ};
    case ThingKind::Lamp:
      return {HandShape::PinchMid, up_z(0.064), kZ};
    case ThingKind::Bottle: {
      const bench::FluidKind fluid = bench.setup().bottles[thing.part].fluid;
      if (fluid == bench::FluidKind::Locker) return {HandShape::PinchWide, up_z(0.060), kZ};
      const double z_m = fluid == bench::FluidKind::Grease ? 0.040 : 0.62 * bottle_height_m(fluid);
      // carried foot down, it stands in the fist with the thumb towards its neck
      return {HandShape::Grasp, up_z(z_m), -kZ};
    }
    case ThingKind::Rag: {
      const bool pinched = grip == Grip::Pinched;
      if (pinched) return {HandShape::Cloth, {0.0F, -0.004F, 0.0F}, kZ};
      const bool there = work.place != nullptr;
      return {there ? HandShape::Flat : HandShape::Cloth, there ? up_z(0.0058) : glm::vec3(0.0F, -0.028F, 0.006F), kZ};
    }
    default:
      return {};
  }
}

}  // namespace

glm::mat4 walking_fingers(const WorkFrame& work) {
  // three quarters of the way along with what they spin, then quickly back
  constexpr float kPeriod = 1.6F;
  const float round = work.turn_rad / kPeriod - std::floor(work.turn_rad / kPeriod);
  const float way = round < 0.75F ? round / 0.75F : (1.0F - round) / 0.25F;
  const glm::vec3 at(work.frame[3]);
  const glm::vec3 z(work.frame[2]);
  return glm::translate(glm::rotate(glm::translate(glm::mat4(1.0F), at), 0.9F * (way - 0.5F), z), -at);
}

Hold hold_of_thing(const bench::Bench& bench, event::ThingId thing, event::HandId hand, event::Grip grip,
                   const WorkFrame& work) {
  const bench::Thing& what = bench.setup().things[event::index_of(thing)];
  const bench::HandState& state = bench.state().hands[static_cast<std::size_t>(hand)];
  const Spot spot = spot_on(bench, what, state, grip, work);
  Hold hold;
  hold.shape = spot.shape;
  hold.either_way = spot.either_way;
  glm::mat4 pose = held_pose(bench, thing, hand, work);
  const glm::vec3 pivot(work.frame[3]);
  const glm::vec3 z(work.frame[2]);
  const auto turned = [&pivot, &z](float angle_rad) {
    return glm::translate(glm::rotate(glm::translate(glm::mat4(1.0F), pivot), angle_rad, z), -pivot);
  };
  if (spot.turns && work.at_work) {
    // chosen as it was before the pull, then carried round with the tool: the wrist bends, the grip does not creep
    pose = turned(-work.turn_rad) * pose;
    hold.carry = turned(work.turn_rad);
  } else if (spot.walks && work.at_work) {
    hold.carry = walking_fingers(work);
  }
  hold.at = glm::vec3(pose * glm::vec4(spot.at, 1.0F));
  hold.axis = glm::vec3(pose * glm::vec4(spot.axis, 0.0F));
  hold.back = glm::vec3(pose * glm::vec4(spot.back, 0.0F));
  return hold;
}

}  // namespace proofstand::scene
