// Where on a thing something can be done: one list of place kinds for hands, scripts, events and, later, pictures.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace proofstand::event {

/// A kind of place. Some come once per bolt position (numbered), some once per thing.
enum class PlaceKind : std::uint8_t {
  None,
  Body,          ///< anywhere on a thing that has no finer places
  BoltHead,      ///< numbered: the head's rim and top of the bolt in that hole
  BoltRecess,    ///< numbered: the drive recess
  BoltThread,    ///< of a loose bolt: the threaded shank
  Hole,          ///< numbered: the threaded hole in the hub
  Boss,          ///< numbered: the seat face round that hole
  HubSeat,       ///< the hub's seat and register as a whole: where a rotor goes on
  TrackOuter,    ///< rotor, face away from the hub when its printed side is out: printed side
  TrackInner,    ///< rotor, the other braking face
  Edge,          ///< rotor, outer rim edge
  Arms,          ///< rotor, arms
  InnerEdge,     ///< rotor, inner edge of the track
  CarrierOuter,  ///< rotor, carrier ring, printed side
  CarrierInner,  ///< rotor, carrier ring, other side: lies on the hub when the printed side is out
  Tyre,          ///< wheel
  Rim,           ///< wheel
  Axle,          ///< wheel, axle ends
  StandSlot,     ///< wheel stand: where the wheel's axle goes
  ForkEnds,      ///< bike: where the wheel's axle goes
  BenchTop,      ///< clear bench surface
  Tray,          ///< where loose things lie
  Mouth,         ///< opening of a bottle or tub
  GloveBox,
  // of this job's later stages
  Lever,
  Caliper,
  Pads,
  Ring,
  Spline,
};

/// A place's row: its words in scripts and lists, and whether a bolt number goes with it.
struct PlaceWords {
  PlaceKind kind = PlaceKind::None;
  std::string_view words;  ///< "recess", "outer track"; unique
  bool numbered = false;
  bool later = false;
  std::string_view frame;  ///< what the three numbers of a point mean here
};

/// Every place kind once, in order.
const std::vector<PlaceWords>& place_table();
/// By its words; nothing when unknown.
std::optional<PlaceKind> place_from_words(std::string_view words);
std::string_view words_of(PlaceKind kind);
/// Is it a place of a rotor? Their points are a radius and an angle.
bool of_rotor(PlaceKind kind);

}  // namespace proofstand::event
