#include "sim/desk/panels/pages.h"

#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

Rect sheet_in(const Rect& window, float width_u) {
  const float w = std::min(window.w, u(width_u));
  const float margin = window.h > u(500.0F) ? u(32.0F) : 0.0F;
  return {window.x + (window.w - w) / 2.0F, window.y + margin, w, window.h - 2.0F * margin};
}

std::string points(std::int64_t milli) { return base::text_for_people(static_cast<double>(milli) / 1000.0, 3); }

void draw_live(const char* head, const std::vector<report::LiveLine>& lines) {
  text_head(head);
  if (lines.empty()) text_small(tr("nothing"));
  for (const report::LiveLine& line : lines) {
    text_body(line.title);
    if (!line.say.empty()) text_small(line.say);
  }
  rule_line();
}

}  // namespace

void draw_pause(const Rect& window, const PauseView& view, Page& page, Orders& orders) {
  const Card card("pause", sheet_in(window, 520.0F), true);
  if (!card) return;
  text_title(view.exam ? tr("The exam goes on") : tr("Paused"));
  text_body(view.title);
  text_small(view.kept);
  rule_line();
  if (button(tr("Back to work"), true, true)) page = Page::None;
  if (view.can_ask_standing && button(tr("How am I doing?"), false, true)) page = Page::Standing;
  if (button(tr("Help"), false, true)) page = Page::Help;
  if (button(tr("Settings"), false, true)) page = Page::Settings;
  if (button(tr("Leave the stand; the attempt is kept"), false, true)) orders.push_back(order(OrderKind::ToStart));
  if (button(tr("Close the window"), false, true)) orders.push_back(order(OrderKind::Quit));
}

void draw_help(const Rect& window, const std::vector<HelpRow>& rows, const std::string& screen_words,
               const std::string& questions, Page& page) {
  const Card card("help", sheet_in(window, 900.0F), true);
  if (!card) return;
  text_title(tr("Help"));
  text_body(screen_words);
  if (button(tr("Back"), true)) page = Page::None;
  rule_line();
  text_head(tr("Questions at the stand"));
  for (std::size_t at = questions.find("## "); at != std::string::npos;) {
    const std::size_t end = questions.find('\n', at), next = questions.find("## ", end);
    const std::string question = questions.substr(at + 3, end - at - 3);
    ImGui::PushStyleColor(ImGuiCol_Header, paper().paper);
    const bool open = ImGui::CollapsingHeader(question.c_str());
    ImGui::PopStyleColor();
    note_item(question, true);
    if (open) {
      std::string answer = questions.substr(end + 1, next == std::string::npos ? next : next - end - 1);
      // lines of the file are not lines of the page
      for (std::size_t i = 0; i + 1 < answer.size(); ++i) {
        if (answer[i] == '\n' && answer[i + 1] != '\n') answer[i] = ' ';
      }
      text_body(answer);
    }
    at = next;
  }
  rule_line();
  text_head(tr("What every key does"));
  const bool narrow = window.w < u(720.0F);
  if (ImGui::BeginTable("keys", narrow ? 2 : 4, ImGuiTableFlags_BordersInnerH | ImGuiTableFlags_SizingStretchProp)) {
    ImGui::TableSetupColumn(tr("action"));
    ImGui::TableSetupColumn(tr("keys"));
    if (!narrow) ImGui::TableSetupColumn(tr("mouse"));
    if (!narrow) ImGui::TableSetupColumn(tr("step panel"));
    ImGui::TableHeadersRow();
    for (const HelpRow& row : rows) {
      ImGui::TableNextRow();
      const std::string* cells[] = {&row.words, &row.keys, &row.mouse, &row.panel};
      for (int i = 0; i < (narrow ? 2 : 4); ++i) {
        ImGui::TableSetColumnIndex(i);
        text_body(tr(cells[i]->c_str()));
      }
    }
    ImGui::EndTable();
  }
}

void draw_standing(const Rect& window, const report::LiveStanding& standing, Page& page) {
  const Card card("how am I doing", sheet_in(window, 720.0F), true);
  if (!card) return;
  text_title(tr("So far"));
  text_body(tr("{0} of {1} points are gone; {2} more would go if the job ended now.",
               {points(standing.lost_milli), points(standing.points_milli), points(standing.at_stake_milli)}));
  if (button(tr("Back to work"), true)) page = Page::None;
  rule_line();
  draw_live(tr("Gone"), standing.broken);
  draw_live(tr("Still open"), standing.open);
  draw_live(tr("As it should be"), standing.met);
}

}  // namespace proofstand::desk
