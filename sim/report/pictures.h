// The mark sheet's pictures: what the bench computed, drawn. Each takes plain numbers and gives one drawing.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace proofstand::report {

/// What the pictures of one attempt are drawn from. SI; bolts in the order of their positions.
struct JointFigures {
  std::vector<std::optional<double>> preload_n;  ///< per position; nothing where there is no bolt
  double preload_lo_n = 0.0;                     ///< range that the sheet's torque gives, for comparison; 0: not known
  double preload_hi_n = 0.0;
};

/// One round of tightening, in the order the bolts were pulled (positions from 0).
using TighteningRound = std::vector<std::size_t>;

/// A bolt's torque over its turning while it was pulled tight, over all visits; angle counted from the first snug.
struct TorqueCurve {
  std::size_t bolt = 0;
  std::vector<double> angle_rad;
  std::vector<double> torque_nm;
  std::vector<std::size_t> clicks;  ///< indices into the two lists
};

/// Film load over a braking face [kg/m²], [sectors x rings] row-major, ring 0 innermost, sector 0 to the right and on
/// counter-clockwise as seen on that face.
struct FaceFilm {
  std::size_t sectors = 0;
  std::size_t rings = 0;
  std::vector<double> load_kg_m2;
};

/// Preload per bolt as a polar picture on the bolt circle, with the range that the sheet's torque gives as a wash.
std::string draw_preload(const JointFigures& figures);
/// The order in which bolts were pulled, round by round, as numbered stations on the bolt circle. bolts: how many
/// positions.
std::string draw_order(std::size_t bolts, const std::vector<TighteningRound>& rounds);
/// Torque over angle of one bolt, with the sheet's band and the clicks. angle_max_rad, torque_max_nm: common to all
/// bolts.
std::string draw_torque(const TorqueCurve& curve, double sheet_lo_nm, double sheet_hi_nm, double angle_max_rad,
                        double torque_max_nm);
/// Contamination of one face; darker is more, hatched above the load that covers most of the surface.
std::string draw_film(std::string_view face_words, const FaceFilm& film);
/// Lateral runout round the track [m], equally spaced over one turn; limit 0: none stated.
std::string draw_runout(const std::vector<double>& runout_m, double limit_m);
/// What friction under the bolts can carry against what a hard stop asks.
std::string draw_hard_stop(double capacity_nm, double demand_nm);

}  // namespace proofstand::report
