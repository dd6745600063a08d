// Hand scripts: a text with one instruction a line, such as a colleague could follow, worked at the bench by a modelled
// hand that perceives only what a person would.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/result.h"
#include "sim/bench/bench.h"
#include "sim/event/actions.h"

namespace proofstand::hand {

/// How a person works. Two sets ship: a novice and a journeyman.
struct HandSkill {
  std::string name;  ///< "novice", "journeyman"
  double strength_percentile_1 = 0.5;
  double start_tilt_sd_rad = 0.0;  ///< of a bolt brought to its hole
  double depth_share_1 = 0.98;     ///< of the tool's full depth, mean
  double depth_share_sd_1 = 0.02;
  double tool_tilt_sd_rad = 0.0;
  double wrench_speed_rad_s = 0.0;  ///< near the click
  double reaction_s = 0.15;         ///< from feeling a click to going slack
  double pull_again_1 = 0.0;        ///< chance to pull on after a click
  double feel_bias_1 = 1.0;         ///< torque by feel, of the torque meant
  double feel_sd_1 = 0.15;          ///< and its spread
  double point_sd_m = 0.001;        ///< where fingers land
};
const HandSkill& novice();
const HandSkill& journeyman();
/// errors: a name that is neither
base::Result<HandSkill> skill_from_name(std::string_view name);

/// A parsed script.
class HandScript;

/// Parses a script against a setup's names. Every faulty line is listed with file, line, column, what is wrong and what
/// to write.
struct ReadScript {
  base::Faults faults;
  std::shared_ptr<const HandScript> script;  ///< null when there is an error
};
ReadScript read_hand_script(std::string_view text, std::string_view file, const bench::BenchSetup& setup);

/// Works a script. Each action it decides on goes to the sink, which applies it to the bench (and may record it).
class ModelledHand {
 public:
  /// seed: of the hand's own scatter, separate from the bench's.
  ModelledHand(std::shared_ptr<const HandScript> script, HandSkill skill, std::uint64_t seed);
  ~ModelledHand();
  ModelledHand(ModelledHand&&) noexcept;
  ModelledHand& operator=(ModelledHand&&) noexcept;

  using Sink = std::function<void(const event::Action&)>;

  /// What became of one step.
  enum class Step { Going, Finished, Stuck };
  /// Acts and lets time pass until the current instruction has moved on a little (at most a quarter of a second of
  /// bench time).
  Step step(bench::Bench& bench, const Sink& sink);
  /// Line of the script being worked, from 1.
  [[nodiscard]] std::size_t line() const;
  /// Why it is stuck, for people: file:line, what it tried, what stood in the way, what to write instead.
  [[nodiscard]] const base::Error& trouble() const;
  /// Works these lines next, with what it holds and remembers; call it when finished. The file's name stays the
  /// first's.
  void go_on_with(std::shared_ptr<const HandScript> more);
  /// Begins the current instruction again: both hands were let go meanwhile (an attempt that was cut off and goes on).
  void begin_instruction_again();

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

/// Every instruction with its form, units and an example: the page that script authors read.
std::string script_language_page();

}  // namespace proofstand::hand
