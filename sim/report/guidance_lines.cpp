#include "sim/report/guidance_lines.h"

#include "sim/base/number_text.h"
#include "sim/base/quantity.h"

namespace proofstand::report {
namespace {

using bench::ThingKind;
using Lines = std::vector<std::string>;

constexpr double kInsideLip_m = 0.008;  // from the rim edge to the middle of the track

std::string number(std::int64_t n) { return base::text_from_int(n); }
std::string mm(double length_m, int decimals) { return base::text_fixed(length_m * 1000.0, decimals) + " mm"; }

std::string name_of_first(const bench::Bench& bench, ThingKind kind) {
  const event::ThingId thing = bench::first_of(bench.setup(), kind);
  return thing == event::kNoThing ? std::string() : thing_name(bench, thing);
}

std::string bottle_of(const bench::Bench& bench, bench::FluidKind fluid) {
  for (const bench::Thing& thing : bench.setup().things) {
    if (thing.kind == ThingKind::Bottle && bench.setup().bottles[thing.part].fluid == fluid) return thing.name;
  }
  return {};
}

// the first that does not look black and can still be folded afresh
std::string rag_of(const bench::Bench& bench) {
  const std::vector<bench::Thing>& things = bench.setup().things;
  for (std::size_t i = 0; i < things.size(); ++i) {
    const auto thing = static_cast<event::ThingId>(i);
    if (things[i].kind != ThingKind::Rag || bench.setup().rags[things[i].part].dirty) continue;
    if (bench::see_folds_left(bench, thing) > 0 || !bench::see_rag_black(bench, thing)) return things[i].name;
  }
  return {};
}

double track_radius_m(const bench::Bench& bench, event::ThingId rotor) {
  return 0.5 * bench::see_marked_diameter_m(bench, rotor) - kInsideLip_m;
}

// how far a rotor may be bent before it is replaced, where the sheet says so
std::string beyond(const GuideWorld& world) {
  for (const scenario::SheetLine& line : world.scenario.sheet_lines) {
    if (line.name == "replace_runout") {
      return ", replacing beyond " + mm(line.value.value_si, 2) + " of runout";
    }
  }
  return {};
}

Lines write_lines(const GuideWorld& world, const Chore& chore, const GuideKit& kit, std::string_view note) {
  const bench::Bench& bench = world.bench;
  const bench::CardEntryPart& part = bench.setup().card[static_cast<std::size_t>(chore.item)];
  const std::string& old = thing_name(bench, bench.setup().fitted_rotor);
  const std::string& fit = thing_name(bench, rotor_to_fit(world));
  const std::string as = " as " + part.name;
  switch (part.truth) {
    case bench::CardTruth::OldThickness:
      return {"write the least reading of the " + old + as};
    case bench::CardTruth::NewThickness:
      return {"write the least reading of the " + fit + as};
    case bench::CardTruth::OldRunout:
    case bench::CardTruth::NewRunout:
      return {"write the runout read" + as};
    case bench::CardTruth::OldStamp:
      return {"write the stamp of the " + old + as};
    case bench::CardTruth::TorqueUsed:
      return {"write the setting of the " + kit.click_driver + as};
    case bench::CardTruth::Decision:
      return {"write what the " + old + " calls for" + as + beyond(world)};
    case bench::CardTruth::LockerUsed:
      return {"write how the bolts are locked" + as};
    case bench::CardTruth::None:
      break;
  }
  if (part.kind != bench::CardKind::Note) return {};
  return {"write " + part.name + ": " + std::string(note)};
}

Lines wipe_lines(const GuideWorld& world, const Chore& chore, const GuideKit& kit) {
  if (kit.rag.empty() || kit.alcohol.empty()) return {};
  const std::string face = chore.item == 0 ? "outer track" : "inner track";
  return {"wet the " + kit.rag + " with 30 drops of " + kit.alcohol + ", on a fresh fold",
          "wipe the " + face + " of the " + thing_name(world.bench, world.seen.rotor) + " with the " + kit.rag +
              ", 2 times"};
}

Lines look_lines(const GuideWorld& world, const Chore& chore, const GuideKit& kit) {
  const std::string with = !kit.lamp.empty() ? kit.lamp : kit.pick;
  if (with.empty()) return {};
  const std::string place(event::words_of(chore.place));
  if (chore.item >= 0) return {"look at " + place + " " + number(chore.item + 1) + " with the " + with};
  return {"look at the " + place + " of the " + thing_name(world.bench, chore.thing) + " with the " + with};
}

Lines start_lines(const GuideWorld& world, const Chore& chore) {
  const std::string hole = " in hole " + number(chore.item + 1) + ", turning back";
  const double length_m = sheet_bolt_length_m(world);
  bool had_bolts = false;
  for (const event::ThingId bolt : world.bench.setup().fitted_bolts) had_bolts = had_bolts || bolt != event::kNoThing;
  if (length_m > 0.0 && !had_bolts) return {"start any loose bolt of " + mm(length_m, 0) + hole};
  const event::ThingId bolt = bolt_for_hole(world, static_cast<std::size_t>(chore.item));
  if (bolt == event::kNoThing) return {};
  return {"start " + thing_name(world.bench, bolt) + hole};
}

Lines with_tool(const std::string& tool, std::string line) { return tool.empty() ? Lines{} : Lines{std::move(line)}; }

Lines bolt_lines(const GuideWorld& world, const Chore& chore, const GuideKit& kit) {
  const std::string n = number(chore.item + 1);
  switch (chore.kind) {
    case ChoreKind::PickRecess:
      return with_tool(kit.pick, "pick recess " + n + " clean with the " + kit.pick);
    case ChoreKind::PickHole:
      return with_tool(kit.pick, "pick hole " + n + " clean with the " + kit.pick);
    case ChoreKind::PickBoss:
      return with_tool(kit.pick, "pick boss " + n + " clean with the " + kit.pick);
    case ChoreKind::WipeBoss:
      return with_tool(kit.rag, "wipe boss " + n + " with the " + kit.rag);
    case ChoreKind::Crack:
      return with_tool(kit.key, "crack bolt " + n + " with the " + kit.key);
    case ChoreKind::RunOut:
      return with_tool(kit.driver, "run bolt " + n + " out with the " + kit.driver);
    case ChoreKind::RunIn:
      return with_tool(kit.driver, "run bolt " + n + " in with the " + kit.driver);
    case ChoreKind::Snug:
      return with_tool(
          kit.key, "snug bolt " + n + " with the " + kit.key + ", to " + torque_text(kSnugShare_1 * figure_nm(world)));
    case ChoreKind::Tighten:
      return with_tool(kit.click_driver, "tighten bolt " + n + " until it clicks and no further, with the " +
                                             kit.click_driver + ", at 10°/s");
    case ChoreKind::Locker: {
      const event::ThingId bolt = bolt_for_hole(world, static_cast<std::size_t>(chore.item));
      if (bolt == event::kNoThing) return {};
      return with_tool(kit.locker, "squeeze 1 drop of " + kit.locker + " onto " + thing_name(world.bench, bolt) +
                                       ", unless it has a patch");
    }
    default:
      return start_lines(world, chore);
  }
}

std::vector<GuideTarget> loose_bolts(const GuideWorld& world, event::PlaceKind place) {
  std::vector<GuideTarget> all;
  const std::vector<bench::Thing>& things = world.bench.setup().things;
  for (std::size_t i = 0; i < things.size(); ++i) {
    const auto thing = static_cast<event::ThingId>(i);
    if (things[i].kind != ThingKind::Bolt) continue;
    if (bench::see_where(world.bench, thing) == bench::Whereabouts::Tray) all.push_back({thing, place, event::kNoBolt});
  }
  return all;
}

event::PlaceKind place_of(const Chore& chore) {
  switch (chore.kind) {
    case ChoreKind::PickHole:
    case ChoreKind::Start:
      return event::PlaceKind::Hole;
    case ChoreKind::PickBoss:
    case ChoreKind::WipeBoss:
      return event::PlaceKind::Boss;
    case ChoreKind::LookAt:
      return chore.place;
    default:
      return event::PlaceKind::BoltRecess;
  }
}

}  // namespace

GuideKit kit_of(const bench::Bench& bench) {
  GuideKit kit;
  kit.key = name_of_first(bench, ThingKind::LKey);
  kit.driver = name_of_first(bench, ThingKind::Driver);
  if (kit.key.empty()) kit.key = kit.driver;
  if (kit.driver.empty()) kit.driver = kit.key;
  kit.click_driver = name_of_first(bench, ThingKind::ClickDriver);
  kit.pick = name_of_first(bench, ThingKind::Pick);
  kit.lamp = name_of_first(bench, ThingKind::Lamp);
  kit.micrometer = name_of_first(bench, ThingKind::Micrometer);
  kit.vernier = name_of_first(bench, ThingKind::Vernier);
  if (kit.micrometer.empty()) kit.micrometer = kit.vernier;
  kit.dial = name_of_first(bench, ThingKind::DialGauge);
  kit.rag = rag_of(bench);
  kit.alcohol = bottle_of(bench, bench::FluidKind::Alcohol);
  kit.locker = bottle_of(bench, bench::FluidKind::Locker);
  return kit;
}

const std::string& thing_name(const bench::Bench& bench, event::ThingId thing) {
  static const std::string nothing = "part";
  return thing == event::kNoThing ? nothing : bench.setup().things[event::index_of(thing)].name;
}

std::string torque_text(double torque_nm) { return base::text_fixed(torque_nm, 1) + " N·m"; }
std::string spot_text(std::int32_t spot) { return number(30 + 60 * static_cast<std::int64_t>(spot)) + "°"; }

std::vector<std::string> lines_of(const GuideWorld& world, const Chore& chore, std::string_view note) {
  const GuideKit kit = kit_of(world.bench);
  const bench::Bench& bench = world.bench;
  switch (chore.kind) {
    case ChoreKind::Measure:
      return with_tool(kit.micrometer, "measure the thickness of the " + thing_name(bench, chore.thing) + " with the " +
                                           kit.micrometer + " at " + mm(track_radius_m(bench, chore.thing), 1) +
                                           ", at " + spot_text(chore.item));
    case ChoreKind::MeasureAcross:
      return with_tool(kit.vernier,
                       "measure the diameter of the " + thing_name(bench, chore.thing) + " with the " + kit.vernier);
    case ChoreKind::ReadRunoutBefore:
    case ChoreKind::ReadRunout:
      return with_tool(kit.dial, "read the runout of the " + thing_name(bench, chore.thing) + " with the " + kit.dial +
                                     ", over 1.1 turns");
    case ChoreKind::LookAt:
      return look_lines(world, chore, kit);
    case ChoreKind::WriteBefore:
    case ChoreKind::WriteDecision:
    case ChoreKind::Write:
      return write_lines(world, chore, kit, note);
    case ChoreKind::TakeOff:
      return {"take the " + thing_name(bench, chore.thing) + " off by its edge",
              "lay the " + thing_name(bench, chore.thing) + " down, printed side up"};
    case ChoreKind::WipeSeat:
      return with_tool(kit.rag, "wipe the hub seat with the " + kit.rag + ", on a fresh fold, 2 times");
    case ChoreKind::Glove:
      return {"glove both hands"};
    case ChoreKind::PutOn:
      return {"put the " + thing_name(bench, chore.thing) + " on, printed side out, by its edge"};
    case ChoreKind::HoldRotor:
      return {"hold the " + thing_name(bench, world.seen.rotor) + " against the bolts by its arms"};
    case ChoreKind::LetGo:
      return {"let go with the other hand"};
    case ChoreKind::SetTool:
      return with_tool(kit.click_driver, "set the " + kit.click_driver + " to " + torque_text(setting_now_nm(world)));
    case ChoreKind::WipeFace:
      return wipe_lines(world, chore, kit);
    case ChoreKind::Dry:
      return {"wait 30 s"};
    case ChoreKind::WheelToBike:
      return {"move the wheel to the bike"};
    case ChoreKind::WheelToStand:
      return {"move the wheel to the stand"};
    case ChoreKind::Spin:
      return {"spin the wheel at 1 turn/s"};
    case ChoreKind::HandOver:
      return {"hand over"};
    default:
      return bolt_lines(world, chore, kit);
  }
}

std::vector<GuideTarget> targets_of(const GuideWorld& world, const Chore& chore) {
  const bench::BenchSetup& setup = world.bench.setup();
  const auto of = [&](ThingKind kind, event::PlaceKind place) {
    return std::vector<GuideTarget>{{bench::first_of(setup, kind), place, event::kNoBolt}};
  };
  const event::PlaceKind facing = world.seen.printed_out ? event::PlaceKind::TrackOuter : event::PlaceKind::TrackInner;
  switch (chore.kind) {
    case ChoreKind::Measure:
    case ChoreKind::ReadRunoutBefore:
    case ChoreKind::ReadRunout:
      return {{chore.thing, facing, event::kNoBolt}};
    case ChoreKind::MeasureAcross:
    case ChoreKind::TakeOff:
      return {{chore.thing, event::PlaceKind::Edge, event::kNoBolt}};
    case ChoreKind::WriteBefore:
    case ChoreKind::WriteDecision:
    case ChoreKind::Write:
    case ChoreKind::HandOver:
      return of(ThingKind::Card, event::PlaceKind::Body);
    case ChoreKind::WipeSeat:
      return of(ThingKind::Wheel, event::PlaceKind::HubSeat);
    case ChoreKind::Glove:
      return of(ThingKind::Gloves, event::PlaceKind::GloveBox);
    case ChoreKind::Locker:
      return loose_bolts(world, event::PlaceKind::BoltThread);
    case ChoreKind::PutOn: {
      std::vector<GuideTarget> all;
      for (std::size_t i = 0; i < setup.things.size(); ++i) {
        const auto thing = static_cast<event::ThingId>(i);
        if (setup.things[i].kind == ThingKind::Rotor) all.push_back({thing, event::PlaceKind::Edge, event::kNoBolt});
      }
      all.push_back(of(ThingKind::Wheel, event::PlaceKind::HubSeat).front());
      return all;
    }
    case ChoreKind::HoldRotor:
    case ChoreKind::LetGo:
      return {{world.seen.rotor, event::PlaceKind::Arms, event::kNoBolt},
              {world.seen.rotor, event::PlaceKind::InnerEdge, event::kNoBolt}};
    case ChoreKind::SetTool:
      return of(ThingKind::ClickDriver, event::PlaceKind::Body);
    case ChoreKind::WipeFace:
      return {{world.seen.rotor, chore.item == 0 ? event::PlaceKind::TrackOuter : event::PlaceKind::TrackInner,
               event::kNoBolt}};
    case ChoreKind::Dry:
      return {{world.seen.rotor, facing, event::kNoBolt}};
    case ChoreKind::WheelToBike:
      return of(ThingKind::Bike, event::PlaceKind::ForkEnds);
    case ChoreKind::WheelToStand:
      return of(ThingKind::WheelStand, event::PlaceKind::StandSlot);
    case ChoreKind::Spin:
      return of(ThingKind::Wheel, event::PlaceKind::Tyre);
    case ChoreKind::LookAt:
      if (chore.item < 0) return {{chore.thing, chore.place, event::kNoBolt}};
      break;
    default:
      break;
  }
  std::vector<GuideTarget> here{
      {bench::first_of(setup, ThingKind::Wheel), place_of(chore), static_cast<event::BoltId>(chore.item)}};
  if (chore.kind == ChoreKind::Start) {
    for (const GuideTarget& bolt : loose_bolts(world, event::PlaceKind::Body)) here.push_back(bolt);
  }
  return here;
}

}  // namespace proofstand::report
