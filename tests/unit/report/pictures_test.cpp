// Danger: a drawing that drops a bolt, hides a thumb print in a mean or lets text break out of the page would mislead
// the person whose work is judged.
#include "sim/report/pictures.h"

#include <string>

#include "sim/report/mark_sheet_html.h"
#include "sim/report/svg.h"
#include "tests/support/catch.h"

using namespace proofstand::report;

namespace {

std::size_t times(const std::string& text, const std::string& what) {
  std::size_t n = 0;
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++n;
  return n;
}

}  // namespace

TEST_CASE("preload picture marks what lies outside the sheet's range by shape, and an empty hole by a dash") {
  JointFigures figures;
  figures.preload_lo_n = 4000.0;
  figures.preload_hi_n = 6000.0;
  figures.preload_n = {5000.0, 5000.0, 7000.0, std::nullopt, 5000.0};
  const std::string svg = draw_preload(figures);
  CHECK(times(svg, "<rect") == 2);  // the one too tight and the missing one
  CHECK(svg.find(">7.0<") != std::string::npos);
  CHECK(svg.find(">–<") != std::string::npos);
}

TEST_CASE("order picture numbers every pull of every round") {
  const std::string svg = draw_order(6, {{0, 3, 1, 4, 2, 5}, {0, 3, 1, 4, 2, 5}});
  CHECK(times(svg, "<polyline") == 2);
  CHECK(times(svg, ">6<") == 2);
  CHECK(times(svg, ">bolt ") == 6);
}

TEST_CASE("film picture shows one dirty cell at its full load") {
  FaceFilm film{96, 16, std::vector<double>(96 * 16, 0.0)};
  const std::string clean = draw_film("printed side", film);
  film.load_kg_m2[40 * 16 + 7] = 25e-5;  // 25 µg/cm²
  const std::string dirty = draw_film("printed side", film);
  CHECK(clean.find("worst 0.0 ") != std::string::npos);
  CHECK(dirty.find("worst 25.0 ") != std::string::npos);
  CHECK(times(dirty, "<path") == times(clean, "<path") + 1);
}

TEST_CASE("runout picture states the whole reading") {
  std::vector<double> runout(60, 0.0);
  runout[10] = 0.00012;
  runout[40] = -0.00008;
  CHECK(draw_runout(runout, 0.0002).find("in all 0.20 mm") != std::string::npos);
}

TEST_CASE("a torque curve names its bolt and its peak") {
  TorqueCurve curve;
  curve.bolt = 3;
  curve.angle_rad = {0.0, 0.1, 0.2};
  curve.torque_nm = {0.0, 2.0, 5.3};
  curve.clicks = {2};
  const std::string svg = draw_torque(curve, 4.6, 5.4, 0.2, 6.0);
  CHECK(svg.find("bolt 4") != std::string::npos);
  CHECK(svg.find("peak 5.3 N·m") != std::string::npos);
}

TEST_CASE("text from a scenario cannot break out of the page") {
  MarkSheet sheet;
  sheet.title = "<script>alert(1)</script>";
  sheet.verdict_words = "Not yet";
  FindingLine line;
  line.severity = "critical";
  line.what = "a \"quoted\" & <b>bold</b> finding";
  sheet.lost.push_back(line);
  const std::string page = mark_sheet_html(sheet);
  CHECK(page.find("<script") == std::string::npos);
  CHECK(page.find("&lt;script&gt;") != std::string::npos);
  CHECK(page.find("<b>bold") == std::string::npos);
}

TEST_CASE("the page is self-contained") {
  MarkSheet sheet;
  sheet.verdict_words = "Passed";
  const std::string page = mark_sheet_html(sheet);
  CHECK(page.find("src=") == std::string::npos);
  CHECK(page.find("href=") == std::string::npos);
  CHECK(page.find("url(") == std::string::npos);
  CHECK(page.find("@import") == std::string::npos);
}

TEST_CASE("numbers in drawings are short") {
  CHECK(svg_number(1.0) == "1");
  CHECK(svg_number(0.126) == "0.13");
  CHECK(svg_number(-0.001) == "0");
}
