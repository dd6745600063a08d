#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/furniture/furniture.h"
#include "sim/scene/layout.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"

namespace proofstand::scene {
namespace {

constexpr float kThick_m = 0.040F;
constexpr int kPlanks = 5;

glm::mat4 at(float x, float y, float z) { return glm::translate(glm::mat4(1.0F), {x, y, z}); }

}  // namespace

// planks along the bench, a hair of shadow between them, each of its own piece of wood
PartItems build_bench(MeshStore& store, const bench::BenchSetup& setup) {
  PartItems parts;
  const event::ThingId thing = bench::first_of(setup, bench::ThingKind::Bench);
  const float length = kBenchLeft_x - kBenchRight_x;
  const float depth = kBenchFar_z - kBenchNear_z;
  const float middle_x = 0.5F * (kBenchLeft_x + kBenchRight_x);
  const float plank = depth / kPlanks;
  const glm::mat4 frame = level_frame({middle_x, kBenchTop_y, 0.5F * (kBenchNear_z + kBenchFar_z)});
  const glm::vec3 clear(-0.20F, kBenchTop_y, -0.30F);  // where nothing lies
  for (int i = 0; i < kPlanks; ++i) {
    Material board = wood();
    const float shade = 0.94F + 0.035F * static_cast<float>((i * 3) % 5);
    board.color = glm::vec3(0.50F, 0.355F, 0.215F) * shade;
    board.roughness_1 = 0.50F;
    const float z = kBenchNear_z + (static_cast<float>(i) + 0.5F) * plank;
    parts.push_back(placed_item(store, rounded_box({length, kThick_m, plank - 0.0008F}, 0.0022F, 2),
                                at(middle_x, kBenchTop_y - 0.5F * kThick_m, z), board, thing,
                                event::PlaceKind::BenchTop, frame, clear));
  }
  const Material steel = paint({0.31F, 0.34F, 0.33F});
  const float legs_y = kFloor_y + 0.5F * (kBenchTop_y - kThick_m - kFloor_y);
  const float tall = kBenchTop_y - kThick_m - kFloor_y;
  for (const float x : {kBenchRight_x + 0.10F, kBenchLeft_x - 0.10F}) {
    for (const float z : {kBenchNear_z + 0.09F, kBenchFar_z - 0.09F}) {
      parts.push_back(plain_item(store, rounded_box({0.055F, tall, 0.055F}, 0.004F, 1), at(x, legs_y, z), steel));
    }
    parts.push_back(plain_item(store, rounded_box({0.050F, 0.060F, depth - 0.20F}, 0.004F, 1),
                               at(x, kBenchTop_y - kThick_m - 0.035F, 0.5F * (kBenchNear_z + kBenchFar_z)), steel));
  }
  for (const float z : {kBenchNear_z + 0.09F, kBenchFar_z - 0.09F}) {
    parts.push_back(plain_item(store, rounded_box({length - 0.22F, 0.070F, 0.045F}, 0.004F, 1),
                               at(middle_x, kBenchTop_y - kThick_m - 0.036F, z), steel));
  }
  // a low board to put things on
  Material board = wood();
  board.color = glm::vec3(0.44F, 0.315F, 0.20F);
  parts.push_back(plain_item(store, rounded_box({length - 0.16F, 0.022F, depth - 0.16F}, 0.003F, 1),
                             at(middle_x, kFloor_y + 0.20F, 0.5F * (kBenchNear_z + kBenchFar_z)), board));
  return parts;
}

// an enamelled tray with a rolled rim and two dividing walls
PartItems build_tray(MeshStore& store, const bench::BenchSetup& setup) {
  PartItems parts;
  const event::ThingId thing = bench::first_of(setup, bench::ThingKind::Tray);
  const glm::mat4 frame = level_frame(kTrayMiddle);
  Material enamel = paint({0.64F, 0.66F, 0.62F});
  enamel.roughness_1 = 0.32F;
  const float wide = kTraySize.x;
  const float deep = kTraySize.y;
  const auto add = [&](const glm::vec3& size, const glm::vec3& by, float radius) {
    parts.push_back(placed_item(store, rounded_box(size, radius, 1),
                                at(kTrayMiddle.x + by.x, kTrayMiddle.y + by.y, kTrayMiddle.z + by.z), enamel, thing,
                                event::PlaceKind::Tray, frame, kTrayMiddle));
  };
  add({wide + 0.006F, 0.003F, deep + 0.006F}, {0.0F, -0.0015F, 0.0F}, 0.0012F);
  constexpr float kWall = 0.0035F;
  for (const float side : {-1.0F, 1.0F}) {
    add({kWall, kTrayRim_m, deep + 2.0F * kWall}, {side * 0.5F * (wide + kWall), 0.5F * kTrayRim_m - 0.001F, 0.0F},
        0.0016F);
    add({wide + 2.0F * kWall, kTrayRim_m, kWall}, {0.0F, 0.5F * kTrayRim_m - 0.001F, side * 0.5F * (deep + kWall)},
        0.0016F);
    add({0.009F, 0.005F, deep + 0.018F}, {side * 0.5F * (wide + 0.009F), kTrayRim_m - 0.002F, 0.0F}, 0.0024F);
    add({wide + 0.018F, 0.005F, 0.009F}, {0.0F, kTrayRim_m - 0.002F, side * 0.5F * (deep + 0.009F)}, 0.0024F);
  }
  add({0.003F, 0.6F * kTrayRim_m, deep}, {-0.085F, 0.3F * kTrayRim_m, 0.0F}, 0.0013F);
  return parts;
}

}  // namespace proofstand::scene
