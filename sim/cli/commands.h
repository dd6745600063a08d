// The subcommands: what each was asked for, and the function that does it.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "sim/cli/exit_code.h"
#include "sim/cli/stand_command.h"

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

/// Opens the window, if this edition has one.
ExitCode open_stand(const StandOptions& options, const OpenStand& open);

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

/// Draws the workplace at one moment, without a display.
struct PictureOptions {
  std::string source;  ///< scenario or attempt
  std::string file;
  std::string at;  ///< time; empty: the end of an attempt, the start of a scenario
  std::string view = "workplace";
  std::string size = "1280x720";
  std::int64_t seed = 0;
  bool draft = false;
};
ExitCode draw_picture(const PictureOptions& options);

/// Draws an attempt as a row of pictures, without a display.
struct FilmOptions {
  std::string attempt;
  std::string folder;
  std::string every = "0.1 s";
  std::string from;  ///< time; empty: the beginning
  std::string to;    ///< time; empty: the end
  std::string view = "workplace";
  std::string size = "1280x720";
  bool draft = false;
};
ExitCode draw_film(const FilmOptions& options);

}  // namespace proofstand::cli
