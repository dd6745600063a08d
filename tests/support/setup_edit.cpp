#include "tests/support/setup_edit.h"

#include <functional>
#include <string>

#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/base/words.h"

namespace proofstand::testing {
namespace {

using base::Dimension;
using bench::BenchSetup;
using bench::ThingKind;

struct Words {
  std::string_view subject, datum, value;
};

base::Error not_understood(std::string_view words) {
  return base::Error{"setup-edit", "", "\"" + std::string(words) + "\" is not understood", "see setup_edit.h", false};
}

// the value in a quantity's unit, into a number
bool into(double& number, std::string_view value, Dimension dimension) {
  const base::Result<double> read = base::parse_quantity_as(value, dimension);
  if (!read.has_value()) return false;
  number = read.value();
  return true;
}

template <class Part>
Part* part_named(BenchSetup& setup, std::vector<Part>& parts, std::string_view name) {
  for (const bench::Thing& thing : setup.things) {
    if (thing.name == name && thing.part < parts.size()) return &parts[thing.part];
  }
  return nullptr;
}

bool edit_bolt(bench::BoltPart& bolt, const Words& w) {
  if (w.datum == "length") return into(bolt.length_m, w.value, Dimension::Length);
  if (w.datum == "grease") return into(bolt.grease_kg_m2, w.value, Dimension::FilmLoad);
  if (w.datum == "oil") return into(bolt.oil_kg_m2, w.value, Dimension::FilmLoad);
  if (w.datum == "recess wear") return into(bolt.recess_wear_m, w.value, Dimension::Length);
  if (w.datum == "recess dirt") return into(bolt.recess_debris_m, w.value, Dimension::Length);
  if (w.datum == "friction") return into(bolt.friction_z_1, w.value, Dimension::Number);
  if (w.datum == "patch") {
    bolt.patch = w.value == "yes";
    return true;
  }
  if (w.datum == "grade") {
    if (w.value == "8.8") bolt.grade = bench::BoltGrade::Steel8_8;
    if (w.value == "10.9") bolt.grade = bench::BoltGrade::Steel10_9;
    if (w.value == "12.9") bolt.grade = bench::BoltGrade::Steel12_9;
    if (w.value == "A2-70") bolt.grade = bench::BoltGrade::StainlessA2_70;
    return true;
  }
  return false;
}

bool edit_boss(bench::BossPart& boss, const Words& w) {
  if (w.datum == "dirt") return into(boss.dirt_m, w.value, Dimension::Length);
  if (w.datum == "old locker") return into(boss.old_locker_nm, w.value, Dimension::Torque);
  if (w.datum == "grease") return into(boss.grease_kg_m2, w.value, Dimension::FilmLoad);
  if (w.datum == "loose") {
    boss.dirt_loose = w.value == "yes";
    return true;
  }
  return false;
}

bool edit_tool(bench::ToolPart& tool, const Words& w) {
  if (w.datum == "bias") return into(tool.bias_z_1, w.value, Dimension::Number);
  if (w.datum == "setting") return into(tool.start_setting_nm, w.value, Dimension::Torque);
  return false;
}

bool edit_rotor(bench::RotorPart& rotor, const Words& w) {
  if (w.datum == "stamp") return into(rotor.stamp_m, w.value, Dimension::Length);
  if (w.datum == "worn") return into(rotor.worn_m, w.value, Dimension::Length);
  if (w.datum == "arrow") {
    rotor.has_arrow = w.value == "yes";
    return true;
  }
  if (w.datum == "bend") {
    rotor.bends.push_back({});
    return into(rotor.bends.back().set_m, w.value, Dimension::Length);
  }
  return false;
}

}  // namespace

base::Result<base::Done> edit_setup(BenchSetup& setup, std::string_view words) {
  const std::size_t colon = words.find(':');
  const std::size_t equals = words.find('=');
  if (colon == std::string_view::npos || equals == std::string_view::npos || equals < colon)
    return not_understood(words);
  const Words w{base::trimmed(words.substr(0, colon)), base::trimmed(words.substr(colon + 1, equals - colon - 1)),
                base::trimmed(words.substr(equals + 1))};
  const std::size_t space = w.subject.find(' ');
  const std::string_view kind = w.subject.substr(0, space);
  const std::string_view name =
      space == std::string_view::npos ? std::string_view() : base::trimmed(w.subject.substr(space));
  bool done = false;
  if (kind == "bolt") {
    if (auto* bolt = part_named(setup, setup.bolts, name)) done = edit_bolt(*bolt, w);
  } else if (kind == "tool") {
    if (auto* tool = part_named(setup, setup.tools, name)) done = edit_tool(*tool, w);
  } else if (kind == "rotor") {
    if (auto* rotor = part_named(setup, setup.rotors, name)) done = edit_rotor(*rotor, w);
  } else if (kind == "boss") {
    const auto n = base::int_from_text(name);
    if (n && *n >= 1 && static_cast<std::size_t>(*n) <= setup.hub.bosses.size()) {
      done = edit_boss(setup.hub.bosses[static_cast<std::size_t>(*n - 1)], w);
    }
  } else if (kind == "hands" && w.datum == "strength") {
    done = into(setup.strength_percentile_1, w.value, Dimension::Number);
  } else if (kind == "seat" && w.datum == "friction") {
    done = into(setup.brake.seat_friction_1, w.value, Dimension::Number);
  }
  if (!done) return not_understood(words);
  return base::Done{};
}

}  // namespace proofstand::testing
