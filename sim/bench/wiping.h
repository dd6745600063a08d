// A rag stroked over something: what it takes off, what it leaves, and how much of the place it passed over.
#pragma once

#include "sim/bench/contact.h"

namespace proofstand::bench {

/// Cloth of one fold over which what was wiped off spreads [m²]: about 10 cm x 10 cm. common practice, no source
inline constexpr double kFoldArea_m2 = 0.010;
/// Load of a fold beyond which it counts as dirty, and looks black [kg/m²]. source: sim/physics/film.h
inline constexpr double kDirtyFold_kg_m2 = physics::kDirtyRag_kg_m2;
/// Alcohol on a fold above which it wipes as a wet one [kg/m²]: a drop on a fold. common practice, no source
inline constexpr double kWetFold_kg_m2 = 5e-4;
/// A folded rag gives its alcohol off so much slower than a free surface. common practice, no source
inline constexpr double kRagSlowness_1 = 0.1;

/// Wettest film of alcohol that a rag leaves behind it [kg/m²]: 10 µm. common practice, no source
inline constexpr double kWipedWet_kg_m2 = 10e-6 * 785.0;

/// Metal and a fold meet once, over the metal's area or, where that is larger, the fold's: films go both ways.
void meet_rag(FilmCell& metal, double area_m2, FilmCell& fold, double strength_1, base::Tick now);
/// One tick of a rag that rests on something: the hand follows its aim (face_* towards aim_*), and what newly comes
/// under the rag is wiped. A rag pinched over both faces of a rotor wipes both; a wheel that turns under it counts as a
/// stroke.
void step_wipe(const World& world, HandId hand);
/// Moves the hand over a face towards its aim by one tick: 250 mm/s, press by its own slew. Also for picks and
/// instruments.
/// full_press_n [N] most that this hand presses with
void step_face(HandState& hand, double full_press_n);
/// Has the rotor moved on under a rag that rests on it, since the rag was last followed? Then the hand does not rest.
bool slid_on(const World& world, HandId hand);
/// The rotor turned by delta_rad (counter-clockwise seen from its side) under rags that rest in space: their points in
/// the rotor's frame move back by as much.
void slide_under_hands(const World& world, double delta_rad);
/// Share of a face that the wipe of this hand has passed over so far.
double swept_share_1(const ContactState& contact, bool other_face);

}  // namespace proofstand::bench
