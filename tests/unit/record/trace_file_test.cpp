// Danger: an author who doubts a rule writes a trace by hand; a wrong word in it must be named with its line, not taken
// for something else, and what the program prints must read back as it was.
#include "sim/record/trace_file.h"

#include "sim/event/job_events.h"
#include "tests/support/catch.h"

namespace proofstand::record {
namespace {

const std::string kOwnHeader =
    R"({"proofstand":"trace","format":1,"ticks_per_s":10,"sets":[{"name":"cups","ring":true,"items":["red","blue"]}],)"
    R"("kinds":[{"name":"poured","fields":[{"name":"cup","type":"item","set":"cups"},{"name":"amount","type":"quantity",)"
    R"("of":"torque"},{"name":"by","type":"choice","words":["left","right"]},{"name":"hot","type":"flag"},)"
    R"({"name":"drops","type":"count"}]},{"name":"lid","change":true,"fields":[{"name":"on","type":"flag"}]}]})";

base::Result<TraceFile> read(const std::string& lines) { return read_trace(kOwnHeader + "\n" + lines, "own.trace"); }

}  // namespace

TEST_CASE("an author's own kinds are read, with units as people write them") {
  const auto file = read(
      "{\"t\":3,\"kind\":\"poured\",\"cup\":\"blue\",\"amount\":\"5 "
      "N\xC2\xB7m\",\"by\":\"right\",\"hot\":true,\"drops\":4}\n"
      "\n{\"t\":3,\"kind\":\"lid\",\"on\":false}\n{\"end\":20,\"reason\":\"timeout\"}\n");
  REQUIRE(file);
  CHECK(file->trace.ticks_per_s == 10);
  CHECK(file->trace.end == event::EndReason::Timeout);
  CHECK(file->trace.end_tick == 20);
  REQUIRE(file->trace.records.size() == 2);
  const event::Record& poured = file->trace.records[0];
  CHECK(poured.values[0] == 1.0);
  CHECK(poured.values[1] == Approx(5.0));
  CHECK(poured.values[2] == 1.0);
  CHECK(poured.values[3] == 1.0);
  CHECK(poured.values[4] == 4.0);
  CHECK(file->vocabulary.kinds[1].type == event::KindType::Change);
  CHECK(file->vocabulary.sets[0].geometry == event::Geometry::Ring);
}

TEST_CASE("a field left out is not known") {
  const auto file = read("{\"t\":0,\"kind\":\"poured\",\"cup\":null,\"drops\":1}\n{\"end\":1}\n");
  REQUIRE(file);
  CHECK_FALSE(file->trace.records[0].knows(0));
  CHECK_FALSE(file->trace.records[0].knows(1));
  CHECK(file->trace.records[0].knows(4));
}

TEST_CASE("faults in a trace are named with their line") {
  struct Fault {
    std::string lines;
    std::string where;
    std::string says;
  };
  const std::vector<Fault> faults = {
      {"{\"t\":0,\"kind\":\"poured\",\"cup\":\"bleu\"}\n{\"end\":1}", "own.trace:2", "bleu"},
      {"{\"t\":0,\"kind\":\"poured\",\"cup\":1}\n{\"end\":1}", "own.trace:2", "cup"},
      {"{\"t\":0,\"kind\":\"spilled\"}\n{\"end\":1}", "own.trace:2", "spilled"},
      {"{\"t\":0,\"kind\":\"poured\",\"cupp\":\"red\"}\n{\"end\":1}", "own.trace:2", "cupp"},
      {"{\"t\":0,\"kind\":\"poured\",\"amount\":\"3 mm\"}\n{\"end\":1}", "own.trace:2", "amount"},
      {"{\"t\":0,\"kind\":\"poured\",\"hot\":1}\n{\"end\":1}", "own.trace:2", "hot"},
      {"{\"t\":0,\"kind\":\"poured\",\"drops\":1.5}\n{\"end\":1}", "own.trace:2", "drops"},
      {"{\"t\":-1,\"kind\":\"poured\"}\n{\"end\":1}", "own.trace:2", "tick"},
      {"{\"t\":5,\"kind\":\"lid\"}\n{\"t\":4,\"kind\":\"lid\"}\n{\"end\":9}", "own.trace:3", "time goes back"},
      {"{\"t\":5,\"kind\":\"lid\"}\n{\"end\":4}", "own.trace:3", "end"},
      {"{\"end\":4}\n{\"t\":5,\"kind\":\"lid\"}", "own.trace:3", "after"},
      {"{\"t\":5,\"kind\":\"lid\"}\n", "own.trace:2", "does not end"},
      {"nonsense\n{\"end\":4}", "own.trace:2", "JSON"},
      {"{\"end\":4,\"reason\":\"bored\"}", "own.trace:2", "bored"},
  };
  for (const Fault& fault : faults) {
    INFO(fault.lines);
    const auto file = read(fault.lines);
    REQUIRE_FALSE(file);
    CHECK(file.error().where == fault.where);
    CHECK(file.error().what.find(fault.says) != std::string::npos);
    CHECK_FALSE(file.error().instead.empty());
  }
}

TEST_CASE("headers that declare nothing sensible are refused") {
  const std::string open = R"({"proofstand":"trace","format":1,)";
  for (const std::string& header :
       {std::string("{}"), std::string(R"({"proofstand":"attempt"})"), std::string(R"({"proofstand":"trace"})"),
        std::string(R"({"proofstand":"trace","format":99})"), open + R"("ticks_per_s":0})", open + R"("kinds":"mine"})",
        open + R"("kinds":[{}]})", open + R"("kinds":[{"name":"a","fields":[{"name":"b","type":"colour"}]}]})",
        open + R"("kinds":[{"name":"a","fields":[{"name":"b","type":"item","set":"none"}]}]})",
        open + R"("kinds":[{"name":"a","fields":[{"name":"b","type":"choice"}]}]})",
        open + R"("kinds":[{"name":"a","fields":[{"name":"b","type":"quantity","of":"luck"}]}]})",
        open + R"("kinds":[{"name":"a","change":true,"fields":[]}]})",
        open + R"("kinds":[{"name":"a","fields":[]},{"name":"a","fields":[]}]})", open + R"("sets":[{"items":[]}]})"}) {
    INFO(header);
    CHECK_FALSE(read_trace(header + "\n{\"end\":1}\n", "t"));
  }
}

TEST_CASE("every kind of the job prints and reads back, with its own kinds written out or not") {
  event::JobItems items;
  items.bolts = 6;
  items.things = {"key", "wheel", "old rotor"};
  items.rotors = {"old rotor", "new rotor"};
  items.card = {"thickness"};
  items.card_words = {"keep", "replace"};
  const event::Vocabulary vocabulary = event::job_vocabulary(items);
  for (const bool own : {false, true}) {
    std::string text = trace_header_line(vocabulary, 240, own) + "\n";
    std::vector<event::Record> records;
    for (std::size_t k = 0; k < vocabulary.kinds.size(); ++k) {
      event::Record record;
      record.kind = static_cast<event::KindId>(k);
      record.tick = static_cast<base::Tick>(k);
      record.unknown = static_cast<std::uint16_t>((1U << vocabulary.kinds[k].fields.size()) - 1U);
      for (std::size_t f = 0; f < vocabulary.kinds[k].fields.size(); ++f) {
        if ((k + f) % 5 == 0) continue;
        const bool quantity = vocabulary.kinds[k].fields[f].type == event::FieldType::Quantity;
        record.values[f] = quantity ? 0.1 * static_cast<double>(k) + 1e-9 : 0.0;
        record.unknown = static_cast<std::uint16_t>(record.unknown & ~(1U << f));
      }
      records.push_back(record);
      text += trace_record_line(vocabulary, record) + "\n";
    }
    text += trace_end_line(1000, event::EndReason::Finished) + "\n";
    const auto file = read_trace(text, "t");
    REQUIRE(file);
    REQUIRE(file->trace.records.size() == records.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
      CHECK(file->vocabulary.kinds[i].name == vocabulary.kinds[i].name);
      CHECK(file->trace.records[i].unknown == records[i].unknown);
      CHECK(file->trace.records[i].values == records[i].values);
    }
  }
}

}  // namespace proofstand::record
