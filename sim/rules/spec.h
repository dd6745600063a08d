// Rules as an author wrote them: plain texts with the place in the file where each one stands. Whoever reads files
// fills these; compile_rules() understands and checks them. Nothing here is judged yet.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "sim/base/quantity.h"

namespace proofstand::rules {

/// Where a text stands, for messages. Lines and columns count from 1; line 0 means unknown.
struct SourcePos {
  std::string file;
  int line = 0;
  int column = 0;
};

/// A text and the place of its first character (of the character after an opening quote). An empty text is "not given".
struct Text {
  std::string text;
  SourcePos at;

  [[nodiscard]] bool given() const { return !text.empty(); }
};

/// Which records are meant: a kind, and a condition on its fields and on fluents ("" = every record of the kind).
struct SelectorSpec {
  Text event;  ///< kind of the vocabulary, or "pass_done" (made by rules of kind rounds: fields rule, index)
  Text where;  ///< condition, e.g. "value >= 5 N·m and hand == bare"; see where_parser.h

  [[nodiscard]] bool given() const { return event.given(); }
};

/// In which part of the run a rule looks. `form` is one of: run, after_first, after_last, before_first, until_first,
/// between, from_to. The records that open (a) and close (b) a stretch are outside of it.
struct ScopeSpec {
  Text form;              ///< "" = run
  SelectorSpec a;         ///< opener: after_first, after_last, between, from_to
  SelectorSpec b;         ///< closer: before_first, until_first, between, from_to
  bool required = false;  ///< no stretch at all is a failure, not "not applicable"
};

/// Part marks for a near miss: at this distance outside of what is asked, this score. Linear between the bands, 1000 at
/// distance 0, the last band's score beyond it.
struct BandSpec {
  Text miss;            ///< a quantity of what the rule measures ("0.5 N·m", "5 s", "2"), > the band before it
  int score_milli = 0;  ///< [1/1000] 0..999, not above the band before it
};

/// A sentence of the rule, with placeholders in braces (see text_fill.h).
struct SaySpec {
  std::string language;  ///< "en"
  std::string verdict;   ///< fail, partial, pass or idle
  Text text;
};

/// One rule. `kind` decides which of the fields below the line are read; a field that the kind does not read is a
/// fault.
struct RuleSpec {
  Text id;  ///< unique; letters, digits and hyphens
  Text
      kind;  ///< must never count needs leads order hold steady keep measure rounds within recur any_of all_of at_least
  ScopeSpec scope;
  Text severity;                       ///< note, minor, major, critical
  std::int64_t points_milli = 0;       ///< [1/1000 point]
  SourcePos points_at;                 ///< where the points stand
  Text credit;                         ///< all, share, worst; "" = all for critical, share otherwise
  Text idle;                           ///< exclude, pass, fail; "" = the scenario's default
  Text competence;                     ///< one of the scenario's marks, "" only for children of a composite
  std::vector<Text> after_failure_of;  ///< ids of rules whose failure excuses this one
  bool stop = false;                   ///< critical only: ends the run the moment it is broken
  std::vector<SaySpec> say;
  std::vector<Text> silenced;  ///< codes of warnings that the author has looked at, e.g. "W12 the bolt is always there"

  // -- what the kinds read
  // ---------------------------------------------------------------------------------------------
  SelectorSpec x;          ///< must never count needs leads steady measure rounds within recur
  SelectorSpec y;          ///< needs (came before) leads within (comes after)
  SelectorSpec voided_by;  ///< needs leads: between y and x (x and y) it undoes
  Text same;               ///< needs leads: a field that must be equal in x and y (and in voided_by where it has it)
  Text within;             ///< needs leads within: a duration
  Text gap;                ///< needs: a duration, at least so long before
  bool fresh = false;      ///< needs: y later than the x before
  bool one_each = false;   ///< leads: one y answers one x
  bool look_run = false;   ///< needs: y and voided_by count outside of the scope too

  Text range;     ///< count: "8..", "0..2", "3" · measure: "4.6 N·m..5.4 N·m", "sheet.torque +- sheet.tolerance"
  Text distinct;  ///< count: a field; counts its different values

  std::vector<SelectorSpec> steps;       ///< order: 2..64, pairwise disjoint
  bool first = false;                    ///< order: judge the first of each step, every pair in the written order
  std::vector<std::vector<int>> groups;  ///< order: steps (from 0) by group, group before group, any order within

  Text condition;  ///< hold steady keep: over fluents
  Text duration;   ///< hold steady: how long · recur: longest time without x
  Text budget;     ///< keep: time that the condition may be false, "" = none

  Text value;                   ///< measure: a field of x, or a sum of fields and sheet figures
  Text pick;                    ///< measure: each, first, last; "" = each
  Text per;                     ///< measure with first or last: a field, one case per value of it
  std::vector<BandSpec> bands;  ///< count hold keep measure within
  bool partial = false;         ///< count k/lo, hold longest/d, keep 1 - excess/budget, rounds by transitions
  int per_slip_milli = 0;       ///< never, rounds: [1/1000] taken off for each slip

  Text over;       ///< rounds: an item set
  Text item;       ///< rounds: the field with the item, "" = the only one of that set
  Text pattern;    ///< rounds: any opposite crosswise skip listed
  int number = 0;  ///< rounds crosswise: least ring distance · skip: step · at_least: how many
  std::vector<std::vector<Text>> sequences;  ///< rounds listed: item words
  Text symmetry;                             ///< rounds listed: "", rotate, mirror, both
  int passes = 1;                            ///< rounds: how many passes must conform
  bool strict = false;                       ///< rounds: every complete pass must conform
  bool if_any = false;                       ///< rounds: without any x it is not applicable

  std::vector<Text> children;  ///< any_of all_of at_least: ids of other rules
};

/// A figure of the drawn variant's maker's sheet.
struct SheetFigure {
  std::string name;  ///< "bolt_torque", used as sheet.bolt_torque
  base::Quantity value;
  std::optional<double> tolerance_si;  ///< [as value] >= 0; used as sheet.bolt_torque.tolerance, and as the range
};

/// How the scenario counts.
struct MarksSpec {
  struct Competence {
    Text name;
    std::optional<std::int64_t> points_milli;  ///< declared total, checked against the rules
    SourcePos at;
  };
  std::vector<Competence> competences;       ///< in the order of the mark sheet
  std::optional<std::int64_t> points_milli;  ///< declared total, checked against the rules
  SourcePos at;
  int pass_mark_milli = 800;     ///< [1/1000] of the judged points
  int min_coverage_milli = 800;  ///< [1/1000] of the declared points must have been judged
  Text idle;                     ///< default of the rules: exclude, pass, fail; "" = exclude
};

}  // namespace proofstand::rules
