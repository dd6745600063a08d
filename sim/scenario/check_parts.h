// Do the parts of a drawn setup go together, and can the job be done with them at all? Hidden faults are welcome; an
// exercise that nobody could finish is not.
#pragma once

#include "sim/scenario/resolve.h"

namespace proofstand::scenario {

/// S09 rotor and hub · S10 bolts · S11 torque tool and sheet · S12 sheet tolerance and tool · S15 things without which
/// no stage of this exercise can be worked.
void check_parts(const Reading& reading, const ReadScenario& read);

/// Does a rotor go on this hub, holes over holes? source: geometry of six-bolt mounts, from hole clearance and bore
bool rotor_goes_on(const bench::HubPart& hub, const bench::RotorPart& rotor);
/// Does a bolt hold in this hub under a rotor of that thickness: at least 5 mm of full thread, its end half a
/// millimetre off the bottom of the hole? (Common practice, no source; 0.8 mm of the end is its point.)
bool bolt_holds(const bench::HubPart& hub, const bench::BoltPart& bolt, double grip_m);

/// Share of its setting by which a click tool's torque overshoots when it is drawn slowly to one clean click [1].
/// Common practice, no source; drawn fast it is many times that.
inline constexpr double kCleanOvershoot_1 = 0.01;

}  // namespace proofstand::scenario
