#include "sim/report/mark_sheet_html.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/report/page_style.h"
#include "sim/report/svg.h"

namespace proofstand::report {
namespace {

using base::Dimension;
using base::quantity_words;

std::string element(std::string_view tag, std::string_view css, std::string_view inner) {
  std::string out = "<" + std::string(tag);
  if (!css.empty()) out += " class=\"" + std::string(css) + "\"";
  return out + ">" + std::string(inner) + "</" + std::string(tag) + ">\n";
}

std::string points_words(std::int64_t milli) {
  return milli % 1000 == 0 ? base::text_from_int(milli / 1000)
                           : base::text_fixed(static_cast<double>(milli) / 1000.0, 1);
}

std::string clock_words(base::Tick tick) {
  const std::int64_t total = tick / base::kTicksPerSecond;
  const std::string rest = base::text_from_int(total % 60);
  return base::text_from_int(total / 60) + ":" + (rest.size() < 2 ? "0" : "") + rest;
}

std::string header(const MarkSheet& sheet) {
  std::string about = escaped(sheet.title);
  if (!sheet.who.empty()) about += " · " + escaped(sheet.who);
  if (!sheet.way.empty()) about += " · " + escaped(sheet.way);
  about += " · " + clock_words(sheet.time) + " min";
  const rules::Totals& t = sheet.totals;
  const std::string totals = points_words(t.earned_milli) + " points of " + points_words(t.judged_milli) + " judged (" +
                             points_words(t.declared_milli) + " in the exercise) · pass mark " +
                             points_words(100 * static_cast<std::int64_t>(sheet.pass_mark_milli)) + " %";
  return "<header>\n" + element("p", "about", about) + element("h1", "", escaped(sheet.verdict_words)) +
         element("p", "reason", escaped(sheet.reason)) + element("p", "totals", totals) + "</header>\n";
}

std::string bars(const MarkSheet& sheet) {
  std::string out = "<div class=\"bars\">\n";
  for (const CompetenceLine& line : sheet.competences) {
    if (line.totals.judged_milli == 0) continue;
    const std::int32_t share = line.totals.share_milli();
    std::string name = line.name;
    std::replace(name.begin(), name.end(), '-', ' ');
    const std::string width = svg_number(static_cast<double>(share) / 10.0);
    out += "<div class=\"bar\"><span>" + escaped(name) + "</span><span class=\"track\"><span class=\"" +
           (share == 1000 ? "full" : "part") + "\" style=\"display:block;width:" + width +
           "%\"></span></span><span class=\"points\">" + points_words(line.totals.earned_milli) + " of " +
           points_words(line.totals.judged_milli) + "</span></div>\n";
  }
  return out + "</div>\n";
}

std::string finding(const FindingLine& line) {
  std::string cost = line.severity;
  if (line.points_milli > 0) {
    cost += " · " + points_words(line.earned_milli) + " of " + points_words(line.points_milli) + " points";
  }
  std::string inner = element(
      "p", "",
      "<span class=\"head\">" + escaped(line.what) + "</span> <span class=\"cost\">— " + escaped(cost) + "</span>");
  if (!line.why.empty()) inner += element("p", "why", escaped(line.why));
  std::string evidence;
  for (const EvidenceLine& e : line.evidence) {
    evidence += "<li><b>" + clock_words(e.tick) + "</b>" + escaped(e.words) + "</li>";
  }
  if (!evidence.empty()) inner += element("ul", "", evidence);
  return element("div", "finding " + line.severity, inner);
}

std::string figure(std::string_view caption, std::string_view css, const std::string& drawing) {
  return "<figure" + (css.empty() ? std::string() : " class=\"" + std::string(css) + "\"") + ">" +
         element("figcaption", "", escaped(caption)) + drawing + "</figure>\n";
}

std::string bolt_table(const MarkSheet& sheet) {
  std::string rows =
      "<tr><th>Bolt</th><th class=\"number\">Last torque</th><th class=\"number\">Preload</th><th "
      "class=\"number\">Clamp on the "
      "seat</th><th>Locking</th><th>Remarks</th></tr>";
  for (const BoltLine& bolt : sheet.bolts) {
    std::string remarks;
    for (const std::string& remark : bolt.remarks) remarks += (remarks.empty() ? "" : ", ") + remark;
    const std::string number = base::text_from_int(static_cast<std::int64_t>(bolt.bolt + 1));
    if (!bolt.present) {
      rows += "<tr><td>" + number + "</td><td colspan=\"4\" class=\"off\">no bolt</td><td>" + escaped(remarks) +
              "</td></tr>";
      continue;
    }
    rows += "<tr><td>" + number + "</td><td class=\"number\">" + base::text_fixed(bolt.last_torque_nm, 2) + " N·m" +
            "</td><td class=\"number\">" + base::text_fixed(bolt.preload_n / 1000.0, 2) +
            " kN</td><td class=\"number\">" + base::text_fixed(bolt.clamp_n / 1000.0, 2) + " kN</td><td>" +
            escaped(bolt.locker) + "</td><td class=\"" + (remarks.empty() ? "" : "off") + "\">" + escaped(remarks) +
            "</td></tr>";
  }
  return element("table", "", rows);
}

std::string hard_stop(const JointLine& joint) {
  std::string says = "On a hard stop the pads ask " + quantity_words(joint.demand_nm, Dimension::Torque) +
                     " of the joint; friction under the bolts carries " +
                     quantity_words(joint.capacity_nm, Dimension::Torque) + ". ";
  if (joint.demand_nm <= joint.capacity_nm) {
    says += "The rotor stays where it is.";
  } else if (!joint.slips) {
    says +=
        "Beyond that the bolts bear; they lie against the rotor already, so nothing moves and nothing knocks. This is "
        "usual.";
  } else {
    says += "The rotor turns " + base::text_fixed(base::degrees(joint.slip_angle_rad), 2) + "° through " +
            quantity_words(joint.clearance_m, Dimension::Length) + " of play and knocks against the bolts with " +
            quantity_words(joint.knock_j, Dimension::Energy) + ".";
  }
  says += " Largest shear on one bolt " + quantity_words(joint.bolt_shear_n, Dimension::Force) +
          "; stop from 25 km/h in " + quantity_words(joint.stop_m, Dimension::Length) +
          " once the pads are bedded in; the first stops are longer.";
  return element("p", "", escaped(says));
}

std::string film_table(const MarkSheet& sheet) {
  std::string rows =
      "<tr><th>Braking face</th><th class=\"number\">Heaviest film</th><th class=\"number\">Covered</th><th "
      "class=\"number\">Friction "
      "left</th></tr>";
  for (const FaceLine& face : sheet.faces) {
    rows += "<tr><td>" + escaped(face.face) + "</td><td class=\"number\">" +
            quantity_words(face.film_worst_kg_m2, Dimension::FilmLoad) + "</td><td class=\"number\">" +
            base::text_fixed(100.0 * face.coverage_1, 1) + " %</td><td class=\"number\">" +
            base::text_fixed(100.0 * face.friction_factor_1, 1) + " %</td></tr>";
  }
  return element("table", "", rows);
}

std::string curves(const MarkSheet& sheet) {
  double angle_max_rad = 0.0;
  double torque_max_nm = 0.0;
  for (const TorqueCurve& curve : sheet.pictures->curves) {
    for (const double a : curve.angle_rad) angle_max_rad = a > angle_max_rad ? a : angle_max_rad;
    for (const double t : curve.torque_nm) torque_max_nm = t > torque_max_nm ? t : torque_max_nm;
  }
  const double nm = sheet.sheet_torque_nm.value_or(0.0);
  const double tolerance_nm = sheet.sheet_torque_tolerance_nm.value_or(0.0);
  if (torque_max_nm < 1.1 * (nm + tolerance_nm)) torque_max_nm = 1.1 * (nm + tolerance_nm);
  std::string out;
  for (const TorqueCurve& curve : sheet.pictures->curves) {
    out += "<figure>" + draw_torque(curve, nm - tolerance_nm, nm + tolerance_nm, angle_max_rad, torque_max_nm) +
           "</figure>\n";
  }
  return "<h3>Torque over angle, with the sheet's band; a ring marks a click</h3>\n" + element("div", "curves", out);
}

std::string computed(const MarkSheet& sheet) {
  if (sheet.bolts.empty() && !sheet.joint) return {};
  std::string out = element("h2", "", "What the bench computed");
  JointFigures figures;
  figures.preload_lo_n = sheet.preload_lo_n;
  figures.preload_hi_n = sheet.preload_hi_n;
  for (const BoltLine& bolt : sheet.bolts) {
    figures.preload_n.push_back(bolt.present ? std::optional<double>(bolt.preload_n) : std::nullopt);
  }
  std::string square =
      figure(sheet.preload_hi_n > 0.0 ? "Preload by bolt, kN; the wash is what the sheet's torque gives"
                                      : "Preload by bolt, kN",
             "square", draw_preload(figures));
  square +=
      figure("Order of tightening; later rounds further in", "square", draw_order(sheet.bolts.size(), sheet.rounds));
  if (sheet.pictures) {
    static constexpr std::string_view kFaces[] = {"printed side", "other side"};
    for (std::size_t i = 0; i < sheet.pictures->films.size() && i < 2; ++i) {
      square += figure(std::string("Films left, ") + std::string(kFaces[i]), "square",
                       draw_film(kFaces[i], sheet.pictures->films[i]));
    }
  }
  out += element("div", "pictures", square);
  out += bolt_table(sheet);
  if (sheet.pictures && !sheet.pictures->curves.empty()) out += curves(sheet);
  std::string wide;
  if (sheet.joint) {
    wide += figure("Clamp friction against a hard stop", "",
                   draw_hard_stop(sheet.joint->capacity_nm, sheet.joint->demand_nm)) +
            hard_stop(*sheet.joint);
  }
  if (sheet.pictures && !sheet.pictures->runout_m.empty()) {
    wide += figure("Lateral runout round the track, from the mean", "", draw_runout(sheet.pictures->runout_m, 0.0));
  }
  if (!sheet.faces.empty()) wide += film_table(sheet);
  return out + element("div", "wide", wide);
}

std::string card(const MarkSheet& sheet) {
  if (sheet.card.empty()) return {};
  std::string rows = "<tr><th>Job card</th><th>Written</th><th>True</th></tr>";
  for (const CardLine& line : sheet.card) {
    const bool off = !line.agrees || (line.needed && line.written.empty());
    rows += "<tr><td>" + escaped(line.entry) + "</td><td class=\"" + (off ? "off" : "") + "\">" +
            (line.written.empty() ? "nothing" : escaped(line.written)) + "</td><td>" + escaped(line.truth) +
            "</td></tr>";
  }
  return element("h2", "", "The job card against the bench") + element("table", "", rows);
}

std::string rest(const MarkSheet& sheet) {
  std::string out;
  if (!sheet.met.empty()) {
    std::string items;
    for (const FindingLine& line : sheet.met) items += "<li>" + escaped(line.what) + "</li>";
    out += element("h2", "", "Right") + element("ul", "plain", items);
  }
  if (!sheet.aside.empty()) {
    std::string items;
    for (const FindingLine& line : sheet.aside) items += "<li>" + escaped(line.aside) + "</li>";
    out += element("h2", "", "Not counted") + element("ul", "plain aside", items);
  }
  std::string items;
  for (const std::string& note : sheet.notes) items += "<li>" + escaped(note) + "</li>";
  for (const std::string& drawn : sheet.drawn) items += "<li>In this variant: " + escaped(drawn) + "</li>";
  if (!items.empty()) out += element("h2", "", "About this attempt") + element("ul", "small", items);
  if (!sheet.cautions.empty()) {
    std::string cautions = element("h2", "", "Cautions");
    for (const std::string& caution : sheet.cautions) cautions += element("p", "small", escaped(caution));
    out += element("div", "cautions", cautions);
  }
  return out;
}

}  // namespace

std::string mark_sheet_html(const MarkSheet& sheet) {
  std::string body = header(sheet) + bars(sheet);
  if (!sheet.lost.empty()) {
    body += element("h2", "", "What to work on");
    for (const FindingLine& line : sheet.lost) body += finding(line);
  }
  body += computed(sheet) + card(sheet) + rest(sheet);
  return "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" "
         "content=\"width=device-width, initial-scale=1\"><title>" +
         escaped(sheet.verdict_words) + " · " + escaped(sheet.title) + "</title><style>" + std::string(page_style()) +
         "</style></head>\n<body>\n" + body + "</body></html>\n";
}

}  // namespace proofstand::report
