// The danger: on some screen and size of words a card covers another, or the work.
#include "sim/desk/layout.h"

#include <vector>

#include "tests/support/catch.h"

namespace proofstand::desk {
namespace {

LayoutAsk ask_for(glm::vec2 window, float text, unsigned which) {
  LayoutAsk ask;
  ask.window_px = window;
  ask.text_scale = text;
  ask.job_card = (which & 1U) != 0;
  ask.sheet = (which & 2U) != 0;
  ask.panel = (which & 4U) != 0;
  ask.glass = (which & 8U) != 0;
  ask.time_line = (which & 16U) != 0;
  ask.guidance = (which & 32U) != 0;
  return ask;
}

std::vector<Rect> cards_of(const Layout& l) {
  return {l.top_line, l.hand_left, l.hand_right, l.guidance, l.side, l.side_second, l.panel, l.time_line};
}

}  // namespace

TEST_CASE("no card lies over another, on any screen, with any cards open", "[desk][layout]") {
  for (const glm::vec2 window : {glm::vec2{1024, 640}, glm::vec2{1920, 1080}, glm::vec2{3840, 2160}}) {
    for (const float text : {0.75F, 1.0F, 2.0F, 3.0F}) {
      for (unsigned which = 0; which < 64; ++which) {
        const Layout layout = compute_layout(ask_for(window, text, which));
        CAPTURE(window.x, text, which, static_cast<int>(layout.room));
        if (layout.paged) {
          CHECK(layout.room == Room::Narrow);
          continue;
        }
        const std::vector<Rect> cards = cards_of(layout);
        const Rect whole{0.0F, 0.0F, window.x, window.y};
        for (std::size_t i = 0; i < cards.size(); ++i) {
          if (!cards[i].empty()) CHECK(holds(whole, cards[i]));
          CHECK_FALSE(meets(cards[i], layout.free));
          for (std::size_t j = i + 1; j < cards.size(); ++j) {
            CAPTURE(i, j);
            CHECK_FALSE(meets(cards[i], cards[j]));
          }
        }
      }
    }
  }
}

TEST_CASE("the room is counted in words, not in pixels", "[desk][layout]") {
  const auto room = [](glm::vec2 window, float text) { return compute_layout(ask_for(window, text, 0)).room; };
  CHECK(room({1024, 640}, 0.75F) == Room::Wide);
  CHECK(room({1024, 640}, 1.0F) == Room::Middle);
  CHECK(room({1024, 640}, 2.0F) == Room::Narrow);
  CHECK(room({1920, 1080}, 1.0F) == Room::Wide);
  CHECK(room({1920, 1080}, 2.0F) == Room::Middle);
  CHECK(room({1920, 1080}, 3.0F) == Room::Narrow);
  CHECK(room({3840, 2160}, 3.0F) == Room::Wide);
}

TEST_CASE("the picture keeps its share of the window beside one card", "[desk][layout]") {
  for (const glm::vec2 window : {glm::vec2{1024, 640}, glm::vec2{1920, 1080}, glm::vec2{3840, 2160}}) {
    for (const float text : {0.75F, 1.0F, 2.0F, 3.0F}) {
      for (const unsigned which : {0U, 1U, 2U, 4U, 32U, 33U, 36U}) {
        const Layout layout = compute_layout(ask_for(window, text, which));
        if (layout.paged) continue;
        CAPTURE(window.x, text, which);
        const float share = layout.free.w * layout.free.h / (window.x * window.y);
        CHECK(share >= (layout.room == Room::Narrow ? 0.28F : 0.40F));
      }
    }
  }
}

}  // namespace proofstand::desk
