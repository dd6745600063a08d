// One small task by mouse, by keys and by panel: key to bolt 4, press, break loose, twirl two turns out, put back. What
// a person does differently with each must not be different work.
#include <algorithm>
#include <functional>
#include <set>

#include "tests/unit/hand/gesture_rig.h"

namespace proofstand::testing {
namespace {

const BoltId kFour = bolt_at(3);

// bolts that fingers can twirl out by the key's shaft once they are loose
SixBolt easy_bolts() {
  SixBolt job = nearly_tight_bolts();
  for (auto& boss : job.setup.hub.bosses) boss.old_locker_nm = 0.0;
  return job;
}

std::string aim_words(const event::Action& action, double from) {
  const bool later = static_cast<double>(action.numbers[1]) > from;
  return std::string(event::spec_of(action.kind).name) + (later ? " up" : " down");
}

// without ticks; between two other actions each axis and sense once, whatever the number of aims
std::vector<std::string> normal_form(const std::vector<event::Action>& actions) {
  std::vector<std::string> form;
  std::set<std::string> run;
  const auto close_run = [&] {
    for (const std::string& aim : run) form.push_back(aim);
    run.clear();
  };
  for (const event::Action& action : actions) {
    if (action.kind == ActionKind::AimTurn || action.kind == ActionKind::AimAlong) {
      run.insert(aim_words(action, 0.0));
      continue;
    }
    close_run();
    std::string words(event::spec_of(action.kind).name);
    for (const std::int64_t number : action.numbers) words += " " + std::to_string(number);
    form.push_back(words);
  }
  close_run();
  return form;
}

std::vector<std::string> kinds_of_events(const bench::Bench& bench) {
  std::vector<std::string> kinds;
  for (const event::Record& record : bench.events()) kinds.push_back(bench.vocabulary().kinds[record.kind].name);
  return kinds;
}

bool turned_by(const HandsRig& rig, double least_rad) { return rig.sense(kRight).fastener_rad < -least_rad; }

void until(HandsRig& rig, const std::function<bool()>& done, const std::function<void()>& each, int most = 400) {
  for (int i = 0; i < most && !done(); ++i) {
    each();
    rig.frames_s(0.1);
  }
  REQUIRE(done());
}

void hold_wheel(HandsRig& rig) {
  rig.bench.apply(event::make_touch(rig.bench.tick(), kLeft, rig.job.wheel, PlaceKind::Tyre, event::kNoBolt, 0, 0));
  rig.settle();
}

void by_mouse(HandsRig& rig) {
  rig.click(rig.place(rig.job.key, PlaceKind::Body));
  rig.settle();
  rig.click(rig.recess(kFour));
  rig.settle();
  rig.look_at(rig.bolt_point(kFour), 1.0);
  rig.press_home(kFour);
  double angle = 0.0;
  until(
      rig, [&] { return turned_by(rig, 0.35); },
      [&] {
        rig.to(rig.round(kFour, 120.0, angle -= 5.0));
        rig.frame();
      });
  rig.up();
  rig.frames_s(0.3);
  rig.click(rig.place(rig.job.key, PlaceKind::Body, event::kNoBolt, Grip::Shaft));
  rig.settle();
  rig.down(rig.round(kFour, 120.0, 0.0));
  angle = 0.0;
  until(
      rig, [&] { return turned_by(rig, 0.35 + 2.0 * base::kTwoPi); },
      [&] {
        rig.to(rig.round(kFour, 120.0, angle -= 40.0));
        rig.frame();
      });
  rig.up();
  rig.frames_s(0.3);
  rig.click_nothing();
  rig.settle();
  rig.click(rig.place(rig.job.tray, PlaceKind::Tray));
  rig.settle();
}

void by_taps(HandsRig& rig, int shaft_taps_at_once) {
  rig.hands.act_on(rig.place(rig.job.key, PlaceKind::Body));
  rig.settle();
  rig.hands.act_on(rig.recess(kFour));
  rig.settle();
  rig.hands.tap(Tap::Up, false, 4);
  rig.hands.tap(Tap::Up, false, 4);
  rig.frames_s(0.7);
  until(
      rig, [&] { return turned_by(rig, 0.35); }, [&] { rig.hands.tap(Tap::Left, false); });
  rig.hands.command(HandCommand::Escape);
  rig.frames_s(0.3);
  for (int i = 0; i < 4 && rig.sense(kRight).grip != Grip::Shaft; ++i) {
    rig.hands.act_on(rig.place(rig.job.key, PlaceKind::Body, event::kNoBolt, Grip::Shaft));
    rig.settle();
  }
  until(
      rig, [&] { return turned_by(rig, 0.35 + 2.0 * base::kTwoPi); },
      [&] { rig.hands.tap(Tap::Left, false, shaft_taps_at_once); });
  rig.hands.command(HandCommand::Escape);
  rig.frames_s(0.3);
  rig.hands.command(HandCommand::Escape);
  rig.settle();
  rig.hands.act_on(rig.place(rig.job.tray, PlaceKind::Tray));
  rig.settle();
}

}  // namespace

// danger: whoever works without a mouse does other work, or longer, and is marked for it
TEST_CASE("one task by mouse, by keys and by panel is the same work with the same events") {
  HandsRig mouse(easy_bolts());
  HandsRig keys(easy_bolts());
  HandsRig panel(easy_bolts());
  for (HandsRig* rig : {&mouse, &keys, &panel}) hold_wheel(*rig);
  by_mouse(mouse);
  by_taps(keys, 1);
  by_taps(panel, 4);  // the panel's "much back"
  const std::vector<std::string> form = normal_form(mouse.actions);
  CHECK(form.size() >= 8);
  CHECK(normal_form(keys.actions) == form);
  CHECK(normal_form(panel.actions) == form);
  CHECK(kinds_of_events(keys.bench) == kinds_of_events(mouse.bench));
  CHECK(kinds_of_events(panel.bench) == kinds_of_events(mouse.bench));
}

// danger: how long a key is held, or by which code a button goes, changes what is recorded
TEST_CASE("the same taps at the same ticks are the same actions to the byte") {
  HandsRig a(easy_bolts());
  HandsRig b(easy_bolts());
  for (HandsRig* rig : {&a, &b}) {
    hold_wheel(*rig);
    by_taps(*rig, 1);
  }
  REQUIRE(a.actions.size() == b.actions.size());
  for (std::size_t i = 0; i < a.actions.size(); ++i) {
    CHECK(a.actions[i].tick == b.actions[i].tick);
    CHECK(a.actions[i].kind == b.actions[i].kind);
    CHECK(a.actions[i].numbers == b.actions[i].numbers);
  }
}

// danger: the pointer or the list treats one bolt, one side or one rag otherwise than another, and so gives away which
TEST_CASE("any two bolts, two faces and two rags take the same inputs and differ in their numbers alone") {
  const auto shape = [](BoltId bolt, bool printed, bool dirty) {
    HandsRig rig(six_bolt());
    rig.hands.act_on(rig.place(dirty ? rig.job.dirty_rag : rig.job.clean_rag, PlaceKind::Body));
    rig.settle();
    rig.hands.act_on(rig.place(rig.job.old_rotor, printed ? PlaceKind::TrackOuter : PlaceKind::TrackInner));
    rig.settle();
    rig.hands.tap(Tap::Right, false);
    rig.frames_s(0.5);
    rig.hands.command(HandCommand::Escape);
    rig.hands.command(HandCommand::Escape);
    rig.settle();
    rig.hands.command(HandCommand::PutBack);
    rig.settle();
    rig.hands.act_on(rig.place(rig.job.key, PlaceKind::Body));
    rig.settle();
    rig.hands.act_on(rig.recess(bolt));
    rig.settle();
    rig.hands.tap(Tap::Up, false, 8);
    rig.frames_s(0.5);
    std::string kinds;
    for (const event::Action& action : rig.actions) kinds += std::string(event::spec_of(action.kind).name) + " ";
    return kinds;
  };
  const std::string one = shape(bolt_at(0), true, false);
  CHECK(shape(bolt_at(4), true, false) == one);
  CHECK(shape(bolt_at(0), false, false) == one);
  CHECK(shape(bolt_at(2), true, true) == one);
}

}  // namespace proofstand::testing
