// Danger: a wrong bit in a sine goes unseen until two machines disagree about an exam. References are long doubles.
#include <cmath>
#include <cstdint>

#include "sim/base/math.h"
#include "tests/support/catch.h"

using namespace proofstand::base;

namespace {

// many arguments, dense near zero and spread far out, the same every time
template <class F>
void over(double lo, double hi, F&& f) {
  std::uint64_t state = 88172645463325252ULL;
  for (int i = 0; i < 40000; ++i) {
    state ^= state << 13;
    state ^= state >> 7;
    state ^= state << 17;
    const double u = static_cast<double>(state >> 11) * 0x1p-53;
    f(lo + (hi - lo) * u);
    f(lo * u * u * u);
    f(hi * u * u * u);
  }
}

// the largest share of its bound that an error takes
struct Worst {
  long double share = 0.0L;
  double at = 0.0;
  void see(double x, double got, long double wanted, long double bound) {
    const long double off = std::fabs(static_cast<long double>(got) - wanted) / bound;
    if (!(off <= share)) {
      share = off;
      at = x;
    }
  }
};

}  // namespace

TEST_CASE("sine and cosine keep their bound, near zero and far out") {
  for (const double reach : {1.0, 7.0, 1000.0, 1e6}) {
    Worst sine;
    Worst cosine;
    over(-reach, reach, [&](double x) {
      const long double bound = 1e-15L + 1e-16L * std::fabs(static_cast<long double>(x));
      sine.see(x, sin_rad(x), std::sin(static_cast<long double>(x)), bound);
      cosine.see(x, cos_rad(x), std::cos(static_cast<long double>(x)), bound);
    });
    INFO("reach " << reach << ", worst at " << sine.at << " and " << cosine.at);
    CHECK(sine.share < 1.0L);
    CHECK(cosine.share < 1.0L);
  }
}

TEST_CASE("tangent follows sine and cosine") {
  Worst worst;
  over(-1.5, 1.5, [&](double x) {
    const long double wanted = std::tan(static_cast<long double>(x));
    worst.see(x, tan_rad(x), wanted, 1e-15L + 4e-15L * std::fabs(wanted * wanted) + 4e-15L * std::fabs(wanted));
  });
  CHECK(worst.share < 1.0L);
}

TEST_CASE("arc tangent keeps its bound and its quadrants") {
  Worst worst;
  for (const double reach : {1.0, 10.0, 1e9}) {
    over(-reach, reach, [&](double x) { worst.see(x, atan_rad(x), std::atan(static_cast<long double>(x)), 1e-15L); });
  }
  INFO("worst at " << worst.at);
  CHECK(worst.share < 1.0L);
  CHECK(atan2_rad(0.0, 0.0) == 0.0);
  CHECK(atan2_rad(1.0, 0.0) == Approx(kPi / 2).margin(1e-15));
  CHECK(atan2_rad(-1.0, 0.0) == Approx(-kPi / 2).margin(1e-15));
  CHECK(atan2_rad(0.0, -1.0) == Approx(kPi).margin(1e-15));
  CHECK(atan2_rad(-1.0, -1.0) == Approx(-3 * kPi / 4).margin(1e-15));
  CHECK(atan2_rad(1.0, -1.0) == Approx(3 * kPi / 4).margin(1e-15));
}

TEST_CASE("arc cosine clamps what lies a rounding outside") {
  CHECK(acos_rad(1.0 + 1e-15) == 0.0);
  CHECK(acos_rad(-2.0) == Approx(kPi).margin(1e-15));
  Worst worst;
  over(-1.0, 1.0, [&](double x) { worst.see(x, acos_rad(x), std::acos(static_cast<long double>(x)), 2e-15L); });
  CHECK(worst.share < 1.0L);
}

TEST_CASE("the exponential keeps its relative bound over its whole range, and saturates") {
  Worst worst;
  for (const double reach : {1.0, 30.0, 700.0}) {
    over(-reach, reach, [&](double x) {
      const long double wanted = std::exp(static_cast<long double>(x));
      worst.see(x, exp_1(x), wanted, 4e-16L * wanted);
    });
  }
  INFO("worst at " << worst.at);
  CHECK(worst.share < 1.0L);
  CHECK(exp_1(0.0) == 1.0);
  CHECK(exp_1(-1000.0) == 0.0);
  CHECK(std::isfinite(exp_1(1e6)));
  CHECK(exp_1(-740.0) > 0.0);
}

TEST_CASE("logarithm and power keep their bounds") {
  Worst log_worst;
  Worst pow_worst;
  over(1e-12, 1e12, [&](double x) {
    const long double wanted = std::log(static_cast<long double>(x));
    log_worst.see(x, log_1(x), wanted, 1e-15L * (1.0L + std::fabs(wanted)));
    for (const double power : {0.5, 2.6, 2.97, -1.5, 1.0 / 3.0}) {
      const long double result = std::pow(static_cast<long double>(x), static_cast<long double>(power));
      pow_worst.see(x, pow_1(x, power), result, (1e-15L + 5e-16L * std::fabs(std::log(result))) * result);
    }
  });
  INFO("worst at " << log_worst.at << " and " << pow_worst.at);
  CHECK(log_worst.share < 1.0L);
  CHECK(pow_worst.share < 1.0L);
  CHECK(log_1(1.0) == 0.0);
  CHECK(log_1(5e-324) == Approx(-744.4400719213812).epsilon(1e-14));
}

TEST_CASE("wrapping leaves an angle within one turn") {
  over(-1e6, 1e6, [](double x) {
    const double r = wrap_two_pi(x);
    if (!(r >= 0.0 && r < kTwoPi)) FAIL("left the turn at " << x);
  });
  CHECK(wrap_two_pi(-1e-20) < kTwoPi);
  CHECK(degrees(radians(57.0)) == Approx(57.0));
}
