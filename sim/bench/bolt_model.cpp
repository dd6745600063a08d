#include "sim/bench/bolt_model.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/base/random.h"
#include "sim/bench/fluid.h"
#include "sim/physics/bolt_curve.h"
#include "sim/physics/friction_condition.h"
#include "sim/physics/prevailing.h"
#include "sim/physics/seating.h"
#include "sim/physics/thread_shear.h"
#include "sim/physics/thread_start.h"

namespace proofstand::bench {
namespace {

constexpr double kCarrier_m = 0.0018;
constexpr double kLooseDrag_nm = physics::kFreeThread_nm;  // clean thread, nothing else

constexpr double kHole_m = 0.0052;
constexpr double kLockerGap_m = 0.0001;
constexpr double kOldFilm_1 = 0.5;      // cured film from which a bolt counts as set
constexpr double kCrossedOut_1 = 0.8;   // the way back has been cut already
constexpr double kShortPatch_1 = 0.75;  // a bolt this short carries so much of the patch of a longer one
constexpr double kChamfer_m = 0.00025;

physics::ThreadCondition condition_of(const ThreadFilm& film, const BoltPart& part, const HoleState& hole) {
  if (film.greasy) return physics::ThreadCondition::Greased;
  if (film.oily) return physics::ThreadCondition::Oiled;
  if (film.locker_m3 > 0.0) {
    return film.locker_set_1 < kOldFilm_1 ? physics::ThreadCondition::LockerWet : physics::ThreadCondition::LockerSet;
  }
  if (hole.set_locker_1 >= kOldFilm_1) return physics::ThreadCondition::LockerSet;
  if (film.alcohol_wet) return physics::ThreadCondition::AlcoholWet;
  return part.patch ? physics::ThreadCondition::Patch : physics::ThreadCondition::AsReceived;
}

// travel that flattening fresh faces has taken up to a preload
double flattened_m(double preload_n) {
  return physics::kSettleAdvance_m * preload_n / (preload_n + physics::kSettleHalf_n);
}

// what first loading goes along, in the physics floor's terms
physics::BoltCurve curve_of(const BoltModel& model, const HoleState& hole) {
  physics::BoltCurve curve;
  curve.pitch_m = model.pitch_m;
  curve.compliance_m_n = 1.0 / model.bolt_n_per_m;
  curve.gap_m = hole.gap_m;
  curve.gap_stiffness_n_m = model.seat_n_per_m;
  return curve;
}

}  // namespace

physics::BoltClass class_of(BoltGrade grade) {
  switch (grade) {
    case BoltGrade::Steel8_8:
      return physics::BoltClass::Steel8_8;
    case BoltGrade::Steel10_9:
      return physics::BoltClass::Steel10_9;
    case BoltGrade::Steel12_9:
      return physics::BoltClass::Steel12_9;
    case BoltGrade::StainlessA2_70:
      return physics::BoltClass::StainlessA2_70;
  }
  return physics::BoltClass::Steel8_8;
}

const BoltPart& bolt_part(const World& world, BoltId bolt) {
  return world.setup.bolts[world.thing(hole_of(world, bolt).bolt).part];
}

BoltState& bolt_state(const World& world, BoltId bolt) {
  return world.state.bolts[world.thing(hole_of(world, bolt).bolt).part];
}

double carrier_m(const World& world) { return world.state.seat.rotor == event::kNoThing ? 0.0 : kCarrier_m; }

double engaged_thread_m(const World& world, BoltId bolt) {
  const HoleState& hole = hole_of(world, bolt);
  const HubPart& hub = world.setup.hub;
  const double in_m = base::clamp_1(hole.turns_1 * hub.thread_pitch_m, 0.0, hub.thread_depth_m);
  return std::max(0.0, in_m - kChamfer_m);  // half of the entry's chamfer holds nothing
}

BoltModel bolt_model(const World& world, BoltId bolt, double friction_z_1) {
  const HoleState& hole = hole_of(world, bolt);
  const BoltPart& part = bolt_part(world, bolt);
  const BoltState& state = bolt_state(world, bolt);
  const HubPart& hub = world.setup.hub;
  const ThreadFilm film = thread_film(world, bolt);
  const physics::ThreadGeometry thread = physics::compute_thread(hub.thread_diameter_m, hub.thread_pitch_m);
  const physics::BoltMaterial& material = physics::bolt_material(class_of(part.grade));
  const physics::BoltFriction friction = physics::sample_friction(condition_of(film, part, hole), friction_z_1);
  const double bearing_m = physics::bearing_diameter_m(part.head_diameter_m, kHole_m);
  const physics::TorqueLevers levers = physics::torque_levers(thread, bearing_m, friction);

  BoltModel model;
  model.pitch_m = hub.thread_pitch_m;
  model.in_nm_per_n = levers.tighten_m();
  model.out_nm_per_n = levers.loosen_m();
  model.rest_gain_1 = physics::kBreakaway_1;
  model.bolt_n_per_m = 1.0 / physics::kJointCompliance_m_n;
  model.seat_n_per_m = physics::kSeatStiffness_n_m;
  model.yield_n = physics::yield_preload_n(material.yield_pa, thread, levers);
  model.most_n = std::max(model.yield_n, physics::break_preload_n(material.tensile_pa, thread));
  model.break_stretch_m = material.elongation_1 * physics::free_length_m(kCarrier_m, thread.pitch_m);
  model.bears_turns_1 = (part.length_m - carrier_m(world)) / hub.thread_pitch_m;
  model.bottom_turns_1 = hub.thread_depth_m / hub.thread_pitch_m;
  const double engaged_m = engaged_thread_m(world, bolt);
  const physics::ThreadLimits limits = physics::thread_limits(hub.thread_diameter_m, hub.thread_pitch_m);
  model.strip_n = physics::strip_load_n(physics::thread_shear_strength_pa(physics::kHubTensile_pa),
                                        physics::internal_shear_area_m2(limits, hub.thread_pitch_m, engaged_m)) *
                  hole.strip_1;
  const double cured_1 = std::max(
      hole.set_locker_1, film.locker_set_1 * physics::locker_wetted_1(film.locker_m3, thread, engaged_m, kLockerGap_m));
  model.lock_nm = physics::locker_breakloose_nm(thread, engaged_m, cured_1);
  const double wet_nm =
      physics::wet_locker_drag_nm(physics::locker_wetted_1(film.locker_m3, thread, engaged_m, kLockerGap_m));
  model.drag_nm = kLooseDrag_nm + hole.old_locker_nm + wet_nm;
  if (part.patch) {
    const int uses = static_cast<int>(state.patch_uses);
    model.patch_in_nm = kShortPatch_1 * physics::patch_drag_nm(physics::kPatchIn_nm, uses);
    model.patch_out_nm = kShortPatch_1 * physics::patch_drag_nm(physics::kPatchOut_nm, uses);
  }
  return model;
}

double drag_in_nm(const BoltModel& model, const HoleState& hole, double turns_1) {
  const double share = base::clamp_1(turns_1 / model.bears_turns_1, 0.0, 1.0);
  double drag = kLooseDrag_nm + (model.drag_nm - kLooseDrag_nm) * share;
  drag += physics::patch_drag_at_nm(model.patch_in_nm, turns_1);
  if (hole.crossed) drag += physics::crossed_torque_nm(turns_1);
  return drag;
}

double drag_out_nm(const BoltModel& model, const HoleState& hole, double turns_1) {
  const double share = base::clamp_1(turns_1 / model.bears_turns_1, 0.0, 1.0);
  double drag = kLooseDrag_nm + (model.drag_nm - kLooseDrag_nm) * share;
  drag += physics::patch_drag_at_nm(model.patch_out_nm, turns_1);
  if (hole.crossed) drag += kCrossedOut_1 * physics::crossed_torque_nm(turns_1);
  return drag;
}

double preload_at_n(const BoltModel& model, const HoleState& hole, double turns_1) {
  const double pressed_m = (turns_1 - hole.snug_turns_1) * model.pitch_m;
  if (pressed_m <= 0.0) return 0.0;
  const physics::BoltCurve curve = curve_of(model, hole);
  if (pressed_m >= physics::advance_for_preload_m(curve, hole.peak_n)) {
    return physics::preload_for_advance_n(curve, pressed_m);
  }
  // below the largest pull so far the faces stay as flat as it left them: bolt and seat alone give way
  const double sprung_m = pressed_m - flattened_m(hole.peak_n);
  if (sprung_m <= 0.0) return 0.0;
  const double gap_n = model.seat_n_per_m * hole.gap_m;
  const double soft = model.bolt_n_per_m * model.seat_n_per_m / (model.bolt_n_per_m + model.seat_n_per_m);
  const double closing_m = gap_n / soft;
  if (sprung_m <= closing_m) return sprung_m * soft;
  return gap_n + (sprung_m - closing_m) * model.bolt_n_per_m;
}

double turns_at_1(const BoltModel& model, const HoleState& hole, double preload_n) {
  const double force_n = std::max(0.0, preload_n);
  const double gap_n = model.seat_n_per_m * hole.gap_m;
  const double closed_m = std::min(force_n, gap_n) / model.seat_n_per_m;
  const double pressed_m = force_n / model.bolt_n_per_m + closed_m + flattened_m(std::max(force_n, hole.peak_n));
  return hole.snug_turns_1 + pressed_m / model.pitch_m;
}

double draw_friction_z_1(const World& world, BoltId bolt) {
  const BoltState& state = bolt_state(world, bolt);
  const std::uint64_t part = world.thing(hole_of(world, bolt).bolt).part;
  const double own = base::draw_normal({world.setup.seed, "friction of a bolt", part, 0});
  const double now =
      base::draw_normal({world.setup.seed, "friction of a pull", part, static_cast<std::uint64_t>(state.pulls)});
  return base::clamp_1(0.8 * own + 0.2 * now + bolt_part(world, bolt).friction_z_1, -2.5, 2.5);
}

}  // namespace proofstand::bench
