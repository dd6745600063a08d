// The catalogue's sentences for guidance and for how a run stands. Private to this floor.
#pragma once

#include <vector>

#include "sim/report/catalogue_table.h"

namespace proofstand::report {

const std::vector<Phrase>& guidance_phrases();

}  // namespace proofstand::report
