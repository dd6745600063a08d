#include "sim/desk/route/step_panel_model.h"

#include "sim/bench/hold_sight.h"

namespace proofstand::desk::route {
namespace {

using hand::Verb;
using Id = CommandId;

// what a click would do there; the words are looked up in the catalogue by whoever shows them
std::vector<VerbButton> verbs_for(const ListedPlace& chosen, const hand::TwoHands& hands, const bench::Bench& bench) {
  const bench::HoldSight hold = bench::see_hold(bench, hands.active());
  const hand::Pointed& at = chosen.pointed;
  const bool holds = hold.holding != event::kNoThing;
  if (chosen.out_of_sight) return {{Verb::Natural, "show"}};
  if (holds && at.thing == hold.holding) return {{Verb::Natural, "hold it here"}};
  if (at.place == event::PlaceKind::GloveBox) {
    return {{Verb::Natural, hold.gloved ? "take the glove off" : "put a glove on"}, {Verb::Touch, "touch"}};
  }
  if (holds) return {{Verb::Natural, "bring it there"}, {Verb::Near, "hold near"}};
  const bench::ThingKind kind = bench.setup().things[event::index_of(at.thing)].kind;
  const bool wheel = kind == bench::ThingKind::Wheel && at.place == event::PlaceKind::Axle;
  if (wheel) return {{Verb::Natural, "take in both hands"}, {Verb::Touch, "touch"}, {Verb::Near, "hold near"}};
  if (bench::see_loose(bench, at.thing)) {
    return {{Verb::Natural, "take"}, {Verb::Touch, "touch"}, {Verb::Near, "hold near"}};
  }
  return {{Verb::Natural, "touch"}, {Verb::Near, "hold near"}};
}

}  // namespace

StepPanel step_panel(const ListedPlace* chosen, const hand::TwoHands& hands, const bench::Bench& bench,
                     bool look_mode) {
  StepPanel panel;
  if (chosen != nullptr) panel.verbs = verbs_for(*chosen, hands, bench);
  const auto row = [&](const char* words, std::vector<TapButton> buttons) {
    for (TapButton& button : buttons) {
      button.why_not = why_not(button.command, hands, bench, look_mode);
      button.works = button.why_not.empty();
    }
    panel.rows.push_back({words, std::move(buttons)});
  };
  const auto tap = [](Id id, const char* words, int count = 1) {
    TapButton button;
    button.command = id;
    button.count = count;
    button.words = words;
    return button;
  };
  row("cord: back is anti-clockwise", {tap(Id::TapBack, "much back", 4), tap(Id::TapBack, "back"),
                                       tap(Id::Slack, "slack"), tap(Id::TapOn, "on"), tap(Id::TapOn, "much on", 4)});
  row("in and out",
      {tap(Id::TapOut, "much out", 4), tap(Id::TapOut, "out"), tap(Id::TapIn, "in"), tap(Id::TapIn, "much in", 4)});
  row("press", {tap(Id::Softer, "softer"), tap(Id::Harder, "harder")});
  row("tip", {tap(Id::TipLeft, "left"), tap(Id::TipRight, "right"), tap(Id::TipUp, "up"), tap(Id::TipDown, "down")});
  row("hand", {tap(Id::Keep, "keep"), tap(Id::NextGrip, "grip"), tap(Id::FreshGrip, "fresh grip"),
               tap(Id::Leave, "leave"), tap(Id::Throw, "throw")});
  row("what it holds", {tap(Id::TurnOver, "turn over"), tap(Id::PassOver, "pass"), tap(Id::PutBack, "put back"),
                        tap(Id::Lamp, "lamp"), tap(Id::Glove, "glove")});
  row("look", {tap(Id::LookLeft, "left"), tap(Id::LookRight, "right"), tap(Id::LookUp, "up"), tap(Id::LookDown, "down"),
               tap(Id::Nearer, "nearer"), tap(Id::Farther, "farther"), tap(Id::Frame, "hands"),
               tap(Id::FirstView, "first view"), tap(Id::LookClose, "close")});
  return panel;
}

}  // namespace proofstand::desk::route
