#include "sim/cli/talk.h"

#include <unistd.h>

#include <cstdio>

#include "sim/base/number_text.h"

namespace proofstand::cli {
namespace {

// work that calls this often is short; a terminal needs no more
constexpr std::int64_t kShowEvery = 64;

}  // namespace

void print_data(std::string_view text) {
  std::fwrite(text.data(), 1, text.size(), stdout);
  std::fflush(stdout);
}

void say(std::string_view sentence) {
  std::fwrite(sentence.data(), 1, sentence.size(), stderr);
  std::fputc('\n', stderr);
}

ExitCode say_error(const base::Error& error) {
  say("proofstand: " + error.sentence());
  return error.code.rfind("file-", 0) == 0 ? ExitCode::Files : ExitCode::Unreadable;
}

void say_faults(const base::Faults& faults) {
  for (const base::Error& fault : faults.list) say(fault.sentence());
  if (faults.list.size() >= base::Faults::kMost) say("... and perhaps more; these come first");
}

Progress::Progress(std::string what) : what_(std::move(what)), terminal_(isatty(STDERR_FILENO) != 0) {}

Progress::~Progress() {
  // the line goes away when the work is done
  if (shown_) std::fputs("\r\x1b[K", stderr);
}

void Progress::show(std::string_view words) {
  if (calls_++ % kShowEvery == 0) show_now(words);
}

void Progress::show_now(std::string_view words) {
  if (!terminal_) return;
  const std::string line = "\r\x1b[K" + what_ + " " + std::string(words);
  std::fwrite(line.data(), 1, line.size(), stderr);
  std::fflush(stderr);
  shown_ = true;
}

}  // namespace proofstand::cli
