#include "tests/stand/window_hand.h"

#include <cstdio>

#include "sim/bench/hold_sight.h"

namespace proofstand::test {

std::unique_ptr<WindowHand> WindowHand::open(const std::string& scenario, record::Way way, const std::string& attempt) {
  std::remove(attempt.c_str());
  auto out = std::unique_ptr<WindowHand>(new WindowHand);
  desk::WindowAsk ask;
  ask.screenless = true;
  auto window = desk::WindowLayer::open(ask);
  if (!window) {
    std::fprintf(stderr, "%s\n", window.error().sentence().c_str());
    return nullptr;
  }
  out->window_ = std::move(*window);
  desk::StandAsk asked;
  asked.scenario = std::string(PROOFSTAND_ROOT) + "/scenarios/" + scenario;
  asked.way = way;
  asked.attempt = attempt;
  asked.program = "test";
  desk::Settings settings;
  settings.reduced_motion = true;
  settings.quality = "draft";
  asked.settings = settings;
  auto stand = desk::Stand::open(*out->window_, std::move(asked));
  if (!stand) {
    std::fprintf(stderr, "%s\n", stand.error().sentence().c_str());
    return nullptr;
  }
  out->stand_ = std::move(*stand);
  out->run_frames(4);
  return out;
}

void WindowHand::run_frames(int count) {
  for (int i = 0; i < count; ++i) {
    stand_->frame(now_s_);
    now_s_ += 1.0 / 60.0;
  }
}

void WindowHand::settle() {
  for (int i = 0; i < 240; ++i) {
    run_frames(1);
    if (i > 2 && stand_->workplace() != nullptr && !stand_->workplace()->moving()) return;
  }
}

void WindowHand::move_to(glm::vec2 px) {
  ImGui::GetIO().AddMousePosEvent(px.x, px.y);
  run_frames(1);
}

void WindowHand::click(glm::vec2 px) {
  move_to(px);
  ImGui::GetIO().AddMouseButtonEvent(0, true);
  run_frames(1);
  ImGui::GetIO().AddMouseButtonEvent(0, false);
  run_frames(2);
}

void WindowHand::key(ImGuiKey key) {
  ImGui::GetIO().AddKeyEvent(key, true);
  run_frames(1);
  ImGui::GetIO().AddKeyEvent(key, false);
  run_frames(2);
}

std::optional<glm::vec2> WindowHand::spot_of(std::string_view thing, event::PlaceKind place, int bolt) {
  desk::Workplace& work = *stand_->workplace();
  for (const desk::route::ListedPlace& listed : work.list()) {
    const desk::route::ListedPlace& at = listed;
    const bool named = thing.empty() || bench().setup().things[event::index_of(at.pointed.thing)].name == thing;
    const bool right = named && at.pointed.place == place &&
                       (bolt < 0 || event::index_of(at.pointed.bolt) == static_cast<std::size_t>(bolt));
    if (!right || at.out_of_sight) continue;
    return glm::vec2{static_cast<float>(at.at.x_pt), static_cast<float>(at.at.y_pt)} * stand_->px_per_pt();
  }
  return std::nullopt;
}

}  // namespace proofstand::test
