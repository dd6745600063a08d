#include "sim/desk/layout.h"

#include <algorithm>
#include <array>

namespace proofstand::desk {
namespace {

constexpr float kWideWidth = 1100.0F, kWideHeight = 640.0F;
constexpr float kMiddleWidth = 640.0F, kMiddleHeight = 400.0F;
constexpr float kTwoSideCards = 1400.0F;
constexpr float kMostWidth = 2400.0F;  // [u] on very large screens cards stay together
constexpr float kGap = 8.0F;           // [u] between cards
constexpr float kChip = 36.0F;
constexpr float kOneLine = 44.0F;

struct Size {
  float w = 0.0F;
  float h = 0.0F;
};

// the figures of one room, in u
struct Figures {
  float top = 40.0F;
  float margin = 24.0F;
  Size hand{264.0F, 92.0F};
  Size guidance{560.0F, 132.0F};
  float side = 392.0F;
  float panel = 296.0F;
  Size glass{360.0F, 216.0F};
  float time_line = 64.0F;
  float least_free = 0.40F;
};

Figures figures_of(Room room, float width) {
  if (room == Room::Wide) return {};
  if (room == Room::Middle) {
    return {32.0F,
            16.0F,
            {200.0F, kOneLine},
            {420.0F, 88.0F},
            std::min(340.0F, 0.4F * width),
            std::min(260.0F, 0.4F * width),
            {288.0F, 180.0F},
            48.0F,
            0.40F};
  }
  return {kChip, 8.0F, {96.0F, kChip}, {kChip, kChip}, 0.0F, 0.0F, {0.0F, 0.0F}, 0.0F, 0.28F};
}

Size hand_size(const Figures& figures, HandForm form) {
  if (form == HandForm::Full) return figures.hand;
  if (form == HandForm::Line) return {std::min(figures.hand.w, 200.0F), kOneLine};
  return {96.0F, kChip};
}

// how far the cards have given way
struct Given {
  bool guidance_line = false;
  HandForm left = HandForm::Full;
  HandForm right = HandForm::Full;
  int glass_corner = 0;  // 0 upper left of the free part, 1 upper right, 2 lower left, 3 lower right
  bool side_across = false;
  bool side_folded = false;
};

// all in u, origin at the window's upper left
class Arranger {
 public:
  Arranger(const LayoutAsk& ask, Room room, Size window) : ask_(ask), room_(room), window_(window) {
    figures_ = figures_of(room, window.w);
    const float width = std::min(window.w, kMostWidth);
    left_ = (window.w - width) / 2.0F;
    right_ = left_ + width;
  }

  Layout arrange(const Given& given) {
    Layout out;
    out.room = room_;
    const float m = figures_.margin;
    float left = left_, right = right_, bottom = window_.h, top = figures_.top;
    if (room_ == Room::Narrow) return arrange_narrow();
    out.top_line = {left_, 0.0F, right_ - left_, figures_.top};
    if (ask_.time_line) {
      bottom -= figures_.time_line;
      out.time_line = {0.0F, bottom, window_.w, figures_.time_line};
    }
    const float tall = bottom - top - 2.0F * m;
    const float tall_from = top + m;
    if (ask_.panel) {
      out.panel = {left + m, tall_from, figures_.panel, tall};
      left = out.panel.right();
    }
    place_sides(given, out, left, right, tall_from, tall);
    place_bottom(given, out, left, right, bottom - m);
    const float ceiling = top;
    float floor = bottom - m;
    for (const Rect* card : {&out.hand_left, &out.hand_right, &out.guidance}) {
      if (!card->empty()) floor = std::min(floor, card->y);
    }
    // beside cards that stay together on a very wide screen the picture goes on
    const float from = left > left_ ? left : 0.0F, to = right < right_ ? right : window_.w;
    out.free = {from, ceiling, to - from, floor - ceiling};
    place_glass(given, out);
    return out;
  }

  [[nodiscard]] const Figures& figures() const { return figures_; }

 private:
  // how many cards want the side: job card, maker's sheet, look inside
  [[nodiscard]] int sides() const {
    return static_cast<int>(ask_.job_card) + static_cast<int>(ask_.sheet) + static_cast<int>(ask_.look);
  }

  void place_sides(const Given& given, Layout& out, float& left, float& right, float from, float tall) const {
    if (sides() == 0) return;
    const float m = figures_.margin;
    if (given.side_folded) {
      out.side = {right - m - kChip, from, kChip, tall / 2.0F};
      out.side_folded = true;
      right = out.side.x;
      return;
    }
    if (given.side_across && !ask_.panel) {
      out.side = {left + m, from, figures_.side, tall};
      left = out.side.right();
    } else {
      out.side = {right - m - figures_.side, from, figures_.side, tall};
      right = out.side.x;
    }
    if (sides() > 1 && window_.w >= kTwoSideCards && !given.side_across && !ask_.panel) {
      out.side_second = {left + m, from, figures_.side, tall};
      left = out.side_second.right();
    }
  }

  void place_bottom(const Given& given, Layout& out, float left, float right, float floor) const {
    const float m = figures_.margin;
    const bool beside = room_ == Room::Middle && (sides() > 0 || ask_.panel);
    out.left_form = beside ? HandForm::Chip : given.left;
    out.right_form = beside ? HandForm::Chip : given.right;
    const float width = right - left - 2.0F * m;
    Size l = hand_size(figures_, out.left_form), r = hand_size(figures_, out.right_form);
    if (l.w + r.w + kGap > width) {
      out.left_form = out.right_form = HandForm::Chip;
      l = r = hand_size(figures_, HandForm::Chip);
    }
    out.hand_left = {left + m, floor - l.h, l.w, l.h};
    out.hand_right = {right - m - r.w, floor - r.h, r.w, r.h};
    if (!ask_.guidance) return;
    out.guidance_in_one_line = given.guidance_line;
    const float height = given.guidance_line ? kOneLine : figures_.guidance.h;
    const float between = width - l.w - r.w - 2.0F * kGap;
    const float wide = std::min(figures_.guidance.w, width);
    if (between >= 320.0F) {
      const float w = std::min(wide, between);
      // in the middle of the picture if it can be, else in the middle of the gap
      const float low = out.hand_left.right() + kGap, high = out.hand_right.x - kGap - w;
      const float x = std::clamp((left + right - w) / 2.0F, low, std::max(low, high));
      out.guidance = {x, floor - height, w, height};
    } else {
      out.guidance = {(left + right - wide) / 2.0F, std::min(out.hand_left.y, out.hand_right.y) - kGap - height, wide,
                      height};
    }
  }

  void place_glass(const Given& given, Layout& out) const {
    if (!ask_.glass) return;
    const float m = std::min(figures_.margin, 16.0F);
    const float w = std::min(figures_.glass.w, out.free.w - 2.0F * m);
    const float h = std::min(figures_.glass.h, out.free.h - 2.0F * m);
    const bool at_right = given.glass_corner == 1 || given.glass_corner == 3;
    const bool low = given.glass_corner >= 2;
    out.glass = {at_right ? out.free.right() - m - w : out.free.x + m, low ? out.free.bottom() - m - h : out.free.y + m,
                 w, h};
  }

  [[nodiscard]] Layout arrange_narrow() const {
    Layout out;
    out.room = Room::Narrow;
    out.left_form = out.right_form = HandForm::Chip;
    const float m = figures_.margin;
    float left = 0.0F, top = 0.0F, right = window_.w;
    const bool board = ask_.panel || ask_.glass;
    const float chip = std::min(200.0F, window_.w - 2.0F * m - kChip - kGap);
    if (board) {
      Rect& card = ask_.glass ? out.glass : out.panel;
      if (window_.w >= window_.h) {
        card = {m, m + kChip + kGap, 0.55F * window_.w - m, window_.h - 2.0F * m - kChip - kGap};
        left = card.right();
        out.top_line = {m, m, std::min(chip, card.w - kChip - kGap), kChip};
        if (ask_.guidance) out.guidance = {card.right() - kChip, m, kChip, kChip};
      } else {
        card = {m, m + kChip + kGap, window_.w - 2.0F * m, 0.55F * window_.h - m - kChip - kGap};
        top = card.bottom();
        out.top_line = {m, m, chip, kChip};
        if (ask_.guidance) out.guidance = {right - m - kChip, m, kChip, kChip};
      }
    } else {
      out.top_line = {m, m, chip, kChip};
      if (ask_.guidance) out.guidance = {right - m - kChip, m, kChip, kChip};
      top = m + kChip;
    }
    out.guidance_in_one_line = true;
    const float hand = right - left - 2.0F * m - kGap >= 192.0F ? 96.0F : 44.0F;
    out.hand_left = {left + m, window_.h - m - kChip, hand, kChip};
    out.hand_right = {right - m - hand, window_.h - m - kChip, hand, kChip};
    out.free = {left, top, right - left, out.hand_left.y - top};
    return out;
  }

  LayoutAsk ask_;
  Room room_;
  Size window_;
  Figures figures_;
  float left_ = 0.0F;
  float right_ = 0.0F;
};

Room room_of(Size window) {
  if (window.w >= kWideWidth && window.h >= kWideHeight) return Room::Wide;
  if (window.w >= kMiddleWidth && window.h >= kMiddleHeight) return Room::Middle;
  return Room::Narrow;
}

Rect scaled(const Rect& r, float by) { return {r.x * by, r.y * by, r.w * by, r.h * by}; }

void scale_all(Layout& layout, float by) {
  for (Rect* r : {&layout.page, &layout.top_line, &layout.hand_left, &layout.hand_right, &layout.guidance, &layout.side,
                  &layout.side_second, &layout.panel, &layout.glass, &layout.time_line, &layout.free}) {
    *r = scaled(*r, by);
  }
}

}  // namespace

bool meets(const Rect& a, const Rect& b) {
  if (a.empty() || b.empty()) return false;
  constexpr float kHair = 0.01F;
  return a.x + kHair < b.right() && b.x + kHair < a.right() && a.y + kHair < b.bottom() && b.y + kHair < a.bottom();
}

bool holds(const Rect& outer, const Rect& inner) {
  constexpr float kHair = 0.01F;
  return inner.x >= outer.x - kHair && inner.y >= outer.y - kHair && inner.right() <= outer.right() + kHair &&
         inner.bottom() <= outer.bottom() + kHair;
}

Layout compute_layout(const LayoutAsk& ask) {
  const float u_px = ask.content_scale * ask.text_scale;
  const Size window{ask.window_px.x / u_px, ask.window_px.y / u_px};
  const Room room = room_of(window);
  // where a card and the work do not fit beside each other, the card is a page
  if (room == Room::Narrow && (ask.job_card || ask.sheet || ask.look || ask.time_line)) {
    Layout out;
    out.room = room;
    out.u_px = u_px;
    out.paged = true;
    out.page = {0.0F, 0.0F, ask.window_px.x, ask.window_px.y};
    return out;
  }
  Arranger arranger(ask, room, window);
  Given given;
  const bool two = !arranger.arrange(given).side_second.empty();
  const float least = two ? 0.28F : arranger.figures().least_free;
  const auto fits = [&](const Layout& layout) {
    if (layout.free.w * layout.free.h < least * window.w * window.h) return false;
    if (!ask.working) return true;
    const Rect need = scaled(*ask.working, 1.0F / u_px);
    const Rect wide{need.x - 24.0F, need.y - 24.0F, need.w + 48.0F, need.h + 48.0F};
    for (const Rect& card : {layout.hand_left, layout.hand_right, layout.guidance, layout.side, layout.side_second,
                             layout.panel, layout.glass}) {
      if (meets(card, wide)) return false;
    }
    return true;
  };
  Layout layout = arranger.arrange(given);
  // the order in which cards give way
  const std::array<void (*)(Given&), 9> steps = {
      [](Given& g) { g.guidance_line = true; },
      [](Given& g) { g.left = g.right = HandForm::Line; },
      [](Given& g) { g.left = g.right = HandForm::Chip; },
      [](Given& g) { g.glass_corner = 1; },
      [](Given& g) { g.glass_corner = 2; },
      [](Given& g) { g.glass_corner = 3; },
      [](Given& g) { g.side_across = true; },
      [](Given& g) {
        g.side_across = false;
        g.side_folded = true;
      },
      [](Given& g) { g.glass_corner = 0; },
  };
  for (const auto& step : steps) {
    if (room == Room::Narrow || fits(layout)) break;
    step(given);
    layout = arranger.arrange(given);
  }
  layout.u_px = u_px;
  scale_all(layout, u_px);
  return layout;
}

}  // namespace proofstand::desk
