#include "sim/scene/hands/hand_bones.h"

#include <algorithm>
#include <cmath>

namespace proofstand::scene {
namespace {

struct Bones {
  glm::vec3 root;
  std::array<float, 3> length_m;
  std::array<float, 4> radius_m;
};

// lengths: shares of the hand's length; knuckles on the shallow arch across the palm
const std::array<Bones, kFingers>& bones() {
  static const std::array<Bones, kFingers> table = {{
      {{0.020F, -0.010F, -0.021F}, {0.0459F, 0.0359F, 0.0289F}, {0.0140F, 0.0118F, 0.0104F, 0.0086F}},
      {{0.0840F, 0.0F, -0.0275F}, {0.0448F, 0.0262F, 0.0190F}, {0.0106F, 0.0091F, 0.0080F, 0.0069F}},
      {{0.0845F, 0.0018F, -0.0088F}, {0.0487F, 0.0311F, 0.0205F}, {0.0108F, 0.0093F, 0.0082F, 0.0071F}},
      {{0.0800F, 0.0004F, 0.0096F}, {0.0447F, 0.0302F, 0.0203F}, {0.0102F, 0.0088F, 0.0078F, 0.0067F}},
      {{0.0735F, -0.0034F, 0.0262F}, {0.0373F, 0.0214F, 0.0178F}, {0.0092F, 0.0078F, 0.0068F, 0.0058F}},
  }};
  return table;
}

const Bones& bones_of(Finger finger) { return bones()[static_cast<std::size_t>(finger)]; }

constexpr float kTipShare = 0.62F;  // the last joint bends with the middle one
constexpr float kThumbTipShare = 0.9F;

glm::vec3 turned_aside(const glm::vec3& v, float angle_rad) {
  const float c = std::cos(angle_rad);
  const float s = std::sin(angle_rad);
  return {c * v.x + s * v.z, v.y, -s * v.x + c * v.z};
}

FingerChain long_finger(const Bones& b, const FingerBend& bend) {
  FingerChain chain;
  chain.radius_m = b.radius_m;
  chain.joints[0] = b.root;
  // a bent finger can hardly be spread any more
  const float aside = bend.aside_rad * std::max(0.0F, std::cos(bend.root_rad));
  float sum = 0.0F;
  const std::array<float, 3> bends = {bend.root_rad, bend.middle_rad, bend.tip_rad};
  for (std::size_t i = 0; i < 3; ++i) {
    sum += bends[i];
    chain.along = turned_aside({std::cos(sum), -std::sin(sum), 0.0F}, aside);
    chain.nail = turned_aside({std::sin(sum), std::cos(sum), 0.0F}, aside);
    const float length = i == 2 ? b.length_m[i] - b.radius_m[3] : b.length_m[i];
    chain.joints[i + 1] = chain.joints[i] + length * chain.along;
  }
  return chain;
}

FingerChain thumb(const Bones& b, const FingerBend& bend) {
  FingerChain chain;
  chain.radius_m = b.radius_m;
  chain.joints[0] = b.root;
  const float lift = bend.root_rad;
  const float side = bend.aside_rad;
  glm::vec3 along(std::cos(lift) * std::cos(side), -std::sin(lift), -std::cos(lift) * std::sin(side));
  // lifted off the palm the thumb rolls until its pad looks at the fingers' pads
  const float opposed = std::clamp((lift - 0.3F) / 0.7F, 0.0F, 1.0F);
  const glm::vec3 towards = glm::mix(glm::vec3(0.3F, -0.25F, 0.9F), glm::vec3(0.6F, 0.55F, 0.55F), opposed);
  glm::vec3 pad = glm::normalize(towards - glm::dot(towards, along) * along);
  const std::array<float, 3> bends = {0.0F, bend.middle_rad, bend.tip_rad};
  for (std::size_t i = 0; i < 3; ++i) {
    const float c = std::cos(bends[i]);
    const float s = std::sin(bends[i]);
    const glm::vec3 next = c * along + s * pad;
    pad = glm::normalize(c * pad - s * along);
    along = next;
    const float length = i == 2 ? b.length_m[i] - b.radius_m[3] : b.length_m[i];
    chain.joints[i + 1] = chain.joints[i] + length * along;
  }
  chain.along = along;
  chain.nail = -pad;
  return chain;
}

FingerBend bent_by(Finger finger, const FingerBend& start, const glm::vec3& by) {
  FingerBend bend = start;
  bend.aside_rad += by.x;
  bend.root_rad += by.y;
  bend.middle_rad += by.z;
  if (finger == Finger::Thumb) {
    bend.aside_rad = std::clamp(bend.aside_rad, 0.05F, 1.15F);
    bend.root_rad = std::clamp(bend.root_rad, -0.1F, 1.2F);
    bend.middle_rad = std::clamp(bend.middle_rad, -0.1F, 0.9F);
    bend.tip_rad = bend.middle_rad * kThumbTipShare;
  } else {
    bend.aside_rad = std::clamp(bend.aside_rad, -0.35F, 0.35F);
    bend.root_rad = std::clamp(bend.root_rad, -0.3F, 1.55F);
    bend.middle_rad = std::clamp(bend.middle_rad, 0.0F, 1.8F);
    bend.tip_rad = bend.middle_rad * kTipShare;
  }
  return bend;
}

float distance_m(const glm::vec2& point, const glm::vec3& a, const glm::vec3& b) {
  const glm::vec2 from(a);
  const glm::vec2 span = glm::vec2(b) - from;
  const float length = glm::dot(span, span);
  const float t = length > 0.0F ? std::clamp(glm::dot(point - from, span) / length, 0.0F, 1.0F) : 0.0F;
  return glm::length(point - from - t * span);
}

}  // namespace

glm::vec3 FingerChain::pad() const { return joints[3] - nail * (radius_m[3] * 0.97F) - along * 0.002F; }

FingerChain chain_of(Finger finger, const FingerBend& bend) {
  return finger == Finger::Thumb ? thumb(bones_of(finger), bend) : long_finger(bones_of(finger), bend);
}

HandChains chains_of(const HandBend& bend) {
  HandChains chains;
  for (int i = 0; i < kFingers; ++i) {
    chains[static_cast<std::size_t>(i)] = chain_of(static_cast<Finger>(i), bend[static_cast<std::size_t>(i)]);
  }
  return chains;
}

glm::vec3 knuckle(Finger finger) { return bones_of(finger).root; }

float finger_length_m(Finger finger) {
  const Bones& b = bones_of(finger);
  return b.length_m[0] + b.length_m[1] + b.length_m[2];
}

FingerBend reach_with(Finger finger, const glm::vec3& pad, const FingerBend& start) {
  FingerBend bend = bent_by(finger, start, glm::vec3(0.0F));
  constexpr float kNudge = 0.002F;
  // damped least squares on three angles; a few dozen steps settle from any of the starts used here
  for (int round = 0; round < 60; ++round) {
    const glm::vec3 now = chain_of(finger, bend).pad();
    const glm::vec3 miss = pad - now;
    glm::mat3 slope(0.0F);
    for (int i = 0; i < 3; ++i) {
      glm::vec3 by(0.0F);
      by[i] = kNudge;
      slope[i] = (chain_of(finger, bent_by(finger, bend, by)).pad() - now) / kNudge;
    }
    const glm::mat3 turned = glm::transpose(slope);
    glm::mat3 square = turned * slope;
    for (int i = 0; i < 3; ++i) square[i][i] += 1.0e-5F;
    glm::vec3 step = glm::inverse(square) * (turned * miss);
    const float most = std::max({std::abs(step.x), std::abs(step.y), std::abs(step.z)});
    if (most > 0.2F) step *= 0.2F / most;
    bend = bent_by(finger, bend, step);
  }
  return bend;
}

FingerBend close_round(Finger finger, const glm::vec2& bar_xy, float bar_radius_m) {
  FingerBend bend;
  const std::array<float*, 3> joints = {&bend.root_rad, &bend.middle_rad, &bend.tip_rad};
  const std::array<float, 3> most = {1.5F, 1.8F, 1.1F};
  constexpr float kStep = 0.01F;
  for (std::size_t i = 0; i < 3; ++i) {
    while (*joints[i] < most[i]) {
      const FingerChain chain = chain_of(finger, bend);
      const float thick = 0.5F * (chain.radius_m[i] + chain.radius_m[i + 1]) * 0.92F;
      if (distance_m(bar_xy, chain.joints[i], chain.joints[i + 1]) <= bar_radius_m + thick) break;
      *joints[i] += kStep;
    }
  }
  return bend;
}

}  // namespace proofstand::scene
