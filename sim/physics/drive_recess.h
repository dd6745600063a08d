// The drive recess: how much torque it takes before the tool slips round and shaves its lobes.
#pragma once

#include <cstdint>

namespace proofstand::physics {

/// A drive's profile. Lobes or corners touch at `points` across and `waist` between.
struct DriveProfile {
  double points_m = 0.00450;  ///< A
  double waist_m = 0.00325;   ///< B
  int lobes = 6;
  double share_1 = 1.0;  ///< of the flanks that bear (a flat blade: two of six; a hexagon: on its corners)
};
/// Hexalobular size 25 and 20. source: ISO 10664 table
inline constexpr DriveProfile kHexalobular25{};
inline constexpr DriveProfile kHexalobular20{0.00395, 0.00285, 6, 1.0};
/// Full recess depth of a low M5 head [m]. source: ISO 14580 table, 1.52 to 1.91
inline constexpr double kRecessDepth_m = 0.00152;

enum class DriverTip : std::uint8_t { Hexalobular25, Hexalobular20, Hexagon3_0, Hexagon3_2, FlatBlade };

/// How a tip stands in a size-25 recess.
struct Engagement {
  DriverTip tip = DriverTip::Hexalobular25;
  double depth_m = kRecessDepth_m;
  double tilt_rad = 0.0;
  double wear_m = 0.0;  ///< radial wear of recess and tip together
};

/// Torque [N·m] at which the softer part's flanks crush: n p w h r, w = (A − B)/2 less wear, h less what tilt takes, r
/// = (A + B)/4. p_pa: pressure limit, the softer part's tensile strength. 0 when nothing bears. source: own geometric
/// model (from memory); gauges ISO 10664
double drive_capacity_nm(const Engagement& engagement, double p_pa);
/// Depth [m] that a torque needs at no tilt and no wear. source: the same
double depth_needed_m(double torque_nm, double p_pa);
/// Axial force [N] that pushes the tool out under a torque: (T/r)(tan(tilt + draft) − µ), 0 when negative.
/// source: own, statics of a wedge (from memory); draft 2°, friction 0.12
double push_out_force_n(double torque_nm, double tilt_rad);
/// Does this tip go into a size-25 recess at all, and with how much play [rad]? source: contour of ISO 10664, own
/// computation
struct TipFit {
  bool enters = true;
  double play_rad = 0.0;
};
TipFit tip_fit(DriverTip tip);

/// Radial wear [m] that one pull near the limit adds, and one slip. source: common practice, no source
inline constexpr double kWearNearLimit_m = 0.00005;
inline constexpr double kWearOfSlip_m = 0.0002;
/// Share of the capacity from which a pull wears.
inline constexpr double kWearFrom_1 = 0.9;
/// Wear at which nothing bears any more [m]: (A − B)/2.
inline constexpr double kRuinedWear_m = 0.000625;

}  // namespace proofstand::physics
