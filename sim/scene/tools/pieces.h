// What a loose thing is put together from: rigid pieces, some of which move against the others, and their builders.
//
// Frames. Tools for bolts, pick, lamp and bottles: origin at the tip that does the work, z back along the tool to the
// hand; a torque tool's scale is read from +y. Micrometer: origin on the anvil's face, z towards the thimble, the
// frame's bow at +y, scale read from +x. Vernier: origin at the fixed jaw's tip edge, x opening, y from the jaws' tips
// to the beam, scale read from +z. Dial gauge: origin at the ball's lowest point, z back along the plunger to the dial,
// which is read from +z, y up. Rag: origin in the middle of the face that wipes, z out of the work. Boxes: origin in
// the middle of the foot, z up.
#pragma once

#include <vector>

#include "sim/scene/mesh_store.h"
#include "sim/scene/outline.h"

namespace proofstand::scene {

/// How a piece moves against its thing.
enum class Move : unsigned char {
  None,
  Setting,    ///< torque tool's handle: along and round
  Collar,     ///< its locking collar: with the handle, and up when drawn
  Thimble,    ///< micrometer: along and round
  Spindle,    ///< micrometer: along
  Slide,      ///< vernier
  Pointer,    ///< dial
  SmallHand,  ///< dial
  Plunger,    ///< dial
};

struct Piece {
  MeshId mesh = 0;
  Material material;
  event::Grip grip = event::Grip::None;  ///< the grip that taking the thing here means
  Move move = Move::None;
  event::PlaceKind place = event::PlaceKind::Body;
  bool picked = true;
};
using Pieces = std::vector<Piece>;

Pieces build_key(MeshStore& store, const bench::ToolPart& tool);
Pieces build_driver(MeshStore& store, const bench::ToolPart& tool);
Pieces build_click_driver(MeshStore& store, const bench::ToolPart& tool);
Pieces build_micrometer(MeshStore& store);
Pieces build_vernier(MeshStore& store, const bench::InstrumentPart& part);
Pieces build_dial(MeshStore& store);
/// Column and foot that a dial stands on: origin on the table under the column, z up; the clamp by itself at the
/// column's axis.
Pieces build_dial_stand(MeshStore& store);
Pieces build_dial_arm(MeshStore& store);
Pieces build_pick(MeshStore& store);
Pieces build_lamp(MeshStore& store);
Pieces build_bottle(MeshStore& store, const bench::BottlePart& bottle);
Pieces build_glove_box(MeshStore& store);

// Heights and lengths that poses need as well.
inline constexpr double kDriverLength_m = 0.205;
inline constexpr double kPickLength_m = 0.160;
inline constexpr double kLampLength_m = 0.135;
inline constexpr double kDialHub_m = 0.052;      ///< from the ball's end, plunger out, to the dial's face
inline constexpr double kDialPlunger_m = 0.010;  ///< travel
inline constexpr double kDialArm_m = 0.075;      ///< from the column's axis to the plunger's
inline constexpr double kDialColumn_m = 0.440;
/// Tip to foot of a bottle.
double bottle_height_m(bench::FluidKind fluid);

/// Contour of a tool's bit, a hair smaller than the recess.
Loop bit_contour(bench::DriveKind drive);

}  // namespace proofstand::scene
