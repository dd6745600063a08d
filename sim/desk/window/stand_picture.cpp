// What the painter draws, how finely, and what it can be asked.
#include <imgui.h>

#include <algorithm>
#include <chrono>

#include "sim/desk/panels/paper.h"
#include "sim/desk/window/stand.h"

namespace proofstand::desk {
namespace {

constexpr double kRest_s = 0.15;  // after so long a still is begun
constexpr double kPickReach_pt = 12.5;

}  // namespace

Eyesight Stand::eyesight() {
  Eyesight out;
  out.pick = [this](const scene::Scene& scene, const scene::View& view, const hand::Spot& spot) {
    const float scale = px_per_pt();
    const glm::ivec2 size = window_->size_px();
    const glm::vec2 px{static_cast<float>(spot.x_pt) * scale, static_cast<float>(spot.y_pt) * scale};
    std::vector<route::Hit> hits;
    for (const picture::Hit& hit :
         painter_->pick_around(scene, view, {size.x, size.y}, px, static_cast<float>(kPickReach_pt) * scale)) {
      hits.push_back({hit.place,
                      hit.depth_m,
                      {static_cast<double>(hit.texel.x / scale), static_cast<double>(hit.texel.y / scale)},
                      hit.point});
    }
    return hits;
  };
  out.look_over = [this](const scene::Scene& scene, const scene::View& view) {
    const glm::ivec2 size = window_->size_px();
    std::vector<bool> seen(scene.places.size(), false);
    for (const picture::Hit& hit : painter_->look_over(scene, view, {size.x, size.y})) {
      if (hit.place >= 0) seen[static_cast<std::size_t>(hit.place)] = true;
    }
    return seen;
  };
  return out;
}

void Stand::paint(double now_s) {
  const glm::ivec2 size = window_->size_px();
  const scene::Scene* scene = nullptr;
  const scene::View* view = nullptr;
  std::uint64_t version = 0;
  if (work_) {
    scene = peek_scene_ ? &*peek_scene_ : &work_->scene();
    view = &work_->view();
    version = work_->sight_version() + (peek_scene_ ? static_cast<std::uint64_t>(open_.time.at) * 131U + 7U : 0U);
  } else if (review_scene_ && review_camera_) {
    scene = &*review_scene_;
    view = &review_camera_->view();
    version = review_version_ + (review_camera_->moving() ? static_cast<std::uint64_t>(now_s * 1000.0) : 0U);
  }
  if (scene == nullptr || size.x < 1 || size.y < 1) return;
  const bool software = picture::is_software(painter_->renderer());
  const bool changed = version != painted_version_ || size != painted_size_;
  if (changed) {
    painted_version_ = version;
    painted_size_ = size;
    changed_s_ = now_s;
    refining_ = software || settings_.quality == "still";
    picture::Quality quality;
    quality.fineness = software && settings_.quality != "normal" ? picture::Fineness::Draft : picture::Fineness::Normal;
    if (settings_.quality == "draft") quality.fineness = picture::Fineness::Draft;
    quality.scale_1 = draft_scale_.scale_1();
    // how long a draft takes decides how fine the next one is; the result of no work depends on it
    const auto begun = std::chrono::steady_clock::now();
    painter_->draw(*scene, *view, {size.x, size.y}, quality);
    if (quality.fineness == picture::Fineness::Draft && !window_->screenless()) {
      const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
      draft_scale_.next(took.count());
    }
    if (settings_.quality == "draft") refining_ = false;
  } else if (refining_ && now_s - changed_s_ >= kRest_s) {
    if (changed_s_ >= 0.0) {
      picture::Quality still;
      still.fineness = picture::Fineness::Still;
      painter_->draw(*scene, *view, {size.x, size.y}, still);
      changed_s_ = -1e9;  // begun
    } else if (!painter_->refine()) {
      refining_ = false;
    }
  }
  const auto id = static_cast<ImTextureID>(painter_->texture());
  ImGui::GetBackgroundDrawList()->AddImage(ImTextureRef(id), {0.0F, 0.0F},
                                           {static_cast<float>(size.x), static_cast<float>(size.y)}, {0.0F, 1.0F},
                                           {1.0F, 0.0F});
}

}  // namespace proofstand::desk
