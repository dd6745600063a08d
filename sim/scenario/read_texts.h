// What people read and how the exercise is framed: title, task, cautions, stages, languages, time limit.
#pragma once

#include "sim/scenario/field_reader.h"
#include "sim/scenario/scenario.h"

namespace proofstand::scenario {

/// Names of all stages of the whole job, in the order of work.
const std::vector<std::string_view>& stage_names();
/// reader: of the whole file.
void read_texts(FieldReader& reader, DrawnScenario& scenario);
/// S08 for every text that lacks a declared language.
void check_languages(const Reading& reading, const Node& root, const DrawnScenario& scenario);

}  // namespace proofstand::scenario
