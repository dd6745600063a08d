#include "sim/desk/window/keys.h"

namespace proofstand::desk {
namespace {

struct Row {
  Key ours;
  ImGuiKey theirs;
};

constexpr Row kRows[] = {
    {Key::B, ImGuiKey_B},
    {Key::C, ImGuiKey_C},
    {Key::D, ImGuiKey_D},
    {Key::E, ImGuiKey_E},
    {Key::F, ImGuiKey_F},
    {Key::G, ImGuiKey_G},
    {Key::H, ImGuiKey_H},
    {Key::I, ImGuiKey_I},
    {Key::J, ImGuiKey_J},
    {Key::K, ImGuiKey_K},
    {Key::L, ImGuiKey_L},
    {Key::N, ImGuiKey_N},
    {Key::O, ImGuiKey_O},
    {Key::P, ImGuiKey_P},
    {Key::R, ImGuiKey_R},
    {Key::S, ImGuiKey_S},
    {Key::T, ImGuiKey_T},
    {Key::U, ImGuiKey_U},
    {Key::V, ImGuiKey_V},
    {Key::X, ImGuiKey_X},
    {Key::Left, ImGuiKey_LeftArrow},
    {Key::Right, ImGuiKey_RightArrow},
    {Key::Up, ImGuiKey_UpArrow},
    {Key::Down, ImGuiKey_DownArrow},
    {Key::PageUp, ImGuiKey_PageUp},
    {Key::PageDown, ImGuiKey_PageDown},
    {Key::Home, ImGuiKey_Home},
    {Key::Enter, ImGuiKey_Enter},
    {Key::Space, ImGuiKey_Space},
    {Key::Escape, ImGuiKey_Escape},
    {Key::Backspace, ImGuiKey_Backspace},
    {Key::Tab, ImGuiKey_Tab},
    {Key::F1, ImGuiKey_F1},
    {Key::F2, ImGuiKey_F2},
    {Key::F3, ImGuiKey_F3},
    {Key::F5, ImGuiKey_F5},
    {Key::F6, ImGuiKey_F6},
    {Key::F7, ImGuiKey_F7},
    {Key::F8, ImGuiKey_F8},
    {Key::F11, ImGuiKey_F11},
};

}  // namespace

ImGuiKey imgui_key(Key key) {
  for (const Row& row : kRows) {
    if (row.ours == key) return row.theirs;
  }
  return ImGuiKey_None;
}

std::vector<Chord> chords_pressed() {
  std::vector<Chord> out;
  const ImGuiIO& io = ImGui::GetIO();
  for (const Row& row : kRows) {
    const bool also_pad = row.ours == Key::Enter && ImGui::IsKeyPressed(ImGuiKey_KeypadEnter, false);
    if (ImGui::IsKeyPressed(row.theirs, false) || also_pad) out.push_back({row.ours, io.KeyCtrl, io.KeyShift});
  }
  return out;
}

}  // namespace proofstand::desk
