#include "sim/picture/sightings.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace proofstand::picture {
namespace {

void meet(Hit& hit, const Glimpse& glimpse, const glm::vec3& eye) {
  hit.place = glimpse.place;
  hit.point = glimpse.point;
  hit.normal = glimpse.normal;
  hit.depth_m = glm::length(glimpse.point - eye);
}

Hit& entry_of(std::vector<Hit>& hits, std::int32_t place) {
  const auto found =
      std::lower_bound(hits.begin(), hits.end(), place, [](const Hit& hit, std::int32_t p) { return hit.place < p; });
  if (found != hits.end() && found->place == place) return *found;
  Hit fresh;
  fresh.place = place;
  fresh.away_px = -1.0F;  // not met yet
  return *hits.insert(found, fresh);
}

// middle of a glimpse's texel, counted from the window's upper left corner
glm::vec2 middle_of(std::size_t i, Size window) {
  const auto width = static_cast<std::size_t>(window.width);
  const std::size_t row = i / width;
  const auto x = static_cast<float>(i % width);
  const auto y = static_cast<float>(row);
  return {x + 0.5F, static_cast<float>(window.height) - y - 0.5F};
}

}  // namespace

std::vector<Hit> nearest_of(const std::vector<Glimpse>& glimpses, Size window, glm::vec2 middle_px, float reach_px,
                            const glm::vec3& eye) {
  const glm::vec2 half(0.5F * static_cast<float>(window.width), 0.5F * static_cast<float>(window.height));
  std::vector<Hit> hits;
  for (std::size_t i = 0; i < glimpses.size(); ++i) {
    if (glimpses[i].place < 0) continue;
    const glm::vec2 off = middle_of(i, window) - half;
    const float away = glm::length(off);
    if (away > reach_px + 0.01F) continue;
    Hit& hit = entry_of(hits, glimpses[i].place);
    ++hit.texels_seen;
    const float depth = glm::length(glimpses[i].point - eye);
    if (hit.away_px >= 0.0F && std::tie(hit.away_px, hit.depth_m) <= std::tie(away, depth)) continue;
    meet(hit, glimpses[i], eye);
    hit.away_px = away;
    hit.texel = middle_px + off;
  }
  std::stable_sort(hits.begin(), hits.end(), [](const Hit& a, const Hit& b) {
    return std::tie(a.away_px, a.depth_m, a.place) < std::tie(b.away_px, b.depth_m, b.place);
  });
  return hits;
}

std::vector<Hit> middles_of(const std::vector<Glimpse>& glimpses, Size window, float side_px, const glm::vec3& eye) {
  std::vector<Hit> hits;
  for (std::size_t i = 0; i < glimpses.size(); ++i) {
    if (glimpses[i].place < 0) continue;
    Hit& hit = entry_of(hits, glimpses[i].place);
    ++hit.texels_seen;
    hit.normal += glm::vec3(middle_of(i, window), 0.0F);  // summed up here until the middle is known
  }
  std::vector<glm::vec2> middles;
  middles.reserve(hits.size());
  for (Hit& hit : hits) middles.push_back(glm::vec2(hit.normal) / static_cast<float>(hit.texels_seen));
  for (std::size_t i = 0; i < glimpses.size(); ++i) {
    if (glimpses[i].place < 0) continue;
    Hit& hit = entry_of(hits, glimpses[i].place);
    const glm::vec2 texel = middle_of(i, window);
    const float away = glm::length(texel - middles[static_cast<std::size_t>(&hit - hits.data())]);
    if (hit.away_px >= 0.0F && hit.away_px <= away) continue;
    meet(hit, glimpses[i], eye);
    hit.away_px = away;
    hit.texel = texel * side_px;
  }
  for (Hit& hit : hits) {
    hit.away_px = 0.0F;
    hit.texels_seen = static_cast<std::int32_t>(std::lround(static_cast<float>(hit.texels_seen) * side_px * side_px));
  }
  return hits;
}

}  // namespace proofstand::picture
