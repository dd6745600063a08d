// Where to look for a finding: the moments of the replay that prove it, the places on the parts, and the plot that
// shows it. Plain data, for the mark sheet in the window.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "sim/record/marking.h"
#include "sim/report/guidance.h"

namespace proofstand::report {

/// Which picture shows a finding best.
enum class PlotKind : std::uint8_t {
  None,
  TorqueAngle,  ///< torque over angle of one bolt, see FindingMoments::bolt
  Preload,      ///< all bolts on their circle
  Order,        ///< order of pulling on the bolt circle
  FilmMap,      ///< contamination of one face, see FindingMoments::printed_face
  Runout,       ///< round the track
};

/// One moment that a finding speaks of.
struct Moment {
  base::Tick tick = 0;
  std::size_t position = 0;         ///< of the record in the trace
  std::vector<GuideTarget> places;  ///< to highlight then
};

/// Everything to look at for one finding.
struct FindingMoments {
  rules::RuleIndex rule = rules::kNoRule;
  std::vector<Moment> moments;      ///< most telling first; at most eight; empty: it is about the whole run
  std::vector<GuideTarget> places;  ///< all places together, each once
  PlotKind plot = PlotKind::None;
  std::optional<std::size_t> bolt;   ///< position from 0, of TorqueAngle; nothing: of all bolts
  std::optional<bool> printed_face;  ///< of FilmMap: the printed side, or the other; nothing: both
};

/// One entry for each rule, by rule index.
std::vector<FindingMoments> compute_moments(const record::Marking& marking);

}  // namespace proofstand::report
