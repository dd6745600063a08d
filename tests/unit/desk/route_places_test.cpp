// Places as hands are offered them: by what is seen, in an order that gives nothing away.
#include <algorithm>
#include <cmath>
#include <set>

#include "sim/base/math.h"
#include "sim/bench/senses.h"
#include "sim/desk/route/aim.h"
#include "sim/desk/route/place_list.h"
#include "sim/desk/route/place_words.h"
#include "sim/desk/route/step_panel_model.h"
#include "sim/scene/place_point.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {
namespace {

using desk::route::ListedPlace;
using desk::route::ListView;
using event::HandId;
using event::PlaceKind;

const desk::route::Shape kShape{1280.0, 720.0};

scene::View flange_view(const bench::Bench& bench, const scene::Scene& scene) {
  const auto view = scene::view_named(bench, scene, "flange");
  REQUIRE(view);
  return *view;
}

std::vector<ListedPlace> list_of(const bench::Bench& bench, const scene::Scene& scene, const scene::View& view,
                                 bool mirrored = false) {
  ListView from{scene, bench, view, kShape, HandId::Right, mirrored, nullptr};
  return desk::route::list_places(from);
}

std::string text_of(const std::vector<ListedPlace>& list) {
  std::string text;
  for (const ListedPlace& place : list) {
    text += place.words + " @" + std::to_string(place.at.x_pt) + "," + std::to_string(place.at.y_pt) + "\n";
  }
  return text;
}

bench::Bench holding(const SixBolt& job, event::ThingId thing) {
  bench::Bench bench(job.setup);
  bench.apply(event::make_take(0, HandId::Right, thing, event::Grip::None));
  bench.advance_to(240);
  REQUIRE(bench::sense_hand(bench, HandId::Right).holding == thing);
  return bench;
}

}  // namespace

// danger: the picture and the gestures disagree on where a point lies, and every click goes beside
TEST_CASE("the lens sees what the picture's own projection shows") {
  scene::View view;
  view.target = {0.1F, -0.05F, 0.0F};
  view.round_rad = 0.4F;
  view.shift = {0.2F, -0.1F};
  const hand::Lens lens = desk::route::lens_of(view, kShape);
  const float aspect = static_cast<float>(kShape.width_pt / kShape.height_pt);
  for (const glm::vec3 point : {glm::vec3(0.0F), glm::vec3(0.08F, 0.02F, -0.03F), glm::vec3(-0.2F, 0.1F, 0.1F)}) {
    const auto picture = scene::project(view, aspect, point);
    const auto mine =
        hand::project(lens, {static_cast<double>(point.x), static_cast<double>(point.y), static_cast<double>(point.z)});
    REQUIRE(picture);
    REQUIRE(mine);
    CHECK(mine->x_pt == Approx((static_cast<double>(picture->x) + 1.0) / 2.0 * kShape.width_pt).margin(0.01));
    CHECK(mine->y_pt == Approx((1.0 - static_cast<double>(picture->y)) / 2.0 * kShape.height_pt).margin(0.01));
  }
}

// danger: the list tells which bolt is tight, or which is meant to come first
TEST_CASE("what cannot be seen does not change the list by a byte") {
  SixBolt one = six_bolt();
  SixBolt other = six_bolt();
  // hidden: how tight, how much old locker, which thread is weak
  other.setup.hub.bosses[2].old_locker_nm *= 1.7;
  other.setup.hub.bosses[4].thread_strength_1 = 0.4;
  other.setup.fitted_locker_1 = 2.0;
  other.setup.strength_percentile_1 = 0.2;
  const scene::Workshop shop(one.setup);
  const bench::Bench a(one.setup);
  const bench::Bench b(other.setup);
  const scene::Scene seen_a = shop.compute_scene(a);
  const scene::Scene seen_b = shop.compute_scene(b);
  const scene::View view = flange_view(a, seen_a);
  const std::string text = text_of(list_of(a, seen_a, view));
  CHECK_FALSE(text.empty());
  CHECK(text_of(list_of(b, seen_b, view)) == text);
  CHECK(text_of(list_of(a, seen_a, view)) == text);
}

// danger: the list jumps about, or reading order is broken
TEST_CASE("the list goes by groups, bands of 48 points and the line of writing; out of sight stands last") {
  const SixBolt job = six_bolt();
  const scene::Workshop shop(job.setup);
  const bench::Bench bench = holding(job, job.key);
  const scene::Scene scene = shop.compute_scene(bench);
  const scene::View view = flange_view(bench, scene);
  const std::vector<ListedPlace> list = list_of(bench, scene, view);
  REQUIRE(list.size() > 6);
  for (std::size_t i = 1; i < list.size(); ++i) {
    const ListedPlace& a = list[i - 1];
    const ListedPlace& b = list[i];
    CHECK(a.out_of_sight <= b.out_of_sight);
    if (a.out_of_sight != b.out_of_sight) continue;
    CHECK(a.group <= b.group);
    if (a.group != b.group || a.out_of_sight) continue;
    const double band_a = std::floor(a.at.y_pt / 48.0), band_b = std::floor(b.at.y_pt / 48.0);
    CHECK(band_a <= band_b);
    if (band_a == band_b) CHECK(a.at.x_pt <= b.at.x_pt + 1e-9);
  }
  // all six recesses, by number, and each only once
  std::set<std::string> words;
  for (const ListedPlace& place : list) CHECK(words.insert(place.words).second);
  for (int n = 1; n <= 6; ++n) CHECK(words.count("bolt " + std::to_string(n) + ", recess") == 1);
  // mirrored writing runs the other way within a band
  const std::vector<ListedPlace> back = list_of(bench, scene, view, true);
  CHECK(back.size() == list.size());
  CHECK(text_of(back) != text_of(list));
}

// danger: a key that is walked gets stuck, or leaves the list
TEST_CASE("every place of the list can be walked to, on by on, and steps stay within it") {
  const SixBolt job = six_bolt();
  const scene::Workshop shop(job.setup);
  const bench::Bench bench(job.setup);
  const scene::Scene scene = shop.compute_scene(bench);
  const std::vector<ListedPlace> list = list_of(bench, scene, flange_view(bench, scene));
  std::int32_t at = -1;
  std::set<std::int32_t> met;
  for (std::size_t i = 0; i < list.size(); ++i) met.insert(at = walk(list, at, desk::route::Walk::On));
  CHECK(met.size() == list.size());
  CHECK(walk(list, at, desk::route::Walk::On) == at);
  for (const auto way : {desk::route::Walk::BandUp, desk::route::Walk::BandDown, desk::route::Walk::GroupBack,
                         desk::route::Walk::GroupOn, desk::route::Walk::Back}) {
    for (std::int32_t from = -1; from < static_cast<std::int32_t>(list.size()); ++from) {
      const std::int32_t to = walk(list, from, way);
      CHECK(to >= 0);
      CHECK(to < static_cast<std::int32_t>(list.size()));
    }
  }
  CHECK(walk({}, -1, desk::route::Walk::On) == -1);
}

// danger: twelve points beside a bolt one hits the arm of the rotor, or near the edge of the track the edge
TEST_CASE("a small place close by wins over the band under the pointer; else the band exactly under it") {
  const SixBolt job = six_bolt();
  const bench::Bench bench(job.setup);
  scene::Scene scene;
  const auto add = [&](PlaceKind kind, event::BoltId bolt = event::kNoBolt) {
    scene::ScenePlace place;
    place.thing = bolt == event::kNoBolt ? job.old_rotor : job.wheel;
    place.place = kind;
    place.bolt = bolt;
    scene.places.push_back(place);
    return static_cast<std::int32_t>(scene.places.size()) - 1;
  };
  const std::int32_t head = add(PlaceKind::BoltHead, event::BoltId{3});
  const std::int32_t recess = add(PlaceKind::BoltRecess, event::BoltId{3});
  const std::int32_t track = add(PlaceKind::TrackOuter);
  const std::int32_t edge = add(PlaceKind::Edge);
  const hand::Spot here{400.0, 300.0};
  const auto at = [&](std::int32_t place, double away_pt, float depth = 0.5F) {
    return desk::route::Hit{place, depth, {here.x_pt + away_pt, here.y_pt}, {}};
  };
  const auto first = [&](const std::vector<desk::route::Hit>& hits) {
    const auto choices = desk::route::aim(hits, scene, bench, HandId::Right, here);
    return choices.empty() ? -1 : choices.front().place;
  };
  CHECK(first({at(track, 0.0), at(head, 11.9)}) == head);
  CHECK(first({at(track, 0.0), at(head, 12.1)}) == track);
  CHECK(first({at(edge, 2.0), at(track, 0.0)}) == track);
  CHECK(first({at(edge, 2.0)}) == -1);
  // a finger means the head where it stands over the recess
  CHECK(first({at(recess, 0.0), at(head, 3.0)}) == head);
  // what else lies here comes by the next-here key
  const auto all = desk::route::aim({at(edge, 2.0), at(track, 0.0), at(head, 5.0)}, scene, bench, HandId::Right, here);
  CHECK(all.size() == 3);
  // nearest, then depth, then number: whatever the order they come in
  const std::int32_t second = add(PlaceKind::BoltHead, event::BoltId{4});
  CHECK(first({at(head, 3.0, 0.6F), at(second, 3.0, 0.4F)}) == second);
  CHECK(first({at(second, 3.0, 0.5F), at(head, 3.0, 0.5F)}) == head);
}

// danger: a bit is offered heads it can do nothing with, or only the recesses it ought to go to
TEST_CASE("a hand is offered all that it could try with what it holds, right or wrong") {
  const SixBolt job = six_bolt();
  const bench::Bench bare(job.setup);
  const bench::Bench key = holding(job, job.key);
  const auto place = [&](event::ThingId thing, PlaceKind kind, int bolt = -1) {
    scene::ScenePlace out;
    out.thing = thing;
    out.place = kind;
    if (bolt >= 0) out.bolt = static_cast<event::BoltId>(bolt);
    return out;
  };
  for (int n = 0; n < 6; ++n) {
    CHECK(desk::route::could_try(place(job.wheel, PlaceKind::BoltHead, n), bare, HandId::Right));
    CHECK_FALSE(desk::route::could_try(place(job.wheel, PlaceKind::BoltRecess, n), bare, HandId::Right));
    CHECK(desk::route::could_try(place(job.wheel, PlaceKind::BoltRecess, n), key, HandId::Right));
    CHECK(desk::route::could_try(place(job.wheel, PlaceKind::Hole, n), key, HandId::Right));
  }
  CHECK(
      desk::route::could_try(place(job.old_rotor, PlaceKind::TrackOuter), bare, HandId::Right));  // wrong, and offered
  CHECK_FALSE(desk::route::could_try(place(job.old_rotor, PlaceKind::TrackOuter), key, HandId::Right));
  CHECK(desk::route::could_try(place(job.tray, PlaceKind::Tray), key, HandId::Right));
  scene::ScenePlace shaft = place(job.key, PlaceKind::Body);
  shaft.grip = event::Grip::Shaft;
  CHECK(desk::route::could_try(shaft, key, HandId::Right));
  CHECK_FALSE(desk::route::could_try(shaft, key, HandId::Left));
}

// danger: words and numbers differ between list, label and bench
TEST_CASE("places are named by thing, number, part and where one sees them") {
  const SixBolt job = six_bolt();
  const scene::Workshop shop(job.setup);
  const bench::Bench bench(job.setup);
  const scene::Scene scene = shop.compute_scene(bench);
  const hand::Lens lens = desk::route::lens_of(flange_view(bench, scene), kShape);
  const scene::ScenePlace* head = scene::find_place(scene.places, job.wheel, PlaceKind::BoltHead, event::BoltId{3});
  REQUIRE(head != nullptr);
  CHECK(desk::route::words_of_point(*head, bench, lens, head->middle) == "bolt 4, head");
  const scene::ScenePlace* track = scene::find_place(scene.places, job.old_rotor, PlaceKind::TrackOuter);
  REQUIRE(track != nullptr);
  // the mechanic looks along +z: +x is on the left
  const glm::vec3 centre(track->frame[3]);
  const std::string name = job.setup.things[event::index_of(job.old_rotor)].name;
  CHECK(desk::route::words_of_point(*track, bench, lens, centre + glm::vec3(0.05F, 0.05F, 0.0F)) ==
        name + ", outer face, track, upper left");
  CHECK(desk::route::direction_words(1.0, 0.0) == "right");
  CHECK(desk::route::direction_words(0.0, -1.0) == "top");
  CHECK(desk::route::direction_words(-1.0, 0.0) == "left");
  CHECK(desk::route::direction_words(0.1, 5.0) == "bottom");
}

// danger: a place chosen from the list is another point than the one it says
TEST_CASE("points that are picked come back in the steps of the actions") {
  const SixBolt job = six_bolt();
  const scene::Workshop shop(job.setup);
  const bench::Bench bench(job.setup);
  const scene::Scene scene = shop.compute_scene(bench);
  const scene::ScenePlace* track = scene::find_place(scene.places, job.old_rotor, PlaceKind::TrackOuter);
  REQUIRE(track != nullptr);
  const glm::vec3 point = scene::world_point(*track, {0.072, 0.5});
  const hand::Pointed at = desk::route::pointed_at(*track, bench, point);
  CHECK(static_cast<double>(at.u_um) == Approx(72000.0).margin(1.0));
  CHECK(static_cast<double>(at.v_urad) == Approx(500000.0).margin(20.0));
  const scene::ScenePlace* recess = scene::find_place(scene.places, job.wheel, PlaceKind::BoltRecess, event::BoltId{1});
  REQUIRE(recess != nullptr);
  const hand::Pointed middle = desk::route::pointed_middle(*recess, bench);
  CHECK(middle.off_x_m == Approx(0.0).margin(1e-9));
  CHECK(middle.radius_m > 0.002);
}

// danger: a button of the panel that does nothing without saying so, or something a key cannot
TEST_CASE("the panel's buttons say why they do not work, and its verbs fit the place") {
  const SixBolt job = six_bolt();
  bench::Bench bench(job.setup);
  hand::TwoHands hands(bench, [&](const event::Action& action) { bench.apply(action); });
  const scene::Workshop shop(job.setup);
  const scene::Scene scene = shop.compute_scene(bench);
  const std::vector<ListedPlace> list = list_of(bench, scene, flange_view(bench, scene));
  const auto head =
      std::find_if(list.begin(), list.end(), [](const ListedPlace& p) { return p.words == "bolt 4, head"; });
  REQUIRE(head != list.end());
  const auto free = desk::route::step_panel(&*head, hands, bench, false);
  REQUIRE_FALSE(free.verbs.empty());
  CHECK(free.verbs.front().words == "touch");
  for (const auto& row : free.rows) {
    for (const auto& button : row.buttons) {
      CHECK(button.works == button.why_not.empty());
      if (button.command == desk::CommandId::TapOn) CHECK_FALSE(button.works);
      if (button.command == desk::CommandId::FirstView) CHECK(button.works);
    }
  }
  hands.act_on(head->pointed);
  bench.advance_to(240);
  hands.step();
  REQUIRE(hands.doing(HandId::Right) == hand::HandDoing::At);
  for (const auto& row : desk::route::step_panel(nullptr, hands, bench, false).rows) {
    for (const auto& button : row.buttons) {
      if (button.command != desk::CommandId::TapOn) continue;
      CHECK(button.works);
      CHECK(desk::run(button.command, hands, false, button.count) == hand::Answer::Done);
    }
  }
  CHECK(bench.state().hands[1].turn.target_1 == Approx(base::radians(100.0)).margin(1e-6));  // 20° and four times 20°
}

}  // namespace proofstand::testing
