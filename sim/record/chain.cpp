#include "sim/record/chain.h"

#include "sim/base/assert.h"
#include "sim/base/hash.h"

namespace proofstand::record {
namespace {

constexpr std::string_view kZeros = "0000000000000000000000000000000000000000000000000000000000000000";
constexpr std::string_view kOpen = ",\"hash\":\"";
constexpr std::string_view kClose = "\"}";

std::string hash_text(std::string_view previous, std::string_view bytes) {
  return base::digest_text(base::digest_of(std::string(previous) + std::string(bytes)));
}

}  // namespace

std::string_view chain_start() { return kZeros; }

std::string sealed(std::string_view previous, std::string_view object_text) {
  STAND_ASSERT(object_text.size() > 2 && object_text.back() == '}');
  const std::string_view before = object_text.substr(0, object_text.size() - 1);
  return std::string(before) + std::string(kOpen) + hash_text(previous, before) + std::string(kClose);
}

Link link_of(std::string_view previous, std::string_view line) {
  Link link;
  const std::size_t tail = kOpen.size() + kZeros.size() + kClose.size();
  if (line.size() <= tail || line.substr(line.size() - kClose.size()) != kClose) return link;
  const std::size_t open_at = line.size() - tail;
  if (line.substr(open_at, kOpen.size()) != kOpen) return link;
  link.before = line.substr(0, open_at);
  link.hash = line.substr(open_at + kOpen.size(), kZeros.size());
  link.seal = link.hash == hash_text(previous, link.before) ? Seal::Right : Seal::Wrong;
  return link;
}

}  // namespace proofstand::record
