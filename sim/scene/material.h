// What a surface is made of, as light meets it. A material is data; the picture decides how to shade it.
#pragma once

#include <cstdint>
#include <glm/glm.hpp>

namespace proofstand::scene {

/// Kinds that are shaded differently, not only coloured differently.
enum class Grain : std::uint8_t {
  Plain,
  Brushed,  ///< turned or ground metal: stretched reflections round the part's z axis
  Cloth,
  Skin,
};

struct Material {
  glm::vec3 color{0.8F};     ///< linear, 0..1; of a metal: its reflectance
  float roughness_1 = 0.5F;  ///< 0.04 .. 1
  float metal_1 = 0.0F;
  Grain grain = Grain::Plain;
  float glow_1 = 0.0F;  ///< gives light of its own, as a lamp's lens
};

// The palette of the workshop: everything is made of these or of one of them with another colour.
Material bare_steel();
Material worn_steel();  ///< a used track
Material stainless();
Material black_oxide();  ///< bolts
Material aluminium();
Material anodised(const glm::vec3& color);
Material rubber();
Material paint(const glm::vec3& color);
Material plastic(const glm::vec3& color);
Material cloth(const glm::vec3& color);
Material skin();
Material glove();
Material paper();
Material ink();
Material wood();
Material wall();

}  // namespace proofstand::scene
