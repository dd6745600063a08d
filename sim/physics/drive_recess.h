// Drive recesses: what torque a hexalobular size 25 carries by depth, tilt and wear, and what a wrong tool does in it.
#pragma once

namespace proofstand::physics {

/// What is put into the recess.
enum class DriveTool : unsigned char { Hexalobular25, Hexalobular20, Hexagon3_0, Hexagon3_2, FlatBlade };

/// How a tool sits in the recess now.
struct DriveFit {
  DriveTool tool = DriveTool::Hexalobular25;
  double depth_m = 0.00152;    ///< how deep its tip would reach in a clean recess
  double tilt_rad = 0.0;       ///< between the axes
  double recess_wear_m = 0.0;  ///< lost of the radial overlap, recess and tool together
  double debris_m = 0.0;       ///< packed in the bottom
  double crush_pa = 800e6;     ///< pressure that crushes the softer flank
};

/// Depth, overlap and arm that a tool really has.
struct DriveContact {
  double depth_m = 0.0;    ///< effective, 0 when it does not bear
  double overlap_m = 0.0;  ///< radial, in the way of rounding
  double arm_m = 0.0;
  int flanks = 0;  ///< that bear; corners and edges count by a half
};
DriveContact drive_contact(const DriveFit& fit);

/// Torque at which the flanks crush and the tool turns in the recess: n p w h r.
/// valid    own model; geometry after ISO 10664, no standard states the torque
/// source   own derivation
double drive_capacity_nm(const DriveFit& fit);
/// Depth that carries this torque with everything else as it is. [m]
double drive_depth_for_torque_m(const DriveFit& fit, double torque_nm);
/// Axial force that pushes a tilted tool out, not below 0. draft_rad [rad] of the walls, friction_1 about 0.12
double push_out_n(double torque_nm, double arm_m, double tilt_rad, double draft_rad, double friction_1);
/// Free turn of a tool in the recess to either side. [rad]
/// source  own computation on the two contours of ISO 10664
double drive_play_rad(DriveTool tool);
/// Does a hexagon key of this size across its flats go in? 3.2 mm does, 3.3 mm does not. source: as above
bool hexagon_enters(double across_m);
/// Largest depth this tool can reach in a recess of that depth. [m] source: common practice, no source
double deepest_fit_m(DriveTool tool, double recess_depth_m);

/// Wear that one pull adds to the radial overlap: 0.2 mm when it slips, 0.05 mm above nine tenths, else none.
/// source  common practice, no source
double recess_wear_added_m(double torque_nm, double capacity_nm);
/// Wear at which the recess no longer holds any tool [m]. from the overlap of size 25
inline constexpr double kRecessRuined_m = 0.0004;
/// Torque that twists a size 25 tip off [N·m]. from memory
inline constexpr double kTipBreaks_nm = 16.0;

}  // namespace proofstand::physics
