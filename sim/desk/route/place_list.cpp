#include "sim/desk/route/place_list.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "sim/bench/hold_sight.h"
#include "sim/bench/senses.h"
#include "sim/desk/route/place_words.h"
#include "sim/desk/words.h"

namespace proofstand::desk::route {
namespace {

constexpr double kBand_pt = 48.0;
constexpr int kAround = 8;

hand::Vec3 vec(const glm::vec3& v) {
  return {static_cast<double>(v.x), static_cast<double>(v.y), static_cast<double>(v.z)};
}

std::int64_t band_of(const ListedPlace& place) {
  return static_cast<std::int64_t>(std::floor(place.at.y_pt / kBand_pt));
}

// a ring is offered at eight points where it matters at which: on the hub, or with something that works at a spot
bool split(const scene::ScenePlace& place, const bench::Bench& bench, event::HandId hand) {
  if (!event::of_rotor(place.place)) return false;
  if (place.thing == bench::see_rotor_on_hub(bench)) return true;
  const event::ThingId held = bench::see_hold(bench, hand).holding;
  return held != event::kNoThing && bench.setup().things[event::index_of(held)].kind != bench::ThingKind::Bottle;
}

// the point of a ring that lies in a direction of the window from its middle
glm::vec3 around(const scene::ScenePlace& place, const hand::Lens& lens, int eighth) {
  const double angle = eighth * 2.0 * 3.14159265358979323846 / kAround;
  const hand::Vec3 z = hand::unit(vec(glm::vec3(place.frame[2])));
  hand::Vec3 out = lens.right * std::cos(angle) + lens.up * std::sin(angle);
  out = hand::unit(out - z * hand::dot(out, z));
  const hand::Vec3 centre = vec(glm::vec3(place.frame[3]));
  const hand::Vec3 to_middle = vec(place.middle) - centre;
  const double height_m = hand::dot(to_middle, z);
  const double radius_m = hand::length_m(to_middle - z * height_m);
  const hand::Vec3 at = centre + out * radius_m + z * height_m;
  return {static_cast<float>(at.x_m), static_cast<float>(at.y_m), static_cast<float>(at.z_m)};
}

bool in_window(const std::optional<hand::Spot>& spot, const Shape& shape) {
  return spot && spot->x_pt >= 0.0 && spot->x_pt <= shape.width_pt && spot->y_pt >= 0.0 &&
         spot->y_pt <= shape.height_pt;
}

bool faces_eye(const scene::ScenePlace& place, const glm::vec3& world, const hand::Lens& lens) {
  return hand::dot(vec(place.normal), lens.eye - vec(world)) > 0.0;
}

void add_point(const ListView& from, const hand::Lens& lens, std::int32_t index, const glm::vec3& world,
               std::vector<ListedPlace>& list) {
  const scene::ScenePlace& place = from.scene.places[static_cast<std::size_t>(index)];
  const auto spot = hand::project(lens, vec(world));
  const bool seen =
      from.seen != nullptr ? (*from.seen)[static_cast<std::size_t>(index)] : faces_eye(place, world, lens);
  ListedPlace listed;
  listed.place = index;
  listed.pointed = pointed_at(place, from.bench, world);
  listed.world = world;
  listed.at = spot.value_or(hand::Spot{});
  listed.words = words_of_point(place, from.bench, lens, world);
  listed.group = group_of(place, from.bench);
  listed.out_of_sight = !seen || !in_window(spot, from.shape);
  if (listed.out_of_sight) listed.words += std::string(", ") + tr("out of sight");
  list.push_back(std::move(listed));
}

}  // namespace

std::string_view words_of(PlaceGroup group) {
  switch (group) {
    case PlaceGroup::Hands:
      return "in the hands";
    case PlaceGroup::Bike:
      return "wheel and bike";
    case PlaceGroup::Tray:
      return "tray";
    case PlaceGroup::Bench:
      break;
  }
  return "bench";
}

std::vector<ListedPlace> list_places(const ListView& from) {
  const hand::Lens lens = lens_of(from.view, from.shape);
  std::vector<ListedPlace> list;
  for (std::size_t i = 0; i < from.scene.places.size(); ++i) {
    const scene::ScenePlace& place = from.scene.places[i];
    if (!could_try(place, from.bench, from.hand)) continue;
    const auto index = static_cast<std::int32_t>(i);
    if (!split(place, from.bench, from.hand)) {
      add_point(from, lens, index, place.middle, list);
      continue;
    }
    for (int eighth = 0; eighth < kAround; ++eighth) add_point(from, lens, index, around(place, lens, eighth), list);
  }
  const double way = from.mirrored ? -1.0 : 1.0;
  // the words and the place's own ids break what is left of a tie
  const auto key = [&](const ListedPlace& p) {
    return std::make_tuple(p.out_of_sight, p.group, p.out_of_sight ? 0 : band_of(p),
                           p.out_of_sight ? 0.0 : way * p.at.x_pt, event::index_of(p.pointed.thing), p.pointed.place,
                           event::index_of(p.pointed.bolt), p.pointed.grip, p.pointed.v_urad, p.place);
  };
  std::sort(list.begin(), list.end(), [&](const ListedPlace& a, const ListedPlace& b) { return key(a) < key(b); });
  // one place drawn in several pieces is one place
  list.erase(std::unique(list.begin(), list.end(),
                         [](const ListedPlace& a, const ListedPlace& b) {
                           return hand::same_place(a.pointed, b.pointed) && a.words == b.words;
                         }),
             list.end());
  return list;
}

std::int32_t walk(const std::vector<ListedPlace>& list, std::int32_t at, Walk way) {
  if (list.empty()) return -1;
  const auto last = static_cast<std::int32_t>(list.size()) - 1;
  if (at < 0) return way == Walk::Back || way == Walk::BandUp || way == Walk::GroupBack ? last : 0;
  const std::int32_t step = way == Walk::Back || way == Walk::BandUp || way == Walk::GroupBack ? -1 : 1;
  const ListedPlace& from = list[static_cast<std::size_t>(std::min(at, last))];
  if (way == Walk::Back || way == Walk::On) return std::clamp(at + step, 0, last);
  const auto group = [](const ListedPlace& p) { return std::make_tuple(p.out_of_sight, p.group); };
  const auto band = [&](const ListedPlace& p) { return std::make_tuple(p.out_of_sight, p.group, band_of(p)); };
  std::int32_t i = at + step;
  if (way == Walk::GroupBack || way == Walk::GroupOn) {
    while (i >= 0 && i <= last && group(list[static_cast<std::size_t>(i)]) == group(from)) i += step;
    if (i < 0 || i > last) return at;
    while (i > 0 && group(list[static_cast<std::size_t>(i - 1)]) == group(list[static_cast<std::size_t>(i)])) --i;
    return i;
  }
  while (i >= 0 && i <= last && band(list[static_cast<std::size_t>(i)]) == band(from)) i += step;
  if (i < 0 || i > last) return at;
  // of the next band the place that stands nearest above or below
  std::int32_t best = i;
  const auto next = band(list[static_cast<std::size_t>(i)]);
  for (; i >= 0 && i <= last && band(list[static_cast<std::size_t>(i)]) == next; i += step) {
    const double off = std::fabs(list[static_cast<std::size_t>(i)].at.x_pt - from.at.x_pt);
    if (off < std::fabs(list[static_cast<std::size_t>(best)].at.x_pt - from.at.x_pt)) best = i;
  }
  return best;
}

}  // namespace proofstand::desk::route
