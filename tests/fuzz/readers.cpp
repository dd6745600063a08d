#include "tests/fuzz/readers.h"

#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "sim/base/assert.h"
#include "sim/hand/hand_script.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/chain.h"
#include "sim/record/trace_file.h"
#include "sim/scenario/scenario.h"

namespace proofstand::fuzz {

namespace {

namespace fs = std::filesystem;

/// A folder of this process alone, laid out as a scenario expects it, with the input as a file in it.
std::string as_scenario_file(std::string_view bytes) {
  static const fs::path folder = [] {
    const fs::path top = fs::temp_directory_path() / ("proofstand-fuzz-" + std::to_string(getpid()));
    fs::create_directories(top / "scenarios" / "six-bolt");
    fs::copy(fs::path(PROOFSTAND_ROOT) / "scenarios" / "shared", top / "scenarios" / "shared",
             fs::copy_options::recursive);
    return top / "scenarios" / "six-bolt";
  }();
  const fs::path path = folder / "input.toml";
  std::ofstream(path, std::ios::binary).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  return path.string();
}

/// What scripts name their things by: the first shipped exercise.
bench::BenchSetup shipped_setup() {
  const auto path = fs::path(PROOFSTAND_ROOT) / "scenarios" / "six-bolt" / "worn-front-rotor.toml";
  const scenario::Loaded loaded = scenario::load_scenario(path.string());
  STAND_ASSERT(loaded.usable);
  return scenario::draw(*loaded.file, 1).value().setup;
}

Read read_of(const base::Faults& faults, bool usable) { return {usable, faults.list}; }

template <class T>
Read read_of(const base::Result<T>& result) {
  if (result) return {true, {}};
  return {false, {result.error()}};
}

/// Every line with the seal that the chain asks for.
std::string sealed_anew(std::string_view bytes) {
  std::string out;
  std::string previous(record::chain_start());
  while (!bytes.empty()) {
    const std::size_t end = bytes.find('\n');
    std::string_view line = bytes.substr(0, end);
    bytes.remove_prefix(end == std::string_view::npos ? bytes.size() : end + 1);
    const record::Link old = record::link_of(previous, line);
    std::string object(old.seal == record::Seal::Missing ? line : old.before);
    if (object.size() < 2 || object.front() != '{') object.insert(0, "{\"x\":");
    if (object.back() != '}') object += '}';
    if (object.size() <= 2) object = "{ }";  // a seal needs an object to stand in
    const std::string now = record::sealed(previous, object);
    previous = std::string(record::link_of(previous, now).hash);
    out += now + '\n';
  }
  return out;
}

}  // namespace

Read read_scenario(std::string_view bytes) {
  const scenario::Loaded loaded = scenario::load_scenario(as_scenario_file(bytes));
  if (loaded.usable) {
    // what the check lets through must be drawn
    for (std::uint64_t seed = 0; seed < 3; ++seed) {
      if (const auto drawn = scenario::draw(*loaded.file, seed); !drawn) return {false, {drawn.error()}};
    }
  }
  return read_of(loaded.faults, loaded.usable);
}

Read read_script(std::string_view bytes) {
  static const bench::BenchSetup setup = shipped_setup();
  const hand::ReadScript read = hand::read_hand_script(bytes, "input.hand", setup);
  return read_of(read.faults, read.script != nullptr);
}

Read read_trace(std::string_view bytes) { return read_of(record::read_trace(bytes, "input.jsonl")); }

Read read_attempt(std::string_view bytes) {
  const Read resealed = read_of(record::read_attempt(sealed_anew(bytes), "input.attempt"));
  const Read plain = read_of(record::read_attempt(bytes, "input.attempt"));
  return plain.usable ? plain : Read{plain.usable, {resealed.errors.empty() ? plain.errors : resealed.errors}};
}

Reader find_reader(std::string_view name) {
  if (name == "scenario") return read_scenario;
  if (name == "script") return read_script;
  if (name == "trace") return read_trace;
  if (name == "attempt") return read_attempt;
  return nullptr;
}

}  // namespace proofstand::fuzz
