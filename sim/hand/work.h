// What a procedure of the modelled hand works with: the bench through the senses, its own hands through actions, its
// skill, its memory. Private to this floor.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/math.h"
#include "sim/bench/senses.h"
#include "sim/hand/hand_script.h"
#include "sim/hand/script.h"
#include "sim/hand/task.h"

namespace proofstand::hand {

using event::BoltId;
using event::Grip;
using event::HandId;
using event::kNoBolt;
using event::kNoThing;
using event::PlaceKind;
using event::ThingId;

/// Where a hand was last brought; forgotten when it draws away.
struct RestingAt {
  ThingId thing = kNoThing;
  PlaceKind place = PlaceKind::None;
  BoltId bolt = kNoBolt;
};

/// A hold that stands while other lines are worked: taken up again after both hands were let go.
struct StandingHold {
  enum class Kind : std::uint8_t { None, RotorAgainst, Tyre } kind = Kind::None;
  HandId hand = HandId::Left;
  ThingId thing = kNoThing;
  Grip grip = Grip::None;
};

/// Readings that the hand remembers of one rotor.
struct Readings {
  ThingId rotor = kNoThing;
  double least_m = 0.0;
  double across_m = 0.0;
};

/// Everything that outlives one instruction.
struct Memory {
  HandId main = HandId::Right;
  std::array<RestingAt, event::kHands> at;
  StandingHold hold;
  std::vector<Readings> readings;
  double runout_m = 0.0;
  bool runout_read = false;
  bool thrown = false;       ///< the line under way has thrown the wheel; only watching is left of it
  bool clicked = false;      ///< the line under way has had its click; only letting go was left of it
  bool ruined_seen = false;  ///< a drive recess that has lost its lobes was looked into
  bool locker_used = false;  ///< liquid locker was put on a thread or into a hole
};

class Work {
 public:
  Work(const HandScript& script, HandSkill skill, std::uint64_t seed)
      : script_(script), skill_(std::move(skill)), seed_(seed) {}

  // the bench, for this step only
  bench::Bench* bench = nullptr;
  const ModelledHand::Sink* sink = nullptr;

  Memory memory;
  Waiting waiting;
  base::Tick wake = 0;
  const Instruction* line = nullptr;
  std::uint64_t lines_before = 0;  ///< of scripts worked before this one
  bool stuck = false;
  base::Error trouble;

  [[nodiscard]] const bench::BenchSetup& setup() const { return bench->setup(); }
  [[nodiscard]] base::Tick now() const { return bench->tick(); }
  [[nodiscard]] const HandSkill& skill() const { return skill_; }
  [[nodiscard]] bench::HandSense sense(HandId hand) const { return bench::sense_hand(*bench, hand); }
  [[nodiscard]] bench::ThingKind kind(ThingId thing) const { return setup().things[event::index_of(thing)].kind; }
  [[nodiscard]] const std::string& name(ThingId thing) const;
  [[nodiscard]] static HandId other(HandId hand) { return hand == HandId::Left ? HandId::Right : HandId::Left; }
  /// The hand that a line names; `unsaid` when it names none.
  [[nodiscard]] HandId hand_of(WhichHand which, HandId unsaid) const;
  RestingAt& at(HandId hand) { return memory.at[static_cast<std::size_t>(hand)]; }

  /// Acts now; the action's tick is filled in.
  void act(event::Action action);
  /// Lets bench time pass.
  struct Pause {
    Work& work;
    base::Tick ticks;
    bool await_ready() const noexcept { return false; }
    void await_suspend(std::coroutine_handle<> self) const noexcept;
    void await_resume() const noexcept {}
  };
  Pause pause(base::Tick ticks) { return {*this, ticks}; }
  Pause pause_s(double time_s) { return {*this, base::ticks_from(time_s)}; }
  /// Gives up on this line: never goes on.
  Pause give_up(std::string what, std::string instead);

  /// This hand's own scatter: a standard normal, or a share 0..1, by purpose and how-manieth in this line.
  double normal(std::string_view purpose, std::uint64_t count = 0) const;
  double unit(std::string_view purpose, std::uint64_t count = 0) const;

 private:
  std::string last_refusal() const;
  std::uint64_t serial() const { return line ? line->serial + lines_before : 0; }

  const HandScript& script_;
  HandSkill skill_;
  std::uint64_t seed_;
  std::size_t events_before_ = 0;
};

}  // namespace proofstand::hand
