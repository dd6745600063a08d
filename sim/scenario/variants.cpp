#include "sim/scenario/variants.h"

#include <algorithm>
#include <utility>

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/scenario/resolve.h"

namespace proofstand::scenario {
namespace {

/// Tables whose entries have names of the author's: a new name there would be a new part, not a change.
constexpr std::string_view kNamed[] = {"rotor", "bolts", "tool", "instrument", "fluid", "rag", "card", "sheet"};

std::vector<std::string> split_path(const std::string& path) {
  std::vector<std::string> steps(1);
  for (const char c : path) {
    if (c == '.') {
      steps.emplace_back();
    } else {
      steps.back() += c;
    }
  }
  return steps;
}

VariantOption read_option(const Reading& reading, const Node& node, const std::string& name) {
  VariantOption option;
  FieldReader reader(reading, node, name);
  reader.needs("is", "say in words what is drawn, e.g. is = \"grit on boss 3\"");
  reader.text("is", option.words);
  if (const Node* set = reader.table_at("set")) {
    for (const Member& change : set->members) option.changes.push_back({change.key, change.key_at, change.node});
  }
  reader.done();
  return option;
}

}  // namespace

std::vector<VariantGroup> read_variants(const Reading& reading, const Node& variants) {
  std::vector<VariantGroup> groups;
  for (const Member& member : variants.members) {
    if (!is_table(reading, member, "variant")) continue;
    FieldReader reader(reading, member.node, "variant");
    VariantGroup group;
    reader.needs("name", "say what varies, e.g. name = \"grit\"");
    reader.text("name", group.name);
    if (const Node* options = reader.list_at("option")) {
      for (const Member& option : options->members) {
        if (is_table(reading, option, "variant.option"))
          group.options.push_back(read_option(reading, option.node, "variant.option"));
      }
    }
    reader.done();
    if (group.options.empty()) {
      reading.error("S06", member.node.at, "the variant \"" + group.name + "\" has no options",
                    "add [[variant.option]] tables, each with is = and set.\"path\" =");
      continue;
    }
    groups.push_back(std::move(group));
  }
  const std::size_t count = count_variants(groups);
  if (count > kMostVariants) {
    reading.error("S06", variants.at, "the options of all variants multiply to more than 256",
                  "take options or groups out until the product is at most 256");
  }
  return groups;
}

std::size_t count_variants(const std::vector<VariantGroup>& groups) {
  std::size_t count = 1;
  for (const VariantGroup& group : groups) {
    count *= std::max<std::size_t>(group.options.size(), 1);
    if (count > kMostVariants) return kMostVariants + 1;
  }
  return count;
}

std::vector<std::size_t> options_of(const std::vector<VariantGroup>& groups, std::size_t variant) {
  std::vector<std::size_t> chosen;
  for (const VariantGroup& group : groups) {
    chosen.push_back(variant % group.options.size());
    variant /= group.options.size();
  }
  return chosen;
}

void apply_override(const Reading& reading, Node& root, const Override& change) {
  const std::vector<std::string> steps = split_path(change.path);
  const auto refuse = [&](const std::string& what, const std::string& instead) {
    reading.error("S07", change.at, "\"" + change.path + "\" " + what, instead);
  };
  if (!is_bench_key(steps.front())) {
    return refuse("does not belong to the bench",
                  "change entries of hub, rotor, bolts, tool, instrument, fluid, rag, wheel, brake, rider, hands, "
                  "fitted, card or sheet");
  }
  if (steps.size() < 2) return refuse("names a whole table", "name one entry, e.g. \"hub.boss.3.dirt\"");
  Node* at = &root;
  for (std::size_t i = 0; i + 1 < steps.size(); ++i) {
    Node* next = at->find(steps[i]);
    const bool named = i == 1 && std::find(std::begin(kNamed), std::end(kNamed), steps.front()) != std::end(kNamed);
    if (next == nullptr && named) {
      std::vector<std::string_view> known;
      for (const Member& member : at->members) known.emplace_back(member.key);
      const std::string_view near = base::nearest_word(steps[i], known);
      return refuse("names a " + steps.front() + " that does not exist",
                    near.empty() ? "name one that does" : "did you mean \"" + std::string(near) + "\"?");
    }
    if (next == nullptr) {
      set_member(*at, steps[i], table_node(change.at));
      next = at->find(steps[i]);
    }
    if (!next->is_table())
      return refuse("goes through \"" + steps[i] + "\", which is no table", "name an entry of a table");
    at = next;
  }
  set_member(*at, steps.back(), change.value);
}

}  // namespace proofstand::scenario
