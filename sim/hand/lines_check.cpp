// Lines about measuring, looking and the job card.
#include "sim/base/number_text.h"
#include "sim/hand/instructions.h"
#include "sim/hand/pulling.h"

namespace proofstand::hand {
namespace {

constexpr double kRead_s = 1.3;  // an instrument closed so long has been read
constexpr double kLook_s = 1.3;
constexpr double kDefaultRadius_m = 0.072;
constexpr double kDialLead_m = 0.0003;

Readings& readings_of(Work& work, ThingId rotor) {
  for (Readings& known : work.memory.readings) {
    if (known.rotor == rotor) return known;
  }
  work.memory.readings.push_back({rotor, 0.0, 0.0});
  return work.memory.readings.back();
}

// a length as it is written on a card: as many decimals as the instrument shows
std::string card_mm(double length_m, int decimals) { return base::text_fixed(length_m * 1000.0, decimals); }

// what locks the bolts, in the card's own word: nothing, a patch, or the locker that was put on
std::string locking_words(Work& work, event::CardEntryId entry) {
  const ThingId bolt = bench::see_bolt(*work.bench, static_cast<BoltId>(0)).thing;
  const std::size_t which =
      work.memory.locker_used ? 2 : (bolt != kNoThing && bench::see_patch(*work.bench, bolt) ? 1 : 0);
  const bench::CardEntryPart& part = work.setup().card[event::index_of(entry)];
  return which < part.words.size() ? work.setup().card_words[part.words[which]] : std::string();
}

// what was found, in the card's own word: keep, replace, stop and report
std::string verdict_words(Work& work, const Instruction& line) {
  const Readings known = readings_of(work, line.thing);
  const double stamp_m = bench::see_stamp_m(*work.bench, line.thing);
  const bool thin = known.least_m > 0.0 && known.least_m < stamp_m;
  const bool bent = line.length_m && work.memory.runout_read && work.memory.runout_m > *line.length_m;
  const std::size_t which = work.memory.ruined_seen ? 2 : (thin || bent ? 1 : 0);
  const bench::CardEntryPart& part = work.setup().card[event::index_of(*line.entry)];
  return which < part.words.size() ? work.setup().card_words[part.words[which]] : std::string();
}

// thimble or ratchet turned until it stands: the ratchet slips by itself, the thimble is screwed as far as told
Task close_jaws(Work& work, HandId hand, ThingId instrument, bool squeezing) {
  Twirl plan;
  const base::Tick began = work.now();
  double shown = bench::see_scale_m(*work.bench, instrument);
  base::Tick still_since = began;
  plan.share_1 = squeezing ? 1.0 : 0.6;
  plan.until = [&work, instrument, began, shown, still_since]() mutable {
    const double now_m = bench::see_scale_m(*work.bench, instrument);
    const double change = now_m > shown ? now_m - shown : shown - now_m;
    if (change > 2e-6) {
      shown = now_m;
      still_since = work.now();
    }
    return work.now() - began > 48 && work.now() - still_since > 60;
  };
  co_await twirl(work, hand, plan);
}

}  // namespace

Task do_measure(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const ThingId held = work.sense(hand).holding;
  const ThingId tool = line.tool != kNoThing ? line.tool : held;
  if (tool == kNoThing) co_await work.give_up("no instrument is named", "add \"with the micrometer\"");
  const bool micrometer = work.kind(tool) == bench::ThingKind::Micrometer;
  co_await draw_away(work, hand);
  co_await take(work, hand, tool, Grip::None);
  if (micrometer) co_await grip_at(work, hand, line.says(Say::Squeezing) ? Grip::Thimble : Grip::Ratchet);
  Pose pose;
  pose.thing = line.thing;
  pose.place = PlaceKind::TrackOuter;
  pose.u_um = micro(line.length_m.value_or(kDefaultRadius_m));
  pose.v_urad = micro(line.angle_rad.value_or(0.0));
  co_await bring(work, hand, pose);
  co_await close_jaws(work, hand, tool, line.says(Say::Squeezing));
  co_await work.pause_s(kRead_s);
  const double read_m = bench::see_scale_m(*work.bench, tool);
  Readings& known = readings_of(work, line.thing);
  if (known.least_m == 0.0 || read_m < known.least_m) known.least_m = read_m;
  co_await draw_away(work, hand);
}

Task do_measure_across(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const ThingId tool = line.tool != kNoThing ? line.tool : work.sense(hand).holding;
  if (tool == kNoThing) co_await work.give_up("no instrument is named", "add \"with the vernier\"");
  co_await draw_away(work, hand);
  co_await take(work, hand, tool, Grip::None);
  Pose pose;
  pose.thing = line.thing;
  pose.place = PlaceKind::Edge;
  co_await bring(work, hand, pose);
  co_await close_jaws(work, hand, tool, false);
  co_await work.pause_s(kRead_s);
  readings_of(work, line.thing).across_m = bench::see_scale_m(*work.bench, tool);
  co_await draw_away(work, hand);
}

Task do_read_runout(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const HandId other = Work::other(hand);
  const ThingId tool = line.tool != kNoThing ? line.tool : work.sense(hand).holding;
  if (tool == kNoThing) co_await work.give_up("no dial is named", "add \"with the dial gauge\"");
  work.memory.hold.kind = StandingHold::Kind::None;
  co_await draw_away(work, other);
  co_await take(work, hand, tool, Grip::None);
  Pose pose;
  pose.thing = line.thing;
  pose.place = bench::see_printed_out(*work.bench) ? PlaceKind::TrackOuter : PlaceKind::TrackInner;
  pose.u_um = micro(line.length_m.value_or(kDefaultRadius_m));
  co_await bring(work, hand, pose);
  work.act(event::make_aim_along(0, hand, micro(0.001 + kDialLead_m)));
  co_await work.pause(120);
  co_await draw_away(work, hand);
  Pose tyre;
  tyre.thing = owner_of(work, PlaceKind::Tyre, kNoThing);
  tyre.place = PlaceKind::Tyre;
  co_await touch(work, other, tyre);
  co_await grip_at(work, other, Grip::Fingers);
  const double turns = line.angle_rad.value_or(base::kTwoPi * 1.05) / base::kTwoPi;
  Twirl plan;
  plan.until = [&work, tool, turns] { return bench::see_dial_turns_1(*work.bench, tool) >= turns; };
  co_await twirl(work, other, plan);
  work.memory.runout_m = bench::see_dial_sweep_m(*work.bench, tool);
  work.memory.runout_read = true;
  co_await draw_away(work, other);
  co_await take(work, hand, tool, Grip::None);
  co_await empty(work, hand);
}

Task do_look_at(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const ThingId tool = line.tool != kNoThing ? line.tool : work.sense(hand).holding;
  if (tool == kNoThing) co_await work.give_up("nothing to look with is named", "add \"with the lamp\"");
  co_await take(work, hand, tool, Grip::None);
  Pose pose;
  pose.thing = owner_of(work, line.place, line.thing);
  pose.place = line.place;
  pose.bolt = line.bolt;
  if (line.place == PlaceKind::TrackOuter || line.place == PlaceKind::TrackInner) pose.u_um = micro(kDefaultRadius_m);
  co_await bring(work, hand, pose);
  co_await work.pause_s(line.time_s.value_or(kLook_s));
  if (line.place == PlaceKind::BoltRecess && bench::see_bolt(*work.bench, line.bolt).recess_ruined) {
    work.memory.ruined_seen = true;
  }
  co_await draw_away(work, hand);
}

Task do_pick_clean(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const ThingId tool = line.tool != kNoThing ? line.tool : bench::first_of(work.setup(), bench::ThingKind::Pick);
  if (tool == kNoThing) co_await work.give_up("there is no pick here", "leave this line out");
  co_await take(work, hand, tool, Grip::None);
  Pose pose;
  pose.thing = owner_of(work, line.place, line.thing);
  pose.place = line.place;
  pose.bolt = line.bolt;
  co_await bring(work, hand, pose);
  for (int stroke = 0; stroke < 24; ++stroke) {
    const bool out = stroke % 2 == 0;
    work.act(event::make_aim_face(0, hand, out ? 6000 : 0, 0, 4000));
    co_await work.pause(24);
    if (stroke >= 7 && line.place == PlaceKind::BoltRecess && !bench::see_bolt(*work.bench, line.bolt).recess_dirty) {
      break;
    }
  }
  co_await work.pause(base::kTicksPerSecond / 4);
  co_await draw_away(work, hand);
}

Task do_write(Work& work, const Instruction& line) {
  work.act(event::make_write(0, *line.entry, line.words));
  co_await work.pause_s(2.0);
}

Task do_write_read(Work& work, const Instruction& line) {
  std::string text;
  if (line.says(Say::ReadLeast) || line.says(Say::ReadAcross)) {
    const Readings known = readings_of(work, line.thing);
    const double value = line.says(Say::ReadLeast) ? known.least_m : known.across_m;
    if (value == 0.0) co_await work.give_up("\"" + work.name(line.thing) + "\" was not measured", "measure it first");
    text = card_mm(value, line.says(Say::ReadLeast) ? 2 : 1);
  } else if (line.says(Say::ReadRunout)) {
    if (!work.memory.runout_read) co_await work.give_up("no dial was read", "read the runout first");
    text = card_mm(work.memory.runout_m, 2);
  } else if (line.says(Say::ReadStamp)) {
    const double stamp = bench::see_stamp_m(*work.bench, line.thing);
    if (stamp == 0.0)
      co_await work.give_up("\"" + work.name(line.thing) + "\" bears no stamp", "write what the sheet says");
    text = card_mm(stamp, 2);
  } else if (line.says(Say::ReadVerdict)) {
    text = verdict_words(work, line);
  } else if (line.says(Say::ReadLocking)) {
    text = locking_words(work, *line.entry);
  } else {
    text = base::text_fixed(bench::see_setting_nm(*work.bench, line.tool), 1);
  }
  work.act(event::make_write(0, *line.entry, text));
  co_await work.pause_s(2.0);
}

}  // namespace proofstand::hand
