// Someone at the window, for tests: moves a pointer, presses buttons and keys, and lets the window's clock run.
#pragma once

#include <imgui.h>

#include <memory>
#include <optional>
#include <string>

#include "sim/desk/window/stand.h"

namespace proofstand::test {

class WindowHand {
 public:
  /// A window without a screen, on a scenario of the repository; records into `attempt`.
  static std::unique_ptr<WindowHand> open(const std::string& scenario, record::Way way, const std::string& attempt);

  /// So many frames of a sixtieth of a second; as many more as the eye needs to come to rest when `settle`.
  void run_frames(int count);
  /// Until both hands have arrived and the view rests.
  void settle();
  void move_to(glm::vec2 px);
  void click(glm::vec2 px);
  void key(ImGuiKey key);
  /// Where in the window a place is aimed at; nothing when it is not seen there.
  std::optional<glm::vec2> spot_of(std::string_view thing, event::PlaceKind place, int bolt);

  desk::Stand& stand() { return *stand_; }
  const bench::Bench& bench() { return stand_->workplace()->bench(); }

 private:
  std::unique_ptr<desk::WindowLayer> window_;
  std::unique_ptr<desk::Stand> stand_;
  double now_s_ = 0.0;
};

}  // namespace proofstand::test
