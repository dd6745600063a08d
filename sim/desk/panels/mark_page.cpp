#include "sim/desk/panels/mark_page.h"

#include <implot.h>

#include <algorithm>
#include <cmath>

#include "sim/base/number_text.h"
#include "sim/desk/panels/look_inside.h"
#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

constexpr float kDegrees = 57.29578F;

std::string points(std::int64_t milli) { return base::text_for_people(static_cast<double>(milli) / 1000.0, 3); }

// points earned of points judged, as a plain bar
void draw_competence(const report::CompetenceLine& line) {
  const rules::Totals& totals = line.totals;
  if (totals.judged_milli <= 0) return;
  const float label = u(96.0F), figure = u(84.0F);
  const float share = static_cast<float>(totals.earned_milli) / static_cast<float>(totals.judged_milli);
  const ImVec2 at = ImGui::GetCursorScreenPos();
  const float room = ImGui::GetContentRegionAvail().x;
  const bool beside = room > u(300.0F);
  text_body(tr(line.name.c_str()));
  const float x = beside ? at.x + label : at.x;
  const float y = beside ? at.y + u(6.0F) : ImGui::GetCursorScreenPos().y;
  const float w = room - figure - (beside ? label : 0.0F);
  ImDrawList* draw = ImGui::GetWindowDrawList();
  draw->AddRectFilled({x, y}, {x + w, y + u(8.0F)}, paper().ground, u(4.0F));
  draw->AddRectFilled({x, y}, {x + w * share, y + u(8.0F)}, share >= 0.5F ? paper().accent : paper().attention,
                      u(4.0F));
  if (beside) ImGui::SameLine(label + w + u(8.0F) + ImGui::GetStyle().WindowPadding.x);
  text_small(tr("{0} of {1}", {points(totals.earned_milli), points(totals.judged_milli)}));
}

void draw_finding(int index, const report::FindingLine& line, MarkPageState& state, Orders& orders) {
  ImGui::PushID(index);
  const bool grave = line.severity == "critical";
  const std::string head = tr(line.severity.c_str()) + std::string(" · ") +
                           tr("{0} of {1} points", {points(line.earned_milli), points(line.points_milli)});
  if (grave) {
    text_attention(line.what);
  } else {
    text_strong(line.what);
  }
  text_small(head);
  if (state.shown == index) {
    text_body(line.why);
    for (const report::EvidenceLine& evidence : line.evidence) text_small(evidence.words);
  }
  if (link(tr("show it"))) {
    Order out = order(OrderKind::ShowFinding);
    out.index = static_cast<std::size_t>(index);
    orders.push_back(std::move(out));
  }
  ImGui::PopID();
  ImGui::Dummy({0.0F, u(6.0F)});
}

void draw_met(const report::MarkSheet& sheet) {
  text_head(tr("As it should be"));
  for (const report::FindingLine& line : sheet.met) text_small(line.what.empty() ? line.why : line.what);
  if (!sheet.aside.empty()) {
    rule_line();
    text_head(tr("Not judged"));
    for (const report::FindingLine& line : sheet.aside) text_small(line.aside.empty() ? line.what : line.aside);
  }
}

void draw_card_lines(const report::MarkSheet& sheet) {
  text_head(tr("Job card"));
  for (const report::CardLine& line : sheet.card) {
    std::string words = line.entry + ": " + (line.written.empty() ? std::string(tr("nothing written")) : line.written);
    if (!line.agrees && !line.truth.empty()) words += " (" + tr("true: {0}", {line.truth}) + ")";
    if (line.agrees) {
      text_small(words);
    } else {
      text_attention(words);
    }
  }
}

void preload_plot(const report::MarkSheet& sheet, float tall) {
  const int count = static_cast<int>(sheet.bolts.size());
  std::vector<float> kn;
  for (const report::BoltLine& bolt : sheet.bolts) kn.push_back(static_cast<float>(bolt.preload_n / 1000.0));
  if (kn.empty() || !ImPlot::BeginPlot("##kn", {-1.0F, tall}, ImPlotFlags_CanvasOnly | ImPlotFlags_NoInputs)) return;
  const double most = static_cast<double>(*std::max_element(kn.begin(), kn.end()));
  ImPlot::SetupAxes(tr("bolt"), tr("preload, kN"), ImPlotAxisFlags_NoGridLines, ImPlotAxisFlags_None);
  ImPlot::SetupAxesLimits(0.4, count + 0.6, 0.0, std::max({1.0, most * 1.15, sheet.preload_hi_n / 900.0}),
                          ImPlotCond_Always);
  ImPlot::SetupAxisTicks(ImAxis_X1, 1.0, count, count);
  if (sheet.preload_hi_n > 0.0) {
    const double x[2] = {0.4, count + 0.6};
    const double lo[2] = {sheet.preload_lo_n / 1000.0, sheet.preload_lo_n / 1000.0};
    const double hi[2] = {sheet.preload_hi_n / 1000.0, sheet.preload_hi_n / 1000.0};
    ImPlotSpec wash;
    wash.FillColor = ImGui::ColorConvertU32ToFloat4(paper().accent_wash);
    ImPlot::PlotShaded("##range", x, lo, hi, 2, wash);
  }
  ImPlotSpec spec;
  spec.FillColor = spec.LineColor = ImGui::ColorConvertU32ToFloat4(paper().accent);
  ImPlot::PlotBars("##bars", kn.data(), count, 0.5, 1.0, spec);
  ImPlot::EndPlot();
}

void torque_plot(const report::MarkSheet& sheet, std::size_t bolt, float tall) {
  if (!sheet.pictures) return;
  for (const report::TorqueCurve& curve : sheet.pictures->curves) {
    if (curve.bolt != bolt || curve.angle_rad.empty()) continue;
    if (!ImPlot::BeginPlot("##torque", {-1.0F, tall}, ImPlotFlags_CanvasOnly | ImPlotFlags_NoInputs)) return;
    std::vector<double> degrees;
    for (const double angle : curve.angle_rad) degrees.push_back(angle * static_cast<double>(kDegrees));
    const auto [lo, hi] = std::minmax_element(degrees.begin(), degrees.end());
    const double most = *std::max_element(curve.torque_nm.begin(), curve.torque_nm.end());
    ImPlot::SetupAxes(tr("turned, °"), tr("torque, N·m"));
    ImPlot::SetupAxesLimits(*lo, *hi + 1.0, 0.0, std::max(1.0, most * 1.15), ImPlotCond_Always);
    if (sheet.sheet_torque_nm) {
      const double half = sheet.sheet_torque_tolerance_nm.value_or(0.0);
      const double x[2] = {*lo, *hi + 1.0};
      const double a[2] = {*sheet.sheet_torque_nm - half, *sheet.sheet_torque_nm - half};
      const double b[2] = {*sheet.sheet_torque_nm + half, *sheet.sheet_torque_nm + half};
      ImPlotSpec wash;
      wash.FillColor = ImGui::ColorConvertU32ToFloat4(paper().accent_wash);
      ImPlot::PlotShaded("##sheet", x, a, b, 2, wash);
    }
    ImPlotSpec line;
    line.LineColor = ImGui::ColorConvertU32ToFloat4(paper().ink);
    line.LineWeight = std::max(1.0F, u(2.0F));
    ImPlot::PlotLine("##curve", degrees.data(), curve.torque_nm.data(), static_cast<int>(degrees.size()), line);
    for (const std::size_t click : curve.clicks) {
      ImPlot::Annotation(degrees[click], curve.torque_nm[click], ImGui::ColorConvertU32ToFloat4(paper().accent_wash),
                         {u(6.0F), -u(10.0F)}, true, "%s", tr("click"));
    }
    ImPlot::EndPlot();
    return;
  }
  text_small(tr("This bolt was not pulled."));
}

void runout_plot(const report::MarkSheet& sheet, float tall) {
  if (!sheet.pictures || sheet.pictures->runout_m.empty()) return;
  std::vector<double> angle, um;
  for (std::size_t i = 0; i < sheet.pictures->runout_m.size(); ++i) {
    angle.push_back(360.0 * static_cast<double>(i) / static_cast<double>(sheet.pictures->runout_m.size()));
    um.push_back(sheet.pictures->runout_m[i] * 1e6);
  }
  if (!ImPlot::BeginPlot("##runout", {-1.0F, tall}, ImPlotFlags_CanvasOnly | ImPlotFlags_NoInputs)) return;
  const auto [lo, hi] = std::minmax_element(um.begin(), um.end());
  ImPlot::SetupAxes(tr("round the track, °"), tr("out of true, µm"));
  ImPlot::SetupAxesLimits(0.0, 360.0, *lo - 20.0, *hi + 20.0, ImPlotCond_Always);
  ImPlotSpec line;
  line.LineColor = ImGui::ColorConvertU32ToFloat4(paper().ink);
  ImPlot::PlotLine("##line", angle.data(), um.data(), static_cast<int>(um.size()), line);
  ImPlot::EndPlot();
}

void film_plot(const report::MarkSheet& sheet, bool printed, float tall) {
  if (!sheet.pictures) return;
  const std::size_t which = printed ? 0 : 1;
  if (which >= sheet.pictures->films.size()) return;
  const report::FaceFilm& film = sheet.pictures->films[which];
  std::vector<float> load;
  for (const double kg_m2 : film.load_kg_m2) load.push_back(static_cast<float>(kg_m2 * 1e5));
  draw_face_map(load, static_cast<int>(film.sectors), static_cast<int>(film.rings), tall);
}

// the order in which bolts were pulled, a line a round
void order_words(const report::MarkSheet& sheet) {
  int round = 1;
  for (const report::TighteningRound& bolts : sheet.rounds) {
    std::string line;
    for (const std::size_t bolt : bolts) {
      line += (line.empty() ? "" : " – ") + base::text_from_int(static_cast<std::int64_t>(bolt) + 1);
    }
    text_body(tr("round {0}: {1}", {base::text_from_int(round++), line}));
  }
}

}  // namespace

MarkPageLayout mark_page_layout(const Rect& window, float u_px) {
  MarkPageLayout out;
  const float line = std::max(24.0F, 56.0F * u_px);
  const bool wide = window.w / u_px >= 900.0F && window.h / u_px >= 480.0F;
  if (!wide) {
    out.words = window;
    return out;
  }
  const float words = std::clamp(window.w * 0.37F, 380.0F * u_px, 560.0F * u_px);
  const float plots = std::clamp(window.h * 0.30F, 180.0F * u_px, 300.0F * u_px);
  out.words = {window.x, window.y, words, window.h};
  out.time_line = {window.x + words, window.bottom() - line, window.w - words, line};
  out.plots = {window.x + words, window.bottom() - line - plots, window.w - words, plots};
  out.picture = {window.x + words, window.y, window.w - words, window.h - line - plots};
  return out;
}

void draw_mark_words(const Rect& at, const MarkPageView& view, MarkPageState& state, Orders& orders) {
  const Card card("mark sheet", at, true);
  if (!card) return;
  const report::MarkSheet& sheet = *view.sheet;
  text_small(tr("mark sheet") + std::string(" · ") + sheet.title + " · " + tr(sheet.way.c_str()));
  text_title(sheet.verdict_words);
  text_body(sheet.reason);
  text_small(tr("{0} of {1} points judged · pass mark {2}",
                {points(sheet.totals.earned_milli), points(sheet.totals.judged_milli),
                 base::text_from_int(sheet.pass_mark_milli / 10) + " %"}));
  rule_line();
  for (const report::CompetenceLine& line : sheet.competences) draw_competence(line);
  rule_line();
  text_head(sheet.lost.empty() ? tr("Nothing was lost") : tr("What to work on"));
  for (std::size_t i = 0; i < sheet.lost.size(); ++i) draw_finding(static_cast<int>(i), sheet.lost[i], state, orders);
  rule_line();
  draw_card_lines(sheet);
  rule_line();
  draw_met(sheet);
  rule_line();
  for (const std::string& note : sheet.notes) text_small(note);
  for (const std::string& caution : sheet.cautions) text_small(caution);
  if (button(tr("Save as a page"), true, true)) orders.push_back(order(OrderKind::SaveHtml));
  if (!state.saved.empty()) text_small(state.saved);
  if (button(tr("To the start"), false, true)) orders.push_back(order(OrderKind::ToStart));
}

void draw_mark_plots(const Rect& at, const MarkPageView& view, MarkPageState& state) {
  const Card card("plots", at);
  if (!card) return;
  const struct {
    report::PlotKind kind;
    const char* words;
  } kinds[] = {{report::PlotKind::Preload, tr("preload")},
               {report::PlotKind::TorqueAngle, tr("torque over angle")},
               {report::PlotKind::Order, tr("order")},
               {report::PlotKind::FilmMap, tr("faces")},
               {report::PlotKind::Runout, tr("runout")}};
  bool first = true;
  for (const auto& kind : kinds) {
    if (!first) ImGui::SameLine(0.0F, u(14.0F));
    first = false;
    if (key_link("", kind.words)) state.plot = kind.kind;
    if (state.plot == kind.kind) {
      const ImVec2 lo = ImGui::GetItemRectMin(), hi = ImGui::GetItemRectMax();
      ImGui::GetWindowDrawList()->AddLine({lo.x, hi.y}, {hi.x, hi.y}, paper().accent, u(2.0F));
    }
  }
  if (state.plot == report::PlotKind::TorqueAngle) {
    for (std::size_t i = 0; i < view.sheet->bolts.size(); ++i) {
      ImGui::SameLine(0.0F, i == 0 ? u(24.0F) : u(4.0F));
      if (key_link("", base::text_from_int(static_cast<std::int64_t>(i) + 1).c_str())) state.bolt = i;
    }
  }
  const float tall = ImGui::GetContentRegionAvail().y;
  switch (state.plot) {
    case report::PlotKind::TorqueAngle:
      torque_plot(*view.sheet, state.bolt, tall);
      break;
    case report::PlotKind::Order:
      order_words(*view.sheet);
      break;
    case report::PlotKind::FilmMap:
      film_plot(*view.sheet, true, tall - u(4.0F));
      ImGui::SameLine(0.0F, u(24.0F));
      film_plot(*view.sheet, false, tall - u(4.0F));
      break;
    case report::PlotKind::Runout:
      runout_plot(*view.sheet, tall);
      break;
    default:
      preload_plot(*view.sheet, tall);
      break;
  }
}

}  // namespace proofstand::desk
