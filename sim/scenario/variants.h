// Variants: groups of options of which a seed draws one each. An option changes values of the bench's part of the file.
#pragma once

#include <string>
#include <vector>

#include "sim/scenario/field_reader.h"

namespace proofstand::scenario {

inline constexpr std::size_t kMostVariants = 256;

/// One change: "hub.boss.3.dirt" and what it becomes.
struct Override {
  std::string path;
  Spot at;
  Node value;
};
struct VariantOption {
  std::string words;
  std::vector<Override> changes;
};
struct VariantGroup {
  std::string name;
  std::vector<VariantOption> options;
};

/// `[[variant]]`: errors go to the reading; a group without options is left out.
std::vector<VariantGroup> read_variants(const Reading& reading, const Node& variants);
/// Product of the options, at least 1; kMostVariants + 1 when there are more.
std::size_t count_variants(const std::vector<VariantGroup>& groups);
/// Which option of each group makes up a variant; the first group changes fastest.
std::vector<std::size_t> options_of(const std::vector<VariantGroup>& groups, std::size_t variant);
/// Changes the tree. errors (S07): a path that names nothing that could be changed
void apply_override(const Reading& reading, Node& root, const Override& change);

}  // namespace proofstand::scenario
