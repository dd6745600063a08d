#include "sim/desk/route/aim.h"

#include <algorithm>
#include <tuple>

#include "sim/desk/route/place_list.h"

namespace proofstand::desk::route {
namespace {

using event::PlaceKind;

constexpr double kUnder_pt = 0.75;  // a texel that near is the one under the pointer

struct Candidate {
  const Hit* hit = nullptr;
  double away_pt = 0.0;
};

bool before(const Candidate& a, const Candidate& b) {
  return std::make_tuple(a.away_pt, a.hit->depth, a.hit->place) <
         std::make_tuple(b.away_pt, b.hit->depth, b.hit->place);
}

}  // namespace

bool discrete(const scene::ScenePlace& place) {
  if (place.grip != event::Grip::None && place.place == PlaceKind::Body) return true;
  switch (place.place) {
    case PlaceKind::BoltHead:
    case PlaceKind::BoltRecess:
    case PlaceKind::BoltThread:
    case PlaceKind::Hole:
    case PlaceKind::Boss:
    case PlaceKind::Axle:
    case PlaceKind::Mouth:
    case PlaceKind::Lever:
      return true;
    default:
      return false;
  }
}

std::vector<AimChoice> aim(const std::vector<Hit>& hits, const scene::Scene& scene, const bench::Bench& bench,
                           event::HandId hand, const hand::Spot& pointer) {
  // of each place its nearest texel
  std::vector<Candidate> nearest;
  for (const Hit& hit : hits) {
    if (hit.place < 0 || static_cast<std::size_t>(hit.place) >= scene.places.size()) continue;
    if (!could_try(scene.places[static_cast<std::size_t>(hit.place)], bench, hand)) continue;
    const Candidate candidate{&hit, hand::distance_pt(hit.at, pointer)};
    const auto same =
        std::find_if(nearest.begin(), nearest.end(), [&](const Candidate& c) { return c.hit->place == hit.place; });
    if (same == nearest.end()) {
      nearest.push_back(candidate);
    } else if (before(candidate, *same)) {
      *same = candidate;
    }
  }
  const auto caught = [&](const Candidate& c) {
    return discrete(scene.places[static_cast<std::size_t>(c.hit->place)]) && c.away_pt <= kCatch_pt;
  };
  const auto under = [](const Candidate& c) { return c.away_pt <= kUnder_pt; };
  const auto rank = [&](const Candidate& c) { return caught(c) ? 0 : (under(c) ? 1 : 2); };
  std::sort(nearest.begin(), nearest.end(), [&](const Candidate& a, const Candidate& b) {
    if (rank(a) != rank(b)) return rank(a) < rank(b);
    return before(a, b);
  });
  std::vector<AimChoice> choices;
  for (const Candidate& c : nearest) {
    // a band that only lies near is a choice beside another one, never the first
    if (rank(c) == 2 && (choices.empty() || c.away_pt > kCatch_pt)) continue;
    choices.push_back({c.hit->place, c.hit->world});
  }
  return choices;
}

}  // namespace proofstand::desk::route
