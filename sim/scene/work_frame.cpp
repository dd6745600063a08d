#include "sim/scene/work_frame.h"

#include <cmath>
#include <glm/gtc/matrix_transform.hpp>
#include <optional>

#include "sim/scene/carried.h"
#include "sim/scene/layout.h"
#include "sim/scene/place_point.h"

namespace proofstand::scene {
namespace {

using event::ActionKind;
using event::PlaceKind;

constexpr float kNear_m = 0.020F;
constexpr float kHover_m = 0.060F;

glm::mat4 moved_to(glm::mat4 frame, const glm::vec3& at) {
  frame[3] = glm::vec4(at, 1.0F);
  return frame;
}

// z out of the work, y as upright as that allows
glm::mat4 facing(const glm::vec3& at, const glm::vec3& normal) {
  const glm::vec3 z = glm::normalize(normal);
  const glm::vec3 up = std::abs(z.y) < 0.95F ? glm::vec3(0.0F, 1.0F, 0.0F) : glm::vec3(0.0F, 0.0F, 1.0F);
  const glm::vec3 x = glm::normalize(glm::cross(up, z));
  glm::mat4 frame(1.0F);
  frame[0] = glm::vec4(x, 0.0F);
  frame[1] = glm::vec4(glm::cross(z, x), 0.0F);
  frame[2] = glm::vec4(z, 0.0F);
  return moved_to(frame, at);
}

float eased(float share) {
  const float x = glm::clamp(share, 0.0F, 1.0F);
  return x * x * (3.0F - 2.0F * x);
}

// part of the way from one frame to another, lifted a little on the way
glm::mat4 between(const glm::mat4& from, const glm::mat4& to, float share) {
  const float s = eased(share);
  const glm::vec3 lift = glm::vec3(0.0F, 0.03F, -0.02F) * (4.0F * s * (1.0F - s));
  const glm::vec3 at = glm::mix(glm::vec3(from[3]), glm::vec3(to[3]), s) + lift;
  const glm::vec3 z = glm::mix(glm::vec3(from[2]), glm::vec3(to[2]), s);
  const glm::vec3 y = glm::mix(glm::vec3(from[1]), glm::vec3(to[1]), s);
  if (glm::length(z) < 1e-3F || glm::length(glm::cross(y, z)) < 1e-3F) return moved_to(s < 0.5F ? from : to, at);
  glm::mat4 frame(1.0F);
  const glm::vec3 out = glm::normalize(z);
  const glm::vec3 x = glm::normalize(glm::cross(y, out));
  frame[0] = glm::vec4(x, 0.0F);
  frame[1] = glm::vec4(glm::cross(out, x), 0.0F);
  frame[2] = glm::vec4(out, 0.0F);
  return moved_to(frame, at);
}

// a place, else the thing's whole body, else any of its places
const ScenePlace* place_of_thing(const std::vector<ScenePlace>& places, event::ThingId thing, PlaceKind kind,
                                 event::BoltId bolt) {
  if (const ScenePlace* place = find_place(places, thing, kind, bolt)) return place;
  if (const ScenePlace* place = find_place(places, thing, kind)) return place;
  if (const ScenePlace* place = find_place(places, thing, PlaceKind::Body)) return place;
  for (const ScenePlace& place : places) {
    if (place.thing == thing) return &place;
  }
  return nullptr;
}

bool numbered(PlaceKind place) { return event::place_table()[static_cast<std::size_t>(place)].numbered; }

// the frame of a point of a place: its z and x, at the point
glm::mat4 frame_at(const ScenePlace& place, const PlacePoint& point) {
  const bool finer = point.u_1 != 0.0 || point.v_1 != 0.0;
  const glm::vec3 at = finer ? world_point(place, point) : place.middle;
  if (place.place == PlaceKind::BoltRecess || place.place == PlaceKind::Hole || place.place == PlaceKind::BoltHead) {
    return moved_to(place.frame, at);
  }
  return facing(at, place.normal);
}

// a hand that turns a wheel by its tyre goes along for a hand's breadth and then takes hold anew: how far it has gone
// along when it has turned so far
double walked_rad(double turned_rad) {
  constexpr double stride = 0.55;
  constexpr double back = 0.12;  // of the turn, while it reaches back
  const double way = std::fmod(std::abs(turned_rad), stride + back);
  const double at = way < stride ? way : stride * (stride + back - way) / back;
  return turned_rad < 0.0 ? -at : at;
}

// where a hand is on its place: wiping it follows the cord, at tyre and rim it walks
PlacePoint point_of(const bench::Bench& bench, event::HandId hand_id) {
  const bench::HandState& hand = bench.state().hands[static_cast<std::size_t>(hand_id)];
  const bench::ContactState& contact = bench.state().contacts[static_cast<std::size_t>(hand_id)];
  if (contact.open && contact.wiping) return {hand.face_radius_m, hand.face_angle_rad};
  PlacePoint point{hand.u_1, hand.v_1};
  const bool walks = hand.at_place == PlaceKind::Tyre || hand.at_place == PlaceKind::Rim;
  // the wheel turns back as the hand turns clockwise
  if (walks && hand.turn.hand_1 != 0.0) point.v_1 += hand.turn.hand_1 - walked_rad(hand.turn.hand_1);
  return point;
}

struct Target {
  const ScenePlace* place = nullptr;
  glm::mat4 frame{1.0F};
};

Target target_of(const std::vector<ScenePlace>& places, const event::Action& action) {
  constexpr double per_micro = 1e-6;
  const auto thing = static_cast<event::ThingId>(action.numbers[1]);
  const bool take = action.kind == ActionKind::Take;
  const auto kind = take ? PlaceKind::Body : static_cast<PlaceKind>(action.numbers[2]);
  const auto bolt = take ? event::kNoBolt : static_cast<event::BoltId>(action.numbers[3]);
  const bool finer = action.kind == ActionKind::Touch || action.kind == ActionKind::Bring;
  Target target;
  target.place = place_of_thing(places, thing, kind, numbered(kind) ? bolt : event::kNoBolt);
  if (target.place == nullptr) return target;
  const PlacePoint point = finer ? PlacePoint{static_cast<double>(action.numbers[4]) * per_micro,
                                              static_cast<double>(action.numbers[5]) * per_micro}
                                 : PlacePoint{};
  target.frame = frame_at(*target.place, point);
  return target;
}

glm::mat4 rest_frame(const bench::Bench& bench, const std::vector<Hover>& hovers, event::HandId hand) {
  for (const Hover& hover : hovers) {
    if (hover.hand == hand) return facing(hover.at + glm::normalize(hover.normal) * kHover_m, hover.normal);
  }
  return bench.state().wheel.at == bench::WheelAt::Bike ? hand_home_at_bike(hand) : hand_home(hand);
}

// a rotor is taken and brought by its middle: the hand is where that puts its fingers
glm::mat4 by_rotor(const bench::Bench& bench, event::HandId hand, event::ThingId rotor, const glm::vec3& middle,
                   const glm::vec3& normal) {
  return glm::translate(facing(middle, normal), -held_rotor_middle(bench, hand, rotor));
}

bool is_rotor(const bench::Bench& bench, event::ThingId thing) {
  return thing != event::kNoThing && bench.setup().things[event::index_of(thing)].kind == bench::ThingKind::Rotor;
}

// where the motion under way leads; nothing when it leads nowhere else
std::optional<Target> way(const bench::Bench& bench, const std::vector<ScenePlace>& places, event::HandId hand_id) {
  const bench::HandState& hand = bench.state().hands[static_cast<std::size_t>(hand_id)];
  constexpr glm::vec3 up(0.0F, 1.0F, 0.0F);
  Target target;
  if (lays_down(bench, hand_id)) {
    const Spot spot = spot_of(bench.setup(), hand.holding);
    target.frame =
        is_rotor(bench, hand.holding) ? by_rotor(bench, hand_id, hand.holding, spot.at, up) : facing(spot.at, up);
    return target;
  }
  switch (hand.pending.kind) {
    case ActionKind::Take:
    case ActionKind::Touch:
    case ActionKind::Near:
    case ActionKind::Bring:
      break;
    default:
      return std::nullopt;
  }
  target = target_of(places, hand.pending);
  if (target.place == nullptr) return std::nullopt;
  const auto thing = static_cast<event::ThingId>(hand.pending.numbers[1]);
  if (hand.pending.kind == ActionKind::Take && is_rotor(bench, thing)) {
    const glm::vec3 normal(target.place->frame[2]);
    const bool turned = normal.z > 0.5F || normal.y < -0.5F;
    target.frame = by_rotor(bench, hand_id, thing, glm::vec3(target.place->frame[3]), turned ? -normal : normal);
  } else if (hand.pending.kind == ActionKind::Bring && is_rotor(bench, hand.holding)) {
    target.frame = by_rotor(bench, hand_id, hand.holding, glm::vec3(target.place->frame[3]), target.place->normal);
  }
  return target;
}

WorkFrame on_the_way(const bench::Bench& bench, const std::vector<ScenePlace>& places, const glm::mat4& rest,
                     event::HandId hand_id) {
  const bench::HandState& hand = bench.state().hands[static_cast<std::size_t>(hand_id)];
  WorkFrame work;
  work.frame = rest;
  if (!hand.has_pending) return work;
  const std::optional<Target> target = way(bench, places, hand_id);
  work.share_1 = motion_share_1(bench, hand_id);
  if (!target) return work;
  work.place = target->place;
  const bool back = hand.pending.kind == ActionKind::Take || lays_down(bench, hand_id);
  if (!back) {
    work.frame = between(rest, target->frame, work.share_1);
  } else if (work.share_1 < 0.5F) {
    work.frame = between(rest, target->frame, 2.0F * work.share_1);
  } else {
    work.frame = between(target->frame, rest, 2.0F * work.share_1 - 1.0F);
  }
  return work;
}

}  // namespace

WorkFrame work_frame(const bench::Bench& bench, const std::vector<ScenePlace>& places, const std::vector<Hover>& hovers,
                     event::HandId hand_id) {
  const bench::HandState& hand = bench.state().hands[static_cast<std::size_t>(hand_id)];
  const glm::mat4 rest = rest_frame(bench, hovers, hand_id);
  WorkFrame work;
  work.frame = rest;
  work.turn_rad = -static_cast<float>(hand.turn.hand_1);
  const bool placed = hand.at_place != PlaceKind::None && hand.at_thing != event::kNoThing;
  if (hand.stage == bench::HandStage::Busy && !placed) return on_the_way(bench, places, rest, hand_id);
  if (!placed) return work;
  const ScenePlace* place =
      place_of_thing(places, hand.at_thing, hand.at_place, numbered(hand.at_place) ? hand.at_bolt : event::kNoBolt);
  if (place == nullptr) return work;
  work.place = place;
  work.frame = frame_at(*place, point_of(bench, hand_id));
  work.frame = glm::rotate(work.frame, static_cast<float>(hand.tilt_x_rad), glm::vec3(1.0F, 0.0F, 0.0F));
  work.frame = glm::rotate(work.frame, static_cast<float>(hand.tilt_y_rad), glm::vec3(0.0F, 1.0F, 0.0F));
  work.off_m = hand.near ? kNear_m : 0.0F;
  work.at_work = !hand.near;
  return work;
}

}  // namespace proofstand::scene
