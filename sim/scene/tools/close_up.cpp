#include "sim/scene/tools/close_up.h"

#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/tools/click_driver.h"
#include "sim/scene/tools/micrometer.h"
#include "sim/scene/tools/scales.h"
#include "sim/scene/tools/vernier.h"

namespace proofstand::scene {
namespace {

using bench::ThingKind;

// from so far that lines on barrels of different thickness hardly shift against each other
constexpr double kEye_m = 0.60;
constexpr double kWholeDial_m = 0.066;

// the thing's frame seen from where its scale is read: right, up and towards the reader; and the point that is read
struct Reading {
  glm::vec3 right{1.0F, 0.0F, 0.0F};
  glm::vec3 up{0.0F, 1.0F, 0.0F};
  glm::vec3 point{0.0F};
};

std::optional<Reading> reading_of(const bench::Bench& bench, const bench::Thing& thing, double along_m) {
  const auto f = [](double v) { return static_cast<float>(v); };
  switch (thing.kind) {
    case ThingKind::Micrometer: {
      const double edge_m = kSleeveZero_m + thimble_edge_m(bench.state().instruments[thing.part].shown_m);
      return Reading{{0.0F, 0.0F, 1.0F}, {0.0F, -1.0F, 0.0F}, {f(kSleeveRadius_m), 0.0F, f(edge_m + along_m)}};
    }
    case ThingKind::Vernier: {
      const double zero_m = kBeamZero_m + bench.state().instruments[thing.part].shown_m;
      return Reading{
          {1.0F, 0.0F, 0.0F}, {0.0F, 1.0F, 0.0F}, {f(zero_m + along_m), f(kScaleMeets_m), f(0.5 * kBeamThick_m)}};
    }
    case ThingKind::DialGauge:
      return Reading{{1.0F, 0.0F, 0.0F}, {0.0F, 1.0F, 0.0F}, {0.0F, 0.0F, f(kDialHub_m)}};
    case ThingKind::ClickDriver: {
      const bench::ToolPart& part = bench.setup().tools[thing.part];
      const double edge_m = kLowestLine_m - setting_edge_m(part, bench.state().tools[thing.part].setting_nm);
      return Reading{{0.0F, 0.0F, 1.0F}, {1.0F, 0.0F, 0.0F}, {0.0F, f(kBarrelRadius_m), f(edge_m + along_m)}};
    }
    default:
      return std::nullopt;
  }
}

}  // namespace

event::ThingId thing_with_scale(const bench::BenchSetup& setup, std::string_view name) {
  if (name == "micrometer") return bench::first_of(setup, ThingKind::Micrometer);
  if (name == "vernier") return bench::first_of(setup, ThingKind::Vernier);
  if (name == "dial") return bench::first_of(setup, ThingKind::DialGauge);
  if (name == "torque scale") return bench::first_of(setup, ThingKind::ClickDriver);
  return event::kNoThing;
}

std::optional<CloseUp> compute_close_up(const LooseThings& things, const bench::Bench& bench, event::ThingId thing,
                                        const CloseUpOf& of) {
  if (thing == event::kNoThing) return std::nullopt;
  const bench::Thing& what = bench.setup().things[event::index_of(thing)];
  const std::optional<Reading> reading = reading_of(bench, what, of.along_m);
  if (!reading) return std::nullopt;
  // the eye looks along +z with x to its left: right becomes -x, towards the reader becomes -z
  const glm::vec3 out = glm::cross(reading->right, reading->up);
  const glm::mat3 seen(-reading->right, reading->up, -out);
  glm::mat4 pose(glm::transpose(seen));
  pose = glm::translate(pose, -reading->point);
  CloseUp close;
  PartItems items = things.items_at(bench, thing, pose);
  add_items(close.scene, items);
  close.tall_m = what.kind == ThingKind::DialGauge ? kWholeDial_m : of.tall_m;
  close.view.target = glm::vec3(0.0F);
  close.view.distance_m = static_cast<float>(kEye_m);
  close.view.above_rad = 0.0F;
  close.view.field_rad = static_cast<float>(2.0 * std::atan(0.5 * close.tall_m / kEye_m));
  return close;
}

}  // namespace proofstand::scene
