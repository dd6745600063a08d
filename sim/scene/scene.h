// The bench as things to draw: built from its state alone, afresh for every picture. Knows no window and no OpenGL.
//
// The world: metres; x forward, y up, z to the rider's right, origin at the hub's centre as the wheel sits in the wheel
// stand. The disc side looks to -z, which is where the mechanic stands. Seen from there an angle on the disc counts
// counter-clockwise: disc_point().
#pragma once

#include <cstdint>
#include <glm/glm.hpp>
#include <memory>
#include <optional>
#include <string_view>
#include <vector>

#include "sim/bench/bench.h"
#include "sim/scene/material.h"
#include "sim/scene/mesh.h"
#include "sim/scene/view.h"

namespace proofstand::scene {

using MeshId = std::uint32_t;

/// Somewhere a hand can go: what a picked texel means. The same list feeds picking, the keyboard's walk and the labels.
struct ScenePlace {
  event::ThingId thing = event::kNoThing;
  event::PlaceKind place = event::PlaceKind::Body;
  event::BoltId bolt = event::kNoBolt;
  event::Grip grip = event::Grip::None;  ///< of a tool's part: the grip that taking it there means
  glm::mat4 frame{1.0F};   ///< place frame to world: the point (u, v) of the place's row in the table of places
  glm::vec3 middle{0.0F};  ///< [m] world: where a list's choice brings the hand, and a label's line ends
  glm::vec3 normal{0.0F, 0.0F, -1.0F};
  glm::vec3 axis{
      0.0F};  ///< of what turns here: the direction into the work, clockwise positive along it; 0: nothing turns
};

/// Film on a face, cell by cell, as the eye sees it. Row-major [rings x sectors].
struct FilmMap {
  int sectors = 0;
  int rings = 0;
  /// dull: grease, oil, skin; wet: alcohol or fluid; dark: dust, black; wear of print. 0..255 each.
  std::vector<glm::u8vec4> cells;
};

struct Item {
  MeshId mesh = 0;
  glm::mat4 pose{1.0F};  ///< part frame to world, no scale
  Material material;
  std::int32_t place = -1;  ///< index into Scene::places, or -1: cannot be picked
  std::int32_t film = -1;   ///< index into Scene::films
  bool shadow = true;
};

/// Light that the trainee holds: rakes over what it is held at.
struct HandLamp {
  glm::vec3 at{0.0F};
  glm::vec3 towards{0.0F, 0.0F, 1.0F};
  float strength_1 = 0.0F;  ///< 0: off
};

struct Scene {
  std::vector<Item> items;
  std::vector<ScenePlace> places;
  std::vector<FilmMap> films;
  HandLamp lamp;
};

/// A free hand that the window holds over something: the bench knows nothing of it.
struct Hover {
  event::HandId hand = event::HandId::Right;
  glm::vec3 at{0.0F};
  glm::vec3 normal{0.0F, 0.0F, -1.0F};
};

/// What a close-up shows of an instrument.
struct CloseUpOf {
  double tall_m = 0.018;  ///< height of the picture on the scale: 0.004 .. 0.08; a dial is always shown whole
  double along_m = 0.0;   ///< looked at so far along the scale from where it is read
};
/// An instrument close to the eye.
struct CloseUp {
  Scene scene;
  View view;            ///< looks straight at the scale; the picture's width follows from its shape
  double tall_m = 0.0;  ///< how much of the scale's plane the picture's height shows
};

/// All meshes of a setup, built once. Heavy; may be built on a worker.
class Workshop {
 public:
  explicit Workshop(const bench::BenchSetup& setup);
  ~Workshop();
  Workshop(Workshop&&) noexcept;
  Workshop& operator=(Workshop&&) noexcept;

  [[nodiscard]] const std::vector<Mesh>& meshes() const;
  /// The bench as it stands now. hover: at most one a hand.
  [[nodiscard]] Scene compute_scene(const bench::Bench& bench, const std::vector<Hover>& hovers = {}) const;
  /// An instrument by itself, its scale square to the eye. name: "micrometer", "vernier", "dial" or "torque scale";
  /// nothing for other names, or when the setup has none.
  [[nodiscard]] std::optional<CloseUp> compute_close_up(const bench::Bench& bench, std::string_view name,
                                                        const CloseUpOf& of = {}) const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

/// A point of the disc side in the wheel's frame: radius [m], angle [rad] counter-clockwise seen from outside, and how
/// far outside the hub's seat [m].
glm::vec3 disc_point(float radius_m, float angle_rad, float out_m);

/// Views by name, for pictures and the look row: "workplace", "wheel", "rotor", "flange", "bolt 4", "tray", "caliper",
/// "card", "micrometer", "vernier", "dial", "torque scale".
std::optional<View> view_named(const bench::Bench& bench, const Scene& scene, std::string_view name);
std::vector<std::string_view> view_names();

}  // namespace proofstand::scene
