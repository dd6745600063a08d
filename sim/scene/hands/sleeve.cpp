#include "sim/scene/hands/sleeve.h"

#include <cmath>
#include <vector>

#include "sim/scene/mesh_normals.h"

namespace proofstand::scene {
namespace {

constexpr int kRound = 26;
constexpr float kTwoPi = 6.2831853F;

struct Ring {
  float x_m;
  float tall_m;  // half heights
  float broad_m;
  float fold_m;  // how far the folds go
};

// rings from the hand backwards; open at the wrist, its edge turned in, closed far behind
Mesh lofted(const std::vector<Ring>& rings) {
  Mesh mesh;
  for (std::size_t r = 0; r < rings.size(); ++r) {
    const Ring& ring = rings[r];
    for (int i = 0; i < kRound; ++i) {
      const float angle = kTwoPi * static_cast<float>(i) / kRound;
      const float along = 900.0F * ring.x_m;
      const float fold = ring.fold_m * (std::sin(2.0F * angle + 0.040F * along) * std::sin(0.11F * along) +
                                        0.5F * std::sin(3.0F * angle - 0.07F * along + 1.0F));
      const float sag = -0.10F * (ring.x_m + 0.06F) * (ring.x_m + 0.06F);
      mesh.vertices.push_back(
          {{ring.x_m, (ring.tall_m + fold) * std::sin(angle) + sag, (ring.broad_m + fold) * std::cos(angle)}, {}, {}});
    }
  }
  for (std::uint32_t r = 0; r + 1 < rings.size(); ++r) {
    for (std::uint32_t i = 0; i < kRound; ++i) {
      const std::uint32_t a = r * kRound + i;
      const std::uint32_t b = r * kRound + (i + 1) % kRound;
      mesh.indices.insert(mesh.indices.end(), {a, b, b + kRound, a, b + kRound, a + kRound});
    }
  }
  return with_normals(mesh, 1.2F);
}

}  // namespace

Mesh sleeve_mesh() {
  std::vector<Ring> rings;
  constexpr int kRings = 20;
  for (int i = 0; i <= kRings; ++i) {
    const float t = static_cast<float>(i) / kRings;
    const float x = -0.078F - 0.270F * t;
    const float swell = 0.030F + 0.019F * t;
    rings.push_back({x, swell, swell + 0.006F, 0.0026F * std::min(1.0F, 6.0F * t)});
  }
  rings.push_back({-0.354F, 0.045F, 0.051F, 0.001F});
  rings.push_back({-0.3585F, 0.031F, 0.036F, 0.0F});
  rings.push_back({-0.3600F, 0.0001F, 0.0001F, 0.0F});
  return lofted(rings);
}

Mesh cuff_mesh() {
  return lofted({{-0.062F, 0.0240F, 0.0300F, 0.0F},
                 {-0.0555F, 0.0265F, 0.0325F, 0.0F},
                 {-0.0540F, 0.0285F, 0.0345F, 0.0F},
                 {-0.0550F, 0.0305F, 0.0365F, 0.0F},
                 {-0.0590F, 0.0318F, 0.0376F, 0.0003F},
                 {-0.0680F, 0.0320F, 0.0378F, 0.0005F},
                 {-0.0790F, 0.0322F, 0.0380F, 0.0003F},
                 {-0.0830F, 0.0314F, 0.0372F, 0.0F},
                 {-0.0838F, 0.0290F, 0.0350F, 0.0F}});
}

}  // namespace proofstand::scene
