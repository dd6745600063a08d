#include "sim/scene/parts/rim.h"

#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/dimensions.h"
#include "sim/scene/mesh_normals.h"
#include "sim/scene/parts/spokes.h"
#include "sim/scene/revolve.h"

namespace proofstand::scene {
namespace {

constexpr double kTurn = glm::two_pi<double>();
constexpr double kSag_m = 0.00022;

// half a profile (radius, z >= 0), from outside to inside, made whole by its mirror image; counter-clockwise
Loop mirrored_profile(const Loop& half) {
  Loop loop = half;
  for (auto p = half.rbegin(); p != half.rend(); ++p) {
    if (p->y > 1e-9) loop.emplace_back(p->x, -p->y);
  }
  return area_m2(loop) > 0.0 ? loop : reversed(loop);
}

Mesh rim() {
  const double seat_m = size::kBeadSeat / 2.0;
  const double inner = size::kRimInner / 2.0;
  const double outer = size::kRimOuter / 2.0;
  const double bed_m = seat_m + size::kRimHook - size::kRimDepth;
  // from the drop channel's middle out over the seat and hook, down the brake-free wall to the spoke bed
  return revolve_ring(mirrored_profile({{seat_m - 0.0025, 0.0},
                                        {seat_m - 0.0025, inner - 0.006},
                                        {seat_m, inner - 0.004},
                                        {seat_m, inner},
                                        {seat_m + 0.0045, inner},
                                        {seat_m + size::kRimHook - 0.0004, inner - 0.0006},
                                        {seat_m + size::kRimHook, inner + 0.0004},
                                        {seat_m + size::kRimHook, outer - 0.0008},
                                        {seat_m + size::kRimHook - 0.0008, outer},
                                        {seat_m - 0.0060, outer},
                                        {seat_m - 0.0085, outer - 0.0006},
                                        {bed_m + 0.0040, 0.0075},
                                        {bed_m + 0.0012, 0.0045},
                                        {bed_m, 0.0030},
                                        {bed_m, 0.0}}),
                      kSag_m);
}

Mesh tyre() {
  const double seat_m = size::kBeadSeat / 2.0;
  const double half = size::kTyreWidth / 2.0;
  const double middle_m = seat_m + half;
  const double bead_rad = 2.42;  // where the casing dives under the hook
  Loop half_profile;
  const int steps = 12;
  for (int i = 0; i <= steps; ++i) {
    const double at = bead_rad * i / steps;
    double r = half;
    // a thicker tread with two grooves a side, worn smooth in the middle
    if (at < 0.95) r += 0.0007 * (1.0 - at / 0.95);
    const bool groove = i == 2 || i == 4;
    if (groove) r -= 0.0011;
    half_profile.emplace_back(middle_m + r * std::cos(at), r * std::sin(at));
  }
  half_profile.front().x = seat_m + size::kTyreWidth;
  half_profile.emplace_back(seat_m + 0.0005, half - 0.0055);
  half_profile.emplace_back(seat_m + 0.0005, 0.0);
  return revolve_ring(mirrored_profile(half_profile), kSag_m);
}

// a block's top and its four slopes; what it stands on is not seen
Mesh tread_block() {
  const auto corner = [](float x, float y, float z) { return Vertex{{x, y, z}, {}, {}}; };
  Mesh mesh;
  for (const float size : {1.0F, 0.72F}) {
    const float x = size == 1.0F ? -0.0012F : 0.0011F;
    for (const glm::vec2& at :
         {glm::vec2(-1.0F, -1.0F), glm::vec2(1.0F, -1.0F), glm::vec2(1.0F, 1.0F), glm::vec2(-1.0F, 1.0F)}) {
      mesh.vertices.push_back(corner(x, at.x * 0.0044F * size, at.y * 0.0027F * size));
    }
  }
  for (std::uint32_t i = 0; i < 4; ++i) {
    const std::uint32_t k = (i + 1) % 4;
    mesh.indices.insert(mesh.indices.end(), {i, k, k + 4, i, k + 4, i + 4});
  }
  mesh.indices.insert(mesh.indices.end(), {4, 5, 6, 4, 6, 7});
  return with_normals(mesh);
}

// shallow blocks across the shoulders, leaning with the wheel's rolling
void add_tread(Mesh& mesh) {
  const double middle_m = (size::kBeadSeat + size::kTyreWidth) / 2.0;
  const Mesh block = tread_block();
  constexpr int count = 72;
  for (int i = 0; i < count; ++i) {
    for (const float side : {-1.0F, 1.0F}) {
      const double at = kTurn * (i + (side > 0.0F ? 0.5 : 0.0)) / count;
      glm::mat4 pose = glm::rotate(glm::mat4(1.0F), static_cast<float>(at), glm::vec3(0.0F, 0.0F, 1.0F));
      pose = glm::translate(pose, glm::vec3(static_cast<float>(middle_m), 0.0F, 0.0F));
      pose = glm::rotate(pose, side * -0.83F, glm::vec3(0.0F, 1.0F, 0.0F));
      pose = glm::translate(pose, glm::vec3(static_cast<float>(size::kTyreWidth / 2.0) - 0.0002F, 0.0F, 0.0F));
      append(mesh, block, glm::rotate(pose, side * 0.45F, glm::vec3(1.0F, 0.0F, 0.0F)));
    }
  }
}

Mesh valve() {
  const double at = rim_hole_rad(size::kSpokes - 1) + kTurn / size::kSpokes / 2.0;
  const double bed_m = size::kBeadSeat / 2.0 + size::kRimHook - size::kRimDepth;
  Mesh stem = revolve({{0.0, -0.034},
                       {0.0016, -0.034},
                       {0.0022, -0.0335},
                       {0.0026, -0.0240},
                       {0.0030, -0.0235},
                       {0.0030, -0.0052},
                       {0.0062, -0.0050},
                       {0.0062, -0.0022},
                       {0.0030, -0.0020},
                       {0.0030, 0.004},
                       {0.0, 0.004}},
                      0.0001);
  glm::mat4 pose = glm::rotate(glm::mat4(1.0F), static_cast<float>(at), glm::vec3(0.0F, 0.0F, 1.0F));
  pose = glm::translate(pose, glm::vec3(static_cast<float>(bed_m), 0.0F, 0.0F));
  Mesh mesh;
  append(mesh, stem, glm::rotate(pose, static_cast<float>(kTurn / 4.0), glm::vec3(0.0F, 1.0F, 0.0F)));
  return mesh;
}

// the size moulded into either wall, where it can be read standing beside the wheel
Mesh print(const Typeface& face) {
  const double radius_m = size::kBeadSeat / 2.0 + 0.62 * size::kTyreWidth;
  const double wall_m = size::kTyreWidth / 2.0 + 0.0001;
  Mesh words;
  append(words, face.round_words("28-622", 0.0042, radius_m - 0.002, kTurn * 0.25, wall_m));
  append(words, face.round_words("450-700 kPa", 0.0042, radius_m - 0.002, kTurn * 0.75, wall_m));
  Mesh mesh = words;
  append(mesh, words, glm::rotate(glm::mat4(1.0F), static_cast<float>(kTurn / 2.0), glm::vec3(0.0F, 1.0F, 0.0F)));
  return mesh;
}

}  // namespace

double tyre_diameter_m(double bead_seat_m, double width_m) { return bead_seat_m + 2.0 * width_m; }

RimMeshes build_rim(const Typeface& face) {
  RimMeshes meshes{rim(), valve(), tyre(), print(face)};
  add_tread(meshes.tyre);
  return meshes;
}

}  // namespace proofstand::scene
