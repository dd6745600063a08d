#include "sim/desk/route/place_words.h"

#include <array>
#include <cmath>

#include "sim/base/number_text.h"
#include "sim/desk/words.h"

namespace proofstand::desk::route {
namespace {

using event::Grip;
using event::PlaceKind;

std::string number(event::BoltId bolt) {
  return base::text_from_int(static_cast<std::int64_t>(event::index_of(bolt)) + 1);
}

const char* grip_words(Grip grip) {
  switch (grip) {
    case Grip::Shaft:
      return "shaft";
    case Grip::Handle:
      return "handle";
    case Grip::End:
      return "end";
    case Grip::Setting:
      return "setting handle";
    case Grip::Thimble:
      return "thimble";
    case Grip::Ratchet:
      return "ratchet end";
    case Grip::Flat:
      return "flat";
    case Grip::Pinched:
      return "over both faces";
    default:
      return "";
  }
}

// the part of a thing that a place is; nothing for the whole thing
const char* part_words(PlaceKind place) {
  switch (place) {
    case PlaceKind::TrackOuter:
      return "outer face, track";
    case PlaceKind::TrackInner:
      return "inner face, track";
    case PlaceKind::CarrierOuter:
      return "outer face, carrier";
    case PlaceKind::CarrierInner:
      return "inner face, carrier";
    case PlaceKind::Edge:
      return "rim edge";
    case PlaceKind::Arms:
      return "arms";
    case PlaceKind::InnerEdge:
      return "inner edge";
    case PlaceKind::Tyre:
      return "tyre";
    case PlaceKind::Rim:
      return "rim";
    case PlaceKind::Axle:
      return "axle end";
    case PlaceKind::BoltThread:
      return "thread";
    case PlaceKind::BoltHead:
      return "head";
    case PlaceKind::BoltRecess:
      return "recess";
    case PlaceKind::Mouth:
      return "mouth";
    case PlaceKind::HubSeat:
      return "hub seat";
    case PlaceKind::ForkEnds:
      return "fork ends";
    default:
      return "";
  }
}

}  // namespace

std::string words_of_place(const scene::ScenePlace& place, const bench::Bench& bench) {
  if (place.bolt != event::kNoBolt) {
    if (place.place == PlaceKind::Hole) return tr("hole {0}", {number(place.bolt)});
    if (place.place == PlaceKind::Boss) return tr("boss {0}", {number(place.bolt)});
    return tr("bolt {0}", {number(place.bolt)}) + ", " + tr(part_words(place.place));
  }
  std::string words = event::index_of(place.thing) < bench.setup().things.size()
                          ? tr(bench.setup().things[event::index_of(place.thing)].name.c_str())
                          : tr("something");
  const char* part =
      place.grip != Grip::None && place.place == PlaceKind::Body ? grip_words(place.grip) : part_words(place.place);
  if (*part != '\0') words += std::string(", ") + tr(part);
  return words;
}

std::string words_of_point(const scene::ScenePlace& place, const bench::Bench& bench, const hand::Lens& lens,
                           const glm::vec3& world) {
  std::string words = words_of_place(place, bench);
  if (!event::of_rotor(place.place)) return words;
  const glm::vec3 centre(place.frame[3]);
  const auto seen = [&](const glm::vec3& v) {
    return hand::project(lens, {static_cast<double>(v.x), static_cast<double>(v.y), static_cast<double>(v.z)});
  };
  const auto middle = seen(centre);
  const auto point = seen(world);
  if (!middle || !point) return words;
  return words + ", " + direction_words(point->x_pt - middle->x_pt, point->y_pt - middle->y_pt);
}

std::string direction_words(double x_pt, double y_pt) {
  static constexpr std::array<const char*, 8> words = {"right", "upper right", "top",    "upper left",
                                                       "left",  "lower left",  "bottom", "lower right"};
  const double eighth = std::atan2(-y_pt, x_pt) / (2.0 * 3.14159265358979323846) * 8.0;
  const int index = (static_cast<int>(std::floor(eighth + 0.5)) + 8) % 8;
  return tr(words[static_cast<std::size_t>(index)]);
}

}  // namespace proofstand::desk::route
