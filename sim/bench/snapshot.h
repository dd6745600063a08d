// State as bytes and back, its hash, and the first field in which two states differ. All three come from the lists of
// fields in the state's structs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/base/hash.h"
#include "sim/bench/state.h"

namespace proofstand::bench {

/// Every field of a state, in declared order.
std::string state_bytes(const BenchState& state);
/// Reads them into a state whose lists already have their sizes (a fresh bench of the same setup). False, with the
/// state spoiled, when there are too few or too many bytes.
bool read_state_bytes(std::string_view bytes, BenchState& state);

/// Digests of braking faces by version, so that untouched faces are not hashed again.
struct FaceDigests {
  std::vector<base::Digest>& digests;
  std::vector<std::int64_t>& versions;
};
base::Digest hash_of_state(const BenchState& state, FaceDigests kept);

}  // namespace proofstand::bench
