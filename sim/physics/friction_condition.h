// Friction of a bolt by the state of its thread and head, with the scatter that real bolts have.
#pragma once

#include <string_view>

#include "sim/physics/preload.h"

namespace proofstand::physics {

/// What lies on thread and head while the bolt is turned.
enum class ThreadCondition : unsigned char {
  Dry,         ///< degreased steel in aluminium, head dry
  AsReceived,  ///< clean, a trace of machine oil
  Reference,   ///< 0.14 both, the basis of many torque tables
  Patch,       ///< dry patch bolt: as received, its drag comes beside it
  LockerWet,   ///< anaerobic threadlocker on the thread, head dry
  LockerSet,   ///< turned again after the locker has set
  Oiled,       ///< oil on thread and head
  Greased,     ///< grease on thread and head
  AlcoholWet,  ///< wet with solvent, as dry but erratic
};
inline constexpr int kThreadConditionCount = 9;
std::string_view condition_words(ThreadCondition condition);

/// Usual friction and its spread in one condition.
struct FrictionRow {
  double thread_1 = 0.14;     ///< mode
  double thread_low_1 = 0.0;  ///< sampling never leaves low..high
  double thread_high_1 = 0.0;
  double head_1 = 0.14;
  double head_low_1 = 0.0;
  double head_high_1 = 0.0;
  double scatter_1 = 0.25;  ///< Gamma of the preload, read as two standard deviations
  std::string_view standing;
};

/// The row of a condition.
/// source  modes: MIL-HDBK-60 Appendix B table II (oil 0.15, molybdenum grease 0.11, dry steel from memory), VDI 2230
///         classes; locker and solvent from memory; scatter NASA-STD-5020B table 3 (0.25 lubricated, 0.35 not)
FrictionRow friction_row(ThreadCondition condition);

/// Friction of one bolt in one pull: mode x exp(z Gamma/2), thread and head together, kept inside the row's range.
/// z_1      [1] -2.5..2.5, standard normal, drawn by the caller
/// returns  friction that raises with z: z > 0 means less preload
/// source   own derivation
BoltFriction sample_friction(ThreadCondition condition, double z_1);

/// From dry to a film: friction between two conditions by how much of the surface it covers.
/// covered_1  [1] 0..1
/// source     own derivation
BoltFriction mixed_friction(const BoltFriction& bare, const BoltFriction& film, double covered_1);

}  // namespace proofstand::physics
