// Opens the stand's window and lives in it until it is closed; or draws it once without a display.
#pragma once

#include <string>

#include "sim/base/result.h"
#include "sim/desk/window/stand.h"

namespace proofstand::desk {

struct StandRun {
  StandAsk stand;
  std::string language;  ///< empty: as set before
  int text_percent = 0;  ///< 0: as set before
  std::string picture;   ///< PNG file; empty: a real window
  std::string size = "1280x720";
};

/// errors: no-window, no-opengl; those of Stand::open; size; file-write
base::Result<base::Done> run_stand(const StandRun& run);

/// "1280x720" to two numbers. errors: size
base::Result<glm::ivec2> size_from_words(const std::string& words);

}  // namespace proofstand::desk
