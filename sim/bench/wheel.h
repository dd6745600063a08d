// The wheel: where it is, how it turns by hand or thrown, and whether the rotor rubs in its caliper. A thrown wheel is
// a value and a tick: constant drag, so angle and rate are closed forms.
#pragma once

#include "sim/base/math.h"
#include "sim/bench/world.h"

namespace proofstand::bench {

/// Below this the valve's weight and the seals' stiction bring a wheel to rest within a moment; the bench takes it as
/// standing. [rad/s], a tenth of a turn a second. common practice, no source
inline constexpr double kStandingRate_rad_s = 0.1 * base::kTwoPi;
/// A hand throws a wheel no faster than this [rad/s]: two turns a second. common practice, no source
inline constexpr double kFastestThrow_rad_s = 2.0 * base::kTwoPi;

/// Angle and rate now, forward rolling positive. [rad], [rad/s]
double wheel_angle_rad(const BenchState& state);
double wheel_rate_rad_s(const BenchState& state);
/// Does it turn by itself, faster than a tenth of a turn a second?
bool wheel_spins(const BenchState& state);

/// A hand lets go of the tyre moving. Nothing below a tenth of a turn a second. With the other hand, or what it holds,
/// at rotor or tyre, the run is stopped.
void throw_wheel(const World& world, HandId hand, double rate_rad_s);
/// A hand turns it, forward positive.
void turn_wheel_by_hand(const World& world, double delta_rad);
/// Tick at which a spin ends by itself, or kNever's value when none is under way.
base::Tick wheel_stops_at(const World& world);
/// The spin ends now, by itself or by a hand: emits "wheel_spun" and the fluent.
void end_spin(const World& world);
/// Moves the wheel. refused: HandFull (something else in a hand), DoesNotFit (rotor too large for the caliper),
/// AlreadyThere, WheelTurning.
/// Emits "wheel_moved" and the fluent.
Refusal move_wheel(const World& world, HandId hand, WheelAt to);

/// Bolts missing or not at a tenth of the preload that the sheet's torque gives.
std::int64_t loose_bolts(const World& world);
/// Emits the fluents wheel_at and wheel_turning as they are now.
void tell_wheel(const World& world);

}  // namespace proofstand::bench
