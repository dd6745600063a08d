// One procedure for each thing that a line can ask for. Each looks first what is already so, because a line may be
// begun again after both hands were let go. Private to this floor.
#pragma once

#include "sim/hand/work.h"

namespace proofstand::hand {

/// The procedure of a line.
Task work_line(Work& work, const Instruction& line);

// by theme, each in its own file
Task do_glove(Work& work, const Instruction& line);
Task do_take(Work& work, const Instruction& line);
Task do_put_back(Work& work, const Instruction& line);
Task do_pass(Work& work, const Instruction& line);
Task do_let_go(Work& work, const Instruction& line);
Task do_turn_over(Work& work, const Instruction& line);
Task do_touch(Work& work, const Instruction& line);
Task do_hold_near(Work& work, const Instruction& line);
Task do_bring(Work& work, const Instruction& line);
Task do_hand_over(Work& work, const Instruction& line);

Task do_crack(Work& work, const Instruction& line);
Task do_run_out(Work& work, const Instruction& line);
Task do_start(Work& work, const Instruction& line);
Task do_run_in(Work& work, const Instruction& line);
Task do_snug(Work& work, const Instruction& line);
Task do_tighten(Work& work, const Instruction& line);
Task do_set_tool(Work& work, const Instruction& line);
Task do_pick_clean(Work& work, const Instruction& line);

Task do_hold_against(Work& work, const Instruction& line);
Task do_turn_rotor(Work& work, const Instruction& line);
Task do_take_off(Work& work, const Instruction& line);
Task do_put_on(Work& work, const Instruction& line);
Task do_lay_down(Work& work, const Instruction& line);

Task do_wet(Work& work, const Instruction& line);
Task do_squeeze(Work& work, const Instruction& line);
Task do_wipe(Work& work, const Instruction& line);
Task do_wipe_both(Work& work, const Instruction& line);

Task do_measure(Work& work, const Instruction& line);
Task do_measure_across(Work& work, const Instruction& line);
Task do_read_runout(Work& work, const Instruction& line);
Task do_look_at(Work& work, const Instruction& line);
Task do_write(Work& work, const Instruction& line);
Task do_write_read(Work& work, const Instruction& line);

Task do_move_wheel(Work& work, const Instruction& line);
Task do_spin_wheel(Work& work, const Instruction& line);
Task do_stop_wheel(Work& work, const Instruction& line);
Task do_hold_tyre(Work& work, const Instruction& line);

/// Takes up again a hold that stands but was let go of (see StandingHold).
Task restore_hold(Work& work);
/// The other hand holds the wheel against the tool's pull, unless it already holds wheel or rotor, or the line says not
/// to.
Task steady_wheel(Work& work, const Instruction& line);

}  // namespace proofstand::hand
