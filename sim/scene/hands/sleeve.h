// Sleeve and cuff of a work jacket on a forearm, in the hand's frame (see hand_bones.h); fit either hand.
#pragma once

#include "sim/scene/mesh.h"

namespace proofstand::scene {

Mesh sleeve_mesh();
Mesh cuff_mesh();

}  // namespace proofstand::scene
