#include "sim/record/json_text.h"

#include <simdjson.h>

#include <exception>
#include <nlohmann/json.hpp>

#include "sim/base/number_text.h"

namespace proofstand::record {
namespace {

constexpr std::size_t kDeepest = 24;
constexpr std::size_t kLongest = std::size_t{64} << 20;

using simdjson::dom::element;
using simdjson::dom::element_type;

void add(std::vector<JsonNode>& nodes, const element& value, std::string_view key);

void add_children(std::vector<JsonNode>& nodes, const simdjson::dom::array& list) {
  for (const element child : list) add(nodes, child, {});
}
void add_children(std::vector<JsonNode>& nodes, const simdjson::dom::object& object) {
  for (const auto member : object) add(nodes, member.value, member.key);
}

// depth is bounded by the parser's own limit
void add(std::vector<JsonNode>& nodes, const element& value, std::string_view key) {
  const std::size_t at = nodes.size();
  JsonNode node;
  node.key = key;
  nodes.push_back(node);
  simdjson::dom::array list;
  simdjson::dom::object object;
  std::uint64_t large = 0;
  switch (value.type()) {
    case element_type::ARRAY:
      node.type = JsonType::List;
      if (value.get(list) == simdjson::SUCCESS) {
        node.size = static_cast<std::uint32_t>(list.size());
        add_children(nodes, list);
      }
      break;
    case element_type::OBJECT:
      node.type = JsonType::Object;
      if (value.get(object) == simdjson::SUCCESS) {
        node.size = static_cast<std::uint32_t>(object.size());
        add_children(nodes, object);
      }
      break;
    case element_type::INT64:
      node.type = JsonType::Whole;
      if (value.get(node.whole) == simdjson::SUCCESS) node.real_1 = static_cast<double>(node.whole);
      break;
    case element_type::UINT64:
      // beyond what a whole number here can hold: a plain number
      node.type = JsonType::Real;
      if (value.get(large) == simdjson::SUCCESS) node.real_1 = static_cast<double>(large);
      break;
    case element_type::DOUBLE:
      node.type = JsonType::Real;
      if (value.get(node.real_1) != simdjson::SUCCESS) node.real_1 = 0.0;
      break;
    case element_type::STRING:
      node.type = JsonType::Text;
      if (value.get(node.text) != simdjson::SUCCESS) node.text = {};
      break;
    case element_type::BOOL:
      node.type = JsonType::Flag;
      if (value.get(node.flag) != simdjson::SUCCESS) node.flag = false;
      break;
    case element_type::NULL_VALUE:
      break;
  }
  node.end = static_cast<std::uint32_t>(nodes.size());
  nodes[at] = node;
}

}  // namespace

JsonView JsonView::first() const {
  STAND_ASSERT(size() > 0);
  return {*nodes_, at_ + 1};
}

std::optional<JsonView> JsonView::find(std::string_view key) const {
  if (type() != JsonType::Object) return std::nullopt;
  for (const JsonView member : children()) {
    if (member.node().key == key) return member;
  }
  return std::nullopt;
}

std::optional<std::int64_t> JsonView::whole(std::string_view key) const {
  const auto value = find(key);
  if (!value || value->type() != JsonType::Whole) return std::nullopt;
  return value->node().whole;
}

std::optional<std::string_view> JsonView::text(std::string_view key) const {
  const auto value = find(key);
  if (!value || value->type() != JsonType::Text) return std::nullopt;
  return value->node().text;
}

std::optional<JsonView> JsonView::list(std::string_view key) const {
  const auto value = find(key);
  if (!value || value->type() != JsonType::List) return std::nullopt;
  return value;
}

struct JsonReader::Inside {
  simdjson::dom::parser parser{kLongest};
  std::string padded;
  std::vector<JsonNode> nodes;
};

JsonReader::JsonReader() : inside_(std::make_unique<Inside>()) {}
JsonReader::~JsonReader() = default;
JsonReader::JsonReader(JsonReader&&) noexcept = default;
JsonReader& JsonReader::operator=(JsonReader&&) noexcept = default;

base::Result<JsonView> JsonReader::read(std::string_view text, std::string_view where) {
  const auto fail = [&](std::string_view what) {
    return base::Error{"bad-json", std::string(where), "this is not the JSON that is expected: " + std::string(what),
                       "check that the file is whole and was not changed"};
  };
  if (text.size() > kLongest) return fail("longer than 64 MiB");
  try {
    Inside& in = *inside_;
    in.nodes.clear();
    // the parser reads past the end by a fixed number of bytes
    in.padded.reserve(text.size() + simdjson::SIMDJSON_PADDING);
    in.padded.assign(text);
    if (in.parser.capacity() < text.size() || in.parser.max_depth() != kDeepest) {
      const auto code = in.parser.allocate(text.size() < 4096 ? 4096 : text.size(), kDeepest);
      if (code != simdjson::SUCCESS) return fail(simdjson::error_message(code));
    }
    element root;
    const auto code = in.parser.parse(in.padded.data(), text.size(), false).get(root);
    if (code != simdjson::SUCCESS) return fail(simdjson::error_message(code));
    add(in.nodes, root, {});
    return JsonView(in.nodes, 0);
  } catch (const std::exception& trouble) {
    return fail(trouble.what());
  }
}

void JsonWriter::comma() {
  if (!fresh_) out_ += ',';
  fresh_ = false;
}

JsonWriter& JsonWriter::begin_object() {
  comma();
  out_ += '{';
  fresh_ = true;
  return *this;
}
JsonWriter& JsonWriter::end_object() {
  out_ += '}';
  fresh_ = false;
  return *this;
}
JsonWriter& JsonWriter::begin_list() {
  comma();
  out_ += '[';
  fresh_ = true;
  return *this;
}
JsonWriter& JsonWriter::end_list() {
  out_ += ']';
  fresh_ = false;
  return *this;
}
JsonWriter& JsonWriter::key(std::string_view name) {
  text(name);
  out_ += ':';
  fresh_ = true;
  return *this;
}
JsonWriter& JsonWriter::whole(std::int64_t number) {
  comma();
  out_ += base::text_from_int(number);
  return *this;
}
JsonWriter& JsonWriter::real(double number_1) {
  comma();
  out_ += base::text_from_double(number_1);
  return *this;
}
JsonWriter& JsonWriter::text(std::string_view words) {
  comma();
  using Json = nlohmann::json;
  try {
    out_ += Json(std::string(words)).dump(-1, ' ', false, Json::error_handler_t::replace);
  } catch (const std::exception&) {
    out_ += "\"\"";
  }
  return *this;
}
JsonWriter& JsonWriter::flag(bool yes) {
  comma();
  out_ += yes ? "true" : "false";
  return *this;
}
JsonWriter& JsonWriter::null() {
  comma();
  out_ += "null";
  return *this;
}
void JsonWriter::clear() {
  out_.clear();
  fresh_ = true;
}

}  // namespace proofstand::record
