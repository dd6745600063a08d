// Danger: an author's slip that `check` lets pass is marked at a trainee's expense, and a message at the wrong line
// costs the author an hour. Each file beside this one has one slip; its first line says what has to be said, and where.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "sim/scenario/scenario.h"
#include "tests/support/catch.h"

namespace {

using proofstand::base::Error;

const std::string kFolder = std::string(PROOFSTAND_ROOT) + "/tests/unit/scenario/faulty/";

struct Expectation {
  std::string code;
  std::string file_line;  ///< "E08.toml:5"
  std::string words;
};

Expectation expectation_of(const std::string& path) {
  std::ifstream file(path);
  std::string line;
  std::getline(file, line);
  const std::string start = "# expects: ";
  const std::string middle = " · ";
  REQUIRE(line.rfind(start, 0) == 0);
  const std::size_t at = line.find(" at ");
  const std::size_t dot = line.find(middle);
  REQUIRE(at != std::string::npos);
  REQUIRE(dot != std::string::npos);
  return {line.substr(start.size(), at - start.size()), line.substr(at + 4, dot - at - 4),
          line.substr(dot + middle.size())};
}

std::vector<std::string> faulty_files() {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(kFolder)) {
    const std::string name = entry.path().filename().string();
    if (name[0] >= 'A' && name[0] <= 'Z') names.push_back(name);
  }
  std::sort(names.begin(), names.end());
  return names;
}

}  // namespace

TEST_CASE("every faulty file is told so, with the code, at the line, in words that help") {
  const std::vector<std::string> names = faulty_files();
  REQUIRE(names.size() >= 50);
  for (const std::string& name : names) {
    const Expectation expected = expectation_of(kFolder + name);
    CAPTURE(name, expected.code, expected.file_line, expected.words);
    CHECK(expected.words.size() > 5);
    const auto loaded = proofstand::scenario::load_scenario(kFolder + name);
    std::string all;
    bool found = false;
    for (const Error& fault : loaded.faults.list) {
      all += fault.sentence() + "\n";
      const std::string where = fault.where.substr(std::min(fault.where.size(), kFolder.size()));
      found = found ||
              (fault.code == expected.code && where.rfind(expected.file_line + ":", 0) == 0 &&
               fault.what.find(expected.words) != std::string::npos) ||
              (fault.code == expected.code && where.rfind(expected.file_line + ":", 0) == 0 &&
               fault.instead.find(expected.words) != std::string::npos);
      CHECK_FALSE(fault.instead.empty());
    }
    CAPTURE(all);
    CHECK(found);
    // warnings load, errors do not
    CHECK(loaded.usable == (expected.code[0] == 'W'));
  }
}

TEST_CASE("the parts that the faulty files share have nothing wrong with them") {
  // its one fault is that it asks twice for the same
  const auto loaded = proofstand::scenario::load_scenario(kFolder + "W10.toml");
  CHECK(loaded.usable);
  CHECK(loaded.faults.list.size() == 1);
}
