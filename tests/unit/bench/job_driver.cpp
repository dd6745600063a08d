#include "tests/unit/bench/job_driver.h"

#include "sim/base/math.h"
#include "sim/base/number_text.h"

namespace proofstand::testing {
namespace {

std::int64_t micro(double x) { return static_cast<std::int64_t>(x * 1e6 + (x < 0.0 ? -0.5 : 0.5)); }
std::int64_t micro_rad(double angle_deg) { return micro(base::radians(angle_deg)); }

}  // namespace

bench::Refusal JobDriver::take(HandId hand, event::ThingId thing, Grip grip) {
  const bench::Refusal refusal = bench.apply(event::make_take(bench.tick(), hand, thing, grip));
  settle(hand);
  return refusal;
}

bench::Refusal JobDriver::bring(HandId hand, event::ThingId thing, PlaceKind place, BoltId bolt, double tilt_deg) {
  const bench::Refusal refusal =
      bench.apply(event::make_bring(bench.tick(), hand, thing, place, bolt, 0, 0, micro_rad(tilt_deg), 0));
  settle(hand);
  return refusal;
}

bench::Refusal JobDriver::touch(HandId hand, event::ThingId thing, PlaceKind place, BoltId bolt, double radius_mm) {
  const bench::Refusal refusal =
      bench.apply(event::make_touch(bench.tick(), hand, thing, place, bolt, micro(radius_mm * 1e-3), 0));
  settle(hand);
  return refusal;
}

bench::Refusal JobDriver::plain(HandId hand, event::ActionKind kind) {
  const bench::Refusal refusal = bench.apply(event::make_plain(bench.tick(), kind, hand));
  settle(hand);
  return refusal;
}

bench::Refusal JobDriver::grip(HandId hand, Grip grip) {
  const bench::Refusal refusal = bench.apply(event::make_grip(bench.tick(), hand, grip));
  settle(hand);
  return refusal;
}

bench::Refusal JobDriver::turn_to(HandId hand, double angle_deg) {
  return bench.apply(event::make_aim_turn(bench.tick(), hand, micro_rad(angle_deg)));
}

bench::Refusal JobDriver::press_to(HandId hand, double depth_mm) {
  return bench.apply(event::make_aim_along(bench.tick(), hand, micro(depth_mm * 1e-3)));
}

void JobDriver::settle(HandId hand) {
  const auto& state = bench.state().hands[static_cast<std::size_t>(hand)];
  while (state.stage == bench::HandStage::Busy && !bench.over()) bench.advance_to(bench.tick() + 1);
}

void JobDriver::draw_on(HandId hand, double from_deg, double to_deg, double rate_deg_s) {
  const double step_deg = rate_deg_s * 4.0 / 240.0 * (to_deg < from_deg ? -1.0 : 1.0);
  for (double at = from_deg; step_deg > 0.0 ? at < to_deg : at > to_deg; at += step_deg) {
    turn_to(hand, at);
    bench.advance_to(bench.tick() + 4);
  }
  turn_to(hand, to_deg);
}

void JobDriver::seat_tool(event::ThingId tool, BoltId bolt, Grip how) {
  const event::ThingId held = bench.state().hands[1].holding;
  if (held != tool) {
    if (held != event::kNoThing) plain(kRight, event::ActionKind::PutBack);
    take(kRight, tool, how);
  } else if (bench.state().hands[1].grip != how) {
    grip(kRight, how);
  }
  bring(kRight, job.wheel, PlaceKind::BoltRecess, bolt);
  press_to(kRight, 30.0);
  wait_s(0.6);
}

void JobDriver::crack(BoltId bolt) {
  seat_tool(job.key, bolt);
  turn_to(kRight, -100.0);
  for (int i = 0; i < 240 * 4 && sense(kRight).fastener_rad > -0.3; ++i) bench.advance_to(bench.tick() + 1);
  plain(kRight, event::ActionKind::Slack);
  wait_s(0.2);
  plain(kRight, event::ActionKind::Leave);
}

void JobDriver::run_out(BoltId bolt) {
  seat_tool(job.driver, bolt, Grip::Shaft);
  turn_to(kRight, -100.0);
  for (int i = 0; i < 240 * 40 && hole(event::index_of(bolt)).bolt != event::kNoThing; ++i) {
    bench.advance_to(bench.tick() + 1);
  }
}

void JobDriver::start(BoltId bolt, event::ThingId thing) {
  take(kRight, thing);
  bring(kRight, job.wheel, PlaceKind::Hole, bolt, 0.5);
  turn_to(kRight, -100.0);
  for (int i = 0; i < 240 * 5 && !sense(kRight).dropped; ++i) bench.advance_to(bench.tick() + 1);
  plain(kRight, event::ActionKind::Slack);
  wait_s(0.1);
  turn_to(kRight, 150.0);
  for (int i = 0; i < 240 * 10 && sense(kRight).fastener_rad < 2.0 * base::kTwoPi; ++i) {
    bench.advance_to(bench.tick() + 1);
  }
  plain(kRight, event::ActionKind::Slack);
  wait_s(0.2);
  plain(kRight, event::ActionKind::Leave);
}

void JobDriver::run_in(BoltId bolt, double turns) {
  seat_tool(job.driver, bolt, Grip::Shaft);
  turn_to(kRight, 100.0);
  for (int i = 0; i < 240 * 40 && sense(kRight).fastener_rad < turns * base::kTwoPi; ++i) {
    bench.advance_to(bench.tick() + 1);
  }
  plain(kRight, event::ActionKind::Slack);
  wait_s(0.2);
  plain(kRight, event::ActionKind::Leave);
}

bool JobDriver::click(BoltId bolt, double rate_deg_s) {
  seat_tool(job.click_driver, bolt);
  const double step_deg = rate_deg_s / 240.0;
  double at = 0.0;
  for (int i = 0; i < 240 * 30 && sense(kRight).clicks == 0; ++i) {
    at += step_deg;
    turn_to(kRight, at);
    bench.advance_to(bench.tick() + 1);
    if (sense(kRight).reach_left_rad < 0.02) {
      plain(kRight, event::ActionKind::Regrip);
      press_to(kRight, 30.0);
      wait_s(0.6);
      at = 0.0;
    }
  }
  const bool clicked = sense(kRight).clicks > 0;
  for (int i = 0; i < 36; ++i) {  // what a hand still draws on before it feels the click
    at += step_deg;
    turn_to(kRight, at);
    bench.advance_to(bench.tick() + 1);
  }
  plain(kRight, event::ActionKind::Slack);
  wait_s(0.3);
  plain(kRight, event::ActionKind::Leave);
  return clicked;
}

void JobDriver::set_driver(double setting_nm) {
  const event::ThingId held = bench.state().hands[1].holding;
  if (held != job.click_driver) {
    if (held != event::kNoThing) plain(kRight, event::ActionKind::PutBack);
    take(kRight, job.click_driver, Grip::Setting);
  } else {
    grip(kRight, Grip::Setting);
  }
  press_to(kRight, -5.0);
  wait_s(0.2);
  const bool down = bench::see_setting_nm(bench, job.click_driver) > setting_nm;
  turn_to(kRight, down ? -60.0 : 60.0);
  const auto wrong = [&] {
    const double off = bench.state().tools[2].setting_nm - setting_nm;
    return down ? off > 0.03 : off < -0.03;
  };
  for (int i = 0; i < 240 * 30 && wrong(); ++i) bench.advance_to(bench.tick() + 1);
  plain(kRight, event::ActionKind::Slack);
  press_to(kRight, 5.0);
  wait_s(0.3);
  press_to(kRight, 0.0);
  wait_s(0.2);
}

void JobDriver::off_with_old_rotor() {
  touch(kLeft, job.wheel, PlaceKind::Tyre);
  for (std::size_t i : {0u, 3u, 1u, 4u, 2u, 5u}) crack(bolt_at(i));
  for (std::size_t i = 0; i < 6; ++i) run_out(bolt_at(i));
  plain(kRight, event::ActionKind::PutBack);
  plain(kLeft, event::ActionKind::Leave);
  take(kLeft, job.old_rotor, Grip::Edge);
  plain(kLeft, event::ActionKind::PutBack);
}

std::vector<event::Record> JobDriver::of_kind(std::string_view kind) const {
  std::vector<event::Record> found;
  const auto id = bench.vocabulary().find_kind(kind);
  for (const event::Record& record : bench.events()) {
    if (id && record.kind == *id) found.push_back(record);
  }
  return found;
}

double JobDriver::field(const event::Record& record, std::string_view name) const {
  const auto index = event::Vocabulary::find_field(bench.vocabulary().kinds[record.kind], name);
  return index ? record.values[*index] : -1e9;
}

bool JobDriver::knows(const event::Record& record, std::string_view name) const {
  const auto index = event::Vocabulary::find_field(bench.vocabulary().kinds[record.kind], name);
  return index && record.knows(*index);
}

std::string JobDriver::events_text() const {
  std::string text;
  for (const event::Record& record : bench.events()) {
    const event::Kind& kind = bench.vocabulary().kinds[record.kind];
    text += base::text_from_int(record.tick) + " " + kind.name;
    for (std::size_t i = 0; i < kind.fields.size(); ++i) {
      if (!record.knows(i)) continue;
      text += " " + kind.fields[i].name + "=";
      const bool choice = kind.fields[i].type == event::FieldType::Choice;
      text += choice ? kind.fields[i].choices[static_cast<std::size_t>(record.values[i])]
                     : base::text_from_double(record.values[i]);
    }
    text += "\n";
  }
  return text;
}

}  // namespace proofstand::testing
