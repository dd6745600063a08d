#include "sim/scene/tools/rags.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/bench/surface.h"
#include "sim/bench/wiping.h"
#include "sim/scene/mesh_normals.h"

namespace proofstand::scene {
namespace {

constexpr float kSide_m = 0.100F;  // a fold is about ten centimetres square
constexpr int kSteps = 9;

// one layer of a folded cloth: soft rim, shallow waves, edges that are nowhere quite straight
Mesh layer(float width_m, float depth_m, float from_m, float to_m, float phase) {
  Mesh mesh;
  const float thick = to_m - from_m;
  const auto point = [&](float u, float v, bool top) {
    const float side = std::max(std::abs(u), std::abs(v));
    const float rim = std::pow(side, 10.0F);
    const float wave =
        0.30F * thick * (std::sin(4.3F * u + 2.6F * v + phase) + std::sin(5.9F * v - 3.1F * u + 2.0F * phase));
    const float round = std::sqrt(std::max(0.0F, 1.0F - 0.96F * rim));
    const float half = 0.5F * thick * round;
    const float z = from_m + 0.5F * thick + (top ? half : -half) + wave * (from_m > 0.0F ? 1.0F : top ? 1.0F : 0.0F);
    // corners are blunt, edges wander
    const float blunt = 1.0F - 0.035F * std::pow(std::abs(u * v), 4.0F);
    const float x = 0.5F * width_m * u * blunt * (1.0F + 0.014F * std::sin(5.0F * v + phase));
    const float y = 0.5F * depth_m * v * blunt * (1.0F + 0.016F * std::sin(4.0F * u + 1.7F * phase));
    return glm::vec3(x, y, z);
  };
  for (const bool top : {true, false}) {
    const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
    for (int j = 0; j <= kSteps; ++j) {
      for (int i = 0; i <= kSteps; ++i) {
        // closer together towards the rim, where it is round
        const auto spaced = [](int k) { return std::sin(1.5707963F * (2.0F * static_cast<float>(k) / kSteps - 1.0F)); };
        mesh.vertices.push_back({point(spaced(i), spaced(j), top), {}, {}});
      }
    }
    for (std::uint32_t j = 0; j < kSteps; ++j) {
      for (std::uint32_t i = 0; i < kSteps; ++i) {
        const std::uint32_t a = first + j * (kSteps + 1) + i;
        const std::uint32_t b = a + kSteps + 1;
        if (top) {
          mesh.indices.insert(mesh.indices.end(), {a, a + 1, b + 1, a, b + 1, b});
        } else {
          mesh.indices.insert(mesh.indices.end(), {a, b + 1, a + 1, a, b, b + 1});
        }
      }
    }
  }
  constexpr auto kLayer = static_cast<std::uint32_t>((kSteps + 1) * (kSteps + 1));
  const auto at = [](int i, int j) { return static_cast<std::uint32_t>(j * (kSteps + 1) + i); };
  const auto wall = [&mesh](std::uint32_t a, std::uint32_t b) {
    mesh.indices.insert(mesh.indices.end(), {a + kLayer, b + kLayer, b, a + kLayer, b, a});
  };
  for (int i = 0; i < kSteps; ++i) {
    wall(at(i, 0), at(i + 1, 0));
    wall(at(i + 1, kSteps), at(i, kSteps));
    wall(at(kSteps, i), at(kSteps, i + 1));
    wall(at(0, i + 1), at(0, i));
  }
  return with_normals(mesh, 1.2F);
}

// a cloth folded a few times: layers that lie a little askew on each other
Mesh pad(float width_m, float depth_m, float thick_m, int layers) {
  Mesh mesh;
  for (int i = 0; i < layers; ++i) {
    const auto n = static_cast<float>(i);
    const float step = thick_m / static_cast<float>(layers);
    const float less = 1.0F - 0.018F * static_cast<float>((i * 2) % 3);
    const Mesh one = layer(width_m * less, depth_m * less, step * n, step * (n + 1.12F), 0.9F + 1.3F * n);
    glm::mat4 pose =
        glm::translate(glm::mat4(1.0F), {0.0016F * std::sin(2.1F * n), 0.0014F * std::cos(1.7F * n), 0.0F});
    pose = glm::rotate(pose, 0.022F * std::sin(3.7F * n), glm::vec3(0.0F, 0.0F, 1.0F));
    append(mesh, one, pose);
  }
  return mesh;
}

// a cloth laid over an edge: two flaps a few millimetres apart, joined by the fold at +y
Mesh draped(float width_m, float long_m, float gap_m, float thick_m) {
  constexpr int kAlong = 22;
  constexpr int kAcross = 12;
  Mesh mesh;
  const float bend = 0.5F * gap_m + thick_m;
  const float path = 2.0F * long_m + 3.1415927F * bend;
  for (int layer = 0; layer < 2; ++layer) {
    const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
    const float r = layer == 0 ? bend : bend - thick_m;
    for (int j = 0; j <= kAlong; ++j) {
      const float s = path * static_cast<float>(j) / kAlong;
      for (int i = 0; i <= kAcross; ++i) {
        const float u = 2.0F * static_cast<float>(i) / kAcross - 1.0F;
        glm::vec3 p(0.5F * width_m * u, 0.0F, 0.0F);
        float flare = 0.0F;
        if (s < long_m) {
          p.y = s - long_m;
          p.z = -r;
          flare = (long_m - s) / long_m;
        } else if (s > path - long_m) {
          p.y = path - long_m - s;
          p.z = r;
          flare = (s - path + long_m) / long_m;
        } else {
          const float angle = (s - long_m) / bend;
          p.y = r * std::sin(angle);
          p.z = -r * std::cos(angle);
        }
        // its free ends hang away a little and wave
        const float out = p.z < 0.0F ? -1.0F : 1.0F;
        p.z += out * flare * flare * (0.0045F + 0.0035F * std::sin(6.0F * u + out));
        p.x *= 1.0F + 0.12F * flare * flare;
        p.y -= 0.004F * flare * std::sin(3.0F * u + 1.2F * out);
        mesh.vertices.push_back({p, {}, {}});
      }
    }
    for (std::uint32_t j = 0; j < kAlong; ++j) {
      for (std::uint32_t i = 0; i < kAcross; ++i) {
        const std::uint32_t a = first + j * (kAcross + 1) + i;
        const std::uint32_t b = a + kAcross + 1;
        if (layer == 1) {
          mesh.indices.insert(mesh.indices.end(), {a, a + 1, b + 1, a, b + 1, b});
        } else {
          mesh.indices.insert(mesh.indices.end(), {a, b + 1, a + 1, a, b, b + 1});
        }
      }
    }
  }
  return with_normals(mesh, 1.2F);
}

// an uneven blot of flat triangles in the plane z = 0
Mesh blot(float radius_m, float phase, float stretch) {
  constexpr int kRound = 40;
  Mesh mesh;
  mesh.vertices.push_back({{0.0F, 0.0F, 0.0F}, {0.0F, 0.0F, 1.0F}, {}});
  for (int i = 0; i < kRound; ++i) {
    const float angle = 6.2831853F * static_cast<float>(i) / kRound;
    const float r = radius_m * (1.0F + 0.16F * std::sin(3.0F * angle + phase) +
                                0.09F * std::sin(7.0F * angle + 2.0F * phase) + 0.05F * std::sin(13.0F * angle));
    mesh.vertices.push_back({{stretch * r * std::cos(angle), r * std::sin(angle), 0.0F}, {0.0F, 0.0F, 1.0F}, {}});
  }
  for (std::uint32_t i = 0; i < kRound; ++i) {
    mesh.indices.insert(mesh.indices.end(), {0U, 1U + i, 1U + (i + 1U) % kRound});
  }
  return mesh;
}

Mesh raised(Mesh mesh, float z_m) {
  for (Vertex& v : mesh.vertices) v.position.z += z_m;
  return mesh;
}

}  // namespace

RagMeshes build_rags(MeshStore& store) {
  constexpr float kThick_m = 0.013F;
  constexpr float kGap_m = 0.0030F;
  constexpr float kCloth_m = 0.0022F;
  RagMeshes meshes;
  meshes.folded = store.keep(pad(kSide_m, 0.9F * kSide_m, kThick_m, 4));
  meshes.flat = store.keep(pad(1.05F * kSide_m, 0.95F * kSide_m, 0.0056F, 2));
  meshes.pinched = store.keep(draped(0.085F, 0.050F, kGap_m, kCloth_m));
  for (std::size_t i = 0; i < 4; ++i) {
    const float size = 0.008F + 0.0085F * static_cast<float>(i);
    Mesh stain = raised(blot(size, 0.7F * static_cast<float>(i), 1.25F), kThick_m + 0.0024F);
    if (i > 1) {
      Mesh second = raised(blot(0.45F * size, 2.1F, 0.8F), kThick_m + 0.0024F);
      append(stain, second, glm::translate(glm::mat4(1.0F), glm::vec3(-0.026F, 0.014F, 0.0F)));
    }
    meshes.stains[i] = store.keep(stain);
    Mesh hem;
    for (int k = 0; k <= static_cast<int>(i); ++k) {
      const float x = 0.014F * static_cast<float>(k) - 0.007F * static_cast<float>(i);
      const float z = 0.5F * kGap_m + kCloth_m + 0.0004F;
      append(hem, blot(0.006F + 0.0012F * static_cast<float>(i), static_cast<float>(k), 1.1F),
             glm::translate(glm::mat4(1.0F), glm::vec3(x, -0.012F, z)));
    }
    meshes.pinched_stains[i] = store.keep(hem);
  }
  return meshes;
}

RagLook rag_look(const bench::Bench& bench, std::size_t rag) {
  const bench::FilmCell& fold = bench.state().rags[rag].fold;
  const double dirt =
      bench::fouling_kg_m2(fold.load_kg_m2) + fold.load_kg_m2[static_cast<std::size_t>(bench::Film::Dust)];
  RagLook look;
  // black at twice the load from which a fold counts as dirty
  look.black_1 = static_cast<float>(std::clamp(dirt / (2.0 * bench::kDirtyFold_kg_m2), 0.0, 1.0));
  const double wet = bench::wet_alcohol_kg_m2(fold, bench.state().tick, bench::kRagSlowness_1);
  look.wet_1 = static_cast<float>(std::clamp(wet / (4.0 * bench::kWetFold_kg_m2), 0.0, 1.0));
  return look;
}

Material rag_material(const RagLook& look) {
  const glm::vec3 clean(0.60F, 0.64F, 0.66F);
  const glm::vec3 soiled(0.25F, 0.25F, 0.25F);
  // wet cloth is darker
  Material material = cloth(glm::mix(clean, soiled, 0.55F * look.black_1) * (1.0F - 0.38F * look.wet_1));
  material.roughness_1 = 0.92F - 0.25F * look.wet_1;
  return material;
}

int stain_of(const RagLook& look) {
  if (look.black_1 < 0.03F) return -1;
  return std::min(3, static_cast<int>(look.black_1 * 4.0F));
}

}  // namespace proofstand::scene
