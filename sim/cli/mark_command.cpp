#include "sim/cli/commands.h"
#include "sim/cli/sheet_figures.h"
#include "sim/cli/talk.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/files.h"
#include "sim/record/marking.h"
#include "sim/report/make_mark_sheet.h"
#include "sim/report/mark_sheet_html.h"
#include "sim/report/mark_sheet_text.h"

namespace proofstand::cli {

ExitCode mark_attempt_file(const MarkOptions& options) {
  auto attempt = record::load_attempt(options.attempt);
  if (!attempt) return say_error(attempt.error());
  auto marking = record::mark_attempt(std::move(*attempt));
  if (!marking) return say_error(marking.error());
  report::MarkSheet sheet = report::make_mark_sheet(*marking, options.language);
  add_preload_range(sheet, marking->scenario.setup);
  if (!options.html.empty()) {
    add_pictures(sheet, *marking);
    const auto saved = record::save_bytes(options.html, report::mark_sheet_html(sheet));
    if (!saved) return say_error(saved.error());
    say("page written to " + options.html);
  }
  print_data(options.json ? report::mark_sheet_json(sheet) : report::mark_sheet_text(sheet, options.language));
  return sheet.overall == rules::Overall::Passed ? ExitCode::Done : ExitCode::Negative;
}

}  // namespace proofstand::cli
