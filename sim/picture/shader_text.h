// The texts of assets/shaders, which the build puts into the program.
#pragma once

#include <string_view>

namespace proofstand::picture {

/// name: file name in assets/shaders. Empty when there is none.
std::string_view shader_text(std::string_view name);

}  // namespace proofstand::picture
