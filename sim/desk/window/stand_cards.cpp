// Which cards stand in the window now, and what each is given to show.
#include <imgui.h>

#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/bench/senses.h"
#include "sim/desk/asset_files.h"
#include "sim/desk/panels/paper.h"
#include "sim/desk/panels/work_cards.h"
#include "sim/desk/window/overlay.h"
#include "sim/desk/window/stand.h"
#include "sim/desk/words.h"
#include "sim/record/attempt_reader.h"
#include "sim/report/live_standing.h"

namespace proofstand::desk {
namespace {

constexpr std::size_t kMostAttemptsShown = 6;

std::string way_words(record::Way way) {
  if (way == record::Way::Guided) return tr("guided");
  return way == record::Way::Practice ? tr("practice") : tr("exam");
}

std::string minutes_words(base::Tick tick) {
  return tr("{0} min", {base::text_from_int(tick / (60 * base::kTicksPerSecond))});
}

std::string key_of(const Bindings& bindings, CommandId id) {
  const std::vector<Chord>& chords = bindings.chords[static_cast<std::size_t>(id)];
  return chords.empty() ? std::string() : words_of(chords.front());
}

// which glass belongs to what the hands hold; empty when nothing has a scale
std::string glass_view(const bench::Bench& bench) {
  for (const event::HandId hand : {event::HandId::Right, event::HandId::Left}) {
    const event::ThingId held = bench::sense_hand(bench, hand).holding;
    if (held == event::kNoThing) continue;
    switch (bench.setup().things[event::index_of(held)].kind) {
      case bench::ThingKind::Micrometer:
        return "micrometer";
      case bench::ThingKind::Vernier:
        return "vernier";
      case bench::ThingKind::DialGauge:
        return "dial";
      case bench::ThingKind::ClickDriver:
        return "torque scale";
      default:
        break;
    }
  }
  // a dial gauge stands by itself
  for (std::size_t i = 0; i < bench.setup().things.size(); ++i) {
    if (bench.setup().things[i].kind == bench::ThingKind::DialGauge &&
        bench.state().things[i].where != bench::Whereabouts::Tray) {
      return "dial";
    }
  }
  return {};
}

}  // namespace

void Stand::fill_start() {
  start_ = StartView{};
  start_.note = open_.note;
  start_.caution =
      tr("Brakes are safety parts. This stand trains and examines judgement and sequence; it replaces neither the "
         "maker's instructions, nor supervised practice on real parts, nor local rules and licensed practice.");
  for (const std::string& file : list_scenarios(find_scenarios())) {
    const scenario::Loaded loaded = scenario::load_scenario(file);
    if (!loaded.usable) continue;
    const auto drawn = scenario::draw(*loaded.file, 0);
    if (!drawn) continue;
    JobLine line;
    line.file = file;
    line.title = scenario::text_in(drawn->title, settings_.language);
    line.bolts = drawn->setup.bolt_count();
    for (const scenario::Stage& stage : drawn->stages) {
      if (stage.in_this_job) line.trains += (line.trains.empty() ? "" : ", ") + std::string(tr(stage.name.c_str()));
    }
    if (drawn->time_limit > 0) line.minutes = minutes_words(drawn->time_limit);
    start_.jobs.push_back(std::move(line));
  }
  if (ask_.settings) return;  // a driver's window has no earlier goes
  for (const std::string& file : list_attempts(attempts_folder())) {
    if (start_.attempts.size() >= kMostAttemptsShown) break;
    const auto attempt = record::load_attempt(file);
    if (!attempt) continue;
    AttemptLine line;
    line.file = file;
    line.open = !attempt->closing.has_value();
    line.title = attempt->head.scenario;
    const auto scenario = record::scenario_of(*attempt);
    if (scenario) line.title = scenario::text_in(scenario->title, settings_.language);
    line.words = way_words(attempt->head.way) + " · " + clock_words(attempt->last_tick);
    start_.attempts.push_back(std::move(line));
  }
}

void Stand::draw_start() {
  Orders orders;
  const glm::vec2 size(window_->size_px());
  ImGui::GetBackgroundDrawList()->AddRectFilled({0.0F, 0.0F}, {size.x, size.y}, paper().ground);
  if (open_.page == Page::None) draw_start_sheet({0.0F, 0.0F, size.x, size.y}, start_, orders);
  for (const Order& one : orders) {
    if (one.kind == OrderKind::ChangeSettings) {
      open_.page = Page::Settings;
    } else {
      carry_out(one);
    }
  }
}

Layout Stand::arrange() const {
  LayoutAsk ask;
  ask.window_px = glm::vec2(window_->size_px());
  ask.content_scale = window_->content_scale();
  ask.text_scale = static_cast<float>(settings_.text_percent) / 100.0F;
  ask.job_card = open_.job_card;
  ask.sheet = open_.sheet;
  ask.panel = open_.panel;
  ask.look = open_.look;
  ask.glass = open_.glass && work_ && !glass_view(work_->bench()).empty();
  ask.time_line = open_.time_line;
  ask.guidance = work_ && work_->attempt().way() == record::Way::Guided;
  if (work_ && !open_.side_forced) ask.working = work_->working_rect();
  return compute_layout(ask);
}

void Stand::renew_guidance() {
  if (work_->attempt().way() != record::Way::Guided || work_->hands().pulling_by_button()) return;
  const std::size_t events = work_->bench().events().size();
  if (events == guided_events_) return;
  guided_events_ = events;
  const record::Session& session = work_->attempt().session();
  guidance_ = report::compute_guidance(session.program(), session.engine(), work_->attempt().scenario(), work_->bench(),
                                       settings_.language);
}

void Stand::draw_side(const Rect& at, int which, Orders& orders) {
  if (which == 0) {
    JobCardView view;
    view.scenario = &work_->attempt().scenario();
    view.language = settings_.language;
    view.over = work_->attempt().over();
    if (work_->refused() && open_.card.focus) view.refused = work_->refused()->words.stands;
    draw_job_card(at, view, open_.card, orders);
  } else if (which == 1) {
    draw_makers_sheet(at, work_->attempt().scenario(), settings_.language, orders);
  } else {
    draw_look_inside(at, look_inside_of(work_->bench(), trace_), orders);
  }
}

void Stand::draw_work(Orders& orders) {
  const bool exam = work_->attempt().way() == record::Way::Exam;
  if (layout_.paged) {
    const int which = open_.job_card ? 0 : open_.sheet ? 1 : open_.look ? 2 : 3;
    if (which < 3) draw_side(layout_.page, which, orders);
    if (which == 3) {
      const Rect line{layout_.page.x, layout_.page.bottom() - u(96.0F), layout_.page.w, u(96.0F)};
      layout_.time_line = line;
    }
  }
  OverlayAsk over;
  over.workplace = work_.get();
  over.px_per_pt = px_per_pt();
  over.free = layout_.free;
  over.plain = exam;
  over.reduced_motion = settings_.reduced_motion;
  if (!layout_.paged && open_.page == Page::None) draw_overlay(over);
  draw_top(orders);
  if (open_.page != Page::None) return;  // a page has the window below the top line
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) draw_hand(hand, orders);
  draw_guide(orders);
  if (!layout_.paged) draw_sides(orders);
  draw_instruments(orders);
}

void Stand::draw_top(Orders& orders) {
  const bool exam = work_->attempt().way() == record::Way::Exam;
  TopLineView top;
  top.title = scenario::text_in(work_->attempt().scenario().title, settings_.language);
  top.small = way_words(work_->attempt().way());
  const base::Tick limit = work_->attempt().scenario().time_limit;
  top.small +=
      " · " + (exam && limit > 0 ? tr("{0} left", {clock_words(std::max<base::Tick>(0, limit - work_->bench().tick()))})
                                 : minutes_words(work_->bench().tick()));
  const auto key = [&](CommandId id, const char* words, bool on) {
    top.keys.push_back({id, key_of(bindings_, id), words, on});
  };
  key(CommandId::JobCard, tr("job card"), open_.job_card);
  key(CommandId::MakersSheet, tr("maker's sheet"), open_.sheet);
  key(CommandId::StepPanel, tr("steps"), open_.panel);
  key(CommandId::LookClose, tr("look close"), open_.glass);
  if (work_->attempt().way() == record::Way::Practice) {
    key(CommandId::LookInside, tr("look inside"), open_.look);
    key(CommandId::TimeLine, tr("time line"), open_.time_line);
  }
  key(CommandId::Help, tr("help"), open_.page == Page::Help);
  draw_top_line(layout_.top_line, layout_.room == Room::Narrow, top, orders);
}

void Stand::draw_hand(event::HandId hand, Orders& orders) {
  const bool exam = work_->attempt().way() == record::Way::Exam;
  HandCardView view;
  view.words = hand_words(work_->bench(), work_->hands(), hand, exam);
  if (settings_.captions || !speaker_ || speaker_->silent()) {
    for (const Caption& caption : work_->captions()) {
      const bool here = caption.side ? *caption.side == hand : hand == work_->hands().active();
      if (here) view.captions.push_back(tr(std::string(caption_of(caption.sound)).c_str()));
    }
  }
  if (work_->refused() && work_->refused()->hand == hand) {
    view.stands = work_->refused()->words.stands;
    if (!exam) view.frees = work_->refused()->words.frees;
  }
  const bool left = hand == event::HandId::Left;
  draw_hand_card(left ? layout_.hand_left : layout_.hand_right, left ? layout_.left_form : layout_.right_form, left,
                 view, orders);
}

void Stand::draw_guide(Orders& orders) {
  if (!guidance_ || layout_.guidance.empty()) return;
  GuidanceView view;
  view.stage = guidance_->stage.empty() ? std::string() : tr(guidance_->stage.c_str());
  view.say = guidance_->next ? guidance_->next->say : guidance_->say_stuck;
  view.more = guidance_->say_owed;
  view.why = guidance_->why;
  view.why_open = open_.why;
  view.can_show = guidance_->next && !guidance_->next->targets.empty();
  view.where_key = key_of(bindings_, CommandId::ShowWhere);
  view.why_key = key_of(bindings_, CommandId::Why);
  if (!guidance_->late.empty()) {
    view.late = guidance_->late.front().say;
    view.late_tick = guidance_->late.front().since_tick;
  }
  if (!view.say.empty()) draw_guidance(layout_.guidance, layout_.guidance_in_one_line, view, orders);
}

void Stand::draw_sides(Orders& orders) {
  std::vector<int> sides;
  if (open_.job_card) sides.push_back(0);
  if (open_.sheet) sides.push_back(1);
  if (open_.look) sides.push_back(2);
  if (!sides.empty() && layout_.side_folded) {
    draw_tab(layout_.side,
             sides[0] == 0   ? tr("job card")
             : sides[0] == 1 ? tr("maker's sheet")
                             : tr("look inside"),
             orders);
  } else if (!sides.empty()) {
    draw_side(layout_.side, sides[0], orders);
    if (sides.size() > 1 && !layout_.side_second.empty()) draw_side(layout_.side_second, sides[1], orders);
  }
}

void Stand::draw_instruments(Orders& orders) {
  if (!layout_.panel.empty()) {
    StepPanelView view;
    view.list = &work_->list();
    view.chosen = work_->chosen();
    view.rows = route::step_panel(work_->chosen_place(), work_->hands(), work_->bench(), work_->look_mode());
    for (const std::string_view name : scene::view_names()) view.views.emplace_back(name);
    draw_step_panel(layout_.panel, view, open_.steps, orders);
  }
  if (!layout_.glass.empty()) draw_glass(orders);
  if (!layout_.time_line.empty()) {
    if (marked_events_ != work_->bench().events().size()) {
      marks_ = time_marks(work_->bench().vocabulary(), work_->bench().events(), {});
      marked_events_ = work_->bench().events().size();
    }
    if (!peek_ && !open_.time.dragging) open_.time.at = work_->bench().tick();
    TimeLineView view;
    view.end = work_->bench().tick();
    view.now = open_.time.at;
    view.can_go_on = peek_ != nullptr;
    view.marks = &marks_;
    draw_time_line(layout_.time_line, view, open_.time, orders);
  }
}

void Stand::draw_glass(Orders& orders) {
  const std::string name = glass_view(work_->bench());
  const auto close = workshop_->compute_close_up(work_->bench(), name);
  const auto view = close ? std::optional(close->view) : scene::view_named(work_->bench(), work_->scene(), name);
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {u(6.0F), u(6.0F)});
  {
    const Card card("glass", layout_.glass);
    if (card && view) {
      const ImVec2 room = ImGui::GetContentRegionAvail();
      const picture::Size size{std::max(16, static_cast<int>(room.x)), std::max(16, static_cast<int>(room.y))};
      if (!glass_painter_) {
        auto made = picture::Painter::create(&WindowLayer::gl_address);
        if (made) {
          glass_painter_ = std::move(*made);
          glass_painter_->keep(workshop_->meshes());
        }
      }
      if (glass_painter_) {
        glass_painter_->draw(close ? close->scene : work_->scene(), *view, size, picture::Quality{});
        const auto id = static_cast<ImTextureID>(glass_painter_->texture());
        ImGui::Image(ImTextureRef(id), room, {0.0F, 1.0F}, {1.0F, 0.0F});
        note_item(name, false);
      }
    }
    if (card && ImGui::IsWindowHovered() && ImGui::IsMouseReleased(ImGuiMouseButton_Left)) {
      orders.push_back(order_command(CommandId::LookClose));
    }
  }
  ImGui::PopStyleVar();
}

void Stand::draw_pages(Orders& orders) {
  const glm::vec2 size(window_->size_px());
  const Rect window{0.0F, 0.0F, size.x, size.y};
  if (open_.page == Page::Pause && work_) {
    PauseView view;
    view.title = scenario::text_in(work_->attempt().scenario().title, settings_.language);
    view.kept = work_->attempt().trouble() != nullptr ? work_->attempt().trouble()->sentence()
                                                      : tr("kept in {0}", {work_->attempt().path()});
    view.exam = work_->attempt().way() == record::Way::Exam;
    view.can_ask_standing = work_->attempt().way() == record::Way::Practice;
    draw_pause(window, view, open_.page, orders);
  } else if (open_.page == Page::Help) {
    if (questions_.empty() || questions_language_ != settings_.language) {
      questions_language_ = settings_.language;
      for (const std::string& tag : {settings_.language, std::string("en")}) {
        const auto text = record::load_bytes(find_asset("help/questions." + tag + ".md"), std::size_t{1} << 20);
        if (text) {
          questions_ = *text;
          break;
        }
      }
    }
    const char* screen =
        work_
            ? tr("The pointer is one hand; Space keeps what it does and changes hands. Click to take, bring or touch; "
                 "drag to work; the right button looks round. Nothing happens by looking.")
        : review_ ? tr("The mark sheet: each line under What to work on shows its moment in the picture, on the line "
                       "of time and in a plot.")
                  : tr("The start: one press on Guided, Practice or Exam begins a job.");
    draw_help(window, help_rows(bindings_), screen, questions_, open_.page);
  } else if (open_.page == Page::Settings) {
    draw_settings(window, settings_, bindings_, open_.settings, open_.page, orders);
  } else if (open_.page == Page::Standing && work_) {
    const record::Session& session = work_->attempt().session();
    draw_standing(window,
                  report::compute_live_standing(session.program(), session.engine(), work_->attempt().scenario(),
                                                settings_.language),
                  open_.page);
  }
}

void Stand::draw_marks(Orders& orders) {
  const glm::vec2 size(window_->size_px());
  const float u_px = window_->content_scale() * static_cast<float>(settings_.text_percent) / 100.0F;
  const MarkPageLayout at = mark_page_layout({0.0F, 0.0F, size.x, size.y}, u_px);
  if (review_camera_ && !at.picture.empty()) {
    review_camera_->shift_into({size, at.picture});
    if (review_scene_) draw_corners(evidence_, review_camera_->view(), size);
  }
  MarkPageView view;
  view.sheet = &review_->sheet();
  draw_mark_words(at.words, view, open_.marks, orders);
  if (at.plots.empty()) return;
  draw_mark_plots(at.plots, view, open_.marks);
  TimeLineView line;
  line.end = review_->end();
  line.now = review_->tick();
  line.marks = &review_->marks();
  draw_time_line(at.time_line, line, open_.time, orders);
}

}  // namespace proofstand::desk
