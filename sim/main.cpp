// Joins the program's faces into one; nothing else.
#include "sim/cli/command_line.h"
#include "sim/cli/sheet_figures.h"
#include "sim/cli/talk.h"
#include "sim/desk/window/run_stand.h"

namespace {

using proofstand::cli::ExitCode;
using proofstand::cli::StandOptions;

ExitCode open_window(const StandOptions& options) {
  proofstand::desk::StandRun run;
  run.stand.scenario = options.scenario;
  run.stand.way = proofstand::record::way_from_words(options.way).value_or(proofstand::record::Way::Practice);
  run.stand.attempt = options.attempt;
  run.stand.seed = options.seed;
  run.stand.who = options.who;
  run.stand.program = options.program;
  run.stand.complete_sheet = [](proofstand::report::MarkSheet& sheet, const proofstand::record::Marking& marking) {
    proofstand::cli::add_preload_range(sheet, marking.scenario.setup);
    proofstand::cli::add_pictures(sheet, marking);
  };
  run.language = options.language;
  run.text_percent = options.text_percent;
  run.picture = options.picture;
  run.size = options.size;
  const auto ended = proofstand::desk::run_stand(run);
  return ended ? ExitCode::Done : proofstand::cli::say_error(ended.error());
}

}  // namespace

int main(int argc, char** argv) {
  return proofstand::cli::run_command_line(argc, argv, PROOFSTAND_VERSION, open_window);
}
