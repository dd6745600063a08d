// Danger: a torque read in the wrong unit is off by a factor of nine and nobody is told.
#include <rapidcheck.h>

#include <cmath>
#include <string>

#include "sim/base/math.h"
#include "sim/base/quantity.h"
#include "tests/support/catch.h"

using namespace proofstand::base;

namespace {

double read_as(const char* text, Dimension dimension) {
  const Result<double> value = parse_quantity_as(text, dimension);
  INFO(text << (value ? "" : ": " + value.error().sentence()));
  REQUIRE(value.has_value());
  return *value;
}

const Dimension kAll[] = {Dimension::Number,      Dimension::Length, Dimension::Angle,    Dimension::Time,
                          Dimension::Mass,        Dimension::Force,  Dimension::Torque,   Dimension::Pressure,
                          Dimension::Temperature, Dimension::Speed,  Dimension::Rate,     Dimension::Energy,
                          Dimension::Area,        Dimension::Volume, Dimension::FilmLoad, Dimension::Stiffness,
                          Dimension::Inertia,     Dimension::Power};

}  // namespace

TEST_CASE("torques as people write them mean the same") {
  for (const char* text : {"5 N·m", "5 Nm", "5Nm", "5 N.m", "5 N m", "5.0 N·m", " 5 N·m "}) {
    CHECK(read_as(text, Dimension::Torque) == 5.0);
  }
}

TEST_CASE("inch and pound units are those of NIST SP 811") {
  CHECK(read_as("1 in", Dimension::Length) == 0.0254);
  CHECK(read_as("1 lbf", Dimension::Force) == Approx(4.448222).epsilon(1e-6));
  CHECK(read_as("1 in-lbf", Dimension::Torque) == Approx(0.1129848).epsilon(1e-6));
  CHECK(read_as("1 in·lbf", Dimension::Torque) == Approx(0.1129848).epsilon(1e-6));
  CHECK(read_as("1 ft-lbf", Dimension::Torque) == Approx(1.355818).epsilon(1e-6));
  CHECK(read_as("1 psi", Dimension::Pressure) == Approx(6894.757).epsilon(1e-6));
  CHECK(read_as("1 mph", Dimension::Speed) == Approx(0.44704).epsilon(1e-12));
}

TEST_CASE("every dimension reads its usual units") {
  CHECK(read_as("1.8 mm", Dimension::Length) == Approx(0.0018));
  CHECK(read_as("50 µm", Dimension::Length) == Approx(50e-6));
  CHECK(read_as("50 um", Dimension::Length) == Approx(50e-6));
  CHECK(read_as("6°", Dimension::Angle) == Approx(kPi / 30));
  CHECK(read_as("6 deg", Dimension::Angle) == Approx(kPi / 30));
  CHECK(read_as("0.5 turns", Dimension::Angle) == Approx(kPi));
  CHECK(read_as("2 min", Dimension::Time) == 120.0);
  CHECK(read_as("12 %", Dimension::Number) == Approx(0.12));
  CHECK(read_as("20 °C", Dimension::Temperature) == Approx(293.15));
  CHECK(read_as("25 km/h", Dimension::Speed) == Approx(6.94444).epsilon(1e-5));
  CHECK(read_as("1 turn/s", Dimension::Rate) == Approx(kTwoPi));
  CHECK(read_as("2 kJ", Dimension::Energy) == 2000.0);
  CHECK(read_as("3.5 cm²", Dimension::Area) == Approx(3.5e-4));
  CHECK(read_as("20 mm³", Dimension::Volume) == Approx(20e-9));
  CHECK(read_as("1 ml", Dimension::Volume) == Approx(1e-6));
  CHECK(read_as("20 µg/cm²", Dimension::FilmLoad) == Approx(2e-4));
  CHECK(read_as("1,78 mm", Dimension::Length) == Approx(0.00178));
  CHECK(read_as("1e-3 m", Dimension::Length) == Approx(0.001));
}

TEST_CASE("what is written is read back, in every dimension") {
  for (const Dimension dimension : kAll) {
    INFO(std::string(dimension_name(dimension)));
    CHECK(*dimension_from_name(dimension_name(dimension)) == dimension);
    CHECK_FALSE(known_units(dimension).empty());
    CHECK(known_units(dimension).front() == everyday_unit(dimension));
    const double value_si = read_as((std::string("2.5 ") + std::string(everyday_unit(dimension))).c_str(), dimension);
    CHECK(read_as(quantity_words(value_si, dimension).c_str(), dimension) == Approx(value_si).epsilon(1e-3));
    CHECK(in_everyday_unit(value_si, dimension) == Approx(2.5));
    for (const std::string_view unit : known_units(dimension)) {
      const Result<Quantity> read = parse_quantity("1 " + std::string(unit));
      REQUIRE(read.has_value());
      CHECK(read->dimension == dimension);
    }
  }
}

TEST_CASE("a wrong unit is answered with what was expected and what to write") {
  const Result<double> time = parse_quantity_as("30 s", Dimension::Torque);
  REQUIRE_FALSE(time.has_value());
  CHECK(time.error().what.find("a time") != std::string::npos);
  CHECK(time.error().what.find("a torque") != std::string::npos);
  CHECK(time.error().instead.find("N·m") != std::string::npos);
  const Result<double> bare = parse_quantity_as("5", Dimension::Torque);
  REQUIRE_FALSE(bare.has_value());
  CHECK(bare.error().code == "missing-unit");
  const Result<Quantity> near = parse_quantity("5 Nmm");
  REQUIRE_FALSE(near.has_value());
  CHECK(near.error().instead.find("did you mean") != std::string::npos);
  CHECK_FALSE(parse_quantity("five N·m").has_value());
  CHECK_FALSE(parse_quantity("").has_value());
  CHECK_FALSE(parse_quantity("5 N·m and more").has_value());
  CHECK_FALSE(parse_quantity("1e308 km/h km").has_value());
  CHECK_FALSE(parse_quantity("3 drops").has_value());
  CHECK_FALSE(dimension_from_name("torqe").has_value());
}

TEST_CASE("no text makes the parser fall over") {
  CHECK(rc::check("any bytes", [](const std::string& text) {
    const Result<Quantity> read = parse_quantity(text);
    if (read) RC_ASSERT(std::isfinite(read->value_si));
    if (!read) RC_ASSERT(!read.error().what.empty() && !read.error().instead.empty());
  }));
}
