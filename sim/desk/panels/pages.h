// Pages over the paused picture: the pause sheet, help, settings, how one is doing.
#pragma once

#include <string>
#include <vector>

#include "sim/desk/commands.h"
#include "sim/desk/layout.h"
#include "sim/desk/orders.h"
#include "sim/desk/settings.h"
#include "sim/report/live_standing.h"

namespace proofstand::desk {

struct PauseView {
  std::string title;
  std::string kept;  ///< where the attempt is kept
  bool exam = false;
  bool can_ask_standing = false;
};
/// Which page is open, besides the picture.
enum class Page : std::uint8_t { None, Pause, Help, Settings, Standing };

void draw_pause(const Rect& window, const PauseView& view, Page& page, Orders& orders);
/// questions: the help's own text, with ## before each question.
void draw_help(const Rect& window, const std::vector<HelpRow>& rows, const std::string& screen_words,
               const std::string& questions, Page& page);
struct SettingsState {
  int rebinding = -1;       ///< command that waits for a key, or -1
  std::string key_trouble;  ///< why the last key was not taken
};
void draw_settings(const Rect& window, Settings& settings, const Bindings& bindings, SettingsState& state, Page& page,
                   Orders& orders);
void draw_standing(const Rect& window, const report::LiveStanding& standing, Page& page);

}  // namespace proofstand::desk
