// Flesh round a hand's bones: the distance field that its skin is laid over, and the nails on it.
#pragma once

#include "sim/scene/hands/hand_bones.h"
#include "sim/scene/hands/skin_net.h"

namespace proofstand::scene {

/// Distance to a right hand's skin [m]: fingers with their knuckles, palm with its two pads, the wrist running on into
/// the sleeve. Fingers that lie against each other keep the furrow between them.
DistanceField flesh(const HandChains& chains);
/// The skin as a mesh. cell_m: mesh width, 0.003 .. 0.006.
Mesh skin_mesh(const HandChains& chains, float cell_m);
/// Five nails, a hair above the skin.
Mesh nails_mesh(const HandChains& chains, const DistanceField& field);

}  // namespace proofstand::scene
