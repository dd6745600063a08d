#if defined(STAND_LUA)
#include <cstdio>
#include <cstdlib>
#include <lua.hpp>

#include "tests/speed/rules_bench.h"

namespace proofstand::speed {
namespace {

constexpr const char* kScript = R"(
local never = -1000000000
local last, checks, lost = {}, {}, 0
for k = 0, 23 do last[k] = never; checks[k] = {} end
local makers = {
  [0] = function(p, r) return function(i) if i - last[p] > 100 then lost = lost + 1 end end end,
  [1] = function(p, r) return function(i) if last[p] > last[r] then lost = lost + 1 end end end,
  [2] = function(p, r) return function(i) if last[r] == never then lost = lost + 1 end end end,
  [3] = function(p, r) return function(i) if last[p] == never or last[r] > last[p] then lost = lost + 1 end end end,
}
for i = 0, 19 do
  local q = (i + 1) % 24
  checks[q][#checks[q] + 1] = makers[i % 4](i, (i + 2) % 24)
end
function begin() lost = 0; for k = 0, 23 do last[k] = never end end
function take(kind, index)
  for _, check in ipairs(checks[kind]) do check(index) end
  last[kind] = index
end
function count() return lost end
)";

}  // namespace

LuaTwenty::LuaTwenty() {
  lua_State* state = luaL_newstate();
  luaL_openlibs(state);
  if (luaL_dostring(state, kScript) != LUA_OK) {
    std::fprintf(stderr, "%s\n", lua_tostring(state, -1));
    std::abort();
  }
  lua = state;
}

LuaTwenty::~LuaTwenty() { lua_close(static_cast<lua_State*>(lua)); }

std::int64_t LuaTwenty::take(const Records& records) {
  auto* state = static_cast<lua_State*>(lua);
  lua_getglobal(state, "begin");
  lua_call(state, 0, 0);
  lua_getglobal(state, "take");
  lua_Integer index = 0;
  for (const event::Record& record : records) {
    lua_pushvalue(state, -1);
    lua_pushinteger(state, record.kind);
    lua_pushinteger(state, index++);
    lua_call(state, 2, 0);
  }
  lua_pop(state, 1);
  lua_getglobal(state, "count");
  lua_call(state, 0, 1);
  const auto lost = static_cast<std::int64_t>(lua_tointeger(state, -1));
  lua_pop(state, 1);
  return lost;
}

}  // namespace proofstand::speed
#endif
