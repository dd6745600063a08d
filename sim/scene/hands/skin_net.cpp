#include "sim/scene/hands/skin_net.h"

#include <array>
#include <cmath>
#include <vector>

namespace proofstand::scene {
namespace {

constexpr int kBlock = 4;  // cells of a block that is looked at as a whole first
constexpr float kFarAway = 1.0F;

struct Grid {
  glm::vec3 from{0.0F};
  float cell_m = 0.0F;
  glm::ivec3 size{0};  // knots each way
  std::vector<float> value;

  [[nodiscard]] std::size_t index(int x, int y, int z) const {
    return (static_cast<std::size_t>(z) * static_cast<std::size_t>(size.y) + static_cast<std::size_t>(y)) *
               static_cast<std::size_t>(size.x) +
           static_cast<std::size_t>(x);
  }
  [[nodiscard]] glm::vec3 point(int x, int y, int z) const {
    return from + cell_m * glm::vec3(static_cast<float>(x), static_cast<float>(y), static_cast<float>(z));
  }
};

// blocks that the surface cannot pass keep a far value with the right sign
void fill(Grid& grid, const DistanceField& field) {
  const float reach_m = 0.5F * static_cast<float>(kBlock) * grid.cell_m * 1.7321F + 2.0F * grid.cell_m;
  const float half = 0.5F * static_cast<float>(kBlock);
  for (int z = 0; z < grid.size.z; z += kBlock) {
    for (int y = 0; y < grid.size.y; y += kBlock) {
      for (int x = 0; x < grid.size.x; x += kBlock) {
        const float middle = field(grid.point(x, y, z) + glm::vec3(half * grid.cell_m));
        const bool near = std::abs(middle) <= reach_m;
        const float far = middle < 0.0F ? -kFarAway : kFarAway;
        for (int k = z; k < std::min(z + kBlock, grid.size.z); ++k) {
          for (int j = y; j < std::min(y + kBlock, grid.size.y); ++j) {
            for (int i = x; i < std::min(x + kBlock, grid.size.x); ++i) {
              grid.value[grid.index(i, j, k)] = near ? field(grid.point(i, j, k)) : far;
            }
          }
        }
      }
    }
  }
}

glm::vec3 slope(const DistanceField& field, const glm::vec3& p) {
  constexpr float kNudge = 0.0006F;
  const glm::vec3 dx(kNudge, 0.0F, 0.0F);
  const glm::vec3 dy(0.0F, kNudge, 0.0F);
  const glm::vec3 dz(0.0F, 0.0F, kNudge);
  const glm::vec3 g(field(p + dx) - field(p - dx), field(p + dy) - field(p - dy), field(p + dz) - field(p - dz));
  const float length = glm::length(g);
  return length > 0.0F ? g / length : glm::vec3(0.0F, 1.0F, 0.0F);
}

struct Net {
  Mesh mesh;
  std::vector<std::int32_t> knot;  // vertex of a cell, or -1
};

// a vertex for every cell that the surface passes
Net knots(const Grid& grid, const DistanceField& field) {
  Net net;
  net.knot.assign(grid.value.size(), -1);
  for (int z = 0; z + 1 < grid.size.z; ++z) {
    for (int y = 0; y + 1 < grid.size.y; ++y) {
      for (int x = 0; x + 1 < grid.size.x; ++x) {
        int inside = 0;
        for (int corner = 0; corner < 8; ++corner) {
          if (grid.value[grid.index(x + (corner & 1), y + ((corner >> 1) & 1), z + (corner >> 2))] < 0.0F) ++inside;
        }
        if (inside == 0 || inside == 8) continue;
        const glm::vec3 middle = grid.point(x, y, z) + glm::vec3(0.5F * grid.cell_m);
        glm::vec3 p = middle;
        for (int round = 0; round < 2; ++round) p -= field(p) * slope(field, p);
        // a knot that would leave its cell far behind makes folds
        p = glm::clamp(p, middle - glm::vec3(0.9F * grid.cell_m), middle + glm::vec3(0.9F * grid.cell_m));
        net.knot[grid.index(x, y, z)] = static_cast<std::int32_t>(net.mesh.vertices.size());
        net.mesh.vertices.push_back({p, slope(field, p), glm::vec2(0.0F)});
      }
    }
  }
  return net;
}

void add_quad(Mesh& mesh, const std::array<std::int32_t, 4>& corners, bool turned) {
  for (const std::int32_t c : corners) {
    if (c < 0) return;
  }
  const auto add = [&mesh, &corners, turned](int a, int b, int c) {
    const std::array<int, 3> order = turned ? std::array<int, 3>{a, c, b} : std::array<int, 3>{a, b, c};
    for (const int i : order) mesh.indices.push_back(static_cast<std::uint32_t>(corners[static_cast<std::size_t>(i)]));
  };
  add(0, 1, 2);
  add(0, 2, 3);
}

// a quad round every edge of the grid that the surface crosses
void join(Net& net, const Grid& grid) {
  for (int z = 1; z + 1 < grid.size.z; ++z) {
    for (int y = 1; y + 1 < grid.size.y; ++y) {
      for (int x = 1; x + 1 < grid.size.x; ++x) {
        const bool here = grid.value[grid.index(x, y, z)] < 0.0F;
        const auto at = [&net, &grid](int i, int j, int k) { return net.knot[grid.index(i, j, k)]; };
        if (here != (grid.value[grid.index(x + 1, y, z)] < 0.0F)) {
          add_quad(net.mesh, {at(x, y - 1, z - 1), at(x, y, z - 1), at(x, y, z), at(x, y - 1, z)}, !here);
        }
        if (here != (grid.value[grid.index(x, y + 1, z)] < 0.0F)) {
          add_quad(net.mesh, {at(x - 1, y, z - 1), at(x - 1, y, z), at(x, y, z), at(x, y, z - 1)}, !here);
        }
        if (here != (grid.value[grid.index(x, y, z + 1)] < 0.0F)) {
          add_quad(net.mesh, {at(x - 1, y - 1, z), at(x, y - 1, z), at(x, y, z), at(x - 1, y, z)}, !here);
        }
      }
    }
  }
}

}  // namespace

Mesh skin_over(const DistanceField& field, const glm::vec3& from, const glm::vec3& to, float cell_m) {
  Grid grid;
  grid.from = from - glm::vec3(2.0F * cell_m);
  grid.cell_m = cell_m;
  const glm::vec3 span = (to - from) / cell_m;
  grid.size = glm::ivec3(glm::ceil(span)) + glm::ivec3(5);
  grid.value.resize(static_cast<std::size_t>(grid.size.x) * static_cast<std::size_t>(grid.size.y) *
                    static_cast<std::size_t>(grid.size.z));
  fill(grid, field);
  Net net = knots(grid, field);
  join(net, grid);
  return net.mesh;
}

}  // namespace proofstand::scene
