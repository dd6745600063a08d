// Mouse and keys over the picture go to the hands; over a card they are the card's.
#include <imgui.h>
#include <imgui_internal.h>

#include "sim/desk/panels/paper.h"
#include "sim/desk/window/keys.h"
#include "sim/desk/window/stand.h"

namespace proofstand::desk {
namespace {

// cards that the pane key walks, in reading order
constexpr const char* kPanes[] = {"step panel", "job card",    "maker's sheet", "look inside", "guidance", "time line",
                                  "mark sheet", "start sheet", "help",          "settings",    "pause"};

bool standing_there(const char* name) {
  const ImGuiWindow* window = ImGui::FindWindowByName(name);
  return window != nullptr && window->WasActive;
}

}  // namespace

void Stand::take_pointer() {
  const ImGuiIO& io = ImGui::GetIO();
  const float scale = px_per_pt();
  const hand::Spot spot{static_cast<double>(io.MousePos.x / scale), static_cast<double>(io.MousePos.y / scale)};
  const bool mine = work_->hands().pulling_by_button() || !io.WantCaptureMouse;
  const bool blocked = open_.page != Page::None || layout_.paged || peek_ != nullptr;
  const glm::vec2 now{io.MousePos.x, io.MousePos.y};
  const glm::vec2 moved = (now - pointer_px_) / scale;
  const bool has_moved = now != pointer_px_;
  pointer_px_ = now;
  if (blocked || !ImGui::IsMousePosValid()) {
    work_->point_at_nothing();
    return;
  }
  const bool fine = io.KeyShift, near = io.KeyCtrl;
  // looking, with the right or the middle button, or with the plain one in look mode
  const bool plain_looks = work_->look_mode();
  if (ImGui::IsMouseClicked(ImGuiMouseButton_Right) || (plain_looks && ImGui::IsMouseClicked(ImGuiMouseButton_Left))) {
    turning_ = mine;
    if (turning_) work_->look_round({0.0F, 0.0F}, true);
  }
  if (ImGui::IsMouseClicked(ImGuiMouseButton_Middle)) shifting_ = mine;
  const bool turn_held =
      ImGui::IsMouseDown(ImGuiMouseButton_Right) || (plain_looks && ImGui::IsMouseDown(ImGuiMouseButton_Left));
  turning_ = turning_ && turn_held;
  shifting_ = shifting_ && ImGui::IsMouseDown(ImGuiMouseButton_Middle);
  if (turning_ && has_moved && plain_looks && fine) {
    work_->look_aside(moved);
  } else if (turning_ && has_moved) {
    work_->look_round(moved, false);
  }
  if (shifting_ && has_moved) work_->look_aside(moved);
  if (turning_ || shifting_) return;
  if (!mine) {
    work_->point_at_nothing();
    return;
  }
  if (has_moved) work_->move(spot, fine, near);
  if (!plain_looks && ImGui::IsMouseClicked(ImGuiMouseButton_Left)) {
    open_.pane = -1;
    work_->press(spot, fine, near);
  }
  if (!plain_looks && ImGui::IsMouseReleased(ImGuiMouseButton_Left)) work_->release(spot, fine, near);
  if (io.MouseWheel != 0.0F) work_->wheel(static_cast<double>(io.MouseWheel), fine);
}

void Stand::take_rebinding() {
  for (const Chord& chord : chords_pressed()) {
    const CommandId id = static_cast<CommandId>(open_.settings.rebinding);
    open_.settings.rebinding = -1;
    open_.settings.key_trouble.clear();
    if (chord.key == Key::Escape) return;
    const auto changed = rebound(bindings_, id, {chord});
    if (!changed) {
      open_.settings.key_trouble = changed.error().sentence();
      return;
    }
    bindings_ = *changed;
    settings_.keys[std::string(command_of(id).name)] = words_of(chord);
    keep_settings();
    return;
  }
}

void Stand::take_keys(Orders& orders) {
  const ImGuiIO& io = ImGui::GetIO();
  if (open_.settings.rebinding >= 0) {
    take_rebinding();
    return;
  }
  const std::vector<Chord> chords = chords_pressed();
  // the pane key: picture, cards, picture
  for (const Chord& chord : chords) {
    if (chord.key != Key::Tab || chord.ctrl) continue;
    const int count = static_cast<int>(std::size(kPanes));
    int next = open_.pane + 1;
    while (next < count && !standing_there(kPanes[next])) ++next;
    open_.pane = next >= count ? -1 : next;
    if (open_.pane >= 0) {
      ImGui::SetWindowFocus(kPanes[open_.pane]);
      ImGui::SetNavCursorVisible(true);
    }
    settle_ = 3;
  }
  const bool page = open_.page != Page::None || layout_.paged || !work_;
  const bool in_card = open_.pane >= 0 || io.WantTextInput || page;
  if (!in_card && !ImGui::IsAnyItemActive()) ImGui::SetWindowFocus(nullptr);  // keys belong to the picture
  for (const Chord& chord : chords) {
    if (chord.key == Key::Escape && (open_.page != Page::None || open_.pane >= 0 || io.WantTextInput)) {
      if (open_.page != Page::None && open_.pane < 0) {
        open_.page = Page::None;
      } else {
        open_.pane = -1;
        ImGui::SetWindowFocus(nullptr);
      }
      settle_ = 3;
      return;
    }
    const bool function_key = chord.key >= Key::F1;
    const bool size_key = chord.ctrl && chord.shift;
    if (io.WantTextInput && !function_key && !size_key) continue;
    if (in_card && !function_key && !size_key) continue;
    if (chord.key == Key::Tab) continue;
    if (work_) {
      const auto meant = work_->meaning(bindings_, chord);
      if (meant) orders.push_back(order_command(*meant, 1, chord.shift && !size_key));
    } else {
      const auto meant = command_for(bindings_, chord, Situation::Free);
      if (meant && !command_of(*meant).acts) orders.push_back(order_command(*meant));
    }
  }
}

}  // namespace proofstand::desk
