// Danger: on a machine without OpenGL the program dies, or says nothing that helps.
#include "sim/picture/dark_room.h"
#include "sim/picture/quality.h"
#include "sim/picture/shader_text.h"
#include "tests/support/catch.h"

namespace proofstand::testing {

TEST_CASE("without an EGL library the error says so and what to install") {
  const auto room = picture::DarkRoom::open("libEGL-that-is-not-there.so");
  REQUIRE_FALSE(room);
  CHECK(room.error().code == "no-opengl");
  CHECK(room.error().sentence().find("OpenGL 3.3") != std::string::npos);
  CHECK(room.error().instead.find("install") != std::string::npos);
}

TEST_CASE("a library that is no EGL is told from a missing one") {
  const auto room = picture::DarkRoom::open("libm.so.6");
  REQUIRE_FALSE(room);
  CHECK(room.error().code == "no-opengl");
  CHECK(room.error().what.find("no EGL library") != std::string::npos);
}

TEST_CASE("a driver that offers nothing is an error, not a crash") {
  const auto painter = picture::Painter::create([](const char*) -> picture::GlFunction { return nullptr; });
  REQUIRE_FALSE(painter);
  CHECK(painter.error().code == "no-opengl");
}

TEST_CASE("two rooms after one another, and a painter in each") {
  for (int i = 0; i < 2; ++i) {
    auto room = picture::DarkRoom::open();
    REQUIRE(room);
    auto painter = picture::Painter::create((*room)->load());
    REQUIRE(painter);
    CHECK_FALSE((*painter)->renderer().empty());
    CHECK((*painter)->texture() == 0);
    CHECK((*painter)->read().bytes.empty());
  }
}

TEST_CASE("every shader is in the program") {
  for (const char* name :
       {"surface.vert", "surface.frag", "frame.glsl", "studio.glsl", "tone.glsl", "whole.vert", "backdrop.frag",
        "shadow.vert", "shadow.frag", "pick.vert", "pick.frag", "gather.frag", "develop.frag"}) {
    CHECK_FALSE(picture::shader_text(name).empty());
  }
  CHECK(picture::shader_text("none.frag").empty());
}

TEST_CASE("software renderers are known by name") {
  CHECK(picture::is_software("llvmpipe (LLVM 15.0.6, 256 bits), OpenGL 4.5"));
  CHECK(picture::is_software("softpipe"));
  CHECK_FALSE(picture::is_software("A graphics card, OpenGL 4.6"));
}

TEST_CASE("a draft's scale goes down when frames are late, up again when there is time, and never out of its range") {
  picture::DraftScale scale;
  CHECK(scale.scale_1() == 1.0F);
  for (int i = 0; i < 60; ++i) scale.next(0.2);
  CHECK(scale.scale_1() == 0.5F);
  for (int i = 0; i < 200; ++i) scale.next(0.004);
  CHECK(scale.scale_1() == 1.0F);
  // a renderer on which a whole picture costs 60 ms, half of it for its area
  picture::DraftScale steered;
  double cost_s = 0.060;
  for (int i = 0; i < 60; ++i) {
    const double s = static_cast<double>(steered.next(cost_s));
    cost_s = 0.030 * s * s + 0.015;
  }
  CHECK(cost_s < 0.037);
  CHECK(cost_s > 0.022);
}

}  // namespace proofstand::testing
