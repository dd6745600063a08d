# The shaders become part of the program, so that they are found whatever the working directory.
file(GLOB shader_files CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/assets/shaders/*)
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${shader_files})
set(shader_cases "")
foreach(shader IN LISTS shader_files)
  get_filename_component(shader_name ${shader} NAME)
  file(READ ${shader} shader_words)
  string(APPEND shader_cases "  if (name == \"${shader_name}\") return R\"shader(${shader_words})shader\";\n")
endforeach()
file(CONFIGURE OUTPUT ${CMAKE_CURRENT_BINARY_DIR}/shaders/shader_text.cpp @ONLY CONTENT
"// written by sim/picture/shaders.cmake from assets/shaders
#include \"sim/picture/shader_text.h\"

namespace proofstand::picture {

std::string_view shader_text(std::string_view name) {
@shader_cases@  return {};
}

}  // namespace proofstand::picture
")
target_sources(stand_picture PRIVATE ${CMAKE_CURRENT_BINARY_DIR}/shaders/shader_text.cpp)
