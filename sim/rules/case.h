// What a rule found out: one case per chance it had, with the records that prove it. A case is a certificate: with the
// raw trace alone, somebody else can check that it is right.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "sim/base/quantity.h"
#include "sim/base/ticks.h"
#include "sim/event/record.h"

namespace proofstand::rules {

/// Place of a record in the run, from 0. A record made by a rule has the position of the record that caused it.
using Position = std::int64_t;
inline constexpr Position kNoPosition = -1;
inline constexpr base::Tick kNoTick = -1;
/// Full score of a case, [1/1000000]. Scores are whole numbers, so every machine adds them up alike.
inline constexpr std::int32_t kFullPpm = 1'000'000;

enum class CaseStatus : std::uint8_t {
  Ok,
  Bad,      ///< score below full
  Unknown,  ///< could not be told: a value was missing, or the run was cut off before it was due
};

/// Why a case is as it is.
enum class Reason : std::uint8_t {
  Done,            ///< as asked
  NeverCame,       ///< must, count, within, order ... : nothing of the kind until the stretch ended
  Happened,        ///< never: it happened
  TooFew,          ///< count
  TooMany,         ///< count
  NoneBefore,      ///< needs: no y at all
  OnlyOtherItems,  ///< needs: y only for other items
  TooOld,          ///< needs: the last y was too long ago
  TooRecent,       ///< needs: the last y was too short ago
  Undone,          ///< needs, leads: something in between undid it
  UsedUp,          ///< needs fresh: the last y already served another x
  Late,            ///< leads, within: the time was up
  EndedOpen,       ///< leads, within: the stretch ended first
  OutOfOrder,      ///< order
  Incomplete,      ///< order, rounds: steps or items are missing
  TooShort,        ///< hold, steady: not long enough
  NotKept,         ///< keep: false for longer than allowed
  Below,           ///< measure
  Above,           ///< measure
  WrongPattern,    ///< rounds: a pass broke the pattern
  Slips,           ///< rounds: items repeated within a pass
  GapTooLong,      ///< recur
  Children,        ///< composites: by the rules inside
  NoStretch,       ///< a required scope never came
  ValueMissing,    ///< unknown: a value needed was not known
  CutOff,          ///< unknown: the run ended early, not by the trainee
};

/// Stable short word of a reason, for files: "never-came", "too-old".
std::string_view reason_word(Reason reason);

/// What a cited record is in the case.
enum class Role : std::uint8_t { X, Y, Void, Open, Close, Step, False };

/// One record that proves the case.
struct Cite {
  Role role = Role::X;
  Position position = kNoPosition;
  base::Tick tick = kNoTick;
  bool has_record = false;  ///< the record is kept only where a text of the rule speaks of its fields
  event::Record record;
};

/// One chance that a rule had, and what came of it.
struct Case {
  CaseStatus status = CaseStatus::Ok;
  Reason reason = Reason::Done;
  std::int32_t score_ppm = kFullPpm;  ///< [1/1000000]
  Position segment_a = kNoPosition;   ///< opener; -1 = start of the run
  Position segment_b = kNoPosition;   ///< closer, or the number of records where the run ended; -1 while open
  base::Tick a_tick = 0;
  base::Tick b_tick = kNoTick;
  Position anchor = kNoPosition;  ///< the record the case is about; -1 when it is about the whole stretch
  base::Tick anchor_tick = kNoTick;
  base::Tick settled_tick = kNoTick;  ///< from then on nothing could change it
  base::Tick since_tick = kNoTick;    ///< since when it was so; for an omission the start of the stretch
  base::Tick window_from = kNoTick;   ///< what was looked through, [from, to]
  base::Tick window_to = kNoTick;
  base::Dimension dimension = base::Dimension::Number;  ///< of the four figures below
  bool has_figures = false;
  double lo_si = 0.0;                 ///< expected at least; -infinity is written as the lowest double
  double hi_si = 0.0;                 ///< expected at most; infinity is written as the largest double
  double found_si = 0.0;              ///< times in s, counts as they are
  double margin_si = 0.0;             ///< distance to the nearer bound, negative when outside
  std::int64_t key = -1;              ///< value of `same`, `per` (an item's index), pass number of rounds; -1 without
  std::vector<std::int64_t> items;    ///< rounds: items of the pass in order · order: steps reached
  std::vector<std::int64_t> missing;  ///< rounds, count distinct: items that never came · order: steps left out
  std::vector<Cite> cites;

  /// The first cited record of a role, or nullptr.
  [[nodiscard]] const Cite* cited(Role role) const;
};

}  // namespace proofstand::rules
