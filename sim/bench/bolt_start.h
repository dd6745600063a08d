// Bolts in and out of their holes: brought by the fingers, turned back until they drop, caught or crossed, taken out.
#pragma once

#include "sim/bench/hand_contact.h"
#include "sim/bench/world.h"

namespace proofstand::bench {

/// The bolt held arrives at a hole: its tip stands in the mouth, tilted as brought, at a chance phase.
void stand_bolt_in_hole(const World& world, HandId hand, BoltId bolt);
/// The fingers draw it away again, or let it go: a thread that has caught stays.
/// returns true when the bolt stays in the hole
bool leave_bolt(const World& world, HandId hand);
/// One tick of fingers on a bolt, held at its hole or gripped by its head.
void step_fingers(const World& world, HandId hand, const HandHold& hold);
/// Emits "started" once a caught thread is half a turn in.
void tell_start_when_due(const World& world, HandId hand, BoltId bolt);
/// A bolt turned out by a tool drops into the tray; the tool is free again. Emits "bolt_out".
void drop_bolt(const World& world, HandId hand);

/// Bolts that are in at the start, as tight as they were left long ago.
void start_bolts(const World& world);

}  // namespace proofstand::bench
