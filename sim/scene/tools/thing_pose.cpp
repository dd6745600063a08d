#include "sim/scene/tools/thing_pose.h"

#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/layout.h"
#include "sim/scene/tools/click_driver.h"
#include "sim/scene/tools/micrometer.h"
#include "sim/scene/tools/scales.h"
#include "sim/scene/tools/vernier.h"

namespace proofstand::scene {
namespace {

using bench::ThingKind;

const glm::vec3 kX(1.0F, 0.0F, 0.0F);
const glm::vec3 kY(0.0F, 1.0F, 0.0F);
const glm::vec3 kZ(0.0F, 0.0F, 1.0F);

glm::mat4 axes(const glm::vec3& x, const glm::vec3& y, const glm::vec3& z, const glm::vec3& at) {
  return {glm::vec4(x, 0.0F), glm::vec4(y, 0.0F), glm::vec4(z, 0.0F), glm::vec4(at, 1.0F)};
}

float as_float(double value) { return static_cast<float>(value); }

// along the bench, the working end to the mechanic's left, this y of the thing upwards
glm::mat4 along_bench(double length_m, double height_m) {
  return axes(kZ, kY, -kX, {as_float(0.5 * length_m), as_float(height_m), 0.0F});
}

glm::mat4 in_spot(const bench::BenchSetup& setup, const bench::Thing& thing) {
  switch (thing.kind) {
    case ThingKind::LKey: {
      const bench::ToolPart& tool = setup.tools[thing.part];
      return axes(kX, kY, kZ, {as_float(-0.5 * tool.arm_m), 0.0023F, as_float(-0.5 * tool.short_arm_m)});
    }
    case ThingKind::Driver:
      return along_bench(kDriverLength_m, setup.tools[thing.part].arm_m);
    case ThingKind::ClickDriver:
      return along_bench(kCross_m, kHandleRadius_m);
    case ThingKind::Pick:
      return along_bench(kPickLength_m, 0.0045);
    case ThingKind::Lamp:
      return along_bench(kLampLength_m, 0.0115);
    case ThingKind::Micrometer:
      return axes(kY, -kZ, -kX, {0.04F, as_float(kThimbleRadius_m), 0.0F});
    case ThingKind::Vernier:
      return axes(-kX, kZ, kY, {0.10F, 0.0045F, -0.04F});
    case ThingKind::Bottle:
      return axes(-kZ, kX, -kY, {0.0F, as_float(bottle_height_m(setup.bottles[thing.part].fluid)), 0.0F});
    case ThingKind::Gloves:
      return axes(-kX, kZ, kY, glm::vec3(0.0F));
    case ThingKind::DialGauge:
      return axes(-kX, kY, -kZ, {as_float(-kDialArm_m), 0.200F, -0.02F});
    default:
      return axes(kX, -kZ, kY, glm::vec3(0.0F));
  }
}

// carried about: leaning back and out a little, so that one sees what it is
glm::mat4 carried(const WorkFrame& work, event::HandId hand) {
  const float side = hand == event::HandId::Left ? -1.0F : 1.0F;
  glm::mat4 frame = work.frame;
  frame = glm::rotate(frame, -0.55F, kX);
  return glm::rotate(frame, 0.60F * side, kY);
}

// held up to be read: the scale to the eye, the spot that the hand holds at the work's point
glm::mat4 shown(const WorkFrame& work, const glm::vec3& x, const glm::vec3& y, const glm::vec3& z,
                const glm::vec3& held) {
  const glm::mat4 up = glm::rotate(glm::translate(glm::mat4(1.0F), glm::vec3(work.frame[3])), 0.30F, kX);
  return glm::translate(up * axes(x, y, z, glm::vec3(0.0F)), -held);
}

bool at_place(const WorkFrame& work) { return work.place != nullptr; }

// an arm or cross bar begins each pull pointing out on the hand's own side, a little up: the forearm comes from below
float base_turn_rad(const WorkFrame& work, event::HandId hand) {
  const float side = hand == event::HandId::Left ? 1.0F : -1.0F;
  const glm::vec3 wanted(0.92F * side, 0.38F, 0.0F);
  const glm::vec3 x(work.frame[0]);
  const glm::vec3 y(work.frame[1]);
  return std::atan2(glm::dot(wanted, y), glm::dot(wanted, x));
}

// in a recess that holds it, a tool stands in one of the six ways its lobes allow
float tool_turn_rad(const bench::Bench& bench, event::HandId hand, const WorkFrame& work) {
  constexpr float kLobe_rad = glm::pi<float>() / 3.0F;
  constexpr double kEngaged_m = 0.0002;
  const float wanted = base_turn_rad(work, hand) + work.turn_rad;
  const bench::VisitState& visit = bench.state().visits[static_cast<std::size_t>(hand)];
  if (!work.at_work || !visit.open || visit.depth_m < kEngaged_m) return wanted;
  return kLobe_rad * std::round(wanted / kLobe_rad);
}

glm::mat4 key_other_way(const bench::ToolPart& tool) {
  // the long arm in the bolt: what lay along x now runs down to the tip
  const glm::mat4 turned = axes(-kZ, -kY, -kX, {as_float(tool.short_arm_m), 0.0F, as_float(tool.arm_m)});
  return turned;
}

glm::mat4 tool_pose(const bench::Bench& bench, const bench::Thing& thing, event::HandId hand, const WorkFrame& work) {
  const bench::HandState& state = bench.state().hands[static_cast<std::size_t>(hand)];
  glm::mat4 pose = work.frame;
  if (at_place(work)) {
    const bench::VisitState& visit = bench.state().visits[static_cast<std::size_t>(hand)];
    const double depth_m = work.at_work && visit.open ? visit.depth_m : 0.0;
    pose = glm::rotate(pose, tool_turn_rad(bench, hand, work), kZ);
    pose = glm::translate(pose, {0.0F, 0.0F, work.off_m - as_float(depth_m)});
  } else if (state.grip == event::Grip::Setting) {
    return shown(work, kY, -kZ, -kX, {0.0F, 0.0F, as_float(kLowestLine_m)});
  } else {
    pose = glm::rotate(carried(work, hand), base_turn_rad(work, hand), kZ);
  }
  if (thing.kind == ThingKind::LKey && state.turned_over) {
    pose = pose * key_other_way(bench.setup().tools[thing.part]);
  }
  return pose;
}

// the radial direction at a point of a disc, seen in the work's frame
glm::vec3 outwards(const WorkFrame& work) {
  if (work.place == nullptr) return -kY;
  const glm::vec3 middle(work.place->frame[3]);
  const glm::vec3 at(work.frame[3]);
  const glm::vec3 z(work.frame[2]);
  const glm::vec3 flat = (at - middle) - glm::dot(at - middle, z) * z;
  return glm::length(flat) > 1.0e-4F ? glm::normalize(flat) : -kY;
}

double thickness_m(const bench::Bench& bench, const WorkFrame& work) {
  if (work.place == nullptr || work.place->thing == event::kNoThing) return 0.0;
  const bench::Thing& thing = bench.setup().things[event::index_of(work.place->thing)];
  return thing.kind == ThingKind::Rotor ? bench.setup().rotors[thing.part].thickness_new_m : 0.0;
}

glm::mat4 micrometer_pose(const bench::Bench& bench, const bench::Thing& thing, const WorkFrame& work) {
  const bench::InstrumentState& state = bench.state().instruments[thing.part];
  if (!at_place(work)) {
    return shown(work, -kZ, -kY, -kX, {0.0F, 0.0F, as_float(kSleeveZero_m + 0.03)});
  }
  const glm::vec3 z(work.frame[2]);
  const glm::vec3 y = outwards(work);
  const double gap_m = state.closed ? 0.0 : 0.5 * std::max(0.0, state.opening_m - thickness_m(bench, work));
  const double back_m = state.closed ? state.opening_m : thickness_m(bench, work) + gap_m;
  const glm::vec3 at = glm::vec3(work.frame[3]) + z * as_float(-back_m + static_cast<double>(work.off_m));
  return axes(glm::cross(y, z), y, z, at);
}

glm::mat4 vernier_pose(const bench::Bench& bench, const bench::Thing& thing, const WorkFrame& work) {
  const bench::InstrumentState& state = bench.state().instruments[thing.part];
  if (!at_place(work)) {
    return shown(work, -kX, kY, -kZ, {as_float(state.shown_m) + 0.050F, as_float(kJawLength_m), 0.0F});
  }
  const glm::vec3 z(work.frame[2]);
  const glm::vec3 out = outwards(work);
  const auto open = as_float(state.opening_m);
  if (work.place->place == event::PlaceKind::Edge) {
    // flat before the rotor, the jaws reaching back over its edges, a diameter between them
    const glm::vec3 x = out;
    const glm::vec3 middle(work.place->frame[3]);
    const glm::vec3 at = middle - 0.5F * open * x - z * 0.010F + z * work.off_m;
    return axes(x, z, glm::cross(x, z), at);
  }
  // across the rim: the jaws reach in from outside, the fixed one behind
  const double gap_m = 0.5 * std::max(0.0, state.opening_m - thickness_m(bench, work));
  const double back_m = state.closed ? state.opening_m : thickness_m(bench, work) + gap_m;
  const glm::vec3 at = glm::vec3(work.frame[3]) - out * 0.004F + z * (as_float(-back_m) + work.off_m);
  return axes(z, out, glm::cross(z, out), at);
}

glm::mat4 lamp_pose(const WorkFrame& work, event::HandId hand) {
  if (!at_place(work)) return carried(work, hand);
  // raking: from below and outside, low over the surface
  const float side = hand == event::HandId::Left ? 1.0F : -1.0F;
  const glm::vec3 z(work.frame[2]);
  glm::vec3 flat = glm::vec3(0.85F * side, -0.55F, 0.0F);
  flat = glm::normalize(flat - glm::dot(flat, z) * z);
  const glm::vec3 back = glm::normalize(flat * 0.86F + z * 0.50F);
  const glm::vec3 x = glm::normalize(glm::cross(z, back));
  return axes(x, glm::cross(back, x), back, glm::vec3(work.frame[3]) + back * 0.075F);
}

glm::mat4 pick_pose(const WorkFrame& work, event::HandId hand) {
  if (!at_place(work)) return carried(work, hand);
  const glm::mat4 lean = glm::rotate(work.frame, hand == event::HandId::Left ? 0.6F : -0.6F, kY);
  return glm::translate(glm::rotate(lean, 0.5F, kX), {0.0F, 0.0F, work.off_m});
}

// a bottle leans its tip to the work from above; carried, it stands upright
glm::mat4 bottle_pose(const WorkFrame& work, double height_m) {
  if (!at_place(work)) return axes(-kZ, kX, -kY, glm::vec3(work.frame[3]) + kY * as_float(0.4 * height_m));
  const glm::vec3 z(work.frame[2]);
  const glm::vec3 back = glm::normalize(z * 0.75F + kY * 0.65F);
  const glm::vec3 x = glm::normalize(glm::cross(glm::vec3(0.0F, 1.0F, 0.02F), back));
  return axes(x, glm::cross(back, x), back, glm::vec3(work.frame[3]) + back * (0.002F + work.off_m));
}

glm::mat4 rag_pose(const bench::HandState& state, const WorkFrame& work) {
  glm::mat4 pose = glm::translate(work.frame, {0.0F, 0.0F, work.off_m});
  if (state.grip == event::Grip::Pinched && at_place(work)) {
    const glm::vec3 z(work.frame[2]);
    const glm::vec3 y = outwards(work);
    return axes(glm::cross(y, z), y, z, glm::vec3(pose[3]) + y * 0.012F - z * 0.0009F);
  }
  if (!at_place(work)) pose = glm::rotate(pose, 0.28F, kX);
  return pose;
}

}  // namespace

glm::mat4 lying_pose(const bench::Bench& bench, event::ThingId thing) {
  const bench::Thing& what = bench.setup().things[event::index_of(thing)];
  return spot_of(bench.setup(), thing).frame() * in_spot(bench.setup(), what);
}

glm::mat4 held_pose(const bench::Bench& bench, event::ThingId thing, event::HandId hand, const WorkFrame& work) {
  const bench::Thing& what = bench.setup().things[event::index_of(thing)];
  const bench::HandState& state = bench.state().hands[static_cast<std::size_t>(hand)];
  switch (what.kind) {
    case ThingKind::LKey:
    case ThingKind::Driver:
    case ThingKind::ClickDriver:
      return tool_pose(bench, what, hand, work);
    case ThingKind::Micrometer:
      return micrometer_pose(bench, what, work);
    case ThingKind::Vernier:
      return vernier_pose(bench, what, work);
    case ThingKind::DialGauge:
      return at_place(work) ? glm::translate(work.frame, {0.0F, 0.0F, work.off_m})
                            : axes(-kX, kY, -kZ, glm::vec3(work.frame[3]));
    case ThingKind::Lamp:
      return lamp_pose(work, hand);
    case ThingKind::Pick:
      return pick_pose(work, hand);
    case ThingKind::Bottle:
      return bottle_pose(work, bottle_height_m(bench.setup().bottles[what.part].fluid));
    case ThingKind::Rag:
      return rag_pose(state, work);
    default:
      return work.frame;
  }
}

}  // namespace proofstand::scene
