#include "sim/scene/hands/hands.h"

#include <algorithm>
#include <cmath>

#include "sim/bench/surface.h"
#include "sim/scene/hands/hand_flesh.h"
#include "sim/scene/hands/hold.h"
#include "sim/scene/hands/sleeve.h"

namespace proofstand::scene {
namespace {

constexpr float kSkinCell_m = 0.0052F;
constexpr float kGlove_m = 0.0007F;

Mesh mirrored(const Mesh& mesh) {
  Mesh other = mesh;
  for (Vertex& v : other.vertices) {
    v.position.z = -v.position.z;
    v.normal.z = -v.normal.z;
  }
  for (std::size_t i = 0; i + 2 < other.indices.size(); i += 3) std::swap(other.indices[i + 1], other.indices[i + 2]);
  return other;
}

// thin and a little loose: it stands off the skin and creases lightly towards the wrist
Mesh gloved(const Mesh& skin) {
  Mesh glove = skin;
  for (Vertex& v : glove.vertices) {
    const float loose = std::clamp((0.03F - v.position.x) / 0.09F, 0.0F, 1.0F);
    const float way = 420.0F * v.position.x + 190.0F * v.position.z + 130.0F * v.position.y +
                      2.0F * std::sin(160.0F * v.position.z + 90.0F * v.position.x);
    v.position += v.normal * (kGlove_m + loose * (0.0006F + 0.0005F * std::sin(way)));
    v.normal = glm::normalize(v.normal - glm::vec3(0.16F * loose * std::cos(way), 0.0F, 0.0F));
  }
  return glove;
}

Material soiled(Material material, const bench::HandState& hand) {
  // fingers that have been in oil and brake dust show it
  const double dirt =
      bench::fouling_kg_m2(hand.film_kg_m2) + hand.film_kg_m2[static_cast<std::size_t>(bench::Film::Dust)];
  const auto share = static_cast<float>(std::clamp(dirt / 2.0e-3, 0.0, 1.0));
  material.color *= 1.0F - 0.40F * share;
  material.roughness_1 -= 0.15F * share;
  return material;
}

}  // namespace

Hands::Hands(MeshStore& store) {
  for (int i = 0; i < kHandShapes; ++i) {
    Shaped& shaped = shapes_[static_cast<std::size_t>(i)];
    shaped.hand = shape_hand(static_cast<HandShape>(i));
    const Mesh skin = skin_mesh(shaped.hand.chains, kSkinCell_m);
    const Mesh nails = nails_mesh(shaped.hand.chains, flesh(shaped.hand.chains));
    const Mesh glove = gloved(skin);
    shaped.sides[0] = {store.keep(mirrored(skin)), store.keep(mirrored(nails)), store.keep(mirrored(glove))};
    shaped.sides[1] = {store.keep(skin), store.keep(nails), store.keep(glove)};
  }
  sleeve_ = store.keep(sleeve_mesh());
  cuff_ = store.keep(cuff_mesh());
}

PartItems Hands::items(const bench::Bench& bench, event::HandId hand, const WorkFrame& work) const {
  const bench::HandState& state = bench.state().hands[static_cast<std::size_t>(hand)];
  const Hold hold = hold_of_hand(bench, hand, work);
  const Shaped& shaped = shapes_[static_cast<std::size_t>(hold.shape)];
  const Side& side = shaped.sides[static_cast<std::size_t>(hand)];
  const glm::mat4 pose = hand_pose(hold, hand, shaped.hand);
  PartItems items;
  const auto add = [&items, &pose](MeshId mesh, const Material& material) {
    PartItem part;
    part.item.mesh = mesh;
    part.item.pose = pose;
    part.item.material = material;
    items.push_back(part);
  };
  if (state.gloved) {
    add(side.glove, soiled(glove(), state));
  } else {
    add(side.skin, soiled(skin(), state));
    Material nail = skin();
    nail.color = glm::mix(nail.color, glm::vec3(0.80F, 0.58F, 0.50F), 0.6F);
    nail.roughness_1 = 0.30F;
    nail.grain = Grain::Plain;
    add(side.nails, nail);
  }
  const Material jacket = cloth({0.105F, 0.105F, 0.110F});
  add(sleeve_, jacket);
  Material cuff = jacket;
  cuff.color *= 0.70F;
  add(cuff_, cuff);
  return items;
}

}  // namespace proofstand::scene
