// Danger: a file from outside that once crashed, hung or was refused without a reason does so again.
#include <filesystem>
#include <fstream>
#include <iterator>

#include "tests/fuzz/readers.h"
#include "tests/support/catch.h"

using namespace proofstand;

namespace {

std::vector<std::filesystem::path> cases_of(const std::string& reader) {
  std::vector<std::filesystem::path> paths;
  const std::filesystem::path folder = std::filesystem::path(PROOFSTAND_ROOT) / "tests" / "fuzz" / "cases" / reader;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) paths.push_back(entry.path());
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
  std::size_t worked = 0;
  for (const auto& path : cases_of(name)) {
    const std::string text = text_of(path);
    INFO(path.string());
    must_answer(reader(text));
    ++worked;
    if (path.filename().string().rfind("good-", 0) != 0) continue;
    CHECK(reader(text).usable);
    for (const std::string& bad : mutilated(text)) {
      INFO("a mutilation of " << bad.size() << " bytes");
      must_answer(reader(bad));
    }
  }
  CHECK(worked > 0);
}

}  // namespace

TEST_CASE("a mutilated scenario file is refused with a reason") { work_through("scenario"); }
TEST_CASE("a mutilated hand script is refused with a reason") { work_through("script"); }
TEST_CASE("a mutilated trace is refused with a reason") { work_through("trace"); }
TEST_CASE("a mutilated attempt is refused with a reason") { work_through("attempt"); }
