#include "sim/scene/material.h"

namespace proofstand::scene {

Material bare_steel() { return {{0.60F, 0.60F, 0.59F}, 0.32F, 1.0F, Grain::Brushed}; }
Material worn_steel() { return {{0.52F, 0.52F, 0.51F}, 0.40F, 1.0F, Grain::Brushed}; }
Material stainless() { return {{0.66F, 0.66F, 0.65F}, 0.24F, 1.0F}; }
Material black_oxide() { return {{0.055F, 0.055F, 0.06F}, 0.38F, 0.55F}; }
Material aluminium() { return {{0.76F, 0.77F, 0.78F}, 0.34F, 1.0F}; }
Material anodised(const glm::vec3& color) { return {color, 0.34F, 0.9F}; }
Material rubber() { return {{0.028F, 0.028F, 0.029F}, 0.78F, 0.0F}; }
Material paint(const glm::vec3& color) { return {color, 0.22F, 0.0F}; }
Material plastic(const glm::vec3& color) { return {color, 0.42F, 0.0F}; }
Material cloth(const glm::vec3& color) { return {color, 0.92F, 0.0F, Grain::Cloth}; }
Material skin() { return {{0.62F, 0.36F, 0.25F}, 0.52F, 0.0F, Grain::Skin}; }
Material glove() { return {{0.11F, 0.17F, 0.22F}, 0.46F, 0.0F}; }
Material paper() { return {{0.92F, 0.90F, 0.85F}, 0.88F, 0.0F}; }
Material ink() { return {{0.030F, 0.038F, 0.045F}, 0.60F, 0.0F}; }
Material wood() { return {{0.50F, 0.32F, 0.17F}, 0.55F, 0.0F}; }
Material wall() { return {{0.78F, 0.76F, 0.71F}, 0.95F, 0.0F}; }

}  // namespace proofstand::scene
