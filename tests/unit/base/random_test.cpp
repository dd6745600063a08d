// Danger: a draw that depends on the order of work, or a scatter that leaves its class.
#include <cmath>

#include "sim/base/random.h"
#include "sim/base/result.h"
#include "sim/base/ticks.h"
#include "tests/support/catch.h"

using namespace proofstand::base;

TEST_CASE("a draw is its key's, whatever was drawn before") {
  const DrawKey key{7, "friction", 3, 2};
  const double once = draw_unit(key);
  for (std::uint64_t i = 0; i < 100; ++i) draw_unit({7, "friction", i, 0});
  CHECK(draw_unit(key) == once);
  CHECK(draw_unit({8, "friction", 3, 2}) != once);
  CHECK(draw_unit({7, "tool bias", 3, 2}) != once);
  CHECK(draw_unit({7, "friction", 4, 2}) != once);
  CHECK(draw_unit({7, "friction", 3, 3}) != once);
}

TEST_CASE("units are even, whole numbers reach every value") {
  int below[6] = {0, 0, 0, 0, 0, 0};
  double sum = 0.0;
  for (std::uint64_t i = 0; i < 6000; ++i) {
    const double u = draw_unit({1, "even", 0, i});
    REQUIRE((u >= 0.0 && u < 1.0));
    sum += u;
    ++below[draw_below({1, "whole", 0, i}, 6)];
    const double b = draw_between({1, "between", 0, i}, -2.0, 3.0);
    REQUIRE((b >= -2.0 && b < 3.0));
  }
  CHECK(sum / 6000.0 == Approx(0.5).margin(0.015));
  for (const int hits : below) CHECK(std::abs(hits - 1000) < 130);
}

TEST_CASE("normal draws have the mean and spread of the cut normal, and never pass the limit") {
  double sum = 0.0;
  double squares = 0.0;
  for (std::uint64_t i = 0; i < 20000; ++i) {
    const double z = draw_normal({3, "normal", 0, i}, 2.5);
    REQUIRE(std::fabs(z) <= 2.5);
    sum += z;
    squares += z * z;
  }
  CHECK(sum / 20000.0 == Approx(0.0).margin(0.03));
  // closed form: variance 1 - 2 c f(c)/(1 - 2 Q(c)) = 0.9113 at c = 2.5
  CHECK(squares / 20000.0 == Approx(0.9113).margin(0.03));
}

TEST_CASE("ticks and seconds agree") {
  CHECK(ticks_from(1.0) == kTicksPerSecond);
  CHECK(seconds(ticks_from(12.5)) == 12.5);
  CHECK(ticks_from(0.0) == 0);
}

TEST_CASE("an error says where, what and what to do in one sentence") {
  const Error error{"E08", "bike.toml:3:5", "torque has no unit", "write 5 N·m"};
  const std::string sentence = error.sentence();
  for (const char* part : {"E08", "bike.toml:3:5", "torque has no unit", "write 5 N·m"}) {
    CHECK(sentence.find(part) != std::string::npos);
  }
}

TEST_CASE("a result hands its value on and lets an error through") {
  const Result<int> good = 4;
  const Result<int> bad = Error{"x", "", "wrong", "do"};
  CHECK(*good.transform([](int v) { return v * 2; }) == 8);
  CHECK_FALSE(bad.transform([](int v) { return v * 2; }).has_value());
  CHECK(bad.and_then([](int v) { return Result<int>(v); }).error().what == "wrong");
  Faults faults;
  Error warning{"w", "", "odd", "look", true};
  faults.add(warning);
  CHECK_FALSE(faults.any_error());
  for (int i = 0; i < 80; ++i) faults.add({"e", "", "bad", "mend"});
  CHECK(faults.any_error());
  CHECK(faults.list.size() == Faults::kMost);
}
