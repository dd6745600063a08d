// A reference job left off after any of its lines: what a colleague finds who takes over.
#pragma once

#include <string>
#include <vector>

namespace proofstand::testing {

/// Lines of a hand script, comments left out and its blocks (one deep) written out.
std::vector<std::string> written_out(const std::string& script);
/// The first `lines` of them as a script.
std::string cut_after(const std::vector<std::string>& lines, std::size_t count);

}  // namespace proofstand::testing
