#include <cmath>
#include <glm/gtc/matrix_transform.hpp>
#include <string>

#include "sim/scene/extrude.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"
#include "sim/scene/sweep.h"
#include "sim/scene/tools/look.h"
#include "sim/scene/tools/marks.h"
#include "sim/scene/tools/pieces.h"
#include "sim/scene/tools/scales.h"

namespace proofstand::scene {
namespace {

constexpr double kSag_m = 0.00003;
constexpr double kFace_m = kDialHub_m;
constexpr double kRadius_m = 0.0265;  // of the printed face
constexpr glm::vec2 kSmall{0.0F, -0.0095F};

// clockwise from the top, as one reads it
glm::vec2 round(double angle_rad, double radius_m) {
  return {static_cast<float>(radius_m * std::sin(angle_rad)), static_cast<float>(radius_m * std::cos(angle_rad))};
}

void add_tick(Mesh& mesh, const glm::vec2& middle, double angle_rad, double from_m, double to_m, double width_m,
              double z_m) {
  Mesh tick;
  add_bar(tick, {static_cast<float>(-0.5 * width_m), static_cast<float>(from_m)},
          {static_cast<float>(0.5 * width_m), static_cast<float>(to_m)}, 0.0F);
  glm::mat4 pose = glm::translate(glm::mat4(1.0F), glm::vec3(middle, static_cast<float>(z_m)));
  pose = glm::rotate(pose, static_cast<float>(-angle_rad), glm::vec3(0.0F, 0.0F, 1.0F));
  append(mesh, tick, pose);
}

Mesh face_marks(const Typeface& face) {
  Mesh marks;
  const double z = kFace_m + 0.00008;
  for (int i = 0; i < kDialLines; ++i) {
    const double angle = dial_line_rad(i);
    const bool tenth = i % 10 == 0;
    const double inner = tenth ? 0.0208 : i % 5 == 0 ? 0.0220 : 0.0230;
    add_tick(marks, {0.0F, 0.0F}, angle, inner, 0.0252, tenth ? 0.00032 : 0.00020, z);
    if (tenth) {
      const glm::vec2 at = round(angle, 0.0180);
      append(marks, face.flat(std::to_string(i), 0.0030, Align::Middle, z),
             glm::translate(glm::mat4(1.0F), glm::vec3(at.x, at.y - 0.0015F, 0.0F)));
    }
  }
  for (int i = 0; i < 10; ++i) {
    add_tick(marks, kSmall, dial_line_rad(i * 10), 0.0040, 0.0052, 0.00022, z);
  }
  append(marks, face.flat("0.01 mm", 0.0019, Align::Middle, z),
         glm::translate(glm::mat4(1.0F), glm::vec3(0.0F, 0.0062F, 0.0F)));
  return marks;
}

Mesh hand_shape(double length_m, double tail_m, double width_m) {
  const double w = 0.5 * width_m;
  return extrude(
      {{{-w * 0.7, -tail_m}, {w * 0.7, -tail_m}, {w, 0.0}, {0.00012, length_m}, {-0.00012, length_m}, {-w, 0.0}}},
      {0.0, 0.0003, 0.0, 0.00008});
}

}  // namespace

// The dial looks back along its plunger, so that whoever sets the tip on the track reads it square.
Pieces build_dial(MeshStore& store) {
  const Typeface face = Typeface::find(true);
  Pieces pieces;
  using event::Grip;
  using event::PlaceKind;
  const double back = kFace_m - 0.020;
  Mesh plunger = ball(0.0015F, 8);
  Mesh tip;
  append(tip, plunger, glm::translate(glm::mat4(1.0F), glm::vec3(0.0F, 0.0F, 0.0015F)));
  append(tip, bar(0.0012, 0.0020, 0.0070, 0.0002, kSag_m));
  append(tip, bar(0.0021, 0.0065, 0.0300, 0.0002, kSag_m));
  pieces.push_back({store.keep(tip), stainless(), Grip::Fingers, Move::Plunger});
  Mesh body = bar(0.0040, 0.0150, back + 0.001, 0.0004, kSag_m);
  append(
      body,
      revolve({{0.0, back}, {0.0235, back}, {0.0262, back + 0.0022}, {0.0262, kFace_m - 0.005}, {0.0, kFace_m - 0.005}},
              kSag_m));
  // lug that the arm holds
  append(body, rounded_box({0.012F, 0.010F, 0.009F}, 0.0015F),
         glm::translate(glm::mat4(1.0F), glm::vec3(-0.030F, 0.0F, static_cast<float>(back) + 0.008F)));
  pieces.push_back({store.keep(body), frame_enamel(), Grip::Fingers});
  Mesh bezel = revolve_ring({{0.0258, kFace_m - 0.0065},
                             {0.0288, kFace_m - 0.0060},
                             {0.0290, kFace_m - 0.0055},
                             {0.0290, kFace_m + 0.0010},
                             {0.0275, kFace_m + 0.0022},
                             {0.0262, kFace_m + 0.0020},
                             {0.0258, kFace_m}},
                            kSag_m);
  pieces.push_back({store.keep(bezel), aluminium(), Grip::Fingers});
  pieces.push_back({store.keep(flat_face({circle(kRadius_m)}, kFace_m)), dial_face(), Grip::Fingers});
  pieces.push_back({store.keep(face_marks(face)), ink(), Grip::Fingers, Move::None, PlaceKind::Body, false});
  Mesh pointer = hand_shape(0.0235, 0.006, 0.0013);
  append(pointer, bar(0.0016, 0.0, 0.0009, 0.0002, kSag_m));
  pieces.push_back({store.keep(pointer), ink(), Grip::Fingers, Move::Pointer, PlaceKind::Body, false});
  pieces.push_back({store.keep(hand_shape(0.0044, 0.0012, 0.0008)), paint({0.45F, 0.20F, 0.05F}), Grip::Fingers,
                    Move::SmallHand, PlaceKind::Body, false});
  return pieces;
}

Pieces build_dial_stand(MeshStore& store) {
  Pieces pieces;
  Mesh foot;
  append(foot, rounded_box({0.062F, 0.050F, 0.044F}, 0.003F, 3),
         glm::translate(glm::mat4(1.0F), glm::vec3(0.0F, 0.0F, 0.022F)));
  pieces.push_back({store.keep(foot), frame_enamel(), event::Grip::Fingers});
  pieces.push_back({store.keep(bar(0.0060, 0.040, kDialColumn_m, 0.0008, kSag_m)), stainless(), event::Grip::Fingers});
  Mesh knob;
  append(knob, bar(0.0090, 0.0, 0.012, 0.0015, kSag_m),
         glm::rotate(glm::translate(glm::mat4(1.0F), glm::vec3(0.0F, -0.025F, 0.026F)), 1.5708F,
                     glm::vec3(1.0F, 0.0F, 0.0F)));
  pieces.push_back({store.keep(knob), handle_green(), event::Grip::Fingers});
  return pieces;
}

// origin on the column's axis; the arm runs along x to the dial's lug
Pieces build_dial_arm(MeshStore& store) {
  Pieces pieces;
  Mesh arm;
  append(arm, rounded_box({0.024F, 0.024F, 0.022F}, 0.002F), glm::mat4(1.0F));
  const auto reach = static_cast<float>(kDialArm_m) - 0.026F;
  append(arm, tube({{0.008F, 0.0F, 0.0F}, {reach, 0.0F, 0.0F}}, 0.0045F, 14));
  append(arm, rounded_box({0.012F, 0.016F, 0.014F}, 0.0015F),
         glm::translate(glm::mat4(1.0F), glm::vec3(reach, 0.0F, 0.0F)));
  pieces.push_back({store.keep(arm), aluminium(), event::Grip::Fingers});
  Mesh knob;
  append(knob, bar(0.0080, 0.010, 0.024, 0.0015, kSag_m),
         glm::rotate(glm::mat4(1.0F), 1.5708F, glm::vec3(1.0F, 0.0F, 0.0F)));
  pieces.push_back({store.keep(knob), handle_green(), event::Grip::Fingers});
  return pieces;
}

}  // namespace proofstand::scene
