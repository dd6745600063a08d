#include "sim/scene/parts/caliper.h"

#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/dimensions.h"
#include "sim/scene/extrude.h"
#include "sim/scene/outline_offset.h"
#include "sim/scene/revolve.h"
#include "sim/scene/sweep.h"

namespace proofstand::scene {
namespace {

constexpr double kRadial_rad = glm::pi<double>() / 3.0;  // of the pads' radial line from the posts' line
constexpr double kSag_m = 0.0001;

// a shape drawn with x outwards along the pads' radial line and y along the track
Loop on_pads(const PostMount& mount, Loop loop) { return placed(std::move(loop), kRadial_rad, mount.pads_m); }

Loop box(double from_x, double to_x, double from_y, double to_y, double radius_m) {
  return rounded({{from_x, from_y}, {to_x, from_y}, {to_x, to_y}, {from_x, to_y}}, radius_m, kSag_m);
}

// from z to z, whichever lies lower
Mesh between(const Outline& outline, double a_m, double b_m, double chamfer_m) {
  return extrude(outline, {std::min(a_m, b_m), std::max(a_m, b_m), chamfer_m, chamfer_m});
}

struct Planes {
  double rotor_m;      ///< middle of the rotor
  double out_m, in_m;  ///< walls of the cavity
};

Mesh body(const PostMount& mount, const Planes& at) {
  const Loop half = on_pads(
      mount,
      rounded({{-0.012, -0.021}, {0.010, -0.030}, {0.026, -0.024}, {0.026, 0.024}, {0.010, 0.030}, {-0.012, 0.021}},
              0.006, kSag_m));
  const double face = mount.face_m;
  const double a = mount.first_m;
  const double b = mount.second_m;
  Outline outer = {half};
  // ears that lie on the posts
  outer = joined(outer, {rounded({{a - 0.008, face},
                                  {a + 0.008, face},
                                  {a + 0.019, face + 0.016},
                                  {a + 0.004, face + 0.026},
                                  {a - 0.008, face + 0.009}},
                                 0.003, kSag_m)});
  outer = joined(outer, {rounded({{b - 0.008, face},
                                  {b + 0.008, face},
                                  {b + 0.008, face + 0.009},
                                  {b - 0.016, face + 0.021},
                                  {b - 0.034, face + 0.006}},
                                 0.003, kSag_m)});
  outer = offset_round(offset(outer, 0.002), -0.002);
  Mesh mesh = between(outer, at.out_m, at.out_m - 0.0165, 0.0014);
  append(mesh, between({half}, at.in_m, at.in_m + 0.0115, 0.0014));
  // the bridge beyond the rotor's edge, open in the middle where the pads' tabs look out
  const double edge = 0.0075 + size::kBridgeClear;
  for (const double side : {-1.0, 1.0}) {
    const Loop block = box(edge, 0.0245, side > 0.0 ? 0.0125 : -0.0265, side > 0.0 ? 0.0265 : -0.0125, 0.0025);
    append(mesh, between({on_pads(mount, block)}, at.out_m - 0.001, at.in_m + 0.001, 0.0));
  }
  // where the hose screws in
  const glm::dvec2 port = mount.pads_m + 0.021 * glm::dvec2(std::cos(kRadial_rad), std::sin(kRadial_rad)) -
                          0.020 * glm::dvec2(-std::sin(kRadial_rad), std::cos(kRadial_rad));
  append(mesh, bar(0.0055, at.out_m - 0.0235, at.out_m - 0.015, 0.0008, kSag_m),
         glm::translate(glm::mat4(1.0F), glm::vec3(port.x, port.y, 0.0)));
  return mesh;
}

Mesh pad_plates(const PostMount& mount, double from_m, double to_m) {
  Outline plate = {on_pads(
      mount, box(-size::kPadTall / 2.0, size::kPadTall / 2.0, -size::kPadWide / 2.0, size::kPadWide / 2.0, 0.003))};
  plate = joined(plate, {on_pads(mount, box(0.006, 0.0265, -0.006, 0.006, 0.002))});
  plate =
      cut(plate,
          {circle(0.0017, mount.pads_m + 0.0225 * glm::dvec2(std::cos(kRadial_rad), std::sin(kRadial_rad)), 0.00005)});
  return between(plate, from_m, to_m, 0.0002);
}

// a bolt along +y from the post's face, its head above the ear
void add_mount_bolt(Mesh& mesh, double along_m, double face_m, double z_m) {
  glm::mat4 pose = glm::translate(glm::mat4(1.0F), glm::vec3(along_m, face_m + 0.009, z_m));
  pose = glm::rotate(pose, -glm::half_pi<float>(), glm::vec3(1.0F, 0.0F, 0.0F));
  append(mesh, pipe(0.0032, 0.006, 0.0, 0.0012, 0.0003, kSag_m), pose);
  append(mesh,
         extrude({circle(0.005, {0.0, 0.0}, kSag_m), reversed(regular_polygon(6, 0.005))},
                 {0.0012, 0.0070, 0.0002, 0.0006}),
         pose);
  append(mesh, bar(0.0036, 0.0008, 0.0042, 0.0001, kSag_m), pose);
}

}  // namespace

PostMount post_mount(double rotor_m) {
  const double c = std::cos(kRadial_rad);
  const double s = std::sin(kRadial_rad);
  const double out_m = 0.05181082 + (rotor_m - 0.160) / 2.0;
  constexpr double across_m = 0.02206103;
  PostMount mount;
  mount.face_m = out_m * s + across_m * c;
  mount.first_m = out_m * c - across_m * s;
  mount.second_m = mount.first_m + size::kEarSpacing;
  mount.pads_m = (rotor_m / 2.0 - 0.0075) * glm::dvec2(c, s);
  return mount;
}

CaliperMeshes build_caliper(double rotor_m, double thick_m, double gap_out_m, double gap_in_m) {
  const PostMount mount = post_mount(rotor_m);
  Planes at{};
  at.rotor_m = -(size::kSeat + thick_m / 2.0);
  at.out_m = at.rotor_m - size::kCavity / 2.0;
  at.in_m = at.rotor_m + size::kCavity / 2.0;
  CaliperMeshes meshes;
  meshes.body = body(mount, at);
  const double out = at.rotor_m - thick_m / 2.0 - gap_out_m;
  const double in = at.rotor_m + thick_m / 2.0 + gap_in_m;
  const Loop lining = on_pads(mount, box(-0.007, 0.007, -0.013, 0.013, 0.003));
  meshes.lining = between({lining}, out, out - size::kPadLining, 0.0004);
  append(meshes.lining, between({lining}, in, in + size::kPadLining, 0.0004));
  const double out_plate = out - size::kPadLining;
  const double in_plate = in + size::kPadLining;
  meshes.backing = pad_plates(mount, out_plate, out_plate - size::kPadBacking);
  append(meshes.backing, pad_plates(mount, in_plate, in_plate + size::kPadBacking));
  const glm::mat4 to_pads = glm::translate(glm::mat4(1.0F), glm::vec3(mount.pads_m.x, mount.pads_m.y, 0.0));
  const double piston_m = size::kPiston / 2.0;
  append(meshes.pistons, bar(piston_m, at.out_m - 0.002, out_plate - size::kPadBacking, 0.0004, kSag_m), to_pads);
  append(meshes.pistons, bar(piston_m, in_plate + size::kPadBacking, at.in_m + 0.002, 0.0004, kSag_m), to_pads);
  const glm::dvec2 pin = mount.pads_m + 0.0225 * glm::dvec2(std::cos(kRadial_rad), std::sin(kRadial_rad));
  append(meshes.bolts, bar(0.0015, at.out_m - 0.019, at.in_m + 0.013, 0.0003, kSag_m),
         glm::translate(glm::mat4(1.0F), glm::vec3(pin.x, pin.y, 0.0)));
  const double ear_z = at.out_m - 0.0085;
  add_mount_bolt(meshes.bolts, mount.first_m, mount.face_m, ear_z);
  add_mount_bolt(meshes.bolts, mount.second_m, mount.face_m, ear_z);
  // a block with a handle that keeps the pads apart
  Outline spacer = {on_pads(mount, box(-0.012, 0.008, -0.012, 0.012, 0.002))};
  spacer = joined(spacer, {on_pads(mount, box(-0.034, -0.010, -0.009, 0.009, 0.004))});
  spacer = cut(spacer, {on_pads(mount, placed(circle(0.004, {0.0, 0.0}, kSag_m), 0.0, {-0.026, 0.0}))});
  meshes.spacer = between(spacer, out + 0.0001, in - 0.0001, 0.0003);
  for (const double along_m : {mount.first_m, mount.second_m}) {
    glm::mat4 pose = glm::translate(glm::mat4(1.0F), glm::vec3(along_m, 0.008, ear_z));
    pose = glm::rotate(pose, -glm::half_pi<float>(), glm::vec3(1.0F, 0.0F, 0.0F));
    append(meshes.posts,
           revolve({{0.0, 0.0},
                    {0.0105, 0.0},
                    {0.0085, 0.010},
                    {0.0078, mount.face_m - 0.0085},
                    {0.0072, mount.face_m - 0.008},
                    {0.0, mount.face_m - 0.008}},
                   kSag_m),
           pose);
  }
  const glm::dvec2 port = mount.pads_m + 0.021 * glm::dvec2(std::cos(kRadial_rad), std::sin(kRadial_rad)) -
                          0.020 * glm::dvec2(-std::sin(kRadial_rad), std::cos(kRadial_rad));
  const auto z = static_cast<float>(at.out_m - 0.021);
  const glm::vec3 from(port.x, port.y, z);
  meshes.hose = tube(smooth_path({from, from + glm::vec3(0.022F, 0.004F, -0.001F),
                                  from + glm::vec3(0.085F, -0.022F, -0.006F), glm::vec3(0.24F, 0.060F, -0.070F),
                                  glm::vec3(0.36F, 0.066F, -0.052F), glm::vec3(0.46F, 0.050F, -0.040F)},
                                 7),
                     0.0025F, 8);
  return meshes;
}

}  // namespace proofstand::scene
