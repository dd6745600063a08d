#include <algorithm>

#include "sim/hand/script_match.h"

namespace proofstand::hand {
namespace {

using bench::BenchSetup;
using bench::ThingKind;

// kinds that an instruction's thing or tool may be; nothing listed: anything
struct Fits {
  Doing doing;
  std::vector<ThingKind> kinds;
  std::string_view words;
};

const std::vector<Fits>& thing_fits() {
  static const std::vector<Fits> rows = {
      {Doing::Start, {ThingKind::Bolt}, "a bolt"},         {Doing::HoldAgainst, {ThingKind::Rotor}, "a rotor"},
      {Doing::TurnAgainst, {ThingKind::Rotor}, "a rotor"}, {Doing::TurnWith, {ThingKind::Rotor}, "a rotor"},
      {Doing::TakeOff, {ThingKind::Rotor}, "a rotor"},     {Doing::PutOn, {ThingKind::Rotor}, "a rotor"},
      {Doing::LayDown, {ThingKind::Rotor}, "a rotor"},     {Doing::WipeBoth, {ThingKind::Rotor}, "a rotor"},
      {Doing::Measure, {ThingKind::Rotor}, "a rotor"},     {Doing::MeasureAcross, {ThingKind::Rotor}, "a rotor"},
      {Doing::ReadRunout, {ThingKind::Rotor}, "a rotor"},  {Doing::Wet, {ThingKind::Rag}, "a rag"},
  };
  return rows;
}

const std::vector<Fits>& tool_fits() {
  const std::vector<ThingKind> turning = {ThingKind::LKey, ThingKind::Driver, ThingKind::ClickDriver};
  static const std::vector<Fits> rows = {
      {Doing::Crack, turning, "a key or a driver"},
      {Doing::RunOut, turning, "a key or a driver"},
      {Doing::RunIn, turning, "a key or a driver"},
      {Doing::Snug, turning, "a key or a driver"},
      {Doing::Tighten, turning, "a key or a driver"},
      {Doing::SetTool, {ThingKind::ClickDriver}, "a torque tool with a scale"},
      {Doing::Wet, {ThingKind::Bottle}, "a bottle"},
      {Doing::Squeeze, {ThingKind::Bottle}, "a bottle"},
      {Doing::Wipe, {ThingKind::Rag}, "a rag"},
      {Doing::WipeBoth, {ThingKind::Rag}, "a rag"},
      {Doing::Measure, {ThingKind::Micrometer, ThingKind::Vernier}, "a micrometer or a vernier"},
      {Doing::MeasureAcross, {ThingKind::Vernier}, "a vernier"},
      {Doing::ReadRunout, {ThingKind::DialGauge}, "a dial gauge"},
      {Doing::PickClean, {ThingKind::Pick}, "a pick"},
      {Doing::LookAt, {ThingKind::Lamp, ThingKind::Pick}, "a lamp or a pick"},
  };
  return rows;
}

Misfit judge(const std::vector<Fits>& rows, Doing doing, event::ThingId thing, const BenchSetup& setup) {
  if (thing == event::kNoThing) return {};
  const bench::Thing& found = setup.things[event::index_of(thing)];
  for (const Fits& row : rows) {
    if (row.doing != doing) continue;
    if (std::find(row.kinds.begin(), row.kinds.end(), found.kind) != row.kinds.end()) return {};
    std::string names;
    for (const bench::Thing& other : setup.things) {
      if (std::find(row.kinds.begin(), row.kinds.end(), other.kind) == row.kinds.end()) continue;
      names += (names.empty() ? "" : ", ") + other.name;
    }
    return {"\"" + found.name + "\" is not " + std::string(row.words),
            names.empty() ? "this workplace has none" : "write one of: " + names};
  }
  return {};
}

}  // namespace

Misfit misfit_of(const Instruction& instruction, const BenchSetup& setup) {
  Misfit misfit = judge(thing_fits(), instruction.doing, instruction.thing, setup);
  if (misfit.what.empty()) misfit = judge(tool_fits(), instruction.doing, instruction.tool, setup);
  if (misfit.what.empty() && instruction.doing == Doing::PutOn && !instruction.says(Say::PrintedOut) &&
      !instruction.says(Say::PrintedIn)) {
    misfit = {"which side faces out is not said", "add \"printed side out\" or \"printed side in\""};
  }
  return misfit;
}

}  // namespace proofstand::hand
