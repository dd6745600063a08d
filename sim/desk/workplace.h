// The attempt as one stands at it: two hands, one eye, the list of places, what was heard and refused. Takes what a
// person asks for, sends actions, lets time pass; draws nothing and decides nothing.
//
// A frame: begin(), the inputs in their order, end(). The scene between two frames is the bench after the last one.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "sim/desk/camera.h"
#include "sim/desk/commands.h"
#include "sim/desk/live_attempt.h"
#include "sim/desk/refusal_words.h"
#include "sim/desk/route/aim.h"
#include "sim/desk/route/place_list.h"
#include "sim/desk/settings.h"
#include "sim/desk/sound/hearing.h"
#include "sim/scene/scene.h"

namespace proofstand::desk {

/// What the picture can be asked: both need the painter, which lives in the window.
struct Eyesight {
  /// Places near a point [pt], within the reach of a pick.
  std::function<std::vector<route::Hit>(const scene::Scene&, const scene::View&, const hand::Spot&)> pick;
  /// Which places are visible at all, by place.
  std::function<std::vector<bool>(const scene::Scene&, const scene::View&)> look_over;
};

/// A sound in words, by a hand or in the room.
struct Caption {
  Sound sound = Sound::Tick;
  std::optional<event::HandId> side;
  double until_s = 0.0;  ///< shown until then
};

/// What a hand's card says after a refusal, until the next input.
struct Refused {
  event::HandId hand = event::HandId::Right;
  RefusalWords words;
};

/// The window as the workplace needs it.
struct Stage {
  route::Shape shape;  ///< [pt]
  Frame frame;         ///< [px]
  double now_s = 0.0;
};

class Workplace {
 public:
  /// workshop, settings  outlive this
  Workplace(std::unique_ptr<LiveAttempt> attempt, const scene::Workshop& workshop, const Settings& settings,
            Eyesight eyesight);

  void begin(const Stage& stage);
  /// Lets time pass [s]; 0 for a paused frame. Sounds heard meanwhile go to `heard`.
  void end(double step_s, bool paused, const std::function<void(const Heard&)>& heard);

  // the pointer; spots in pt
  void press(const hand::Spot& spot, bool fine, bool near);
  void move(const hand::Spot& spot, bool fine, bool near);
  void release(const hand::Spot& spot, bool fine, bool near);
  void wheel(double notches_1, bool fine);
  void look_round(const glm::vec2& moved_pt, bool begins);
  void look_aside(const glm::vec2& moved_pt);
  /// The pointer has left the picture, for a card.
  void point_at_nothing();
  void focus_lost() { hands_.focus_lost(); }
  void focus_back(bool by_click) { hands_.focus_back(by_click); }

  /// Keys and buttons. NotMine: papers and panes, for the window.
  hand::Answer run(CommandId id, bool fine, int count = 1);
  /// What a chord means now.
  [[nodiscard]] std::optional<CommandId> meaning(const Bindings& bindings, const Chord& chord) const;
  /// A place of the list, as a click on it.
  void act_on_listed(std::size_t index, hand::Verb verb);
  void choose(std::int32_t index) { chosen_ = index; }
  void write_card(event::CardEntryId entry, const std::string& text);
  void hand_over();
  base::Result<base::Done> rewind(base::Tick to);
  /// Frames these places; all alike.
  void show_targets(std::vector<glm::vec3> points);
  void look_at(std::string_view view_name);
  void settings_changed();

  [[nodiscard]] const bench::Bench& bench() const { return attempt_->bench(); }
  [[nodiscard]] LiveAttempt& attempt() { return *attempt_; }
  [[nodiscard]] const LiveAttempt& attempt() const { return *attempt_; }
  [[nodiscard]] const hand::TwoHands& hands() const { return hands_; }
  [[nodiscard]] const scene::Scene& scene() const { return scene_; }
  [[nodiscard]] const scene::View& view() const { return camera_.view(); }
  [[nodiscard]] const Camera& camera() const { return camera_; }
  [[nodiscard]] Camera& camera() { return camera_; }
  [[nodiscard]] const hand::Sight& sight() const { return sight_; }
  [[nodiscard]] bool look_mode() const { return look_mode_; }
  void leave_look_mode() { look_mode_ = false; }
  /// The places this hand could try; made afresh when it was not walked since the picture changed.
  const std::vector<route::ListedPlace>& list();
  [[nodiscard]] std::int32_t chosen() const { return chosen_; }
  [[nodiscard]] const route::ListedPlace* chosen_place() const;
  /// Words for what the pointer is over; empty over nothing.
  [[nodiscard]] const std::string& label() const { return label_; }
  [[nodiscard]] const hand::Pointer& pointer() const { return pointer_; }
  [[nodiscard]] const std::vector<Caption>& captions() const { return captions_; }
  [[nodiscard]] const std::optional<Refused>& refused() const { return refused_; }
  [[nodiscard]] const std::vector<glm::vec3>& targets() const { return targets_; }
  /// Something moves, or an eased view: the next frame is due at once.
  [[nodiscard]] bool moving() const;
  /// Goes up whenever what one sees has changed.
  [[nodiscard]] std::uint64_t sight_version() const { return version_; }
  /// What the hands work on, in the world.
  [[nodiscard]] std::optional<WorkingSet> working_set() const;
  /// The same in the window [px]; nothing while the hands rest nowhere.
  [[nodiscard]] std::optional<Rect> working_rect() const;

 private:
  void point_at(const hand::Spot& spot, bool fine, bool near);
  void take_up(const event::Action& action);
  void walk(route::Walk way);
  void act_on_chosen(hand::Verb verb);
  void look_by_key(CommandId id, bool fine);
  void frame_hands();
  void follow_hands();
  void rebuild_scene();
  hand::GestureSettings gestures() const;

  std::unique_ptr<LiveAttempt> attempt_;
  const scene::Workshop* workshop_;
  const Settings* settings_;
  Eyesight eyesight_;
  scene::Scene scene_;
  Camera camera_;
  hand::TwoHands hands_;
  hand::Sight sight_;
  Hearing hearing_;
  Stage stage_;
  hand::Pointer pointer_;
  std::vector<route::AimChoice> under_;  ///< choices under the pointer, best first
  std::size_t under_at_ = 0;             ///< which of them the next-here key has reached
  std::optional<glm::vec3> pointed_world_;
  std::optional<glm::vec3> pivot_;
  std::string label_;
  std::vector<route::ListedPlace> list_;
  std::int32_t chosen_ = -1;
  std::int32_t shown_ = -1;  ///< an out-of-sight place that was shown, so that the next choice acts
  bool list_stale_ = true;
  bool look_mode_ = false;
  std::vector<Caption> captions_;
  std::optional<Refused> refused_;
  std::vector<glm::vec3> targets_;
  std::uint64_t version_ = 0;
  double last_input_s_ = 0.0;
  std::uint64_t followed_ = 0;  ///< where the hands were when the eye last followed them
};

}  // namespace proofstand::desk
