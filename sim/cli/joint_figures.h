// A bolted joint computed from what a person writes: the figures behind the `joint` command.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "sim/base/result.h"
#include "sim/cli/commands.h"

namespace proofstand::cli {

/// SI unless the name says otherwise.
struct JointFigures {
  double diameter_m = 0.0;
  double pitch_m = 0.0;
  double stress_area_m2 = 0.0;
  double torque_nm = 0.0;
  double prevailing_nm = 0.0;  ///< of a new patch, else 0
  double friction_thread_1 = 0.0;
  double friction_head_1 = 0.0;
  double nut_factor_1 = 0.0;
  double preload_n = 0.0;
  double preload_lo_n = 0.0;  ///< with the scatter of this friction, two standard deviations
  double preload_hi_n = 0.0;
  double axial_stress_pa = 0.0;
  double shear_stress_pa = 0.0;
  double combined_stress_pa = 0.0;
  double yield_preload_n = 0.0;
  double yield_margin_1 = 0.0;  ///< yield preload over preload
  double strip_load_n = 0.0;    ///< of the hub's aluminium thread over this engagement
  double strip_margin_1 = 0.0;
  double loosening_nm = 0.0;
  std::optional<double> hand_force_n;  ///< at the arm that was asked for
};

/// errors: a thread, quantity, friction or grade that cannot be read, or that no joint can have
base::Result<JointFigures> joint_figures(const JointOptions& options);

/// "M5x0.8" or "M6" (its coarse pitch). errors: bad-thread
struct ThreadSize {
  double diameter_m = 0.0;
  double pitch_m = 0.0;
};
base::Result<ThreadSize> thread_from_words(std::string_view words);

}  // namespace proofstand::cli
