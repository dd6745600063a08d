#include "sim/desk/sound/sound_kinds.h"

namespace proofstand::desk {

std::string_view caption_of(Sound sound) {
  switch (sound) {
    case Sound::Tick:
      return "tick";
    case Sound::Click:
      return "click";
    case Sound::Crack:
      return "crack";
    case Sound::Creak:
      return "creak";
    case Sound::Scrape:
      return "scrape";
    case Sound::Grating:
      return "grating";
    case Sound::Knock:
      return "knock";
    case Sound::DullTap:
      return "dull tap";
    case Sound::Hiss:
      return "hiss";
    case Sound::Squeak:
      return "squeak";
    case Sound::Drip:
      return "drip";
    case Sound::Hum:
      return "hum";
  }
  return "";
}

const std::vector<Sound>& all_sounds() {
  static const std::vector<Sound> list = {Sound::Tick,   Sound::Click,   Sound::Crack, Sound::Creak,
                                          Sound::Scrape, Sound::Grating, Sound::Knock, Sound::DullTap,
                                          Sound::Hiss,   Sound::Squeak,  Sound::Drip,  Sound::Hum};
  return list;
}

}  // namespace proofstand::desk
