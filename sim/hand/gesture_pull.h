// From a pointer's motion to the motion of the cord's end: round an axis, along it, over a face. Pure geometry; how the
// axis is seen is decided when the drag begins and kept until it ends.
#pragma once

#include <optional>

#include "sim/hand/gesture_input.h"

namespace proofstand::hand {

inline constexpr double kOblique_1 = 0.30;      ///< |axis · towards the eye| below which turning is read sideways
inline constexpr double kEndOn_1 = 0.80;        ///< above which an axis has no length to be followed along
inline constexpr double kPiece_pt = 8.0;        ///< longer moves are split
inline constexpr double kDeadMiddle_pt = 10.0;  ///< nothing turns so near the axis' picture
inline constexpr double kMostTurn_deg_per_pt = 2.0;
inline constexpr double kSideways_deg_per_pt = 0.5;
inline constexpr double kEndOn_m_per_pt = 0.00025;
inline constexpr double kLift_pt = 60.0;  ///< so far beside a face a rag lifts off

/// How far an axis points at the eye: |axis · direction to the eye| at the grip.
double towards_eye_1(const Lens& lens, const Grasp& grasp);

struct PullStep {
  double turn_rad = 0.0;  ///< clockwise along the axis
  double press_m = 0.0;   ///< inwards
};
/// Motion of one pointer move for a hand that turns, and presses by drawing nearer to the axis (or along it where the
/// axis is seen from the side). seen_1: towards_eye_1 as it was when the drag began.
PullStep turn_step(const Lens& lens, const Grasp& grasp, double seen_1, const Spot& from, const Spot& to);
/// Motion along the axis [m], inwards positive.
double along_step_m(const Lens& lens, const Grasp& grasp, double seen_1, const Spot& from, const Spot& to);
/// Does a move go along the axis rather than round it?
bool goes_along(const Lens& lens, const Grasp& grasp, const Spot& from, const Spot& to);

/// The point of a face that the pointer means.
struct FacePoint {
  double x_m = 0.0;
  double y_m = 0.0;
  bool lifted = false;  ///< so far beside the face that the hand leaves it
};
/// Nothing when the pointer's ray misses the face's plane.
std::optional<FacePoint> face_point(const Lens& lens, const Grasp& grasp, const Spot& spot);

}  // namespace proofstand::hand
