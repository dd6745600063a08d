#include "sim/base/quantity.h"

#include <array>

#include "sim/base/assert.h"
#include "sim/base/math.h"
#include "sim/base/number_text.h"
#include "sim/base/words.h"

namespace proofstand::base {
namespace {

struct DimensionRow {
  Dimension dimension;
  std::string_view name;
  std::string_view words;
  std::string_view example;
};

constexpr std::array<DimensionRow, 18> kDimensions = {{
    {Dimension::Number, "number", "a plain number", "0.5"},
    {Dimension::Length, "length", "a length", "1.8 mm"},
    {Dimension::Angle, "angle", "an angle", "6°"},
    {Dimension::Time, "time", "a time", "30 s"},
    {Dimension::Mass, "mass", "a mass", "100 kg"},
    {Dimension::Force, "force", "a force", "40 N"},
    {Dimension::Torque, "torque", "a torque", "5 N·m"},
    {Dimension::Pressure, "pressure", "a pressure", "2 MPa"},
    {Dimension::Temperature, "temperature", "a temperature", "20 °C"},
    {Dimension::Speed, "speed", "a speed", "25 km/h"},
    {Dimension::Rate, "rate", "a turning rate", "10 °/s"},
    {Dimension::Energy, "energy", "an energy", "2 J"},
    {Dimension::Area, "area", "an area", "3 cm²"},
    {Dimension::Volume, "volume", "a volume", "20 mm³"},
    {Dimension::FilmLoad, "film", "a film load", "6 µg/cm²"},
    {Dimension::Stiffness, "stiffness", "a stiffness", "59 N/mm"},
    {Dimension::Inertia, "inertia", "a moment of inertia", "0.1 kg·m²"},
    {Dimension::Power, "power", "a power", "200 W"},
}};

struct Unit {
  std::string_view word;
  Dimension dimension;
  double in_si;         // SI value of one unit
  double offset = 0.0;  // added after scaling: only degrees Celsius
};

constexpr double kInch = 0.0254;                 // exact, international inch
constexpr double kPoundForce = 4.4482216152605;  // exact: 0.45359237 kg times 9.80665 m/s²

// the everyday unit of each dimension stands first among its own
constexpr std::array<Unit, 94> kUnits = {{
    {"", Dimension::Number, 1.0},
    {"%", Dimension::Number, 0.01},
    {"mm", Dimension::Length, 1e-3},
    {"m", Dimension::Length, 1.0},
    {"cm", Dimension::Length, 1e-2},
    {"µm", Dimension::Length, 1e-6},
    {"μm", Dimension::Length, 1e-6},
    {"um", Dimension::Length, 1e-6},
    {"in", Dimension::Length, kInch},
    {"inch", Dimension::Length, kInch},
    {"°", Dimension::Angle, kPi / 180.0},
    {"deg", Dimension::Angle, kPi / 180.0},
    {"rad", Dimension::Angle, 1.0},
    {"mrad", Dimension::Angle, 1e-3},
    {"turn", Dimension::Angle, kTwoPi},
    {"turns", Dimension::Angle, kTwoPi},
    {"s", Dimension::Time, 1.0},
    {"ms", Dimension::Time, 1e-3},
    {"min", Dimension::Time, 60.0},
    {"h", Dimension::Time, 3600.0},
    {"kg", Dimension::Mass, 1.0},
    {"g", Dimension::Mass, 1e-3},
    {"mg", Dimension::Mass, 1e-6},
    {"µg", Dimension::Mass, 1e-9},
    {"μg", Dimension::Mass, 1e-9},
    {"ug", Dimension::Mass, 1e-9},
    {"N", Dimension::Force, 1.0},
    {"kN", Dimension::Force, 1e3},
    {"mN", Dimension::Force, 1e-3},
    {"lbf", Dimension::Force, kPoundForce},
    {"N·m", Dimension::Torque, 1.0},
    {"Nm", Dimension::Torque, 1.0},
    {"N.m", Dimension::Torque, 1.0},
    {"N m", Dimension::Torque, 1.0},
    {"N*m", Dimension::Torque, 1.0},
    {"N⋅m", Dimension::Torque, 1.0},
    {"in-lbf", Dimension::Torque, kInch* kPoundForce},
    {"in·lbf", Dimension::Torque, kInch* kPoundForce},
    {"in lbf", Dimension::Torque, kInch* kPoundForce},
    {"lbf·in", Dimension::Torque, kInch* kPoundForce},
    {"lbf-in", Dimension::Torque, kInch* kPoundForce},
    {"lbf in", Dimension::Torque, kInch* kPoundForce},
    {"ft-lbf", Dimension::Torque, 12.0 * kInch* kPoundForce},
    {"ft·lbf", Dimension::Torque, 12.0 * kInch* kPoundForce},
    {"lbf·ft", Dimension::Torque, 12.0 * kInch* kPoundForce},
    {"lbf-ft", Dimension::Torque, 12.0 * kInch* kPoundForce},
    {"MPa", Dimension::Pressure, 1e6},
    {"Pa", Dimension::Pressure, 1.0},
    {"kPa", Dimension::Pressure, 1e3},
    {"GPa", Dimension::Pressure, 1e9},
    {"bar", Dimension::Pressure, 1e5},
    {"psi", Dimension::Pressure, kPoundForce / (kInch * kInch)},
    {"N/mm²", Dimension::Pressure, 1e6},
    {"K", Dimension::Temperature, 1.0},
    {"°C", Dimension::Temperature, 1.0, 273.15},
    {"degC", Dimension::Temperature, 1.0, 273.15},
    {"km/h", Dimension::Speed, 1.0 / 3.6},
    {"m/s", Dimension::Speed, 1.0},
    {"mm/s", Dimension::Speed, 1e-3},
    {"mph", Dimension::Speed, 0.44704},
    {"°/s", Dimension::Rate, kPi / 180.0},
    {"deg/s", Dimension::Rate, kPi / 180.0},
    {"rad/s", Dimension::Rate, 1.0},
    {"turn/s", Dimension::Rate, kTwoPi},
    {"turns/s", Dimension::Rate, kTwoPi},
    {"rev/s", Dimension::Rate, kTwoPi},
    {"J", Dimension::Energy, 1.0},
    {"kJ", Dimension::Energy, 1e3},
    {"mJ", Dimension::Energy, 1e-3},
    {"MJ", Dimension::Energy, 1e6},
    {"cm²", Dimension::Area, 1e-4},
    {"mm²", Dimension::Area, 1e-6},
    {"m²", Dimension::Area, 1.0},
    {"cm2", Dimension::Area, 1e-4},
    {"mm2", Dimension::Area, 1e-6},
    {"m2", Dimension::Area, 1.0},
    {"mm³", Dimension::Volume, 1e-9},
    {"ml", Dimension::Volume, 1e-6},
    {"mm3", Dimension::Volume, 1e-9},
    {"cm³", Dimension::Volume, 1e-6},
    {"cm3", Dimension::Volume, 1e-6},
    {"m³", Dimension::Volume, 1.0},
    {"µg/cm²", Dimension::FilmLoad, 1e-5},
    {"μg/cm²", Dimension::FilmLoad, 1e-5},
    {"ug/cm2", Dimension::FilmLoad, 1e-5},
    {"g/m²", Dimension::FilmLoad, 1e-3},
    {"g/m2", Dimension::FilmLoad, 1e-3},
    {"kg/m²", Dimension::FilmLoad, 1.0},
    {"N/mm", Dimension::Stiffness, 1e3},
    {"N/m", Dimension::Stiffness, 1.0},
    {"kg·m²", Dimension::Inertia, 1.0},
    {"kg m²", Dimension::Inertia, 1.0},
    {"kg·m2", Dimension::Inertia, 1.0},
    {"W", Dimension::Power, 1.0},
}};

const DimensionRow& row_of(Dimension dimension) { return kDimensions[static_cast<std::size_t>(dimension)]; }

const Unit& everyday(Dimension dimension) {
  for (const Unit& unit : kUnits) {
    if (unit.dimension == dimension) return unit;
  }
  stop_on_bug("every dimension has a unit", __FILE__, __LINE__);
}

const Unit* find_unit(std::string_view word) {
  for (const Unit& unit : kUnits) {
    if (unit.word == word) return &unit;
  }
  return nullptr;
}

// bytes at the front that belong to a number
std::size_t number_length(std::string_view text) {
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  std::size_t at = 0;
  if (at < text.size() && (text[at] == '-' || text[at] == '+')) ++at;
  std::size_t digits = 0;
  for (; at < text.size() && (digit(text[at]) || text[at] == '.' || text[at] == ','); ++at)
    digits += digit(text[at]) ? 1 : 0;
  if (digits == 0) return 0;
  // an exponent, but not the first letter of a unit
  if (at < text.size() && (text[at] == 'e' || text[at] == 'E')) {
    std::size_t end = at + 1;
    if (end < text.size() && (text[end] == '-' || text[end] == '+')) ++end;
    const std::size_t first = end;
    while (end < text.size() && digit(text[end])) ++end;
    if (end > first) at = end;
  }
  return at;
}

std::string quoted(std::string_view text) { return "\"" + std::string(text) + "\""; }

}  // namespace

std::string_view dimension_words(Dimension dimension) { return row_of(dimension).words; }
std::string_view dimension_name(Dimension dimension) { return row_of(dimension).name; }
std::string_view everyday_unit(Dimension dimension) { return everyday(dimension).word; }

Result<Dimension> dimension_from_name(std::string_view name) {
  std::vector<std::string_view> known;
  for (const DimensionRow& row : kDimensions) {
    if (row.name == name) return row.dimension;
    known.push_back(row.name);
  }
  const std::string_view nearest = nearest_word(name, known);
  return Error{
      "unknown-dimension", "", quoted(name) + " is no dimension",
      nearest.empty() ? "write length, torque, force, time or another" : "did you mean " + quoted(nearest) + "?"};
}

Result<Quantity> parse_quantity(std::string_view text) {
  const std::string_view whole = trimmed(text);
  const std::size_t digits = number_length(whole);
  if (digits == 0) {
    return Error{"no-number", "0", quoted(text) + " does not begin with a number",
                 "write a number and its unit, such as 5 N·m"};
  }
  const auto number = double_from_text(whole.substr(0, digits), true);
  if (!number) {
    return Error{"no-number", "0", quoted(whole.substr(0, digits)) + " is no number",
                 "write digits and one decimal point, such as 1.78"};
  }
  const std::string_view word = trimmed(whole.substr(digits));
  const Unit* unit = find_unit(word);
  if (unit == nullptr) {
    std::vector<std::string_view> known;
    for (const Unit& u : kUnits) known.push_back(u.word);
    const std::string_view nearest = nearest_word(word, known);
    return Error{"unknown-unit", text_from_int(static_cast<std::int64_t>(digits)),
                 quoted(word) + " is no unit that is known here",
                 nearest.empty() ? "write a unit such as N·m, mm, °, s or N" : "did you mean " + quoted(nearest) + "?"};
  }
  const double value_si = *number * unit->in_si + unit->offset;
  // a finite number can overflow in its unit
  if (!(value_si - value_si == 0.0))
    return Error{"too-large", "0", quoted(whole) + " is too large", "write a smaller number"};
  return Quantity{value_si, unit->dimension};
}

Result<double> parse_quantity_as(std::string_view text, Dimension dimension) {
  const Result<Quantity> read = parse_quantity(text);
  if (!read) return read.error();
  if (read->dimension == dimension) return read->value_si;
  const DimensionRow& wanted = row_of(dimension);
  const std::string instead = "write it such as " + std::string(wanted.example);
  if (read->dimension == Dimension::Number) {
    return Error{"missing-unit", "",
                 quoted(trimmed(text)) + " has no unit; " + std::string(wanted.words) + " is expected", instead};
  }
  return Error{"wrong-unit", "",
               quoted(trimmed(text)) + " is " + std::string(row_of(read->dimension).words) + "; " +
                   std::string(wanted.words) + " is expected",
               instead};
}

std::string quantity_words(double value_si, Dimension dimension) {
  // nobody says a stopping distance in millimetres
  if (dimension == Dimension::Length && (value_si >= 1.0 || value_si <= -1.0))
    return text_for_people(value_si, 3) + " m";
  const std::string number = text_for_people(in_everyday_unit(value_si, dimension), 4);
  const std::string_view unit = everyday_unit(dimension);
  if (unit.empty()) return number;
  return unit == "°" ? number + "°" : number + " " + std::string(unit);
}

double in_everyday_unit(double value_si, Dimension dimension) {
  const Unit& unit = everyday(dimension);
  return (value_si - unit.offset) / unit.in_si;
}

std::vector<std::string_view> known_units(Dimension dimension) {
  std::vector<std::string_view> units;
  for (const Unit& unit : kUnits) {
    if (unit.dimension == dimension) units.push_back(unit.word);
  }
  return units;
}

}  // namespace proofstand::base
