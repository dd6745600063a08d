// Danger: a file that is no scenario (huge, deep, binary, cut off) takes the program down, or an include reads what it
// must not.
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

#include "sim/scenario/node_text.h"
#include "sim/scenario/scenario.h"
#include "sim/scenario/toml_text.h"
#include "tests/support/catch.h"

namespace {

namespace fs = std::filesystem;
using namespace proofstand;

/// A folder of its own, gone at the end.
class Folder {
 public:
  Folder() : path_(fs::temp_directory_path() / ("proofstand_scenario_" + std::to_string(std::rand()))) {
    fs::create_directories(path_ / "own");
    fs::create_directories(path_ / "shared");
  }
  ~Folder() { fs::remove_all(path_); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::string write(const std::string& name, const std::string& text) const {
    std::ofstream(path_ / name, std::ios::binary) << text;
    return (path_ / name).string();
  }
  [[nodiscard]] const fs::path& path() const { return path_; }

 private:
  fs::path path_;
};

const std::string kFormat = "format = \"proofstand scenario 1\"\n";

base::Error first_fault(const std::string& path) {
  const auto loaded = scenario::load_scenario(path);
  REQUIRE_FALSE(loaded.usable);
  REQUIRE_FALSE(loaded.faults.list.empty());
  CHECK_FALSE(loaded.faults.list[0].what.empty());
  CHECK_FALSE(loaded.faults.list[0].instead.empty());
  return loaded.faults.list[0];
}

}  // namespace

TEST_CASE("what is no scenario is refused in words") {
  const Folder folder;
  CHECK(first_fault((folder.path() / "own" / "nowhere.toml").string()).code == "S01");
  CHECK(first_fault((folder.path() / "own").string()).code == "S01");
  CHECK(first_fault(folder.write("own/empty.toml", "")).code == "S18");
  CHECK(first_fault(folder.write("own/binary.toml", std::string("\x7f\x45\x4c\x46\0\0\x01", 7))).code == "S01");
  CHECK(first_fault(folder.write("own/latin.toml",
                                 "title = \"M\xfc"
                                 "hle\"\n"))
            .code == "S01");
  CHECK(first_fault(folder.write("own/huge.toml", "a = \"" + std::string(1u << 20, 'x') + "\"\n")).code == "S01");
  CHECK(first_fault(folder.write("own/half.toml", kFormat + "[hub\nbosses")).code == "E01");
  CHECK(first_fault(folder.write("own/twice.toml", kFormat + "a = 1\na = 2\n")).code == "E01");
}

TEST_CASE("texts that break the parser's own assumptions are refused like any other") {
  for (const char* text :
       {"a = {=1}", "a = {[}", "a = {.b = 1}", "= 1", "[]", "[[]]", "[=]", "a. = 1", "a = {\xC3\xA9 = 1}", "a = {,}",
        "a = { ] }", "[a.]", "a = {b = 1 {", "a = [", "a = \"\\u12", "a = 1e", "a = 0x", "a"}) {
    CAPTURE(text);
    CHECK_FALSE(scenario::parse_toml(text, 0).has_value());
  }
}

TEST_CASE("deeply nested files are refused before they cost anything") {
  for (const int depth : {33, 200, 5000, 200000}) {
    std::string lists =
        "a = " + std::string(static_cast<std::size_t>(depth), '[') + std::string(static_cast<std::size_t>(depth), ']');
    const auto read = scenario::parse_toml(lists, 0);
    CHECK_FALSE(read.has_value());
    std::string dotted = "a";
    for (int i = 0; i < depth && dotted.size() < 900000; ++i) dotted += ".a";
    CHECK_FALSE(scenario::parse_toml(dotted + " = 1", 0).has_value());
  }
  CHECK(scenario::parse_toml("a = [[[[[[[[[[1]]]]]]]]]]", 0).has_value());
}

TEST_CASE("includes stay in the exercise's own folder and the shared one") {
  const Folder folder;
  folder.write("secret.toml", "format = \"proofstand shared 1\"\n");
  folder.write("shared/part.toml", "format = \"proofstand shared 1\"\n");
  const auto with = [&](const std::string& include) {
    return scenario::load_scenario(folder.write("own/try.toml", kFormat + "include = [\"" + include + "\"]\n"));
  };
  const auto refused = [&](const std::string& include) {
    return first_fault(folder.write("own/try.toml", kFormat + "include = [\"" + include + "\"]\n"));
  };
  CHECK(with("../shared/part.toml").texts_read.size() == 2);
  CHECK(refused("../secret.toml").code == "S02");
  CHECK(refused("../own/../secret.toml").code == "S02");
  CHECK(refused("../shared/../secret.toml").code == "S02");
  CHECK(refused((folder.path() / "shared" / "part.toml").string()).code == "S02");
  CHECK(refused("/etc/passwd").code == "S02");
  CHECK(refused("../shared/missing.toml").code == "S01");
  // a link that looks as if it lay inside
  fs::create_symlink(folder.path() / "secret.toml", folder.path() / "own" / "link.toml");
  CHECK(refused("link.toml").code == "S02");
  CHECK(with("link.toml").texts_read.size() == 1);
  // a shared folder that looks like the shared one by its beginning
  fs::create_directories(folder.path() / "shared-else");
  folder.write("shared-else/part.toml", "format = \"proofstand shared 1\"\n");
  CHECK(refused("../shared-else/part.toml").code == "S02");
  // no file of a file
  folder.write("shared/more.toml", "format = \"proofstand shared 1\"\ninclude = [\"part.toml\"]\n");
  CHECK(refused("../shared/more.toml").code == "S02");
}

TEST_CASE("a tree written as text reads back to the same text") {
  const std::string text =
      "a = 1\nb = \"quote \\\" back \\\\ line \\n tab \\t µ\"\nc = [1, 2.5, \"x\", true]\nd = 3.0\ne = -0.001\n"
      "[t]\nz = 1\ny = 2\n[t.\"with blank\"]\nq = []\n[[list]]\nn = 1\n[[list]]\nn = 2\n[list.deep]\nm = [[1, 2], "
      "[3]]\n";
  const auto tree = scenario::parse_toml(text, 0);
  REQUIRE(tree.has_value());
  const std::string once = scenario::toml_from_node(*tree);
  const auto again = scenario::parse_toml(once, 0);
  REQUIRE(again.has_value());
  CHECK(scenario::toml_from_node(*again) == once);
  CHECK(again->find("d")->kind == scenario::NodeKind::Real);
  CHECK(again->find("b")->text == tree->find("b")->text);
  REQUIRE(again->find("t")->members.size() == 3);
  CHECK(again->find("t")->members[0].key == "z");
  CHECK(again->find("list")->members.size() == 2);
  CHECK(again->find("list")->members[1].node.find("deep") != nullptr);
}

TEST_CASE("keys and values know where they stand") {
  const auto tree = scenario::parse_toml("# first\nhub = { bosses = 6 }\n  far = \"x\"\n", 3);
  REQUIRE(tree.has_value());
  const scenario::Node* bosses = tree->find("hub")->find("bosses");
  CHECK(bosses->at.file == 3);
  CHECK(bosses->at.line == 2);
  CHECK(bosses->at.column == 18);
  CHECK(tree->members[1].key_at.column == 3);
  CHECK(tree->find("far")->at.column == 9);
}

TEST_CASE("embedded parts that were tampered with are refused, not believed") {
  const auto loaded = scenario::load_scenario(std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt/ruined-or-bent.toml");
  REQUIRE(loaded.usable);
  const auto drawn = scenario::draw(*loaded.file, 1);
  REQUIRE(drawn.has_value());
  CHECK_FALSE(scenario::read_resolved("", "").has_value());
  CHECK_FALSE(scenario::read_resolved(drawn->rules_text, drawn->bench_text).has_value());
  CHECK_FALSE(scenario::read_resolved(drawn->bench_text + "[rule]\n", drawn->rules_text).has_value());
  CHECK_FALSE(scenario::read_resolved(drawn->bench_text.substr(0, 400), drawn->rules_text).has_value());
  CHECK_FALSE(scenario::read_resolved("\xff\xfe", drawn->rules_text).has_value());
}
