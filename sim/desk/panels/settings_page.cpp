#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/desk/panels/pages.h"
#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

bool tick_box(const char* words, bool& value) {
  const bool changed = ImGui::Checkbox(words, &value);
  note_item(words, true);
  return changed;
}

// one of several, side by side as far as the line goes
bool one_of(const char* head, const std::vector<std::pair<int, std::string>>& options, int& value) {
  text_body(head);
  bool changed = false;
  ImGui::PushID(head);
  for (std::size_t i = 0; i < options.size(); ++i) {
    const float w = ImGui::CalcTextSize(options[i].second.c_str()).x + 2.0F * ImGui::GetStyle().FramePadding.x;
    if (i > 0 &&
        ImGui::GetItemRectMax().x + w + u(8.0F) < ImGui::GetCursorScreenPos().x + ImGui::GetContentRegionAvail().x) {
      ImGui::SameLine();
    }
    if (button(options[i].second.c_str(), options[i].first == value) && options[i].first != value) {
      value = options[i].first;
      changed = true;
    }
  }
  ImGui::PopID();
  return changed;
}

bool draw_language(Settings& settings) {
  const std::vector<std::string> tags = languages_there();
  std::vector<std::pair<int, std::string>> options;
  int at = 0;
  for (std::size_t i = 0; i < tags.size(); ++i) {
    options.emplace_back(static_cast<int>(i), tags[i]);
    if (tags[i] == settings.language) at = static_cast<int>(i);
  }
  if (!one_of(tr("Language"), options, at)) return false;
  settings.language = tags[static_cast<std::size_t>(at)];
  return true;
}

bool draw_aids(Settings& settings) {
  text_head(tr("Aids, named in the attempt"));
  bool changed = one_of(tr("Pointer's motion counts"),
                        {{50, tr("half")}, {100, tr("as it is")}, {150, tr("half more")}, {200, tr("double")}},
                        settings.drag_gain_percent);
  changed |=
      one_of(tr("Steadying of the pointer"), {{0, tr("none")}, {80, "80 ms"}, {160, "160 ms"}}, settings.steadying_ms);
  changed |= tick_box(tr("a click begins a pull, a click ends it"), settings.hold_by_click);
  changed |= tick_box(tr("scales are read out line by line"), settings.reading_in_words);
  return changed;
}

bool draw_keys(Settings& settings, const Bindings& bindings, SettingsState& state) {
  bool changed = tick_box(tr("single letters are keys"), settings.plain_letters);
  if (!state.key_trouble.empty()) text_attention(state.key_trouble);
  for (const Command& command : command_table()) {
    ImGui::PushID(static_cast<int>(command.id));
    const bool waits = state.rebinding == static_cast<int>(command.id);
    text_body(tr(std::string(command.words).c_str()));
    const std::string keys = waits ? tr("press a key; Esc keeps it as it was")
                                   : words_of(bindings.chords[static_cast<std::size_t>(command.id)]);
    if (button(keys.empty() ? tr("no key") : keys.c_str(), waits)) {
      state.rebinding = waits ? -1 : static_cast<int>(command.id);
    }
    ImGui::PopID();
  }
  if (button(tr("All keys as they came"))) {
    settings.keys.clear();
    changed = true;
  }
  return changed;
}

}  // namespace

void draw_settings(const Rect& window, Settings& settings, const Bindings& bindings, SettingsState& state, Page& page,
                   Orders& orders) {
  const float w = std::min(window.w, u(640.0F));
  const Card card("settings", {window.x + (window.w - w) / 2.0F, window.y, w, window.h}, true);
  if (!card) return;
  bool changed = false;
  text_title(tr("Settings"));
  if (button(tr("Back"), true)) page = Page::None;
  rule_line();
  changed |= one_of(
      tr("Size of words"),
      {{75, "75 %"}, {100, "100 %"}, {125, "125 %"}, {150, "150 %"}, {200, "200 %"}, {250, "250 %"}, {300, "300 %"}},
      settings.text_percent);
  changed |= draw_language(settings);
  changed |= tick_box(tr("dark paper, for dim rooms"), settings.dark);
  changed |= tick_box(tr("no gliding: views cut"), settings.reduced_motion);
  changed |= tick_box(tr("the view follows the hands by itself"), settings.camera_by_itself);
  changed |= tick_box(tr("sounds"), settings.sound);
  changed |= tick_box(tr("sounds in words"), settings.captions);
  changed |= tick_box(tr("the left hand acts first"), settings.left_first);
  rule_line();
  changed |= draw_aids(settings);
  rule_line();
  text_head(tr("Keys"));
  changed |= draw_keys(settings, bindings, state);
  if (changed) orders.push_back(order(OrderKind::ChangeSettings, "keep"));
}

}  // namespace proofstand::desk
