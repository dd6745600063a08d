// The one table of sizes of the six-bolt job: physics, bench and scene read the same rows. A row is a name, a value in
// SI and where it comes from; a scenario's own figure always wins over a row of this table.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace proofstand::physics {

/// How well a figure is founded; printed beside every check against a source.
enum class Standing : unsigned char { Published, CommonPractice, FromMemory };
/// "published", "common practice, no source", "from memory"
std::string_view standing_words(Standing standing);

/// Every size in the table, in its order.
enum class Size : unsigned char {
  BoltCount,
  BoltCircle,
  RotorHole,
  BoltShank,
  HeadDiameter,
  HeadHeight,
  BoltLength,
  BoltPoint,
  CarrierThickness,
  CarrierOuter,
  RotorBore,
  HubRegister,
  RegisterHeight,
  SeatFlangeOuter,
  BossDiameter,
  HubThreadDepth,
  HubHoleDepth,
  HoleChamfer,
  TrackWidth,
  TrackThickness,
  LiningTangential,
  LiningRadial,
  LiningTopBelowEdge,
  ArmWidth,
  ArmCount,
  RecessDepth,
  RecessPoint,
  RecessFlat,
  KeyLongArm,
  KeyShortArm,
  KeyShaft,
  DriverHandleDiameter,
  DriverHandleLength,
  CrossHandle,
  AnvilDiameter,
  VernierBlade,
  VernierTip,
  DialBall,
  PadGap,
  WheelRadius,
  Count,
};

/// One row: value in SI (m; counts as numbers).
struct SizeRow {
  Size size;
  std::string_view name;
  double value_si;
  Standing standing;
  std::string_view source;
};

inline constexpr std::size_t kSizeCount = static_cast<std::size_t>(Size::Count);

/// The table. Change a figure here and bench, pictures and checks follow.
inline constexpr std::array<SizeRow, kSizeCount> kSizes = {{
    {Size::BoltCount, "bolts of the usual rotor mount", 6.0, Standing::CommonPractice, ""},
    {Size::BoltCircle, "bolt circle diameter", 0.044, Standing::CommonPractice, "de-facto mount"},
    {Size::RotorHole, "hole in the rotor", 0.0052, Standing::CommonPractice, ""},
    {Size::BoltShank, "bolt, nominal", 0.005, Standing::Published, "ISO 261"},
    {Size::HeadDiameter, "bolt head bearing diameter", 0.009, Standing::CommonPractice, ""},
    {Size::HeadHeight, "bolt head height", 0.0025, Standing::CommonPractice, ""},
    {Size::BoltLength, "bolt length under its head", 0.010, Standing::CommonPractice, ""},
    {Size::BoltPoint, "bolt point without full thread", 0.0008, Standing::FromMemory, "ISO 4753"},
    {Size::CarrierThickness, "rotor carrier thickness", 0.0018, Standing::CommonPractice, ""},
    {Size::CarrierOuter, "rotor carrier ring, outer diameter", 0.055, Standing::CommonPractice, ""},
    {Size::RotorBore, "rotor centre bore", 0.035, Standing::CommonPractice, ""},
    {Size::HubRegister, "hub centring register", 0.0348, Standing::CommonPractice, ""},
    {Size::RegisterHeight, "height of the register", 0.0015, Standing::CommonPractice, ""},
    {Size::SeatFlangeOuter, "hub seat flange, outer diameter", 0.056, Standing::CommonPractice, ""},
    {Size::BossDiameter, "raised boss round a hole", 0.010, Standing::CommonPractice, ""},
    {Size::HubThreadDepth, "full thread in the hub", 0.010, Standing::CommonPractice, ""},
    {Size::HubHoleDepth, "drilled depth in the hub", 0.012, Standing::CommonPractice, ""},
    {Size::HoleChamfer, "chamfer at the hole's entry, diameter", 0.0055, Standing::CommonPractice, ""},
    {Size::TrackWidth, "width of the braking track", 0.015, Standing::CommonPractice, ""},
    {Size::TrackThickness, "track thickness when new", 0.0018, Standing::CommonPractice, ""},
    {Size::LiningTangential, "pad lining along the track", 0.033, Standing::CommonPractice, ""},
    {Size::LiningRadial, "pad lining across the track", 0.0135, Standing::CommonPractice, ""},
    {Size::LiningTopBelowEdge, "rotor edge to the outer edge of the lining", 0.001, Standing::CommonPractice, ""},
    {Size::ArmWidth, "rotor arm width", 0.009, Standing::CommonPractice, ""},
    {Size::ArmCount, "rotor arms", 6.0, Standing::CommonPractice, ""},
    {Size::RecessDepth, "drive recess, full depth", 0.00152, Standing::Published, "ISO 14580, least depth for M5"},
    {Size::RecessPoint, "hexalobular size 25 across the points", 0.0045, Standing::Published, "ISO 10664"},
    {Size::RecessFlat, "hexalobular size 25 across the hollows", 0.00325, Standing::Published, "ISO 10664"},
    {Size::KeyLongArm, "key, long arm", 0.100, Standing::CommonPractice, ""},
    {Size::KeyShortArm, "key, short arm", 0.024, Standing::CommonPractice, ""},
    {Size::KeyShaft, "key, shaft diameter", 0.0045, Standing::CommonPractice, ""},
    {Size::DriverHandleDiameter, "straight driver, handle diameter", 0.038, Standing::CommonPractice, ""},
    {Size::DriverHandleLength, "straight driver, handle length", 0.110, Standing::CommonPractice, ""},
    {Size::CrossHandle, "cross handle, end to end", 0.100, Standing::CommonPractice, ""},
    {Size::AnvilDiameter, "micrometer anvil", 0.00635, Standing::FromMemory, "ISO 3611"},
    {Size::VernierBlade, "vernier jaw, blade length", 0.040, Standing::FromMemory, "ordinary 150 mm pattern"},
    {Size::VernierTip, "vernier jaw, width of its tips", 0.001, Standing::FromMemory, "ordinary 150 mm pattern"},
    {Size::DialBall, "dial gauge stylus ball", 0.003, Standing::FromMemory, "ISO 463"},
    {Size::PadGap, "gap between pad and rotor, each side", 0.0003, Standing::CommonPractice, ""},
    {Size::WheelRadius, "wheel radius", 0.34, Standing::CommonPractice, ""},
}};

/// [m] value of a size that is a length; the bare number of one that is a count.
constexpr double size_m(Size size) { return kSizes[static_cast<std::size_t>(size)].value_si; }

/// Radii of a rotor that its pads and gauges care about.
struct TrackRadii {
  double inner_m = 0.0;         ///< inner edge of the track
  double outer_m = 0.0;         ///< rim
  double middle_m = 0.0;        ///< where runout is quoted
  double lining_inner_m = 0.0;  ///< what the pads sweep
  double lining_outer_m = 0.0;
};

/// Track of a rotor by its outside diameter.
/// diameter_m  [m] 0.12..0.25
/// returns     [m] 160 mm: track 65..80, middle 72, lining 65.5..79
/// source      common practice, no source
TrackRadii track_radii(double diameter_m);

}  // namespace proofstand::physics
