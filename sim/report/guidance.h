// What is owed next, in words: the ground of guided work. Found out from the rules, from how far each has got, from the
// scenario's stages and from what anyone at the bench could see or feel; nothing hidden is read. Not for exams.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/bench/bench.h"
#include "sim/event/ids.h"
#include "sim/event/places.h"
#include "sim/rules/engine.h"
#include "sim/rules/program.h"
#include "sim/scenario/scenario.h"

namespace proofstand::report {

/// A place to frame when asked "where?". Places that would serve equally well are all named, so that framing gives no
/// choice away.
struct GuideTarget {
  event::ThingId thing = event::kNoThing;           ///< whose place it is
  event::PlaceKind place = event::PlaceKind::Body;  ///< Body: the thing itself
  event::BoltId bolt = event::kNoBolt;              ///< of numbered places

  friend bool operator==(const GuideTarget& a, const GuideTarget& b) {
    return a.thing == b.thing && a.place == b.place && a.bolt == b.bolt;
  }
};

/// One thing to do now.
struct GuideStep {
  std::string say;                   ///< "Break bolt 3 loose with the key: press it home and pull."
  std::vector<std::string> items;    ///< what is owed alike, this one first: "bolt 3", "bolt 6" ...; empty when single
  std::vector<std::string> lines;    ///< how a hand would do it, in the language of hand scripts; empty: only in words
  std::vector<GuideTarget> targets;  ///< where, all possible ones alike
};

/// A requirement that can no longer be met in full.
struct GuideLate {
  rules::RuleIndex rule = rules::kNoRule;
  std::string title;
  std::string say;              ///< what it costs, and since when
  std::int64_t lost_milli = 0;  ///< [1/1000 point]
  base::Tick since_tick = 0;    ///< the moment to go back to
};

/// Everything that a guided card shows.
struct Guidance {
  bool over = false;              ///< handed over or stopped: nothing is owed any more
  std::optional<GuideStep> next;  ///< nothing only when over, or when no way on is known (then see `say_stuck`)
  rules::RuleIndex rule = rules::kNoRule;  ///< the requirement that the step serves; kNoRule: handing over
  std::string title;                       ///< of that requirement, in the scenario's words
  std::string why;                         ///< why the trade asks for it
  std::string stage;                       ///< the scenario's word: "remove"
  std::string say_owed;                    ///< "Still owed alike: bolt 3, bolt 6." Empty when nothing else is
  std::vector<std::string> mind;           ///< titles of requirements that watch how this step is done
  std::vector<GuideLate> late;             ///< latest first
  std::string say_stuck;                   ///< owed, but by no way that this page knows
};

/// What is owed next. The job's order comes from the rules that speak of order (what must come before what, rounds over
/// a set, stretches that end with something) and from the scenario's stages; how a hand does it from one table of
/// events. program, engine  of this run, fed up to now scenario         as drawn; its texts and sheet are quoted, its
/// variant never bench            read through its senses and the felt fields of its events alone language         tag
/// such as "en"; other texts fall back to English cost             about that of finishing the run: for every change of
/// the bench, not for every frame
Guidance compute_guidance(const rules::RuleProgram& program, const rules::EngineState& engine,
                          const scenario::DrawnScenario& scenario, const bench::Bench& bench,
                          std::string_view language);

}  // namespace proofstand::report
