// The cards beside the work that one reads at a glance: the top line, what each hand does, what is owed next.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sim/desk/hand_words.h"
#include "sim/desk/layout.h"
#include "sim/desk/orders.h"

namespace proofstand::desk {

/// A key with its word in the top line; pressing it is the key.
struct TopKey {
  CommandId command = CommandId::Help;
  std::string key;
  std::string words;
  bool on = false;  ///< its card is open
};
struct TopLineView {
  std::string title;
  std::string small;  ///< way, time, aids in use
  std::vector<TopKey> keys;
};
void draw_top_line(const Rect& at, bool chip, const TopLineView& view, Orders& orders);

struct HandCardView {
  HandWords words;
  std::vector<std::string> captions;  ///< sounds by this hand
  std::string stands;                 ///< what stands in the way of what was just asked
  std::string frees;
};
/// left: which corner it stands in.
void draw_hand_card(const Rect& at, HandForm form, bool left, const HandCardView& view, Orders& orders);

/// What guided work says.
struct GuidanceView {
  std::string stage;
  std::string say;
  std::string more;  ///< what else is owed alike
  std::string why;   ///< shown when asked for
  std::string late;  ///< something has become too late, and what it costs
  base::Tick late_tick = 0;
  bool why_open = false;
  bool can_show = false;  ///< there are places to frame
  std::string where_key, why_key;
};
void draw_guidance(const Rect& at, bool one_line, const GuidanceView& view, Orders& orders);

}  // namespace proofstand::desk
