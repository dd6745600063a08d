#include "sim/desk/panels/step_panel.h"

#include <algorithm>

#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

void draw_list(const StepPanelView& view, float tall, Orders& orders) {
  ImGui::BeginChild("places", {0.0F, tall}, ImGuiChildFlags_Borders);
  std::string_view group;
  for (std::size_t i = 0; i < view.list->size(); ++i) {
    const route::ListedPlace& place = (*view.list)[i];
    if (route::words_of(place.group) != group) {
      group = route::words_of(place.group);
      text_small(tr(std::string(group).c_str()));
    }
    ImGui::PushID(static_cast<int>(i));
    const bool chosen = view.chosen == static_cast<std::int32_t>(i);
    if (choice(place.words.c_str(), chosen)) {
      Order out = order(OrderKind::Choose);
      out.index = i;
      orders.push_back(std::move(out));
    }
    if (chosen && ImGui::GetScrollMaxY() > 0.0F && !ImGui::IsItemVisible()) ImGui::SetScrollHereY();
    ImGui::PopID();
  }
  ImGui::EndChild();
}

// buttons side by side as far as the line goes, then the next line
void flow(bool first, const char* words) {
  if (first) return;
  const float w = ImGui::CalcTextSize(words).x + 2.0F * ImGui::GetStyle().FramePadding.x;
  const float used = ImGui::GetItemRectMax().x + ImGui::GetStyle().ItemSpacing.x + w;
  if (used < ImGui::GetCursorScreenPos().x + ImGui::GetContentRegionAvail().x) ImGui::SameLine();
}

void draw_verbs(const StepPanelView& view, Orders& orders) {
  bool first = true;
  for (const route::VerbButton& verb : view.rows.verbs) {
    const char* words = tr(verb.words.c_str());
    flow(first, words);
    first = false;
    if (button(words, verb.verb == hand::Verb::Natural)) {
      Order out = order(OrderKind::ActOn);
      out.index = static_cast<std::size_t>(std::max(0, view.chosen));
      out.verb = verb.verb;
      orders.push_back(std::move(out));
    }
  }
}

void draw_row(const route::PanelRow& row, const StepPanelState& state, Orders& orders) {
  ImGui::PushID(row.words.c_str());
  text_small(tr(row.words.c_str()));
  bool first = true;
  for (const route::TapButton& tap : row.buttons) {
    const char* words = tr(tap.words.c_str());
    flow(first, words);
    first = false;
    if (button(words, false, false, tap.works)) orders.push_back(order_command(tap.command, tap.count, state.fine));
    if (!tap.works && !tap.why_not.empty() && ImGui::IsItemHovered(ImGuiHoveredFlags_AllowWhenDisabled)) {
      ImGui::SetTooltip("%s", tap.why_not.c_str());
    }
  }
  ImGui::PopID();
}

}  // namespace

void draw_step_panel(const Rect& at, const StepPanelView& view, StepPanelState& state, Orders& orders) {
  const Card card("step panel", at, true);
  if (!card) return;
  text_small(tr("places in reach"));
  draw_list(view, std::max(u(140.0F), at.h * 0.36F), orders);
  draw_verbs(view, orders);
  ImGui::Checkbox(tr("fine: a tenth of each step"), &state.fine);
  note_item(tr("fine: a tenth of each step"), true);
  for (const route::PanelRow& row : view.rows.rows) draw_row(row, state, orders);
  text_small(tr("look at"));
  bool first = true;
  for (const std::string& name : view.views) {
    const char* words = tr(name.c_str());
    flow(first, words);
    first = false;
    if (button(words)) orders.push_back(order(OrderKind::NamedView, name));
  }
  if (button(tr("Fold the panel"), false, true)) orders.push_back(order_command(CommandId::StepPanel));
}

}  // namespace proofstand::desk
