// The danger: what a person has set, or a translator has written, comes back as something else.
#include "sim/desk/settings.h"
#include "sim/desk/words.h"
#include "tests/support/catch.h"

namespace proofstand::desk {

TEST_CASE("settings come back as they were kept, and nonsense is passed over", "[desk][settings]") {
  Settings settings;
  settings.text_percent = 175;
  settings.dark = true;
  settings.keys["keep"] = "Ctrl+Enter";
  const Settings back = settings_from_text(settings_text(settings));
  CHECK(back.text_percent == 175);
  CHECK(back.dark);
  CHECK(back.keys.at("keep") == "Ctrl+Enter");
  const Settings odd = settings_from_text("text percent = 9000\nwho knows = 3\ndark = maybe\n");
  CHECK(odd.text_percent == 100);
  CHECK_FALSE(odd.dark);
}

TEST_CASE("a catalogue gives its sentences, but none that a translator doubts", "[desk][words]") {
  const auto read = read_catalogue(
      "msgid \"\"\nmsgstr \"Language: xx\"\n\nmsgid \"one\"\nmsgstr \"\"\n\"ei\"\n\"ns\"\n\n#, fuzzy\nmsgid "
      "\"two\"\nmsgstr "
      "\"zwo\"\n\nmsgid \"three\\n\"\nmsgstr \"drei\\n\"\n");
  REQUIRE(read.size() == 2);
  CHECK(read[0].first == "one");
  CHECK(read[0].second == "eins");
  CHECK(read[1].first == "three\n");
}

}  // namespace proofstand::desk
