// The eye: where one looks from, and how it gets there. It moves by itself only when the hands would be out of sight;
// looking round never acts. Knows no window; time comes in with each step.
#pragma once

#include <glm/glm.hpp>
#include <optional>

#include "sim/desk/layout.h"
#include "sim/scene/mesh.h"
#include "sim/scene/view.h"

namespace proofstand::desk {

/// Nearest and farthest that one looks from [m].
inline constexpr float kNearest_m = 0.12F;
inline constexpr float kFarthest_m = 3.0F;

/// What the hands work on: a ball round their places, and the way its working plane faces.
struct WorkingSet {
  scene::Ball ball;                     ///< [m] world
  glm::vec3 normal{0.0F, 0.0F, -1.0F};  ///< out of the work, towards who works on it
};

/// Window and the part of it that no card covers [px].
struct Frame {
  glm::vec2 window_px{1280.0F, 720.0F};
  Rect free{0.0F, 0.0F, 1280.0F, 720.0F};
};

/// The view that shows a set: its ball fills 55 % of the free part's shorter side, 15 to 40° off the working plane's
/// normal, as near as that allows to where one looks from now.
scene::View framing_view(const scene::View& now, const WorkingSet& set, const Frame& frame);

/// Is the ball inside the free part, and at least 60 % of its framed size? Hidden behind parts is for others to know.
bool shows_well(const scene::View& view, const WorkingSet& set, const Frame& frame);

class Camera {
 public:
  explicit Camera(const scene::View& first);

  [[nodiscard]] const scene::View& view() const { return view_; }
  [[nodiscard]] bool moving() const { return easing_; }
  /// Someone has turned the eye themselves; until F, Home or a named view it stays where they put it.
  [[nodiscard]] bool by_hand() const { return by_hand_; }

  /// Eases to a view: 150 to 250 ms, the more the farther it turns; with reduced motion it cuts.
  void go_to(const scene::View& view, double now_s, bool reduced_motion);
  /// Back to the first view.
  void go_home(double now_s, bool reduced_motion);
  /// The part no card covers changed: the picture shifts, the eye stays. At once, since cards never move under a
  /// button.
  void shift_into(const Frame& frame);
  /// Drag that looks round: 0.3° a pt, about a point of the world if one is under the pointer. Level horizon.
  void look_round(const glm::vec2& moved_pt, const std::optional<glm::vec3>& about);
  /// Drag that moves sideways. height_pt: of the window.
  void look_aside(const glm::vec2& moved_pt, float height_pt);
  /// Notches of the wheel, positive nearer: 12 % each.
  void come_nearer(float notches);
  /// Takes the motion on to a moment.
  void ease_to(double now_s);

 private:
  scene::View view_;
  scene::View first_;
  scene::View from_;
  scene::View to_;
  double began_s_ = 0.0;
  double lasts_s_ = 0.0;
  bool easing_ = false;
  bool by_hand_ = false;
};

}  // namespace proofstand::desk
