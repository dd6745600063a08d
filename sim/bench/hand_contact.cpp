#include "sim/bench/hand_contact.h"

#include "sim/base/math.h"

namespace proofstand::bench {
namespace {

constexpr double kKeyArm_n = 100.0;         // palm on the arm of a key
constexpr double kStraightHandle_nm = 4.5;  // straight driver handle, median adult
constexpr double kCrossHandle_nm = 10.0;
constexpr double kBoltFingers_nm = 0.22;  // two fingers on a 9 mm head
constexpr double kKeyShaft_nm = 0.11;
constexpr double kDriverShaft_nm = 0.9;
constexpr double kTyreFingers_n = 20.0;

double turns_per_s(double rate) { return rate * base::kTwoPi; }

const ToolPart& tool_held(const World& world, const HandState& hand) {
  return world.setup.tools[world.thing(hand.holding).part];
}

HandHold twirl(Contact contact, double full_nm, double rate_turns_s) {
  HandHold hold;
  hold.contact = contact;
  hold.turns = true;
  hold.twirls = true;
  hold.full_nm = full_nm;
  hold.rate_rad_s = turns_per_s(rate_turns_s);
  return hold;
}

HandHold pull(Contact contact, double full_nm, double reach_deg) {
  HandHold hold;
  hold.contact = contact;
  hold.turns = true;
  hold.presses = true;
  hold.full_nm = full_nm;
  hold.reach_rad = base::radians(reach_deg);
  return hold;
}

HandHold plain(Contact contact, bool presses) {
  HandHold hold;
  hold.contact = contact;
  hold.presses = presses;
  return hold;
}

HandHold tool_hold(const World& world, const HandState& hand, ThingKind kind) {
  if (hand.grip == Grip::Setting && kind == ThingKind::ClickDriver) {
    HandHold hold = twirl(Contact::Setting, kBoltFingers_nm, 0.7);
    hold.presses = true;
    return hold;
  }
  if (hand.at_place != PlaceKind::BoltRecess) return plain(Contact::Rest, false);
  if (hand.grip == Grip::End) return plain(Contact::PalmOnEnd, true);
  if (hand.grip == Grip::Shaft) {
    HandHold hold = kind == ThingKind::LKey ? twirl(Contact::KeyShaft, kKeyShaft_nm, 0.4)
                                            : twirl(Contact::DriverShaft, kDriverShaft_nm, 1.5);
    hold.presses = true;
    return hold;
  }
  if (kind == ThingKind::ClickDriver) return pull(Contact::CrossHandle, kCrossHandle_nm, 90.0);
  if (kind == ThingKind::Driver) return pull(Contact::DriverHandle, kStraightHandle_nm, 110.0);
  const ToolPart& key = tool_held(world, hand);
  return pull(Contact::KeyHandle, kKeyArm_n * (hand.turned_over ? key.short_arm_m : key.arm_m), 75.0);
}

HandHold touch_hold(const World& world, const HandState& hand) {
  const double wheel_m = world.setup.rider.wheel_radius_m;
  switch (hand.at_place) {
    case PlaceKind::BoltHead:
    case PlaceKind::BoltRecess:
      return twirl(Contact::BoltFingers, kBoltFingers_nm, 0.7);
    case PlaceKind::Tyre:
    case PlaceKind::Rim: {
      if (hand.grip == Grip::Fingers) {
        HandHold hold = twirl(Contact::TyreFingers, kTyreFingers_n * wheel_m, 0.25);
        hold.grip_nm = kTyreFingers_n * wheel_m;
        return hold;
      }
      HandHold hold = pull(Contact::TyreHand, kTyreHand_n * wheel_m, 60.0);
      hold.presses = false;
      hold.grip_nm = kTyreHand_n * wheel_m;
      return hold;
    }
    case PlaceKind::Arms:
    case PlaceKind::Edge:
    case PlaceKind::InnerEdge:
    case PlaceKind::TrackOuter:
    case PlaceKind::TrackInner: {
      const double torque_nm = kRotorFingers_n * rotor_grip_radius_m(world, hand);
      HandHold hold = pull(Contact::RotorHold, torque_nm, 20.0);
      hold.presses = false;
      hold.grip_nm = torque_nm;
      return hold;
    }
    default:
      return plain(Contact::Rest, false);
  }
}

HandHold weakened(HandHold hold, double strength) {
  hold.full_nm *= strength;
  hold.grip_nm *= strength;
  return hold;
}

HandHold hold_of_median(const World& world, const HandState& hand) {
  if (hand.near) return plain(Contact::Rest, false);
  if (hand.holding == event::kNoThing) {
    return hand.stage == HandStage::At ? touch_hold(world, hand) : HandHold{};
  }
  const ThingKind kind = world.kind(hand.holding);
  switch (kind) {
    case ThingKind::LKey:
    case ThingKind::Driver:
    case ThingKind::ClickDriver:
      return tool_hold(world, hand, kind);
    case ThingKind::Bolt:
      return hand.at_place == PlaceKind::Hole ? twirl(Contact::BoltFingers, kBoltFingers_nm, 0.7)
                                              : plain(Contact::Rest, false);
    case ThingKind::Rag:
    case ThingKind::Pick:
      return plain(Contact::Face, false);
    case ThingKind::Micrometer:
    case ThingKind::Vernier: {
      HandHold hold = twirl(Contact::Instrument, kBoltFingers_nm, 0.7);
      hold.presses = true;
      return hold;
    }
    case ThingKind::DialGauge:
      return plain(Contact::Instrument, true);
    case ThingKind::Lamp:
      return plain(Contact::Instrument, false);
    default:
      return plain(Contact::Rest, false);
  }
}

}  // namespace

double strength_1(const BenchSetup& setup) {
  // share of the median at a percentile: 5 % have 0.55 of it, 95 % 1.67
  const double p = base::clamp_1(setup.strength_percentile_1, 0.05, 0.95);
  return p < 0.5 ? 0.55 + (p - 0.05) * (0.45 / 0.45) : 1.0 + (p - 0.5) * (0.67 / 0.45);
}

HandHold hold_of(const World& world, const HandState& hand) {
  return weakened(hold_of_median(world, hand), strength_1(world.setup));
}

double rotor_grip_radius_m(const World& world, const HandState& hand) {
  ThingId rotor = hand.at_thing;
  if (rotor == event::kNoThing || world.kind(rotor) != ThingKind::Rotor) rotor = world.state.seat.rotor;
  const double rim_m = rotor == event::kNoThing ? 0.080 : world.setup.rotors[world.thing(rotor).part].diameter_m / 2.0;
  switch (hand.at_place) {
    case PlaceKind::Arms:
      return base::clamp_1(hand.u_1, 0.028, rim_m - 0.015) == hand.u_1 ? hand.u_1 : rim_m - 0.030;
    case PlaceKind::InnerEdge:
      return rim_m - 0.015;
    case PlaceKind::TrackOuter:
    case PlaceKind::TrackInner:
      return rim_m - 0.0075;
    default:
      return rim_m;
  }
}

Grip natural_grip(ThingKind kind) {
  switch (kind) {
    case ThingKind::LKey:
    case ThingKind::Driver:
    case ThingKind::ClickDriver:
      return Grip::Handle;
    case ThingKind::Micrometer:
      return Grip::Ratchet;
    case ThingKind::Rag:
      return Grip::Flat;
    case ThingKind::Rotor:
      return Grip::Edge;
    case ThingKind::Wheel:
      return Grip::Both;
    default:
      return Grip::Fingers;
  }
}

Grip natural_touch(PlaceKind place) {
  switch (place) {
    case PlaceKind::Tyre:
    case PlaceKind::Rim:
      return Grip::Tyre;
    case PlaceKind::Arms:
      return Grip::Arms;
    case PlaceKind::Edge:
      return Grip::Edge;
    case PlaceKind::InnerEdge:
      return Grip::InnerEdge;
    case PlaceKind::TrackOuter:
    case PlaceKind::TrackInner:
      return Grip::Track;
    default:
      return Grip::Fingers;
  }
}

bool grip_fits(ThingKind kind, Grip grip) {
  switch (kind) {
    case ThingKind::LKey:
    case ThingKind::Driver:
      return grip == Grip::Handle || grip == Grip::Shaft || grip == Grip::End;
    case ThingKind::ClickDriver:
      return grip == Grip::Handle || grip == Grip::Shaft || grip == Grip::End || grip == Grip::Setting;
    case ThingKind::Micrometer:
      return grip == Grip::Thimble || grip == Grip::Ratchet || grip == Grip::Fingers;
    case ThingKind::Rag:
      return grip == Grip::Flat || grip == Grip::Pinched;
    case ThingKind::Rotor:
      return grip == Grip::Arms || grip == Grip::Edge || grip == Grip::Track || grip == Grip::InnerEdge;
    case ThingKind::Wheel:
      return grip == Grip::Both;
    case ThingKind::WheelStand:
    case ThingKind::Bike:
    case ThingKind::Bench:
    case ThingKind::Tray:
    case ThingKind::Card:
    case ThingKind::Sheet:
    case ThingKind::Gloves:
      return false;
    default:
      return grip == Grip::Fingers || grip == Grip::Handle;
  }
}

double reaction_held_nm(const World& world, HandId other) {
  const HandState& hand = world.hand(other);
  if (hand.stage != HandStage::At || hand.near || hand.holding != event::kNoThing) return 0.0;
  const bool on_wheel = hand.at_thing != event::kNoThing &&
                        (world.kind(hand.at_thing) == ThingKind::Wheel || hand.at_thing == world.state.seat.rotor);
  return on_wheel ? hold_of(world, hand).grip_nm : 0.0;
}

}  // namespace proofstand::bench
