// What cards and keys asked for, carried out.
#include <algorithm>

#include "sim/desk/panels/paper.h"
#include "sim/desk/window/stand.h"
#include "sim/desk/words.h"
#include "sim/record/files.h"
#include "sim/report/mark_sheet_html.h"

namespace proofstand::desk {
namespace {

constexpr int kSizes[] = {75, 100, 125, 150, 200, 250, 300};

// points of the scene that a place to frame means; all of them alike
std::vector<glm::vec3> points_of(const scene::Scene& scene, const std::vector<report::GuideTarget>& targets) {
  std::vector<glm::vec3> out;
  for (const report::GuideTarget& target : targets) {
    for (const scene::ScenePlace& place : scene.places) {
      const bool here = place.thing == target.thing &&
                        (target.place == event::PlaceKind::Body || place.place == target.place) &&
                        (target.bolt == event::kNoBolt || place.bolt == target.bolt);
      if (!here) continue;
      out.push_back(place.middle);
      break;
    }
  }
  return out;
}

}  // namespace

void Stand::carry_out(const Orders& orders) {
  for (const Order& one : orders) carry_out(one);
  if (!orders.empty()) settle_ = 3;
}

void Stand::carry_out(const Order& one) {
  switch (one.kind) {
    case OrderKind::Command:
      command(one.command, one.fine, one.count);
      break;
    case OrderKind::ActOn:
      if (work_) work_->act_on_listed(one.index, one.verb);
      break;
    case OrderKind::Choose:
      if (work_) work_->choose(static_cast<std::int32_t>(one.index));
      break;
    case OrderKind::Write:
      if (!work_) break;
      work_->write_card(static_cast<event::CardEntryId>(one.index), one.text);
      if (!work_->refused() && one.index < open_.card.written.size()) open_.card.written[one.index] = one.text;
      open_.card.focus = work_->refused().has_value();
      break;
    case OrderKind::HandOver:
      if (work_) work_->hand_over();
      break;
    case OrderKind::StartJob:
    case OrderKind::GoOn:
    case OrderKind::Review: {
      const auto begun = one.kind == OrderKind::StartJob
                             ? start_job(one.text, static_cast<record::Way>(one.way), {}, ask_.seed)
                         : one.kind == OrderKind::GoOn ? go_on(one.text)
                                                       : open_review(one.text);
      if (!begun) {
        open_.note = begun.error().sentence();
        start_.note = open_.note;
      }
      break;
    }
    case OrderKind::ToStart:
      to_start();
      break;
    case OrderKind::Rewind:
      if (!work_) break;
      peek_.reset();
      peek_scene_.reset();
      if (const auto done = work_->rewind(one.tick); !done) open_.note = done.error().sentence();
      guided_events_ = static_cast<std::size_t>(-1);
      marked_events_ = 0;
      trace_ = {};
      break;
    case OrderKind::Peek:
      if (work_) {
        if (!peek_) {
          peek_ = std::make_unique<record::Replayer>(work_->bench().setup(), work_->attempt().session().actions());
        }
        peek_scene_ = workshop_->compute_scene(peek_->at(one.tick));
      } else if (review_ && review_->can_replay()) {
        review_->seek(one.tick);
        review_scene_ = workshop_->compute_scene(review_->bench());
        ++review_version_;
      }
      break;
    case OrderKind::ShowWhere:
      show_where();
      break;
    case OrderKind::ShowFinding:
      show_finding(one.index);
      break;
    case OrderKind::SaveHtml:
      save_html();
      break;
    case OrderKind::NamedView:
      if (work_) work_->look_at(one.text);
      break;
    case OrderKind::ChangeSettings:
      keep_settings();
      break;
    case OrderKind::FoldSide:
      open_.side_forced = !open_.side_forced;
      break;
    case OrderKind::Quit:
      if (work_) work_->attempt().keep();
      done_ = true;
      break;
    default:
      break;
  }
}

void Stand::command(CommandId id, bool fine, int count) {
  const bool practice = work_ && work_->attempt().way() == record::Way::Practice;
  const auto flip = [&](bool& card) {
    card = !card;
    open_.side_forced = card;
  };
  switch (id) {
    case CommandId::JobCard:
      flip(open_.job_card);
      open_.card.focus = open_.job_card;
      if (open_.card.field == static_cast<std::size_t>(-1)) open_.card.field = 0;
      if (!open_.job_card) open_.pane = -1;
      return;
    case CommandId::MakersSheet:
      flip(open_.sheet);
      return;
    case CommandId::StepPanel:
      open_.panel = !open_.panel;
      return;
    case CommandId::LookClose:
      open_.glass = !open_.glass;
      return;
    case CommandId::Help:
      open_.page = open_.page == Page::Help ? Page::None : Page::Help;
      return;
    case CommandId::Why:
      open_.why = !open_.why;
      return;
    case CommandId::ShowWhere:
      show_where();
      return;
    case CommandId::LookInside:
      if (practice) flip(open_.look);
      return;
    case CommandId::TimeLine:
      if (!practice) return;
      open_.time_line = !open_.time_line;
      peek_.reset();
      peek_scene_.reset();
      return;
    case CommandId::TextLarger:
    case CommandId::TextSmaller: {
      const bool larger = id == CommandId::TextLarger;
      int best = settings_.text_percent;
      for (const int size : kSizes) {
        if (larger && size > settings_.text_percent) {
          best = size;
          break;
        }
        if (!larger && size < settings_.text_percent) best = size;
      }
      settings_.text_percent = best;
      keep_settings();
      return;
    }
    case CommandId::FullScreen:
      window_->set_full_screen(!window_->full_screen());
      return;
    default:
      break;
  }
  if (!work_) return;
  if (id == CommandId::SlackOrLeave) {
    // first closes what lies over the work
    if (open_.glass || work_->look_mode()) {
      open_.glass = false;
      work_->leave_look_mode();
      return;
    }
    if (work_->run(id, fine, count) == hand::Answer::NotMine) open_.page = Page::Pause;
    return;
  }
  work_->run(id, fine, count);
}

void Stand::show_where() {
  if (!work_ || !guidance_ || !guidance_->next) return;
  work_->show_targets(points_of(work_->scene(), guidance_->next->targets));
}

void Stand::show_finding(std::size_t index) {
  if (!review_) return;
  open_.marks.shown = static_cast<int>(index);
  evidence_.clear();
  const report::FindingMoments* found = review_->moments_of(index);
  if (found == nullptr) return;
  open_.marks.plot = found->plot == report::PlotKind::None ? open_.marks.plot : found->plot;
  if (found->bolt) open_.marks.bolt = *found->bolt;
  if (!review_->can_replay() || !review_camera_) return;
  if (!found->moments.empty()) {
    review_->seek(found->moments.front().tick);
    open_.time.at = review_->tick();
  }
  review_scene_ = workshop_->compute_scene(review_->bench());
  evidence_ = points_of(*review_scene_, found->places);
  ++review_version_;
  if (evidence_.empty()) return;
  WorkingSet set;
  for (const glm::vec3& point : evidence_) set.ball.centre += point / static_cast<float>(evidence_.size());
  for (const glm::vec3& point : evidence_) {
    set.ball.radius = std::max(set.ball.radius, glm::length(point - set.ball.centre));
  }
  set.ball.radius += 0.05F;
  const glm::vec2 size(window_->size_px());
  const MarkPageLayout at = mark_page_layout({0.0F, 0.0F, size.x, size.y}, paper().u_px);
  const Frame frame{size, at.picture.empty() ? Rect{0.0F, 0.0F, size.x, size.y} : at.picture};
  review_camera_->go_to(framing_view(review_camera_->view(), set, frame), now_s_, settings_.reduced_motion);
}

void Stand::hand_over() {
  work_->attempt().keep();
  if (work_->attempt().trouble() != nullptr) {
    open_.page = Page::Pause;  // it says there why nothing more is kept
    return;
  }
  if (!work_->attempt().session().closed()) return;
  const std::string path = work_->attempt().path();
  const auto opened = open_review(path);
  if (!opened) {
    to_start();
    start_.note = opened.error().sentence();
  }
}

void Stand::save_html() {
  const std::string path = review_->path() + ".html";
  const auto saved = record::save_bytes(path, report::mark_sheet_html(review_->sheet()));
  open_.marks.saved = saved ? tr("saved to {0}", {path}) : saved.error().sentence();
}

void Stand::keep_settings() {
  bindings_.letters = settings_.plain_letters;
  if (settings_.keys.empty()) {
    bindings_ = default_bindings();
    bindings_.letters = settings_.plain_letters;
  }
  set_language(settings_.language);
  if (work_) work_->settings_changed();
  if (ask_.settings) return;
  const auto saved = save_settings(settings_);
  if (!saved) open_.note = saved.error().sentence();
}

}  // namespace proofstand::desk
