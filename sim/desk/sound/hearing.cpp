#include "sim/desk/sound/hearing.h"

#include <algorithm>
#include <cmath>

#include "sim/base/math.h"
#include "sim/bench/probe.h"

namespace proofstand::desk {
namespace {

constexpr double kBreaks_nm = 1.0;  // a fastener that stood against less gives way without a sound
constexpr double kMoved_rad = 0.01;
constexpr double kEvery_rad = 0.5;  // a lasting sound is told again after so much turning
constexpr double kDrag_nm = 0.08;   // of a patch
constexpr double kCrossedDrag_nm = 0.25;
constexpr double kRatchet_m = 5e-6;

bool newly(bool was, bool is) { return is && !was; }

float loud(double value, double full) { return static_cast<float>(base::clamp_1(value / full, 0.15, 1.0)); }

}  // namespace

void Hearing::forget() {
  ears_ = {};
  awake_ = false;
}

std::vector<Heard> Hearing::listen(const bench::Bench& bench) {
  std::vector<Heard> heard;
  if (!awake_) {
    events_heard_ = bench.events().size();
    for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) {
      ears_[static_cast<std::size_t>(hand)].sense = bench::sense_hand(bench, hand);
    }
    rub_turns_1_ = bench::see_wheel_angle_rad(bench) / base::kTwoPi;
    awake_ = true;
    return heard;
  }
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) listen_to_hand(bench, hand, heard);
  listen_to_room(bench, heard);
  return heard;
}

void Hearing::listen_to_hand(const bench::Bench& bench, event::HandId hand, std::vector<Heard>& heard) {
  Ear& ear = ears_[static_cast<std::size_t>(hand)];
  const bench::HandSense now = bench::sense_hand(bench, hand);
  const bench::HandSense& was = ear.sense;
  const bool same_place = was.stage == bench::HandStage::At && now.stage == bench::HandStage::At;
  if (!same_place) {
    ear.pull_out_nm = 0.0;
    ear.cracked = false;
    ear.said_rad = now.fastener_rad;
  } else {
    if (now.clicks > was.clicks) heard.push_back({Sound::Click, hand, 1.0F});
    if (now.slips > was.slips) heard.push_back({Sound::Scrape, hand, 1.0F});
    if (newly(was.home, now.home)) heard.push_back({Sound::DullTap, hand, 0.5F});
    if (newly(was.dropped, now.dropped)) heard.push_back({Sound::Tick, hand, 0.7F});
    if (newly(was.dead_stop, now.dead_stop)) heard.push_back({Sound::Tick, hand, 0.6F});
    listen_to_pull(bench, hand, now, ear, heard);
  }
  if (now.holding != event::kNoThing && now.grip == event::Grip::Ratchet) {
    const double scale_m = bench::see_scale_m(bench, now.holding);
    // the ratchet slips once the spindle stands while the fingers still turn
    if (same_place && std::fabs(now.turn_rad - was.turn_rad) > kMoved_rad &&
        std::fabs(scale_m - ear.scale_m) < kRatchet_m) {
      heard.push_back({Sound::Tick, hand, 0.4F});
    }
    ear.scale_m = scale_m;
  }
  ear.sense = now;
}

void Hearing::listen_to_pull(const bench::Bench& bench, event::HandId hand, const bench::HandSense& now, Ear& ear,
                             std::vector<Heard>& heard) const {
  const double moved_rad = now.fastener_rad - ear.sense.fastener_rad;
  if (std::fabs(moved_rad) < 1e-9) {
    if (now.lead_rad < 0.0) ear.pull_out_nm = std::max(ear.pull_out_nm, now.torque_nm);
    return;
  }
  if (moved_rad < 0.0 && !ear.cracked && ear.pull_out_nm > kBreaks_nm) {
    heard.push_back({Sound::Crack, hand, loud(ear.pull_out_nm, 6.0)});
    ear.cracked = true;
    ear.said_rad = now.fastener_rad;
    return;
  }
  if (std::fabs(now.fastener_rad - ear.said_rad) < kEvery_rad) return;
  const std::vector<bench::PullProbe> pulls = bench::probe_pulls(bench);
  const auto here = std::find_if(pulls.begin(), pulls.end(), [&](const bench::PullProbe& p) { return p.hand == hand; });
  if (here == pulls.end()) return;
  const bool askew = bench::see_bolt(bench, here->bolt).askew;
  if (moved_rad < 0.0 && ear.cracked && now.torque_nm > kDrag_nm) {
    heard.push_back({Sound::Creak, hand, loud(now.torque_nm, 2.0)});
  } else if (moved_rad > 0.0 && now.caught && askew && now.torque_nm > kCrossedDrag_nm) {
    heard.push_back({Sound::Grating, hand, loud(now.torque_nm, 2.0)});
  } else if (moved_rad > 0.0 && now.caught && !now.bears && now.torque_nm > kDrag_nm) {
    heard.push_back({Sound::Hum, hand, loud(now.torque_nm, 1.0)});
  } else {
    return;
  }
  ear.said_rad = now.fastener_rad;
}

void Hearing::listen_to_room(const bench::Bench& bench, std::vector<Heard>& heard) {
  // a rewind may have left fewer
  events_heard_ = std::min(events_heard_, bench.events().size());
  for (; events_heard_ < bench.events().size(); ++events_heard_) {
    const event::Record& record = bench.events()[events_heard_];
    const std::string& name = bench.vocabulary().kinds[record.kind].name;
    if (name == "applied") heard.push_back({Sound::Drip, std::nullopt, 0.5F});
    if (name == "put_down" || name == "laid_down") heard.push_back({Sound::DullTap, std::nullopt, 0.35F});
    if (name == "rotor_eased") heard.push_back({Sound::Tick, std::nullopt, 0.5F});
  }
  const double turns_1 = bench::see_wheel_angle_rad(bench) / base::kTwoPi;
  if (bench::see_wheel_turning(bench) && bench.state().wheel.rub_share_1 > 0.0) {
    if (std::fabs(turns_1 - rub_turns_1_) >= 1.0) {
      heard.push_back({Sound::Hiss, std::nullopt, loud(bench.state().wheel.rub_share_1, 0.5)});
      rub_turns_1_ = turns_1;
    }
  } else {
    rub_turns_1_ = turns_1;
  }
}

}  // namespace proofstand::desk
