#include "sim/scenario/resolve.h"

#include <algorithm>
#include <utility>

#include "sim/scenario/node_text.h"
#include "sim/scenario/read_joint.h"
#include "sim/scenario/read_papers.h"
#include "sim/scenario/read_rules.h"
#include "sim/scenario/read_texts.h"
#include "sim/scenario/read_workplace.h"

namespace proofstand::scenario {
namespace {

constexpr std::string_view kBenchKeys[] = {"hub",   "rotor", "bolts", "tool",   "instrument", "fluid", "rag",  "wheel",
                                           "brake", "rider", "hands", "fitted", "card",       "sheet", "drawn"};

using ReadParts = void (*)(const Reading&, const Node&, NamedParts&);

void read_drawn(const Reading& reading, const Node& drawn, DrawnScenario& scenario) {
  FieldReader reader(reading, drawn, "drawn");
  int variant = 0;
  int variants = 1;
  reader.text("id", scenario.id);
  if (const Node* seed = reader.raw("seed")) scenario.seed = static_cast<std::uint64_t>(seed->integer);
  reader.count("variant", {0.0, 255.0}, variant);
  reader.count("variants", {1.0, 256.0}, variants);
  reader.list("what", scenario.drawn);
  reader.done();
  scenario.setup.seed = scenario.seed;
  scenario.variant = static_cast<std::size_t>(variant);
  scenario.variants = static_cast<std::size_t>(variants);
}

}  // namespace

bool is_bench_key(std::string_view key) {
  return std::find(std::begin(kBenchKeys), std::end(kBenchKeys), key) != std::end(kBenchKeys);
}

ReadScenario read_bench_part(const Reading& reading, const Node& root) {
  ReadScenario out;
  NamedParts& parts = out.parts;
  add_furniture(reading, parts);
  const Spot top = root.at;
  if (const Node* hub = root.find("hub"); hub != nullptr && hub->is_table()) {
    parts.setup.hub = read_hub(reading, *hub);
    parts.hub_at = hub->at;
  } else {
    reading.error("S03", top, "there is no hub", "add a [hub] table with bosses = 6");
  }
  // things get their numbers in this order, whatever the order of the file
  const std::pair<std::string_view, ReadParts> kinds[] = {{"rotor", read_rotors}, {"bolts", read_bolt_sets},
                                                          {"tool", read_tools},   {"instrument", read_instruments},
                                                          {"fluid", read_fluids}, {"rag", read_rags}};
  FieldReader reader(reading, root, "");
  for (const auto& [key, read] : kinds) {
    if (const Node* table = reader.table_at(key)) read(reading, *table, parts);
  }
  if (const Node* wheel = reader.table_at("wheel")) read_wheel(reading, *wheel, parts.setup);
  if (const Node* brake = reader.table_at("brake")) read_brake(reading, *brake, parts.setup.brake);
  if (const Node* rider = reader.table_at("rider")) read_rider(reading, *rider, parts.setup.rider);
  if (const Node* hands = reader.table_at("hands")) read_hands(reading, *hands, parts.setup);
  parts.setup.fitted_bolts.assign(parts.setup.bolt_count(), event::kNoThing);
  if (const Node* fitted = reader.table_at("fitted")) read_fitted(reading, *fitted, parts);
  if (const Node* card = reader.table_at("card")) out.scenario.card_lines = read_card(reading, *card, parts);
  if (const Node* sheet = reader.table_at("sheet")) {
    out.scenario.sheet_lines = read_sheet(reading, *sheet, parts);
  } else {
    reading.error("S03", top, "there is no maker's sheet", "add [sheet.bolt_torque] with value and tolerance");
  }
  for (const SheetLine& line : out.scenario.sheet_lines) {
    rules::SheetFigure figure{line.name, line.value, {}};
    if (line.tolerance_si > 0.0) figure.tolerance_si = line.tolerance_si;
    out.scenario.sheet.push_back(std::move(figure));
  }
  out.scenario.setup = parts.setup;
  if (const Node* drawn = reader.table_at("drawn")) read_drawn(reading, *drawn, out.scenario);
  return out;
}

void read_rules_part(const Reading& reading, const Node& root, DrawnScenario& scenario) {
  FieldReader reader(reading, root, "");
  read_texts(reader, scenario);
  if (const Node* marks = reader.table_at("marks")) {
    scenario.marks = read_marks(reading, *marks);
  } else {
    reading.error("S03", root.at, "the file does not say how it is marked",
                  "add a [marks] table with total and pass_mark");
  }
  if (const Node* rules = reader.list_at("rule")) {
    ReadRules read = read_rules(reading, *rules);
    scenario.rules = std::move(read.specs);
    scenario.rule_lines = std::move(read.lines);
  } else {
    reading.error("S03", root.at, "there are no rules", "write [[rule]] tables or include shared ones");
  }
  for (const std::string_view key : kBenchKeys) reader.raw(key);
  reader.raw("format");
  reader.raw("variant");
  reader.done();
}

PartTexts part_texts(const Node& root, const Node& drawn) {
  Node bench = table_node(root.at);
  Node rest = table_node(root.at);
  set_member(bench, "format", text_node(std::string(kBenchFormat), root.at));
  set_member(rest, "format", text_node(std::string(kRulesFormat), root.at));
  for (const Member& member : root.members) {
    if (member.key == "format" || member.key == "variant" || member.key == "drawn") continue;
    set_member(is_bench_key(member.key) ? bench : rest, member.key, member.node);
  }
  set_member(bench, "drawn", drawn);
  return {toml_from_node(bench), toml_from_node(rest)};
}

}  // namespace proofstand::scenario
