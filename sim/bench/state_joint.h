// The joint's state: what is in each hole, how tight, and how the rotor lies on the hub.
#pragma once

#include <cstdint>

#include "sim/event/ids.h"

namespace proofstand::bench {

using event::BoltId;
using event::ThingId;

/// A bolt as a part, wherever it is; one per BoltPart.
struct BoltState {
  double recess_wear_m = 0.0;
  double recess_debris_m = 0.0;
  std::int64_t slips = 0;
  std::int64_t patch_uses = 0;
  double stretch_m = 0.0;     ///< permanent
  double grease_kg_m2 = 0.0;  ///< on its thread
  double oil_kg_m2 = 0.0;
  double locker_m3 = 0.0;        ///< liquid on its thread
  std::int64_t locker_tick = 0;  ///< when it was put on
  double alcohol_kg_m2 = 0.0;    ///< on its thread, at alcohol_tick; dries in closed form
  std::int64_t alcohol_tick = 0;
  double head_film_kg_m2 = 0.0;
  std::int64_t pulls = 0;   ///< tool visits, counts its friction draws
  std::int64_t starts = 0;  ///< times it was brought to a hole, counts the draws of its thread's start
  bool broken = false;

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("recess_wear", s.recess_wear_m);
    v("recess_debris", s.recess_debris_m);
    v("slips", s.slips);
    v("patch_uses", s.patch_uses);
    v("stretch", s.stretch_m);
    v("grease", s.grease_kg_m2);
    v("oil", s.oil_kg_m2);
    v("locker", s.locker_m3);
    v("locker_tick", s.locker_tick);
    v("alcohol", s.alcohol_kg_m2);
    v("alcohol_tick", s.alcohol_tick);
    v("head_film", s.head_film_kg_m2);
    v("pulls", s.pulls);
    v("starts", s.starts);
    v("broken", s.broken);
  }
};

/// A hole with its boss, and the bolt in it; one per position.
struct HoleState {
  ThingId bolt = event::kNoThing;
  bool started = false;  ///< has the thread caught?
  bool crossed = false;
  bool turned_back = false;          ///< found its start by turning back
  bool start_told = false;           ///< the event of its start has been made
  bool caught_crossed_deep = false;  ///< crossed and driven on for more than a turn
  double start_torque_nm = 0.0;      ///< largest torque by the first half turn
  double tilt_rad = 0.0;
  double turns_1 = 0.0;  ///< turned in since the thread caught
  double phase_1 = 0.0;  ///< 0..1 from the bolt's thread start on to the hole's, before it caught; turning in counts up
  double phase_from_1 = 0.0;  ///< where turning in began
  double preload_n = 0.0;
  double peak_n = 0.0;        ///< largest preload since it was started: its faces are flattened so far
  double torque_nm = 0.0;     ///< held by friction after the last pull
  double embed_m = 0.0;       ///< settled away at this bolt so far
  double snug_turns_1 = 0.0;  ///< turns at which the head bore
  bool snug = false;
  bool stripped = false;
  double strip_1 = 1.0;        ///< thread strength left, of a sound thread
  double old_locker_nm = 0.0;  ///< drag of old locker in the hole
  double locker_m3 = 0.0;      ///< liquid in the hole, before a bolt takes it up
  std::int64_t locker_tick = 0;
  double set_locker_1 = 0.0;  ///< strength of a cured film between bolt and hole
  double grease_kg_m2 = 0.0;
  double oil_kg_m2 = 0.0;
  double alcohol_kg_m2 = 0.0;  ///< in its thread, at alcohol_tick
  std::int64_t alcohol_tick = 0;
  double dirt_m = 0.0;      ///< on the boss
  double gap_m = 0.0;       ///< between rotor and boss
  double closed_m = 0.0;    ///< closed by tightening so far
  bool cracked = false;     ///< moved since the start
  std::int64_t rounds = 0;  ///< tightening visits since it was started

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("bolt", s.bolt);
    v("started", s.started);
    v("crossed", s.crossed);
    v("turned_back", s.turned_back);
    v("start_told", s.start_told);
    v("caught_crossed_deep", s.caught_crossed_deep);
    v("start_torque", s.start_torque_nm);
    v("tilt", s.tilt_rad);
    v("turns", s.turns_1);
    v("phase", s.phase_1);
    v("phase_from", s.phase_from_1);
    v("preload", s.preload_n);
    v("peak", s.peak_n);
    v("torque", s.torque_nm);
    v("embed", s.embed_m);
    v("snug_turns", s.snug_turns_1);
    v("snug", s.snug);
    v("stripped", s.stripped);
    v("strip", s.strip_1);
    v("old_locker", s.old_locker_nm);
    v("locker", s.locker_m3);
    v("locker_tick", s.locker_tick);
    v("set_locker", s.set_locker_1);
    v("grease", s.grease_kg_m2);
    v("oil", s.oil_kg_m2);
    v("alcohol", s.alcohol_kg_m2);
    v("alcohol_tick", s.alcohol_tick);
    v("dirt", s.dirt_m);
    v("gap", s.gap_m);
    v("closed", s.closed_m);
    v("cracked", s.cracked);
    v("rounds", s.rounds);
  }
};

/// The visit of a tool (or of fingers) to a fastener: from seated to off it gathers what its one event will say.
struct VisitState {
  bool open = false;
  BoltId bolt = event::kNoBolt;
  double depth_m = 0.0;        ///< engaged depth now
  double worst_depth_m = 0.0;  ///< least depth while pulled
  double press_n = 0.0;        ///< along the axis now
  double torque_nm = 0.0;      ///< on the fastener now, positive in
  bool sliding = false;        ///< the fastener moved in the last tick that it was pulled
  double friction_z_1 = 0.0;   ///< friction of this visit, in standard deviations
  double rep_z_1 = 0.0;        ///< repeatability of the torque tool in this pull
  double turned_in_rad = 0.0;
  double turned_out_rad = 0.0;
  double peak_in_nm = 0.0;
  double peak_out_nm = 0.0;
  std::int64_t clicks = 0;
  double clicked_at_nm = 0.0;
  double free_rad = 0.0;  ///< free travel left after a click
  double over_pull_rad = 0.0;
  double peak_after_nm = 0.0;  ///< largest torque after the first click
  bool let_go = false;         ///< the click mechanism has let go and not yet latched again
  bool was_snug = false;       ///< before this visit
  bool snugged_now = false;    ///< its head came to bear firmly in this visit
  bool rotor_held = false;     ///< the other hand held the rotor against the bolts at that moment
  std::int64_t others_snug = 0;
  double preload_before_n = 0.0;
  bool cracked_now = false;
  bool dropped = false;      ///< turning back, it dropped into its start
  bool near_limit = false;   ///< pulled close to what the recess bears
  double speed_rad_s = 0.0;  ///< of the hand's cord over the last quarter second of pulling, up to the first click
  double hand_rad = 0.0;     ///< how far the hand has turned in this visit, in positive

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("open", s.open);
    v("bolt", s.bolt);
    v("depth", s.depth_m);
    v("worst_depth", s.worst_depth_m);
    v("press", s.press_n);
    v("torque", s.torque_nm);
    v("sliding", s.sliding);
    v("friction_z", s.friction_z_1);
    v("rep_z", s.rep_z_1);
    v("turned_in", s.turned_in_rad);
    v("turned_out", s.turned_out_rad);
    v("peak_in", s.peak_in_nm);
    v("peak_out", s.peak_out_nm);
    v("clicks", s.clicks);
    v("clicked_at", s.clicked_at_nm);
    v("free", s.free_rad);
    v("over_pull", s.over_pull_rad);
    v("peak_after", s.peak_after_nm);
    v("let_go", s.let_go);
    v("was_snug", s.was_snug);
    v("snugged_now", s.snugged_now);
    v("rotor_held", s.rotor_held);
    v("others_snug", s.others_snug);
    v("preload_before", s.preload_before_n);
    v("cracked_now", s.cracked_now);
    v("dropped", s.dropped);
    v("near_limit", s.near_limit);
    v("speed", s.speed_rad_s);
    v("hand", s.hand_rad);
  }
};

/// The rotor on its seat, whichever it is.
struct SeatState {
  ThingId rotor = event::kNoThing;
  bool printed_out = true;
  double angle_rad = 0.0;  ///< within the play: 0 lies fully against the bolts in the sense of braking drag
  double play_rad = 0.0;   ///< all of it
  double cocked_m = 0.0;   ///< gap on the far side while it hangs loose on its register
  double cocked_phase_rad = 0.0;
  double frozen_m = 0.0;          ///< what of that gap the first hard pull locked in
  std::int64_t eased_count = 0;   ///< times it went back into its play: counts draws
  std::int64_t fitted_count = 0;  ///< rotors put on so far: counts draws
  bool turn_open = false;         ///< a hand turns it within its play
  double turn_from_rad = 0.0;

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("rotor", s.rotor);
    v("printed_out", s.printed_out);
    v("angle", s.angle_rad);
    v("play", s.play_rad);
    v("cocked", s.cocked_m);
    v("cocked_phase", s.cocked_phase_rad);
    v("frozen", s.frozen_m);
    v("eased_count", s.eased_count);
    v("fitted_count", s.fitted_count);
    v("turn_open", s.turn_open);
    v("turn_from", s.turn_from_rad);
  }
};

/// A torque tool's state; one per ToolPart.
struct ToolState {
  double setting_nm = 0.0;
  double set_before_nm = 0.0;  ///< when its collar was drawn back
  bool unlocked = false;
  double bias_1 = 0.0;  ///< relative, drawn once within its class
  double wear_m = 0.0;
  double last_click_nm = 0.0;  ///< setting at its last click on the joint
  std::int64_t pulls = 0;      ///< clicks made ready so far: counts the draws of its repeatability

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("setting", s.setting_nm);
    v("set_before", s.set_before_nm);
    v("unlocked", s.unlocked);
    v("bias", s.bias_1);
    v("wear", s.wear_m);
    v("last_click", s.last_click_nm);
    v("pulls", s.pulls);
  }
};

}  // namespace proofstand::bench
