// Rounds over a set: which items, in which pattern.
#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/rules/draft.h"
#include "sim/rules/typed_term.h"
#include "sim/rules/where_names.h"

namespace proofstand::rules {
namespace {

int common_divisor(int a, int b) {
  while (b != 0) {
    const int rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

void find_item_field(const Draft& draft, const RuleSpec& spec, event::SetId set, Rule& rule) {
  if (!rule.x.given()) return;
  const event::Kind& kind = draft.program.vocabulary.kinds[rule.x.kind];
  if (spec.item.given()) {
    rule.item = draft.field(rule.x.kind, spec.item);
    if (rule.item >= 0 && draft.field_of(rule.x.kind, rule.item).set != set) {
      draft.fault("E07", spec.item.at, "'" + spec.item.text + "' is not an item of " + spec.over.text,
                  "name the field that holds the item");
    }
    return;
  }
  for (std::size_t i = 0; i < kind.fields.size(); ++i) {
    if (kind.fields[i].type != event::FieldType::Item || kind.fields[i].set != set) continue;
    if (rule.item >= 0) {
      draft.fault("E05", spec.x.event.at, kind.name + " has several fields with " + spec.over.text,
                  "say which: item = ...");
    }
    rule.item = static_cast<std::int32_t>(i);
  }
  if (rule.item < 0) {
    draft.fault("E05", spec.x.event.at, "the event " + kind.name + " has no field with " + spec.over.text,
                "use an event that names the item");
  }
}

void add_sequence(const Draft& draft, const RuleSpec& spec, const std::vector<Text>& written, const event::ItemSet& set,
                  Rule& rule) {
  static const std::vector<std::string_view> kSymmetries = {"none", "rotate", "mirror", "both"};
  const auto symmetry = draft.word(spec.symmetry, kSymmetries, "symmetry", 0);
  const std::size_t n = set.items.size();
  std::vector<std::size_t> items;
  for (const Text& word : written) {
    const auto index = index_of_word(set.items, word.text);
    if (index) items.push_back(*index);
  }
  std::vector<std::size_t> sorted = items;
  std::sort(sorted.begin(), sorted.end());
  bool permutation = written.size() == n && sorted.size() == n;
  for (std::size_t i = 0; permutation && i < n; ++i) permutation = sorted[i] == i;
  if (!permutation || !symmetry) {
    if (symmetry) {
      draft.fault("E13", written.empty() ? spec.pattern.at : written[0].at,
                  "a listed order of '" + spec.id.text + "' does not name every item of " + set.name + " once",
                  "write each item once");
    }
    return;
  }
  const std::size_t turns = *symmetry == 1 || *symmetry == 3 ? n : 1;
  const int mirrors = *symmetry >= 2 ? 2 : 1;
  for (int mirrored = 0; mirrored < mirrors; ++mirrored) {
    for (std::size_t turn = 0; turn < turns; ++turn) {
      std::vector<std::uint8_t> sequence;
      for (std::size_t item : items) {
        const std::size_t image = mirrored == 1 ? (n - item) % n : item;
        sequence.push_back(static_cast<std::uint8_t>((image + turn) % n));
      }
      rule.sequences.push_back(std::move(sequence));
    }
  }
}

void check_pattern(const Draft& draft, const RuleSpec& spec, const event::ItemSet& set, Rule& rule) {
  const int n = rule.set_size;
  const std::string size = base::text_from_int(n);
  const auto refuse = [&](const std::string& what, const std::string& instead) {
    draft.fault("E13", spec.pattern.at, what, instead);
  };
  const bool ring = rule.pattern == Pattern::Opposite || rule.pattern == Pattern::Crosswise ||
                    rule.pattern == Pattern::Skip || (spec.symmetry.given() && spec.symmetry.text != "none");
  if (ring && set.geometry != event::Geometry::Ring) {
    return refuse("the items of " + set.name + " do not lie on a ring", "use any or listed");
  }
  if (rule.pattern == Pattern::Opposite && n % 2 != 0) {
    refuse("a ring of " + size + " has no opposite items",
           "use skip, or crosswise with number = " + base::text_from_int(n / 2));
  }
  if (rule.pattern == Pattern::Crosswise && (spec.number < 1 || spec.number > n / 2)) {
    refuse("no two items of a ring of " + size + " are " + base::text_from_int(spec.number) + " apart",
           "write number = 1 to " + base::text_from_int(n / 2));
  }
  if (rule.pattern == Pattern::Skip && (spec.number < 1 || spec.number >= n || common_divisor(n, spec.number) != 1)) {
    refuse("steps of " + base::text_from_int(spec.number) + " do not reach every item of a ring of " + size,
           "write a number without a common divisor");
  }
  if ((rule.pattern == Pattern::Listed) == spec.sequences.empty()) {
    refuse("sequences and the pattern listed go together", "give both or neither");
  }
}

}  // namespace

void compile_rounds(const Draft& draft, const RuleSpec& spec, Rule& rule) {
  static const std::vector<std::string_view> kPatterns = {"any", "opposite", "crosswise", "skip", "listed"};
  std::vector<std::string_view> sets;
  for (const event::ItemSet& set : draft.program.vocabulary.sets) sets.push_back(set.name);
  const auto over = draft.program.vocabulary.find_set(spec.over.text);
  if (!over) {
    draft.fault("E06", spec.over.at, "there is no set of items '" + spec.over.text + "'",
                "write a set that exists" + nearest_hint(spec.over.text, sets));
    return;
  }
  const event::ItemSet& set = draft.program.vocabulary.sets[*over];
  if (set.items.size() < 2 || set.items.size() > 64) {
    draft.fault("E13", spec.over.at,
                "rounds need 2 to 64 items; " + set.name + " has " +
                    base::text_from_int(static_cast<std::int64_t>(set.items.size())),
                "choose another set");
    return;
  }
  rule.set_size = static_cast<std::int32_t>(set.items.size());
  if (const auto pattern = draft.word(spec.pattern, kPatterns, "pattern", 0)) {
    rule.pattern = static_cast<Pattern>(*pattern);
  }
  rule.number = spec.number;
  rule.passes = spec.passes;
  rule.strict = spec.strict;
  rule.if_any = spec.if_any;
  if (spec.passes < 1 || spec.passes > 100) {
    draft.fault("E13", spec.id.at, "'" + spec.id.text + "' asks for no possible number of passes", "write 1 to 100");
    rule.passes = 1;
  }
  find_item_field(draft, spec, *over, rule);
  check_pattern(draft, spec, set, rule);
  for (const std::vector<Text>& sequence : spec.sequences) add_sequence(draft, spec, sequence, set, rule);
}

}  // namespace proofstand::rules
