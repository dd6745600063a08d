#include "sim/base/hash.h"

#include <sodium.h>

#include <cstring>

#include "sim/base/assert.h"

namespace proofstand::base {
namespace {

void put_little_endian(std::uint64_t word, unsigned char* out) {
  for (int i = 0; i < 8; ++i) out[i] = static_cast<unsigned char>(word >> (8 * i));
}

const unsigned char* bytes_of(std::string_view text) { return reinterpret_cast<const unsigned char*>(text.data()); }

}  // namespace

Digest digest_of(std::string_view bytes) {
  Digest digest{};
  STAND_ASSERT(crypto_generichash(digest.data(), digest.size(), bytes_of(bytes), bytes.size(), nullptr, 0) == 0);
  return digest;
}

Digest chain_digest(const Digest& previous, std::string_view bytes) {
  crypto_generichash_state state;
  Digest digest{};
  STAND_ASSERT(crypto_generichash_init(&state, nullptr, 0, digest.size()) == 0);
  crypto_generichash_update(&state, previous.data(), previous.size());
  crypto_generichash_update(&state, bytes_of(bytes), bytes.size());
  crypto_generichash_final(&state, digest.data(), digest.size());
  return digest;
}

std::string digest_text(const Digest& digest) {
  char text[2 * sizeof(Digest) + 1];
  sodium_bin2hex(text, sizeof text, digest.data(), digest.size());
  return text;
}

std::uint64_t keyed_word(std::uint64_t key_lo, std::uint64_t key_hi, std::string_view bytes) {
  unsigned char key[crypto_shorthash_KEYBYTES];
  static_assert(sizeof key == 16);
  put_little_endian(key_lo, key);
  put_little_endian(key_hi, key + 8);
  unsigned char out[crypto_shorthash_BYTES];
  static_assert(sizeof out == 8);
  crypto_shorthash(out, bytes_of(bytes), bytes.size(), key);
  std::uint64_t word = 0;
  for (int i = 7; i >= 0; --i) word = (word << 8) | out[i];
  return word;
}

}  // namespace proofstand::base
