// Danger: a changed line passes as whole, or draws depend on the machine. Vectors are published ones.
#include <string>

#include "sim/base/byte_stream.h"
#include "sim/base/hash.h"
#include "tests/support/catch.h"

using namespace proofstand::base;

TEST_CASE("digests are BLAKE2b of 32 bytes") {
  // published: RFC 7693 defines the function; these two digests are those of the reference tool b2sum -l 256
  CHECK(digest_text(digest_of("")) == "0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8");
  CHECK(digest_text(digest_of("abc")) == "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
}

TEST_CASE("a chain digest is the digest of both parts in a row") {
  const Digest first = digest_of("one");
  const std::string joined(first.begin(), first.end());
  CHECK(chain_digest(first, "two") == digest_of(joined + "two"));
  CHECK(chain_digest(first, "two") != chain_digest(digest_of("One"), "two"));
}

TEST_CASE("keyed words are SipHash-2-4") {
  // published: first and sixteenth vector of the SipHash paper, key 00..0f
  CHECK(keyed_word(0x0706050403020100ULL, 0x0f0e0d0c0b0a0908ULL, "") == 0x726fdb47dd0e0e31ULL);
  std::string bytes;
  for (char c = 0; c < 15; ++c) bytes.push_back(c);
  CHECK(keyed_word(0x0706050403020100ULL, 0x0f0e0d0c0b0a0908ULL, bytes) == 0xa129ca6149be45e5ULL);
}

TEST_CASE("bytes go out little-endian and come back; reading past the end only fails") {
  ByteWriter out;
  out.put(std::uint64_t{1});
  out.put(std::int64_t{-2});
  out.put(-0.0);
  out.put(true);
  out.put(std::string_view("text"));
  CHECK(out.bytes().substr(0, 8) == std::string("\1\0\0\0\0\0\0\0", 8));
  CHECK(out.bytes().substr(16, 8) == std::string(8, '\0'));
  ByteReader in(out.bytes());
  CHECK(in.word() == 1);
  CHECK(in.number() == -2);
  CHECK(in.real() == 0.0);
  CHECK(in.flag());
  CHECK(in.text() == "text");
  CHECK(in.at_end());
  CHECK_FALSE(in.failed());
  CHECK(in.word() == 0);
  CHECK(in.failed());
  ByteReader lying(std::string_view("\xff\xff\xff\xff\xff\xff\xff\x7f", 8));
  CHECK(lying.text().empty());
  CHECK(lying.failed());
}
