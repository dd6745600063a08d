// A modelled hand at work in a session, and how it finds its place again in an attempt that was cut off.
#pragma once

#include <functional>
#include <vector>

#include "sim/hand/hand_script.h"
#include "sim/record/attempt.h"
#include "sim/record/session.h"

namespace proofstand::record {

/// What became of a script.
struct ScriptedRun {
  bool finished = false;             ///< worked to its end
  std::optional<base::Error> stuck;  ///< why it could not go on, for people
};

/// Called after every step with the tick reached and the script's line.
using ScriptProgress = std::function<void(base::Tick, std::size_t line)>;

/// Works a script through a session, writing as it goes. The session is left open when the script ends without handing
/// over. errors: file-write
base::Result<ScriptedRun> work_script(hand::ModelledHand& hand, Session& session, const ScriptProgress& progress = {});

/// Brings a fresh hand to where the attempt's last line left it: works the script again beside the recorded actions.
/// The hand still has to begin its instruction again, once the session has let go. errors: other-script: it would have
/// done something else than was recorded, so script, set or seed are not the same
base::Result<base::Done> catch_up(hand::ModelledHand& hand, const Attempt& attempt,
                                  const scenario::DrawnScenario& scenario);

/// Lets both hands go: a hand on its way arrives first; one that rests on something goes slack and leaves.
/// returns the actions, applied
std::vector<event::Action> let_go(bench::Bench& bench);

}  // namespace proofstand::record
