// Rules that have been understood: what the engine runs. Made by compile_rules(), never changed afterwards.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/ticks.h"
#include "sim/event/vocabulary.h"
#include "sim/rules/expression.h"
#include "sim/rules/report.h"
#include "sim/rules/spec.h"

namespace proofstand::rules {

enum class RuleKind : std::uint8_t {
  Must,
  Never,
  Count,
  Needs,
  Leads,
  Order,
  Hold,
  Steady,
  Keep,
  Measure,
  Rounds,
  Within,
  Recur,
  AnyOf,
  AllOf,
  AtLeast,
};
enum class ScopeForm : std::uint8_t { Run, AfterFirst, AfterLast, BeforeFirst, UntilFirst, Between, FromTo };
enum class Severity : std::uint8_t { Note, Minor, Major, Critical };
enum class Credit : std::uint8_t { All, Share, Worst };
enum class IdlePolicy : std::uint8_t { Exclude, Pass, Fail };
enum class Pick : std::uint8_t { Each, First, Last };
enum class Pattern : std::uint8_t { Any, Opposite, Crosswise, Skip, Listed };

/// Every word of these lists, in the order of the enumerators.
const std::vector<std::string_view>& rule_kind_words();
const std::vector<std::string_view>& scope_words();
const std::vector<std::string_view>& severity_words();

/// Which records: a kind and a condition (index into RuleProgram::expressions, -1 = all).
struct Selector {
  event::KindId kind = event::kNoKind;
  std::int32_t where = -1;

  [[nodiscard]] bool given() const { return kind != event::kNoKind; }
};

/// Part marks by distance; see BandSpec.
struct Band {
  double miss_si = 0.0;
  std::int32_t score_ppm = 0;
};

/// A rule as the engine uses it. Durations in ticks, -1 = not given.
struct Rule {
  RuleKind kind = RuleKind::Must;
  ScopeForm form = ScopeForm::Run;
  Severity severity = Severity::Minor;
  Credit credit = Credit::Share;
  IdlePolicy idle = IdlePolicy::Exclude;
  Pick pick = Pick::Each;
  Pattern pattern = Pattern::Any;
  bool required = false;
  bool stop = false;
  bool fresh = false;
  bool one_each = false;
  bool look_run = false;
  bool first = false;
  bool partial = false;
  bool strict = false;
  bool if_any = false;
  bool keep_x = false;  ///< a text speaks of x's fields, so cited records are kept whole
  bool keep_y = false;
  bool keep_z = false;
  bool timed = false;     ///< a passing moment can settle something, or is counted
  bool discards = false;  ///< the scope may throw cases away: after_last, before_first, between
  std::int32_t slot = 0;  ///< index in the state's array of its kind
  base::Tick within = -1;
  base::Tick gap = -1;
  base::Tick duration = -1;
  base::Tick budget = 0;
  std::int32_t same_x = -1;  ///< field of x, or -1
  std::int32_t same_y = -1;
  std::int32_t same_void = -1;  ///< -1: voids all
  std::int32_t distinct = -1;   ///< count
  std::int32_t per = -1;        ///< measure
  std::int32_t item = -1;       ///< rounds: field of x
  std::int64_t count_lo = 0;
  std::int64_t count_hi = -1;   ///< -1: no upper bound
  std::int32_t condition = -1;  ///< expressions
  std::int32_t value = -1;      ///< measure: expressions
  std::int32_t range_lo = -1;   ///< measure: expressions, -1 = open
  std::int32_t range_hi = -1;
  std::int32_t per_slip_ppm = 0;
  std::int32_t set_size = 0;  ///< rounds: items · count distinct, measure per, same: items of that field's set, or 0
  std::int32_t number = 0;    ///< rounds crosswise, skip · at_least
  std::int32_t passes = 1;
  base::Dimension dimension = base::Dimension::Number;  ///< of a measured value
  std::int64_t points_milli = 0;
  std::int32_t competence = -1;  ///< index into MarksSpec::competences
  Selector x, y, voided_by, open, close;
  std::vector<Selector> steps;
  std::vector<std::int32_t> group_of_step;  ///< order with first or groups
  std::vector<Band> bands;
  std::vector<std::vector<std::uint8_t>> sequences;  ///< rounds listed, with all symmetries written out
  std::vector<RuleIndex> children;
  std::vector<RuleIndex> after_failure_of;
};

/// Bits of what a record is to a rule.
enum RoleBit : std::uint8_t { kBitX = 1, kBitY = 2, kBitVoid = 4, kBitOpen = 8, kBitClose = 16, kBitCondition = 32 };

/// One condition to try on a record for a rule: when it holds, these bits (or this step) apply.
struct Probe {
  std::int32_t where = -1;
  std::uint8_t bits = 0;
  std::int8_t step = -1;
};

/// Short ways for the commonest readings: a rule over the whole run that has nothing to tell apart.
enum class FastPath : std::uint8_t { None, NeedsX, NeedsY, NeedsVoid, PresenceX };

/// A rule that reads records of a kind.
struct Subscription {
  RuleIndex rule = kNoRule;
  std::uint8_t bits = 0;  ///< apply to every record of the kind
  std::int8_t step = -1;
  FastPath fast = FastPath::None;
  std::uint16_t probes = 0;  ///< how many
  std::uint32_t first_probe = 0;
  std::int32_t slot = 0;  ///< of the rule, for the short ways
  base::Tick within = -1;
};

/// How much evidence is kept per rule.
struct EvidenceLimit {
  std::int32_t bad_cases = 8;
  std::int32_t ok_cases = 1;
};

/// A part of a text between placeholders, or a placeholder. Made from SaySpec.
struct TextPiece {
  enum class What : std::uint8_t {
    Words,
    Field,
    Time,
    Sheet,
    SheetTolerance,
    Expected,
    Found,
    Margin,
    Item,
    Count,
    OkCount,
    Cases,
    Slips,
    Missing,
    WorstValue,
    WorstItem,
    WorstTime,
    Settled,
    Points,
    IfRole,
    IfMissing,
    EndIf
  };
  What what = What::Words;
  Role role = Role::X;
  std::int32_t index = 0;  ///< field or sheet figure
  std::string words;
};
struct FilledText {
  std::string language;
  Verdict verdict = Verdict::Fail;
  std::vector<TextPiece> pieces;
};

/// All rules with everything they refer to.
struct RuleProgram {
  std::vector<Rule> rules;
  std::vector<RuleSpec> specs;                 ///< as written, by rule index: ids, positions, texts
  std::vector<std::vector<FilledText>> texts;  ///< by rule index
  std::vector<Expression> expressions;
  event::Vocabulary vocabulary;  ///< with "pass_done" added where a rule makes it
  event::KindId pass_done = event::kNoKind;
  std::vector<SheetFigure> sheet;
  MarksSpec marks;
  std::int64_t ticks_per_s = base::kTicksPerSecond;
  EvidenceLimit evidence;

  std::vector<Subscription> subscriptions;   ///< grouped by kind
  std::vector<std::uint32_t> first_of_kind;  ///< [kinds + 1] into subscriptions
  std::vector<Probe> probes;
  std::vector<std::uint8_t> is_fluent;    ///< [kinds]
  std::vector<RuleIndex> children_first;  ///< composites after their children
  std::vector<RuleIndex> timed;           ///< rules that a passing moment can settle
  std::vector<RuleIndex> stops;           ///< rules with stop
  std::uint64_t fingerprint = 0;          ///< of everything that a state depends on

  /// The id as the author wrote it.
  [[nodiscard]] const std::string& id_of(RuleIndex rule) const;
  [[nodiscard]] std::optional<RuleIndex> find_rule(std::string_view id) const;
};

/// Does the selector match? A record of another kind never does.
Truth matches(const RuleProgram& program, const Selector& selector, const event::Record& record,
              const std::vector<Fluent>& fluents);

}  // namespace proofstand::rules
