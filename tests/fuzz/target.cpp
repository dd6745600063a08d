// One fuzzer a reader: PROOFSTAND_READER is set by the build.
#include <cstdint>

#include "tests/fuzz/readers.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const auto read = proofstand::fuzz::PROOFSTAND_READER(bytes);
  // a refusal without a reason is a find like any crash
  if (!read.usable && read.errors.empty()) __builtin_trap();
  for (const auto& error : read.errors) {
    if (error.what.empty() || error.instead.empty()) __builtin_trap();
  }
  return 0;
}
