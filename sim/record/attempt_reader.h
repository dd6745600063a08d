// Reads attempts and says what is wrong with one that was damaged or changed.
#pragma once

#include <string>
#include <string_view>

#include "sim/record/attempt.h"

namespace proofstand::record {

/// From bytes. A torn last line (no final line end, not closed) is left out and counted in torn_bytes.
/// errors: not-an-attempt, newer-format, bad-head; changed: a line whose seal is wrong, missing, or out of turn, with
/// its number; bad-json, bad-actions, bad-trace, bad-line: sealed, yet not as the program writes it
base::Result<Attempt> read_attempt(std::string_view bytes, std::string_view name);
/// From a file. errors: also those of load_bytes()
base::Result<Attempt> load_attempt(const std::string& path);

/// What a torn last line cost, in words; empty when nothing was torn.
std::string torn_words(const Attempt& attempt);

}  // namespace proofstand::record
