#include "sim/scene/tools/scales.h"

#include <cmath>

#include "sim/base/math.h"

namespace proofstand::scene {
namespace {

constexpr double kMillimetre_m = 0.001;

int count_of(double share) { return static_cast<int>(std::lround(share)); }

}  // namespace

double setting_line_m(const bench::ToolPart& tool, int line) { return line * tool.scale_step_nm * kSettingPitch_m; }

int setting_lines(const bench::ToolPart& tool) {
  if (tool.scale_step_nm <= 0.0) return 0;
  return count_of((tool.scale_hi_nm - tool.scale_lo_nm) / tool.scale_step_nm) + 1;
}

double setting_edge_m(const bench::ToolPart& tool, double setting_nm) {
  return (setting_nm - tool.scale_lo_nm) * kSettingPitch_m;
}

double setting_turn_rad(double setting_nm) { return -base::kTwoPi * setting_nm; }

double handle_line_rad(const bench::ToolPart& tool, int line) { return base::kTwoPi * tool.scale_step_nm * line; }

int handle_lines(const bench::ToolPart& tool) {
  return tool.scale_step_nm > 0.0 ? count_of(1.0 / tool.scale_step_nm) : 0;
}

double sleeve_line_m(int line) { return line * kSleeveStep_m; }

double thimble_edge_m(double shown_m) { return shown_m; }

double thimble_turn_rad(double shown_m) { return base::kTwoPi * shown_m / kSleeveStep_m; }

double thimble_line_rad(int line) { return -base::kTwoPi * line / kThimbleLines; }

double beam_line_m(int line) { return line * kMillimetre_m; }

int beam_lines(const bench::InstrumentPart& part) { return count_of(part.range_m / kMillimetre_m) + 1; }

int vernier_lines(const bench::InstrumentPart& part) { return count_of(kMillimetre_m / part.resolution_m) + 1; }

double vernier_line_m(const bench::InstrumentPart& part, double shown_m, int line) {
  return shown_m + line * (kMillimetre_m - part.resolution_m);
}

double dial_line_rad(int line) { return base::kTwoPi * line / kDialLines; }

double dial_pointer_rad(double shown_m) { return base::kTwoPi * shown_m / kMillimetre_m; }

double dial_small_hand_rad(double shown_m) { return dial_pointer_rad(shown_m) / 10.0; }

}  // namespace proofstand::scene
