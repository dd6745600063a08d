// What a person sets once and keeps: how large, which keys, which language. Nothing of it chooses a place, an angle or
// an order of work.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "sim/base/result.h"

namespace proofstand::desk {

/// Kept from day to day.
struct Settings {
  int text_percent = 100;  ///< 75 .. 300
  std::string language = "en";
  bool reduced_motion = false;
  bool captions = true;  ///< sounds in words
  bool sound = true;
  bool dark = false;
  bool plain_letters = true;                ///< single letters are keys
  bool camera_by_itself = true;             ///< the eye moves when hands would be out of sight
  bool left_first = false;                  ///< the left hand is the active one at the start
  bool hold_by_click = false;               ///< a click begins a drag, a click ends it
  int drag_gain_percent = 100;              ///< 50 .. 200
  int steadying_ms = 0;                     ///< filter against tremor: 0, 80 or 160
  bool reading_in_words = false;            ///< scales read out line by line
  std::string quality = "auto";             ///< auto, draft, normal, still
  std::map<std::string, std::string> keys;  ///< command's word to chord, where they differ from the table
};

/// From text of lines "key = value". Unknown keys and values out of range are passed over, so that an older program
/// reads a newer file.
Settings settings_from_text(std::string_view text);
std::string settings_text(const Settings& settings);

/// From the person's own folder; everyday settings where there is no file.
Settings load_settings();
/// errors: file-write
base::Result<base::Done> save_settings(const Settings& settings);

}  // namespace proofstand::desk
