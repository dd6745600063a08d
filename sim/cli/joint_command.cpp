#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/cli/joint_figures.h"
#include "sim/cli/talk.h"
#include "sim/record/json_text.h"

namespace proofstand::cli {
namespace {

using base::Dimension;
using base::quantity_words;

constexpr double kPascalsPerMegapascal = 1e6;

std::string json_of(const JointFigures& joint) {
  record::JsonWriter json;
  const auto real = [&](std::string_view key, double value) { json.key(key).real(value); };
  json.begin_object();
  real("diameter_mm", joint.diameter_m * 1000.0);
  real("pitch_mm", joint.pitch_m * 1000.0);
  real("stress_area_mm2", joint.stress_area_m2 * 1e6);
  real("torque_nm", joint.torque_nm);
  real("prevailing_nm", joint.prevailing_nm);
  real("friction_thread", joint.friction_thread_1);
  real("friction_head", joint.friction_head_1);
  real("nut_factor", joint.nut_factor_1);
  real("preload_n", joint.preload_n);
  real("preload_lo_n", joint.preload_lo_n);
  real("preload_hi_n", joint.preload_hi_n);
  real("axial_stress_mpa", joint.axial_stress_pa / kPascalsPerMegapascal);
  real("shear_stress_mpa", joint.shear_stress_pa / kPascalsPerMegapascal);
  real("combined_stress_mpa", joint.combined_stress_pa / kPascalsPerMegapascal);
  real("yield_preload_n", joint.yield_preload_n);
  real("yield_margin", joint.yield_margin_1);
  real("strip_load_n", joint.strip_load_n);
  real("strip_margin", joint.strip_margin_1);
  real("loosening_nm", joint.loosening_nm);
  if (joint.hand_force_n) {
    real("hand_force_n", *joint.hand_force_n);
    real("hand_force_lbf", *joint.hand_force_n / 4.4482216152605);
  }
  json.end_object();
  return json.text() + "\n";
}

std::string text_of(const JointFigures& joint) {
  const auto number = [](double value, int digits) { return base::text_for_people(value, digits); };
  const auto stress = [&](double pa) { return base::text_fixed(pa / kPascalsPerMegapascal, 0) + " MPa"; };
  std::string out = "M" + number(joint.diameter_m * 1000.0, 4) + "x" + number(joint.pitch_m * 1000.0, 4) +
                    ", stress area " + base::text_fixed(joint.stress_area_m2 * 1e6, 2) + " mm\xC2\xB2\n";
  out += "torque        " + quantity_words(joint.torque_nm, Dimension::Torque) + " at the head";
  if (joint.prevailing_nm > 0.0) {
    out += ", of which " + quantity_words(joint.prevailing_nm, Dimension::Torque) + " drags in the patch";
  }
  out += "\nfriction      " + number(joint.friction_thread_1, 3) + " thread, " + number(joint.friction_head_1, 3) +
         " head; nut factor " + number(joint.nut_factor_1, 3) + "\n";
  out += "preload       " + base::text_fixed(joint.preload_n, 0) + " N";
  if (joint.preload_hi_n > joint.preload_lo_n) {
    out += " (" + base::text_fixed(joint.preload_lo_n, 0) + " to " + base::text_fixed(joint.preload_hi_n, 0) +
           " N with the scatter of this friction)";
  }
  out += "\nstress        " + stress(joint.axial_stress_pa) + " pull, " + stress(joint.shear_stress_pa) + " twist, " +
         stress(joint.combined_stress_pa) + " together while it is pulled\n";
  out += "bolt yields   at " + base::text_fixed(joint.yield_preload_n, 0) + " N: margin " +
         base::text_fixed(joint.yield_margin_1, 2) + "\n";
  out += "thread strips at " + base::text_fixed(joint.strip_load_n, 0) + " N in an aluminium hub: margin " +
         base::text_fixed(joint.strip_margin_1, 2) + "\n";
  out += "loosens       at " + quantity_words(joint.loosening_nm, Dimension::Torque) + " without locker\n";
  if (joint.hand_force_n) {
    out += "hand force    " + quantity_words(*joint.hand_force_n, Dimension::Force) + " (" +
           base::text_fixed(*joint.hand_force_n / 4.4482216152605, 1) + " lbf), square to the arm\n";
  }
  return out;
}

}  // namespace

ExitCode compute_joint(const JointOptions& options) {
  const auto joint = joint_figures(options);
  if (!joint) return say_error(joint.error());
  print_data(options.json ? json_of(*joint) : text_of(*joint));
  say("The maker's instructions and the figure on the part come first; this computes, it does not release.");
  return ExitCode::Done;
}

}  // namespace proofstand::cli
