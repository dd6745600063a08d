#include "sim/desk/panels/time_line.h"

#include <algorithm>
#include <cstdio>

#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

void draw_marks(const Rect& line, const TimeLineView& view) {
  ImDrawList* draw = ImGui::GetWindowDrawList();
  const float middle = line.y + line.h / 2.0F;
  draw->AddLine({line.x, middle}, {line.right(), middle}, paper().secondary, std::max(1.0F, u(1.0F)));
  const float scale = line.w / static_cast<float>(std::max<base::Tick>(1, view.end));
  float last = -1e9F;
  for (const TimeMark& mark : *view.marks) {
    const float x = line.x + static_cast<float>(mark.tick) * scale;
    if (!mark.attention && x - last < 1.5F) continue;  // what falls on one pixel is one mark
    last = x;
    const float half = line.h * 0.5F * mark.height_1;
    const ImU32 ink = mark.attention ? paper().attention : paper().secondary;
    draw->AddLine({x, middle - half}, {x, middle + half}, ink, mark.attention ? u(3.0F) : std::max(1.0F, u(1.0F)));
  }
}

// by event, from where it stands
void walk(const TimeLineView& view, TimeLineState& state, Orders& orders) {
  if (!ImGui::IsItemFocused()) return;
  const auto& marks = *view.marks;
  base::Tick to = state.at;
  if (ImGui::IsKeyPressed(ImGuiKey_RightArrow)) {
    for (const TimeMark& mark : marks) {
      if (mark.tick > state.at) {
        to = mark.tick;
        break;
      }
    }
  }
  if (ImGui::IsKeyPressed(ImGuiKey_LeftArrow)) {
    for (auto mark = marks.rbegin(); mark != marks.rend(); ++mark) {
      if (mark->tick < state.at) {
        to = mark->tick;
        break;
      }
    }
  }
  if (to != state.at) {
    state.at = to;
    orders.push_back(order_at(OrderKind::Peek, to));
  }
}

}  // namespace

std::string clock_words(base::Tick tick) {
  const std::int64_t seconds = tick / base::kTicksPerSecond;
  char text[32];
  std::snprintf(text, sizeof text, "%02lld:%02lld", static_cast<long long>(seconds / 60),
                static_cast<long long>(seconds % 60));
  return text;
}

void draw_time_line(const Rect& at, const TimeLineView& view, TimeLineState& state, Orders& orders) {
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {u(24.0F), u(4.0F)});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowRounding, 0.0F);
  ImGui::PushStyleColor(ImGuiCol_WindowBg, paper().ground);
  {
    const Card card("time line", at);
    if (card) {
      ImGui::AlignTextToFramePadding();
      text_strong(clock_words(state.at));
      ImGui::SameLine(0.0F, u(12.0F));
      const char* go = tr("Go on from here");
      const float go_w =
          view.can_go_on ? ImGui::CalcTextSize(go).x + 2.0F * ImGui::GetStyle().FramePadding.x + u(12.0F) : 0.0F;
      const float w = std::max(u(60.0F), ImGui::GetContentRegionAvail().x - go_w);
      const ImVec2 from = ImGui::GetCursorScreenPos();
      const float tall = std::max(u(24.0F), at.h - u(12.0F));
      ImGui::InvisibleButton("line", {w, tall}, ImGuiButtonFlags_EnableNav);
      note_item(tr("time line"), true);
      const Rect line{from.x + u(4.0F), from.y, w - u(8.0F), tall};
      draw_marks(line, view);
      if (ImGui::IsItemActive()) {
        const float share = std::clamp((ImGui::GetIO().MousePos.x - line.x) / line.w, 0.0F, 1.0F);
        const base::Tick to = static_cast<base::Tick>(static_cast<double>(share) * static_cast<double>(view.end));
        if (to != state.at || !state.dragging) orders.push_back(order_at(OrderKind::Peek, to));
        state.at = to;
        state.dragging = true;
      } else {
        state.dragging = false;
      }
      walk(view, state, orders);
      const float x =
          line.x + line.w * static_cast<float>(state.at) / static_cast<float>(std::max<base::Tick>(1, view.end));
      ImGui::GetWindowDrawList()->AddLine({x, line.y}, {x, line.bottom()}, paper().ink, u(2.5F));
      if (view.can_go_on) {
        ImGui::SameLine(0.0F, u(12.0F));
        if (button(go, true)) orders.push_back(order_at(OrderKind::Rewind, state.at));
      }
    }
  }
  ImGui::PopStyleColor();
  ImGui::PopStyleVar(2);
}

}  // namespace proofstand::desk
