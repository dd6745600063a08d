#include "sim/scene/parts/hub.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/dimensions.h"
#include "sim/scene/extrude.h"
#include "sim/scene/mesh_normals.h"
#include "sim/scene/outline.h"
#include "sim/scene/parts/spokes.h"
#include "sim/scene/revolve.h"

namespace proofstand::scene {
namespace {

constexpr double kTurn = glm::two_pi<double>();
constexpr double kSeatFlange_m = 0.028;  // radius
constexpr double kHoleChamfer_m = 0.00275;
constexpr double kBoss_m = 0.005;  // radius
constexpr double kSag_m = 0.00012;

Loop holes_on(std::size_t count, double circle_m, double radius_m, std::size_t k) {
  const double at = kTurn * static_cast<double>(k) / static_cast<double>(count);
  return circle(radius_m, circle_m / 2.0 * glm::dvec2(std::cos(at), std::sin(at)));
}

// a spoke flange with its holes, in the wheel's frame; angles as the spokes count them
Mesh flange(bool disc_side) {
  const double circle_m = disc_side ? size::kFlangeCircleDisc : size::kFlangeCircleOther;
  const double middle_m = disc_side ? -size::kFlangeDisc : size::kFlangeOther;
  Outline outline = {circle(circle_m / 2.0 + 0.004, {0.0, 0.0}, kSag_m), reversed(circle(0.012, {0.0, 0.0}, kSag_m))};
  for (int j = 0; j < size::kSpokes / 2; ++j) {
    const double at = flange_hole_rad(disc_side, j);
    outline.push_back(
        reversed(circle(size::kSpokeHole / 2.0, circle_m / 2.0 * glm::dvec2(std::cos(at), std::sin(at)), 0.0002)));
  }
  return extrude(outline, {middle_m - size::kFlangeThick / 2.0, middle_m + size::kFlangeThick / 2.0, 0.0006, 0.0006});
}

// barrel and the cone that carries the seat, turned in one piece
Mesh barrel() {
  const double seat_m = -(size::kSeat - size::kBossHeight);
  const double barrel_m = size::kBarrel / 2.0;
  Loop profile = {{0.0095, seat_m},
                  {kSeatFlange_m - 0.0005, seat_m},
                  {kSeatFlange_m, seat_m + 0.0005},
                  {kSeatFlange_m, seat_m + 0.0045},
                  {kSeatFlange_m - 0.0006, seat_m + 0.0052}};
  // hollowed towards the spoke flange
  for (int i = 0; i <= 6; ++i) {
    const double t = static_cast<double>(i) / 6.0;
    profile.emplace_back(barrel_m + 0.002 + (kSeatFlange_m - barrel_m - 0.0035) * (1.0 - t) * (1.0 - t),
                         seat_m + 0.0058 + 0.0085 * t);
  }
  profile.insert(profile.end(), {{barrel_m, -size::kFlangeDisc + 0.004},
                                 {barrel_m - 0.0008, -0.010},
                                 {barrel_m - 0.0012, 0.006},
                                 {barrel_m - 0.0008, 0.022},
                                 {barrel_m + 0.0004, size::kFlangeOther - 0.003},
                                 {barrel_m + 0.0010, size::kFlangeOther + 0.0030},
                                 {0.0120, size::kFlangeOther + 0.0045},
                                 {0.0095, size::kFlangeOther + 0.0045}});
  return revolve(profile, kSag_m);
}

// the seat's level face round the register, with the six holes through it
Mesh seat(const bench::HubPart& hub) {
  const double face_m = size::kSeat - size::kBossHeight;
  const double register_m = hub.register_m > 0.0 ? hub.register_m / 2.0 : 0.0165;
  const double top_m = hub.register_m > 0.0 ? size::kSeat + 0.0015 : face_m + 0.0002;
  Outline face = {circle(kSeatFlange_m - 0.0005, {0.0, 0.0}, kSag_m), reversed(circle(register_m, {0.0, 0.0}, kSag_m))};
  for (std::size_t k = 0; k < hub.bosses.size(); ++k) {
    face.push_back(reversed(holes_on(hub.bosses.size(), hub.hole_circle_m, kHoleChamfer_m, k)));
  }
  Mesh mesh = flat_face(face, face_m + 0.00002);
  append(mesh, revolve({{register_m, face_m},
                        {register_m, top_m - 0.0003},
                        {register_m - 0.0003, top_m},
                        {0.0125, top_m},
                        {0.0120, top_m - 0.0012},
                        {0.0096, top_m - 0.0012}},
                       kSag_m));
  return mesh;
}

Mesh boss() {
  return revolve(
      {{kBoss_m + 0.0001, -size::kBossHeight}, {kBoss_m, -0.0003}, {kBoss_m - 0.0003, 0.0}, {kHoleChamfer_m, 0.0}},
      0.00006);
}

// a helix is not needed here: rings of the thread's profile, seen down a hole of five millimetres, look the same
Mesh hole(const bench::HubPart& hub) {
  const double crest_m = hub.thread_diameter_m / 2.0 - 0.54 * hub.thread_pitch_m;
  const double root_m = hub.thread_diameter_m / 2.0;
  Loop profile = {{kHoleChamfer_m, 0.0}, {root_m, -(kHoleChamfer_m - root_m)}};
  double z_m = profile.back().y;
  while (z_m > -0.0045) {
    profile.emplace_back(crest_m, z_m - 0.4 * hub.thread_pitch_m);
    profile.emplace_back(crest_m, z_m - 0.5 * hub.thread_pitch_m);
    profile.emplace_back(root_m, z_m - 0.9 * hub.thread_pitch_m);
    z_m -= hub.thread_pitch_m;
    profile.emplace_back(root_m, z_m);
  }
  profile.emplace_back(crest_m, z_m - 0.0003);
  profile.emplace_back(crest_m, -hub.hole_depth_m);
  profile.emplace_back(0.0, -hub.hole_depth_m - 0.001);
  return revolve(profile, 0.0002);
}

// end caps on both sides, the axle's bore right through
Mesh axle() {
  const double end_m = size::kOverEnds / 2.0;
  const double cap_m = size::kEndCap / 2.0;
  const double bore_m = size::kAxleBore / 2.0;
  const auto cap = [&](double from_m) {
    return revolve_ring({{bore_m, from_m},
                         {cap_m - 0.0002, from_m},
                         {cap_m - 0.0002, end_m - 0.004},
                         {cap_m, end_m - 0.0035},
                         {cap_m, end_m - 0.0006},
                         {cap_m - 0.0006, end_m},
                         {bore_m + 0.0006, end_m},
                         {bore_m, end_m - 0.0006}},
                        0.00008);
  };
  Mesh mesh = cap(size::kFlangeOther);
  append(mesh, cap(size::kSeat - 0.002),
         glm::rotate(glm::mat4(1.0F), static_cast<float>(kTurn / 2.0), glm::vec3(0.0F, 1.0F, 0.0F)));
  return mesh;
}

}  // namespace

HubMeshes build_hub(const bench::HubPart& hub) {
  HubMeshes meshes;
  meshes.shell = barrel();
  append(meshes.shell, flange(true));
  append(meshes.shell, flange(false));
  // turned parts are made with z out of the disc side; that side looks to -z in the wheel
  const glm::mat4 over = glm::rotate(glm::mat4(1.0F), static_cast<float>(kTurn / 2.0), glm::vec3(0.0F, 1.0F, 0.0F));
  append(meshes.seat, seat(hub), over);
  meshes.boss = boss();
  meshes.hole = hole(hub);
  meshes.axle = axle();
  return meshes;
}

}  // namespace proofstand::scene
