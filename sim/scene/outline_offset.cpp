#include "sim/scene/outline_offset.h"

#include <cmath>
#include <polyclipping/clipper.hpp>

namespace proofstand::scene {
namespace {

// grid of the polygon library: 10,000 units a millimetre
constexpr double kUnits_1_m = 1e7;
// a vertex of a fine arc keeps its single point; only a truly sharp corner is cut off
constexpr double kMitre_1 = 4.0;
constexpr double kArc_m = 0.00001;

ClipperLib::Paths to_paths(const Outline& outline) {
  ClipperLib::Paths paths;
  for (const Loop& loop : outline) {
    ClipperLib::Path path;
    for (const glm::dvec2& p : loop) {
      path.emplace_back(static_cast<ClipperLib::cInt>(std::llround(p.x * kUnits_1_m)),
                        static_cast<ClipperLib::cInt>(std::llround(p.y * kUnits_1_m)));
    }
    paths.push_back(std::move(path));
  }
  return paths;
}

Outline from_paths(const ClipperLib::Paths& paths) {
  Outline outline;
  for (const ClipperLib::Path& path : paths) {
    Loop loop;
    for (const ClipperLib::IntPoint& p : path) {
      loop.emplace_back(static_cast<double>(p.X) / kUnits_1_m, static_cast<double>(p.Y) / kUnits_1_m);
    }
    if (loop.size() >= 3) outline.push_back(std::move(loop));
  }
  return outline;
}

Outline moved_out(const Outline& outline, double by_m, ClipperLib::JoinType join) {
  ClipperLib::ClipperOffset offsetter(kMitre_1, kArc_m * kUnits_1_m);
  offsetter.AddPaths(to_paths(outline), join, ClipperLib::etClosedPolygon);
  ClipperLib::Paths paths;
  offsetter.Execute(paths, by_m * kUnits_1_m);
  return from_paths(paths);
}

Outline combined(const Outline& a, const Outline& b, ClipperLib::ClipType how) {
  ClipperLib::Clipper clipper;
  clipper.StrictlySimple(true);
  clipper.AddPaths(to_paths(a), ClipperLib::ptSubject, true);
  clipper.AddPaths(to_paths(b), ClipperLib::ptClip, true);
  ClipperLib::Paths paths;
  clipper.Execute(how, paths, ClipperLib::pftPositive, ClipperLib::pftPositive);
  return from_paths(paths);
}

}  // namespace

Outline offset(const Outline& outline, double by_m) { return moved_out(outline, by_m, ClipperLib::jtMiter); }
Outline offset_round(const Outline& outline, double by_m) { return moved_out(outline, by_m, ClipperLib::jtRound); }
Outline joined(const Outline& a, const Outline& b) { return combined(a, b, ClipperLib::ctUnion); }
Outline cut(const Outline& from, const Outline& what) { return combined(from, what, ClipperLib::ctDifference); }

}  // namespace proofstand::scene
