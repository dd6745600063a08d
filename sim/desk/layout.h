// Where each card lies in the window: one pure function from sizes and wishes to rectangles. The work fills the window;
// cards stand at its edges and give way to what the hands are doing.
//
// Lengths come in and go out in pixels; inside, a card is measured in u: 1/96 inch times the trainee's text scale.
#pragma once

#include <glm/glm.hpp>
#include <optional>

namespace proofstand::desk {

/// [px] from the window's upper left corner.
struct Rect {
  float x = 0.0F;
  float y = 0.0F;
  float w = 0.0F;
  float h = 0.0F;

  [[nodiscard]] bool empty() const { return w <= 0.0F || h <= 0.0F; }
  [[nodiscard]] float right() const { return x + w; }
  [[nodiscard]] float bottom() const { return y + h; }
};
/// Do they share any area?
bool meets(const Rect& a, const Rect& b);
bool holds(const Rect& outer, const Rect& inner);

/// How much room there is, counted in u.
enum class Room : std::uint8_t { Wide, Middle, Narrow };

/// How large a hand's card is.
enum class HandForm : std::uint8_t { Full, Line, Chip };

/// What wants to be seen.
struct LayoutAsk {
  glm::vec2 window_px{1280.0F, 720.0F};
  float content_scale = 1.0F;  ///< px per 1/96 inch
  float text_scale = 1.0F;     ///< 0.75 .. 3
  bool job_card = false;
  bool sheet = false;  ///< maker's sheet
  bool panel = false;  ///< step panel
  bool glass = false;  ///< an instrument large
  bool look = false;   ///< look inside, practice: a side card
  bool time_line = false;
  bool guidance = false;
  std::optional<Rect> working;  ///< [px] what the hands work on, with the cord
};

struct Layout {
  Room room = Room::Wide;
  float u_px = 1.0F;   ///< px per u
  bool paged = false;  ///< a card fills the window and scrolls; the picture rests
  Rect page;           ///< empty unless paged
  Rect top_line;       ///< in narrow rooms a chip
  Rect hand_left;
  Rect hand_right;
  HandForm left_form = HandForm::Full;
  HandForm right_form = HandForm::Full;
  Rect guidance;
  bool guidance_in_one_line = false;
  Rect side;                 ///< job card, maker's sheet or look inside; one of them
  bool side_folded = false;  ///< to a tab
  Rect side_second;          ///< where the room allows two
  Rect panel;
  Rect glass;
  Rect time_line;
  Rect free;  ///< where the picture shows: cards leave it alone
};

/// returns  rectangles that never overlap each other; paged: only the page. The free rectangle is at least 40 % of the
///          window (28 % in narrow rooms or beside two side cards) when nothing is paged.
Layout compute_layout(const LayoutAsk& ask);

}  // namespace proofstand::desk
