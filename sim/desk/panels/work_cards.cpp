#include "sim/desk/panels/work_cards.h"

#include <algorithm>
#include <cmath>

#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

// a strip of ink beside the hand that acts; a dashed one beside a hand that keeps: shape, not hue
void draw_hand_mark(const Rect& at, bool left, const HandWords& words) {
  ImDrawList* draw = ImGui::GetWindowDrawList();
  const float x = left ? at.x + u(3.0F) : at.right() - u(3.0F);
  const float top = at.y + u(10.0F), bottom = at.bottom() - u(10.0F);
  if (words.active) {
    draw->AddLine({x, top}, {x, bottom}, paper().accent, u(4.0F));
  } else if (words.keeps) {
    for (float y = top; y < bottom; y += u(10.0F)) {
      draw->AddLine({x, y}, {x, std::min(bottom, y + u(5.0F))}, paper().ink, u(3.0F));
    }
  }
}

void draw_hand_lines(HandForm form, const HandCardView& view) {
  const HandWords& words = view.words;
  if (form == HandForm::Chip) {
    text_body(words.doing);
    return;
  }
  if (form == HandForm::Line) {
    text_body(words.doing + (words.where.empty() ? "" : " · " + words.where));
    return;
  }
  text_small(words.keeps && !words.active ? words.who + " · " + tr("keeps") : words.who);
  text_strong(words.effort.empty() ? words.doing : words.doing + " · " + words.effort);
  if (!view.stands.empty()) {
    text_attention(view.stands);
    if (!view.frees.empty()) text_small(view.frees);
  } else if (!words.where.empty()) {
    text_small(words.where);
  }
}

// beside the card, never on the work: what was heard
void draw_captions(const Rect& at, bool left, const HandCardView& view, HandForm form) {
  std::string line;
  for (const std::string& caption : view.captions) line += (line.empty() ? "" : " · ") + caption;
  // small cards have no room for a refusal, so it stands above them
  const bool says = form != HandForm::Full && !view.stands.empty();
  if (line.empty() && !says) return;
  const float tall = u(32.0F), gap = u(6.0F);
  const float wide = std::max(at.w, ImGui::CalcTextSize((line + view.stands).c_str()).x + u(32.0F));
  const Rect above{left ? at.x : at.right() - wide, at.y - tall - gap, wide, tall};
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {u(12.0F), u(6.0F)});
  {
    const Card card(left ? "heard left" : "heard right", above);
    if (card) {
      if (says) text_attention(view.stands);
      if (!line.empty()) text_body(line);
    }
  }
  ImGui::PopStyleVar();
}

}  // namespace

void draw_top_line(const Rect& at, bool chip, const TopLineView& view, Orders& orders) {
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {u(chip ? 10.0F : 24.0F), u(4.0F)});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowRounding, chip ? u(8.0F) : 0.0F);
  {
    const Card card("top line", at);
    if (card) {
      ImGui::AlignTextToFramePadding();
      text_strong(view.title);
      float keys_w = 0.0F;
      for (const TopKey& key : view.keys) {
        keys_w += ImGui::CalcTextSize((key.key + key.words).c_str()).x + u(18.0F) + ImGui::GetStyle().ItemSpacing.x;
      }
      const float title_w = ImGui::GetItemRectSize().x;
      const float small_w = ImGui::CalcTextSize(view.small.c_str()).x;
      const float room = at.w - u(60.0F);
      if (!chip && title_w + small_w + keys_w < room) {
        ImGui::SameLine(0.0F, u(12.0F));
        text_small(view.small);
      }
      if (!chip) {
        // keys that find no room are on F1's page and in the step panel
        float x = at.w - u(24.0F);
        for (auto key = view.keys.rbegin(); key != view.keys.rend(); ++key) {
          const float w = ImGui::CalcTextSize((key->key + key->words).c_str()).x + u(24.0F);
          if (x - w < title_w + u(36.0F)) break;
          x -= w;
          ImGui::SameLine(x);
          if (key_link(key->key.c_str(), key->words.c_str())) orders.push_back(order_command(key->command));
          if (key->on) {
            const ImVec2 lo = ImGui::GetItemRectMin(), hi = ImGui::GetItemRectMax();
            ImGui::GetWindowDrawList()->AddLine({lo.x, hi.y}, {hi.x, hi.y}, paper().accent, u(2.0F));
          }
        }
      }
    }
  }
  ImGui::PopStyleVar(2);
}

void draw_hand_card(const Rect& at, HandForm form, bool left, const HandCardView& view, Orders& orders) {
  const bool small = form != HandForm::Full;
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {u(16.0F), u(small ? 8.0F : 10.0F)});
  ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {u(8.0F), u(2.0F)});
  {
    const Card card(left ? "left hand" : "right hand", at);
    if (card) {
      draw_hand_mark(at, left, view.words);
      draw_hand_lines(form, view);
      if (!view.words.active && ImGui::IsWindowHovered() && ImGui::IsMouseReleased(ImGuiMouseButton_Left)) {
        orders.push_back(order_command(CommandId::Keep));
      }
    }
  }
  ImGui::PopStyleVar(2);
  draw_captions(at, left, view, form);
}

void draw_guidance(const Rect& at, bool one_line, const GuidanceView& view, Orders& orders) {
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {u(16.0F), u(one_line ? 8.0F : 10.0F)});
  ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {u(10.0F), u(3.0F)});
  {
    const Card card("guidance", at, !one_line);
    if (card && one_line) {
      text_strong(view.say);
    } else if (card) {
      if (!view.stage.empty()) text_small(view.stage);
      text_head(view.say);
      if (!view.late.empty()) {
        text_attention(view.late);
        if (button(tr("Go back to that moment"))) orders.push_back(order_at(OrderKind::Rewind, view.late_tick));
      }
      if (!view.more.empty()) text_small(view.more);
      if (view.why_open && !view.why.empty()) text_body(view.why);
      if (view.can_show && key_link(view.where_key.c_str(), tr("show me where"))) {
        orders.push_back(order_command(CommandId::ShowWhere));
      }
      if (!view.why.empty()) {
        if (view.can_show) ImGui::SameLine(0.0F, u(16.0F));
        if (key_link(view.why_key.c_str(), view.why_open ? tr("hide why") : tr("why"))) {
          orders.push_back(order_command(CommandId::Why));
        }
      }
    }
  }
  ImGui::PopStyleVar(2);
}

}  // namespace proofstand::desk
