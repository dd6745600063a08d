// What can be heard at the bench since the last look: built from what a hand feels and an eye sees, so that a sound
// never tells more than a mechanic would hear.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "sim/bench/senses.h"
#include "sim/desk/sound/sound_kinds.h"

namespace proofstand::desk {

struct Heard {
  Sound sound = Sound::Tick;
  std::optional<event::HandId> side;  ///< by whose hand; nothing: somewhere in the room
  float loud_1 = 1.0F;                ///< 0..1
};

class Hearing {
 public:
  /// Listens to the bench as it stands now, after what was heard before. Call it after every few ticks (at most 12), or
  /// short sounds fall together. Looks only.
  std::vector<Heard> listen(const bench::Bench& bench);
  /// The bench has jumped (rewind, another attempt): what lies between makes no sound.
  void forget();

 private:
  struct Ear {
    bench::HandSense sense;
    double pull_out_nm = 0.0;  ///< largest pull of this visit while the fastener stood
    bool cracked = false;
    double said_rad = 0.0;  ///< where the last creak, hum or grating was told
    double scale_m = 0.0;   ///< an instrument's reading
  };
  void listen_to_hand(const bench::Bench& bench, event::HandId hand, std::vector<Heard>& heard);
  void listen_to_pull(const bench::Bench& bench, event::HandId hand, const bench::HandSense& now, Ear& ear,
                      std::vector<Heard>& heard) const;
  void listen_to_room(const bench::Bench& bench, std::vector<Heard>& heard);

  std::array<Ear, event::kHands> ears_;
  std::size_t events_heard_ = 0;
  double rub_turns_1_ = 0.0;  ///< turns of the wheel at the last hiss
  bool awake_ = false;
};

}  // namespace proofstand::desk
