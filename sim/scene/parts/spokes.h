// Spokes and nipples, laced crossing by crossing. In the wheel's frame: angles about +z (to the rider's right), so
// that rolling forward turns the wheel by a negative angle.
#pragma once

#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// Length of a spoke from the inside of its elbow to its end.
/// rim_m, flange_circle_m  [m] effective rim diameter, bolt circle of the flange's holes
/// flange_m  [m] hub centre to flange · spokes in the whole wheel · crossings · hole_m of the flange's holes
/// source    the usual spoke-length relation, L² = R² + r² + f² - 2 R r cos(360° k / (n/2)), less half a hole
double spoke_length_m(double rim_m, double flange_circle_m, double flange_m, int spokes, int crossings, double hole_m);

/// Angle of a flange's hole j: the right flange is turned by half a pitch.
double flange_hole_rad(bool disc_side, int j, int spokes = 32);
/// Hole of the rim that the spoke from hole j goes to, 0 .. spokes - 1: even j trail, odd j lead.
int rim_hole(bool disc_side, int j, int spokes = 32, int crossings = 3);
/// Angle of a hole of the rim; the valve stands midway between the last and the first.
double rim_hole_rad(int i, int spokes = 32);

struct SpokeMeshes {
  Mesh spokes;
  Mesh nipples;
};
SpokeMeshes build_spokes();

}  // namespace proofstand::scene
