#include "sim/desk/panels/paper.h"

#include <imgui_internal.h>
#include <implot.h>

#include <algorithm>
#include <cmath>

namespace proofstand::desk {
namespace {

constexpr ImU32 colour(unsigned rgb, unsigned alpha = 255) {
  return IM_COL32((rgb >> 16) & 255U, (rgb >> 8) & 255U, rgb & 255U, alpha);
}

constexpr Paper kLight = {colour(0xFBF9F4),
                          colour(0xEFECE4),
                          colour(0x1D2A33),
                          colour(0x4B5963),
                          colour(0xD8D3C6),
                          colour(0x0B6E6E),
                          colour(0xD7E5E1),
                          colour(0x9A4A00),
                          colour(0xF0DFCB),
                          colour(0xFBF9F4),
                          1.0F};
constexpr Paper kDark = {colour(0x20282D),
                         colour(0x171D21),
                         colour(0xF1EEE6),
                         colour(0xB4BDC2),
                         colour(0x414B52),
                         colour(0x6FC7C0),
                         colour(0x21443F),
                         colour(0xE8A35C),
                         colour(0x4A3420),
                         colour(0x14201F),
                         1.0F};

// the look is one for the whole program: the card library's own context is, too
Paper g_paper = kLight;
ImFont* g_body = nullptr;
ImFont* g_strong = nullptr;
std::vector<SeenItem> g_seen;

void text_in(ImFont* face, float size, ImU32 ink, std::string_view words) {
  ImGui::PushFont(face, size);
  ImGui::PushStyleColor(ImGuiCol_Text, ink);
  ImGui::PushTextWrapPos(0.0F);
  ImGui::TextUnformatted(words.data(), words.data() + words.size());
  note_item(words, false);
  ImGui::PopTextWrapPos();
  ImGui::PopStyleColor();
  ImGui::PopFont();
}

double linear(unsigned channel) {
  const double share = static_cast<double>(channel) / 255.0;
  return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double luminance(ImU32 c) {
  return 0.2126 * linear(c & 255U) + 0.7152 * linear((c >> 8) & 255U) + 0.0722 * linear((c >> 16) & 255U);
}

ImVec4 vec(ImU32 c) { return ImGui::ColorConvertU32ToFloat4(c); }

}  // namespace

const std::vector<SeenItem>& items_seen() { return g_seen; }

void forget_items() { g_seen.clear(); }

void note_item(std::string_view words, bool pressable) {
  const ImGuiWindow* window = ImGui::GetCurrentWindow();
  const ImVec2 lo = ImGui::GetItemRectMin(), hi = ImGui::GetItemRectMax();
  SeenItem item{window->RootWindow->Name, std::string(words), {lo.x, lo.y, hi.x - lo.x, hi.y - lo.y}, pressable, false};
  // cut sideways: no card scrolls that way; downwards only where it does not scroll
  const ImRect inner = window->InnerRect;
  item.cut =
      hi.x > inner.Max.x + 1.0F || ((window->Flags & ImGuiWindowFlags_NoScrollbar) != 0 && hi.y > inner.Max.y + 1.0F);
  g_seen.push_back(std::move(item));
}

const Paper& paper() { return g_paper; }

void set_paper(bool dark, float u_px) {
  g_paper = dark ? kDark : kLight;
  g_paper.u_px = u_px;
}

void set_faces(ImFont* body, ImFont* strong) {
  g_body = body;
  g_strong = strong == nullptr ? body : strong;
}

double contrast_1(ImU32 a, ImU32 b) {
  const double x = luminance(a) + 0.05, y = luminance(b) + 0.05;
  return std::max(x, y) / std::min(x, y);
}

void colour_style(ImGuiStyle& style) {
  const Paper& p = g_paper;
  const auto set = [&](ImGuiCol which, ImU32 c) { style.Colors[which] = vec(c); };
  for (ImVec4& c : style.Colors) c = vec(p.paper);
  set(ImGuiCol_Text, p.ink);
  set(ImGuiCol_TextDisabled, p.secondary);
  set(ImGuiCol_WindowBg, p.paper);
  set(ImGuiCol_ChildBg, IM_COL32(0, 0, 0, 0));
  set(ImGuiCol_PopupBg, p.paper);
  set(ImGuiCol_Border, p.rule);
  set(ImGuiCol_BorderShadow, IM_COL32(0, 0, 0, 0));
  set(ImGuiCol_FrameBg, p.paper);
  set(ImGuiCol_FrameBgHovered, p.ground);
  set(ImGuiCol_FrameBgActive, p.accent_wash);
  set(ImGuiCol_ScrollbarBg, IM_COL32(0, 0, 0, 0));
  set(ImGuiCol_ScrollbarGrab, p.rule);
  set(ImGuiCol_ScrollbarGrabHovered, p.secondary);
  set(ImGuiCol_ScrollbarGrabActive, p.ink);
  set(ImGuiCol_CheckMark, p.accent);
  set(ImGuiCol_SliderGrab, p.accent);
  set(ImGuiCol_SliderGrabActive, p.ink);
  set(ImGuiCol_Button, p.paper);
  set(ImGuiCol_ButtonHovered, p.ground);
  set(ImGuiCol_ButtonActive, p.accent_wash);
  set(ImGuiCol_Header, p.accent_wash);
  set(ImGuiCol_HeaderHovered, p.ground);
  set(ImGuiCol_HeaderActive, p.accent_wash);
  set(ImGuiCol_Separator, p.rule);
  set(ImGuiCol_TextSelectedBg, p.accent_wash);
  set(ImGuiCol_InputTextCursor, p.ink);
  set(ImGuiCol_NavCursor, p.ink);
  set(ImGuiCol_ModalWindowDimBg, IM_COL32(0, 0, 0, 60));
  set(ImGuiCol_TextLink, p.accent);
}

void colour_plots(ImPlotStyle& style) {
  const Paper& p = g_paper;
  style.Colors[ImPlotCol_FrameBg] = vec(IM_COL32(0, 0, 0, 0));
  style.Colors[ImPlotCol_PlotBg] = vec(IM_COL32(0, 0, 0, 0));
  style.Colors[ImPlotCol_PlotBorder] = vec(p.rule);
  style.Colors[ImPlotCol_AxisText] = vec(p.secondary);
  style.Colors[ImPlotCol_AxisGrid] = vec(p.rule);
  style.Colors[ImPlotCol_AxisTick] = vec(p.rule);
  style.Colors[ImPlotCol_TitleText] = vec(p.ink);
  style.Colors[ImPlotCol_InlayText] = vec(p.ink);
  style.Colors[ImPlotCol_LegendBg] = vec(p.paper);
  style.Colors[ImPlotCol_LegendBorder] = vec(p.rule);
  style.Colors[ImPlotCol_LegendText] = vec(p.ink);
  style.PlotPadding = {u(6.0F), u(6.0F)};
  style.LabelPadding = {u(4.0F), u(4.0F)};
  style.LegendPadding = {u(6.0F), u(6.0F)};
}

Card::Card(const char* name, const Rect& at, bool scrolls, bool bare) {
  if (at.empty()) return;
  ImGui::SetNextWindowPos({at.x, at.y});
  ImGui::SetNextWindowSize({at.w, at.h});
  ImGuiWindowFlags flags = ImGuiWindowFlags_NoTitleBar | ImGuiWindowFlags_NoResize | ImGuiWindowFlags_NoMove |
                           ImGuiWindowFlags_NoCollapse | ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoDocking |
                           ImGuiWindowFlags_NoFocusOnAppearing | ImGuiWindowFlags_NoBringToFrontOnFocus;
  if (!scrolls) flags |= ImGuiWindowFlags_NoScrollbar | ImGuiWindowFlags_NoScrollWithMouse;
  if (bare) flags |= ImGuiWindowFlags_NoBackground;
  ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, bare ? 0.0F : u(1.0F));
  open_ = ImGui::Begin(name, nullptr, flags);
  ImGui::PopStyleVar();
  begun_ = true;
}

Card::~Card() {
  if (begun_) ImGui::End();
}

void text_small(std::string_view words) { text_in(g_body, 14.0F, g_paper.secondary, words); }
void text_body(std::string_view words) { text_in(g_body, 15.0F, g_paper.ink, words); }
void text_strong(std::string_view words) { text_in(g_strong, 15.0F, g_paper.ink, words); }
void text_head(std::string_view words) { text_in(g_strong, 17.0F, g_paper.ink, words); }
void text_title(std::string_view words) { text_in(g_strong, 40.0F, g_paper.ink, words); }
void text_attention(std::string_view words) { text_in(g_strong, 15.0F, g_paper.attention, words); }

void rule_line() {
  ImGui::Dummy({0.0F, u(2.0F)});
  const ImVec2 at = ImGui::GetCursorScreenPos();
  const float w = ImGui::GetContentRegionAvail().x;
  ImGui::GetWindowDrawList()->AddLine(at, {at.x + w, at.y}, g_paper.rule, std::max(1.0F, u(1.0F)));
  ImGui::Dummy({0.0F, u(4.0F)});
}

bool button(const char* words, bool strong, bool wide, bool enabled) {
  const float width = wide ? ImGui::GetContentRegionAvail().x : 0.0F;
  const float inner = wide ? width - 2.0F * ImGui::GetStyle().FramePadding.x : 0.0F;
  const float tall = std::max(u(44.0F), ImGui::CalcTextSize(words, nullptr, true).y + u(18.0F));
  ImGui::BeginDisabled(!enabled);
  if (strong) {
    ImGui::PushStyleColor(ImGuiCol_Button, g_paper.accent);
    ImGui::PushStyleColor(ImGuiCol_ButtonHovered, g_paper.accent);
    ImGui::PushStyleColor(ImGuiCol_Text, g_paper.on_accent);
  }
  // words longer than the line are set smaller rather than cut
  const float needed = ImGui::CalcTextSize(words, nullptr, true).x;
  const bool squeezed = wide && needed > inner && inner > 0.0F;
  if (squeezed) ImGui::PushFont(nullptr, ImGui::GetStyle().FontSizeBase * std::max(0.6F, inner / needed));
  const bool pressed = ImGui::Button(words, {width, tall});
  note_item(words, enabled);
  if (squeezed) ImGui::PopFont();
  if (strong) ImGui::PopStyleColor(3);
  ImGui::EndDisabled();
  return pressed;
}

bool link(const char* words) {
  ImGui::PushStyleColor(ImGuiCol_Text, g_paper.accent);
  const bool pressed = ImGui::TextLink(words);
  note_item(words, true);
  ImGui::PopStyleColor();
  return pressed;
}

bool key_link(const char* key, const char* words) {
  const float pad = u(6.0F);
  const ImVec2 cap = ImGui::CalcTextSize(key), word = ImGui::CalcTextSize(words);
  const float cap_w = key[0] == '\0' ? 0.0F : cap.x + 2.0F * pad;
  const float tall = std::max(u(26.0F), word.y + u(8.0F));
  const ImVec2 at = ImGui::GetCursorScreenPos();
  ImGui::PushID(words);
  const bool pressed = ImGui::InvisibleButton("key", {cap_w + pad + word.x + pad, tall});
  ImGui::PopID();
  note_item(words, true);
  ImDrawList* draw = ImGui::GetWindowDrawList();
  if (ImGui::IsItemHovered()) {
    draw->AddRectFilled(ImGui::GetItemRectMin(), ImGui::GetItemRectMax(), g_paper.ground, u(6.0F));
  }
  const float middle = at.y + tall / 2.0F;
  if (cap_w > 0.0F) {
    const float half = cap.y / 2.0F + u(2.0F);
    draw->AddRectFilled({at.x, middle - half}, {at.x + cap_w, middle + half}, g_paper.paper, u(4.0F));
    draw->AddRect({at.x, middle - half}, {at.x + cap_w, middle + half}, g_paper.secondary, u(4.0F));
    draw->AddText({at.x + pad, middle - cap.y / 2.0F}, g_paper.ink, key);
  }
  draw->AddText({at.x + cap_w + pad, middle - word.y / 2.0F}, g_paper.ink, words);
  return pressed;
}

bool choice(const char* words, bool chosen) {
  const float w = ImGui::GetContentRegionAvail().x;
  const float mark = u(14.0F), pad = u(8.0F);
  const ImVec2 size = ImGui::CalcTextSize(words, nullptr, true, w - mark - 3.0F * pad);
  const float tall = std::max(u(36.0F), size.y + 2.0F * pad);
  const ImVec2 at = ImGui::GetCursorScreenPos();
  const bool pressed = ImGui::InvisibleButton(words, {w, tall});
  note_item(words, true);
  ImDrawList* draw = ImGui::GetWindowDrawList();
  if (ImGui::IsItemHovered()) {
    draw->AddRectFilled(ImGui::GetItemRectMin(), ImGui::GetItemRectMax(), g_paper.ground, u(6.0F));
  }
  const float middle = at.y + tall / 2.0F;
  draw->AddCircle({at.x + pad + mark / 2.0F, middle}, mark / 2.0F, g_paper.secondary, 0, std::max(1.0F, u(1.5F)));
  if (chosen) draw->AddCircleFilled({at.x + pad + mark / 2.0F, middle}, mark / 2.0F - u(3.5F), g_paper.accent);
  draw->AddText(ImGui::GetFont(), ImGui::GetFontSize(), {at.x + mark + 2.0F * pad, middle - size.y / 2.0F}, g_paper.ink,
                words, nullptr, w - mark - 3.0F * pad);
  return pressed;
}

}  // namespace proofstand::desk
