#include "sim/physics/drive_recess.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"
#include "sim/physics/dimensions.h"

namespace proofstand::physics {
namespace {

// overlap with the recess's hollows, arm of the flanks that bear and how many do
struct Shape {
  double overlap_m;
  double arm_m;
  int flanks;
  double play_rad;
  double reach_1;  // of the recess's depth that its tip gets to
};

Shape shape_of(DriveTool tool) {
  const double points_m = size_m(Size::RecessPoint);
  const double hollows_m = size_m(Size::RecessFlat);
  switch (tool) {
    case DriveTool::Hexalobular25:
      return {0.5 * (points_m - hollows_m), 0.25 * (points_m + hollows_m), 6, base::radians(1.3), 1.0};
    case DriveTool::Hexalobular20:
      return {0.5 * (0.00395 - hollows_m), 0.25 * (0.00395 + hollows_m), 6, base::radians(6.9), 1.0};
    // a hexagon touches with its corners' edges only, and half of them at a time
    case DriveTool::Hexagon3_0:
      return {0.5 * (0.003464 - hollows_m), 0.25 * (0.003464 + hollows_m), 3, base::radians(17.0), 0.9};
    case DriveTool::Hexagon3_2:
      return {0.5 * (0.003695 - hollows_m), 0.25 * (0.003695 + hollows_m), 3, base::radians(4.9), 0.9};
    case DriveTool::FlatBlade:
      return {0.5 * (0.0044 - hollows_m), 0.25 * (0.0044 + hollows_m), 1, base::radians(12.0), 0.7};
  }
  return {0.0, 0.0, 0, 0.0, 0.0};
}

}  // namespace

DriveContact drive_contact(const DriveFit& fit) {
  const Shape shape = shape_of(fit.tool);
  const double tilt_rad = fit.tilt_rad < 0.0 ? -fit.tilt_rad : fit.tilt_rad;
  const double lost_m = 0.5 * size_m(Size::RecessPoint) * base::tan_rad(tilt_rad);
  const double free_m = size_m(Size::RecessDepth) * shape.reach_1 - fit.debris_m;
  const double reached_m = fit.depth_m < free_m ? fit.depth_m : free_m;
  DriveContact contact;
  contact.depth_m = reached_m > lost_m ? reached_m - lost_m : 0.0;
  contact.overlap_m = shape.overlap_m > fit.recess_wear_m ? shape.overlap_m - fit.recess_wear_m : 0.0;
  contact.arm_m = shape.arm_m;
  contact.flanks = shape.flanks;
  return contact;
}

double drive_capacity_nm(const DriveFit& fit) {
  const DriveContact c = drive_contact(fit);
  return c.flanks * fit.crush_pa * c.overlap_m * c.depth_m * c.arm_m;
}

double drive_depth_for_torque_m(const DriveFit& fit, double torque_nm) {
  const DriveContact c = drive_contact(fit);
  STAND_ASSERT(c.overlap_m > 0.0 && fit.crush_pa > 0.0);
  const double tilt_rad = fit.tilt_rad < 0.0 ? -fit.tilt_rad : fit.tilt_rad;
  return torque_nm / (c.flanks * fit.crush_pa * c.overlap_m * c.arm_m) +
         0.5 * size_m(Size::RecessPoint) * base::tan_rad(tilt_rad);
}

double push_out_n(double torque_nm, double arm_m, double tilt_rad, double draft_rad, double friction_1) {
  const double wedge = base::tan_rad((tilt_rad < 0.0 ? -tilt_rad : tilt_rad) + draft_rad) - friction_1;
  return wedge > 0.0 && arm_m > 0.0 ? torque_nm / arm_m * wedge : 0.0;
}

double drive_play_rad(DriveTool tool) { return shape_of(tool).play_rad; }

bool hexagon_enters(double across_m) {
  // half its flat must pass between the hollows of a recess as made, a little under the nominal size
  return 0.5 * across_m <= 0.001609;
}

double deepest_fit_m(DriveTool tool, double recess_depth_m) { return shape_of(tool).reach_1 * recess_depth_m; }

double recess_wear_added_m(double torque_nm, double capacity_nm) {
  if (torque_nm >= capacity_nm) return 0.0002;
  return torque_nm > 0.9 * capacity_nm ? 0.00005 : 0.0;
}

}  // namespace proofstand::physics
