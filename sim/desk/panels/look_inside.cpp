#include "sim/desk/panels/look_inside.h"

#include <implot.h>

#include <algorithm>
#include <cmath>

#include "sim/base/number_text.h"
#include "sim/bench/probe.h"
#include "sim/bench/state_surface.h"
#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

constexpr float kDegrees = 57.29578F;
constexpr double kUgCm2 = 1e5;  // from kg/m²
constexpr float kCovers_ug_cm2 = 40.0F;
constexpr std::size_t kRunoutSamples = 180;
constexpr std::size_t kLongestTrace = 4000;

std::string thread_words(const bench::Bench& bench, event::ThingId thing) {
  if (thing == event::kNoThing) return tr("no bolt");
  const std::size_t part = bench.setup().things[event::index_of(thing)].part;
  const bench::BoltState& bolt = bench.state().bolts[part];
  if (bolt.grease_kg_m2 > 0.0) return tr("greased");
  if (bolt.oil_kg_m2 > 0.0) return tr("oiled");
  if (bolt.locker_m3 > 0.0) return tr("liquid threadlocker");
  if (bench.setup().bolts[part].patch) return tr("patch");
  return tr("dry");
}

std::vector<float> film_of(const bench::Bench& bench, bool printed) {
  std::vector<float> out;
  for (const double load : bench::probe_film_kg_m2(bench, printed)) out.push_back(static_cast<float>(load * kUgCm2));
  return out;
}

void plot_preload(const InsideView& view) {
  text_strong(tr("Preload by bolt, kN"));
  const int count = static_cast<int>(view.preload_kn.size());
  if (!ImPlot::BeginPlot("##preload", {-1.0F, u(150.0F)}, ImPlotFlags_CanvasOnly | ImPlotFlags_NoInputs)) return;
  ImPlot::SetupAxes(nullptr, nullptr, ImPlotAxisFlags_NoGridLines, ImPlotAxisFlags_None);
  const float most = *std::max_element(view.preload_kn.begin(), view.preload_kn.end());
  ImPlot::SetupAxesLimits(0.4, count + 0.6, 0.0, std::max(8.0, static_cast<double>(most) * 1.1), ImPlotCond_Always);
  ImPlot::SetupAxisTicks(ImAxis_X1, 1.0, count, count);
  ImPlotSpec spec;
  spec.FillColor = ImGui::ColorConvertU32ToFloat4(paper().accent);
  spec.LineColor = spec.FillColor;
  ImPlot::PlotBars("##kn", view.preload_kn.data(), count, 0.55, 1.0, spec);
  ImPlot::EndPlot();
}

void plot_lines(const char* head, const char* id, const std::vector<float>& x, const std::vector<float>& y,
                const char* x_words, double least_y) {
  text_strong(head);
  if (!ImPlot::BeginPlot(id, {-1.0F, u(150.0F)}, ImPlotFlags_CanvasOnly | ImPlotFlags_NoInputs)) return;
  const float lo = y.empty() ? 0.0F : *std::min_element(y.begin(), y.end());
  const float hi = y.empty() ? 0.0F : *std::max_element(y.begin(), y.end());
  const double room = std::max(least_y, static_cast<double>(hi - lo) * 1.1);
  const double bottom = std::min(0.0, static_cast<double>(lo) * 1.1);
  ImPlot::SetupAxes(x_words, nullptr, ImPlotAxisFlags_None, ImPlotAxisFlags_None);
  ImPlot::SetupAxesLimits(x.empty() ? 0.0 : static_cast<double>(*std::min_element(x.begin(), x.end())),
                          x.empty() ? 1.0 : static_cast<double>(*std::max_element(x.begin(), x.end())) + 1.0, bottom,
                          bottom + room, ImPlotCond_Always);
  if (!x.empty()) {
    ImPlotSpec spec;
    spec.LineColor = ImGui::ColorConvertU32ToFloat4(paper().ink);
    spec.LineWeight = std::max(1.0F, u(2.0F));
    ImPlot::PlotLine("##line", x.data(), y.data(), static_cast<int>(std::min(x.size(), y.size())), spec);
  }
  ImPlot::EndPlot();
}

}  // namespace

InsideView look_inside_of(const bench::Bench& bench, const PullTrace& trace) {
  InsideView out;
  for (const bench::ClampProbe& clamp : bench::probe_clamps(bench)) {
    out.preload_kn.push_back(static_cast<float>(clamp.preload_n / 1000.0));
  }
  for (const bench::HoleState& hole : bench.state().holes) out.thread.push_back(thread_words(bench, hole.bolt));
  out.film_outer_ug_cm2 = film_of(bench, true);
  out.film_inner_ug_cm2 = film_of(bench, false);
  out.sectors = static_cast<int>(bench::kSectors);
  out.rings = static_cast<int>(bench::kRings);
  for (const double lateral : bench::probe_runout_m(bench, kRunoutSamples)) {
    out.runout_um.push_back(static_cast<float>(lateral * 1e6));
  }
  out.trace = &trace;
  return out;
}

void follow_pull(const bench::Bench& bench, PullTrace& trace) {
  for (const bench::PullProbe& pull : bench::probe_pulls(bench)) {
    if (pull.torque_nm < 0.02 && pull.torque_nm > -0.02) continue;
    if (pull.bolt != trace.bolt || trace.angle_deg.size() > kLongestTrace) {
      trace = {};
      trace.bolt = pull.bolt;
    }
    trace.angle_deg.push_back(static_cast<float>(pull.fastener_rad) * kDegrees);
    trace.torque_nm.push_back(static_cast<float>(pull.torque_nm));
  }
}

void draw_face_map(const std::vector<float>& load_ug_cm2, int sectors, int rings, float size_px) {
  const ImVec2 at = ImGui::GetCursorScreenPos();
  ImGui::Dummy({size_px, size_px});
  const ImVec2 c{at.x + size_px / 2.0F, at.y + size_px / 2.0F};
  ImDrawList* draw = ImGui::GetWindowDrawList();
  const float outer = size_px * 0.49F, inner = size_px * 0.38F;
  const float step = 6.2831853F / static_cast<float>(sectors);
  const ImU32 ink = paper().attention;
  for (int s = 0; s < sectors; ++s) {
    // rings are shown in fours: thinner than a pixel they would only shimmer
    for (int r = 0; r < rings; r += 4) {
      float most = 0.0F;
      for (int k = r; k < std::min(rings, r + 4); ++k) {
        most = std::max(most, load_ug_cm2[static_cast<std::size_t>(s * rings + k)]);
      }
      const float shade = std::clamp(std::sqrt(most / kCovers_ug_cm2), 0.0F, 1.0F);
      if (shade < 0.05F) continue;
      const float r0 = inner + (outer - inner) * static_cast<float>(r) / static_cast<float>(rings);
      const float r1 = inner + (outer - inner) * static_cast<float>(r + 4) / static_cast<float>(rings);
      const float a0 = step * static_cast<float>(s), a1 = a0 + step;
      const auto spot = [&](float radius, float angle) {
        return ImVec2{c.x + radius * std::cos(angle), c.y - radius * std::sin(angle)};
      };
      const ImU32 fill = (ink & 0x00FFFFFFU) | (static_cast<ImU32>(shade * 220.0F) << 24);
      draw->AddQuadFilled(spot(r0, a0), spot(r1, a0), spot(r1, a1), spot(r0, a1), fill);
      if (most >= kCovers_ug_cm2 && s % 2 == 0) draw->AddLine(spot(r0, a0), spot(r1, a1), paper().ink);
    }
  }
  draw->AddCircle(c, outer, paper().secondary, 0, std::max(1.0F, u(1.0F)));
  draw->AddCircle(c, inner, paper().secondary, 0, std::max(1.0F, u(1.0F)));
}

void draw_look_inside(const Rect& at, const InsideView& view, Orders& orders) {
  const Card card("look inside", at, true);
  if (!card) return;
  text_small(tr("look inside · only in practice"));
  if (!view.preload_kn.empty()) plot_preload(view);
  for (std::size_t i = 0; i < view.thread.size(); ++i) {
    text_small(tr("bolt {0}: {1}", {base::text_from_int(static_cast<std::int64_t>(i) + 1), view.thread[i]}));
  }
  if (view.trace != nullptr) {
    plot_lines(tr("Torque over angle of the pull, N·m over °"), "##pull", view.trace->angle_deg, view.trace->torque_nm,
               nullptr, 2.0);
  }
  if (!view.film_outer_ug_cm2.empty()) {
    text_strong(tr("What lies on the faces"));
    const float size = std::min(u(160.0F), (ImGui::GetContentRegionAvail().x - u(12.0F)) / 2.0F);
    ImGui::BeginGroup();
    draw_face_map(view.film_outer_ug_cm2, view.sectors, view.rings, size);
    text_small(tr("printed side"));
    ImGui::EndGroup();
    ImGui::SameLine(0.0F, u(12.0F));
    ImGui::BeginGroup();
    draw_face_map(view.film_inner_ug_cm2, view.sectors, view.rings, size);
    text_small(tr("other side"));
    ImGui::EndGroup();
  }
  if (!view.runout_um.empty()) {
    std::vector<float> angle(view.runout_um.size());
    for (std::size_t i = 0; i < angle.size(); ++i) {
      angle[i] = 360.0F * static_cast<float>(i) / static_cast<float>(angle.size());
    }
    plot_lines(tr("Runout round the track, µm over °"), "##runout", angle, view.runout_um, nullptr, 100.0);
  }
  if (button(tr("Fold"), false, true)) orders.push_back(order_command(CommandId::LookInside));
}

}  // namespace proofstand::desk
