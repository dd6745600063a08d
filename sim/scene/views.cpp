#include <string>

#include "sim/scene/layout.h"
#include "sim/scene/place_point.h"
#include "sim/scene/scene.h"
#include "sim/scene/wheel_pose.h"

namespace proofstand::scene {
namespace {

struct NamedView {
  std::string_view name;
  glm::vec3 target;  ///< from the wheel's middle when `at_wheel`, else world
  bool at_wheel;
  float distance_m, round_rad, above_rad;
};

// distances give the working set rather more than half of the picture's height
constexpr NamedView kViews[] = {
    {"workplace", {0.0F, -0.08F, -0.05F}, false, 1.55F, 0.35F, 0.30F},
    {"wheel", {0.0F, 0.0F, 0.0F}, true, 1.30F, 0.45F, 0.12F},
    {"rotor", {0.0F, 0.0F, -0.040F}, true, 0.46F, 0.42F, 0.22F},
    {"flange", {0.0F, 0.0F, -0.040F}, true, 0.20F, 0.40F, 0.24F},
    {"bolt 4", {0.0F, 0.0F, -0.043F}, true, 0.12F, 0.30F, 0.35F},
    {"tray", {kTrayMiddle.x, kTrayMiddle.y, kTrayMiddle.z}, false, 0.55F, 0.0F, 0.95F},
    {"caliper", {kBikeAxle.x - 0.05F, kBikeAxle.y + 0.07F, kBikeAxle.z - 0.04F}, false, 0.42F, 0.75F, 0.25F},
    {"card", {0.42F, kBenchTop_y, 0.165F}, false, 0.55F, 0.0F, 1.0F},
    {"bench", {0.05F, kBenchTop_y, -0.28F}, false, 0.80F, 0.0F, 0.85F},
};
constexpr std::string_view kScales[] = {"micrometer", "vernier", "dial", "torque scale"};

event::ThingId instrument_of(const bench::BenchSetup& setup, std::string_view name) {
  if (name == "micrometer") return bench::first_of(setup, bench::ThingKind::Micrometer);
  if (name == "vernier") return bench::first_of(setup, bench::ThingKind::Vernier);
  if (name == "dial") return bench::first_of(setup, bench::ThingKind::DialGauge);
  return bench::first_of(setup, bench::ThingKind::ClickDriver);
}

// square to a scale, as near as it can be read
std::optional<View> scale_view(const bench::Bench& bench, const Scene& scene, std::string_view name) {
  const event::ThingId thing = instrument_of(bench.setup(), name);
  if (thing == event::kNoThing) return std::nullopt;
  const event::Grip grip = name == "torque scale" ? event::Grip::Setting
                           : name == "micrometer" ? event::Grip::Thimble
                                                  : event::Grip::None;
  const ScenePlace* found = nullptr;
  for (const ScenePlace& place : scene.places) {
    if (place.thing != thing) continue;
    if (found == nullptr || (grip != event::Grip::None && place.grip == grip)) found = &place;
  }
  if (found == nullptr) return std::nullopt;
  View view;
  view.target = found->middle;
  view.distance_m = 0.16F;
  view.above_rad = found->normal.y > 0.6F ? 1.2F : 0.25F;
  return view;
}

}  // namespace

std::vector<std::string_view> view_names() {
  std::vector<std::string_view> names;
  for (const NamedView& view : kViews) names.push_back(view.name);
  names.insert(names.end(), std::begin(kScales), std::end(kScales));
  return names;
}

std::optional<View> view_named(const bench::Bench& bench, const Scene& scene, std::string_view name) {
  for (const std::string_view scale : kScales) {
    if (scale == name) return scale_view(bench, scene, name);
  }
  for (const NamedView& named : kViews) {
    if (named.name != name) continue;
    View view;
    view.target = named.target;
    if (named.at_wheel) view.target += glm::vec3(wheel_stands(bench)[3]);
    if (name == "bolt 4") {
      const std::size_t position = bench.setup().bolt_count() > 3 ? 3 : 0;
      view.target = glm::vec3((wheel_pose(bench) * hole_frame(bench.setup(), position))[3]);
    }
    view.distance_m = named.distance_m;
    view.round_rad = named.round_rad;
    view.above_rad = named.above_rad;
    return view;
  }
  return std::nullopt;
}

}  // namespace proofstand::scene
