#include "sim/event/places.h"

namespace proofstand::event {
namespace {

constexpr std::string_view kPolar = "radius, angle counter-clockwise seen at the face, height off the face";
constexpr std::string_view kAxis = "offset along, offset across, height above the mouth, about the bolt's axis";
constexpr std::string_view kFree = "no finer point than the place itself";

}  // namespace

const std::vector<PlaceWords>& place_table() {
  static const std::vector<PlaceWords> table = {
      {PlaceKind::None, "nowhere", false, false, kFree},
      {PlaceKind::Body, "body", false, false, kFree},
      {PlaceKind::BoltHead, "head", true, false, kAxis},
      {PlaceKind::BoltRecess, "recess", true, false, kAxis},
      {PlaceKind::BoltThread, "thread", false, false, kFree},
      {PlaceKind::Hole, "hole", true, false, kAxis},
      {PlaceKind::Boss, "boss", true, false, kFree},
      {PlaceKind::HubSeat, "hub seat", false, false, "angle, offset, height above the seat"},
      {PlaceKind::TrackOuter, "outer track", false, false, kPolar},
      {PlaceKind::TrackInner, "inner track", false, false, kPolar},
      {PlaceKind::Edge, "edge", false, false, kPolar},
      {PlaceKind::Arms, "arms", false, false, kPolar},
      {PlaceKind::InnerEdge, "inner edge", false, false, kPolar},
      {PlaceKind::CarrierOuter, "outer carrier", false, false, kPolar},
      {PlaceKind::CarrierInner, "inner carrier", false, false, kPolar},
      {PlaceKind::Tyre, "tyre", false, false, "angle round the wheel, offset, height"},
      {PlaceKind::Rim, "rim", false, false, "angle round the wheel, offset, height"},
      {PlaceKind::Axle, "axle", false, false, kFree},
      {PlaceKind::StandSlot, "wheel stand", false, false, kFree},
      {PlaceKind::ForkEnds, "fork ends", false, false, kFree},
      {PlaceKind::BenchTop, "bench top", false, false, kFree},
      {PlaceKind::Tray, "tray", false, false, kFree},
      {PlaceKind::Mouth, "mouth", false, false, kFree},
      {PlaceKind::GloveBox, "glove box", false, false, kFree},
      {PlaceKind::Lever, "lever", false, true, kFree},
      {PlaceKind::Caliper, "caliper", false, true, kFree},
      {PlaceKind::Pads, "pads", false, true, kFree},
      {PlaceKind::Ring, "ring", false, true, kAxis},
      {PlaceKind::Spline, "spline", false, true, kFree},
  };
  return table;
}

std::optional<PlaceKind> place_from_words(std::string_view words) {
  for (const PlaceWords& row : place_table()) {
    if (row.words == words) return row.kind;
  }
  return std::nullopt;
}

std::string_view words_of(PlaceKind kind) { return place_table()[static_cast<std::size_t>(kind)].words; }

bool of_rotor(PlaceKind kind) {
  switch (kind) {
    case PlaceKind::TrackOuter:
    case PlaceKind::TrackInner:
    case PlaceKind::Edge:
    case PlaceKind::Arms:
    case PlaceKind::InnerEdge:
    case PlaceKind::CarrierOuter:
    case PlaceKind::CarrierInner:
      return true;
    default:
      return false;
  }
}

}  // namespace proofstand::event
