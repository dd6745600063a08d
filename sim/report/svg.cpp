#include "sim/report/svg.h"

#include "sim/base/math.h"
#include "sim/base/number_text.h"

namespace proofstand::report {

std::string svg_number(double value) {
  std::string text = base::text_fixed(value, 2);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

std::string escaped(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (const char c : text) {
    switch (c) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      case '\'':
        out += "&#39;";
        break;
      default:
        out += c;
    }
  }
  return out;
}

Point on_circle(Point centre, double radius, double angle_rad) {
  return {centre.x + radius * base::cos_rad(angle_rad), centre.y - radius * base::sin_rad(angle_rad)};
}

namespace {

std::string pair_text(Point p) { return svg_number(p.x) + "," + svg_number(p.y); }

std::string points_text(const std::vector<Point>& points) {
  std::string text;
  for (const Point& p : points) text += (text.empty() ? "" : " ") + pair_text(p);
  return text;
}

std::string attribute(std::string_view name, double value) {
  return " " + std::string(name) + "=\"" + svg_number(value) + "\"";
}

}  // namespace

Svg::Svg(double width, double height, std::string_view title) {
  head_ = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 " + svg_number(width) + " " +
          svg_number(height) + "\" aria-label=\"" + escaped(title) + "\"><title>" + escaped(title) + "</title>";
}

void Svg::open(std::string_view element, const Pen& pen) {
  body_ += "<" + std::string(element) + " fill=\"" + std::string(pen.fill) + "\"";
  if (pen.stroke != "none") {
    body_ += " stroke=\"" + std::string(pen.stroke) + "\"" + attribute("stroke-width", pen.width);
    if (!pen.dash.empty()) body_ += " stroke-dasharray=\"" + std::string(pen.dash) + "\"";
  }
}

void Svg::line(Point from, Point to, const Pen& pen) {
  open("line", pen);
  body_ += attribute("x1", from.x) + attribute("y1", from.y) + attribute("x2", to.x) + attribute("y2", to.y) + "/>";
}

void Svg::polyline(const std::vector<Point>& points, const Pen& pen) {
  open("polyline", pen);
  body_ += " stroke-linejoin=\"round\" points=\"" + points_text(points) + "\"/>";
}

void Svg::polygon(const std::vector<Point>& points, const Pen& pen) {
  open("polygon", pen);
  body_ += " stroke-linejoin=\"round\" points=\"" + points_text(points) + "\"/>";
}

void Svg::circle(Point centre, double radius, const Pen& pen) {
  open("circle", pen);
  body_ += attribute("cx", centre.x) + attribute("cy", centre.y) + attribute("r", radius) + "/>";
}

void Svg::rect(Point corner, double width, double height, const Pen& pen) {
  open("rect", pen);
  body_ += attribute("x", corner.x) + attribute("y", corner.y) + attribute("width", width) +
           attribute("height", height) + "/>";
}

void Svg::ring_part(Point centre, double r_in, double r_out, double from_rad, double to_rad, std::string_view fill) {
  const std::string out = svg_number(r_out);
  const std::string in = svg_number(r_in);
  const std::string big = to_rad - from_rad > base::kPi ? "1" : "0";
  body_ += "<path fill=\"" + std::string(fill) + "\" d=\"M" + pair_text(on_circle(centre, r_out, from_rad)) + "A" +
           out + " " + out + " 0 " + big + " 0 " + pair_text(on_circle(centre, r_out, to_rad)) + "L" +
           pair_text(on_circle(centre, r_in, to_rad)) + "A" + in + " " + in + " 0 " + big + " 1 " +
           pair_text(on_circle(centre, r_in, from_rad)) + "Z\"/>";
}

void Svg::text(Point at, std::string_view words, double size, std::string_view colour, Anchor anchor, int weight) {
  static constexpr std::string_view kAnchors[] = {"start", "middle", "end"};
  body_ += "<text fill=\"" + std::string(colour) + "\"" + attribute("x", at.x) + attribute("y", at.y) +
           attribute("font-size", size) + " text-anchor=\"" + std::string(kAnchors[static_cast<int>(anchor)]) + "\"";
  if (weight != 400) body_ += " font-weight=\"" + base::text_from_int(weight) + "\"";
  body_ += ">" + escaped(words) + "</text>";
}

std::string Svg::finish() const { return head_ + body_ + "</svg>"; }

}  // namespace proofstand::report
