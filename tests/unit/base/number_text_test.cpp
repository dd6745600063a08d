// Danger: a figure that reads back as another one breaks seals and replays; a locale or a hexadecimal slips in unseen.
#include <rapidcheck.h>

#include <cmath>

#include "sim/base/number_text.h"
#include "tests/support/catch.h"

using namespace proofstand::base;

TEST_CASE("every finite double reads back as itself") {
  CHECK(rc::check("round trip", [](double value) {
    RC_PRE(std::isfinite(value));
    RC_ASSERT(double_from_text(text_from_double(value)) == std::optional(value));
  }));
  CHECK(text_from_double(0.1) == "0.1");
  CHECK(text_from_double(-0.0) == "0");
  CHECK(text_from_double(5.0) == "5");
}

TEST_CASE("whole numbers read back, and nothing beyond their range") {
  CHECK(rc::check("round trip",
                  [](std::int64_t value) { RC_ASSERT(int_from_text(text_from_int(value)) == std::optional(value)); }));
  CHECK_FALSE(int_from_text("9223372036854775808"));
  CHECK_FALSE(int_from_text("12x"));
  CHECK_FALSE(int_from_text(""));
  CHECK_FALSE(int_from_text("+-3"));
  CHECK(int_from_text("+7") == std::optional<std::int64_t>(7));
}

TEST_CASE("only one plain decimal number is taken") {
  for (const char* bad : {"", " 1", "1 ", "0x10", "nan", "inf", "-inf", "1e999", "1.2.3", "--1", "-", ".", "e5"}) {
    INFO(bad);
    CHECK_FALSE(double_from_text(bad));
  }
  CHECK(double_from_text("+1.5") == std::optional(1.5));
  CHECK(double_from_text("1e-3") == std::optional(0.001));
  CHECK_FALSE(double_from_text("1,78"));
  CHECK(double_from_text("1,78", true) == std::optional(1.78));
  CHECK_FALSE(double_from_text("1.000,5", true));
  CHECK_FALSE(double_from_text("1,000,5", true));
}

TEST_CASE("figures for people are short and keep their sign and size") {
  CHECK(text_for_people(6285.04, 4) == "6285");
  CHECK(text_for_people(1.8, 4) == "1.8");
  CHECK(text_for_people(0.05213, 3) == "0.0521");
  CHECK(text_for_people(-4.5678, 3) == "-4.57");
  CHECK(text_for_people(0.0, 3) == "0");
  CHECK(text_for_people(9.9999, 2) == "10");
  CHECK(text_fixed(1.5, 2) == "1.50");
  CHECK(text_fixed(-0.001, 2) == "0.00");
  CHECK(rc::check("three digits are within half of the last", [] {
    const double value = 1e-3 * static_cast<double>(*rc::gen::inRange(-100000000, 100000000));
    const auto back = double_from_text(text_for_people(value, 3));
    RC_ASSERT(back.has_value());
    RC_ASSERT(std::fabs(*back - value) <= 0.0051 * std::fabs(value));
  }));
}
