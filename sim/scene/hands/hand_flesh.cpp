#include "sim/scene/hands/hand_flesh.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace proofstand::scene {
namespace {

/// A cone between two balls, or one flattened across.
struct Bone {
  glm::vec3 a{0.0F};
  glm::vec3 b{0.0F};
  float radius_a_m = 0.0F;
  float radius_b_m = 0.0F;
};

float distance_m(const Bone& bone, const glm::vec3& p) {
  const glm::vec3 span = bone.b - bone.a;
  const float length = glm::dot(span, span);
  const float t = length > 0.0F ? std::clamp(glm::dot(p - bone.a, span) / length, 0.0F, 1.0F) : 0.0F;
  return glm::length(p - bone.a - t * span) - glm::mix(bone.radius_a_m, bone.radius_b_m, t);
}

// smaller of two distances, the corner between them filled over a width
float blended(float a, float b, float width_m) {
  const float h = std::max(width_m - std::abs(a - b), 0.0F) / width_m;
  return std::min(a, b) - 0.25F * h * h * width_m;
}

struct Flesh {
  std::vector<Bone> palm;
  std::array<std::vector<Bone>, kFingers> fingers;
};

// a finger is thickest at its joints and has a soft pad at its end
std::vector<Bone> finger_bones(Finger finger, const FingerChain& chain) {
  std::vector<Bone> bones;
  for (std::size_t i = 0; i < 3; ++i) {
    if (finger == Finger::Thumb && i == 0) continue;
    const glm::vec3 a = chain.joints[i];
    const glm::vec3 b = chain.joints[i + 1];
    const glm::vec3 waist = glm::mix(a, b, 0.5F);
    const float thin = 0.5F * (chain.radius_m[i] + chain.radius_m[i + 1]) * (i == 2 ? 1.0F : 0.95F);
    bones.push_back({a, waist, chain.radius_m[i], thin});
    bones.push_back({waist, b, thin, chain.radius_m[i + 1]});
  }
  const glm::vec3 soft = -chain.nail * 0.0014F;
  const float tip = chain.radius_m[3];
  bones.push_back({chain.joints[3] + soft - chain.along * 0.009F, chain.joints[3] + soft, tip * 1.02F, tip * 0.9F});
  return bones;
}

std::vector<Bone> palm_bones(const HandChains& chains) {
  std::vector<Bone> bones;
  const std::array<float, 4> wrist_z = {-0.0125F, -0.0045F, 0.0055F, 0.0135F};
  const std::array<float, 4> thick = {0.0122F, 0.0124F, 0.0118F, 0.0108F};
  for (std::size_t i = 0; i < 4; ++i) {
    const glm::vec3 knuckle = chains[i + 1].joints[0];
    bones.push_back({{0.006F, -0.003F, wrist_z[i]}, knuckle - glm::vec3(0.002F, 0.0035F, 0.0F), 0.0135F, thick[i]});
  }
  const FingerChain& thumb = chains[0];
  const glm::vec3 ball_of_thumb =
      glm::mix(thumb.joints[0], thumb.joints[1], 0.45F) + glm::vec3(0.002F, -0.004F, 0.005F);
  bones.push_back({thumb.joints[0] + glm::vec3(-0.006F, 0.001F, 0.006F), ball_of_thumb, 0.0125F, 0.0158F});
  bones.push_back({ball_of_thumb, thumb.joints[1], 0.0155F, thumb.radius_m[1] * 1.02F});
  // web of skin between thumb and index finger
  bones.push_back({glm::mix(thumb.joints[0], thumb.joints[1], 0.62F),
                   glm::mix(chains[1].joints[0], glm::vec3(0.0F), 0.28F), 0.0088F, 0.0095F});
  // outer edge of the palm
  bones.push_back({{0.014F, -0.009F, 0.0205F}, {0.052F, -0.0065F, 0.0265F}, 0.0135F, 0.0118F});
  return bones;
}

const std::vector<Bone>& wrist_bones() {
  static const std::vector<Bone> bones = {
      {{0.010F, -0.002F, -0.0125F}, {-0.075F, 0.0F, -0.0118F}, 0.0150F, 0.0195F},
      {{0.010F, -0.002F, 0.0120F}, {-0.075F, 0.0F, 0.0118F}, 0.0145F, 0.0195F},
      // the knob of bone on the little finger's side
      {{-0.014F, 0.004F, 0.0165F}, {-0.024F, 0.003F, 0.0150F}, 0.0120F, 0.0120F},
  };
  return bones;
}

}  // namespace

DistanceField flesh(const HandChains& chains) {
  Flesh parts;
  parts.palm = palm_bones(chains);
  for (int i = 0; i < kFingers; ++i) {
    parts.fingers[static_cast<std::size_t>(i)] =
        finger_bones(static_cast<Finger>(i), chains[static_cast<std::size_t>(i)]);
  }
  return [parts](const glm::vec3& p) {
    float palm = 1.0F;
    for (const Bone& bone : parts.palm) palm = blended(palm, distance_m(bone, p), 0.013F);
    for (const Bone& bone : wrist_bones()) palm = blended(palm, distance_m(bone, p), 0.016F);
    float hand = palm;
    for (const std::vector<Bone>& bones : parts.fingers) {
      float finger = 1.0F;
      for (const Bone& bone : bones) finger = blended(finger, distance_m(bone, p), 0.0035F);
      // only the root of a finger grows out of the palm; its tip may rest against it
      const float to_root = glm::length(p - bones.front().a);
      const float width = 0.011F * std::clamp(1.6F - to_root / 0.025F, 0.08F, 1.0F);
      hand = std::min(hand, blended(palm, finger, width));
    }
    return hand;
  };
}

Mesh skin_mesh(const HandChains& chains, float cell_m) {
  glm::vec3 from(-0.08F, -0.03F, -0.05F);
  glm::vec3 to(0.10F, 0.03F, 0.05F);
  for (const FingerChain& chain : chains) {
    for (const glm::vec3& joint : chain.joints) {
      from = glm::min(from, joint - glm::vec3(0.02F));
      to = glm::max(to, joint + glm::vec3(0.02F));
    }
  }
  from.x = -0.096F;
  return skin_over(flesh(chains), from, to, cell_m);
}

Mesh nails_mesh(const HandChains& chains, const DistanceField& field) {
  constexpr int kAcross = 6;
  constexpr int kAlong = 5;
  Mesh mesh;
  for (std::size_t f = 0; f < kFingers; ++f) {
    const FingerChain& chain = chains[f];
    const float tip = chain.radius_m[3];
    const glm::vec3 side = glm::cross(chain.along, chain.nail);
    const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
    for (int i = 0; i <= kAlong; ++i) {
      const float v = static_cast<float>(i) / kAlong;
      // round at the root, nearly straight at the free edge
      const float narrow = std::sqrt(1.0F - std::pow(1.0F - std::min(v * 1.35F, 1.0F), 2.2F));
      const float half = 0.66F * tip * std::max(narrow, 0.25F) * (v > 0.9F ? 0.9F : 1.0F);
      for (int j = 0; j <= kAcross; ++j) {
        const float u = 2.0F * static_cast<float>(j) / kAcross - 1.0F;
        const float edge = 0.0012F * (1.0F - u * u);
        glm::vec3 p = chain.joints[3] + chain.along * (tip * (1.62F * v - 0.95F) + edge * (v - 0.3F)) +
                      side * (u * half) + chain.nail * (tip * std::sqrt(std::max(0.05F, 1.0F - 0.62F * u * u)));
        // lies on the skin: comes down to it along the way the nail looks
        for (int round = 0; round < 3; ++round) p -= chain.nail * (field(p) - 0.0004F);
        mesh.vertices.push_back({p, glm::normalize(chain.nail + 0.75F * u * side), glm::vec2(0.0F)});
      }
    }
    for (std::uint32_t i = 0; i < kAlong; ++i) {
      for (std::uint32_t j = 0; j < kAcross; ++j) {
        const std::uint32_t a = first + i * (kAcross + 1) + j;
        const std::uint32_t b = a + kAcross + 1;
        mesh.indices.insert(mesh.indices.end(), {a, a + 1, b + 1, a, b + 1, b});
      }
    }
  }
  return mesh;
}

}  // namespace proofstand::scene
