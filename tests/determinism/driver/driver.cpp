// Works one hand script on one scenario and prints what must be the same on every machine, one fact a line: each event
// with all its fields, the state's hash after each step. Two builds are compared as text; where only a hash differs, a
// snapshot of the one build is held against the state of the other.
//   stand_driver SCENARIO SCRIPT SEED                     prints the facts
//   stand_driver SCENARIO SCRIPT SEED --keep TICK FILE    writes the state's snapshot at the first step at or after
//   TICK stand_driver SCENARIO SCRIPT SEED --hold TICK FILE    names the first field in which its own state there
//   differs
#include <cstdio>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <vector>

#include "sim/base/number_text.h"
#include "sim/bench/bench.h"
#include "sim/hand/hand_script.h"
#include "sim/scenario/scenario.h"

namespace {

using namespace proofstand;

std::string file_text(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void print_faults(const base::Faults& faults) {
  for (const base::Error& fault : faults.list) std::fprintf(stderr, "%s\n", fault.sentence().c_str());
}

std::string words_of(const event::Vocabulary& vocabulary, const event::Record& record) {
  const event::Kind& kind = vocabulary.kinds[record.kind];
  std::string words = base::text_from_int(record.tick) + " " + kind.name;
  for (std::size_t i = 0; i < kind.fields.size(); ++i) {
    words += " " + kind.fields[i].name + "=" + (record.knows(i) ? base::text_from_double(record.values[i]) : "unknown");
  }
  return words;
}

/// What to do with the state at a tick, besides printing.
struct Look {
  base::Tick tick = -1;
  bool keep = false;
  std::string path;
};

int look_at(const bench::Bench& bench, const Look& look) {
  if (look.keep) {
    const std::string bytes = bench.snapshot();
    std::ofstream(look.path, std::ios::binary).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return 0;
  }
  const auto other = bench::Bench::restore(bench.setup(), file_text(look.path), bench.events());
  if (!other) {
    std::fprintf(stderr, "%s\n", other.error().sentence().c_str());
    return 1;
  }
  const std::string where = bench::Bench::first_difference(other->state(), bench.state());
  std::printf("first differing field: %s\n", where.empty() ? "none" : where.c_str());
  return 0;
}

int work(bench::Bench bench, hand::ModelledHand worker, const Look& look) {
  std::size_t printed = 0;
  for (auto step = hand::ModelledHand::Step::Going; step == hand::ModelledHand::Step::Going && !bench.over();) {
    step = worker.step(bench, [&](const event::Action& action) { bench.apply(action); });
    if (step == hand::ModelledHand::Step::Stuck) {
      std::fprintf(stderr, "%s\n", worker.trouble().sentence().c_str());
      return 1;
    }
    if (look.tick >= 0) {
      if (bench.tick() >= look.tick) return look_at(bench, look);
      continue;
    }
    for (; printed < bench.events().size(); ++printed) {
      std::printf("%s\n", words_of(bench.vocabulary(), bench.events()[printed]).c_str());
    }
    std::printf("%s state %s\n", base::text_from_int(bench.tick()).c_str(),
                base::digest_text(bench.state_hash()).c_str());
  }
  if (look.tick < 0) std::printf("%zu events\n", printed);
  return 0;
}

}  // namespace

int main(int argc, char* argv[]) {
  const std::vector<std::string> words(argv + 1, argv + argc);
  const bool looks = words.size() == 6 && (words[3] == "--keep" || words[3] == "--hold");
  const auto seed = words.size() > 2 ? base::int_from_text(words[2]) : std::nullopt;
  if ((words.size() != 3 && !looks) || !seed) {
    std::fprintf(stderr, "stand_driver SCENARIO SCRIPT SEED [--keep|--hold TICK FILE]\n");
    return 2;
  }
  const auto loaded = scenario::load_scenario(words[0]);
  if (!loaded.usable) {
    print_faults(loaded.faults);
    return 3;
  }
  auto drawn = scenario::draw(*loaded.file, static_cast<std::uint64_t>(*seed));
  if (!drawn) {
    std::fprintf(stderr, "%s\n", drawn.error().sentence().c_str());
    return 3;
  }
  const auto script = hand::read_hand_script(file_text(words[1]), words[1], drawn->setup);
  if (!script.script) {
    print_faults(script.faults);
    return 3;
  }
  Look look;
  if (looks) look = {base::int_from_text(words[4]).value_or(0), words[3] == "--keep", words[5]};
  return work(bench::Bench(drawn->setup),
              hand::ModelledHand(script.script, hand::journeyman(), static_cast<std::uint64_t>(*seed)), look);
}
