// Quantities with units, as people write them and as files keep them. One parser, one printer.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/base/result.h"

namespace proofstand::base {

/// What a number measures. Inside the program every quantity is in the SI unit named here.
enum class Dimension : unsigned char {
  Number,       ///< no unit ("1"); per cent accepted on input as %
  Length,       ///< m
  Angle,        ///< rad
  Time,         ///< s
  Mass,         ///< kg
  Force,        ///< N
  Torque,       ///< N·m
  Pressure,     ///< Pa
  Temperature,  ///< K difference or K absolute; °C accepted as absolute
  Speed,        ///< m/s
  Rate,         ///< rad/s
  Energy,       ///< J
  Area,         ///< m²
  Volume,       ///< m³
  FilmLoad,     ///< kg/m² (people write µg/cm²)
  Stiffness,    ///< N/m
  Inertia,      ///< kg·m²
  Power,        ///< W
};

/// A number of SI units with its dimension.
struct Quantity {
  double value_si = 0.0;
  Dimension dimension = Dimension::Number;
};

/// The dimension's name for messages: "a torque", "a length".
std::string_view dimension_words(Dimension dimension);
/// The unit people see first for this dimension: "N·m", "mm", "°".
std::string_view everyday_unit(Dimension dimension);
/// The name of the dimension in files: "torque", "length", ...; the inverse of dimension_from_name.
std::string_view dimension_name(Dimension dimension);
/// errors: unknown name
Result<Dimension> dimension_from_name(std::string_view name);

/// Reads "5 N·m", "5Nm", "5 N.m", "44.3 in-lbf", "4 in", "6°", "6 deg", "5.0", "12 %", "0.25 s", "10 µg/cm²" and the
/// like. errors: no number, unknown unit (with the nearest known one), trailing text. Position is the byte offset in
/// `where`.
Result<Quantity> parse_quantity(std::string_view text);
/// As above and the dimension must match; a bare number is accepted only for Dimension::Number.
/// errors: also a unit of another dimension ("30 s is a time; a torque is expected, such as 5 N·m").
Result<double> parse_quantity_as(std::string_view text, Dimension dimension);
/// "5.2 N·m": everyday unit, at most four significant digits; lengths of a metre and more in m.
std::string quantity_words(double value_si, Dimension dimension);
/// SI to the everyday unit's number, e.g. 0.0018 m -> 1.8 (mm).
double in_everyday_unit(double value_si, Dimension dimension);
/// Every unit word that the parser knows for a dimension, everyday unit first.
std::vector<std::string_view> known_units(Dimension dimension);

}  // namespace proofstand::base
