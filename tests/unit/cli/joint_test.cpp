// Danger: a figure in the wrong unit or from the wrong friction is believed because a program printed it.
#include "sim/base/quantity.h"
#include "sim/cli/joint_figures.h"
#include "sim/record/json_text.h"
#include "tests/support/captured_command.h"
#include "tests/support/catch.h"

namespace proofstand::cli {
namespace {

JointOptions m5(std::string torque, std::string friction) {
  JointOptions options;
  options.thread = "M5x0.8";
  options.torque = std::move(torque);
  options.friction = std::move(friction);
  return options;
}

}  // namespace

TEST_CASE("hand forces of the trade come out as it says them") {
  // common practice, no source: 44 lbf held 8 in from the ring, 11 lbf held 4 in from the bolt
  JointOptions ring = m5("39.8 N\xC2\xB7m", "0.14");
  ring.arm = "8 in";
  const auto at_ring = joint_figures(ring);
  REQUIRE(at_ring);
  CHECK(*at_ring->hand_force_n / 4.4482216152605 == Approx(44.0).epsilon(0.002));
  JointOptions bolt = m5("4.97 Nm", "0.14");
  bolt.arm = "4 in";
  const auto at_bolt = joint_figures(bolt);
  REQUIRE(at_bolt);
  CHECK(*at_bolt->hand_force_n / 4.4482216152605 == Approx(11.0).epsilon(0.002));
}

TEST_CASE("M5 at friction 0.14 agrees with the long form of the standards") {
  // ISO 16047 and VDI 2230: F = T / (0.159 P + 0.577 d2 mu + mu Db/2), d2 = 4.480 mm; worked by hand here
  const auto joint = joint_figures(m5("5 N\xC2\xB7m", "0.14"));
  REQUIRE(joint);
  const double lever_m = 0.8e-3 / (2.0 * 3.14159265358979) + 0.57735 * 4.4804e-3 * 0.14 + 0.14 * 7.1e-3 / 2.0;
  CHECK(joint->preload_n == Approx(5.0 / lever_m).epsilon(1e-4));
  // ISO 898-1 lists 14.2 mm2 as stress area of M5
  CHECK(joint->stress_area_m2 * 1e6 == Approx(14.2).epsilon(0.003));
  CHECK(joint->yield_margin_1 > 1.0);
  CHECK(joint->strip_margin_1 > joint->yield_margin_1);
}

TEST_CASE("units are accepted as people write them") {
  const double reference_n = joint_figures(m5("5 N\xC2\xB7m", "0.14"))->preload_n;
  for (const char* torque : {"5Nm", "5 N.m", "5,0 N\xC2\xB7m", "44.2537 in-lbf", "44.2537 lbf\xC2\xB7in"}) {
    const auto joint = joint_figures(m5(torque, "0.14"));
    INFO(torque);
    if (!joint) FAIL(joint.error().sentence());
    CHECK(joint->preload_n == Approx(reference_n).epsilon(1e-4));
  }
  CHECK(thread_from_words("M6")->pitch_m == Approx(0.001));
  CHECK(thread_from_words("M5\xC3\x97"
                          "0.8")
            ->pitch_m == Approx(0.0008));
}

TEST_CASE("grease gives more preload than a clean thread, a patch less, and both say why") {
  const auto clean = joint_figures(m5("5 N\xC2\xB7m", "clean"));
  const auto greased = joint_figures(m5("5 N\xC2\xB7m", "greased"));
  const auto patch = joint_figures(m5("5 N\xC2\xB7m", "patch"));
  REQUIRE((clean && greased && patch));
  CHECK(greased->preload_n > 1.15 * clean->preload_n);
  CHECK(patch->preload_n < clean->preload_n);
  CHECK(patch->prevailing_nm > 0.0);
}

TEST_CASE("what cannot be a joint is refused with what to write instead") {
  struct Wrong {
    JointOptions options;
    std::string says;
  };
  std::vector<Wrong> wrongs;
  JointOptions base = m5("5 N\xC2\xB7m", "clean");
  for (const char* thread : {"5x0.8", "M", "M5x", "M5x9", "M5x0.8x3", "M900x2", "M0"}) {
    base.thread = thread;
    wrongs.push_back({base, "--thread"});
  }
  wrongs.push_back({m5("5 kg", "clean"), "--torque"});
  wrongs.push_back({m5("-1 N\xC2\xB7m", "clean"), "--torque"});
  wrongs.push_back({m5("5", "clean"), "--torque"});
  wrongs.push_back({m5("5 N\xC2\xB7m", "claen"), "--friction"});
  wrongs.push_back({m5("5 N\xC2\xB7m", "7"), "--friction"});
  base = m5("5 N\xC2\xB7m", "clean");
  base.bearing = "0 mm";
  wrongs.push_back({base, "--bearing"});
  base = m5("5 N\xC2\xB7m", "clean");
  base.engagement = "8 N";
  wrongs.push_back({base, "--engagement"});
  base = m5("5 N\xC2\xB7m", "clean");
  base.grade = "9.9";
  wrongs.push_back({base, "--grade"});
  for (const Wrong& wrong : wrongs) {
    const auto joint = joint_figures(wrong.options);
    INFO(wrong.options.thread << " " << wrong.options.torque << " " << wrong.options.friction);
    REQUIRE_FALSE(joint);
    CHECK(joint.error().where == wrong.says);
    CHECK_FALSE(joint.error().instead.empty());
  }
}

TEST_CASE("the joint command prints figures as JSON with keys that name their units") {
  const auto done =
      testing::call({"joint", "--thread", "M5x0.8", "--torque", "5 N\xC2\xB7m", "--arm", "4 in", "--json"});
  CHECK(done.code == 0);
  record::JsonReader reader;
  const auto view = reader.read(done.out, "out");
  REQUIRE(view);
  for (const char* key : {"preload_n", "combined_stress_mpa", "yield_margin", "strip_margin", "hand_force_n"}) {
    INFO(key);
    CHECK(view->find(key));
  }
}

}  // namespace proofstand::cli
