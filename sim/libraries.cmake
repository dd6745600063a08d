# What the stand's picture and window are built on, each as a target: glad, window_glfw, window_imgui, window_implot.
# Dear ImGui, ImPlot and GLFW come from tests/setup/fetch-window-libraries, or from folders that a packager names.

# --- where the fetched libraries lie
if(DEFINED ENV{XDG_CACHE_HOME} AND NOT "$ENV{XDG_CACHE_HOME}" STREQUAL "")
  set(fetched $ENV{XDG_CACHE_HOME}/proofstand/window-libraries-1.93.0)
else()
  set(fetched $ENV{HOME}/.cache/proofstand/window-libraries-1.93.0)
endif()
set(PROOFSTAND_IMGUI_DIR ${fetched}/imgui CACHE PATH "Dear ImGui 1.92 or newer: the folder with imgui.h")
set(PROOFSTAND_IMPLOT_DIR ${fetched}/implot CACHE PATH "ImPlot 1.1: the folder with implot.h")
set(PROOFSTAND_GLFW_DIR ${fetched}/glfw CACHE PATH "GLFW 3.5: the folder with its CMakeLists.txt")
foreach(needed ${PROOFSTAND_IMGUI_DIR}/imgui.h ${PROOFSTAND_IMPLOT_DIR}/implot.h ${PROOFSTAND_GLFW_DIR}/CMakeLists.txt)
  if(NOT EXISTS ${needed})
    message(FATAL_ERROR "The window's libraries are missing: there is no ${needed}.\n"
            "Run tests/setup/fetch-window-libraries once, or name folders of your own with -DPROOFSTAND_IMGUI_DIR=, "
            "-DPROOFSTAND_IMPLOT_DIR= and -DPROOFSTAND_GLFW_DIR=. -DPROOFSTAND_STAND=OFF builds the bench alone.")
  endif()
endforeach()

enable_language(C)

# --- OpenGL 3.3 core through glad, generated without the network
find_program(GLAD glad REQUIRED)
set(glad_folder ${CMAKE_CURRENT_BINARY_DIR}/glad)
if(NOT EXISTS ${glad_folder}/src/gl.c)
  execute_process(COMMAND ${GLAD} --reproducible --quiet --api gl:core=3.3 --extensions GL_KHR_debug
                          --out-path ${glad_folder} c
                  RESULT_VARIABLE glad_result OUTPUT_QUIET ERROR_VARIABLE glad_said)
  if(NOT glad_result EQUAL 0)
    message(FATAL_ERROR "glad could not write the OpenGL loader: ${glad_said}")
  endif()
endif()
add_library(glad STATIC ${glad_folder}/src/gl.c)
target_include_directories(glad SYSTEM PUBLIC ${glad_folder}/include)

# --- GLFW, without what it would install or show
foreach(part BUILD_EXAMPLES BUILD_TESTS BUILD_DOCS INSTALL)
  set(GLFW_${part} OFF CACHE BOOL "" FORCE)
endforeach()
set(GLFW_LIBRARY_TYPE STATIC CACHE STRING "" FORCE)
add_subdirectory(${PROOFSTAND_GLFW_DIR} ${CMAKE_CURRENT_BINARY_DIR}/glfw EXCLUDE_FROM_ALL SYSTEM)
add_library(window_glfw INTERFACE)
target_link_libraries(window_glfw INTERFACE glfw)
target_compile_definitions(window_glfw INTERFACE GLFW_INCLUDE_NONE)  # else it asks for GL/gl.h

# --- Dear ImGui with its two backends. Its own loader wants libGL by name; glad is content with whatever gave the context.
add_library(window_imgui STATIC EXCLUDE_FROM_ALL ${PROOFSTAND_IMGUI_DIR}/imgui.cpp ${PROOFSTAND_IMGUI_DIR}/imgui_draw.cpp
            ${PROOFSTAND_IMGUI_DIR}/imgui_tables.cpp ${PROOFSTAND_IMGUI_DIR}/imgui_widgets.cpp
            ${PROOFSTAND_IMGUI_DIR}/misc/cpp/imgui_stdlib.cpp ${PROOFSTAND_IMGUI_DIR}/backends/imgui_impl_glfw.cpp
            ${PROOFSTAND_IMGUI_DIR}/backends/imgui_impl_opengl3.cpp)
if(EXISTS ${PROOFSTAND_IMGUI_DIR}/imgui_stacklayout.cpp)  # of the fetched edition: its core calls it
  target_sources(window_imgui PRIVATE ${PROOFSTAND_IMGUI_DIR}/imgui_stacklayout.cpp)
endif()
target_include_directories(window_imgui SYSTEM PUBLIC ${PROOFSTAND_IMGUI_DIR} ${PROOFSTAND_IMGUI_DIR}/backends
                           ${PROOFSTAND_IMGUI_DIR}/misc/cpp)
target_compile_definitions(window_imgui PUBLIC IMGUI_DISABLE_OBSOLETE_FUNCTIONS)
set_property(SOURCE ${PROOFSTAND_IMGUI_DIR}/backends/imgui_impl_opengl3.cpp APPEND PROPERTY
             COMPILE_OPTIONS -DIMGUI_IMPL_OPENGL_LOADER_CUSTOM -include glad/gl.h)
target_link_libraries(window_imgui PUBLIC window_glfw glad)
# how the window wants its failed assertions told, where it says so
if(EXISTS ${CMAKE_CURRENT_SOURCE_DIR}/sim/desk/window/imgui_settings.h)
  target_compile_definitions(window_imgui PUBLIC IMGUI_USER_CONFIG="sim/desk/window/imgui_settings.h")
  target_include_directories(window_imgui PUBLIC ${CMAKE_CURRENT_SOURCE_DIR})
endif()

# --- ImPlot, for two kinds of numbers only: all kinds take a minute and a gigabyte to compile
add_library(window_implot STATIC EXCLUDE_FROM_ALL ${PROOFSTAND_IMPLOT_DIR}/implot.cpp
            ${PROOFSTAND_IMPLOT_DIR}/implot_items.cpp)
target_include_directories(window_implot SYSTEM PUBLIC ${PROOFSTAND_IMPLOT_DIR})
target_compile_definitions(window_implot PUBLIC "IMPLOT_CUSTOM_NUMERIC_TYPES=(float)(double)")
target_link_libraries(window_implot PUBLIC window_imgui)
