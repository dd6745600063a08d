#include "sim/desk/route/sight.h"

#include <cmath>

#include "sim/bench/hold_sight.h"
#include "sim/bench/senses.h"
#include "sim/bench/surface.h"
#include "sim/hand/gesture_laws.h"
#include "sim/scene/place_point.h"

namespace proofstand::desk::route {
namespace {

using bench::Contact;
using event::PlaceKind;

constexpr double kRecessRadius_m = 0.00225;  // size 25 drive, from its middle to the lobes' ends
constexpr double kPatch_m = 0.030;           // what is wiped beside a place without a finer shape
constexpr double kArmsInner_m = 0.0275;
constexpr double kCarrierInner_m = 0.0175;

hand::Vec3 vec(const glm::vec3& v) {
  return {static_cast<double>(v.x), static_cast<double>(v.y), static_cast<double>(v.z)};
}

bool numbered(PlaceKind place) { return event::place_table()[static_cast<std::size_t>(place)].numbered; }

hand::Frame frame_of(const glm::mat4& m) {
  return {vec(glm::vec3(m[3])), hand::unit(vec(glm::vec3(m[0]))), hand::unit(vec(glm::vec3(m[1]))),
          hand::unit(vec(glm::vec3(m[2])))};
}

// the point of an axis nearest to a point
hand::Vec3 on_axis(const hand::Vec3& origin, const hand::Vec3& axis, const hand::Vec3& point) {
  return origin + axis * hand::dot(point - origin, axis);
}

const scene::ScenePlace* held_place(const scene::Scene& scene, event::ThingId held, event::Grip grip) {
  for (const scene::ScenePlace& place : scene.places) {
    if (place.thing == held && place.grip == grip) return &place;
  }
  return nullptr;
}

void add_extent(const bench::Bench& bench, const scene::ScenePlace& place, hand::Grasp& grasp) {
  grasp.polar = event::of_rotor(place.place);
  const bench::Thing& thing = bench.setup().things[event::index_of(place.thing)];
  if (!grasp.polar || thing.kind != bench::ThingKind::Rotor) {
    grasp.outer_m = kPatch_m;
    return;
  }
  const bench::RotorPart& part = bench.setup().rotors[thing.part];
  const bench::TrackGrid grid = bench::track_grid(part);
  const double rim_m = part.diameter_m / 2.0;
  switch (place.place) {
    case PlaceKind::Edge:
      grasp.inner_m = grasp.outer_m = rim_m;
      break;
    case PlaceKind::InnerEdge:
      grasp.inner_m = grasp.outer_m = grid.inner_m;
      break;
    case PlaceKind::Arms:
      grasp.inner_m = kArmsInner_m;
      grasp.outer_m = grid.inner_m;
      break;
    case PlaceKind::CarrierOuter:
    case PlaceKind::CarrierInner:
      grasp.inner_m = kCarrierInner_m;
      grasp.outer_m = kArmsInner_m;
      break;
    default:
      grasp.inner_m = grid.inner_m;
      grasp.outer_m = rim_m;
      break;
  }
}

std::optional<hand::Grasp> grasp_of(const scene::Scene& scene, const bench::Bench& bench, event::HandId hand_id) {
  const bench::HoldSight hold = bench::see_hold(bench, hand_id);
  const bool at = hold.stage == bench::HandStage::At;
  if (!at && hold.hold.contact != Contact::Setting) return std::nullopt;
  hand::Grasp grasp;
  const scene::ScenePlace* place = at ? scene::find_place(scene.places, hold.at_thing, hold.at_place,
                                                          numbered(hold.at_place) ? hold.at_bolt : event::kNoBolt)
                                      : nullptr;
  const scene::ScenePlace* own = hold.holding == event::kNoThing ? nullptr : held_place(scene, hold.holding, hold.grip);
  if (place != nullptr) {
    grasp.frame = frame_of(place->frame);
    grasp.axis = hand::unit(vec(place->axis));
    grasp.grip = on_axis(grasp.frame.origin, grasp.axis, vec(own != nullptr ? own->middle : place->middle));
    add_extent(bench, *place, grasp);
  }
  const bool of_tool = hold.hold.contact == Contact::Setting || hold.hold.contact == Contact::Instrument;
  if (of_tool && own != nullptr) {
    grasp.axis = hand::unit(vec(own->axis));
    grasp.grip = vec(own->middle);
  }
  // a rotor on the hub and the wheel turn about the wheel's axle, whichever side of them is held
  if (hold.hold.contact == Contact::RotorHold && hold.at_thing == bench::see_rotor_on_hub(bench)) {
    const scene::ScenePlace* tyre =
        scene::find_place(scene.places, bench::first_of(bench.setup(), bench::ThingKind::Wheel), PlaceKind::Tyre);
    if (tyre != nullptr) grasp.axis = hand::unit(vec(tyre->axis));
  }
  if (at && hold.at_place == PlaceKind::BoltRecess && hold.holding != event::kNoThing) {
    const scene::ScenePlace* end = held_place(scene, hold.holding, event::Grip::End);
    if (end != nullptr) grasp.tool_end = vec(end->middle);
  }
  if (place == nullptr && own == nullptr) return std::nullopt;
  return grasp;
}

hand::Pointed pointed(const scene::ScenePlace& place, const bench::Bench& bench, const scene::PlacePoint& point) {
  hand::Pointed out;
  out.thing = place.thing;
  out.place = place.place;
  out.bolt = place.bolt;
  out.grip = place.grip;
  out.u_um = hand::in_micro(point.u_1);
  out.v_urad = hand::in_micro(point.v_1);
  if (place.place != PlaceKind::BoltRecess && place.place != PlaceKind::Hole) return out;
  const scene::PlacePoint middle = scene::point_at(place, place.middle);
  out.off_x_m = point.u_1 - middle.u_1;
  out.off_y_m = point.v_1 - middle.v_1;
  out.radius_m = place.place == PlaceKind::Hole ? bench.setup().hub.thread_diameter_m / 2.0 : kRecessRadius_m;
  return out;
}

}  // namespace

hand::Lens lens_of(const scene::View& view, const Shape& shape) {
  hand::Lens lens;
  const glm::mat4 m = scene::view_matrix(view);
  lens.eye = vec(scene::eye_of(view));
  lens.right = hand::unit(vec({m[0][0], m[1][0], m[2][0]}));
  lens.up = hand::unit(vec({m[0][1], m[1][1], m[2][1]}));
  lens.forward = hand::unit(vec({-m[0][2], -m[1][2], -m[2][2]}));
  lens.focal_pt = shape.height_pt / 2.0 / std::tan(static_cast<double>(view.field_rad) / 2.0);
  lens.middle = {shape.width_pt / 2.0 * (1.0 + static_cast<double>(view.shift.x)),
                 shape.height_pt / 2.0 * (1.0 - static_cast<double>(view.shift.y))};
  return lens;
}

hand::Sight sight_of(const scene::Scene& scene, const bench::Bench& bench, const scene::View& view,
                     const Shape& shape) {
  hand::Sight sight;
  sight.lens = lens_of(view, shape);
  for (const event::HandId id : {event::HandId::Left, event::HandId::Right}) {
    sight.grasps[static_cast<std::size_t>(id)] = grasp_of(scene, bench, id);
  }
  return sight;
}

hand::Pointed pointed_at(const scene::ScenePlace& place, const bench::Bench& bench, const glm::vec3& world) {
  return pointed(place, bench, scene::point_at(place, world));
}

hand::Pointed pointed_middle(const scene::ScenePlace& place, const bench::Bench& bench) {
  return pointed(place, bench, scene::point_at(place, place.middle));
}

}  // namespace proofstand::desk::route
