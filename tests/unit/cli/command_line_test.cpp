// Danger: a script that calls the command trusts its exit code and that data is on standard output alone.
#include "sim/record/files.h"
#include "sim/record/json_text.h"
#include "tests/support/captured_command.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

const std::string kScenario = std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt/worn-front-rotor.toml";

// the short job, recorded by the command itself
std::string short_attempt(const ScratchFolder& folder) {
  const std::string script = folder.write("short.hand", short_script());
  const std::string attempt = folder.path("short.attempt");
  const auto done = call({"run", kScenario, "--script", script, "--attempt", attempt, "--who", "A. Trainee"});
  INFO(done.err);
  REQUIRE(done.code == 0);
  CHECK(done.out.empty());
  return attempt;
}

}  // namespace

TEST_CASE("usage: help and version are done, everything not understood is 2") {
  const auto help = call({"--help"});
  CHECK(help.code == 0);
  CHECK(help.out.find("Examples:") != std::string::npos);
  CHECK(call({"--version"}).code == 0);
  CHECK(call({"joint", "--help"}).code == 0);
  CHECK(call({}).code == 2);
  CHECK(call({"repair"}).code == 2);
  CHECK(call({"run", kScenario}).code == 2);
  CHECK(call({"mark", "--yaml", "x"}).code == 2);
  CHECK(call({"run", kScenario, "--script", "a", "--attempt", "b", "--hand", "apprentice"}).code == 2);
  CHECK(call({"run", kScenario, "--script", "a", "--attempt", "b", "--seed", "-1"}).code == 2);
}

TEST_CASE("files that are missing or cannot be written are 4, files of another kind 3") {
  const ScratchFolder folder;
  CHECK(call({"mark", folder.path("none.attempt")}).code == 4);
  CHECK(call({"replay", folder.path("none.attempt")}).code == 4);
  CHECK(call({"check", folder.path("none.toml")}).code == 4);
  const std::string text = folder.write("text.attempt", "this is a letter\n");
  const auto mark = call({"mark", text});
  CHECK(mark.code == 3);
  CHECK(mark.out.empty());
  CHECK(mark.err.find("text.attempt:1") != std::string::npos);
  CHECK(call({"judge", kScenario, "--events", text}).code == 3);
  const std::string script = folder.write("bad.hand", "juggle the rotor\n");
  const auto run = call({"run", kScenario, "--script", script, "--attempt", folder.path("a.attempt")});
  CHECK(run.code == 3);
  CHECK(run.err.find("bad.hand:1") != std::string::npos);
  // a faulty script leaves no file behind
  CHECK_FALSE(record::load_bytes(folder.path("a.attempt"), 1 << 20));
  const std::string fine = folder.write("fine.hand", short_script());
  CHECK(call({"run", kScenario, "--script", fine, "--attempt", folder.path("no/such/folder.attempt")}).code == 4);
}

TEST_CASE("run records, mark judges negative as 1, replay is equal") {
  const ScratchFolder folder;
  const std::string attempt = short_attempt(folder);
  const auto mark = call({"mark", attempt});
  CHECK(mark.code == 1);
  CHECK(mark.out.find("A. Trainee") != std::string::npos);
  const auto json = call({"mark", attempt, "--json", "--html", folder.path("page.html")});
  CHECK(json.code == 1);
  record::JsonReader reader;
  const auto view = reader.read(json.out, "out");
  REQUIRE(view);
  CHECK(view->text("proofstand") == "mark-sheet");
  CHECK(view->find("computed")->list("bolts")->size() == 6);
  CHECK(folder.read("page.html").find("</html>") != std::string::npos);
  const auto replay = call({"replay", attempt});
  INFO(replay.err);
  CHECK(replay.code == 0);
}

TEST_CASE("an attempt is never written over") {
  const ScratchFolder folder;
  const std::string attempt = short_attempt(folder);
  const std::string before = folder.read("short.attempt");
  const auto again = call({"run", kScenario, "--script", folder.path("short.hand"), "--attempt", attempt});
  CHECK(again.code == 4);
  CHECK(again.err.find("--resume") != std::string::npos);
  CHECK(folder.read("short.attempt") == before);
}

TEST_CASE("replay prints events that judge reads; its verdict is that of mark") {
  const ScratchFolder folder;
  const std::string attempt = short_attempt(folder);
  const auto replay = call({"replay", attempt, "--events"});
  REQUIRE(replay.code == 0);
  const std::string trace = folder.write("short.trace", replay.out);
  const auto judged = call({"judge", kScenario, "--events", trace, "--json"});
  INFO(judged.err);
  CHECK(judged.code == 1);
  record::JsonReader reader;
  const auto view = reader.read(judged.out, "out");
  REQUIRE(view);
  const auto verdict = std::string(*view->text("verdict"));
  const auto marked = call({"mark", attempt, "--json"});
  CHECK(marked.out.find("\"verdict\": \"" + verdict + "\"") != std::string::npos);
}

TEST_CASE("judge tries a rule of one's own on kinds of one's own") {
  const ScratchFolder folder;
  const std::string rules = folder.write("tea.rules.toml",
                                         "format = \"proofstand shared 1\"\n"
                                         "[[rule]]\n"
                                         "id = \"warm-first\"\n"
                                         "kind = \"needs\"\n"
                                         "x = \"poured\"\n"
                                         "y = \"warmed\"\n"
                                         "severity = \"minor\"\n"
                                         "points = 2\n"
                                         "competence = \"prepare\"\n"
                                         "title.en = \"The pot is warmed before tea is poured\"\n"
                                         "why.en = \"Cold ware takes the heat.\"\n"
                                         "say.fail.en = \"Poured {count} times into cold ware.\"\n");
  const std::string header =
      R"({"proofstand":"trace","format":1,"ticks_per_s":10,"sets":[],"kinds":[{"name":"poured"},{"name":"warmed"}]})";
  const std::string good = folder.write(
      "good.trace", header + "\n{\"t\":1,\"kind\":\"warmed\"}\n" + "{\"t\":9,\"kind\":\"poured\"}\n{\"end\":20}\n");
  const std::string bad = folder.write("bad.trace", header + "\n{\"t\":9,\"kind\":\"poured\"}\n{\"end\":20}\n");
  const auto passed = call({"judge", rules, "--events", good});
  INFO(passed.err << passed.out);
  CHECK(passed.code == 0);
  const auto failed = call({"judge", rules, "--events", bad});
  CHECK(failed.code == 1);
  CHECK(failed.out.find("Poured 1 times into cold ware.") != std::string::npos);
  CHECK(failed.out.find("none-before") != std::string::npos);
}

TEST_CASE("an attempt that was edited is reported with its line, by mark and by replay") {
  const ScratchFolder folder;
  (void)short_attempt(folder);
  std::string bytes = folder.read("short.attempt");
  const std::size_t third = bytes.find('\n', bytes.find('\n') + 1) + 10;
  bytes[third] = bytes[third] == '1' ? '2' : '1';
  const std::string edited = folder.write("edited.attempt", bytes);
  for (const char* command : {"mark", "replay"}) {
    const auto done = call({command, edited});
    CHECK(done.code == 3);
    CHECK(done.err.find("edited.attempt:3") != std::string::npos);
  }
}

TEST_CASE("check lists faults to standard output and counts them") {
  const ScratchFolder folder;
  const auto fine = call({"check", kScenario});
  INFO(fine.out);
  CHECK(fine.code == 0);
  const auto faulty = call({"check", folder.write("empty.toml", "format = \"proofstand scenario 1\"\n")});
  CHECK(faulty.code == 1);
  CHECK(faulty.out.find("empty.toml") != std::string::npos);
}

}  // namespace proofstand::testing
