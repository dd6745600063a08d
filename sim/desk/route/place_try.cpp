// What a hand could try with what it holds, right or wrong alike, by what anyone can see.
#include "sim/bench/hand_check.h"
#include "sim/bench/hand_contact.h"
#include "sim/bench/hold_sight.h"
#include "sim/bench/senses.h"
#include "sim/desk/route/place_list.h"

namespace proofstand::desk::route {
namespace {

using bench::ThingKind;
using bench::Whereabouts;
using event::PlaceKind;

bool lies_down_at(PlaceKind place) { return place == PlaceKind::Tray || place == PlaceKind::BenchTop; }

bool tool_could(PlaceKind place) {
  return place == PlaceKind::BoltRecess || place == PlaceKind::Hole || lies_down_at(place);
}

bool held_could_try(ThingKind held, const scene::ScenePlace& place, ThingKind of) {
  switch (held) {
    case ThingKind::Wheel:
      return place.place == PlaceKind::StandSlot || place.place == PlaceKind::ForkEnds;
    case ThingKind::Rotor:
      return place.place == PlaceKind::HubSeat || lies_down_at(place.place);
    case ThingKind::Bolt:
      return place.place == PlaceKind::Hole || place.place == PlaceKind::Mouth || lies_down_at(place.place);
    case ThingKind::LKey:
    case ThingKind::Driver:
    case ThingKind::ClickDriver:
      return tool_could(place.place);
    case ThingKind::Micrometer:
    case ThingKind::Vernier:
    case ThingKind::DialGauge:
      return of == ThingKind::Rotor || place.place == PlaceKind::Tray;
    case ThingKind::Pick:
    case ThingKind::Lamp:
      return place.grip == event::Grip::None || of == ThingKind::Rotor;
    default:  // a rag goes over any surface, a bottle to any opening and onto anything
      return place.place != PlaceKind::GloveBox;
  }
}

}  // namespace

bool could_try(const scene::ScenePlace& place, const bench::Bench& bench, event::HandId hand) {
  if (event::index_of(place.thing) >= bench.setup().things.size()) return false;
  const bench::HoldSight hold = bench::see_hold(bench, hand);
  const event::HandId other = hand == event::HandId::Left ? event::HandId::Right : event::HandId::Left;
  const ThingKind of = bench.setup().things[event::index_of(place.thing)].kind;
  const bool in_other = bench::see_hold(bench, other).holding == place.thing;
  if (hold.holding == event::kNoThing) {
    // what the other hand holds is passed, not taken; a finger does not go into a drive recess
    return !in_other && place.place != PlaceKind::BoltRecess;
  }
  if (place.thing == hold.holding) {
    return place.grip != event::Grip::None && bench::grip_fits(of, place.grip);
  }
  if (in_other && place.grip != event::Grip::None && of != ThingKind::Rag && of != ThingKind::Rotor) return false;
  return held_could_try(bench.setup().things[event::index_of(hold.holding)].kind, place, of);
}

PlaceGroup group_of(const scene::ScenePlace& place, const bench::Bench& bench) {
  const bench::Thing& thing = bench.setup().things[event::index_of(place.thing)];
  switch (bench::see_where(bench, place.thing)) {
    case Whereabouts::LeftHand:
    case Whereabouts::RightHand:
      return PlaceGroup::Hands;
    case Whereabouts::OnHub:
    case Whereabouts::InHole:
    case Whereabouts::Standing:
      return PlaceGroup::Bike;
    case Whereabouts::Tray:
      return PlaceGroup::Tray;
    case Whereabouts::OnBench:
      return PlaceGroup::Bench;
    case Whereabouts::Fixed:
      break;
  }
  const bool bike =
      thing.kind == ThingKind::Wheel || thing.kind == ThingKind::Bike || thing.kind == ThingKind::WheelStand;
  if (bike) return PlaceGroup::Bike;
  return thing.kind == ThingKind::Tray ? PlaceGroup::Tray : PlaceGroup::Bench;
}

}  // namespace proofstand::desk::route
