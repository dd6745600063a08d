#include "sim/scenario/read_joint.h"

#include <utility>

#include "sim/base/math.h"
#include "sim/base/number_text.h"

namespace proofstand::scenario {
namespace {

using base::Dimension;

constexpr Span kFilm{0.0, 0.1};  // a tenth of a gram on a square centimetre is a heap, not a film
constexpr Span kAngle{0.0, base::kTwoPi};
constexpr Span kFine{0.0, 0.002};

constexpr WordFor<bench::BoltGrade> kGrades[] = {{"8.8", bench::BoltGrade::Steel8_8},
                                                 {"10.9", bench::BoltGrade::Steel10_9},
                                                 {"12.9", bench::BoltGrade::Steel12_9},
                                                 {"A2-70", bench::BoltGrade::StainlessA2_70}};

void read_film(FieldReader& rotor, std::string_view key, bench::StartFilm& film) {
  const Node* table = rotor.table_at(key);
  if (table == nullptr) return;
  FieldReader reader(rotor.reading(), *table, rotor.name() + "." + std::string(key));
  reader.quantity("oil", Dimension::FilmLoad, kFilm, film.oil_kg_m2);
  reader.quantity("grease", Dimension::FilmLoad, kFilm, film.grease_kg_m2);
  reader.quantity("dust", Dimension::FilmLoad, kFilm, film.dust_kg_m2);
  reader.done();
}

void read_bends(FieldReader& rotor, bench::RotorPart& part) {
  const Node* bends = rotor.table_at("bend");
  if (bends == nullptr) return;
  for (const Member& member : bends->members) {
    if (!is_table(rotor.reading(), member, rotor.name() + ".bend." + member.key)) continue;
    FieldReader reader(rotor.reading(), member.node, rotor.name() + ".bend." + member.key);
    bench::RotorBend bend;
    reader.quantity("at", Dimension::Angle, kAngle, bend.angle_rad);
    reader.quantity("by", Dimension::Length, {-0.003, 0.003}, bend.set_m);
    reader.needs("by", "say how far it is bent, e.g. by = \"0.4 mm\"");
    reader.done();
    part.bends.push_back(bend);
  }
}

void read_boss(const Reading& reading, const Node& table, const std::string& name, bench::BossPart& boss) {
  FieldReader reader(reading, table, name);
  reader.quantity("dirt", Dimension::Length, kFine, boss.dirt_m);
  reader.flag("wipes_off", boss.dirt_loose);
  reader.quantity("old_locker", Dimension::Torque, {0.0, 2.0}, boss.old_locker_nm);
  reader.quantity("thread_strength", Dimension::Number, {0.0, 1.0}, boss.thread_strength_1);
  reader.quantity("grease", Dimension::FilmLoad, kFilm, boss.grease_kg_m2);
  reader.done();
}

/// Exceptions by number, "1" .. "n": calls each with the table and the index from 0.
template <class Each>
void by_number(FieldReader& reader, std::string_view key, std::size_t n, Each&& each) {
  const Node* table = reader.table_at(key);
  if (table == nullptr) return;
  for (const Member& member : table->members) {
    const auto number = base::int_from_text(member.key);
    if (!number || *number < 1 || *number > static_cast<std::int64_t>(n) || !member.node.is_table()) {
      reader.reading().error(
          "S05", member.key_at, reader.name() + "." + std::string(key) + "." + member.key + " names no position",
          "write a table with a number from 1 to " + base::text_from_int(static_cast<std::int64_t>(n)));
      continue;
    }
    each(member.node, reader.name() + "." + std::string(key) + "." + member.key, static_cast<std::size_t>(*number - 1));
  }
}

/// What every bolt of a set may say, and each exception again.
void read_bolt(FieldReader& reader, bench::BoltPart& part) {
  reader.quantity("length", Dimension::Length, {0.004, 0.040}, part.length_m);
  reader.word("grade", kGrades, part.grade);
  reader.quantity("head_diameter", Dimension::Length, {0.007, 0.012}, part.head_diameter_m);
  reader.quantity("head_height", Dimension::Length, {0.0015, 0.006}, part.head_height_m);
  reader.flag("patch", part.patch);
  reader.count("patch_uses", {0.0, 20.0}, part.patch_uses);
  reader.quantity("recess_wear", Dimension::Length, {0.0, 0.001}, part.recess_wear_m);
  reader.quantity("recess_dirt", Dimension::Length, kFine, part.recess_debris_m);
  reader.quantity("grease", Dimension::FilmLoad, kFilm, part.grease_kg_m2);
  reader.quantity("oil", Dimension::FilmLoad, kFilm, part.oil_kg_m2);
  reader.quantity("friction_offset", Dimension::Number, {-2.5, 2.5}, part.friction_z_1);
}

}  // namespace

bench::HubPart read_hub(const Reading& reading, const Node& hub) {
  bench::HubPart part;
  FieldReader reader(reading, hub, "hub");
  int bosses = 0;
  reader.needs("bosses", "say how many threaded holes its seat has, e.g. bosses = 6");
  reader.count("bosses", {2.0, 12.0}, bosses);
  reader.quantity("hole_circle", Dimension::Length, {0.02, 0.1}, part.hole_circle_m);
  reader.quantity("thread_diameter", Dimension::Length, {0.003, 0.008}, part.thread_diameter_m);
  reader.quantity("thread_pitch", Dimension::Length, {0.0004, 0.00125}, part.thread_pitch_m);
  reader.quantity("thread_depth", Dimension::Length, {0.003, 0.03}, part.thread_depth_m);
  reader.quantity("hole_depth", Dimension::Length, {0.003, 0.04}, part.hole_depth_m);
  reader.quantity("register", Dimension::Length, {0.0, 0.08}, part.register_m);
  reader.quantity("seat_runout", Dimension::Length, kFine, part.flange_runout_m);
  reader.quantity("seat_runout_at", Dimension::Angle, kAngle, part.flange_phase_rad);
  part.bosses.resize(static_cast<std::size_t>(bosses));
  by_number(reader, "boss", part.bosses.size(), [&](const Node& table, const std::string& name, std::size_t i) {
    read_boss(reading, table, name, part.bosses[i]);
  });
  reader.done();
  return part;
}

void read_rotors(const Reading& reading, const Node& rotors, NamedParts& parts) {
  for (const Member& member : rotors.members) {
    if (!is_table(reading, member, "rotor." + member.key)) continue;
    FieldReader reader(reading, member.node, "rotor." + member.key);
    bench::RotorPart part;
    reader.quantity("diameter", Dimension::Length, {0.1, 0.26}, part.diameter_m);
    reader.quantity("thickness_new", Dimension::Length, {0.001, 0.004}, part.thickness_new_m);
    reader.quantity("worn", Dimension::Length, {0.0, 0.0025}, part.worn_m);
    reader.quantity("stamp", Dimension::Length, {0.0, 0.004}, part.stamp_m);
    reader.flag("arrow", part.has_arrow);
    reader.flag("printed", part.printed);
    reader.flag("resin_pads_only", part.resin_only);
    reader.count("arms", {3.0, 12.0}, part.arms);
    reader.count("holes", {2.0, 12.0}, part.holes);
    reader.quantity("hole_circle", Dimension::Length, {0.02, 0.1}, part.hole_circle_m);
    reader.quantity("hole_diameter", Dimension::Length, {0.003, 0.01}, part.hole_diameter_m);
    reader.quantity("bore", Dimension::Length, {0.01, 0.08}, part.bore_m);
    reader.flag("cracked", part.cracked);
    read_bends(reader, part);
    read_film(reader, "film_printed_side", part.film_outer);
    read_film(reader, "film_other_side", part.film_inner);
    reader.done();
    if (part.worn_m >= part.thickness_new_m) {
      reading.error("E09", reader.spot_of("worn"), "rotor." + member.key + " is worn away altogether",
                    "make worn less than thickness_new");
    }
    parts.add(reading, member.key, bench::ThingKind::Rotor, parts.setup.rotors.size(), member.key_at);
    parts.setup.rotors.push_back(std::move(part));
  }
}

void read_bolt_sets(const Reading& reading, const Node& bolts, NamedParts& parts) {
  for (const Member& member : bolts.members) {
    if (!is_table(reading, member, "bolts." + member.key)) continue;
    FieldReader reader(reading, member.node, "bolts." + member.key);
    int count = 0;
    reader.needs("count", "say how many there are, e.g. count = 6");
    reader.count("count", {1.0, 24.0}, count);
    bench::BoltPart typical;
    read_bolt(reader, typical);
    std::vector<bench::BoltPart> set(static_cast<std::size_t>(count), typical);
    by_number(reader, "number", set.size(), [&](const Node& table, const std::string& name, std::size_t i) {
      FieldReader one(reading, table, name);
      read_bolt(one, set[i]);
      one.done();
    });
    reader.done();
    NamedParts::BoltSet named{member.key, {}};
    for (std::size_t i = 0; i < set.size(); ++i) {
      named.bolts.push_back(parts.add(reading, member.key + " " + base::text_from_int(static_cast<std::int64_t>(i + 1)),
                                      bench::ThingKind::Bolt, parts.setup.bolts.size(), member.key_at));
      parts.setup.bolts.push_back(set[i]);
    }
    parts.bolt_sets.push_back(std::move(named));
  }
}

}  // namespace proofstand::scenario
