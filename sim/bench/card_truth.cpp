#include "sim/bench/card_truth.h"

#include "sim/bench/rotor_pose.h"

namespace proofstand::bench {
namespace {

constexpr double kLeastLocker_m3 = 0.2e-9;

double runout_of_hub_m(const World& world) {
  const ThingId rotor = world.state.seat.rotor;
  return rotor == event::kNoThing ? 0.0 : total_runout_at_m(world, track_middle_m(world, rotor));
}

void remember(CardState& state, double shown_m) {
  state.indicated_m = shown_m;
  if (!state.was_indicated || shown_m < state.least_m) state.least_m = shown_m;
  state.was_indicated = true;
}

void note(const World& world, ThingId rotor, double shown_m, CardTruth old_entry, CardTruth new_entry) {
  const CardTruth asks = rotor == world.setup.fitted_rotor ? old_entry : new_entry;
  for (std::size_t i = 0; i < world.setup.card.size(); ++i) {
    if (world.setup.card[i].truth == asks) remember(world.state.card[i], shown_m);
  }
}

std::optional<double> torque_used(const World& world) {
  std::optional<double> used;
  for (const ToolState& tool : world.state.tools) {
    if (tool.last_click_nm > 0.0) used = tool.last_click_nm;
  }
  return used;
}

/// 0 keep, 1 replace, 2 stop and report.
std::size_t decision(const World& world) {
  for (const HoleState& hole : world.state.holes) {
    if (hole.stripped || hole.strip_1 < 0.5) return 2;
    if (hole.bolt == event::kNoThing) continue;
    if (world.state.bolts[world.thing(hole.bolt).part].recess_wear_m >= kRuinedRecess_m) return 2;
  }
  for (const BoltPart& bolt : world.setup.bolts) {
    if (bolt.recess_wear_m >= kRuinedRecess_m) return 2;
  }
  if (world.setup.fitted_rotor == event::kNoThing) return 1;
  const RotorPart& old_rotor = world.setup.rotors[world.thing(world.setup.fitted_rotor).part];
  const bool worn = old_rotor.stamp_m > 0.0 && world.state.old_thickness_m < old_rotor.stamp_m;
  const bool bent = world.state.old_runout_m > kBentRunout_m;
  return worn || bent || old_rotor.cracked ? 1 : 0;
}

/// 0 none, 1 patch, 2 locker: what most bolts of the joint have.
std::optional<std::size_t> locker_used(const World& world) {
  std::size_t bolts = 0;
  std::size_t patches = 0;
  std::size_t liquid = 0;
  for (const HoleState& hole : world.state.holes) {
    if (hole.bolt == event::kNoThing) continue;
    const std::size_t part = world.thing(hole.bolt).part;
    ++bolts;
    if (hole.locker_m3 + world.state.bolts[part].locker_m3 >= kLeastLocker_m3) {
      ++liquid;
    } else if (world.setup.bolts[part].patch) {
      ++patches;
    }
  }
  if (bolts == 0) return std::nullopt;
  if (2 * liquid >= bolts) return 2;
  return 2 * patches >= bolts ? 1 : 0;
}

std::optional<double> word_of(const CardEntryPart& entry, std::size_t nth) {
  if (nth >= entry.words.size()) return std::nullopt;
  return static_cast<double>(entry.words[nth]);
}

}  // namespace

void note_thickness(const World& world, ThingId rotor, double shown_m) {
  note(world, rotor, shown_m, CardTruth::OldThickness, CardTruth::NewThickness);
}

void note_runout(const World& world, ThingId rotor, double shown_m) {
  note(world, rotor, shown_m, CardTruth::OldRunout, CardTruth::NewRunout);
}

void note_start_of_card(const World& world) {
  const ThingId rotor = world.setup.fitted_rotor;
  world.state.old_thickness_m = rotor == event::kNoThing ? 0.0 : thinnest_m(world, rotor);
  world.state.old_runout_m = runout_of_hub_m(world);
}

std::optional<FieldNumber> card_truth(const World& world, const CardEntryPart& entry) {
  const ThingId on_hub = world.state.seat.rotor;
  const ThingId at_start = world.setup.fitted_rotor;
  switch (entry.truth) {
    case CardTruth::None:
      return std::nullopt;
    case CardTruth::OldThickness:
      if (at_start == event::kNoThing) return std::nullopt;
      return world.state.old_thickness_m;
    case CardTruth::NewThickness:
      if (on_hub == event::kNoThing) return std::nullopt;
      return thinnest_m(world, on_hub);
    case CardTruth::OldRunout:
      if (at_start == event::kNoThing) return std::nullopt;
      return world.state.old_runout_m;
    case CardTruth::NewRunout:
      if (on_hub == event::kNoThing) return std::nullopt;
      return runout_of_hub_m(world);
    case CardTruth::OldStamp:
      if (at_start == event::kNoThing) return std::nullopt;
      return world.setup.rotors[world.thing(at_start).part].stamp_m;
    case CardTruth::TorqueUsed:
      return torque_used(world);
    case CardTruth::Decision:
      return word_of(entry, decision(world));
    case CardTruth::LockerUsed: {
      const auto used = locker_used(world);
      return used ? word_of(entry, *used) : std::nullopt;
    }
  }
  return std::nullopt;
}

}  // namespace proofstand::bench
