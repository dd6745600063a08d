#include "sim/desk/panels/start_sheet.h"

#include <algorithm>
#include <cmath>

#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

// the mount: a ring with its bolts, as one looks at the disc side
void draw_mount(std::size_t bolts, float size) {
  const ImVec2 at = ImGui::GetCursorScreenPos();
  const ImVec2 c{at.x + size / 2.0F, at.y + size / 2.0F};
  ImDrawList* draw = ImGui::GetWindowDrawList();
  const float line = std::max(1.0F, u(1.5F));
  draw->AddCircle(c, size * 0.48F, paper().ink, 0, line);
  draw->AddCircle(c, size * 0.40F, paper().secondary, 0, std::max(1.0F, u(1.0F)));
  draw->AddCircle(c, size * 0.12F, paper().ink, 0, line);
  for (std::size_t i = 0; i < bolts; ++i) {
    const float a = 6.2831853F * static_cast<float>(i) / static_cast<float>(bolts) + 0.5F;
    draw->AddCircleFilled({c.x + std::cos(a) * size * 0.24F, c.y - std::sin(a) * size * 0.24F}, size * 0.045F,
                          paper().ink);
  }
  ImGui::Dummy({size, size});
}

void draw_ways(const JobLine& job, Orders& orders) {
  const char* words[] = {tr("Guided"), tr("Practice"), tr("Exam")};
  const float room = ImGui::GetContentRegionAvail().x;
  float used = 0.0F;
  for (int way = 0; way < 3; ++way) {
    const float w = ImGui::CalcTextSize(words[way]).x + 2.0F * ImGui::GetStyle().FramePadding.x + u(8.0F);
    if (way > 0 && used + w < room) ImGui::SameLine();
    if (way > 0 && used + w >= room) used = 0.0F;
    used += w;
    if (button(words[way], way == 0)) {
      Order out = order(OrderKind::StartJob, job.file);
      out.way = way;
      orders.push_back(std::move(out));
    }
  }
}

void draw_job(const JobLine& job, Orders& orders) {
  ImGui::PushID(job.file.c_str());
  const float icon = u(72.0F);
  const bool beside = ImGui::GetContentRegionAvail().x > u(420.0F);
  if (beside) {
    draw_mount(job.bolts, icon);
    ImGui::SameLine(0.0F, u(16.0F));
  }
  ImGui::BeginGroup();
  text_head(job.title);
  text_small(job.minutes.empty() ? job.trains : job.trains + " · " + job.minutes);
  if (!job.last.empty()) text_small(job.last);
  draw_ways(job, orders);
  ImGui::EndGroup();
  ImGui::PopID();
  ImGui::Dummy({0.0F, u(10.0F)});
}

void draw_attempts(const StartView& view, bool open, const char* head, OrderKind kind, const char* verb,
                   Orders& orders) {
  bool any = false;
  for (const AttemptLine& line : view.attempts) any = any || line.open == open;
  if (!any) return;
  text_head(head);
  for (const AttemptLine& line : view.attempts) {
    if (line.open != open) continue;
    ImGui::PushID(line.file.c_str());
    text_body(line.title);
    text_small(line.words);
    if (button(verb)) orders.push_back(order(kind, line.file));
    ImGui::PopID();
  }
  rule_line();
}

}  // namespace

void draw_start_sheet(const Rect& window, const StartView& view, Orders& orders) {
  const float w = std::min(window.w, u(860.0F));
  const Rect at{window.x + (window.w - w) / 2.0F, window.y, w, window.h};
  const Card card("start sheet", at, true);
  if (!card) return;
  ImGui::Dummy({0.0F, u(12.0F)});
  text_title(tr("At the stand"));
  text_body(
      tr("Choose a job and how to work it. Guided tells what is owed next and why; practice lets you look inside "
         "and go back; an exam is silent."));
  if (!view.note.empty()) text_attention(view.note);
  rule_line();
  text_head(tr("Jobs"));
  ImGui::Dummy({0.0F, u(6.0F)});
  for (const JobLine& job : view.jobs) draw_job(job, orders);
  if (view.jobs.empty()) text_attention(tr("No exercises were found beside the program."));
  rule_line();
  draw_attempts(view, true, tr("Go on where you left off"), OrderKind::GoOn, tr("Go on"), orders);
  draw_attempts(view, false, tr("Look at an earlier go"), OrderKind::Review, tr("Mark sheet"), orders);
  text_head(tr("For instructors"));
  text_body(
      tr("Exercises are plain text files. The command check reads them, mark judges any attempt again, and help "
         "shows how to write one."));
  rule_line();
  text_small(view.caution);
  ImGui::Dummy({0.0F, u(6.0F)});
  if (button(tr("Help"))) orders.push_back(order_command(CommandId::Help));
  ImGui::SameLine();
  if (button(tr("Settings"))) orders.push_back(order(OrderKind::ChangeSettings));
  ImGui::SameLine();
  if (button(tr("Close"))) orders.push_back(order(OrderKind::Quit));
  ImGui::Dummy({0.0F, u(12.0F)});
}

}  // namespace proofstand::desk
