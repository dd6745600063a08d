#include "sim/scenario/node.h"

#include <algorithm>
#include <utility>

namespace proofstand::scenario {

const Node* Node::find(std::string_view key) const {
  for (const Member& member : members) {
    if (member.key == key) return &member.node;
  }
  return nullptr;
}

Node* Node::find(std::string_view key) { return const_cast<Node*>(std::as_const(*this).find(key)); }

void set_member(Node& table, const std::string& key, Node value) {
  if (Node* there = table.find(key)) {
    *there = std::move(value);
    return;
  }
  const Spot at = value.at;
  table.members.push_back({key, at, std::move(value)});
}

void remove_member(Node& table, std::string_view key) {
  auto& list = table.members;
  list.erase(std::remove_if(list.begin(), list.end(), [key](const Member& m) { return m.key == key; }), list.end());
}

Node text_node(std::string text, Spot at) {
  Node node;
  node.kind = NodeKind::Text;
  node.text = std::move(text);
  node.at = at;
  return node;
}

Node table_node(Spot at) {
  Node node;
  node.at = at;
  return node;
}

Node integer_node(std::int64_t value, Spot at) {
  Node node;
  node.kind = NodeKind::Integer;
  node.integer = value;
  node.at = at;
  return node;
}

}  // namespace proofstand::scenario
