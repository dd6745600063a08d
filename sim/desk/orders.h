// What a card asks of the window when something on it is pressed. Cards change nothing themselves.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "sim/desk/commands.h"

namespace proofstand::desk {

enum class OrderKind : std::uint8_t {
  Command,  ///< command, count, fine: as its key would
  ActOn,    ///< index of the list, verb
  Choose,   ///< index of the list
  Write,    ///< index of the card entry, text
  HandOver,
  StartJob,     ///< text: scenario file; way: 0 guided, 1 practice, 2 exam
  GoOn,         ///< text: attempt file
  Review,       ///< text: attempt file: its mark sheet
  ToStart,      ///< leave for the start sheet; the attempt is kept
  Rewind,       ///< tick: go on from there
  Peek,         ///< tick: look at that moment only
  ShowWhere,    ///< the places that guidance names
  ShowLate,     ///< tick: offered by a card that says something is too late
  ShowFinding,  ///< index into the mark sheet's lines
  SaveHtml,
  NamedView,       ///< text
  ChangeSettings,  ///< the settings were edited: keep them
  FoldSide,        ///< the side card goes away
  Quit,
};

struct Order {
  OrderKind kind = OrderKind::Command;
  CommandId command = CommandId::Help;
  int count = 1;
  bool fine = false;
  std::size_t index = 0;
  hand::Verb verb = hand::Verb::Natural;
  int way = 0;
  base::Tick tick = 0;
  std::string text;
};

using Orders = std::vector<Order>;

inline Order order_command(CommandId id, int count = 1, bool fine = false) {
  Order out;
  out.command = id;
  out.count = count;
  out.fine = fine;
  return out;
}
inline Order order(OrderKind kind, std::string text = {}) {
  Order out;
  out.kind = kind;
  out.text = std::move(text);
  return out;
}
inline Order order_at(OrderKind kind, base::Tick tick) {
  Order out;
  out.kind = kind;
  out.tick = tick;
  return out;
}

}  // namespace proofstand::desk
