#include "sim/scenario/toml_text.h"

#include <stdexcept>

namespace proofstand::scenario {
namespace {

// the parser checks its own assumptions by ending the program, or not at all; some malformed texts break them, so a
// broken one is an exception like any other fault here
constexpr void parser_assumes(bool holds) {
  if (!holds) throw std::logic_error("malformed beyond what the parser can place");
}

}  // namespace
}  // namespace proofstand::scenario

#undef NDEBUG
#define TOML_ASSERT(...) ::proofstand::scenario::parser_assumes(static_cast<bool>(__VA_ARGS__))
#define TOML_ENABLE_FORMATTERS 0
#define TOML_ENABLE_UNRELEASED_FEATURES 0
#include <toml++/toml.h>
#include <algorithm>
#include <exception>
#include <string>
#include <utility>

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/scenario/nesting_guard.h"

namespace proofstand::scenario {
namespace {

std::string line_column(const toml::source_region& region) {
  return base::text_from_int(static_cast<std::int64_t>(region.begin.line)) + ":" +
         base::text_from_int(static_cast<std::int64_t>(region.begin.column));
}

/// One conversion: where it is, and the first thing that cannot be taken.
class Conversion {
 public:
  explicit Conversion(std::size_t file) : file_(file) {}

  Node take(const toml::node& from, int depth) {
    Node node;
    node.at = spot(from.source());
    if (depth > kDeepestNesting) {
      refuse("S01", from, "tables and lists lie more than 32 deep inside each other", "flatten the file");
      return node;
    }
    if (const auto* table = from.as_table()) {
      take_table(*table, node, depth);
    } else if (const auto* list = from.as_array()) {
      node.kind = NodeKind::List;
      for (const toml::node& element : *list)
        node.members.push_back({"", spot(element.source()), take(element, depth + 1)});
    } else if (const auto* text = from.as_string()) {
      node.kind = NodeKind::Text;
      node.text = text->get();
    } else if (const auto* integer = from.as_integer()) {
      node.kind = NodeKind::Integer;
      node.integer = integer->get();
    } else if (const auto* real = from.as_floating_point()) {
      node.kind = NodeKind::Real;
      node.real_1 = real->get();
      // infinities and not-a-number have no place in a scenario
      if (!(node.real_1 > -1e300 && node.real_1 < 1e300))
        refuse("S01", from, "this number is not finite", "write a plain number");
    } else if (const auto* flag = from.as_boolean()) {
      node.kind = NodeKind::Flag;
      node.flag = flag->get();
    } else {
      refuse("S01", from, "dates and times mean nothing in a scenario", "write a text, a number, true or false");
    }
    return node;
  }

  [[nodiscard]] const std::optional<base::Error>& fault() const { return fault_; }

 private:
  [[nodiscard]] Spot spot(const toml::source_region& region) const {
    return {file_, static_cast<int>(region.begin.line), static_cast<int>(region.begin.column)};
  }

  // the parser sorts keys; people and canonical texts want the order of the file
  void take_table(const toml::table& table, Node& node, int depth) {
    node.kind = NodeKind::Table;
    for (const auto& [key, value] : table) {
      node.members.push_back({std::string(key.str()), spot(key.source()), take(value, depth + 1)});
    }
    std::stable_sort(node.members.begin(), node.members.end(), [](const Member& a, const Member& b) {
      return std::pair(a.key_at.line, a.key_at.column) < std::pair(b.key_at.line, b.key_at.column);
    });
    // a table that only came about through the headers of its parts stands nowhere itself
    if (node.at.line == 0 && !node.members.empty()) node.at = node.members.front().key_at;
  }

  void refuse(const char* code, const toml::node& at, const char* what, const char* instead) {
    if (!fault_) fault_ = base::Error{code, line_column(at.source()), what, instead, false};
  }

  std::size_t file_;
  std::optional<base::Error> fault_;
};

}  // namespace

base::Result<Node> parse_toml(std::string_view text, std::size_t file) {
  if (text.size() > kMostFileBytes) {
    return base::Error{"S01", "", "the file is larger than 1 MiB", "split it, or check that it is a scenario at all",
                       false};
  }
  if (!base::is_clean_text(text)) {
    return base::Error{"S01", "", "the file is not plain UTF-8 text", "save it as UTF-8 without control characters",
                       false};
  }
  if (const auto line = line_too_deep(text, kDeepestNesting)) {
    return base::Error{"S01", base::text_from_int(*line) + ":1",
                       "tables and lists lie more than 32 deep inside each other", "flatten the file", false};
  }
  // the parser throws on faults and may run out of memory; nothing of that leaves this function
  try {
    const toml::table table = toml::parse(text);
    Conversion conversion(file);
    Node node = conversion.take(table, 0);
    if (conversion.fault()) return *conversion.fault();
    return node;
  } catch (const toml::parse_error& error) {
    return base::Error{"E01", line_column(error.source()), std::string(error.description()),
                       "see the page on scenario files for the form of values", false};
  } catch (const std::exception& error) {
    return base::Error{"E01", "", std::string("cannot be read: ") + error.what(), "check the file", false};
  }
}

}  // namespace proofstand::scenario
