// Hashes, from a library kept behind this one file: chain hashes of records, state hashes, keyed words for random
// draws.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace proofstand::base {

/// 256-bit BLAKE2b (RFC 7693).
using Digest = std::array<std::uint8_t, 32>;

/// Digest of the bytes.
Digest digest_of(std::string_view bytes);
/// Digest of previous followed by the bytes: one step of a chain.
Digest chain_digest(const Digest& previous, std::string_view bytes);
/// 64 lower-case hexadecimal digits.
std::string digest_text(const Digest& digest);
/// 64-bit SipHash-2-4 of the bytes under a 128-bit key made of two words; the ground of all random draws.
std::uint64_t keyed_word(std::uint64_t key_lo, std::uint64_t key_hi, std::string_view bytes);

}  // namespace proofstand::base
