// What anyone at the bench could know by now: seen and felt, or remembered from what was done. Read through the senses
// and through the felt fields of events; nothing else of the bench is looked at. Private to the guidance.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "sim/bench/senses.h"

namespace proofstand::report {

/// One fastener's position.
struct SeenBolt {
  bench::BoltSight sight;
  bool tight = false;        ///< has to be cracked before it will turn out
  bool turned_back = false;  ///< the bolt in it was started by feel
  bool snug = false;
  bool held_at_snug = false;  ///< the rotor was held against the bolts meanwhile
  double clicked_nm = 0.0;    ///< setting of the torque tool when it last clicked here; 0: not since it was started
  bool boss_picked = false;
  bool boss_wiped = false;
  bool thread_picked = false;
};

/// A card entry.
struct SeenEntry {
  bool written = false;
  std::size_t word = 0;  ///< of a choice: index into the card's words
};

struct Seen {
  std::vector<SeenBolt> bolts;
  std::vector<SeenEntry> card;  ///< by entry
  std::vector<bool> locker_on;  ///< by thing: liquid locker was put on it
  std::vector<bool> watched;    ///< by thing: this rotor's runout was watched for a turn since it was last bolted
  std::vector<bool> measured;   ///< by thing: this rotor's thickness was measured
  event::ThingId rotor = event::kNoThing;  ///< on the hub
  bool printed_out = false;
  bool held_against = false;  ///< a hand keeps the rotor against the bolts
  bool hand_on_rotor = false;
  bool gloved = false;  ///< both hands
  bool seat_wiped = false;
  std::array<bool, 2> face_wiped{};  ///< with alcohol, and nothing has touched it since: printed side, other side
  bool wet = false;                  ///< the rotor on the hub is
  bench::WheelAt wheel = bench::WheelAt::Stand;
  base::Tick rotor_on_tick = 0;  ///< when the rotor on the hub was put there

  [[nodiscard]] std::size_t snug_count() const;
  /// A bolt clamps already, and while none did nobody held the rotor: turning it comes too late.
  [[nodiscard]] bool snugged_unheld() const;
};
Seen compute_seen(const bench::Bench& bench);

/// The thing behind a number of the vocabulary's set of rotors.
event::ThingId rotor_thing(const bench::BenchSetup& setup, std::size_t item);

}  // namespace proofstand::report
