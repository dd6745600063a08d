// Everything that an exam tells a trainee about one variant, as text: the papers, the places that hands are offered,
// what hands feel and eyes see where a hand is, the felt fields of what happened; and, for guided work, the guidance.
#pragma once

#include <cstdint>
#include <memory>
#include <string>

#include "sim/hand/hand_script.h"
#include "sim/rules/engine.h"
#include "sim/rules/program.h"
#include "sim/scenario/scenario.h"
#include "sim/scene/scene.h"

namespace proofstand::testing {

/// Title, task, maker's sheet, card, stages, cautions, clock: in every language.
std::string papers_text(const scenario::DrawnScenario& scenario);

/// One variant worked by a script, told step by step.
class Onlooker {
 public:
  /// The rules and the script must be sound (asserted).
  Onlooker(const scenario::DrawnScenario& scenario, const scene::Workshop& workshop, const std::string& script,
           std::uint64_t hand_seed);

  /// A quarter of a second on at most. false: the script is done, stuck, or the job handed over
  bool step();
  /// Line of the script being worked, from 1.
  [[nodiscard]] std::size_t line() const { return hand_.line(); }
  [[nodiscard]] const bench::Bench& bench() const { return bench_; }

  /// What happened since the last call, in felt fields, and what hands and eyes have now.
  std::string percepts_text();
  /// Places in words, for either hand, from several views.
  [[nodiscard]] std::string places_text() const;
  /// What guided work would say now.
  [[nodiscard]] std::string guidance_text() const;

 private:
  const scenario::DrawnScenario& scenario_;
  const scene::Workshop& workshop_;
  rules::RuleProgram program_;
  rules::EngineState engine_;
  bench::Bench bench_;
  hand::ModelledHand hand_;
  std::size_t watched_ = 0;
  std::size_t told_ = 0;
};

}  // namespace proofstand::testing
