#include "sim/cli/stand_command.h"

#include "sim/cli/commands.h"
#include "sim/cli/talk.h"

namespace proofstand::cli {

ExitCode open_stand(const StandOptions& options, const OpenStand& open) {
  if (!open) {
    say("proofstand: this edition was built without the window; the other commands work as ever");
    return ExitCode::Usage;
  }
  return open(options);
}

}  // namespace proofstand::cli
