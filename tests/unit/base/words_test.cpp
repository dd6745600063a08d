// Danger: a torn or foreign byte in a file is taken for text, or a typing mistake is answered with silence.
#include <rapidcheck.h>

#include <string>

#include "sim/base/words.h"
#include "tests/support/catch.h"

using namespace proofstand::base;

TEST_CASE("trimming and splitting leave the words alone") {
  CHECK(trimmed("  a b \r\n") == "a b");
  CHECK(trimmed(" \t ").empty());
  CHECK(split_words("  one two\tthree ") == std::vector<std::string_view>{"one", "two", "three"});
  CHECK(split_words("   ").empty());
}

TEST_CASE("lines lose their ends and nothing else") {
  CHECK(split_lines("a\r\nb\n\nc") == std::vector<std::string_view>{"a", "b", "", "c"});
  CHECK(split_lines("").empty());
  CHECK(split_lines("a\n") == std::vector<std::string_view>{"a"});
}

TEST_CASE("edit distance counts single changes and is a distance") {
  CHECK(edit_distance("kitten", "sitting") == 3);
  CHECK(edit_distance("", "abc") == 3);
  CHECK(rc::check("symmetric, zero only for equals, within the longer", [](const std::string& a, const std::string& b) {
    const std::size_t d = edit_distance(a, b);
    RC_ASSERT(d == edit_distance(b, a));
    RC_ASSERT((d == 0) == (a == b));
    RC_ASSERT(d <= std::max(a.size(), b.size()));
  }));
}

TEST_CASE("the nearest word is offered only when it is near") {
  const std::vector<std::string_view> known = {"torque", "length", "preload"};
  CHECK(nearest_word("torqe", known) == "torque");
  CHECK(nearest_word("prelod", known) == "preload");
  CHECK(nearest_word("screwdriver", known).empty());
}

TEST_CASE("only whole and plain UTF-8 is clean text") {
  CHECK(is_clean_text("5 N·m, µ, \t\n"));
  CHECK(is_clean_text(""));
  for (const char* bad : {"\x01", "\x7f", "\xff", "\xc3", "\xc0\xaf", "\xed\xa0\x80", "\xf4\x90\x80\x80", "\xe2\x82"}) {
    CHECK_FALSE(is_clean_text(bad));
  }
  CHECK_FALSE(is_clean_text(std::string_view("a\0b", 3)));
}
