// Danger: a hostile or damaged file must give a sentence, never a crash; and a number must survive its way through
// text.
#include "sim/record/json_text.h"

#include "tests/support/catch.h"

namespace proofstand::record {

TEST_CASE("what is written reads back") {
  JsonWriter json;
  json.begin_object().member("name", "bolt \"4\" \xC3\xA4\n").member("count", std::int64_t{-7});
  json.key("list").begin_list().real(0.1).real(4011.25).flag(true).null().begin_list().end_list().end_list();
  json.end_object();
  JsonReader reader;
  const auto view = reader.read(json.text(), "test");
  REQUIRE(view);
  CHECK(view->text("name") == "bolt \"4\" \xC3\xA4\n");
  CHECK(view->whole("count") == -7);
  const auto list = view->list("list");
  REQUIRE(list);
  std::vector<JsonNode> nodes;
  for (const JsonView child : list->children()) nodes.push_back(child.node());
  REQUIRE(nodes.size() == 5);
  CHECK(nodes[0].real_1 == 0.1);
  CHECK(nodes[1].real_1 == 4011.25);
  CHECK(nodes[2].flag);
  CHECK(nodes[3].type == JsonType::Null);
  CHECK(nodes[4].type == JsonType::List);
  CHECK_FALSE(view->find("other"));
  CHECK_FALSE(view->whole("name"));
}

TEST_CASE("text that is no JSON gives an error") {
  JsonReader reader;
  const std::string deep = std::string(100000, '[') + std::string(100000, ']');
  const std::string binary(
      "\x7f"
      "ELF\0\0\x01",
      7);
  for (const std::string& text : {std::string(), std::string("{"), std::string("{\"a\":1}x"), deep, binary,
                                  std::string("{\"a\":\"\xff\xfe\"}"), std::string("[1e999]"), std::string("nul")}) {
    CHECK_FALSE(reader.read(text, "test"));
  }
  // and the reader still works afterwards
  CHECK(reader.read("{\"a\":1}", "test"));
}

TEST_CASE("a text that is not UTF-8 is mended when it is written") {
  JsonWriter json;
  json.begin_object()
      .member("who",
              "\xff"
              "A")
      .end_object();
  JsonReader reader;
  const auto view = reader.read(json.text(), "test");
  REQUIRE(view);
  CHECK(view->text("who") ==
        "\xEF\xBF\xBD"
        "A");
}

}  // namespace proofstand::record
