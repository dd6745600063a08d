#include "sim/bench/pick.h"

#include "sim/base/math.h"
#include "sim/bench/contact.h"
#include "sim/bench/draft.h"
#include "sim/bench/wiping.h"

namespace proofstand::bench {
namespace {

constexpr double kFullPress_n = 5.0;
constexpr double kScratchingPress_n = 0.5;
constexpr double kFirmPress_n = 3.0;
// a firm millimetre of stroke loosens so much packed dirt; a recess with half a millimetre takes some twenty strokes
constexpr double kDirtPerPath_1 = 0.02;
// a firm stroke of this length takes off all but a third of the old locker's drag
constexpr double kLockerPath_m = 0.030;
constexpr base::Tick kLookTicks = base::kTicksPerSecond;

bool hole_at(const World& world, const ContactState& contact) {
  return event::index_of(contact.bolt) < world.state.holes.size();
}

BoltState* bolt_under(const World& world, const ContactState& contact) {
  ThingId bolt = event::kNoThing;
  if (hole_at(world, contact)) bolt = world.state.holes[event::index_of(contact.bolt)].bolt;
  if (bolt == event::kNoThing && world.kind(contact.thing) == ThingKind::Bolt) bolt = contact.thing;
  return bolt == event::kNoThing ? nullptr : &world.state.bolts[world.thing(bolt).part];
}

void scrape(const World& world, ContactState& contact, double firm_path_m) {
  const double taken_m = kDirtPerPath_1 * firm_path_m;
  const auto less = [](double have, double taken) { return have > taken ? have - taken : 0.0; };
  if (contact.place == PlaceKind::BoltRecess) {
    BoltState* bolt = bolt_under(world, contact);
    if (bolt == nullptr || bolt->recess_debris_m <= 0.0) return;
    bolt->recess_debris_m = less(bolt->recess_debris_m, taken_m);
    contact.area_m2 = 1.0;  // it did take something off
  } else if (contact.place == PlaceKind::Hole && hole_at(world, contact)) {
    HoleState& hole = world.state.holes[event::index_of(contact.bolt)];
    if (hole.bolt != event::kNoThing || hole.old_locker_nm <= 0.0) return;
    hole.old_locker_nm /= 1.0 + firm_path_m / kLockerPath_m;
    contact.area_m2 = 1.0;
  } else if (contact.place == PlaceKind::Boss && hole_at(world, contact)) {
    // a pick takes off what sits fast too, given time
    HoleState& hole = world.state.holes[event::index_of(contact.bolt)];
    hole.dirt_m = less(hole.dirt_m, taken_m * 0.2);
  }
}

}  // namespace

void begin_look(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  contact = ContactState{};
  contact.open = true;
  contact.by_tool = true;
  contact.thing = hand.at_thing;
  contact.place = hand.at_place;
  contact.bolt = hand.at_bolt;
  contact.since = world.state.tick;
  hand.face_radius_m = hand.aim_radius_m = base::clamp_1(hand.u_1, 0.0, 1.0);
  hand.face_angle_rad = hand.aim_angle_rad = base::wrap_two_pi(hand.v_1);
  hand.face_press_n = hand.aim_press_n = 0.0;
}

void step_pick(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  if (!contact.open || !contact.by_tool) return;
  const double radius_before = hand.face_radius_m;
  const double angle_before = hand.face_angle_rad;
  step_face(hand, kFullPress_n);
  if (hand.face_press_n < kScratchingPress_n) return;
  const double dr = hand.face_radius_m - radius_before;
  const double arc = (hand.face_angle_rad - angle_before) * hand.face_radius_m;
  const double path_m = base::sqrt_1(dr * dr + arc * arc);
  if (path_m <= 0.0) return;
  contact.path_m += path_m;
  scrape(world, contact, path_m * base::clamp_1(hand.face_press_n / kFirmPress_n, 0.0, 1.5));
}

void end_look(const World& world, HandId hand_id) {
  ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  if (!contact.open || !contact.by_tool) return;
  contact.open = false;
  const bool numbered = hole_at(world, contact);
  if (contact.area_m2 > 0.0 && numbered && contact.place == PlaceKind::BoltRecess) {
    const BoltState* bolt = bolt_under(world, contact);
    const double left_m = bolt == nullptr ? 0.0 : bolt->recess_debris_m;
    world.emit("recess_cleaned",
               {{"hand", hand_value(hand_id)}, {"bolt", bolt_value(contact.bolt)}, {"debris", left_m}});
  }
  if (contact.area_m2 > 0.0 && numbered && contact.place == PlaceKind::Hole) {
    const double left_nm = world.state.holes[event::index_of(contact.bolt)].old_locker_nm;
    world.emit("thread_cleaned",
               {{"hand", hand_value(hand_id)}, {"bolt", bolt_value(contact.bolt)}, {"residue", left_nm}});
  }
  const base::Tick held = world.state.tick - contact.since;
  if (held < kLookTicks) return;
  const ThingId tool = world.hand(hand_id).holding;
  const bool lamp = tool != event::kNoThing && world.kind(tool) == ThingKind::Lamp;
  const bool rotor = world.kind(contact.thing) == ThingKind::Rotor;
  Draft looked(world, "inspected");
  looked.with("hand", hand_value(hand_id)).choose("with", lamp ? "lamp" : "pick");
  looked.with("part", part_value(world, contact.thing, contact.place));
  if (rotor) looked.with("rotor", static_cast<double>(rotor_item(world.setup, contact.thing)));
  looked.with_if(numbered, "bolt", bolt_value(contact.bolt)).with("thing", thing_value(contact.thing));
  looked.with("time", base::seconds(held)).emit();
}

}  // namespace proofstand::bench
