#include "sim/desk/window/stand.h"

#include <imgui.h>

#include <algorithm>

#include "sim/desk/asset_files.h"
#include "sim/desk/panels/paper.h"
#include "sim/desk/window/imgui_settings.h"
#include "sim/desk/words.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/files.h"

namespace proofstand::desk {
namespace {

constexpr int kSettling = 3;  // frames after an event until every card has found its size

// chords as the settings file has them, back to chords
std::optional<Chord> chord_from_words(std::string_view words) {
  for (int key = 1; key <= static_cast<int>(Key::F11); ++key) {
    for (int held = 0; held < 4; ++held) {
      const Chord chord{static_cast<Key>(key), (held & 1) != 0, (held & 2) != 0};
      if (words_of(chord) == words) return chord;
    }
  }
  return std::nullopt;
}

Bindings bindings_of(const Settings& settings) {
  Bindings out = default_bindings();
  for (const Command& row : command_table()) {
    const auto set = settings.keys.find(std::string(row.name));
    if (set == settings.keys.end()) continue;
    const auto chord = chord_from_words(set->second);
    if (!chord) continue;
    const auto changed = rebound(out, row.id, {*chord});
    if (changed) out = *changed;
  }
  out.letters = settings.plain_letters;
  return out;
}

}  // namespace

base::Result<std::unique_ptr<Stand>> Stand::open(WindowLayer& window, StandAsk ask) {
  auto painter = picture::Painter::create(&WindowLayer::gl_address);
  if (!painter) return painter.error();
  std::unique_ptr<Stand> out(new Stand(window, std::move(ask), std::move(*painter)));
  const auto begun = out->begin_first();
  if (!begun) return begun.error();
  return out;
}

Stand::Stand(WindowLayer& window, StandAsk ask, std::unique_ptr<picture::Painter> painter)
    : window_(&window),
      ask_(std::move(ask)),
      kit_(window),
      settings_(ask_.settings ? *ask_.settings : load_settings()),
      painter_(std::move(painter)) {
  bindings_ = bindings_of(settings_);
  if (!window.screenless()) speaker_ = std::make_unique<Speaker>();
  if (!set_language(settings_.language)) settings_.language = "en";
}

Stand::~Stand() {
  if (work_) work_->attempt().keep();
}

base::Result<base::Done> Stand::begin_first() {
  if (ask_.scenario.empty()) {
    if (ask_.attempt.empty()) {
      fill_start();
      return base::Done{};
    }
    return go_on(ask_.attempt);
  }
  // a file that is there and open is gone on with
  const auto there = ask_.attempt.empty() ? base::Result<record::Attempt>(base::Error{"none", "", "none", "none"})
                                          : record::load_attempt(ask_.attempt);
  if (there && !there->closing) return go_on(ask_.attempt);
  return start_job(ask_.scenario, ask_.way, ask_.attempt, ask_.seed);
}

base::Result<base::Done> Stand::start_job(const std::string& scenario, record::Way way, const std::string& attempt,
                                          std::int64_t seed) {
  StartAsk start;
  start.scenario = scenario;
  start.way = way;
  start.seed = seed;
  start.attempt = attempt;
  start.who = ask_.who;
  start.program = ask_.program;
  if (settings_.drag_gain_percent != 100) start.aids.emplace_back("pointer gain");
  if (settings_.steadying_ms > 0) start.aids.emplace_back("steadying");
  if (settings_.hold_by_click) start.aids.emplace_back("hold by click");
  if (settings_.reading_in_words) start.aids.emplace_back("readings in words");
  auto begun = LiveAttempt::begin(start);
  if (!begun) return begun.error();
  enter(std::move(*begun));
  return base::Done{};
}

base::Result<base::Done> Stand::go_on(const std::string& attempt) {
  auto resumed = LiveAttempt::go_on(attempt);
  if (!resumed && resumed.error().code == "closed") return open_review(attempt);
  if (!resumed) return resumed.error();
  enter(std::move(*resumed));
  return base::Done{};
}

void Stand::enter(std::unique_ptr<LiveAttempt> attempt) {
  set_workshop(attempt->bench().setup());
  review_.reset();
  open_ = Open{};
  open_.job_card = true;  // what is to be done, before anything else
  trace_ = {};
  marks_.clear();
  marked_events_ = 0;
  guidance_.reset();
  guided_events_ = static_cast<std::size_t>(-1);
  work_ = std::make_unique<Workplace>(std::move(attempt), *workshop_, settings_, eyesight());
  settle_ = kSettling;
  last_s_ = -1.0;
}

void Stand::set_workshop(const bench::BenchSetup& setup) {
  workshop_ = std::make_unique<scene::Workshop>(setup);
  painter_->keep(workshop_->meshes());
  glass_painter_.reset();
  painted_version_ = ~std::uint64_t{0};
}

base::Result<base::Done> Stand::open_review(const std::string& attempt) {
  auto review = Review::open(attempt, settings_.language, ask_.complete_sheet);
  if (!review) return review.error();
  work_.reset();
  peek_.reset();
  peek_scene_.reset();
  review_ = std::move(*review);
  open_ = Open{};
  open_.time.at = review_->end();
  set_workshop(review_->marking().scenario.setup);
  evidence_.clear();
  if (review_->can_replay()) {
    review_scene_ = workshop_->compute_scene(review_->bench());
    review_camera_.emplace(scene::view_named(review_->bench(), *review_scene_, "wheel").value_or(scene::View{}));
  }
  settle_ = kSettling;
  ++review_version_;
  return base::Done{};
}

void Stand::to_start() {
  if (work_) work_->attempt().keep();
  work_.reset();
  review_.reset();
  peek_.reset();
  peek_scene_.reset();
  open_ = Open{};
  fill_start();
  settle_ = kSettling;
}

bool Stand::paused() const {
  if (!work_) return true;
  if (work_->attempt().way() == record::Way::Exam) return false;
  return open_.page != Page::None || layout_.paged || peek_ != nullptr || !focused_;
}

Stage Stand::stage(double now_s) const {
  const glm::vec2 size(window_->size_px());
  const float scale = px_per_pt();
  Stage out;
  out.shape = {static_cast<double>(size.x / scale), static_cast<double>(size.y / scale)};
  out.frame.window_px = size;
  out.frame.free = layout_.free.empty() ? Rect{0.0F, 0.0F, size.x, size.y} : layout_.free;
  out.now_s = now_s;
  return out;
}

bool Stand::due() const {
  if (settle_ > 0 || refining_ || kit_.input_waits()) return true;
  if (work_ && !paused() && (work_->moving() || work_->sight_version() != painted_version_)) return true;
  if (review_camera_ && review_ && review_camera_->moving()) return true;
  return glm::ivec2(window_->size_px()) != painted_size_;
}

void Stand::idle(double now_s) {
  const double step_s = last_s_ < 0.0 ? 0.0 : now_s - last_s_;
  last_s_ = now_s;
  now_s_ = now_s;
  if (!work_) return;
  work_->begin(stage(now_s));
  work_->end(step_s, paused(), [this](const Heard& heard) {
    if (settings_.sound && speaker_) speaker_->play(heard, 1.0F);
  });
  if (work_->attempt().over()) settle_ = std::max(settle_, 1);
}

void Stand::frame(double now_s) {
  const double step_s = last_s_ < 0.0 ? 0.0 : now_s - last_s_;
  last_s_ = now_s;
  now_s_ = now_s;
  if (kit_.input_waits()) settle_ = kSettling;
  settle_ = std::max(0, settle_ - 1);
  const float text = static_cast<float>(settings_.text_percent) / 100.0F;
  kit_.begin({window_->content_scale(), text, settings_.dark}, step_s);
  forget_items();
  const bool had_focus = focused_;
  focused_ = window_->focused();
  Orders orders;
  if (work_) {
    if (had_focus && !focused_) work_->focus_lost();
    if (!had_focus && focused_) work_->focus_back(ImGui::IsMouseDown(ImGuiMouseButton_Left));
    if (!work_->hands().pulling_by_button()) layout_ = arrange();
    work_->begin(stage(now_s));
    renew_guidance();
    paint(now_s);
    draw_work(orders);
    take_pointer();
  } else if (review_) {
    if (review_camera_) review_camera_->ease_to(now_s);
    paint(now_s);
    draw_marks(orders);
  } else {
    draw_start();
  }
  draw_pages(orders);
  take_keys(orders);
  carry_out(orders);
  if (work_) {
    work_->end(step_s, paused(), [this](const Heard& heard) {
      if (settings_.sound && speaker_) speaker_->play(heard, 1.0F);
    });
    if (!paused()) follow_pull(work_->bench(), trace_);
    if (work_->attempt().over()) hand_over();
  }
  window_->begin_picture();
  kit_.end();
  if (!window_->show_picture()) lost_ = true;
  ++frames_;
}

}  // namespace proofstand::desk
