// Where every line of every engraved scale lies: the formulas that the meshes are cut by, that pose their moving parts,
// and that pictures are checked against. Lengths in metres along the scale from its first line, angles in radians.
#pragma once

#include "sim/bench/setup.h"

namespace proofstand::scene {

// Click driver: the setting handle runs along the barrel on a coarse thread. The main scale has a line every
// scale_step_nm, a longer one with its figure at each whole N·m; the handle's lower edge is the index. On the handle's
// edge a second scale repeats the tenths, read against the barrel's long datum line.
inline constexpr double kSettingPitch_m = 0.004;  ///< travel of the handle a N·m, which is one turn of it
/// Main scale: from the lowest line towards the bit.
double setting_line_m(const bench::ToolPart& tool, int line);
int setting_lines(const bench::ToolPart& tool);
/// Where the handle's edge stands.
double setting_edge_m(const bench::ToolPart& tool, double setting_nm);
/// Turn of the handle, counter-clockwise seen from its end, and where its line k is cut round its edge: line 0 meets
/// the datum at every whole N·m.
double setting_turn_rad(double setting_nm);
double handle_line_rad(const bench::ToolPart& tool, int line);
int handle_lines(const bench::ToolPart& tool);

// Micrometer, 0 to 25 mm: a line every 0.5 mm on the sleeve, whole ones above the datum, halves below; 50 lines on the
// thimble, one turn 0.5 mm.
// source: ordinary outside micrometers with 0.5 mm screw and 50 divisions, catalogue descriptions
inline constexpr double kSleeveStep_m = 0.0005;
inline constexpr int kSleeveLines = 51;
inline constexpr int kThimbleLines = 50;
double sleeve_line_m(int line);
/// Where the thimble's edge stands: the reading itself.
double thimble_edge_m(double shown_m);
/// Turn of the thimble, counter-clockwise seen from its end, and where its line n is cut.
double thimble_turn_rad(double shown_m);
double thimble_line_rad(int line);

// Vernier: a line every millimetre on the beam; the slide's lines are one resolution closer together than millimetres.
// source: verniers of 0.02 mm have 50 lines on 49 mm, catalogue descriptions
double beam_line_m(int line);
int beam_lines(const bench::InstrumentPart& part);
int vernier_lines(const bench::InstrumentPart& part);
double vernier_line_m(const bench::InstrumentPart& part, double shown_m, int line);

// Dial gauge: 100 lines, one turn of the pointer a millimetre, a small hand that counts the turns.
inline constexpr int kDialLines = 100;
/// Clockwise from the top, as one reads it.
double dial_line_rad(int line);
double dial_pointer_rad(double shown_m);
double dial_small_hand_rad(double shown_m);

}  // namespace proofstand::scene
