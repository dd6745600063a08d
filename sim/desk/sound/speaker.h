// Plays sounds through whatever the machine has; without a device it stays silent and says so once.
#pragma once

#include <memory>
#include <string>

#include "sim/desk/sound/hearing.h"

namespace proofstand::desk {

class Speaker {
 public:
  /// Opens the default device. Never fails: silent() tells whether anything will be heard.
  Speaker();
  ~Speaker();
  Speaker(const Speaker&) = delete;
  Speaker& operator=(const Speaker&) = delete;

  [[nodiscard]] bool silent() const;
  /// volume_1: 0..1 of the settings; a sound of the left hand comes from the left.
  void play(const Heard& heard, float volume_1);

 private:
  struct Device;
  std::unique_ptr<Device> device_;
};

}  // namespace proofstand::desk
