#include "sim/scenario/field_reader.h"

#include <algorithm>
#include <utility>

#include "sim/base/number_text.h"
#include "sim/base/words.h"

namespace proofstand::scenario {
namespace {

std::string quoted(std::string_view word) { return "\"" + std::string(word) + "\""; }

std::string listed(const std::vector<std::string_view>& words) {
  std::string all;
  for (const std::string_view word : words) all += (all.empty() ? "" : ", ") + quoted(word);
  return all;
}

}  // namespace

std::string Reading::where(const Spot& at) const {
  std::string name = at.file < files->size() ? (*files)[at.file] : std::string();
  if (at.line == 0) return name;
  return name + ":" + base::text_from_int(at.line) + ":" + base::text_from_int(at.column);
}

void Reading::error(std::string code, const Spot& at, std::string what, std::string instead) const {
  faults->add({std::move(code), where(at), std::move(what), std::move(instead), false});
}

void Reading::warning(std::string code, const Spot& at, std::string what, std::string instead) const {
  faults->add({std::move(code), where(at), std::move(what), std::move(instead), true});
}

FieldReader::FieldReader(const Reading& reading, const Node& table, std::string name)
    : reading_(&reading), table_(&table), name_(std::move(name)) {}

Spot FieldReader::spot_of(std::string_view key) const {
  const Node* value = table_->find(key);
  return value != nullptr ? value->at : table_->at;
}

void FieldReader::wrong_type(std::string_view key, const Node& value, const char* expected) {
  reading_->error("S04", value.at, name_ + "." + std::string(key) + " is not " + expected,
                  std::string("write ") + expected + " here");
}

const Node* FieldReader::raw(std::string_view key) {
  asked_.push_back(key);
  return table_->find(key);
}

void FieldReader::quantity(std::string_view key, base::Dimension dimension, Span span, double& value_si) {
  const Node* value = raw(key);
  if (value == nullptr) return;
  const std::string full = name_ + "." + std::string(key);
  double read_si = 0.0;
  if (value->kind == NodeKind::Text) {
    const auto parsed = base::parse_quantity_as(value->text, dimension);
    if (!parsed) {
      reading_->error("E08", value->at, full + " = " + quoted(value->text) + ": " + parsed.error().what,
                      parsed.error().instead);
      return;
    }
    read_si = *parsed;
  } else if (value->kind == NodeKind::Integer || value->kind == NodeKind::Real) {
    const double number = value->kind == NodeKind::Integer ? static_cast<double>(value->integer) : value->real_1;
    if (dimension != base::Dimension::Number) {
      reading_->error("E08", value->at,
                      full + " is " + std::string(base::dimension_words(dimension)) + " and has no unit",
                      "write it with its unit in quotes, e.g. \"" + base::text_from_double(number) + " " +
                          std::string(base::everyday_unit(dimension)) + "\"");
      return;
    }
    read_si = number;
  } else {
    wrong_type(key, *value, dimension == base::Dimension::Number ? "a number" : "a quantity with its unit, in quotes");
    return;
  }
  if (!(read_si >= span.lo_si && read_si <= span.hi_si)) {
    reading_->error("E10", value->at,
                    full + " = " + base::quantity_words(read_si, dimension) + " is outside of what is possible",
                    "write a value from " + base::quantity_words(span.lo_si, dimension) + " to " +
                        base::quantity_words(span.hi_si, dimension));
    return;
  }
  value_si = read_si;
}

void FieldReader::count(std::string_view key, Span span, int& value) {
  const Node* there = raw(key);
  if (there == nullptr) return;
  if (there->kind != NodeKind::Integer) return wrong_type(key, *there, "a whole number");
  const double read = static_cast<double>(there->integer);
  if (!(read >= span.lo_si && read <= span.hi_si)) {
    reading_->error("E10", there->at,
                    name_ + "." + std::string(key) + " = " + base::text_from_int(there->integer) +
                        " is outside of what is possible",
                    "write a whole number from " + base::text_from_double(span.lo_si) + " to " +
                        base::text_from_double(span.hi_si));
    return;
  }
  value = static_cast<int>(there->integer);
}

void FieldReader::flag(std::string_view key, bool& value) {
  const Node* there = raw(key);
  if (there == nullptr) return;
  if (there->kind != NodeKind::Flag) return wrong_type(key, *there, "true or false");
  value = there->flag;
}

void FieldReader::text(std::string_view key, std::string& value) {
  const Node* there = raw(key);
  if (there == nullptr) return;
  if (there->kind != NodeKind::Text) return wrong_type(key, *there, "a text in quotes");
  value = there->text;
}

void FieldReader::texts(std::string_view key, Texts& value) {
  const Node* there = raw(key);
  if (there == nullptr) return;
  if (there->kind == NodeKind::Text) {
    value["en"] = there->text;
    return;
  }
  if (!there->is_table()) return wrong_type(key, *there, "texts by language");
  for (const Member& member : there->members) {
    if (member.node.kind != NodeKind::Text) {
      reading_->error("S04", member.node.at, name_ + "." + std::string(key) + "." + member.key + " is not a text",
                      "write a text in quotes");
    } else {
      value[member.key] = member.node.text;
    }
  }
}

void FieldReader::list(std::string_view key, std::vector<std::string>& value, std::vector<Spot>* spots) {
  const Node* there = raw(key);
  if (there == nullptr) return;
  value.clear();
  if (there->kind == NodeKind::Text) {
    value.push_back(there->text);
    if (spots != nullptr) spots->push_back(there->at);
    return;
  }
  if (!there->is_list()) return wrong_type(key, *there, "a list of texts");
  for (const Member& member : there->members) {
    if (member.node.kind != NodeKind::Text) return wrong_type(key, member.node, "a text in quotes");
    value.push_back(member.node.text);
    if (spots != nullptr) spots->push_back(member.node.at);
  }
}

std::size_t FieldReader::word_index(std::string_view key, const std::vector<std::string_view>& known) {
  const Node* there = raw(key);
  if (there == nullptr) return known.size();
  if (there->kind != NodeKind::Text) {
    wrong_type(key, *there, "a word in quotes");
    return known.size();
  }
  const auto at = std::find(known.begin(), known.end(), there->text);
  if (at != known.end()) return static_cast<std::size_t>(at - known.begin());
  const std::string_view near = base::nearest_word(there->text, known);
  reading_->error(
      "S05", there->at, name_ + "." + std::string(key) + " = " + quoted(there->text) + " is not known",
      near.empty() ? "write one of " + listed(known) : "did you mean " + quoted(near) + "? known are " + listed(known));
  return known.size();
}

const Node* FieldReader::table_at(std::string_view key) {
  const Node* there = raw(key);
  if (there == nullptr) return nullptr;
  if (there->is_table()) return there;
  wrong_type(key, *there, "a table");
  return nullptr;
}

const Node* FieldReader::list_at(std::string_view key) {
  const Node* there = raw(key);
  if (there == nullptr) return nullptr;
  if (there->is_list()) return there;
  wrong_type(key, *there, "a list");
  return nullptr;
}

void FieldReader::needs(std::string_view key, const char* instead) {
  if (has(key)) return;
  reading_->error("S03", table_->at, name_ + " does not say " + quoted(key), instead);
}

void FieldReader::done() {
  for (const Member& member : table_->members) {
    if (std::find(asked_.begin(), asked_.end(), member.key) != asked_.end()) continue;
    const std::string_view near = base::nearest_word(member.key, asked_);
    reading_->error(
        "E02", member.key_at, (name_.empty() ? "" : name_ + ": ") + quoted(member.key) + " is not known here",
        near.empty() ? "take it out; known here are " + listed(asked_) : "did you mean " + quoted(near) + "?");
  }
}

bool is_table(const Reading& reading, const Member& member, const std::string& name) {
  if (member.node.is_table()) return true;
  reading.error("S04", member.node.at, name + " is not a table", "write [" + name + "] and its entries below");
  return false;
}

}  // namespace proofstand::scenario
