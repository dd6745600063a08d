#include "sim/scene/hands/hand_shape.h"

#include <cmath>

namespace proofstand::scene {
namespace {

glm::mat4 frame_at(const glm::vec3& at, const glm::vec3& z_wanted, const glm::vec3& x_near) {
  const glm::vec3 z = glm::normalize(z_wanted);
  const glm::vec3 x = glm::normalize(x_near - glm::dot(x_near, z) * z);
  const glm::vec3 y = glm::cross(z, x);
  return {glm::vec4(x, 0.0F), glm::vec4(y, 0.0F), glm::vec4(z, 0.0F), glm::vec4(at, 1.0F)};
}

constexpr glm::vec3 kAlong{1.0F, 0.0F, 0.0F};

HandBend at_ease() {
  return {{{0.62F, 0.42F, 0.22F, 0.25F},
           {0.10F, 0.30F, 0.42F, 0.24F},
           {0.02F, 0.36F, 0.50F, 0.28F},
           {-0.05F, 0.42F, 0.56F, 0.30F},
           {-0.13F, 0.46F, 0.56F, 0.30F}}};
}

// fingers that do nothing curl out of the way
void curl(HandBend& bend, Finger from, float root_rad, float middle_rad) {
  for (int i = static_cast<int>(from); i < kFingers; ++i) {
    const float more = 0.08F * static_cast<float>(i - static_cast<int>(from));
    bend[static_cast<std::size_t>(i)] = {-0.03F * static_cast<float>(i - 2), root_rad + more, middle_rad + more,
                                         0.5F * middle_rad};
  }
}

// where a pinch holds: out in front of the palm, before the fore finger
constexpr glm::vec3 kPinchAt{0.100F, -0.063F, -0.030F};

enum class Pinched { Along, Aside, Sheet };

// round something: along it past the web of the thumb, from its side, or against both its faces
ShapedHand pinch(float diameter_m, Pinched how) {
  const bool sheet = how == Pinched::Sheet;
  const glm::vec3 back =
      how == Pinched::Aside ? glm::vec3(0.0F, 0.0F, -1.0F) : glm::normalize(glm::vec3(-0.42F, 0.72F, -0.52F));
  const glm::vec3 wanted(0.80F, 0.46F, 0.0F);
  const glm::vec3 across = glm::normalize(wanted - glm::dot(wanted, back) * back);  // from thumb to fingers
  const glm::vec3 beside = how == Pinched::Aside ? back : glm::cross(back, across);
  const float r = 0.5F * diameter_m;
  const float spread = sheet ? 0.0085F : glm::mix(0.0075F, 0.0105F, std::min(1.0F, diameter_m / 0.028F));
  const float give = sheet ? 0.0F : std::min(0.8F * r, 0.5F * spread * spread / std::max(r, 0.003F));
  HandBend bend = at_ease();
  const glm::vec3 finger_side = kPinchAt + across * (r - 0.5F * give);
  const float towards = glm::dot(beside, glm::vec3(0.0F, 0.0F, 1.0F)) > 0.0F ? 1.0F : -1.0F;
  bend[1] = reach_with(Finger::Index, finger_side - towards * spread * beside, {0.05F, 0.7F, 0.9F, 0.5F});
  bend[2] =
      reach_with(Finger::Middle,
                 finger_side + towards * spread * beside - (how == Pinched::Aside ? glm::vec3(0.0F) : back * 0.006F),
                 {0.0F, 0.75F, 0.9F, 0.5F});
  bend[0] = reach_with(Finger::Thumb, kPinchAt - across * r, {0.45F, 0.75F, 0.3F, 0.27F});
  curl(bend, Finger::Ring, 0.80F, 1.0F);
  ShapedHand hand{chains_of(bend), glm::mat4(1.0F)};
  hand.hold = sheet ? frame_at(kPinchAt, -across, kAlong) : frame_at(kPinchAt, back, kAlong);
  return hand;
}

ShapedHand fist(float diameter_m) {
  const float r = 0.5F * diameter_m;
  const glm::vec2 bar(0.060F + 0.25F * r, -0.0155F - r);
  HandBend bend = at_ease();
  for (int i = 1; i < kFingers; ++i) bend[static_cast<std::size_t>(i)] = close_round(static_cast<Finger>(i), bar, r);
  const float far = r + 0.0195F;  // over the fingers' ends
  const float near_rad = diameter_m > 0.024F ? -1.25F : -0.75F;
  const glm::vec3 thumb_at(bar.x + far * std::cos(near_rad), bar.y + far * std::sin(near_rad), -0.032F);
  bend[0] = reach_with(Finger::Thumb, thumb_at, {0.5F, 0.8F, 0.4F, 0.36F});
  ShapedHand hand{chains_of(bend), glm::mat4(1.0F)};
  hand.hold = frame_at({bar.x, bar.y, 0.0F}, {0.0F, 0.0F, -1.0F}, kAlong);
  return hand;
}

ShapedHand flat() {
  const HandBend bend = {{{0.50F, 0.18F, 0.10F, 0.12F},
                          {0.03F, 0.10F, 0.14F, 0.08F},
                          {0.0F, 0.12F, 0.14F, 0.08F},
                          {-0.02F, 0.12F, 0.14F, 0.08F},
                          {-0.06F, 0.10F, 0.16F, 0.08F}}};
  ShapedHand hand{chains_of(bend), glm::mat4(1.0F)};
  // the surface lies under the pads of the middle fingers and slopes up to the heel of the hand
  const glm::vec3 at = 0.5F * (hand.chains[1].pad() + hand.chains[3].pad());
  hand.hold = frame_at(at - glm::vec3(0.010F, 0.0015F, 0.0F), {-0.16F, 0.98F, 0.0F}, kAlong);
  return hand;
}

ShapedHand touch() {
  HandBend bend = at_ease();
  bend[1] = {0.02F, 0.42F, 0.38F, 0.18F};
  bend[2] = {-0.02F, 0.46F, 0.42F, 0.20F};
  bend[0] = {0.42F, 0.62F, 0.25F, 0.2F};
  curl(bend, Finger::Ring, 0.85F, 1.05F);
  ShapedHand hand{chains_of(bend), glm::mat4(1.0F)};
  const glm::vec3 at = 0.5F * (hand.chains[1].pad() + hand.chains[2].pad());
  hand.hold = frame_at(at, {-0.62F, 0.78F, 0.0F}, kAlong);
  return hand;
}

ShapedHand palm() {
  const HandBend bend = {{{0.75F, 0.45F, 0.25F, 0.2F},
                          {0.10F, 0.42F, 0.55F, 0.32F},
                          {0.02F, 0.48F, 0.60F, 0.34F},
                          {-0.06F, 0.52F, 0.62F, 0.34F},
                          {-0.14F, 0.55F, 0.62F, 0.34F}}};
  ShapedHand hand{chains_of(bend), glm::mat4(1.0F)};
  hand.hold = frame_at({0.050F, -0.0150F, -0.002F}, {-0.25F, 0.97F, 0.0F}, kAlong);
  return hand;
}

ShapedHand rest() {
  ShapedHand hand{chains_of(at_ease()), glm::mat4(1.0F)};
  const glm::vec3 at = glm::mix(hand.chains[0].pad(), hand.chains[1].pad(), 0.7F);
  hand.hold = frame_at(at, {-0.58F, 0.81F, 0.0F}, kAlong);
  return hand;
}

}  // namespace

float held_diameter_m(HandShape shape) {
  switch (shape) {
    case HandShape::Pinch:
    case HandShape::Aside:
      return 0.0065F;
    case HandShape::PinchMid:
    case HandShape::AsideMid:
      return 0.018F;
    case HandShape::PinchWide:
      return 0.027F;
    case HandShape::Sheet:
      return 0.0025F;
    case HandShape::Cloth:
      return 0.0080F;
    case HandShape::Fist:
      return 0.015F;
    case HandShape::FistWide:
      return 0.031F;
    case HandShape::Grasp:
      return 0.048F;
    default:
      return 0.0F;
  }
}

ShapedHand shape_hand(HandShape shape) {
  switch (shape) {
    case HandShape::Flat:
      return flat();
    case HandShape::Touch:
      return touch();
    case HandShape::Palm:
      return palm();
    case HandShape::Pinch:
    case HandShape::PinchMid:
    case HandShape::PinchWide:
      return pinch(held_diameter_m(shape), Pinched::Along);
    case HandShape::Aside:
    case HandShape::AsideMid:
      return pinch(held_diameter_m(shape), Pinched::Aside);
    case HandShape::Sheet:
    case HandShape::Cloth:
      return pinch(held_diameter_m(shape), Pinched::Sheet);
    case HandShape::Fist:
    case HandShape::FistWide:
    case HandShape::Grasp:
      return fist(held_diameter_m(shape));
    default:
      return rest();
  }
}

}  // namespace proofstand::scene
