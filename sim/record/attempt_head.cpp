#include "sim/record/attempt_head.h"

#include "sim/base/hash.h"
#include "sim/base/number_text.h"

namespace proofstand::record {
namespace {

std::string hash_of(std::string_view text) { return base::digest_text(base::digest_of(text)); }

}  // namespace

std::string head_object(const AttemptHead& head) {
  JsonWriter json;
  json.begin_object();
  json.member(kFileMark, "attempt").member("format", head.format);
  json.member("program", head.program).member("bench", head.bench);
  json.member("scenario", head.scenario).member("seed", head.seed);
  json.member("hand", head.hand).member("hand_seed", head.hand_seed);
  json.member("way", words_of(head.way)).member("who", head.who);
  json.key("aids").begin_list();
  for (const std::string& aid : head.aids) json.text(aid);
  json.end_list();
  json.member("bench_part_hash", hash_of(head.bench_text)).member("bench_part", head.bench_text);
  json.member("rules_part_hash", hash_of(head.rules_text)).member("rules_part", head.rules_text);
  json.end_object();
  return json.text();
}

base::Result<AttemptHead> read_head(JsonView line, std::string_view where) {
  const auto bad = [&](std::string_view code, std::string what, std::string_view instead) {
    return base::Error{std::string(code), std::string(where), std::move(what), std::string(instead)};
  };
  if (line.text(kFileMark) != "attempt") {
    return bad("not-an-attempt", "the first line is not that of an attempt", "name a file that `run` wrote");
  }
  AttemptHead head;
  const auto format = line.whole("format");
  if (!format || *format < 1)
    return bad("bad-head", "the format's number is missing", "take the file as it was written");
  if (*format > kAttemptFormat) {
    return bad("newer-format",
               "this attempt has format " + base::text_from_int(*format) + "; formats up to " +
                   base::text_from_int(kAttemptFormat) + " are understood",
               "use a newer edition of the program");
  }
  head.format = static_cast<int>(*format);
  const auto bench = line.whole("bench");
  const auto seed = line.whole("seed");
  const auto hand_seed = line.whole("hand_seed");
  const auto way = way_from_words(line.text("way").value_or(""));
  const auto bench_part = line.text("bench_part");
  const auto rules_part = line.text("rules_part");
  if (!bench || !seed || *seed < 0 || !hand_seed || !way || !bench_part || !rules_part) {
    return bad("bad-head", "the first line lacks a part: bench, seed, hand_seed, way, bench_part or rules_part",
               "take the file as it was written");
  }
  if (line.text("bench_part_hash") != hash_of(*bench_part) || line.text("rules_part_hash") != hash_of(*rules_part)) {
    return bad("bad-head", "the scenario inside does not have the hash that stands beside it",
               "take the file as it was written");
  }
  head.program = std::string(line.text("program").value_or(""));
  head.bench = static_cast<int>(*bench);
  head.scenario = std::string(line.text("scenario").value_or(""));
  head.seed = *seed;
  head.hand = std::string(line.text("hand").value_or(""));
  head.hand_seed = *hand_seed;
  head.way = *way;
  head.who = std::string(line.text("who").value_or(""));
  if (const auto aids = line.list("aids")) {
    for (const JsonView aid : aids->children()) head.aids.emplace_back(aid.node().text);
  }
  head.bench_text = std::string(*bench_part);
  head.rules_text = std::string(*rules_part);
  return head;
}

}  // namespace proofstand::record
