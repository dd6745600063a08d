#include "sim/desk/window/card_kit.h"

#include <imgui.h>
#include <imgui_impl_glfw.h>
#include <imgui_impl_opengl3.h>
#include <imgui_internal.h>
#include <implot.h>

#include <algorithm>

#include "sim/desk/asset_files.h"
#include "sim/desk/panels/paper.h"
#include "sim/desk/window/imgui_settings.h"
#include "sim/desk/window/window_layer.h"

namespace proofstand::desk {

CardKit::CardKit(WindowLayer& window) : window_(&window) {
  IMGUI_CHECKVERSION();
  ImGui::CreateContext();
  ImPlot::CreateContext();
  ImGuiIO& io = ImGui::GetIO();
  io.IniFilename = nullptr;  // where cards lie is the layout's, not a file's
  io.LogFilename = nullptr;
  io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
  io.ConfigNavCaptureKeyboard = false;
  io.ConfigWindowsMoveFromTitleBarOnly = true;
  io.ConfigInputTextCursorBlink = false;  // a blinking mark would redraw for nothing
  io.ConfigErrorRecoveryEnableTooltip = false;
  // keys of its own that would clash with ours
  ImGui::GetCurrentContext()->ConfigNavWindowingKeyNext = ImGuiKey_None;
  ImGui::GetCurrentContext()->ConfigNavWindowingKeyPrev = ImGuiKey_None;
  const std::string regular = find_typeface(false), strong = find_typeface(true);
  if (regular.empty()) {
    missing_ = "the typeface of the cards (package fonts-inter) is not installed; a plainer one stands in";
    set_faces(io.Fonts->AddFontDefault(), nullptr);
  } else {
    ImFont* body = io.Fonts->AddFontFromFileTTF(regular.c_str());
    set_faces(body, strong.empty() ? body : io.Fonts->AddFontFromFileTTF(strong.c_str()));
  }
  if (!window.screenless()) ImGui_ImplGlfw_InitForOpenGL(window.handle(), true);
  ImGui_ImplOpenGL3_Init("#version 330 core");
}

CardKit::~CardKit() {
  ImGui_ImplOpenGL3_Shutdown();
  if (!window_->screenless()) ImGui_ImplGlfw_Shutdown();
  ImPlot::DestroyContext();
  ImGui::DestroyContext();
}

void CardKit::set_style(const CardLook& look) {
  if (styled_.content_scale == look.content_scale && styled_.text_scale == look.text_scale &&
      styled_.dark == look.dark) {
    return;
  }
  styled_ = look;
  const float u_px = look.content_scale * look.text_scale;
  set_paper(look.dark, u_px);
  ImGuiStyle style;  // from fresh figures each time, since scaling is not undone
  style.WindowRounding = 10.0F;
  style.ChildRounding = 8.0F;
  style.FrameRounding = 8.0F;
  style.PopupRounding = 8.0F;
  style.GrabRounding = 8.0F;
  style.ScrollbarRounding = 6.0F;
  style.ScrollbarSize = 10.0F;
  style.WindowPadding = {16.0F, 12.0F};
  style.FramePadding = {12.0F, 9.0F};
  style.ItemSpacing = {8.0F, 6.0F};
  style.WindowBorderSize = 1.0F;
  style.FrameBorderSize = 1.0F;
  style.CellPadding = {4.0F, 4.0F};
  style.GrabMinSize = 24.0F;
  style.ScaleAllSizes(u_px);
  style.FontSizeBase = 15.0F;
  style.FontScaleMain = look.text_scale;
  style.FontScaleDpi = look.content_scale;
  colour_style(style);
  ImGui::GetStyle() = style;
  ImPlotStyle& plot = ImPlot::GetStyle();
  plot = ImPlotStyle();
  colour_plots(plot);
}

void CardKit::begin(const CardLook& look, double step_s) {
  set_style(look);
  ImGui_ImplOpenGL3_NewFrame();
  if (!window_->screenless()) ImGui_ImplGlfw_NewFrame();
  ImGuiIO& io = ImGui::GetIO();
  if (window_->screenless()) {
    const glm::ivec2 size = window_->size_px();
    io.DisplaySize = {static_cast<float>(size.x), static_cast<float>(size.y)};
    io.DisplayFramebufferScale = {1.0F, 1.0F};
  }
  io.DeltaTime = static_cast<float>(std::clamp(step_s, 1e-4, 1.0));
  ImGui::NewFrame();
}

void CardKit::end() {
  ImGui::Render();
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}

int CardKit::faults() { return card_faults(); }

bool CardKit::input_waits() const { return ImGui::GetCurrentContext()->InputEventsQueue.Size > 0; }

}  // namespace proofstand::desk
