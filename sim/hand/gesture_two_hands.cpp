#include "sim/hand/gesture_two_hands.h"

#include "sim/hand/gesture_inside.h"

namespace proofstand::hand {

using bench::HandStage;

TwoHands::TwoHands(const bench::Bench& bench, Sink sink, GestureSettings settings)
    : inside_(std::make_unique<Inside>(bench, std::move(sink), settings)) {}
TwoHands::~TwoHands() = default;
TwoHands::TwoHands(TwoHands&&) noexcept = default;
TwoHands& TwoHands::operator=(TwoHands&&) noexcept = default;

void TwoHands::change(const GestureSettings& settings) {
  inside_->settings = settings;
  inside_->pointer.steady_over(settings.tremor_ticks);
}

void TwoHands::see(const Sight& sight) { inside_->sight = sight; }
void TwoHands::press(const Pointer& pointer) { inside_->press(pointer); }
void TwoHands::move(const Pointer& pointer) { inside_->move(pointer); }
void TwoHands::release(const Pointer& pointer) { inside_->release(pointer); }
Answer TwoHands::wheel(double notches_1, bool fine) { return inside_->wheel(notches_1, fine); }
Answer TwoHands::tap(Tap way, bool fine, int count) { return inside_->tap(way, fine, count); }
Answer TwoHands::tip(Tap way, bool fine) { return inside_->tip(way, fine); }
Answer TwoHands::command(HandCommand what, bool fine) { return inside_->command(what, fine); }
void TwoHands::act_on(const Pointed& place, Verb verb) { inside_->go_to(place, verb); }

void TwoHands::focus_lost() {
  inside_->drop_button();
  inside_->swallow_release = false;  // the button goes up where nobody tells us
  inside_->waiting.reset();
  inside_->slacken(inside_->active);
}

void TwoHands::focus_back(bool by_click) { inside_->swallow_press = by_click; }

void TwoHands::forget() {
  inside_->drag = Drag::None;
  inside_->by_click = false;
  inside_->swallow_press = inside_->swallow_release = false;
  inside_->waiting.reset();
  inside_->cords = {};
}

void TwoHands::step() {
  Inside& in = *inside_;
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) in.sync(hand);
  const bool busy = in.hold().stage == HandStage::Busy;
  if (!busy && in.waiting) {
    const WaitingInput input = *in.waiting;
    in.waiting.reset();
    switch (input.kind) {
      case WaitingInput::Kind::Place:
        in.go_to(input.place, input.verb);
        break;
      case WaitingInput::Kind::Nothing:
        in.click_nothing();
        break;
      case WaitingInput::Kind::Tap:
        in.tap(input.way, input.fine, input.count);
        break;
      case WaitingInput::Kind::Tip:
        in.tip(input.way, input.fine);
        break;
      case WaitingInput::Kind::Command:
        in.command(input.command, input.fine);
        break;
    }
  }
  const bench::HoldSight hold = in.hold();
  if (hold.stage != HandStage::Busy) {
    if (in.drag == Drag::Late) in.begin_drag();
    if (in.drag == Drag::Arrive) {
      if (Inside::cord_here(hold)) {
        in.begin_pull(hold);
      } else {
        in.drag = Drag::Idle;  // it was refused
      }
    }
  }
  in.count_drag();
  in.swing.push_back({in.now(), in.swing_rad});
  if (in.swing.size() > 64) in.swing.erase(in.swing.begin());
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) {
    in.spin_on(hand);
    in.flush(hand);
  }
}

event::HandId TwoHands::active() const { return inside_->active; }

HandDoing TwoHands::doing(event::HandId hand) const {
  const bench::HoldSight hold = inside_->hold(hand);
  if (hold.stage == HandStage::Busy) return HandDoing::Busy;
  if (Inside::cord_here(hold) && inside_->cord(hand).drawn) return HandDoing::Work;
  return hold.stage == HandStage::At ? HandDoing::At : HandDoing::Free;
}

CordSight TwoHands::cord(event::HandId hand) const {
  const bench::HoldSight hold = inside_->hold(hand);
  const CordWork& work = inside_->cord(hand);
  CordSight sight;
  sight.drawn = doing(hand) == HandDoing::Work;
  sight.level = hold.turn_level > hold.along_level ? hold.turn_level : hold.along_level;
  if (sight.drawn) {
    sight.lead_rad = work.turn_rad - (hold.hold.twirls ? work.trail_rad : hold.hand_turn_rad);
    sight.lead_m = work.along_m - hold.hand_along_m;
  }
  sight.knotted = bent(hold, sight.lead_rad);
  return sight;
}

bool TwoHands::pulling_by_button() const {
  switch (inside_->drag) {
    case Drag::Pull:
    case Drag::Along:
    case Drag::Stroke:
    case Drag::Arrive:
    case Drag::Tip:
    case Drag::Drops:
      return true;
    default:
      return false;
  }
}

}  // namespace proofstand::hand
