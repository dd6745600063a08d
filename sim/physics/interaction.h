// Elastic interaction of bolts in a ring: tightening one takes a little from those already tight. For a thin rotor on a
// stiff hub it is practically nothing; a soft layer makes it visible, for demonstration.
#pragma once

#include <cstddef>
#include <vector>

namespace proofstand::physics {

/// Coefficients by distance round the ring: share_1[k] is lost at distance k+1 for a newton gained.
struct InteractionRow {
  std::vector<double> share_1;
};
/// Clean flat seat: 0, 0.0003, 0. source: own finite-element result
InteractionRow clean_seat_interaction();
/// Raised bosses in contact, as computed: -0.00006, 0.00025, -0.00007. source: own finite-element result
InteractionRow boss_seat_interaction();
/// A soft layer, invented for demonstration: 0.05, 0.02, 0.01. common practice, no source
InteractionRow soft_layer_interaction();

/// Symmetric circulant matrix of relative compliances [count x count], row-major, 1 on the diagonal.
/// count  > 0; distances beyond the row are 0
std::vector<double> interaction_matrix_1(const InteractionRow& row, std::size_t count);

/// Bolt `pulled` is tightened to target_n; locked bolts keep their stretch, so their force changes by
/// -A_LL^-1 A_Lj dF. Loose bolts (locked[i] false) do not change.
/// preload_n, locked  one a bolt; matrix as above
/// returns            preloads after the pull, none below 0
/// source             method: J. Pressure Vessel Technol. 114 (1992) 439-443 (content from memory)
std::vector<double> pull_one_n(const std::vector<double>& matrix_1, const std::vector<double>& preload_n,
                               const std::vector<bool>& locked, std::size_t pulled, double target_n);
/// The same for the weakly coupled case, in one pass and without solving: for every tick of a bench.
std::vector<double> pull_one_weak_n(const InteractionRow& row, const std::vector<double>& preload_n,
                                    const std::vector<bool>& locked, std::size_t pulled, double gained_n);

}  // namespace proofstand::physics
