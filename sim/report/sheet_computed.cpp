#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/report/catalogue.h"
#include "sim/report/record_fields.h"
#include "sim/report/sheet_parts.h"

namespace proofstand::report {
namespace {

using base::Dimension;
using base::quantity_words;

// below these a remark would only be noise
constexpr double kStretchSaid_m = 2e-6;
constexpr double kWearSaid_m = 1e-5;
constexpr double kGapSaid_m = 5e-5;

BoltLine bolt_line(const RecordFields& record, std::string_view language) {
  BoltLine line;
  line.bolt = record.index("bolt").value_or(0);
  line.present = record.flag("present");
  const auto remark = [&](bool said, std::string_view key) {
    if (said) line.remarks.emplace_back(phrase(key, language));
  };
  if (!line.present) {
    remark(true, "remark.no-bolt");
    remark(record.flag("stripped"), "remark.stripped");
    return line;
  }
  line.last_torque_nm = record.value_or("last_torque", 0.0);
  line.preload_n = record.value_or("preload", 0.0);
  line.clamp_n = record.value_or("clamp", 0.0);
  const std::string key = "locker." + record.word("locker");
  line.locker = std::string(phrase(has_phrase(key) ? key : "locker.unknown", language));
  remark(record.flag("crossed"), "remark.crossed");
  remark(record.flag("stripped"), "remark.stripped");
  remark(record.flag("greasy"), "remark.greasy");
  remark(record.flag("bottomed"), "remark.bottomed");
  const auto sized = [&](std::string_view field, double said_m, std::string_view remark_key) {
    const double size_m = record.value_or(field, 0.0);
    if (size_m < said_m) return;
    line.remarks.push_back(phrase(remark_key, language, {quantity_words(size_m, Dimension::Length)}));
  };
  sized("stretch", kStretchSaid_m, "remark.stretched");
  sized("recess_wear", kWearSaid_m, "remark.worn");
  sized("head_gap", kGapSaid_m, "remark.proud");
  return line;
}

JointLine joint_line(const RecordFields& record) {
  JointLine line;
  line.clamp_n = record.value_or("clamp", 0.0);
  line.capacity_nm = record.value_or("capacity", 0.0);
  line.demand_nm = record.value_or("demand", 0.0);
  line.slips = record.flag("slips");
  line.clearance_m = record.value_or("clearance", 0.0);
  line.slip_angle_rad = record.value_or("slip_angle", 0.0);
  line.knock_j = record.value_or("knock", 0.0);
  line.bolt_shear_n = record.value_or("bolt_shear", 0.0);
  line.friction_1 = record.value_or("friction", 0.0);
  line.stop_m = record.value_or("stop", 0.0);
  line.spread_1 = record.value_or("spread", 0.0);
  return line;
}

// a round goes on until a bolt comes again
std::vector<TighteningRound> rounds_of(const record::Marking& marking) {
  std::vector<TighteningRound> rounds;
  for (const event::Record& record : marking.trace.records) {
    const RecordFields fields(marking.program.vocabulary, record);
    const auto bolt = fields.index("bolt");
    if (!fields.is("tightened") || !bolt || fields.word("by") == "fingers") continue;
    const bool again =
        !rounds.empty() && std::find(rounds.back().begin(), rounds.back().end(), *bolt) != rounds.back().end();
    // a second pull at the same bolt right away is no new round
    if (again && rounds.back().back() == *bolt) continue;
    if (rounds.empty() || again) rounds.emplace_back();
    rounds.back().push_back(*bolt);
  }
  return rounds;
}

}  // namespace

void add_computed(MarkSheet& sheet, const record::Marking& marking, std::string_view language) {
  std::optional<double> runout_m;
  std::optional<double> thickness_m;
  std::optional<double> above_stamp_m;
  for (const event::Record& record : marking.trace.records) {
    const RecordFields fields(marking.program.vocabulary, record);
    if (fields.is("left_bolt")) sheet.bolts.push_back(bolt_line(fields, language));
    if (fields.is("left_face")) {
      const std::string key = "face." + fields.word("face");
      sheet.faces.push_back({has_phrase(key) ? std::string(phrase(key, language)) : fields.word("face"),
                             fields.value_or("film_worst", 0.0), fields.value_or("coverage", 0.0),
                             fields.value_or("friction_factor", 1.0)});
    }
    if (fields.is("left_rotor")) {
      runout_m = fields.value("runout");
      thickness_m = fields.value("thickness");
      above_stamp_m = fields.value("above_stamp");
    }
    if (fields.is("left_joint")) sheet.joint = joint_line(fields);
  }
  if (sheet.joint) {
    sheet.joint->runout_m = runout_m.value_or(0.0);
    sheet.joint->thickness_m = thickness_m;
    sheet.joint->above_stamp_m = above_stamp_m;
  }
  sheet.rounds = rounds_of(marking);
  for (const scenario::SheetLine& line : marking.scenario.sheet_lines) {
    if (line.value.dimension != Dimension::Torque || sheet.sheet_torque_nm) continue;
    sheet.sheet_torque_nm = line.value.value_si;
    if (line.tolerance_si > 0.0) sheet.sheet_torque_tolerance_nm = line.tolerance_si;
  }
}

}  // namespace proofstand::report
