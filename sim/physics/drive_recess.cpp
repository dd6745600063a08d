#include "sim/physics/drive_recess.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kDraft_rad = 2.0 * base::kPi / 180.0;
constexpr double kToolFriction_1 = 0.12;

// overlap, lever arm and bearing share of a tip in a size-25 recess
struct Contact {
  double overlap_m;
  double radius_m;
  double lobes;
};

Contact contact_of(DriverTip tip) {
  switch (tip) {
    case DriverTip::Hexalobular25:
      return {0.5 * (0.00450 - 0.00325), 0.25 * (0.00450 + 0.00325), 6.0};
    case DriverTip::Hexalobular20:
      return {0.5 * (0.00395 - 0.00325), 0.25 * (0.00395 + 0.00325), 6.0};
    // corners 2/√3 across flats, bearing on their edges only
    case DriverTip::Hexagon3_2:
      return {0.5 * (0.003695 - 0.00325), 0.00174, 3.0};
    case DriverTip::Hexagon3_0:
      return {0.5 * (0.003464 - 0.00325), 0.00168, 3.0};
    case DriverTip::FlatBlade:
      return {0.5 * (0.00440 - 0.00325), 0.00191, 1.0};
  }
  return {0.0, 0.0, 0.0};
}

}  // namespace

double drive_capacity_nm(const Engagement& e, double p_pa) {
  const Contact c = contact_of(e.tip);
  const double width_m = c.overlap_m - e.wear_m;
  const double tilt = e.tilt_rad < 0.0 ? -e.tilt_rad : e.tilt_rad;
  const double height_m = e.depth_m - 0.5 * kHexalobular25.points_m * base::tan_rad(tilt);
  if (width_m <= 0.0 || height_m <= 0.0) return 0.0;
  return c.lobes * p_pa * width_m * height_m * c.radius_m;
}

double depth_needed_m(double torque_nm, double p_pa) {
  const Contact c = contact_of(DriverTip::Hexalobular25);
  return torque_nm / (c.lobes * p_pa * c.overlap_m * c.radius_m);
}

double push_out_force_n(double torque_nm, double tilt_rad) {
  const double tilt = tilt_rad < 0.0 ? -tilt_rad : tilt_rad;
  const double torque = torque_nm < 0.0 ? -torque_nm : torque_nm;
  const double wedge = base::tan_rad(tilt + kDraft_rad) - kToolFriction_1;
  return wedge > 0.0 ? torque / contact_of(DriverTip::Hexalobular25).radius_m * wedge : 0.0;
}

TipFit tip_fit(DriverTip tip) {
  switch (tip) {
    case DriverTip::Hexalobular25:
      return {true, base::radians(1.3)};
    case DriverTip::Hexalobular20:
      return {true, base::radians(6.9)};
    case DriverTip::Hexagon3_0:
      return {true, base::radians(17.0)};
    case DriverTip::Hexagon3_2:
      return {true, base::radians(4.9)};
    case DriverTip::FlatBlade:
      return {true, base::radians(12.0)};
  }
  return {false, 0.0};
}

}  // namespace proofstand::physics
