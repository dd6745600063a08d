#include "sim/scene/layout.h"

#include <glm/gtc/matrix_transform.hpp>

namespace proofstand::scene {
namespace {

using bench::ThingKind;

constexpr float kTop = kBenchTop_y;

// how many of its kind come before it
std::size_t count_before(const bench::BenchSetup& setup, event::ThingId thing) {
  const std::size_t index = event::index_of(thing);
  std::size_t before = 0;
  for (std::size_t i = 0; i < index; ++i) {
    if (setup.things[i].kind == setup.things[index].kind) ++before;
  }
  return before;
}

// bolts lie in the tray's two long compartments, six a row, none quite like the next
Spot bolt_spot(std::size_t number) {
  const std::size_t row = number / 6;
  const auto column = static_cast<float>(number % 6);
  const float x = kTrayMiddle.x + 0.115F - 0.030F * column;
  const float z = kTrayMiddle.z - 0.075F + 0.050F * static_cast<float>(row);
  const float turn = 0.5F * static_cast<float>((number * 7) % 5) - 1.0F;
  return {{x, kTrayMiddle.y, z}, turn};
}

Spot bottle_spot(std::size_t number) {
  const auto n = static_cast<float>(number);
  return {{-0.40F - 0.075F * n, kTop, -0.10F + 0.035F * n}, 0.05F * n};
}

Spot rag_spot(std::size_t number) {
  return {{-0.34F - 0.16F * static_cast<float>(number), kTop, -0.37F}, 0.12F - 0.3F * static_cast<float>(number)};
}

}  // namespace

glm::mat4 Spot::frame() const {
  return glm::rotate(glm::translate(glm::mat4(1.0F), at), turn_rad, glm::vec3(0.0F, 1.0F, 0.0F));
}

Spot spot_of(const bench::BenchSetup& setup, event::ThingId thing) {
  const std::size_t number = count_before(setup, thing);
  const auto n = static_cast<float>(number);
  switch (setup.things[event::index_of(thing)].kind) {
    case ThingKind::Bolt:
      return bolt_spot(number);
    case ThingKind::Rotor:
      return rotor_spot(setup, thing);
    case ThingKind::LKey:
      return {{0.20F, kTop, -0.170F - 0.03F * n}, 0.05F};
    case ThingKind::Driver:
      return {{0.17F, kTop, -0.232F - 0.03F * n}, -0.03F};
    case ThingKind::ClickDriver:
      return {{0.17F, kTop, -0.345F - 0.04F * n}, 0.04F};
    case ThingKind::Pick:
      return {{0.19F, kTop, -0.438F - 0.02F * n}, 0.02F};
    case ThingKind::Micrometer:
      return {{-0.06F, kTop, -0.22F - 0.07F * n}, 0.10F};
    case ThingKind::Vernier:
      return {{-0.07F, kTop, -0.315F - 0.05F * n}, -0.04F};
    case ThingKind::DialGauge:
      return {{-0.42F, kTop, 0.065F - 0.08F * n}, 0.0F};
    case ThingKind::Lamp:
      return {{-0.07F, kTop, -0.40F - 0.05F * n}, 0.03F};
    case ThingKind::Bottle:
      return bottle_spot(number);
    case ThingKind::Rag:
      return rag_spot(number);
    case ThingKind::Gloves:
      return {{-0.50F, kTop, 0.150F}, -0.15F};
    case ThingKind::Card:
      return card_spot();
    case ThingKind::Sheet:
      return sheet_spot();
    case ThingKind::Tray:
      return {kTrayMiddle, 0.0F};
    default:
      return {{0.0F, kTop, 0.0F}, 0.0F};
  }
}

Spot rotor_spot(const bench::BenchSetup& setup, event::ThingId rotor) {
  const auto n = static_cast<float>(count_before(setup, rotor));
  return {{0.67F - 0.185F * n, kTop, -0.055F}, 0.4F + 0.7F * n};
}

Spot card_spot() { return {{0.42F, kTop, 0.165F}, 0.0F}; }
Spot sheet_spot() { return {{0.17F, kTop, 0.175F}, 0.0F}; }

glm::mat4 hand_home(event::HandId hand) {
  // the mechanic's left is +x
  const float side = hand == event::HandId::Left ? 1.0F : -1.0F;
  glm::mat4 frame(1.0F);
  frame[0] = {-1.0F, 0.0F, 0.0F, 0.0F};
  frame[2] = {0.0F, 0.0F, -1.0F, 0.0F};
  frame[3] = {0.165F * side, -0.105F, -0.15F, 1.0F};
  return frame;
}

glm::mat4 hand_home_at_bike(event::HandId hand) { return glm::translate(glm::mat4(1.0F), kBikeAxle) * hand_home(hand); }

}  // namespace proofstand::scene
