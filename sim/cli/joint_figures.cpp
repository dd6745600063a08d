#include "sim/cli/joint_figures.h"

#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/base/words.h"
#include "sim/physics/bolt_strength.h"
#include "sim/physics/friction_condition.h"
#include "sim/physics/preload.h"
#include "sim/physics/prevailing.h"
#include "sim/physics/thread_shear.h"
#include "sim/physics/torque_tool.h"

namespace proofstand::cli {
namespace {

using base::Dimension;
using physics::BoltClass;
using physics::ThreadCondition;

struct FrictionWord {
  std::string_view word;
  ThreadCondition condition;
};
constexpr FrictionWord kFrictions[] = {
    {"clean", ThreadCondition::AsReceived},      {"dry", ThreadCondition::Dry},
    {"reference", ThreadCondition::Reference},   {"patch", ThreadCondition::Patch},
    {"locker-wet", ThreadCondition::LockerWet},  {"locker-set", ThreadCondition::LockerSet},
    {"oiled", ThreadCondition::Oiled},           {"greased", ThreadCondition::Greased},
    {"alcohol-wet", ThreadCondition::AlcoholWet}};

struct GradeWord {
  std::string_view word;
  BoltClass bolt_class;
};
constexpr GradeWord kGrades[] = {{"8.8", BoltClass::Steel8_8},
                                 {"10.9", BoltClass::Steel10_9},
                                 {"12.9", BoltClass::Steel12_9},
                                 {"A2-70", BoltClass::StainlessA2_70}};

// coarse pitches of ISO 261 [mm], for "M5" without one; from memory
struct Coarse {
  double diameter_mm;
  double pitch_mm;
};
constexpr Coarse kCoarse[] = {{3.0, 0.5}, {4.0, 0.7}, {5.0, 0.8}, {6.0, 1.0}, {8.0, 1.25}, {10.0, 1.5}, {12.0, 1.75}};

// everyday limits: what is written beyond them is a slip of the pen, and the formulas are not valid there
constexpr double kMostTorque_nm = 1000.0;
constexpr double kMostLength_m = 1.0;

struct Friction {
  physics::BoltFriction friction;
  double scatter_1 = 0.0;
  double prevailing_nm = 0.0;
};

base::Result<Friction> friction_from_words(const std::string& words) {
  if (const auto number = base::double_from_text(words, true)) {
    if (*number < 0.01 || *number > 1.0) {
      return base::Error{"bad-friction", "--friction", "a friction of " + words + " is no bolt's", "write 0.05 to 0.6"};
    }
    return Friction{{*number, *number}, 0.0, 0.0};
  }
  std::vector<std::string_view> known;
  for (const FrictionWord& row : kFrictions) {
    known.push_back(row.word);
    if (row.word != words) continue;
    const physics::FrictionRow figures = physics::friction_row(row.condition);
    const double drag_nm = row.condition == ThreadCondition::Patch ? physics::kPatchIn_nm : 0.0;
    return Friction{{figures.thread_1, figures.head_1}, figures.scatter_1, drag_nm};
  }
  const std::string_view near = base::nearest_word(words, known);
  std::string all;
  for (const std::string_view word : known) all += (all.empty() ? "" : ", ") + std::string(word);
  return base::Error{"bad-friction", "--friction", "\"" + words + "\" is no friction condition",
                     near.empty() ? "write a number or one of " + all : "did you mean \"" + std::string(near) + "\"?"};
}

base::Result<double> length_of(const std::string& words, std::string_view option) {
  const auto length_m = base::parse_quantity_as(words, Dimension::Length);
  if (!length_m) {
    base::Error error = length_m.error();
    error.where = std::string(option);
    return error;
  }
  if (*length_m <= 0.0 || *length_m > kMostLength_m) {
    return base::Error{"bad-length", std::string(option), words + " is out of range", "write more than 0, at most 1 m"};
  }
  return *length_m;
}

}  // namespace

base::Result<ThreadSize> thread_from_words(std::string_view words) {
  const base::Error bad{"bad-thread", "--thread", "\"" + std::string(words) + "\" is no metric thread",
                        "write it such as M5x0.8"};
  if (words.size() < 2 || (words[0] != 'M' && words[0] != 'm')) return bad;
  std::string rest(words.substr(1));
  // people write the times sign, too
  const std::size_t times = rest.find("\xC3\x97");
  if (times != std::string::npos) rest.replace(times, 2, "x");
  const std::size_t x = rest.find_first_of("xX*");
  const auto diameter_mm = base::double_from_text(rest.substr(0, x), true);
  if (!diameter_mm) return bad;
  std::optional<double> pitch_mm;
  if (x != std::string::npos) {
    pitch_mm = base::double_from_text(rest.substr(x + 1), true);
  } else {
    for (const Coarse& row : kCoarse) {
      if (row.diameter_mm == *diameter_mm) pitch_mm = row.pitch_mm;
    }
  }
  if (!pitch_mm) return bad;
  if (*diameter_mm < 2.8 || *diameter_mm > 90.0 || *pitch_mm < 0.2 || *pitch_mm * 3.0 >= *diameter_mm) return bad;
  return ThreadSize{*diameter_mm / 1000.0, *pitch_mm / 1000.0};
}

base::Result<JointFigures> joint_figures(const JointOptions& options) {
  const auto size = thread_from_words(options.thread);
  if (!size) return size.error();
  const auto torque_nm = base::parse_quantity_as(options.torque, Dimension::Torque);
  if (!torque_nm) {
    base::Error error = torque_nm.error();
    error.where = "--torque";
    return error;
  }
  if (*torque_nm < 0.0 || *torque_nm > kMostTorque_nm) {
    return base::Error{"bad-torque", "--torque", options.torque + " is out of range", "write 0 to 1000 N\xC2\xB7m"};
  }
  const auto friction = friction_from_words(options.friction);
  if (!friction) return friction.error();
  const auto bearing_m = length_of(options.bearing, "--bearing");
  if (!bearing_m) return bearing_m.error();
  const auto engaged_m = length_of(options.engagement, "--engagement");
  if (!engaged_m) return engaged_m.error();
  const GradeWord* grade = nullptr;
  for (const GradeWord& row : kGrades) {
    if (row.word == options.grade) grade = &row;
  }
  if (grade == nullptr) {
    return base::Error{"bad-grade", "--grade", "\"" + options.grade + "\" is no property class known here",
                       "write 8.8, 10.9, 12.9 or A2-70"};
  }

  const physics::ThreadGeometry thread = physics::compute_thread(size->diameter_m, size->pitch_m);
  const physics::TorqueLevers levers = physics::torque_levers(thread, *bearing_m, friction->friction);
  const physics::BoltMaterial& material = physics::bolt_material(grade->bolt_class);
  JointFigures out;
  out.diameter_m = size->diameter_m;
  out.pitch_m = size->pitch_m;
  out.stress_area_m2 = thread.stress_area_m2;
  out.torque_nm = *torque_nm;
  out.prevailing_nm = friction->prevailing_nm;
  out.friction_thread_1 = friction->friction.thread_1;
  out.friction_head_1 = friction->friction.head_1;
  out.nut_factor_1 = physics::nut_factor_1(levers, size->diameter_m);
  out.preload_n = physics::preload_from_torque_n(*torque_nm, levers, friction->prevailing_nm);
  out.preload_lo_n = out.preload_n * (1.0 - friction->scatter_1);
  out.preload_hi_n = out.preload_n * (1.0 + friction->scatter_1);
  const physics::BoltStress stress = physics::bolt_stress(out.preload_n, thread, levers, physics::Torsion::Plastic);
  out.axial_stress_pa = stress.axial_pa;
  out.shear_stress_pa = stress.shear_pa;
  out.combined_stress_pa = stress.combined_pa;
  out.yield_preload_n = physics::yield_preload_n(material.yield_pa, thread, levers);
  const physics::ThreadLimits limits = physics::thread_limits(size->diameter_m, size->pitch_m);
  out.strip_load_n = physics::strip_load_n(physics::thread_shear_strength_pa(physics::kHubTensile_pa),
                                           physics::internal_shear_area_m2(limits, size->pitch_m, *engaged_m));
  if (out.preload_n > 0.0) {
    out.yield_margin_1 = out.yield_preload_n / out.preload_n;
    out.strip_margin_1 = out.strip_load_n / out.preload_n;
  }
  out.loosening_nm = physics::loosening_torque_nm(out.preload_n, levers);
  if (!options.arm.empty()) {
    const auto arm_m = length_of(options.arm, "--arm");
    if (!arm_m) return arm_m.error();
    out.hand_force_n = physics::hand_force_n(*torque_nm, *arm_m);
  }
  return out;
}

}  // namespace proofstand::cli
