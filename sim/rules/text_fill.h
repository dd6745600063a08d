// The rule's own sentence, with the measured numbers in it.
//
// Placeholders: {x.FIELD} {y.FIELD} {z.FIELD} (z: what undid it) {x.time} {y.time} {z.time} · {sheet.NAME}
// {sheet.NAME.tolerance} · {expected} {found} {margin} of the case · {item} · {count} cases lost, {ok}, {cases},
// {slips} · {missing} items or steps that never came · {worst.value} {worst.item} {worst.time} · {settled} {points}.
// {z?text} keeps the text only when there is a z (x, y, missing likewise); it may contain placeholders.
#pragma once

#include <string>
#include <string_view>

#include "sim/rules/program.h"
#include "sim/rules/report.h"

namespace proofstand::rules {

/// The sentence of one rule's verdict in a language (or in the first language that has one). Empty when the rule has no
/// text for this verdict. Partial falls back to fail. Times are m:ss from the start of the run, quantities have their
/// everyday unit, items and choices their words.
std::string fill_text(const RuleProgram& program, const Report& report, RuleIndex rule, std::string_view language);

/// The same about one case of the rule instead of its first.
std::string fill_text(const RuleProgram& program, const Report& report, RuleIndex rule, std::string_view language,
                      const Case& about);

/// "12:05" from ticks.
std::string time_words(base::Tick tick, std::int64_t ticks_per_s);

/// A field's value in words: "5.2 N·m", "bolt 4", "bare", "yes"; "unknown" when it is not known.
std::string value_words(const event::Vocabulary& vocabulary, const event::Record& record, std::size_t field);

}  // namespace proofstand::rules
