#include "sim/desk/window/overlay.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>

#include "sim/desk/panels/paper.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

// levels at which the cord changes its look
constexpr std::int64_t kStraight = 64;
constexpr std::int64_t kTwoStrands = 384;

ImVec2 px_of(const hand::Spot& spot, float px_per_pt) {
  return {static_cast<float>(spot.x_pt) * px_per_pt, static_cast<float>(spot.y_pt) * px_per_pt};
}

// where the cord's end is drawn when no pointer holds it: turned about the axis by its lead, or pressed along it
hand::Vec3 end_of_cord(const hand::Grasp& grasp, const hand::CordSight& cord) {
  const hand::Vec3 axis = grasp.axis;
  hand::Vec3 side = hand::cross(axis, hand::Vec3{0.0, 1.0, 0.0});
  if (hand::length_m(side) < 0.1) side = hand::cross(axis, hand::Vec3{1.0, 0.0, 0.0});
  const hand::Vec3 from = hand::unit(side), across = hand::cross(axis, from);
  constexpr double kArm_m = 0.06;
  const hand::Vec3 round = from * (kArm_m * std::cos(cord.lead_rad)) + across * (kArm_m * std::sin(cord.lead_rad));
  return grasp.grip + round + axis * cord.lead_m;
}

void draw_cord(ImDrawList* draw, const ImVec2& a, const ImVec2& b, const hand::CordSight& cord) {
  const float dx = b.x - a.x, dy = b.y - a.y;
  const float length = std::sqrt(dx * dx + dy * dy);
  if (length < 2.0F) return;
  const float slack =
      cord.level >= kStraight ? 0.0F : 0.22F * (1.0F - static_cast<float>(cord.level) / static_cast<float>(kStraight));
  const ImVec2 sag{(a.x + b.x) / 2.0F, (a.y + b.y) / 2.0F + length * slack};
  const float w = u(2.5F);
  const auto strand = [&](float off) {
    const float nx = -dy / length * off, ny = dx / length * off;
    draw->AddBezierQuadratic({a.x + nx, a.y + ny}, {sag.x + nx, sag.y + ny}, {b.x + nx, b.y + ny}, paper().paper,
                             w + u(2.5F));
    draw->AddBezierQuadratic({a.x + nx, a.y + ny}, {sag.x + nx, sag.y + ny}, {b.x + nx, b.y + ny}, paper().ink, w);
  };
  if (cord.level >= kTwoStrands) {
    strand(u(3.0F));
    strand(-u(3.0F));
  } else {
    strand(0.0F);
  }
  draw->AddCircleFilled(b, u(5.0F), paper().ink);
  draw->AddCircle(b, u(6.5F), paper().paper, 0, u(1.5F));
  if (cord.knotted) {
    // a bent wrist: the cord is knotted halfway
    const ImVec2 m{(a.x + b.x) / 2.0F, (a.y + b.y) / 2.0F + length * slack * 0.5F};
    draw->AddCircle(m, u(6.0F), paper().attention, 0, u(3.0F));
  }
}

void draw_cords(const OverlayAsk& ask, ImDrawList* draw) {
  const Workplace& at = *ask.workplace;
  for (const event::HandId id : {event::HandId::Left, event::HandId::Right}) {
    const hand::CordSight cord = at.hands().cord(id);
    const auto& grasp = at.sight().grasps[static_cast<std::size_t>(id)];
    if (!cord.drawn || !grasp) continue;
    const auto from = hand::project(at.sight().lens, grasp->grip);
    if (!from) continue;
    const bool held = at.hands().pulling_by_button() && at.hands().active() == id;
    auto to =
        held ? std::optional<hand::Spot>(at.pointer().at) : hand::project(at.sight().lens, end_of_cord(*grasp, cord));
    if (to) draw_cord(draw, px_of(*from, ask.px_per_pt), px_of(*to, ask.px_per_pt), cord);
  }
}

// two ink corners, upper left and lower right
void corners(ImDrawList* draw, const ImVec2& c, float half, ImU32 ink) {
  const float arm = half * 0.55F;
  for (int pass = 0; pass < 2; ++pass) {
    const ImU32 colour = pass == 0 ? paper().paper : ink;
    const float w = pass == 0 ? u(5.0F) : u(2.0F);
    draw->AddLine({c.x - half, c.y - half}, {c.x - half + arm, c.y - half}, colour, w);
    draw->AddLine({c.x - half, c.y - half}, {c.x - half, c.y - half + arm}, colour, w);
    draw->AddLine({c.x + half, c.y + half}, {c.x + half - arm, c.y + half}, colour, w);
    draw->AddLine({c.x + half, c.y + half}, {c.x + half, c.y + half - arm}, colour, w);
  }
}

// words on paper beside a point, kept inside the free part
void draw_label(ImDrawList* draw, const std::string& words, const ImVec2& at, const Rect& free, bool leader) {
  const ImVec2 size = ImGui::CalcTextSize(words.c_str());
  const float pad = u(8.0F), off = u(26.0F);
  const float w = size.x + 2.0F * pad, h = size.y + 1.4F * pad;
  float x = at.x + off, y = at.y - off - h;
  if (x + w > free.right() - u(4.0F)) x = at.x - off - w;
  if (y < free.y + u(4.0F)) y = at.y + off;
  x = std::clamp(x, free.x + u(4.0F), std::max(free.x + u(4.0F), free.right() - w - u(4.0F)));
  y = std::clamp(y, free.y + u(4.0F), std::max(free.y + u(4.0F), free.bottom() - h - u(4.0F)));
  if (leader) {
    const ImVec2 to{x < at.x ? x + w : x, y < at.y ? y + h : y};
    draw->AddLine(at, to, paper().paper, u(4.0F));
    draw->AddLine(at, to, paper().ink, u(1.5F));
  }
  draw->AddRectFilled({x, y}, {x + w, y + h}, paper().paper, u(6.0F));
  draw->AddRect({x, y}, {x + w, y + h}, paper().rule, u(6.0F));
  draw->AddText({x + pad, y + 0.7F * pad}, paper().ink, words.c_str());
}

}  // namespace

void draw_overlay(const OverlayAsk& ask) {
  const Workplace& at = *ask.workplace;
  ImDrawList* draw = ImGui::GetBackgroundDrawList();
  draw_cords(ask, draw);
  if (!ask.plain) {
    for (const glm::vec3& point : at.targets()) {
      const auto spot = hand::project(
          at.sight().lens, {static_cast<double>(point.x), static_cast<double>(point.y), static_cast<double>(point.z)});
      if (spot) corners(draw, px_of(*spot, ask.px_per_pt), u(20.0F), paper().ink);
    }
  }
  const route::ListedPlace* chosen = at.chosen_place();
  if (chosen != nullptr) {
    const auto spot =
        hand::project(at.sight().lens, {static_cast<double>(chosen->world.x), static_cast<double>(chosen->world.y),
                                        static_cast<double>(chosen->world.z)});
    if (spot) {
      const ImVec2 px = px_of(*spot, ask.px_per_pt);
      corners(draw, px, u(16.0F), paper().ink);
      draw_label(draw, chosen->words, px, ask.free, true);
    }
  } else if (!at.label().empty() && !at.hands().pulling_by_button()) {
    draw_label(draw, at.label(), px_of(at.pointer().at, ask.px_per_pt), ask.free, false);
  }
}

void draw_corners(const std::vector<glm::vec3>& points, const scene::View& view, const glm::vec2& window_px) {
  ImDrawList* draw = ImGui::GetBackgroundDrawList();
  for (const glm::vec3& point : points) {
    const auto at = scene::project(view, window_px.x / window_px.y, point);
    if (!at) continue;
    corners(draw, {(at->x * 0.5F + 0.5F) * window_px.x, (0.5F - at->y * 0.5F) * window_px.y}, u(22.0F),
            paper().attention);
  }
}

}  // namespace proofstand::desk
