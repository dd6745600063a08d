// Danger: a file from outside that once crashed, hung or was refused without a reason does so again.
#include <filesystem>
#include <fstream>
#include <iterator>

#include "tests/fuzz/readers.h"
#include "tests/support/catch.h"

using namespace proofstand;

namespace {

namespace fs = std::filesystem;

/// Files of a folder of the project with this ending ("": all).
std::vector<fs::path> files_of(const std::string& folder, const std::string& ending) {
  std::vector<fs::path> paths;
  for (const auto& entry : fs::directory_iterator(fs::path(PROOFSTAND_ROOT) / folder)) {
    if (ending.empty() || entry.path().extension() == ending) paths.push_back(entry.path());
  }
  return paths;
}

/// Truncated, repeated, flipped and buried: what happens to files on their way.
std::vector<std::string> mutilated(const std::string& good) {
  std::vector<std::string> all = {"", std::string(1, '\0'), "\xff\xfe\x00", good + good, std::string(100000, '[')};
  for (std::size_t cut = 0; cut < good.size(); cut += good.size() / 40 + 1) {
    all.push_back(good.substr(0, cut));
    std::string flipped = good;
    flipped[cut] = static_cast<char>(flipped[cut] ^ 0x10);
    all.push_back(flipped);
    std::string doubled = good;
    doubled.insert(cut, good.substr(cut / 2, 50));
    all.push_back(doubled);
  }
  std::string deep;
  for (int i = 0; i < 20000; ++i) deep += "{\"a\":";
  all.push_back(deep);
  all.push_back(std::string(3 << 20, 'x'));
  return all;
}

std::string text_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void must_answer(const fuzz::Read& read) {
  CHECK((read.usable || !read.errors.empty()));
  for (const base::Error& error : read.errors) {
    INFO(error.sentence());
    CHECK_FALSE(error.what.empty());
    CHECK_FALSE(error.instead.empty());
  }
}

void work_through(const std::string& name) {
  const fuzz::Reader reader = fuzz::find_reader(name);
  REQUIRE(reader != nullptr);
  for (const auto& path : files_of("tests/fuzz/cases/" + name, "")) {
    INFO(path.string());
    must_answer(reader(text_of(path)));
  }
}

void mutilate(const std::string& name, const std::vector<fs::path>& good) {
  const fuzz::Reader reader = fuzz::find_reader(name);
  REQUIRE(reader != nullptr);
  REQUIRE_FALSE(good.empty());
  for (const auto& path : good) {
    INFO(path.string());
    const std::string text = text_of(path);
    CHECK(reader(text).usable);
    for (const std::string& bad : mutilated(text)) {
      INFO("a mutilation of " << bad.size() << " bytes");
      must_answer(reader(bad));
    }
  }
}

}  // namespace

TEST_CASE("a mutilated scenario file is refused with a reason") {
  work_through("scenario");
  mutilate("scenario", files_of("scenarios/six-bolt", ".toml"));
}
TEST_CASE("a mutilated hand script is refused with a reason") {
  work_through("script");
  mutilate("script", {fs::path(PROOFSTAND_ROOT) / "demo" / "scripts" / "worn-front-rotor.hand"});
}
TEST_CASE("a mutilated trace is refused with a reason") {
  work_through("trace");
  mutilate("trace", files_of("tests/fuzz/cases/trace", ".jsonl"));
}
TEST_CASE("a mutilated attempt is refused with a reason") {
  work_through("attempt");
  mutilate("attempt", files_of("tests/fuzz/cases/attempt", ".attempt"));
}
