// What a name in a condition means: field, fluent, sheet figure, yes, no, or a word still to be matched. Private to the
// parser of conditions.
#pragma once

#include "sim/base/result.h"
#include "sim/rules/tokens.h"
#include "sim/rules/typed_term.h"
#include "sim/rules/where_parser.h"

namespace proofstand::rules {

/// errors: E06 unknown sheet figure
base::Result<Term> term_of_name(const WhereContext& context, const Text& text, const Token& token);

/// The fault for a word that should have been a field or fluent: E05 with the nearest name.
base::Error unknown_name(const WhereContext& context, const Text& text, const Term& word);

/// Gives a word (or a bare number) the type of what it is compared with. errors: E07 no such word
base::Result<Term> word_as(const WhereContext& context, const Text& text, const Term& word, const Term& like);

/// ", such as 'torque'" or nothing.
std::string nearest_hint(std::string_view word, const std::vector<std::string_view>& known);

}  // namespace proofstand::rules
