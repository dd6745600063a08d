// A scenario file with its includes joined in and its variants apart. Private to this floor.
#pragma once

#include <string>
#include <vector>

#include "sim/scenario/node.h"
#include "sim/scenario/variants.h"

namespace proofstand::scenario {

class ScenarioFile {
 public:
  std::string id;      ///< file name without folder and ending
  std::string script;  ///< name of the reference script
  Node root;           ///< without variants
  std::vector<std::string> names;
  std::vector<VariantGroup> groups;
};

}  // namespace proofstand::scenario
