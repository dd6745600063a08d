// Rags: a folded cloth lying or under the fingers, and one pinched over both faces of something; the black that comes
// off on the cloth.
#pragma once

#include <array>

#include "sim/scene/mesh_store.h"

namespace proofstand::scene {

/// Meshes of all rags. Frames as in pieces.h; `pinched` hangs over an edge: z is the sheet's normal, the edge runs
/// along x, the cloth's fold lies at +y.
struct RagMeshes {
  MeshId folded = 0;
  MeshId flat = 0;  ///< pressed down under a hand
  MeshId pinched = 0;
  std::array<MeshId, 4> stains{};          ///< lying on the wiping face of a folded rag's upper side
  std::array<MeshId, 4> pinched_stains{};  ///< where a pinched rag looks out from under the fingers
};
RagMeshes build_rags(MeshStore& store);

/// How soiled and how wet the fold in use looks: 0 clean .. 1 black; 0 dry .. 1 wet.
struct RagLook {
  float black_1 = 0.0F;
  float wet_1 = 0.0F;
};
RagLook rag_look(const bench::Bench& bench, std::size_t rag);
Material rag_material(const RagLook& look);
/// Which of the four stains is to be seen; none on a clean fold.
int stain_of(const RagLook& look);

}  // namespace proofstand::scene
