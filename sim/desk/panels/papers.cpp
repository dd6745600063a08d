#include "sim/desk/panels/papers.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>

#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

void write(std::size_t index, JobCardState& state, std::string text, Orders& orders) {
  Order out = order(OrderKind::Write, std::move(text));
  out.index = index;
  state.field = index;
  orders.push_back(std::move(out));
}

// figures by pressing, for hands that do not type
void draw_pad(JobCardState& state, std::size_t index, Orders& orders) {
  static constexpr const char* kKeys[] = {"7", "8", "9", "4", "5", "6", "1", "2", "3", "0", ".", "−"};
  const float gap = ImGui::GetStyle().ItemSpacing.x;
  const float w = (ImGui::GetContentRegionAvail().x - 2.0F * gap) / 3.0F;
  ImGui::PushID("pad");
  for (int i = 0; i < 12; ++i) {
    if (i % 3 != 0) ImGui::SameLine();
    const bool erase = i == 11;
    const char* words = erase ? tr("erase") : kKeys[i];
    if (ImGui::Button(words, {w, u(44.0F)})) {
      std::string& text = state.typed[index];
      if (erase && !text.empty()) text.pop_back();
      if (!erase) text += kKeys[i];
    }
    note_item(words, true);
  }
  ImGui::PopID();
  if (button(tr("Write it"), false, true)) write(index, state, state.typed[index], orders);
}

void draw_field(std::size_t index, const bench::CardEntryPart& part, JobCardState& state, Orders& orders) {
  const char* unit = unit_of(part.kind);
  const float unit_w = unit[0] == '\0' ? 0.0F : ImGui::CalcTextSize(unit).x + u(10.0F);
  ImGui::SetNextItemWidth(ImGui::GetContentRegionAvail().x - unit_w);
  if (state.focus && state.field == index) {
    ImGui::SetKeyboardFocusHere();
    state.focus = false;
  }
  const bool done = ImGui::InputText("##typed", &state.typed[index], ImGuiInputTextFlags_EnterReturnsTrue);
  note_item(part.name, true);
  if (ImGui::IsItemActivated()) state.field = index;
  // what one types counts when one leaves the field, as on paper
  const bool left = ImGui::IsItemDeactivatedAfterEdit();
  if ((done || left) && !state.typed[index].empty() && state.typed[index] != state.written[index]) {
    write(index, state, state.typed[index], orders);
  }
  if (unit_w > 0.0F) {
    ImGui::SameLine(0.0F, u(10.0F));
    ImGui::AlignTextToFramePadding();
    text_body(unit);
  }
  const bool figure = part.kind == bench::CardKind::Length || part.kind == bench::CardKind::Torque;
  if (figure && state.field == index) draw_pad(state, index, orders);
}

void draw_entry(std::size_t index, const JobCardView& view, JobCardState& state, Orders& orders) {
  const scenario::DrawnScenario& scenario = *view.scenario;
  const bench::CardEntryPart& part = scenario.setup.card[index];
  ImGui::PushID(static_cast<int>(index));
  const std::string label(scenario::text_in(scenario.card_lines[index].label, view.language));
  text_strong(part.needed ? label : label + " " + tr("(if there is any)"));
  if (part.kind == bench::CardKind::Choice) {
    for (const std::size_t word : part.words) {
      const std::string& words = scenario.setup.card_words[word];
      if (choice(tr(words.c_str()), state.written[index] == words)) write(index, state, words, orders);
    }
  } else {
    draw_field(index, part, state, orders);
  }
  if (!view.refused.empty() && state.field == index) text_attention(view.refused);
  ImGui::Dummy({0.0F, u(4.0F)});
  ImGui::PopID();
}

void draw_hand_over(JobCardState& state, Orders& orders) {
  rule_line();
  if (!state.confirm) {
    if (button(tr("Hand over"), false, true)) state.confirm = true;
    return;
  }
  text_body(tr("The job ends here and is marked. Nothing can be changed afterwards."));
  if (button(tr("Hand over now"), true, true)) {
    orders.push_back(order(OrderKind::HandOver));
    state.confirm = false;
  }
  if (button(tr("Not yet: back to work"), false, true)) state.confirm = false;
}

}  // namespace

const char* unit_of(bench::CardKind kind) {
  if (kind == bench::CardKind::Length) return "mm";
  if (kind == bench::CardKind::Torque) return "N·m";
  return "";
}

void draw_job_card(const Rect& at, const JobCardView& view, JobCardState& state, Orders& orders) {
  const Card card("job card", at, true);
  if (!card) return;
  const scenario::DrawnScenario& scenario = *view.scenario;
  state.typed.resize(scenario.setup.card.size());
  state.written.resize(scenario.setup.card.size());
  text_small(tr("job card"));
  text_head(scenario::text_in(scenario.title, view.language));
  text_body(scenario::text_in(scenario.task, view.language));
  rule_line();
  ImGui::BeginDisabled(view.over);
  for (std::size_t i = 0; i < scenario.setup.card.size(); ++i) draw_entry(i, view, state, orders);
  draw_hand_over(state, orders);
  ImGui::EndDisabled();
  if (button(tr("Fold the card"), false, true)) orders.push_back(order_command(CommandId::JobCard));
}

void draw_makers_sheet(const Rect& at, const scenario::DrawnScenario& scenario, const std::string& language,
                       Orders& orders) {
  const Card card("maker's sheet", at, true);
  if (!card) return;
  text_small(tr("maker's sheet"));
  for (const scenario::SheetLine& line : scenario.sheet_lines) {
    text_body(scenario::text_in(line.label, language));
    std::string figure = base::quantity_words(line.value.value_si, line.value.dimension);
    if (line.tolerance_si > 0.0) figure += " ± " + base::quantity_words(line.tolerance_si, line.value.dimension);
    text_head(figure);
    ImGui::Dummy({0.0F, u(4.0F)});
  }
  rule_line();
  text_body(scenario::text_in(scenario.sheet_note, language));
  rule_line();
  text_small(scenario::text_in(scenario.cautions, language));
  if (button(tr("Fold the sheet"), false, true)) orders.push_back(order_command(CommandId::MakersSheet));
}

void draw_tab(const Rect& at, const char* words, Orders& orders) {
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {u(2.0F), u(8.0F)});
  {
    const Card card("tab", at);
    if (card) {
      // too narrow for a line of words: an arrow, and the words for whoever has it read out
      const ImVec2 size{ImGui::GetContentRegionAvail().x, ImGui::GetContentRegionAvail().y};
      if (ImGui::InvisibleButton("unfold", size)) orders.push_back(order(OrderKind::FoldSide));
      note_item(words, true);
      const ImVec2 lo = ImGui::GetItemRectMin(), hi = ImGui::GetItemRectMax();
      const ImVec2 c{(lo.x + hi.x) / 2.0F, (lo.y + hi.y) / 2.0F};
      ImGui::GetWindowDrawList()->AddTriangleFilled({c.x - u(6.0F), c.y}, {c.x + u(5.0F), c.y - u(9.0F)},
                                                    {c.x + u(5.0F), c.y + u(9.0F)}, paper().ink);
    }
  }
  ImGui::PopStyleVar();
}

}  // namespace proofstand::desk
