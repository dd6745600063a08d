// Danger: a picture that does not show what was asked for, or a command that leaves half a film and says nothing.
#include "sim/picture/png.h"
#include "sim/record/files.h"
#include "tests/support/captured_command.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

const std::string kScenario = std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt/worn-front-rotor.toml";
constexpr std::size_t kLargest = std::size_t{4} << 20;

picture::Image read_picture(const std::string& path) {
  const auto bytes = record::load_bytes(path, kLargest);
  REQUIRE(bytes);
  auto image = picture::image_from_png(*bytes);
  REQUIRE(image);
  return *image;
}

std::string short_attempt(const ScratchFolder& folder) {
  const auto worked = work_attempt(worn_front_rotor(1), short_script());
  return folder.write("short.attempt", *worked.bytes);
}

}  // namespace

TEST_CASE("picture: a scenario's start and an attempt's moments, of the size asked for") {
  const ScratchFolder folder;
  const std::string start = folder.path("start.png");
  const auto done = call({"picture", kScenario, "--draft", "--size", "160x90", "-o", start});
  INFO(done.err);
  REQUIRE(done.code == 0);
  CHECK(done.out.empty());
  CHECK(read_picture(start).size == picture::Size{160, 90});

  const std::string attempt = short_attempt(folder);
  for (const char* moment : {"0:02", "9.5"}) {
    const auto again =
        call({"picture", attempt, "--at", moment, "--draft", "--size", "160x90", "-o", folder.path(moment)});
    INFO(again.err);
    CHECK(again.code == 0);
  }
  // hands have moved meanwhile
  CHECK(read_picture(folder.path("0:02")).bytes != read_picture(folder.path("9.5")).bytes);
}

TEST_CASE("picture: what cannot be drawn is refused with its reason") {
  const ScratchFolder folder;
  const std::string file = folder.path("a.png");
  const std::string attempt = short_attempt(folder);
  const auto view = call({"picture", kScenario, "--view", "moon", "-o", file});
  CHECK(view.code == 2);
  CHECK(view.err.find("workplace") != std::string::npos);
  CHECK(call({"picture", kScenario, "--size", "10x10", "-o", file}).code == 2);
  CHECK(call({"picture", kScenario, "--size", "wide", "-o", file}).code == 2);
  CHECK(call({"picture", attempt, "--at", "yesterday", "-o", file}).code == 2);
  CHECK(call({"picture", attempt, "--at", "5:61", "-o", file}).code == 2);
  const auto late = call({"picture", attempt, "--at", "9:00:00", "-o", file});
  CHECK(late.code == 2);
  CHECK(late.err.find("ends at") != std::string::npos);
  CHECK(call({"picture", kScenario, "--at", "10", "-o", file}).code == 2);
  CHECK(call({"picture", folder.path("none.attempt"), "-o", file}).code == 4);
  CHECK(call({"picture", kScenario, "--draft", "--size", "64x64", "-o", folder.path("no/such/folder.png")}).code == 4);
  CHECK(call({"picture", kScenario}).code == 2);
  CHECK_FALSE(record::load_bytes(file, kLargest));
}

TEST_CASE("film: frames from moment to moment, numbered, each a picture") {
  const ScratchFolder folder;
  const std::string attempt = short_attempt(folder);
  const auto done = call({"film", attempt, "--every", "2 s", "--from", "1", "--to", "6.9", "--draft", "--size", "96x64",
                          "-o", folder.path("frames")});
  INFO(done.err);
  REQUIRE(done.code == 0);
  CHECK(done.err.find("3 frames") != std::string::npos);
  for (const char* name : {"frames/frame-000001.png", "frames/frame-000002.png", "frames/frame-000003.png"})
    CHECK(read_picture(folder.path(name)).size == picture::Size{96, 64});
  CHECK_FALSE(record::load_bytes(folder.path("frames/frame-000004.png"), kLargest));
  CHECK(call({"film", kScenario, "-o", folder.path("x")}).code == 3);
  CHECK(call({"film", attempt, "--every", "0 s", "-o", folder.path("x")}).code == 2);
  CHECK(call({"film", attempt, "--from", "8", "--to", "2", "-o", folder.path("x")}).code == 2);
}

}  // namespace proofstand::testing
