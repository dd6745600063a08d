// The card library made our own: typeface, paper, ink, sizes. Begins and ends each picture's cards.
#pragma once

#include <glm/glm.hpp>
#include <string>

#include "sim/base/result.h"

struct ImFont;
struct GLFWwindow;

namespace proofstand::desk {

class WindowLayer;

/// How the cards look, as the settings say.
struct CardLook {
  float content_scale = 1.0F;
  float text_scale = 1.0F;
  bool dark = false;
};

class CardKit {
 public:
  /// Needs the window's context current; one at a time. The typeface missing is no error: missing() says so.
  explicit CardKit(WindowLayer& window);
  ~CardKit();
  CardKit(const CardKit&) = delete;
  CardKit& operator=(const CardKit&) = delete;

  /// Begins a picture's cards. step_s: time since the last one [s], from whatever clock the window lives by.
  void begin(const CardLook& look, double step_s);
  /// Ends them and draws them into the window.
  void end();
  /// More input waits than one picture could take in: draw again soon.
  [[nodiscard]] bool input_waits() const;
  /// Failed assertions of the card library so far: ours to mend, so tests look here.
  [[nodiscard]] static int faults();
  [[nodiscard]] const std::string& missing() const { return missing_; }

 private:
  void set_style(const CardLook& look);
  WindowLayer* window_;
  std::string missing_;
  CardLook styled_{0.0F, 0.0F, false};
};

}  // namespace proofstand::desk
