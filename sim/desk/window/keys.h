// The keys of the card library's input, and those of the command table: one list.
#pragma once

#include <imgui.h>

#include <optional>

#include "sim/desk/commands.h"

namespace proofstand::desk {

/// Keys that commands may use, pressed since the last frame; repeats by holding do not count.
std::vector<Chord> chords_pressed();
ImGuiKey imgui_key(Key key);

}  // namespace proofstand::desk
