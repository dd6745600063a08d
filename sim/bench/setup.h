// What a bench starts from: every part, tool and fluid of one drawn variant, and the figures of its maker's sheet that
// the bench needs. Plain data, made by the scenario reader or by a test; the bench never changes it.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "sim/event/ids.h"
#include "sim/event/job_events.h"

namespace proofstand::bench {

using event::BoltId;
using event::CardEntryId;
using event::HandId;
using event::ThingId;

/// What a thing of the workplace is; decides its places, grips and behaviour.
enum class ThingKind : std::uint8_t {
  Wheel,
  Rotor,
  Bolt,
  LKey,         ///< hexalobular or hexagon L-key: two arms
  Driver,       ///< straight handle with a bit
  ClickDriver,  ///< cross handle with a click mechanism and a scale
  Micrometer,
  Vernier,
  DialGauge,
  Pick,
  Lamp,
  Bottle,
  Rag,
  Gloves,
  WheelStand,
  Bike,
  Bench,
  Tray,
  Card,
  Sheet,
};

/// One thing; `part` indexes the list of its kind below (rotors, bolts, tools, instruments, bottles, rags), 0 for
/// others.
struct Thing {
  std::string name;  ///< as scripts, lists and texts call it: "key", "new rotor", "old bolt 3"
  ThingKind kind = ThingKind::Bench;
  std::size_t part = 0;
};

/// Bolt material class; figures in sim/physics/bolt_strength.h.
enum class BoltGrade : std::uint8_t { Steel8_8, Steel10_9, Steel12_9, StainlessA2_70 };
/// What the drive of a bolt or tool looks like.
enum class DriveKind : std::uint8_t { Hexalobular25, Hexalobular20, Hexagon3_0, Hexagon3_2, FlatBlade };

struct BoltPart {
  double length_m = 0.010;  ///< under the head
  BoltGrade grade = BoltGrade::Steel8_8;
  double head_diameter_m = 0.009;
  double head_height_m = 0.0025;
  bool patch = false;            ///< came with a locking patch
  int patch_uses = 0;            ///< times it has been screwed in before
  double recess_wear_m = 0.0;    ///< radial wear of its recess at the start
  double recess_debris_m = 0.0;  ///< packed dirt, height
  double grease_kg_m2 = 0.0;     ///< on its thread at the start
  double oil_kg_m2 = 0.0;
  double friction_z_1 = 0.0;  ///< offset of its friction draw in standard deviations, for variants at the extremes
};

/// A bend of a rotor: a hump of the whole-job bending law at an angle.
struct RotorBend {
  double angle_rad = 0.0;
  double set_m = 0.0;
};

/// Starting film on one braking face: an even load, and a patch.
struct StartFilm {
  double oil_kg_m2 = 0.0;
  double grease_kg_m2 = 0.0;
  double dust_kg_m2 = 0.0;
};

struct RotorPart {
  double diameter_m = 0.160;
  double thickness_new_m = 0.0018;
  double worn_m = 0.0;      ///< thickness lost in the middle of the track, both faces together
  double stamp_m = 0.0015;  ///< least thickness stamped on it; 0: no stamp
  bool has_arrow = true;
  bool printed = true;
  bool resin_only = false;
  int arms = 6;
  int holes = 6;
  double hole_circle_m = 0.044;
  double hole_diameter_m = 0.0052;
  double bore_m = 0.035;
  bool cracked = false;
  std::vector<RotorBend> bends;
  StartFilm film_outer;
  StartFilm film_inner;
};

/// One boss of the hub's seat with its threaded hole.
struct BossPart {
  double dirt_m = 0.0;             ///< grit, paint or burr; wiped or picked off
  bool dirt_loose = true;          ///< comes off with a wipe; a burr or paint does not
  double old_locker_nm = 0.0;      ///< drag of old locker left in the thread
  double thread_strength_1 = 1.0;  ///< of a sound thread
  double grease_kg_m2 = 0.0;       ///< in the thread
};

struct HubPart {
  double hole_circle_m = 0.044;
  double thread_diameter_m = 0.005;
  double thread_pitch_m = 0.0008;
  double thread_depth_m = 0.010;
  double hole_depth_m = 0.012;  ///< blind
  double register_m = 0.0348;
  double flange_runout_m = 0.0;
  double flange_phase_rad = 0.0;
  std::vector<BossPart> bosses;  ///< one per position: their number is the number of fasteners
};

/// Keys and drivers.
struct ToolPart {
  DriveKind drive = DriveKind::Hexalobular25;
  double arm_m = 0.100;  ///< long arm of a key, half the cross handle of a driver
  double short_arm_m = 0.024;
  double scale_lo_nm = 0.0;  ///< range of a click driver; 0 for others
  double scale_hi_nm = 0.0;
  double scale_step_nm = 0.0;
  double class_1 = 0.06;          ///< permissible deviation, relative
  double start_setting_nm = 0.0;  ///< as the last job left it
  double bias_z_1 = 0.0;          ///< offset added to its drawn bias in standard deviations, kept within the class
  double wear_m = 0.0;            ///< of its tip
};

struct InstrumentPart {
  double resolution_m = 0.00001;
  double zero_error_m = 0.0;
  double range_m = 0.025;
  double face_m = 0.00635;  ///< width of what touches: anvil, jaw tips
};

enum class FluidKind : std::uint8_t { Alcohol, Locker, Grease, Oil };

struct BottlePart {
  FluidKind fluid = FluidKind::Alcohol;
  double drop_m3 = 20e-9;  ///< volume of a drop
};

struct RagPart {
  bool dirty = false;  ///< starts with a load on every fold
  int folds = 8;       ///< fresh folds it can be turned to
};

/// What a card entry asks for.
enum class CardKind : std::uint8_t { Length, Torque, Choice, Note };
/// What an entry is compared with when it is written.
enum class CardTruth : std::uint8_t {
  None,
  OldThickness,  ///< thinnest place of the rotor that was on the hub at the start
  NewThickness,  ///< thinnest place of the rotor on the hub now
  OldRunout,     ///< runout at the start
  NewRunout,     ///< runout now
  OldStamp,      ///< stamp of the rotor that was on the hub at the start
  TorqueUsed,    ///< setting of the torque tool that last clicked on the joint
  Decision,      ///< first card word: keep, second: replace, third: stop and report — by the bench's state
  LockerUsed,    ///< card words in the order none, patch, locker — by the bolts' state
};

struct CardEntryPart {
  std::string name;
  CardKind kind = CardKind::Note;
  CardTruth truth = CardTruth::None;
  bool needed = true;
  std::vector<std::size_t> words;  ///< of a choice: indices into card_words, in the order its truth counts them
};

struct BrakePart {
  double pad_friction_new_1 = 0.25;  ///< before bedding in
  double pad_friction_bedded_1 = 0.45;
  double pad_gap_in_m = 0.0003;  ///< between rotor and pads when the rotor sits where the caliper was set for
  double pad_gap_out_m = 0.0003;
  double rotor_diameter_m = 0.160;  ///< the caliper is set for
  double frame_limit_m = 0.180;     ///< largest rotor that frame or fork allows
  double seat_friction_1 = 0.15;    ///< rotor on hub
};

struct RiderPart {
  double mass_kg = 100.0;  ///< rider and bike
  double wheel_radius_m = 0.34;
  double deceleration_limit_m_s2 = 6.18;  ///< pitching over
};

/// Everything.
struct BenchSetup {
  std::uint64_t seed = 0;  ///< of the bench's own scatter
  std::vector<Thing> things;
  std::vector<RotorPart> rotors;
  std::vector<BoltPart> bolts;
  std::vector<ToolPart> tools;
  std::vector<InstrumentPart> instruments;
  std::vector<BottlePart> bottles;
  std::vector<RagPart> rags;
  HubPart hub;
  BrakePart brake;
  RiderPart rider;
  std::vector<CardEntryPart> card;
  std::vector<std::string> card_words;
  bool wheel_in_bike = false;  ///< else in the wheel stand
  ThingId fitted_rotor = event::kNoThing;
  std::vector<ThingId> fitted_bolts;    ///< per position; kNoThing for none
  double fitted_torque_nm = 5.0;        ///< with which they were tightened long ago
  double fitted_locker_1 = 0.5;         ///< strength of the old locker on them, of full cure
  double sheet_torque_nm = 5.0;         ///< what the joint's clamp is measured against at hand-over
  double strength_percentile_1 = 0.50;  ///< of the trainee's hands

  /// Fasteners of the joint.
  [[nodiscard]] std::size_t bolt_count() const { return hub.bosses.size(); }
};

/// The vocabulary's words for this setup.
event::JobItems job_items(const BenchSetup& setup);
/// First thing of a kind, or kNoThing.
ThingId first_of(const BenchSetup& setup, ThingKind kind);
/// Index of a rotor's thing among the rotors in play (the value of an event's rotor field).
std::size_t rotor_item(const BenchSetup& setup, ThingId thing);

}  // namespace proofstand::bench
