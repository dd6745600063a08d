// Fingers and gloves on things: film goes both ways, and one record a visit says what was touched.
#pragma once

#include "sim/bench/draft.h"
#include "sim/bench/surface.h"

namespace proofstand::bench {

/// Area of a thumb pressed firmly [m²]. source: sim/physics/film.h
inline constexpr double kThumbArea_m2 = physics::kThumbFirm_m2;
/// Skin of a hand over which a film spreads as it works: five finger tips [m²]. common practice, no source
inline constexpr double kFingersArea_m2 = 17.5e-4;

/// Fingers come to rest on a place: film is exchanged at once, and the visit is open until end_touch. A rotor taken by
/// its track is pinched, thumb on one face and fingers on the other. An open visit of that hand is ended first.
/// radius_m, angle_rad in the place's frame; ignored where the place has no finer point.
void begin_touch(const World& world, HandId hand, ThingId thing, PlaceKind place, BoltId bolt, double radius_m,
                 double angle_rad);
/// Fingers leave: emits "touched", and "inspected" when they rested on a seat or a thread for a second. Nothing when
/// none is open.
void end_touch(const World& world, HandId hand);
/// A rag was taken into the hand: what is on it comes to the fingers, and a little back. Tells nothing.
void soil_by_rag(const World& world, HandId hand, ThingId rag);
/// The rag held comes to rest on the place where the hand is (hand.at_*, u, v); it wipes from there.
void begin_wipe(const World& world, HandId hand);
/// The rag leaves: emits "wiped", one for each face it was on. Nothing when it never moved.
void end_wipe(const World& world, HandId hand);
/// A rotor is laid down: film goes between the face that lies down and the bench; emits "laid_down".
/// inner_up of the rotor's ThingState says which face is up.
void lay_down(const World& world, ThingId rotor);

/// Word of the events' `part` choice for a place of a thing, as its index.
FieldNumber part_value(const World& world, ThingId thing, PlaceKind place);
/// Value of the events' `skin` choice for a hand.
FieldNumber skin_value(const World& world, HandId hand);
/// The film at a place that is a single patch (carrier, arms, edge, boss, bench top, rag), or null when the place keeps
/// none.
FilmCell* patch_at(const World& world, ThingId thing, PlaceKind place, BoltId bolt);
/// Fouling of the place a hand is on, at its worst spot [kg/m²].
double fouling_at_kg_m2(const World& world, ThingId thing, PlaceKind place, BoltId bolt, double radius_m,
                        double angle_rad);

}  // namespace proofstand::bench
