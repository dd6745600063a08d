#include "sim/scenario/node_text.h"

#include "sim/base/number_text.h"

namespace proofstand::scenario {
namespace {

bool is_bare_key(const std::string& key) {
  if (key.empty()) return false;
  for (const char c : key) {
    const bool fits =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
    if (!fits) return false;
  }
  return true;
}

std::string quoted(const std::string& text) {
  constexpr char kHex[] = "0123456789ABCDEF";
  std::string out = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\t') {
      out += "\\t";
    } else if (byte < 0x20 || byte == 0x7F) {
      out += "\\u00";
      out += kHex[byte >> 4];
      out += kHex[byte & 15];
    } else {
      out += c;
    }
  }
  return out + "\"";
}

std::string key_text(const std::string& key) { return is_bare_key(key) ? key : quoted(key); }

bool is_table_list(const Node& node) {
  if (!node.is_list() || node.members.empty()) return false;
  for (const Member& member : node.members) {
    if (!member.node.is_table()) return false;
  }
  return true;
}

/// Values that stand on the line of their key. Tables inside mixed lists are the only inline tables.
std::string value_text(const Node& node) {
  switch (node.kind) {
    case NodeKind::Text:
      return quoted(node.text);
    case NodeKind::Integer:
      return base::text_from_int(node.integer);
    case NodeKind::Flag:
      return node.flag ? "true" : "false";
    case NodeKind::Real: {
      // without a point or exponent it would come back as an integer
      const std::string text = base::text_from_double(node.real_1);
      return text.find_first_of(".e") == std::string::npos ? text + ".0" : text;
    }
    case NodeKind::List:
    case NodeKind::Table:
      break;
  }
  std::string out = node.is_list() ? "[" : "{";
  for (const Member& member : node.members) {
    if (out.size() > 1) out += ", ";
    if (node.is_table()) out += key_text(member.key) + " = ";
    out += value_text(member.node);
  }
  return out + (node.is_list() ? "]" : "}");
}

void write_table(const Node& table, const std::string& path, std::string& out) {
  for (const Member& member : table.members) {
    if (member.node.is_table() || is_table_list(member.node)) continue;
    out += key_text(member.key) + " = " + value_text(member.node) + "\n";
  }
  for (const Member& member : table.members) {
    const std::string full = path.empty() ? key_text(member.key) : path + "." + key_text(member.key);
    if (member.node.is_table()) {
      out += "\n[" + full + "]\n";
      write_table(member.node, full, out);
    } else if (is_table_list(member.node)) {
      for (const Member& element : member.node.members) {
        out += "\n[[" + full + "]]\n";
        write_table(element.node, full, out);
      }
    }
  }
}

}  // namespace

std::string toml_from_node(const Node& root) {
  std::string out;
  write_table(root, "", out);
  return out;
}

}  // namespace proofstand::scenario
