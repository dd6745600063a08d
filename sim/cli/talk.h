// What the command says: data to standard output, everything about it to standard error.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "sim/base/result.h"
#include "sim/cli/exit_code.h"

namespace proofstand::cli {

/// Data, to standard output as it is.
void print_data(std::string_view text);
/// A sentence about it, to standard error, with a line end.
void say(std::string_view sentence);
/// An error for people. returns the exit code that fits its kind: Files for codes that begin with "file-", else
/// Unreadable.
ExitCode say_error(const base::Error& error);
/// All faults, and how many there are.
void say_faults(const base::Faults& faults);

/// One line on a terminal that shows how far long work has come; nothing at all where standard error is no terminal.
class Progress {
 public:
  explicit Progress(std::string what);
  ~Progress();
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  /// Shows the words behind what is being done; not more often than the terminal needs.
  void show(std::string_view words);
  /// Shows them whatever was shown before: for steps that take long each.
  void show_now(std::string_view words);

 private:
  std::string what_;
  bool terminal_;
  bool shown_ = false;
  std::int64_t calls_ = 0;
};

}  // namespace proofstand::cli
