// A scenario file as a plain tree: every value with the file, line and column it came from. Made by toml_text, changed
// only by includes and variants, read by field_reader. Tables keep the order of the file.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace proofstand::scenario {

/// Where something stands. `file` indexes the list of files read; lines and columns count from 1, line 0 is unknown.
struct Spot {
  std::size_t file = 0;
  int line = 0;
  int column = 0;
};

enum class NodeKind : std::uint8_t { Table, List, Text, Integer, Real, Flag };

struct Member;

/// One value. Only what its kind says is meaningful.
struct Node {
  NodeKind kind = NodeKind::Table;
  Spot at;
  std::string text;
  std::int64_t integer = 0;
  double real_1 = 0.0;
  bool flag = false;
  std::vector<Member> members;  ///< of a table by key, in file order; of a list with empty keys

  /// The value of a key of a table, or nullptr.
  [[nodiscard]] const Node* find(std::string_view key) const;
  [[nodiscard]] Node* find(std::string_view key);
  [[nodiscard]] bool is_table() const { return kind == NodeKind::Table; }
  [[nodiscard]] bool is_list() const { return kind == NodeKind::List; }
};

/// A key and its value.
struct Member {
  std::string key;
  Spot key_at;
  Node node;
};

/// Sets a key of a table, replacing what was there (in its place).
void set_member(Node& table, const std::string& key, Node value);
/// Takes a key out of a table; nothing when it is not there.
void remove_member(Node& table, std::string_view key);
/// A text or an empty table at a place, for building trees.
Node text_node(std::string text, Spot at);
Node table_node(Spot at);
Node integer_node(std::int64_t value, Spot at);

}  // namespace proofstand::scenario
