#include <cmath>

#include "sim/bench/surface.h"
#include "sim/bench/wheel.h"
#include "sim/scene/place_point.h"
#include "sim/scene/scene.h"
#include "sim/scene/wheel_pose.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {
namespace {

using bench::Bench;
using event::Grip;
using event::HandId;
using event::PlaceKind;
using scene::Scene;
using scene::ScenePlace;
using scene::Workshop;

std::int64_t micro(double x) { return std::llround(x * 1e6); }

void settle(Bench& bench) {
  for (int i = 0; i < 2000; ++i) {
    bool busy = false;
    for (const bench::HandState& hand : bench.state().hands) busy = busy || hand.stage == bench::HandStage::Busy;
    if (!busy) return;
    bench.advance_to(bench.tick() + 1);
  }
}

bool same(const glm::mat4& a, const glm::mat4& b) {
  for (int i = 0; i < 4; ++i) {
    if (a[i] != b[i]) return false;
  }
  return true;
}

bool same(const Scene& a, const Scene& b) {
  if (a.items.size() != b.items.size() || a.places.size() != b.places.size() || a.films.size() != b.films.size()) {
    return false;
  }
  for (std::size_t i = 0; i < a.items.size(); ++i) {
    if (a.items[i].mesh != b.items[i].mesh || !same(a.items[i].pose, b.items[i].pose)) return false;
    if (a.items[i].material.color != b.items[i].material.color || a.items[i].place != b.items[i].place) return false;
  }
  for (std::size_t i = 0; i < a.places.size(); ++i) {
    if (!same(a.places[i].frame, b.places[i].frame) || a.places[i].middle != b.places[i].middle) return false;
  }
  for (std::size_t i = 0; i < a.films.size(); ++i) {
    if (a.films[i].cells != b.films[i].cells) return false;
  }
  return true;
}

void check_sound(const Workshop& shop, const Scene& scene) {
  for (const scene::Item& item : scene.items) {
    REQUIRE(item.mesh < shop.meshes().size());
    REQUIRE(item.place < static_cast<std::int32_t>(scene.places.size()));
    REQUIRE(item.film < static_cast<std::int32_t>(scene.films.size()));
    for (int c = 0; c < 4; ++c) {
      for (int r = 0; r < 4; ++r) REQUIRE(std::isfinite(item.pose[c][r]));
    }
    // poses turn and move, they neither stretch nor mirror
    const glm::mat3 turn(item.pose);
    CHECK(glm::determinant(turn) == Approx(1.0F).margin(1e-3));
    CHECK(glm::dot(turn[0], turn[1]) == Approx(0.0F).margin(1e-3));
  }
  for (const ScenePlace& place : scene.places) {
    REQUIRE(place.thing != event::kNoThing);
    CHECK(std::isfinite(place.middle.x + place.middle.y + place.middle.z));
    CHECK(glm::length(place.normal) == Approx(1.0F).margin(1e-3));
    CHECK(glm::determinant(glm::mat3(place.frame)) == Approx(1.0F).margin(1e-3));
    const float axis = glm::length(place.axis);
    CHECK((axis < 1e-6F || std::abs(axis - 1.0F) < 1e-3F));
  }
}

const ScenePlace& place_of(const Scene& scene, event::ThingId thing, PlaceKind kind,
                           event::BoltId bolt = event::kNoBolt) {
  const ScenePlace* place = scene::find_place(scene.places, thing, kind, bolt);
  REQUIRE(place != nullptr);
  return *place;
}

// one workshop serves all: it takes half a second to build
struct Shop {
  SixBolt job = six_bolt();
  Workshop workshop{job.setup};
};
const Shop& shop() {
  static const Shop one;
  return one;
}

}  // namespace

// danger: a picture that depends on anything but the bench's state
TEST_CASE("equal states give equal scenes, an action another one") {
  const Shop& s = shop();
  Bench a(s.job.setup);
  Bench b(s.job.setup);
  CHECK(same(s.workshop.compute_scene(a), s.workshop.compute_scene(b)));
  a.apply(event::make_take(0, HandId::Right, s.job.key, Grip::None));
  settle(a);
  CHECK_FALSE(same(s.workshop.compute_scene(a), s.workshop.compute_scene(b)));
  b.apply(event::make_take(0, HandId::Right, s.job.key, Grip::None));
  settle(b);
  CHECK(same(s.workshop.compute_scene(a), s.workshop.compute_scene(b)));
}

TEST_CASE("every mesh has sound triangles and normals") {
  for (const scene::Mesh& mesh : shop().workshop.meshes()) {
    REQUIRE(mesh.indices.size() % 3 == 0);
    for (const std::uint32_t index : mesh.indices) REQUIRE(index < mesh.vertices.size());
    for (const scene::Vertex& v : mesh.vertices) {
      REQUIRE(std::isfinite(v.position.x + v.position.y + v.position.z + v.coords.x + v.coords.y));
      REQUIRE(glm::length(v.normal) == Approx(1.0F).margin(1e-3));
    }
  }
}

TEST_CASE("a scene is sound at the start, with a rotor in hand and with the wheel in the bike") {
  const Shop& s = shop();
  Bench bench(s.job.setup);
  check_sound(s.workshop, s.workshop.compute_scene(bench));
  bench.apply(event::make_take(0, HandId::Left, s.job.new_rotor, Grip::Edge));
  for (int i = 0; i < 40; ++i) {
    bench.advance_to(bench.tick() + 3);
    check_sound(s.workshop, s.workshop.compute_scene(bench));
  }
  bench.apply(event::make_plain(bench.tick(), event::ActionKind::PutBack, HandId::Left));
  settle(bench);
  bench.apply(event::make_take(bench.tick(), HandId::Left, s.job.wheel, Grip::Both));
  settle(bench);
  check_sound(s.workshop, s.workshop.compute_scene(bench));
  bench.apply(
      event::make_bring(bench.tick(), HandId::Left, s.job.bike, PlaceKind::ForkEnds, event::kNoBolt, 0, 0, 0, 0));
  settle(bench);
  REQUIRE(bench.state().wheel.at == bench::WheelAt::Bike);
  check_sound(s.workshop, s.workshop.compute_scene(bench));
}

// danger: the point under the pointer goes into the action as another point
TEST_CASE("a point of a place and its two numbers give each other back") {
  const Shop& s = shop();
  Bench bench(s.job.setup);
  const Scene scene = s.workshop.compute_scene(bench);
  for (const ScenePlace& place : scene.places) {
    for (const scene::PlacePoint point : {scene::PlacePoint{0.003, 0.002}, scene::PlacePoint{0.070, 1.1}}) {
      const scene::PlacePoint back = scene::point_at(place, scene::world_point(place, point));
      CHECK(back.u_1 == Approx(point.u_1).margin(1e-5));
      CHECK(back.v_1 == Approx(point.v_1).margin(1e-3));
    }
  }
}

// danger: grease appears somewhere else than where the thumb was, or on the other face
TEST_CASE("a thumb on the track dulls the cells of the map that lie under it in the picture") {
  const Shop& s = shop();
  for (const double angle : {0.4, 2.9}) {
    Bench bench(s.job.setup);
    const Scene before = s.workshop.compute_scene(bench);
    bench.apply(event::make_touch(0, HandId::Right, s.job.old_rotor, PlaceKind::TrackOuter, event::kNoBolt,
                                  micro(0.0725), micro(angle)));
    settle(bench);
    const Scene after = s.workshop.compute_scene(bench);
    const ScenePlace& track = place_of(after, s.job.old_rotor, PlaceKind::TrackOuter);
    const glm::vec3 thumb = scene::world_point(track, {0.0725, angle});
    const scene::Item* face = nullptr;
    for (const scene::Item& item : after.items) {
      if (item.place >= 0 && &after.places[static_cast<std::size_t>(item.place)] == &track && item.film >= 0)
        face = &item;
    }
    REQUIRE(face != nullptr);
    const scene::FilmMap& map = after.films[static_cast<std::size_t>(face->film)];
    const scene::FilmMap& clean = before.films[static_cast<std::size_t>(face->film)];
    REQUIRE(map.cells.size() == static_cast<std::size_t>(map.sectors * map.rings));
    int changed = 0;
    for (const scene::Vertex& v : s.workshop.meshes()[face->mesh].vertices) {
      const glm::vec3 at = glm::vec3(face->pose * glm::vec4(v.position, 1.0F));
      const int sector = std::min(map.sectors - 1, static_cast<int>(v.coords.x * static_cast<float>(map.sectors)));
      const int ring = std::clamp(static_cast<int>(v.coords.y * static_cast<float>(map.rings)), 0, map.rings - 1);
      const auto cell = static_cast<std::size_t>(ring * map.sectors + sector);
      const bool dulled = map.cells[cell].x > clean.cells[cell].x;
      if (dulled) {
        ++changed;
        CHECK(glm::length(at - thumb) < 0.020F);
      }
    }
    CHECK(changed > 0);
  }
}

TEST_CASE("a rotor the wrong way round shows its other face") {
  SixBolt job = six_bolt();
  Bench bench(job.setup);
  const Scene right = shop().workshop.compute_scene(bench);
  CHECK(place_of(right, job.old_rotor, PlaceKind::TrackOuter).normal.z < -0.99F);
  CHECK(place_of(right, job.old_rotor, PlaceKind::TrackInner).normal.z > 0.99F);
  // nearer to the mechanic by its thickness
  const float apart = place_of(right, job.old_rotor, PlaceKind::TrackInner).middle.z -
                      place_of(right, job.old_rotor, PlaceKind::TrackOuter).middle.z;
  CHECK(apart == Approx(0.0018F).margin(1e-5));
  bench.apply(event::make_take(0, HandId::Left, job.new_rotor, Grip::Edge));
  settle(bench);
  const Scene held = shop().workshop.compute_scene(bench);
  const float shown = place_of(held, job.new_rotor, PlaceKind::TrackOuter).normal.z;
  bench.apply(event::make_plain(bench.tick(), event::ActionKind::TurnOver, HandId::Left));
  settle(bench);
  const Scene over = shop().workshop.compute_scene(bench);
  CHECK(place_of(over, job.new_rotor, PlaceKind::TrackOuter).normal.z == Approx(-shown).margin(1e-3));
}

// danger: forward looks backward: a rotor fitted by its arrow would be wrong
TEST_CASE("rolling forward turns the disc counter-clockwise seen from the disc side") {
  const Shop& s = shop();
  Bench bench(s.job.setup);
  const glm::vec3 before =
      glm::vec3(place_of(s.workshop.compute_scene(bench), s.job.wheel, PlaceKind::BoltRecess, event::BoltId{0}).middle);
  // bolt 1 lies to the mechanic's right, who sees -x there
  CHECK(before.x == Approx(-0.022F).margin(1e-4));
  bench.apply(event::make_touch(0, HandId::Left, s.job.wheel, PlaceKind::Tyre, event::kNoBolt, 0, 0));
  settle(bench);
  bench.apply(event::make_throw(bench.tick(), HandId::Left, 3'000'000));
  bench.advance_to(bench.tick() + 60);
  REQUIRE(bench::wheel_angle_rad(bench.state()) > 0.2);
  const auto angle = static_cast<float>(bench::wheel_angle_rad(bench.state()));
  const glm::vec3 after =
      place_of(s.workshop.compute_scene(bench), s.job.wheel, PlaceKind::BoltRecess, event::BoltId{0}).middle;
  CHECK(after.x == Approx(-0.022F * std::cos(angle)).margin(1e-4));
  CHECK(after.y == Approx(0.022F * std::sin(angle)).margin(1e-4));
}

// danger: a loose bolt looks tight, or a tight one stands off
TEST_CASE("a bolt's head stands off the rotor by its turns and its pitch") {
  const Shop& s = shop();
  Bench bench(s.job.setup);
  const glm::mat4 seat = scene::wheel_pose(bench) * scene::hole_frame(s.job.setup, 2);
  const auto height = [&](const glm::mat4& pose) { return (glm::inverse(seat) * pose)[3].z; };
  // at the start the six old bolts are tight: their heads bear on the rotor
  CHECK(height(scene::bolt_in_hole_pose(bench, 2)) == Approx(0.0018F).margin(1e-6));
  const ScenePlace& recess =
      place_of(s.workshop.compute_scene(bench), s.job.wheel, PlaceKind::BoltRecess, event::BoltId{2});
  CHECK(recess.axis.z == Approx(1.0F).margin(1e-4));
  CHECK(height(recess.frame) == Approx(0.0018F + 0.0025F).margin(1e-6));
}

TEST_CASE("named views look from outside of everything and exist for every name") {
  const Shop& s = shop();
  Bench bench(s.job.setup);
  const Scene scene = s.workshop.compute_scene(bench);
  for (const std::string_view name : scene::view_names()) {
    const auto view = scene::view_named(bench, scene, name);
    REQUIRE(view.has_value());
    const glm::vec3 eye = scene::eye_of(*view);
    CHECK(view->distance_m >= 0.12F);
    CHECK(view->distance_m <= 3.0F);
    CHECK(eye.y > -0.36F);
    CHECK(eye.z < 0.2F);
  }
  CHECK_FALSE(scene::view_named(bench, scene, "nowhere").has_value());
}

}  // namespace proofstand::testing
