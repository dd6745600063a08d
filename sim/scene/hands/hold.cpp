#include "sim/scene/hands/hold.h"

#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/carried.h"
#include "sim/scene/hands/hold_thing.h"
#include "sim/scene/tools/carrying.h"
#include "sim/scene/wheel_pose.h"

namespace proofstand::scene {
namespace {

using bench::ThingKind;
using event::Grip;
using event::PlaceKind;

const glm::vec3 kUp(0.0F, 1.0F, 0.0F);

float side_of(event::HandId hand) { return hand == event::HandId::Left ? 1.0F : -1.0F; }

bool of_disc(PlaceKind place) {
  return place == PlaceKind::Edge || place == PlaceKind::Arms || place == PlaceKind::InnerEdge ||
         place == PlaceKind::TrackOuter || place == PlaceKind::TrackInner;
}

double rim_m(const bench::Bench& bench, event::ThingId rotor) {
  if (rotor == event::kNoThing) return 0.080;
  const bench::Thing& thing = bench.setup().things[event::index_of(rotor)];
  return thing.kind == ThingKind::Rotor ? 0.5 * bench.setup().rotors[thing.part].diameter_m : 0.080;
}

// where fingers lie on a disc of this size when they hold it so
float grip_radius_m(double rim, PlaceKind place, Grip grip) {
  if (grip == Grip::Arms || place == PlaceKind::Arms) return static_cast<float>(rim - 0.030);
  if (grip == Grip::InnerEdge || place == PlaceKind::InnerEdge) return static_cast<float>(rim - 0.016);
  if (grip == Grip::Track || place == PlaceKind::TrackOuter || place == PlaceKind::TrackInner)
    return static_cast<float>(rim - 0.0075);
  return static_cast<float>(rim - 0.0015);
}

Hold sheet(const glm::vec3& at, const glm::vec3& normal, const glm::vec3& out) {
  Hold hold;
  hold.shape = HandShape::Sheet;
  hold.at = at;
  hold.axis = normal;
  hold.forearm = 0.9F * out;
  return hold;
}

// a rotor carried: the fingers are where its work frame begins, the thumb towards the mechanic
Hold hold_rotor(const bench::Bench& bench, event::ThingId rotor, event::HandId hand, const WorkFrame& work) {
  const glm::vec3 middle(work.frame * glm::vec4(held_rotor_middle(bench, hand, rotor), 1.0F));
  const glm::vec3 at(work.frame[3]);
  const glm::vec3 out = glm::length(at - middle) > 0.001F ? glm::normalize(at - middle) : -kUp;
  return sheet(at + glm::vec3(work.frame[2]) * work.off_m, glm::vec3(work.frame[2]), out);
}

Hold hold_wheel(const bench::Bench& bench, event::HandId hand) {
  const glm::mat4 wheel = wheel_stands(bench);
  const glm::vec3 out(side_of(hand), 0.0F, 0.0F);
  Hold hold;
  hold.shape = HandShape::FistWide;
  hold.at = glm::vec3(wheel[3]) + out * static_cast<float>(bench.setup().rider.wheel_radius_m - 0.012);
  hold.axis = kUp;
  hold.either_way = true;
  hold.back = 1.4F * out;
  return hold;
}

// fingers on a rotor that hangs or sits on the hub
Hold hold_disc(const bench::Bench& bench, event::HandId hand, const bench::HandState& state, const WorkFrame& work) {
  const glm::mat4& disc = work.place->frame;
  const glm::vec3 middle(disc[3]);
  glm::vec3 z = glm::normalize(glm::vec3(disc[2]));
  glm::vec3 flat = glm::vec3(work.frame[3]) - middle;
  flat -= glm::dot(flat, z) * z;
  if (glm::length(flat) < 0.012F) flat = glm::vec3(0.80F * side_of(hand), -0.60F, 0.0F);
  flat = glm::normalize(flat);
  const bool fingertips = (state.at_place == PlaceKind::TrackOuter || state.at_place == PlaceKind::TrackInner) &&
                          state.grip == Grip::Fingers;
  const float radius = grip_radius_m(rim_m(bench, state.at_thing), state.at_place, state.grip);
  if (fingertips) {
    Hold hold;
    hold.shape = HandShape::Touch;
    hold.at = glm::vec3(work.frame[3]);
    hold.axis = z;
    return hold;
  }
  // the thumb lies on the side that looks to the mechanic
  if (z.z > 0.0F) z = -z;
  Hold hold = sheet(middle + flat * radius, z, flat);
  hold.carry = glm::translate(glm::rotate(glm::translate(glm::mat4(1.0F), middle), work.turn_rad, z), -middle);
  return hold;
}

Hold hold_tyre(const bench::HandState& state, const WorkFrame& work) {
  const glm::vec3 axle = glm::normalize(glm::vec3(work.place->frame[2]));
  const glm::vec3 middle(work.place->frame[3]);
  glm::vec3 out = glm::vec3(work.frame[3]) - middle;
  out = glm::normalize(out - glm::dot(out, axle) * axle);
  Hold hold;
  hold.at = glm::vec3(work.frame[3]);
  if (state.grip == Grip::Fingers) {
    hold.shape = HandShape::Touch;
    hold.axis = out;
  } else {
    hold.shape = HandShape::FistWide;
    hold.axis = glm::cross(axle, out);
    hold.either_way = true;
    hold.back = 1.4F * out;
  }
  return hold;
}

Hold fingers_on(const WorkFrame& work, HandShape shape, float above_m) {
  Hold hold;
  hold.shape = shape;
  hold.at = glm::vec3(work.frame[3]) + glm::vec3(work.frame[2]) * above_m;
  hold.axis = glm::vec3(work.frame[2]);
  return hold;
}

Hold empty_hand(const bench::Bench& bench, event::HandId hand, const bench::HandState& state, const WorkFrame& work) {
  if (!work.at_work || work.place == nullptr) {
    Hold hold = fingers_on(work, HandShape::Rest, work.off_m);
    // the wrist bends so that the arm lies low over the bench and does not dive through it
    const float up = std::max(0.0F, hold.axis.y);
    const float upright = 1.0F - std::abs(hold.axis.y);
    hold.axis = glm::normalize(hold.axis + glm::vec3(0.0F, 0.40F * upright, -0.50F * up));
    hold.forearm = {-0.55F * side_of(hand), -0.05F, -0.30F};
    return hold;
  }
  switch (state.at_place) {
    case PlaceKind::BoltHead:
    case PlaceKind::BoltRecess: {
      Hold hold = fingers_on(work, HandShape::Pinch, 0.0004F);
      hold.carry = walking_fingers(work);
      return hold;
    }
    case PlaceKind::Tyre:
    case PlaceKind::Rim:
      return hold_tyre(state, work);
    default:
      break;
  }
  if (of_disc(state.at_place)) return hold_disc(bench, hand, state, work);
  return fingers_on(work, HandShape::Touch, 0.0F);
}

}  // namespace

Hold hold_of_hand(const bench::Bench& bench, event::HandId hand, const WorkFrame& work) {
  const bench::HandState& state = bench.state().hands[static_cast<std::size_t>(hand)];
  const event::ThingId thing = carried_thing(bench, hand);
  if (thing == event::kNoThing) return empty_hand(bench, hand, state, work);
  const Grip grip = carrying_grip(bench, hand);
  switch (bench.setup().things[event::index_of(thing)].kind) {
    case ThingKind::Wheel:
      return hold_wheel(bench, hand);
    case ThingKind::Rotor:
      return hold_rotor(bench, thing, hand, work);
    case ThingKind::Bolt: {
      Hold hold = fingers_on(work, HandShape::Pinch, 0.0010F + work.off_m);
      hold.carry = walking_fingers(work);
      return hold;
    }
    default:
      return hold_of_thing(bench, thing, hand, grip, work);
  }
}

}  // namespace proofstand::scene
