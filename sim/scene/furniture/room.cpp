#include <array>
#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/furniture/furniture.h"
#include "sim/scene/layout.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"
#include "sim/scene/sweep.h"

namespace proofstand::scene {
namespace {

constexpr double kSag_m = 0.0004;

glm::mat4 at(float x, float y, float z) { return glm::translate(glm::mat4(1.0F), {x, y, z}); }

// stands a lathe part up: its z becomes the world's y
glm::mat4 upright_at(float x, float y, float z) {
  return at(x, y, z) * glm::rotate(glm::mat4(1.0F), -1.5707963F, glm::vec3(1.0F, 0.0F, 0.0F));
}

void add_shelf(MeshStore& store, PartItems& parts, float x, float y, float length) {
  Material board = wood();
  board.color = {0.56F, 0.43F, 0.28F};
  parts.push_back(
      plain_item(store, rounded_box({length, 0.024F, 0.22F}, 0.003F, 1), at(x, y, kWall_z - 0.115F), board));
  Mesh brackets;
  for (const float side : {-0.38F, 0.38F}) {
    append(brackets, rounded_box({0.022F, 0.12F, 0.016F}, 0.002F, 1),
           at(x + side * length, y - 0.07F, kWall_z - 0.010F));
    append(brackets, rounded_box({0.022F, 0.014F, 0.17F}, 0.002F, 1),
           at(x + side * length, y - 0.019F, kWall_z - 0.095F));
  }
  parts.push_back(plain_item(store, std::move(brackets), glm::mat4(1.0F), paint({0.31F, 0.34F, 0.33F})));
}

// boxes, tins and jars, in the room's own quiet colours
void add_stores(MeshStore& store, PartItems& parts, float x, float y) {
  struct Box {
    float by, width, height;
    glm::vec3 color;
  };
  const std::array<Box, 6> boxes = {{{-0.42F, 0.13F, 0.14F, {0.60F, 0.52F, 0.40F}},
                                     {-0.27F, 0.11F, 0.10F, {0.42F, 0.48F, 0.42F}},
                                     {-0.13F, 0.13F, 0.17F, {0.66F, 0.60F, 0.50F}},
                                     {0.03F, 0.10F, 0.12F, {0.36F, 0.42F, 0.46F}},
                                     {0.29F, 0.15F, 0.13F, {0.58F, 0.50F, 0.38F}},
                                     {0.44F, 0.09F, 0.18F, {0.46F, 0.50F, 0.42F}}}};
  for (const Box& box : boxes) {
    parts.push_back(plain_item(store, rounded_box({box.width, box.height, 0.15F}, 0.003F, 1),
                               at(x + box.by, y + 0.5F * box.height, kWall_z - 0.12F), paint(box.color)));
  }
  const Mesh jar = revolve(
      {{0.0, 0.0}, {0.036, 0.0}, {0.040, 0.004}, {0.040, 0.075}, {0.034, 0.088}, {0.034, 0.104}, {0.0, 0.104}}, kSag_m);
  parts.push_back(plain_item(store, jar, upright_at(x + 0.145F, y, kWall_z - 0.12F), plastic({0.70F, 0.68F, 0.60F})));
}

}  // namespace

PartItems build_room(MeshStore& store) {
  PartItems parts;
  // floor: a disc that ends where the picture's own ground takes over
  Material floor = wall();
  floor.color = {0.56F, 0.545F, 0.515F};
  floor.roughness_1 = 0.72F;
  Mesh disc;
  const Mesh lathe = bar(2.6, -0.02, 0.0, 0.004, 0.02);
  append(disc, lathe, upright_at(0.0F, kFloor_y, 0.1F));
  parts.push_back(plain_item(store, std::move(disc), glm::mat4(1.0F), floor));
  Material plaster = wall();
  plaster.color = {0.80F, 0.775F, 0.725F};
  parts.push_back(plain_item(store, rounded_box({5.2F, 2.75F, 0.05F}, 0.004F, 1),
                             at(-0.2F, kFloor_y + 1.375F, kWall_z + 0.025F), plaster));
  // a painted lower half, finished by a rail, as in many old workshops
  Material dado = wall();
  dado.color = {0.50F, 0.545F, 0.495F};
  dado.roughness_1 = 0.6F;
  parts.push_back(plain_item(store, rounded_box({5.2F, 1.22F, 0.012F}, 0.002F, 1),
                             at(-0.2F, kFloor_y + 0.61F, kWall_z - 0.004F), dado));
  Material rail = wood();
  rail.color = {0.52F, 0.40F, 0.26F};
  parts.push_back(plain_item(store, rounded_box({5.2F, 0.045F, 0.024F}, 0.004F, 1),
                             at(-0.2F, kFloor_y + 1.235F, kWall_z - 0.010F), rail));
  add_shelf(store, parts, 0.42F, 0.50F, 1.20F);
  add_stores(store, parts, 0.42F, 0.512F);
  add_shelf(store, parts, -0.95F, 0.66F, 0.80F);
  // a rail of hooks with a spare tyre and a coil of housing
  Mesh hooks;
  for (int i = 0; i < 6; ++i) {
    const float x = -1.25F + 0.12F * static_cast<float>(i);
    append(hooks, tube(smooth_path({{x, 0.43F, kWall_z - 0.012F},
                                    {x, 0.40F, kWall_z - 0.016F},
                                    {x, 0.385F, kWall_z - 0.035F},
                                    {x, 0.40F, kWall_z - 0.055F}},
                                   4),
                       0.004F, 8));
  }
  parts.push_back(plain_item(store, std::move(hooks), glm::mat4(1.0F), stainless()));
  parts.push_back(
      plain_item(store, rounded_box({0.78F, 0.050F, 0.018F}, 0.003F, 1), at(-0.95F, 0.425F, kWall_z - 0.012F), rail));
  const auto ring = [](double radius, double thick) {
    Mesh mesh = revolve_ring(
        {{radius - thick, 0.0}, {radius, -0.7 * thick}, {radius + thick, 0.0}, {radius, 0.7 * thick}}, 0.001);
    return mesh;
  };
  parts.push_back(plain_item(store, ring(0.31, 0.014), at(0.98F, -0.03F, kWall_z - 0.035F), rubber()));
  parts.push_back(
      plain_item(store, ring(0.085, 0.005), at(-0.89F, 0.31F, kWall_z - 0.045F), plastic({0.10F, 0.10F, 0.10F})));
  // what is on the wall lies close to it; hard shadows there would only distract
  for (PartItem& part : parts) part.item.shadow = false;
  return parts;
}

}  // namespace proofstand::scene
