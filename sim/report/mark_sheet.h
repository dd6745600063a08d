// The mark sheet as data: everything that text, JSON and page say, in one place, so that they can never disagree. Made
// from an attempt's events and rules alone; pictures that need the bench (curves, film maps) are added when it can be
// replayed.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "sim/base/ticks.h"
#include "sim/report/pictures.h"
#include "sim/rules/report.h"

namespace proofstand::report {

/// One event that proves a finding.
struct EvidenceLine {
  base::Tick tick = 0;
  std::size_t position = 0;  ///< of the record in the trace
  std::string words;         ///< what happened, with its quantities
};

/// What one rule concluded, in sentences.
struct FindingLine {
  std::string rule;
  std::string competence;
  std::string severity;  ///< note, minor, major, critical
  rules::Verdict verdict = rules::Verdict::Pass;
  std::int64_t earned_milli = 0;
  std::int64_t points_milli = 0;
  std::string what;   ///< the rule's own explanation, filled with the measured numbers
  std::string why;    ///< why the trade asks for it
  std::string aside;  ///< not applicable because ..., excused by ..., not judged because ...
  std::vector<EvidenceLine> evidence;
};

/// A competence's bar.
struct CompetenceLine {
  std::string name;
  rules::Totals totals;
};

/// A fastener at hand-over.
struct BoltLine {
  std::size_t bolt = 0;  ///< position, from 0
  bool present = false;
  double last_torque_nm = 0.0;
  double preload_n = 0.0;
  double clamp_n = 0.0;
  std::string locker;
  std::vector<std::string> remarks;  ///< "thread crossed", "stands on the bottom of its hole" ...
};

/// A braking face at hand-over.
struct FaceLine {
  std::string face;
  double film_worst_kg_m2 = 0.0;
  double coverage_1 = 0.0;
  double friction_factor_1 = 1.0;
};

/// The joint at hand-over.
struct JointLine {
  double clamp_n = 0.0;
  double capacity_nm = 0.0;
  double demand_nm = 0.0;
  bool slips = false;
  double clearance_m = 0.0;
  double slip_angle_rad = 0.0;
  double knock_j = 0.0;
  double bolt_shear_n = 0.0;
  double friction_1 = 0.0;
  double stop_m = 0.0;
  double runout_m = 0.0;
  double spread_1 = 0.0;                ///< largest less smallest clamp, of the mean
  std::optional<double> thickness_m;    ///< thinnest place of the track
  std::optional<double> above_stamp_m;  ///< the same less the rotor's own stamp
};

/// A job card entry: what was written against what is true.
struct CardLine {
  std::string entry;
  std::string written;  ///< empty: nothing was written
  std::string truth;    ///< what the bench holds true; empty where there is no one truth
  bool needed = true;
  bool agrees = true;
};

/// Pictures that need the bench itself.
struct ReplayPictures {
  std::vector<TorqueCurve> curves;
  std::vector<FaceFilm> films;  ///< printed side, other side
  std::vector<double> runout_m;
};

struct MarkSheet {
  std::string title;
  std::string who;       ///< may be empty
  std::string way;       ///< guided, practice, exam
  std::string scenario;  ///< its id
  std::uint64_t seed = 0;
  std::vector<std::string> drawn;  ///< what the variant held, told after the job
  rules::Overall overall = rules::Overall::NotJudged;
  std::string verdict_words;  ///< "Passed", "Not yet", "Not judged"
  std::string reason;         ///< one line
  rules::Totals totals;
  int pass_mark_milli = 0;
  base::Tick time = 0;  ///< from start to hand-over, less gaps
  std::vector<CompetenceLine> competences;
  std::vector<FindingLine> lost;  ///< what to work on: critical first, then by points lost
  std::vector<FindingLine> met;
  std::vector<FindingLine> aside;  ///< not applicable, excused, not judged
  std::vector<BoltLine> bolts;
  std::vector<FaceLine> faces;
  std::optional<JointLine> joint;
  std::optional<double> sheet_torque_nm;
  std::optional<double> sheet_torque_tolerance_nm;
  std::vector<TighteningRound> rounds;
  std::vector<CardLine> card;
  std::vector<std::string> cautions;
  std::vector<std::string> notes;  ///< rewinds, gaps, recovery, signatures, versions
  std::optional<ReplayPictures> pictures;
  double preload_lo_n = 0.0;  ///< range that the sheet's torque gives on a clean thread; 0: not known
  double preload_hi_n = 0.0;
};

}  // namespace proofstand::report
