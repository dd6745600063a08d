// JSON for records, read and written behind this one file: the libraries are in json_text.cpp alone and nothing throws
// out of it. Reading gives a flat list of nodes, so that a long line costs few allocations.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/result.h"

namespace proofstand::record {

enum class JsonType : std::uint8_t { Null, Flag, Whole, Real, Text, List, Object };

/// One value. Children of lists and objects follow it in the list of nodes, depth first.
struct JsonNode {
  JsonType type = JsonType::Null;
  bool flag = false;
  std::int64_t whole = 0;  ///< of Whole
  double real_1 = 0.0;     ///< of Whole and Real
  std::string_view text;   ///< of Text
  std::string_view key;    ///< under which it stands in an object
  std::uint32_t size = 0;  ///< number of children
  std::uint32_t end = 0;   ///< index of the node after its last descendant
};

/// A place in what was read; valid until the reader reads again.
class JsonView {
 public:
  JsonView(const std::vector<JsonNode>& nodes, std::uint32_t at) : nodes_(&nodes), at_(at) {}
  [[nodiscard]] const JsonNode& node() const { return (*nodes_)[at_]; }
  [[nodiscard]] JsonType type() const { return node().type; }
  /// Members of an object, items of a list.
  [[nodiscard]] std::uint32_t size() const { return node().size; }
  /// They, in order; empty for anything else.
  class Children;
  [[nodiscard]] Children children() const;
  /// First of them; asserted to exist.
  [[nodiscard]] JsonView first() const;
  /// A member of an object by its key; nothing when this is no object or has none.
  [[nodiscard]] std::optional<JsonView> find(std::string_view key) const;
  /// The same, when it is a whole number, a text, a list ...
  [[nodiscard]] std::optional<std::int64_t> whole(std::string_view key) const;
  [[nodiscard]] std::optional<std::string_view> text(std::string_view key) const;
  [[nodiscard]] std::optional<JsonView> list(std::string_view key) const;

 private:
  const std::vector<JsonNode>* nodes_;
  std::uint32_t at_;
};

/// Goes from sibling to sibling.
class JsonView::Children {
 public:
  class Step {
   public:
    Step(const std::vector<JsonNode>& nodes, std::uint32_t at) : nodes_(&nodes), at_(at) {}
    JsonView operator*() const { return {*nodes_, at_}; }
    Step& operator++() {
      at_ = (*nodes_)[at_].end;
      return *this;
    }
    bool operator!=(const Step& other) const { return at_ != other.at_; }

   private:
    const std::vector<JsonNode>* nodes_;
    std::uint32_t at_;
  };
  Children(const std::vector<JsonNode>& nodes, std::uint32_t parent) : nodes_(&nodes), parent_(parent) {}
  [[nodiscard]] Step begin() const { return {*nodes_, parent_ + 1}; }
  [[nodiscard]] Step end() const { return {*nodes_, (*nodes_)[parent_].end}; }

 private:
  const std::vector<JsonNode>* nodes_;
  std::uint32_t parent_;
};
inline JsonView::Children JsonView::children() const { return {*nodes_, at_}; }

/// Reads one document after another, reusing its memory.
class JsonReader {
 public:
  JsonReader();
  ~JsonReader();
  JsonReader(JsonReader&&) noexcept;
  JsonReader& operator=(JsonReader&&) noexcept;
  /// where: for messages. Nesting is limited to 24, the size to 64 MiB.
  /// errors: bad-json: no JSON, not UTF-8, too deep, too long, numbers out of range
  base::Result<JsonView> read(std::string_view text, std::string_view where);

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

/// Writes one document, member by member; commas come by themselves. Texts that are not UTF-8 are mended on the way.
class JsonWriter {
 public:
  JsonWriter& begin_object();
  JsonWriter& end_object();
  JsonWriter& begin_list();
  JsonWriter& end_list();
  JsonWriter& key(std::string_view name);
  JsonWriter& whole(std::int64_t number);
  /// Shortest text that reads back to the same double; number_1 finite.
  JsonWriter& real(double number_1);
  JsonWriter& text(std::string_view words);
  JsonWriter& flag(bool yes);
  JsonWriter& null();
  /// key and value at once.
  JsonWriter& member(std::string_view name, std::int64_t number) { return key(name).whole(number); }
  JsonWriter& member(std::string_view name, std::string_view words) { return key(name).text(words); }
  [[nodiscard]] const std::string& text() const { return out_; }
  void clear();

 private:
  void comma();
  std::string out_;
  bool fresh_ = true;  ///< nothing written yet at this depth, or a key stands open
};

}  // namespace proofstand::record
