// The stand as one window: start sheet, work, mark sheet. Lives by whatever clock its frames are given; draws when
// something has changed; decides nothing about the work.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "sim/desk/layout.h"
#include "sim/desk/panels/look_inside.h"
#include "sim/desk/panels/mark_page.h"
#include "sim/desk/panels/pages.h"
#include "sim/desk/panels/papers.h"
#include "sim/desk/panels/start_sheet.h"
#include "sim/desk/panels/step_panel.h"
#include "sim/desk/panels/time_line.h"
#include "sim/desk/review.h"
#include "sim/desk/settings.h"
#include "sim/desk/sound/speaker.h"
#include "sim/desk/window/card_kit.h"
#include "sim/desk/window/window_layer.h"
#include "sim/desk/workplace.h"
#include "sim/picture/painter.h"
#include "sim/report/guidance.h"

namespace proofstand::desk {

struct StandAsk {
  std::string scenario;  ///< file to begin with; empty: the start sheet
  record::Way way = record::Way::Practice;
  std::string attempt;  ///< file to record to, or to go on with when it is open; empty: one is named
  std::int64_t seed = 0;
  std::string who;
  std::string program;               ///< version of this program
  std::optional<Settings> settings;  ///< instead of the person's own; then nothing is kept either
  CompleteSheet complete_sheet;      ///< adds curves and maps to mark sheets; may be empty
};

class Stand {
 public:
  /// errors: no-opengl, shader; those of beginning or going on with an attempt
  static base::Result<std::unique_ptr<Stand>> open(WindowLayer& window, StandAsk ask);
  ~Stand();
  Stand(const Stand&) = delete;
  Stand& operator=(const Stand&) = delete;

  /// One frame at a moment of the window's clock [s]: takes input, lets time pass, draws and shows.
  void frame(double now_s);
  /// Lets time pass without drawing, while nothing is to be seen of it.
  void idle(double now_s);
  /// Something has changed since the last frame, or moves.
  [[nodiscard]] bool due() const;
  [[nodiscard]] bool done() const { return done_; }
  /// The graphics context went: the attempt is kept, nothing more can be drawn.
  [[nodiscard]] bool lost() const { return lost_; }
  [[nodiscard]] bool input_waits() const { return kit_.input_waits(); }

  // for drivers and pictures: what stands in the window
  [[nodiscard]] Workplace* workplace() { return work_.get(); }
  [[nodiscard]] const Review* review() const { return review_.get(); }
  [[nodiscard]] const Layout& layout() const { return layout_; }
  [[nodiscard]] float px_per_pt() const { return window_->content_scale(); }
  /// What guidance says now; empty unless guided.
  [[nodiscard]] const std::optional<report::Guidance>& guidance() const { return guidance_; }
  /// Frames drawn so far.
  [[nodiscard]] std::int64_t frames() const { return frames_; }

 private:
  // the screen, what is open on it, and what is typed: forgotten with the window
  struct Open {
    bool job_card = false;
    bool sheet = false;
    bool panel = false;
    bool glass = false;
    bool look = false;
    bool time_line = false;
    bool why = false;
    bool side_forced = false;  ///< a folded card was asked to unfold: it may cover the work
    Page page = Page::None;
    int pane = -1;  ///< which card has the keyboard; -1: the picture
    JobCardState card;
    StepPanelState steps;
    TimeLineState time;
    SettingsState settings;
    MarkPageState marks;
    std::string note;
  };

  Stand(WindowLayer& window, StandAsk ask, std::unique_ptr<picture::Painter> painter);

  // stand.cpp
  base::Result<base::Done> begin_first();
  base::Result<base::Done> start_job(const std::string& scenario, record::Way way, const std::string& attempt,
                                     std::int64_t seed);
  base::Result<base::Done> go_on(const std::string& attempt);
  base::Result<base::Done> open_review(const std::string& attempt);
  void enter(std::unique_ptr<LiveAttempt> attempt);
  void set_workshop(const bench::BenchSetup& setup);
  void to_start();
  [[nodiscard]] bool paused() const;
  [[nodiscard]] Stage stage(double now_s) const;

  // stand_cards.cpp
  void draw_start();
  void draw_work(Orders& orders);
  void draw_top(Orders& orders);
  void draw_hand(event::HandId hand, Orders& orders);
  void draw_guide(Orders& orders);
  void draw_sides(Orders& orders);
  void draw_instruments(Orders& orders);  ///< step panel, glass, time line
  void draw_pages(Orders& orders);
  void draw_marks(Orders& orders);
  void fill_start();
  void draw_side(const Rect& at, int which, Orders& orders);
  void draw_glass(Orders& orders);
  [[nodiscard]] Layout arrange() const;
  void renew_guidance();

  // stand_input.cpp
  void take_pointer();
  void take_keys(Orders& orders);
  void take_rebinding();

  // stand_orders.cpp
  void carry_out(const Orders& orders);
  void carry_out(const Order& order);
  void command(CommandId id, bool fine, int count);
  void show_where();
  void show_finding(std::size_t index);
  void hand_over();
  void save_html();
  void keep_settings();

  // stand_picture.cpp
  void paint(double now_s);
  [[nodiscard]] Eyesight eyesight();

  WindowLayer* window_;
  StandAsk ask_;
  CardKit kit_;
  Settings settings_;
  Bindings bindings_;
  std::unique_ptr<Speaker> speaker_;  ///< none without a screen
  std::unique_ptr<picture::Painter> painter_;
  std::unique_ptr<picture::Painter> glass_painter_;
  std::unique_ptr<scene::Workshop> workshop_;
  std::unique_ptr<Workplace> work_;
  std::unique_ptr<Review> review_;
  std::unique_ptr<record::Replayer> peek_;  ///< an earlier moment looked at on the time line
  std::optional<scene::Scene> peek_scene_;
  std::optional<Camera> review_camera_;
  std::optional<scene::Scene> review_scene_;
  std::vector<glm::vec3> evidence_;
  std::vector<TimeMark> marks_;  ///< of the run under way
  std::size_t marked_events_ = 0;
  PullTrace trace_;
  StartView start_;
  Open open_;
  Layout layout_;
  std::optional<report::Guidance> guidance_;
  std::size_t guided_events_ = static_cast<std::size_t>(-1);
  std::string questions_;
  std::string questions_language_;
  double last_s_ = -1.0;
  double now_s_ = 0.0;
  bool focused_ = true;
  glm::vec2 pointer_px_{0.0F};
  bool turning_ = false;   ///< the right button looks round
  bool shifting_ = false;  ///< the middle button looks aside
  // what the picture was last drawn of
  std::uint64_t painted_version_ = ~std::uint64_t{0};
  glm::ivec2 painted_size_{0, 0};
  double changed_s_ = 0.0;
  bool refining_ = false;
  picture::DraftScale draft_scale_;
  std::uint64_t review_version_ = 0;
  int settle_ = 3;  ///< frames until cards have settled
  std::int64_t frames_ = 0;
  bool done_ = false;
  bool lost_ = false;
};

}  // namespace proofstand::desk
