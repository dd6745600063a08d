// Outlines grown, shrunk and joined. The only file that knows the polygon library.
#pragma once

#include "sim/scene/outline.h"

namespace proofstand::scene {

/// Every edge moved outwards by by_m (inwards when negative); corners stay corners. Parts that vanish are left out.
Outline offset(const Outline& outline, double by_m);
/// The same with outer corners rounded by the same radius.
Outline offset_round(const Outline& outline, double by_m);
/// One shape out of overlapping ones, and what of a shape is left when another is cut out of it.
Outline joined(const Outline& a, const Outline& b);
Outline cut(const Outline& from, const Outline& what);

}  // namespace proofstand::scene
