// Elastic interaction: what tightening one bolt takes from those already tight. Practically nothing for this joint, and
// it is not made more than it is.
#pragma once

#include <cstddef>
#include <vector>

namespace proofstand::physics {

/// Couplings by ring distance 1, 2, 3 ...: the share of a pull's force change that another, already tight bolt loses.
using Couplings = std::vector<double>;

/// Thin steel carrier on a flat clean aluminium seat: own finite-element result (from memory), largest 0.0003.
Couplings measured_couplings();
/// A soft layer between rotor and hub, for demonstration only: invented for teaching (common practice, no source).
Couplings soft_layer_couplings();

/// Forces after bolt j has been pulled to a target: bolts already tight (tight[i]) keep their imposed stretch and lose
/// A_LL^-1 A_Lj dF; the others are not touched. Solved exactly for the n x n circulant matrix.
/// force_n [n], tight [n], returns [n] · source: elastic interaction method, Bibel and Ezell 1992 (content from memory)
std::vector<double> pull_one(const Couplings& couplings, const std::vector<double>& force_n,
                             const std::vector<bool>& tight, std::size_t j, double target_n);

}  // namespace proofstand::physics
