// One attempt under way in the window: scenario, bench, rules and file together, and how real time becomes bench time.
// Everything a hand does goes through act(), so that nothing happens unrecorded.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "sim/record/session.h"
#include "sim/scenario/scenario.h"

namespace proofstand::desk {

/// Most bench ticks in one frame while something moves: 50 ms. A slow machine gives more time, never less.
inline constexpr base::Tick kMostTicks = 12;
/// Longest pause that is still waiting and not absence, while nothing moves [ticks]: 2 s.
inline constexpr base::Tick kMostWaiting = 480;

struct StartAsk {
  std::string scenario;  ///< scenario file
  record::Way way = record::Way::Practice;
  std::int64_t seed = 0;
  std::string attempt;  ///< file to record to; empty: one is named in the person's own folder
  std::string who;
  std::vector<std::string> aids;
  std::string program;  ///< version of this program
};

class LiveAttempt {
 public:
  /// errors: those of reading the scenario, file-exists, file-write, no-folder
  static base::Result<std::unique_ptr<LiveAttempt>> begin(const StartAsk& ask);
  /// Goes on with one that was left open. errors: closed, those of reading an attempt and of Session::go_on
  static base::Result<std::unique_ptr<LiveAttempt>> go_on(const std::string& path);

  [[nodiscard]] const bench::Bench& bench() const { return session_.bench(); }
  [[nodiscard]] const scenario::DrawnScenario& scenario() const { return scenario_; }
  [[nodiscard]] const record::Session& session() const { return session_; }
  [[nodiscard]] record::Way way() const { return way_; }
  [[nodiscard]] const std::string& path() const { return path_; }
  [[nodiscard]] bool over() const { return session_.closed() || session_.bench().over(); }
  /// What stopped the record: nothing is kept any more. Null while all is well.
  [[nodiscard]] const base::Error* trouble() const { return trouble_ ? &*trouble_ : nullptr; }

  /// Applies an action at its tick and keeps it for the file.
  bench::Refusal act(const event::Action& action);
  /// Lets real time pass [s]: whole ticks, at most 12 while something moves, the rest recorded as a gap. While nothing
  /// moves waiting counts in full, up to two seconds at once. returns how many ticks passed
  base::Tick pass(double step_s);
  /// So many ticks pass, as a driver of tests asks; not more than kMostTicks are worked between two writes.
  void pass_ticks(base::Tick ticks);
  /// Writes what is due; call it once a frame.
  void keep();
  /// Practice: back to an earlier moment. errors: exam-sealed, ahead, file-write
  base::Result<base::Done> rewind(base::Tick to);

 private:
  LiveAttempt(record::Session session, scenario::DrawnScenario scenario, record::Way way, std::string path);
  record::Session session_;
  scenario::DrawnScenario scenario_;
  record::Way way_;
  std::string path_;
  double carry_ticks_ = 0.0;  ///< part of a tick that waits for the next frame
  std::optional<base::Error> trouble_;
};

/// Does anything move of itself or under a hand? Then time is counted frame by frame.
bool is_quiet(const bench::Bench& bench);

}  // namespace proofstand::desk
