// The subcommands: what each was asked for, and the function that does it.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "sim/cli/exit_code.h"

namespace proofstand::cli {

/// Works a scenario with a hand script and records the attempt.
struct RunOptions {
  std::string scenario;
  std::string script;
  std::string attempt;
  std::int64_t seed = 0;
  std::int64_t hand_seed = 0;
  std::string hand = "journeyman";
  std::string way = "practice";
  std::string who;
  bool resume = false;
  std::string program;  ///< version of this program
};
ExitCode run_scenario(const RunOptions& options);

/// Marks an attempt from its events.
struct MarkOptions {
  std::string attempt;
  bool json = false;
  std::string html;  ///< file to write the page to; empty: none
  std::string language = "en";
};
ExitCode mark_attempt_file(const MarkOptions& options);

/// Works an attempt again and compares.
struct ReplayOptions {
  std::string attempt;
  bool events = false;
};
ExitCode replay_attempt_file(const ReplayOptions& options);

/// Judges a trace by rules alone.
struct JudgeOptions {
  std::string rules;
  std::string events;  ///< file, or "-" for standard input
  bool json = false;
};
ExitCode judge_trace(const JudgeOptions& options);

/// Checks scenario files.
struct CheckOptions {
  std::vector<std::string> scenarios;
  bool deep = false;
};
ExitCode check_scenarios(const CheckOptions& options);

/// Computes a bolted joint.
struct JointOptions {
  std::string thread;
  std::string torque;
  std::string friction = "clean";
  std::string bearing = "7.1 mm";
  std::string engagement = "8 mm";
  std::string arm;  ///< empty: no hand force asked for
  std::string grade = "8.8";
  bool json = false;
};
ExitCode compute_joint(const JointOptions& options);

}  // namespace proofstand::cli
