// Words for people, in several languages, and the lines of the papers that carry them.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "sim/base/quantity.h"

namespace proofstand::scenario {

/// A text in several languages, by language tag ("en", "de").
using Texts = std::map<std::string, std::string>;
/// The text in a language, or in English, or in whatever there is; empty when there is none.
std::string_view text_in(const Texts& texts, std::string_view language);

/// A figure of the maker's sheet as a person reads it.
struct SheetLine {
  std::string name;  ///< as rules call it: sheet.<name>
  Texts label;
  base::Quantity value;
  double tolerance_si = 0.0;  ///< [as value] 0: none given
};

/// An entry of the job card as a person reads it; in the order of the setup's card.
struct CardLine {
  std::string name;
  Texts label;
};

/// What a rule is called and why the trade asks for it; in the order of the rules.
struct RuleLine {
  std::string id;
  Texts title;
  Texts why;
};

}  // namespace proofstand::scenario
