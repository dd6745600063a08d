#include "sim/desk/workplace.h"

#include <algorithm>
#include <cmath>

#include "sim/bench/hold_sight.h"
#include "sim/bench/senses.h"
#include "sim/desk/route/place_words.h"

namespace proofstand::desk {
namespace {

constexpr double kCaption_s = 1.5;
constexpr std::size_t kMostCaptions = 2;
constexpr double kStillSince_s = 0.3;  // the eye waits so long after an input before it moves by itself
constexpr float kHover_m = 0.06F;
constexpr float kSmallestSet_m = 0.035F;
constexpr float kKeyLook_pt = 50.0F;  // 15° at 0.3° a pt

scene::View first_view(const bench::Bench& bench, const scene::Scene& scene) {
  return scene::view_named(bench, scene, "workplace").value_or(scene::View{});
}

// one number that changes when a hand arrives, leaves, takes or puts away
std::uint64_t whereabouts(const bench::Bench& bench) {
  std::uint64_t out = 0;
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) {
    const bench::HoldSight sight = bench::see_hold(bench, hand);
    const std::uint64_t at = sight.stage == bench::HandStage::At ? 1 : 0;
    out = out * 1000003U + event::index_of(sight.holding);
    out = out * 1000003U + (at != 0 ? event::index_of(sight.at_thing) + 1 : 0);
    out = out * 257U + (at != 0 ? static_cast<std::uint64_t>(sight.at_place) : 0);
    out = out * 257U + (at != 0 ? event::index_of(sight.at_bolt) : 0);
  }
  return out;
}

}  // namespace

Workplace::Workplace(std::unique_ptr<LiveAttempt> attempt, const scene::Workshop& workshop, const Settings& settings,
                     Eyesight eyesight)
    : attempt_(std::move(attempt)),
      workshop_(&workshop),
      settings_(&settings),
      eyesight_(std::move(eyesight)),
      scene_(workshop.compute_scene(attempt_->bench())),
      camera_(first_view(attempt_->bench(), scene_)),
      hands_(
          attempt_->bench(), [this](const event::Action& action) { take_up(action); }, gestures()) {
  followed_ = whereabouts(bench());
}

hand::GestureSettings Workplace::gestures() const {
  hand::GestureSettings out;
  out.first = settings_->left_first ? event::HandId::Left : event::HandId::Right;
  out.drag_gain_1 = settings_->drag_gain_percent / 100.0;
  out.tremor_ticks = settings_->steadying_ms * base::kTicksPerSecond / 1000;
  out.hold_by_click = settings_->hold_by_click;
  return out;
}

void Workplace::settings_changed() { hands_.change(gestures()); }

void Workplace::take_up(const event::Action& action) {
  const bench::Refusal why = attempt_->act(action);
  list_stale_ = true;
  if (why == bench::Refusal::None) return;
  Refused refused;
  refused.hand = action.hand();
  refused.words = refusal_words(bench(), action, why);
  refused_ = std::move(refused);
}

void Workplace::begin(const Stage& stage) {
  stage_ = stage;
  const scene::View before = camera_.view();
  if (!hands_.pulling_by_button()) camera_.shift_into(stage.frame);
  camera_.ease_to(stage.now_s);
  const scene::View& now = camera_.view();
  if (now.target != before.target || now.round_rad != before.round_rad || now.above_rad != before.above_rad ||
      now.distance_m != before.distance_m || now.shift != before.shift) {
    ++version_;
    list_stale_ = true;
  }
  sight_ = route::sight_of(scene_, bench(), camera_.view(), stage.shape);
  hands_.see(sight_);
}

void Workplace::end(double step_s, bool paused, const std::function<void(const Heard&)>& heard) {
  if (!paused) {
    hands_.step();
    const base::Tick before = bench().tick();
    const std::size_t events = bench().events().size();
    const bool was_quiet = is_quiet(bench());
    attempt_->pass(step_s);
    for (const Heard& sound : hearing_.listen(bench())) {
      captions_.push_back({sound.sound, sound.side, stage_.now_s + kCaption_s});
      if (captions_.size() > kMostCaptions) captions_.erase(captions_.begin());
      if (heard) heard(sound);
      ++version_;
    }
    if (!was_quiet || events != bench().events().size() ||
        before / base::kTicksPerSecond != bench().tick() / base::kTicksPerSecond) {
      list_stale_ = list_stale_ || events != bench().events().size();
      rebuild_scene();
    }
  }
  attempt_->keep();
  const std::size_t shown = captions_.size();
  captions_.erase(
      std::remove_if(captions_.begin(), captions_.end(), [&](const Caption& c) { return c.until_s <= stage_.now_s; }),
      captions_.end());
  if (captions_.size() != shown) ++version_;
  follow_hands();
}

void Workplace::rebuild_scene() {
  std::vector<scene::Hover> hovers;
  const event::HandId active = hands_.active();
  if (pointed_world_ && hands_.doing(active) == hand::HandDoing::Free && !under_.empty()) {
    const scene::ScenePlace& place = scene_.places[static_cast<std::size_t>(under_[under_at_].place)];
    hovers.push_back({active, *pointed_world_ + place.normal * kHover_m, place.normal});
  }
  scene_ = workshop_->compute_scene(bench(), hovers);
  ++version_;
}

bool Workplace::moving() const { return camera_.moving() || !is_quiet(bench()) || hands_.pulling_by_button(); }

// --- pointer

void Workplace::point_at(const hand::Spot& spot, bool fine, bool near) {
  pointer_.at = spot;
  pointer_.fine = fine;
  pointer_.near = near;
  if (hands_.pulling_by_button()) return;  // what is under it does not matter while it pulls
  const std::vector<route::Hit> hits =
      eyesight_.pick ? eyesight_.pick(scene_, camera_.view(), spot) : std::vector<route::Hit>{};
  std::vector<route::AimChoice> choices = route::aim(hits, scene_, bench(), hands_.active(), spot);
  const bool same = !choices.empty() && !under_.empty() && choices.front().place == under_.front().place;
  under_ = std::move(choices);
  if (!same || under_at_ >= under_.size()) under_at_ = 0;
  if (under_.empty()) {
    pointer_.over.reset();
    pointed_world_.reset();
    label_.clear();
    return;
  }
  const route::AimChoice& choice = under_[under_at_];
  const scene::ScenePlace& place = scene_.places[static_cast<std::size_t>(choice.place)];
  pointer_.over = route::pointed_at(place, bench(), choice.world);
  pointed_world_ = choice.world;
  label_ = route::words_of_point(place, bench(), sight_.lens, choice.world);
}

void Workplace::press(const hand::Spot& spot, bool fine, bool near) {
  last_input_s_ = stage_.now_s;
  refused_.reset();
  chosen_ = -1;
  point_at(spot, fine, near);
  hands_.press(pointer_);
  ++version_;
}

void Workplace::move(const hand::Spot& spot, bool fine, bool near) {
  point_at(spot, fine, near);
  hands_.move(pointer_);
  if (hands_.doing(hands_.active()) == hand::HandDoing::Free) rebuild_scene();
  ++version_;
}

void Workplace::release(const hand::Spot& spot, bool fine, bool near) {
  last_input_s_ = stage_.now_s;
  pointer_.at = spot;
  pointer_.fine = fine;
  pointer_.near = near;
  if (!hands_.pulling_by_button()) point_at(spot, fine, near);
  hands_.release(pointer_);
  ++version_;
}

void Workplace::point_at_nothing() {
  if (!pointer_.over && label_.empty()) return;
  pointer_.over.reset();
  pointed_world_.reset();
  under_.clear();
  label_.clear();
  ++version_;
}

void Workplace::wheel(double notches_1, bool fine) {
  last_input_s_ = stage_.now_s;
  if (hands_.wheel(notches_1, fine) == hand::Answer::NotMine) camera_.come_nearer(static_cast<float>(notches_1));
  ++version_;
}

void Workplace::look_round(const glm::vec2& moved_pt, bool begins) {
  if (hands_.pulling_by_button()) return;
  if (begins) pivot_ = pointed_world_;
  camera_.look_round(moved_pt, pivot_);
}

void Workplace::look_aside(const glm::vec2& moved_pt) {
  if (!hands_.pulling_by_button()) camera_.look_aside(moved_pt, static_cast<float>(stage_.shape.height_pt));
}

// --- keys and buttons

std::optional<CommandId> Workplace::meaning(const Bindings& bindings, const Chord& chord) const {
  return command_for(bindings, chord, situation_of(hands_, bench(), look_mode_));
}

hand::Answer Workplace::run(CommandId id, bool fine, int count) {
  last_input_s_ = stage_.now_s;
  ++version_;
  const auto listed = [&](route::Walk way) {
    walk(way);
    return hand::Answer::Done;
  };
  switch (id) {
    case CommandId::ListBack:
      return listed(route::Walk::Back);
    case CommandId::ListOn:
      return listed(route::Walk::On);
    case CommandId::BandUp:
      return listed(route::Walk::BandUp);
    case CommandId::BandDown:
      return listed(route::Walk::BandDown);
    case CommandId::GroupBack:
      return listed(route::Walk::GroupBack);
    case CommandId::GroupOn:
      return listed(route::Walk::GroupOn);
    case CommandId::NextHere:
      if (under_.size() > 1) {
        under_at_ = (under_at_ + 1) % under_.size();
        point_at(pointer_.at, pointer_.fine, pointer_.near);
      }
      return hand::Answer::Done;
    case CommandId::Do:
      act_on_chosen(hand::Verb::Natural);
      return hand::Answer::Done;
    case CommandId::HoldNear:
      act_on_chosen(hand::Verb::Near);
      return hand::Answer::Done;
    case CommandId::LookMode:
      look_mode_ = !look_mode_;
      return hand::Answer::Done;
    case CommandId::LookLeft:
    case CommandId::LookRight:
    case CommandId::LookUp:
    case CommandId::LookDown:
    case CommandId::Nearer:
    case CommandId::Farther:
      look_by_key(id, fine);
      return hand::Answer::Done;
    case CommandId::Frame:
      frame_hands();
      return hand::Answer::Done;
    case CommandId::FirstView:
      camera_.go_home(stage_.now_s, settings_->reduced_motion);
      return hand::Answer::Done;
    default:
      break;
  }
  refused_.reset();
  const hand::Answer answer = desk::run(id, hands_, fine, count);
  if (answer == hand::Answer::BothHands) refused_ = Refused{hands_.active(), both_hands_words(bench())};
  return answer;
}

void Workplace::look_by_key(CommandId id, bool fine) {
  if (hands_.pulling_by_button()) return;
  const float step = fine ? kKeyLook_pt / 10.0F : kKeyLook_pt;
  if (id == CommandId::Nearer || id == CommandId::Farther) {
    camera_.come_nearer((id == CommandId::Nearer ? 1.0F : -1.0F) * (fine ? 0.25F : 1.0F));
    return;
  }
  const glm::vec2 moved = id == CommandId::LookLeft    ? glm::vec2{step, 0.0F}
                          : id == CommandId::LookRight ? glm::vec2{-step, 0.0F}
                          : id == CommandId::LookUp    ? glm::vec2{0.0F, step}
                                                       : glm::vec2{0.0F, -step};
  camera_.look_round(moved, std::nullopt);
}

const std::vector<route::ListedPlace>& Workplace::list() {
  // never rebuilt under someone who walks it, unless the bench itself has changed
  if (list_stale_ && !camera_.moving() && !hands_.pulling_by_button()) {
    const route::ListedPlace* chosen = chosen_place();
    const std::string words = chosen == nullptr ? std::string() : chosen->words;
    std::vector<bool> seen;
    if (eyesight_.look_over) seen = eyesight_.look_over(scene_, camera_.view());
    route::ListView from{scene_, bench(), camera_.view(), stage_.shape};
    from.hand = hands_.active();
    from.seen = seen.empty() ? nullptr : &seen;
    list_ = route::list_places(from);
    list_stale_ = false;
    chosen_ = -1;
    for (std::size_t i = 0; i < list_.size() && !words.empty(); ++i) {
      if (list_[i].words == words) chosen_ = static_cast<std::int32_t>(i);
    }
    shown_ = -1;
  }
  return list_;
}

const route::ListedPlace* Workplace::chosen_place() const {
  if (chosen_ < 0 || chosen_ >= static_cast<std::int32_t>(list_.size())) return nullptr;
  return &list_[static_cast<std::size_t>(chosen_)];
}

void Workplace::walk(route::Walk way) {
  list();
  chosen_ = route::walk(list_, chosen_, way);
  label_ = chosen_place() == nullptr ? std::string() : chosen_place()->words;
}

void Workplace::act_on_chosen(hand::Verb verb) {
  list();
  if (chosen_ >= 0) act_on_listed(static_cast<std::size_t>(chosen_), verb);
}

void Workplace::act_on_listed(std::size_t index, hand::Verb verb) {
  if (index >= list_.size()) return;
  last_input_s_ = stage_.now_s;
  refused_.reset();
  chosen_ = static_cast<std::int32_t>(index);
  const route::ListedPlace& place = list_[index];
  if (place.out_of_sight && shown_ != chosen_) {
    shown_ = chosen_;
    WorkingSet set;
    set.ball = {place.world, kSmallestSet_m};
    set.normal = scene_.places[static_cast<std::size_t>(place.place)].normal;
    camera_.go_to(framing_view(camera_.view(), set, stage_.frame), stage_.now_s, settings_->reduced_motion);
    return;
  }
  const hand::Pointed pointed = place.pointed;  // the list may change under what follows
  hands_.act_on(pointed, verb);
  ++version_;
}

void Workplace::write_card(event::CardEntryId entry, const std::string& text) {
  refused_.reset();
  take_up(event::make_write(bench().tick(), entry, text));
}

void Workplace::hand_over() { take_up(event::make_hand_over(bench().tick())); }

base::Result<base::Done> Workplace::rewind(base::Tick to) {
  const auto done = attempt_->rewind(to);
  hands_.forget();
  hearing_.forget();
  refused_.reset();
  targets_.clear();
  list_stale_ = true;
  rebuild_scene();
  return done;
}

// --- the eye

std::optional<WorkingSet> Workplace::working_set() const {
  std::vector<glm::vec3> points;
  glm::vec3 normal(0.0F);
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) {
    const bench::HoldSight sight = bench::see_hold(bench(), hand);
    if (sight.stage != bench::HandStage::At) continue;
    for (const scene::ScenePlace& place : scene_.places) {
      if (place.thing != sight.at_thing || place.place != sight.at_place || place.bolt != sight.at_bolt) continue;
      points.push_back(place.middle);
      normal += place.normal;
      break;
    }
  }
  if (points.empty()) return std::nullopt;
  WorkingSet set;
  for (const glm::vec3& point : points) set.ball.centre += point / static_cast<float>(points.size());
  set.ball.radius = kSmallestSet_m;
  for (const glm::vec3& point : points) {
    set.ball.radius = std::max(set.ball.radius, glm::length(point - set.ball.centre) + kSmallestSet_m);
  }
  if (glm::length(normal) > 0.1F) set.normal = glm::normalize(normal);
  return set;
}

std::optional<Rect> Workplace::working_rect() const {
  const std::optional<WorkingSet> set = working_set();
  if (!set) return std::nullopt;
  const glm::vec2 half = stage_.frame.window_px / 2.0F;
  const auto at = scene::project(camera_.view(), half.x / half.y, set->ball.centre);
  if (!at) return std::nullopt;
  const float distance = glm::length(scene::eye_of(camera_.view()) - set->ball.centre);
  const float r = set->ball.radius / (distance * std::tan(camera_.view().field_rad / 2.0F)) * half.y;
  const Rect rect{half.x + at->x * half.x - r, half.y - at->y * half.y - r, 2.0F * r, 2.0F * r};
  const Rect window{0.0F, 0.0F, stage_.frame.window_px.x, stage_.frame.window_px.y};
  return meets(rect, window) ? std::optional<Rect>(rect) : std::nullopt;
}

void Workplace::frame_hands() {
  const std::optional<WorkingSet> set = working_set();
  if (!set) {
    camera_.go_home(stage_.now_s, settings_->reduced_motion);
    return;
  }
  camera_.go_to(framing_view(camera_.view(), *set, stage_.frame), stage_.now_s, settings_->reduced_motion);
}

void Workplace::follow_hands() {
  if (!settings_->camera_by_itself || hands_.pulling_by_button() || camera_.moving()) return;
  const std::uint64_t now = whereabouts(bench());
  if (now == followed_ || stage_.now_s - last_input_s_ < kStillSince_s) return;
  followed_ = now;
  const std::optional<WorkingSet> set = working_set();
  if (!set || camera_.by_hand() || shows_well(camera_.view(), *set, stage_.frame)) return;
  camera_.go_to(framing_view(camera_.view(), *set, stage_.frame), stage_.now_s, settings_->reduced_motion);
}

void Workplace::show_targets(std::vector<glm::vec3> points) {
  targets_ = std::move(points);
  ++version_;
  if (targets_.empty()) return;
  WorkingSet set;
  for (const glm::vec3& point : targets_) set.ball.centre += point / static_cast<float>(targets_.size());
  set.ball.radius = kSmallestSet_m;
  for (const glm::vec3& point : targets_) {
    set.ball.radius = std::max(set.ball.radius, glm::length(point - set.ball.centre) + kSmallestSet_m);
  }
  camera_.go_to(framing_view(camera_.view(), set, stage_.frame), stage_.now_s, settings_->reduced_motion);
}

void Workplace::look_at(std::string_view view_name) {
  const auto view = scene::view_named(bench(), scene_, view_name);
  if (view) camera_.go_to(*view, stage_.now_s, settings_->reduced_motion);
}

}  // namespace proofstand::desk
