#include "sim/scene/parts/spokes.h"

#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/dimensions.h"
#include "sim/scene/outline.h"
#include "sim/scene/revolve.h"
#include "sim/scene/sweep.h"

namespace proofstand::scene {
namespace {

constexpr double kTurn = glm::two_pi<double>();
constexpr double kStagger_m = 0.0025;
constexpr int kSides = 8;  // the fewest that still shade round

glm::vec3 polar(double radius_m, double angle_rad, double z_m) {
  return {radius_m * std::cos(angle_rad), radius_m * std::sin(angle_rad), z_m};
}

Loop round_section(double radius_m) {
  Loop section;
  for (int i = 0; i < kSides; ++i) {
    section.emplace_back(radius_m * std::cos(kTurn * i / kSides), radius_m * std::sin(kTurn * i / kSides));
  }
  return section;
}

struct Spoke {
  glm::vec3 hole{0.0F};
  glm::vec3 rim{0.0F};
  float out = 1.0F;  ///< +1: its head sits inside the flange and it leaves on the outside
};

Spoke spoke_of(bool disc_side, int j) {
  const double side = disc_side ? -1.0 : 1.0;
  const double flange_m = disc_side ? size::kFlangeDisc : size::kFlangeOther;
  const double circle_m = disc_side ? size::kFlangeCircleDisc : size::kFlangeCircleOther;
  const int i = rim_hole(disc_side, j);
  Spoke spoke;
  spoke.hole = polar(circle_m / 2.0, flange_hole_rad(disc_side, j), side * flange_m);
  spoke.rim = polar(size::kNippleSeat / 2.0, rim_hole_rad(i), side * kStagger_m);
  spoke.out = j % 2 == 0 ? -1.0F : 1.0F;
  return spoke;
}

void add_spoke(SpokeMeshes& meshes, bool disc_side, int j) {
  const Spoke spoke = spoke_of(disc_side, j);
  const glm::vec3 outwards(0.0F, 0.0F, disc_side ? -1.0F : 1.0F);
  const float off = static_cast<float>(size::kFlangeThick / 2.0 + size::kSpoke / 2.0);
  const glm::vec3 elbow = spoke.hole + outwards * (spoke.out * off);
  const glm::vec3 run = glm::normalize(spoke.rim - elbow);
  const glm::vec3 behind = spoke.hole - outwards * (spoke.out * off * 0.5F);
  // at the outermost crossing the leading spoke is bent to pass outside of the trailing one
  const glm::vec3 crossing = glm::mix(elbow, spoke.rim, 0.30F) + outwards * (spoke.out * 0.0004F);
  std::vector<glm::vec3> path = bent_path({behind, elbow, elbow + run * 0.006F}, 0.0016F, 3);
  path.push_back(crossing);
  path.push_back(spoke.rim);
  append(meshes.spokes, sweep(round_section(size::kSpoke / 2.0), path, {0.0F, 1.0F, 0.0F}));
  // the head lies flat against the flange, on the side that the spoke does not leave by
  const glm::vec3 face = spoke.hole - outwards * (spoke.out * static_cast<float>(size::kFlangeThick / 2.0));
  glm::mat4 head = glm::translate(glm::mat4(1.0F), face);
  if ((outwards * spoke.out).z > 0.0F) head = glm::rotate(head, glm::pi<float>(), glm::vec3(0.0F, 1.0F, 0.0F));
  append(meshes.spokes, bar(size::kSpokeHead / 2.0, -0.0002, 0.0011, 0.0006, 0.001), head);
  // a nipple reaches out of the rim towards the hub
  const glm::vec3 in = glm::normalize(crossing - spoke.rim);
  const std::vector<glm::vec3> nipple = {spoke.rim - in * 0.002F, spoke.rim + in * 0.006F, spoke.rim + in * 0.0066F,
                                         spoke.rim + in * 0.0105F};
  append(meshes.nipples,
         sweep(round_section(size::kNippleShank / 2.0), nipple, {0.0F, 1.0F, 0.0F}, {1.0F, 1.0F, 0.86F, 0.80F}));
}

}  // namespace

double spoke_length_m(double rim_m, double flange_circle_m, double flange_m, int spokes, int crossings, double hole_m) {
  const double big = rim_m / 2.0;
  const double small = flange_circle_m / 2.0;
  const double angle = kTurn * crossings / (spokes / 2.0);
  return std::sqrt(big * big + small * small + flange_m * flange_m - 2.0 * big * small * std::cos(angle)) -
         hole_m / 2.0;
}

double flange_hole_rad(bool disc_side, int j, int spokes) {
  const double pitch = kTurn / (spokes / 2.0);
  return pitch * (disc_side ? j : j + 0.5);
}

double rim_hole_rad(int i, int spokes) { return kTurn * i / spokes; }

int rim_hole(bool disc_side, int j, int spokes, int crossings) {
  const int shifted = j % 2 == 0 ? j + crossings : j - crossings;
  const int i = 2 * shifted + (disc_side ? 0 : 1);
  return (i % spokes + spokes) % spokes;
}

SpokeMeshes build_spokes() {
  SpokeMeshes meshes;
  for (int j = 0; j < size::kSpokes / 2; ++j) {
    add_spoke(meshes, true, j);
    add_spoke(meshes, false, j);
  }
  return meshes;
}

}  // namespace proofstand::scene
