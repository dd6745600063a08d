#include "sim/scenario/read_workplace.h"

#include "sim/base/words.h"

namespace proofstand::scenario {
namespace {

using base::Dimension;
using bench::ThingKind;

constexpr Span kShare{0.0, 1.0};
constexpr double kGravity_m_s2 = 9.80665;

constexpr WordFor<ThingKind> kToolKinds[] = {{"key", ThingKind::LKey},
                                             {"driver", ThingKind::Driver},
                                             {"click driver", ThingKind::ClickDriver},
                                             {"pick", ThingKind::Pick},
                                             {"lamp", ThingKind::Lamp}};
constexpr WordFor<bench::DriveKind> kDrives[] = {{"hexalobular 25", bench::DriveKind::Hexalobular25},
                                                 {"hexalobular 20", bench::DriveKind::Hexalobular20},
                                                 {"hexagon 3.0", bench::DriveKind::Hexagon3_0},
                                                 {"hexagon 3.2", bench::DriveKind::Hexagon3_2},
                                                 {"flat blade", bench::DriveKind::FlatBlade}};
constexpr WordFor<ThingKind> kInstrumentKinds[] = {
    {"micrometer", ThingKind::Micrometer}, {"vernier", ThingKind::Vernier}, {"dial gauge", ThingKind::DialGauge}};
constexpr WordFor<bench::FluidKind> kFluids[] = {{"alcohol", bench::FluidKind::Alcohol},
                                                 {"locker", bench::FluidKind::Locker},
                                                 {"grease", bench::FluidKind::Grease},
                                                 {"oil", bench::FluidKind::Oil}};
constexpr WordFor<bool> kWheelPlaces[] = {{"stand", false}, {"bike", true}};

/// Arms that are usual for a kind, so that authors need not say them.
void usual_arms(ThingKind kind, bench::ToolPart& part) {
  if (kind == ThingKind::Driver) part.arm_m = 0.019;
  if (kind == ThingKind::ClickDriver) part.arm_m = 0.050;
}

void read_click_scale(FieldReader& reader, bench::ToolPart& part) {
  const Span torque{0.1, 60.0};
  reader.needs("scale_from", "say where its scale begins, e.g. scale_from = \"2 N·m\"");
  reader.needs("scale_to", "say where its scale ends, e.g. scale_to = \"10 N·m\"");
  reader.needs("scale_step", "say what one line of its scale is, e.g. scale_step = \"0.25 N·m\"");
  reader.quantity("scale_from", Dimension::Torque, torque, part.scale_lo_nm);
  reader.quantity("scale_to", Dimension::Torque, torque, part.scale_hi_nm);
  reader.quantity("scale_step", Dimension::Torque, {0.01, 10.0}, part.scale_step_nm);
  part.start_setting_nm = part.scale_lo_nm;
  reader.quantity("left_at", Dimension::Torque, torque, part.start_setting_nm);
  reader.quantity("class", Dimension::Number, {0.005, 0.25}, part.class_1);
  reader.quantity("bias_offset", Dimension::Number, {-2.5, 2.5}, part.bias_z_1);
  if (part.scale_lo_nm > part.scale_hi_nm) {
    reader.reading().error("E09", reader.spot_of("scale_to"), reader.name() + ": its scale ends below its beginning",
                           "write scale_from below scale_to");
  } else if (part.start_setting_nm < part.scale_lo_nm || part.start_setting_nm > part.scale_hi_nm) {
    reader.reading().error("S11", reader.spot_of("left_at"), reader.name() + ".left_at lies outside of its scale",
                           "write a figure on the scale");
  }
}

}  // namespace

void read_tools(const Reading& reading, const Node& tools, NamedParts& parts) {
  for (const Member& member : tools.members) {
    if (!is_table(reading, member, "tool." + member.key)) continue;
    FieldReader reader(reading, member.node, "tool." + member.key);
    ThingKind kind = ThingKind::LKey;
    reader.needs("kind", "say what it is, e.g. kind = \"key\"");
    reader.word("kind", kToolKinds, kind);
    const bool turns = kind == ThingKind::LKey || kind == ThingKind::Driver || kind == ThingKind::ClickDriver;
    bench::ToolPart part;
    usual_arms(kind, part);
    if (turns) {
      reader.word("drive", kDrives, part.drive);
      reader.quantity("arm", Dimension::Length, {0.01, 0.5}, part.arm_m);
      reader.quantity("wear", Dimension::Length, {0.0, 0.001}, part.wear_m);
    }
    if (kind == ThingKind::LKey) reader.quantity("short_arm", Dimension::Length, {0.01, 0.2}, part.short_arm_m);
    if (kind == ThingKind::ClickDriver) read_click_scale(reader, part);
    reader.done();
    parts.add(reading, member.key, kind, turns ? parts.setup.tools.size() : 0, member.key_at);
    if (turns) parts.setup.tools.push_back(part);
  }
}

void read_instruments(const Reading& reading, const Node& instruments, NamedParts& parts) {
  for (const Member& member : instruments.members) {
    if (!is_table(reading, member, "instrument." + member.key)) continue;
    FieldReader reader(reading, member.node, "instrument." + member.key);
    ThingKind kind = ThingKind::Micrometer;
    reader.needs("kind", "say what it is, e.g. kind = \"micrometer\"");
    reader.word("kind", kInstrumentKinds, kind);
    bench::InstrumentPart part;
    // narrow tips of a vernier reach where a flat anvil does not; a dial's stylus ends in a ball
    if (kind == ThingKind::Vernier) part = {0.00002, 0.0, 0.150, 0.001};
    if (kind == ThingKind::DialGauge) part = {0.00001, 0.0, 0.010, 0.003};
    reader.quantity("resolution", Dimension::Length, {0.000001, 0.001}, part.resolution_m);
    reader.quantity("zero_error", Dimension::Length, {-0.001, 0.001}, part.zero_error_m);
    reader.quantity("range", Dimension::Length, {0.001, 0.3}, part.range_m);
    reader.quantity("face", Dimension::Length, {0.0001, 0.02}, part.face_m);
    reader.done();
    parts.add(reading, member.key, kind, parts.setup.instruments.size(), member.key_at);
    parts.setup.instruments.push_back(part);
  }
}

void read_fluids(const Reading& reading, const Node& fluids, NamedParts& parts) {
  for (const Member& member : fluids.members) {
    if (!is_table(reading, member, "fluid." + member.key)) continue;
    FieldReader reader(reading, member.node, "fluid." + member.key);
    bench::BottlePart part;
    reader.needs("kind", "say what is in it, e.g. kind = \"alcohol\"");
    reader.word("kind", kFluids, part.fluid);
    reader.quantity("drop", Dimension::Volume, {1e-10, 1e-6}, part.drop_m3);
    reader.done();
    parts.add(reading, member.key, ThingKind::Bottle, parts.setup.bottles.size(), member.key_at);
    parts.setup.bottles.push_back(part);
  }
}

void read_rags(const Reading& reading, const Node& rags, NamedParts& parts) {
  for (const Member& member : rags.members) {
    if (!is_table(reading, member, "rag." + member.key)) continue;
    FieldReader reader(reading, member.node, "rag." + member.key);
    bench::RagPart part;
    reader.flag("dirty", part.dirty);
    reader.count("folds", {1.0, 32.0}, part.folds);
    reader.done();
    parts.add(reading, member.key, ThingKind::Rag, parts.setup.rags.size(), member.key_at);
    parts.setup.rags.push_back(part);
  }
}

void read_wheel(const Reading& reading, const Node& wheel, bench::BenchSetup& setup) {
  FieldReader reader(reading, wheel, "wheel");
  reader.word("starts_in", kWheelPlaces, setup.wheel_in_bike);
  reader.quantity("radius", Dimension::Length, {0.2, 0.4}, setup.rider.wheel_radius_m);
  reader.done();
}

void read_brake(const Reading& reading, const Node& brake, bench::BrakePart& part) {
  FieldReader reader(reading, brake, "brake");
  reader.quantity("pad_friction_new", Dimension::Number, {0.05, 0.8}, part.pad_friction_new_1);
  reader.quantity("pad_friction_bedded", Dimension::Number, {0.05, 0.8}, part.pad_friction_bedded_1);
  reader.quantity("pad_gap_hub_side", Dimension::Length, {0.0, 0.002}, part.pad_gap_in_m);
  reader.quantity("pad_gap_outside", Dimension::Length, {0.0, 0.002}, part.pad_gap_out_m);
  reader.quantity("caliper_set_for", Dimension::Length, {0.1, 0.26}, part.rotor_diameter_m);
  reader.quantity("largest_rotor", Dimension::Length, {0.1, 0.26}, part.frame_limit_m);
  reader.quantity("seat_friction", Dimension::Number, {0.05, 0.5}, part.seat_friction_1);
  reader.done();
}

void read_rider(const Reading& reading, const Node& rider, bench::RiderPart& part) {
  FieldReader reader(reading, rider, "rider");
  reader.quantity("mass_with_bike", Dimension::Mass, {30.0, 250.0}, part.mass_kg);
  // people know the limit as a share of gravity, and it has no unit to get wrong
  double share_1 = part.deceleration_limit_m_s2 / kGravity_m_s2;
  const double before_1 = share_1;
  reader.quantity("tips_over_at", Dimension::Number, {0.2, 1.2}, share_1);
  if (share_1 != before_1) part.deceleration_limit_m_s2 = share_1 * kGravity_m_s2;
  reader.done();
}

void read_hands(const Reading& reading, const Node& hands, bench::BenchSetup& setup) {
  FieldReader reader(reading, hands, "hands");
  reader.quantity("strength", Dimension::Number, {0.05, 0.95}, setup.strength_percentile_1);
  reader.done();
}

void read_fitted(const Reading& reading, const Node& fitted, NamedParts& parts) {
  FieldReader reader(reading, fitted, "fitted");
  std::string rotor;
  std::string bolts;
  reader.text("rotor", rotor);
  reader.text("bolts", bolts);
  reader.quantity("torque", base::Dimension::Torque, {0.0, 20.0}, parts.setup.fitted_torque_nm);
  reader.quantity("old_locker", Dimension::Number, kShare, parts.setup.fitted_locker_1);
  reader.done();
  parts.setup.fitted_bolts.assign(parts.setup.bolt_count(), event::kNoThing);
  if (!rotor.empty()) {
    const auto thing = parts.find(rotor);
    if (thing && parts.setup.things[event::index_of(*thing)].kind == ThingKind::Rotor) {
      parts.setup.fitted_rotor = *thing;
    } else {
      const auto near = base::nearest_word(rotor, parts.names_of(ThingKind::Rotor));
      reading.error(
          "S05", reader.spot_of("rotor"), "there is no rotor called \"" + rotor + "\"",
          near.empty() ? "name one of the [rotor.NAME] tables" : "did you mean \"" + std::string(near) + "\"?");
    }
  }
  if (bolts.empty()) return;
  const NamedParts::BoltSet* set = parts.find_set(bolts);
  if (set == nullptr) {
    reading.error("S05", reader.spot_of("bolts"), "there is no set of bolts called \"" + bolts + "\"",
                  "name one of the [bolts.NAME] tables");
  } else if (set->bolts.size() < parts.setup.bolt_count()) {
    reading.error("S09", reader.spot_of("bolts"), "the set \"" + bolts + "\" has fewer bolts than the hub has holes",
                  "raise its count");
  } else {
    for (std::size_t i = 0; i < parts.setup.fitted_bolts.size(); ++i) parts.setup.fitted_bolts[i] = set->bolts[i];
  }
}

void add_furniture(const Reading& reading, NamedParts& parts) {
  const Spot nowhere{};
  parts.add(reading, "wheel", ThingKind::Wheel, 0, nowhere);
  parts.add(reading, "wheel stand", ThingKind::WheelStand, 0, nowhere);
  parts.add(reading, "bike", ThingKind::Bike, 0, nowhere);
  parts.add(reading, "bench", ThingKind::Bench, 0, nowhere);
  parts.add(reading, "tray", ThingKind::Tray, 0, nowhere);
  parts.add(reading, "glove box", ThingKind::Gloves, 0, nowhere);
  parts.add(reading, "job card", ThingKind::Card, 0, nowhere);
  parts.add(reading, "maker's sheet", ThingKind::Sheet, 0, nowhere);
}

}  // namespace proofstand::scenario
