#include <cmath>
#include <set>

#include "sim/bench/hand_contact.h"
#include "sim/bench/senses.h"
#include "sim/scene/place_point.h"
#include "sim/scene/scene.h"
#include "sim/scene/tools/click_driver.h"
#include "sim/scene/tools/rags.h"
#include "sim/scene/tools/scales.h"
#include "sim/scene/tools/thing_pose.h"
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

std::int64_t micro(double x) { return std::llround(x * 1e6); }

void settle(Bench& bench) {
  for (int i = 0; i < 2000; ++i) {
    bool busy = false;
    for (const bench::HandState& hand : bench.state().hands) busy = busy || hand.stage == bench::HandStage::Busy;
    if (!busy) return;
    bench.advance_to(bench.tick() + 1);
  }
}

struct Shop {
  SixBolt job = six_bolt();
  scene::Workshop workshop{job.setup};
};
const Shop& shop() {
  static const Shop one;
  return one;
}

// a place of a thing that is gripped so
const ScenePlace* gripped(const Scene& scene, event::ThingId thing, Grip grip) {
  for (const ScenePlace& place : scene.places) {
    if (place.thing == thing && place.grip == grip) return &place;
  }
  return nullptr;
}

}  // namespace

// danger: a grip that the bench knows and nobody can point at
TEST_CASE("every grip of every tool can be pointed at, and none that does not exist") {
  const Shop& s = shop();
  const Bench bench(s.job.setup);
  const Scene scene = s.workshop.compute_scene(bench);
  for (const event::ThingId thing : {s.job.key, s.job.driver, s.job.click_driver, s.job.micrometer}) {
    const bench::ThingKind kind = s.job.setup.things[event::index_of(thing)].kind;
    std::set<Grip> seen;
    for (const ScenePlace& place : scene.places) {
      if (place.thing == thing) seen.insert(place.grip);
    }
    for (std::size_t i = 1; i < event::grip_words().size(); ++i) {
      const auto grip = static_cast<Grip>(i);
      CAPTURE(s.job.setup.things[event::index_of(thing)].name, event::words_of(grip));
      CHECK((seen.count(grip) > 0) == bench::grip_fits(kind, grip));
    }
  }
}

// danger: a thing of the setup that is not in the picture at all
TEST_CASE("everything that can be taken or used is in the scene") {
  const Shop& s = shop();
  const Bench bench(s.job.setup);
  const Scene scene = s.workshop.compute_scene(bench);
  std::set<event::ThingId> seen;
  for (const ScenePlace& place : scene.places) seen.insert(place.thing);
  // bolts in their holes are the wheel's numbered places
  for (const event::ThingId bolt : s.job.setup.fitted_bolts) seen.insert(bolt);
  for (std::size_t i = 0; i < s.job.setup.things.size(); ++i) {
    CAPTURE(s.job.setup.things[i].name);
    CHECK(seen.count(static_cast<event::ThingId>(i)) == 1);
  }
  CHECK(scene::find_place(scene.places, s.job.glove_box, PlaceKind::GloveBox) != nullptr);
  CHECK(scene::find_place(scene.places, s.job.stand, PlaceKind::StandSlot) != nullptr);
  CHECK(scene::find_place(scene.places, s.job.bench_top, PlaceKind::BenchTop) != nullptr);
  CHECK(scene::find_place(scene.places, s.job.tray, PlaceKind::Tray) != nullptr);
  for (const event::ThingId bottle : {s.job.alcohol, s.job.locker, s.job.grease, s.job.oil}) {
    const ScenePlace* mouth = scene::find_place(scene.places, bottle, PlaceKind::Mouth);
    REQUIRE(mouth != nullptr);
    // a standing bottle opens upwards
    CHECK(mouth->frame[2].y > 0.9F);
  }
}

// danger: things that lie in the air or sink into the bench
TEST_CASE("what is put away lies on the bench") {
  const Shop& s = shop();
  const Bench bench(s.job.setup);
  const Scene scene = s.workshop.compute_scene(bench);
  for (const event::ThingId thing :
       {s.job.key, s.job.driver, s.job.click_driver, s.job.micrometer, s.job.vernier, s.job.pick, s.job.lamp,
        s.job.alcohol, s.job.locker, s.job.clean_rag, s.job.glove_box}) {
    float lowest = 10.0F;
    for (const scene::Item& item : scene.items) {
      if (item.place < 0 || scene.places[static_cast<std::size_t>(item.place)].thing != thing) continue;
      for (const scene::Vertex& v : s.workshop.meshes()[item.mesh].vertices) {
        lowest = std::min(lowest, (item.pose * glm::vec4(v.position, 1.0F)).y);
      }
    }
    CAPTURE(s.job.setup.things[event::index_of(thing)].name);
    CHECK(lowest == Approx(-0.365F).margin(0.004));
  }
}

// danger: a driver that floats over a recess it is seated in, or the other way about
TEST_CASE("a tool stands in its recess as deep as the bench says, and goes round with the hand") {
  const Shop& s = shop();
  Bench bench(s.job.setup);
  bench.apply(event::make_take(0, HandId::Right, s.job.driver, Grip::Shaft));
  settle(bench);
  bench.apply(
      event::make_bring(bench.tick(), HandId::Right, s.job.wheel, PlaceKind::BoltRecess, event::BoltId{2}, 0, 0, 0, 0));
  settle(bench);
  const auto tip = [&] {
    const Scene scene = s.workshop.compute_scene(bench);
    const ScenePlace* recess = scene::find_place(scene.places, s.job.wheel, PlaceKind::BoltRecess, event::BoltId{2});
    const ScenePlace* shaft = gripped(scene, s.job.driver, Grip::Shaft);
    REQUIRE(recess != nullptr);
    REQUIRE(shaft != nullptr);
    CHECK(glm::dot(shaft->axis, glm::vec3(0.0F, 0.0F, 1.0F)) > 0.9F);
    return glm::vec3(glm::inverse(recess->frame) * shaft->frame[3]);
  };
  const glm::vec3 resting = tip();
  CHECK(glm::length(glm::vec2(resting)) < 0.0005F);
  bench.apply(event::make_aim_along(bench.tick(), HandId::Right, micro(0.040)));
  bench.advance_to(bench.tick() + 240);
  const double depth_m = bench.state().visits[1].depth_m;
  REQUIRE(depth_m > 0.0005);
  CHECK(resting.z - tip().z == Approx(depth_m).margin(0.0003));
}

// danger: two hands drawn alike, a glove nobody sees
TEST_CASE("a gloved hand is drawn otherwise than a bare one") {
  const Shop& s = shop();
  Bench bench(s.job.setup);
  const Scene bare = s.workshop.compute_scene(bench);
  bench.apply(event::make_glove(0, HandId::Right, true));
  settle(bench);
  REQUIRE(bench.state().hands[1].gloved);
  const Scene gloved = s.workshop.compute_scene(bench);
  const auto meshes = [](const Scene& scene) {
    std::multiset<scene::MeshId> all;
    for (const scene::Item& item : scene.items) all.insert(item.mesh);
    return all;
  };
  CHECK(meshes(bare) != meshes(gloved));
}

// danger: black on the rag is the feedback of wiping; the picture must not say other than the eye of the bench
TEST_CASE("a rag looks black when it is") {
  const Shop& s = shop();
  const Bench bench(s.job.setup);
  const auto rag_of = [&s](event::ThingId thing) { return s.job.setup.things[event::index_of(thing)].part; };
  const scene::RagLook clean = scene::rag_look(bench, rag_of(s.job.clean_rag));
  const scene::RagLook dirty = scene::rag_look(bench, rag_of(s.job.dirty_rag));
  CHECK_FALSE(bench::see_rag_black(bench, s.job.clean_rag));
  CHECK(bench::see_rag_black(bench, s.job.dirty_rag));
  CHECK(scene::stain_of(clean) < 0);
  CHECK(scene::stain_of(dirty) >= 2);
  CHECK(dirty.black_1 >= 0.5F);
}

// danger: a close-up that does not look where the scale is read
TEST_CASE("close-ups show scales square, their lines where the formula puts them") {
  const Shop& s = shop();
  const Bench bench(s.job.setup);
  for (const std::string_view name : {"micrometer", "vernier", "dial", "torque scale"}) {
    CAPTURE(name);
    const auto close = s.workshop.compute_close_up(bench, name);
    REQUIRE(close);
    CHECK_FALSE(close->scene.items.empty());
    CHECK(close->view.field_rad ==
          Approx(2.0 * std::atan(0.5 * close->tall_m / static_cast<double>(close->view.distance_m))));
  }
  CHECK_FALSE(s.workshop.compute_close_up(bench, "workplace"));
  // the handle's edge is the middle of the picture; a line further on lies as far to the left as the formula says
  const bench::ToolPart& tool = s.job.setup.tools[s.job.setup.things[event::index_of(s.job.click_driver)].part];
  const auto close = s.workshop.compute_close_up(bench, "torque scale", {0.018, 0.0});
  const ScenePlace* barrel = gripped(close->scene, s.job.click_driver, Grip::Handle);
  REQUIRE(barrel != nullptr);
  const int line = scene::setting_lines(tool) - 1;
  const double z_m = scene::kLowestLine_m - scene::setting_line_m(tool, line);
  const glm::vec4 on_barrel(0.0F, static_cast<float>(scene::kBarrelRadius_m), static_cast<float>(z_m), 1.0F);
  const auto seen = scene::project(close->view, 1.6F, glm::vec3(barrel->frame * on_barrel));
  REQUIRE(seen);
  const double away_m = scene::setting_line_m(tool, line) - scene::setting_edge_m(tool, tool.start_setting_nm);
  CHECK(static_cast<double>(seen->x) == Approx(-away_m / (0.5 * 1.6 * 0.018)).margin(0.002));
  CHECK(seen->y == Approx(0.0F).margin(0.002));
}

}  // namespace proofstand::testing
