#include "tests/support/six_bolt_setup.h"

#include <string>

namespace proofstand::testing {
namespace {

using bench::ThingKind;

ThingId add(bench::BenchSetup& setup, const std::string& name, ThingKind kind, std::size_t part = 0) {
  setup.things.push_back({name, kind, part});
  return static_cast<ThingId>(setup.things.size() - 1);
}

void add_bolts(SixBolt& job) {
  for (std::size_t i = 0; i < 6; ++i) {
    bench::BoltPart old_bolt;
    old_bolt.patch = true;
    old_bolt.patch_uses = 2;
    old_bolt.recess_debris_m = i == 2 ? 0.0006 : 0.0;
    job.setup.bolts.push_back(old_bolt);
    job.old_bolts[i] = add(job.setup, "old bolt " + std::to_string(i + 1), ThingKind::Bolt, job.setup.bolts.size() - 1);
    job.setup.fitted_bolts.push_back(job.old_bolts[i]);
  }
  for (std::size_t i = 0; i < 6; ++i) {
    bench::BoltPart new_bolt;
    new_bolt.patch = true;
    job.setup.bolts.push_back(new_bolt);
    job.new_bolts[i] = add(job.setup, "new bolt " + std::to_string(i + 1), ThingKind::Bolt, job.setup.bolts.size() - 1);
  }
  for (std::size_t i = 0; i < 6; ++i) {
    bench::BossPart boss;
    boss.old_locker_nm = 0.15;
    job.setup.hub.bosses.push_back(boss);
  }
}

void add_rotors(SixBolt& job) {
  bench::RotorPart worn;
  worn.worn_m = 0.00038;
  worn.film_outer.dust_kg_m2 = 20e-5;
  worn.film_inner.dust_kg_m2 = 20e-5;
  bench::RotorPart fresh;
  fresh.film_outer.oil_kg_m2 = 10e-5;
  fresh.film_inner.oil_kg_m2 = 10e-5;
  job.setup.rotors = {worn, fresh};
  job.old_rotor = add(job.setup, "old rotor", ThingKind::Rotor, 0);
  job.new_rotor = add(job.setup, "new rotor", ThingKind::Rotor, 1);
  job.setup.fitted_rotor = job.old_rotor;
}

void add_tools(SixBolt& job) {
  bench::ToolPart key;
  key.arm_m = 0.090;
  bench::ToolPart driver;
  driver.arm_m = 0.016;
  bench::ToolPart click;
  click.arm_m = 0.060;
  click.scale_lo_nm = 2.0;
  click.scale_hi_nm = 10.0;
  click.scale_step_nm = 0.2;
  click.start_setting_nm = 8.0;
  job.setup.tools = {key, driver, click};
  job.key = add(job.setup, "key", ThingKind::LKey, 0);
  job.driver = add(job.setup, "driver", ThingKind::Driver, 1);
  job.click_driver = add(job.setup, "click driver", ThingKind::ClickDriver, 2);

  bench::InstrumentPart micrometer;
  bench::InstrumentPart vernier;
  vernier.resolution_m = 0.00002;
  vernier.range_m = 0.200;
  vernier.face_m = 0.0005;
  bench::InstrumentPart dial;
  dial.range_m = 0.010;
  dial.face_m = 0.0;
  job.setup.instruments = {micrometer, vernier, dial};
  job.micrometer = add(job.setup, "micrometer", ThingKind::Micrometer, 0);
  job.vernier = add(job.setup, "vernier", ThingKind::Vernier, 1);
  job.dial = add(job.setup, "dial gauge", ThingKind::DialGauge, 2);
  job.pick = add(job.setup, "pick", ThingKind::Pick);
  job.lamp = add(job.setup, "lamp", ThingKind::Lamp);
}

void add_fluids(SixBolt& job) {
  using bench::FluidKind;
  job.setup.bottles = {
      {FluidKind::Alcohol, 20e-9}, {FluidKind::Locker, 10e-9}, {FluidKind::Grease, 10e-9}, {FluidKind::Oil, 20e-9}};
  job.alcohol = add(job.setup, "alcohol", ThingKind::Bottle, 0);
  job.locker = add(job.setup, "threadlocker", ThingKind::Bottle, 1);
  job.grease = add(job.setup, "grease", ThingKind::Bottle, 2);
  job.oil = add(job.setup, "oil", ThingKind::Bottle, 3);
  job.setup.rags = {{false, 8}, {true, 4}};
  job.clean_rag = add(job.setup, "clean rag", ThingKind::Rag, 0);
  job.dirty_rag = add(job.setup, "dirty rag", ThingKind::Rag, 1);
  job.glove_box = add(job.setup, "glove box", ThingKind::Gloves);
}

CardEntryId add_entry(SixBolt& job, const std::string& name, bench::CardKind kind, bench::CardTruth truth,
                      std::vector<std::size_t> words = {}) {
  bench::CardEntryPart entry;
  entry.name = name;
  entry.kind = kind;
  entry.truth = truth;
  entry.needed = kind != bench::CardKind::Note;
  entry.words = std::move(words);
  job.setup.card.push_back(entry);
  return static_cast<CardEntryId>(job.setup.card.size() - 1);
}

void add_card(SixBolt& job) {
  using bench::CardKind;
  using bench::CardTruth;
  job.setup.card_words = {"keep", "replace", "stop and report", "none", "patch", "locker"};
  job.old_thickness = add_entry(job, "old thickness", CardKind::Length, CardTruth::OldThickness);
  job.old_stamp = add_entry(job, "stamp", CardKind::Length, CardTruth::OldStamp);
  job.old_runout = add_entry(job, "old runout", CardKind::Length, CardTruth::OldRunout);
  job.decision = add_entry(job, "decision", CardKind::Choice, CardTruth::Decision, {0, 1, 2});
  job.new_thickness = add_entry(job, "new thickness", CardKind::Length, CardTruth::NewThickness);
  job.locker_used = add_entry(job, "locking", CardKind::Choice, CardTruth::LockerUsed, {3, 4, 5});
  job.torque_used = add_entry(job, "torque", CardKind::Torque, CardTruth::TorqueUsed);
  job.new_runout = add_entry(job, "new runout", CardKind::Length, CardTruth::NewRunout);
  job.remarks = add_entry(job, "remarks", CardKind::Note, CardTruth::None);
}

}  // namespace

SixBolt six_bolt() {
  SixBolt job;
  job.setup.seed = 20250713;
  job.wheel = add(job.setup, "wheel", ThingKind::Wheel);
  job.stand = add(job.setup, "wheel stand", ThingKind::WheelStand);
  job.bike = add(job.setup, "bike", ThingKind::Bike);
  job.bench_top = add(job.setup, "bench", ThingKind::Bench);
  job.tray = add(job.setup, "tray", ThingKind::Tray);
  job.card = add(job.setup, "job card", ThingKind::Card);
  job.sheet = add(job.setup, "maker's sheet", ThingKind::Sheet);
  add_rotors(job);
  add_bolts(job);
  add_tools(job);
  add_fluids(job);
  add_card(job);
  return job;
}

}  // namespace proofstand::testing
