#include "sim/scenario/scenario.h"

#include <algorithm>
#include <utility>

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/scenario/check_parts.h"
#include "sim/scenario/check_rules.h"
#include "sim/scenario/node_text.h"
#include "sim/scenario/read_texts.h"
#include "sim/scenario/resolve.h"
#include "sim/scenario/scenario_file.h"
#include "sim/scenario/source_files.h"
#include "sim/scenario/toml_text.h"
#include "sim/scenario/variants.h"

namespace proofstand::scenario {
namespace {

std::string stem_of(const std::string& path) {
  const std::size_t slash = path.find_last_of('/');
  std::string name = slash == std::string::npos ? path : path.substr(slash + 1);
  const std::size_t dot = name.rfind(".toml");
  return dot == std::string::npos ? name : name.substr(0, dot);
}

void add_once(base::Faults& into, const base::Faults& from) {
  for (const base::Error& fault : from.list) {
    const bool there = std::any_of(into.list.begin(), into.list.end(), [&](const base::Error& e) {
      return e.where == fault.where && e.what == fault.what && e.code == fault.code;
    });
    if (!there) into.add(fault);
  }
}

Node tree_of_variant(const Reading& reading, const ScenarioFile& file, std::size_t variant) {
  Node root = file.root;
  const std::vector<std::size_t> chosen = options_of(file.groups, variant);
  for (std::size_t g = 0; g < file.groups.size(); ++g) {
    for (const Override& change : file.groups[g].options[chosen[g]].changes) apply_override(reading, root, change);
  }
  return root;
}

void check_format(const Reading& reading, const Node& root, std::string_view expected) {
  const Node* format = root.find("format");
  if (format != nullptr && format->kind == NodeKind::Text && format->text == expected) return;
  reading.error("S18", format != nullptr ? format->at : root.at,
                "this is not a file of the form \"" + std::string(expected) + "\"",
                "begin it with format = \"" + std::string(expected) + "\"");
}

/// Every variant has to be a bench that can be worked; rules are checked again wherever the sheet is another.
void check_variants(const ScenarioFile& file, base::Faults& faults) {
  std::vector<std::string> sheets;
  const std::size_t count = count_variants(file.groups);
  for (std::size_t variant = 0; variant < count && variant < kMostVariants; ++variant) {
    base::Faults own;
    const Reading reading{&file.names, &own};
    const Node root = tree_of_variant(reading, file, variant);
    ReadScenario read = read_bench_part(reading, root);
    if (!own.any_error()) check_parts(reading, read);
    const Node* sheet = root.find("sheet");
    const std::string sheet_text = sheet != nullptr ? toml_from_node(*sheet) : std::string();
    if (std::find(sheets.begin(), sheets.end(), sheet_text) == sheets.end()) {
      sheets.push_back(sheet_text);
      read_rules_part(reading, root, read.scenario);
      check_languages(reading, root, read.scenario);
      // rules speak of the setup's things and figures; while those are wrong, rules would be blamed for it
      if (!own.any_error()) check_rules(reading, read.scenario);
    }
    add_once(faults, own);
  }
}

Node drawn_node(const ScenarioFile& file, std::size_t variant, std::uint64_t seed) {
  const Spot nowhere{};
  Node drawn = table_node(nowhere);
  set_member(drawn, "id", text_node(file.id, nowhere));
  // all 64 bits, as the signed number that TOML can hold
  set_member(drawn, "seed", integer_node(static_cast<std::int64_t>(seed), nowhere));
  set_member(drawn, "variant", integer_node(static_cast<std::int64_t>(variant), nowhere));
  set_member(drawn, "variants", integer_node(static_cast<std::int64_t>(count_variants(file.groups)), nowhere));
  Node what;
  what.kind = NodeKind::List;
  const std::vector<std::size_t> chosen = options_of(file.groups, variant);
  for (std::size_t g = 0; g < file.groups.size(); ++g) {
    what.members.push_back(
        {"", nowhere, text_node(file.groups[g].name + " = " + file.groups[g].options[chosen[g]].words, nowhere)});
  }
  set_member(drawn, "what", std::move(what));
  return drawn;
}

}  // namespace

rules::CompileInput compile_input(const DrawnScenario& scenario) {
  rules::CompileInput input;
  input.rules = scenario.rules;
  input.vocabulary = event::job_vocabulary(bench::job_items(scenario.setup));
  input.sheet = scenario.sheet;
  input.marks = scenario.marks;
  input.languages = scenario.languages;
  return input;
}

Loaded load_scenario(const std::string& path) {
  Loaded loaded;
  SourceTree tree = load_source_tree(path, loaded.faults);
  loaded.texts_read = tree.texts;
  if (!tree.complete) return loaded;
  auto file = std::make_shared<ScenarioFile>();
  file->id = stem_of(path);
  file->names = std::move(tree.names);
  const Reading reading{&file->names, &loaded.faults};
  check_format(reading, tree.root, kScenarioFormat);
  if (const Node* variants = tree.root.find("variant")) file->groups = read_variants(reading, *variants);
  remove_member(tree.root, "variant");
  file->root = std::move(tree.root);
  if (!loaded.faults.any_error()) check_variants(*file, loaded.faults);
  if (const Node* script = file->root.find("reference_script")) file->script = script->text;
  loaded.usable = !loaded.faults.any_error();
  if (loaded.usable) loaded.file = std::move(file);
  return loaded;
}

std::size_t variant_count(const ScenarioFile& file) { return count_variants(file.groups); }

std::string reference_script(const ScenarioFile& file) { return file.script; }

base::Result<DrawnScenario> draw(const ScenarioFile& file, std::uint64_t seed) {
  return draw_variant(file, static_cast<std::size_t>(seed % count_variants(file.groups)), seed);
}

base::Result<DrawnScenario> draw_variant(const ScenarioFile& file, std::size_t variant, std::uint64_t seed) {
  const std::size_t count = count_variants(file.groups);
  if (variant >= count) {
    return base::Error{"S06", file.names.front(),
                       "there is no variant " + base::text_from_int(static_cast<std::int64_t>(variant)),
                       "choose one from 0 to " + base::text_from_int(static_cast<std::int64_t>(count - 1)), false};
  }
  base::Faults faults;
  const Reading reading{&file.names, &faults};
  const Node root = tree_of_variant(reading, file, variant);
  if (faults.any_error()) return faults.list.front();
  const PartTexts texts = part_texts(root, drawn_node(file, variant, seed));
  return read_resolved(texts.bench, texts.rules);
}

base::Result<DrawnScenario> read_resolved(std::string_view bench_text, std::string_view rules_text) {
  const std::vector<std::string> names = {"bench part", "rules part"};
  base::Faults faults;
  const Reading reading{&names, &faults};
  Node root = table_node(Spot{});
  const std::pair<std::string_view, std::string_view> parts[] = {{bench_text, kBenchFormat},
                                                                 {rules_text, kRulesFormat}};
  for (std::size_t i = 0; i < 2; ++i) {
    auto part = parse_toml(parts[i].first, i);
    if (!part) {
      base::Error error = part.error();
      error.where = names[i] + (error.where.empty() ? "" : ":" + error.where);
      return error;
    }
    check_format(reading, *part, parts[i].second);
    remove_member(*part, "format");
    for (Member& member : part->members) {
      if (is_bench_key(member.key) != (i == 0)) {
        reading.error("E02", member.key_at, "\"" + member.key + "\" does not belong into this part",
                      "restore the attempt's own text");
      }
      root.members.push_back(std::move(member));
    }
  }
  ReadScenario read = read_bench_part(reading, root);
  read_rules_part(reading, root, read.scenario);
  if (!faults.any_error()) check_parts(reading, read);
  for (const base::Error& fault : faults.list) {
    if (!fault.warning) return fault;
  }
  read.scenario.bench_text = std::string(bench_text);
  read.scenario.rules_text = std::string(rules_text);
  return std::move(read.scenario);
}

}  // namespace proofstand::scenario
