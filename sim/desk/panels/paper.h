// Paper, ink and type: the look that every card shares, and the few shapes that cards are made of.
#pragma once

#include <imgui.h>

#include <string>
#include <string_view>
#include <vector>

#include "sim/desk/layout.h"

struct ImPlotStyle;

namespace proofstand::desk {

/// Colours of one scheme.
struct Paper {
  ImU32 paper = 0, ground = 0, ink = 0, secondary = 0, rule = 0;
  ImU32 accent = 0, accent_wash = 0, attention = 0, attention_wash = 0, on_accent = 0;
  float u_px = 1.0F;  ///< pixels per u
};
/// The scheme in use.
const Paper& paper();
/// Light on bright days, dark for dim rooms; u_px: pixels per u.
void set_paper(bool dark, float u_px);
void set_faces(ImFont* body, ImFont* strong);
void colour_style(ImGuiStyle& style);
void colour_plots(ImPlotStyle& style);
/// Contrast of two colours, 1..21, by the relative luminance of the accessibility guidelines (WCAG 2.2, 1.4.3).
double contrast_1(ImU32 a, ImU32 b);

/// Length of so many u in pixels.
inline float u(float count) { return count * paper().u_px; }

/// One card of paper at a rectangle; draws nothing when the rectangle is empty.
class Card {
 public:
  /// scrolls: the contents may be longer than the card
  Card(const char* name, const Rect& at, bool scrolls = false, bool bare = false);
  ~Card();
  Card(const Card&) = delete;
  Card& operator=(const Card&) = delete;
  explicit operator bool() const { return open_; }

 private:
  bool open_ = false;
  bool begun_ = false;
};

/// One thing that was drawn on a card: what a reader can have read out, and what tests aim at.
struct SeenItem {
  std::string card;
  std::string words;
  Rect at;  ///< [px]
  bool pressable = false;
  bool cut = false;  ///< its words did not fit
};
/// Everything drawn since the last forget_items(), in order.
const std::vector<SeenItem>& items_seen();
void forget_items();
/// For items drawn by other means than those below: notes the last one.
void note_item(std::string_view words, bool pressable);

// type: sizes in u
void text_small(std::string_view words);   ///< 14, secondary
void text_body(std::string_view words);    ///< 15
void text_strong(std::string_view words);  ///< 15, heavy
void text_head(std::string_view words);    ///< 17, heavy
void text_title(std::string_view words);   ///< 40, heavy
void text_attention(std::string_view words);
/// A hairline across the card.
void rule_line();
/// A button as wide as its words (or wide: the whole line); at least 44 u high. strong: the card's main one.
bool button(const char* words, bool strong = false, bool wide = false, bool enabled = true);
/// A word that can be pressed; underlined.
bool link(const char* words);
/// A key's cap with its word beside it, pressed like a button: "C job card".
bool key_link(const char* key, const char* words);
/// A choice among several, as a line that can be pressed; marked when chosen.
bool choice(const char* words, bool chosen);

}  // namespace proofstand::desk
