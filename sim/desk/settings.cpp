#include "sim/desk/settings.h"

#include <algorithm>
#include <functional>
#include <vector>

#include "sim/base/number_text.h"
#include "sim/desk/asset_files.h"
#include "sim/record/files.h"

namespace proofstand::desk {
namespace {

constexpr std::size_t kLargest = std::size_t{1} << 20;
constexpr std::string_view kKeyPrefix = "key ";

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.back() == '\r')) text.remove_suffix(1);
  return text;
}

int number_in(std::string_view text, int lo, int hi, int otherwise) {
  int value = 0;
  if (text.empty() || text.size() > 4) return otherwise;
  for (const char c : text) {
    if (c < '0' || c > '9') return otherwise;
    value = value * 10 + (c - '0');
  }
  return value < lo || value > hi ? otherwise : value;
}

// one row a setting: how it is read and how it is written
struct Row {
  std::string_view name;
  std::function<void(Settings&, std::string_view)> read;
  std::function<std::string(const Settings&)> write;
};

Row flag(std::string_view name, bool Settings::*member) {
  return {name,
          [member](Settings& s, std::string_view text) {
            if (text == "yes" || text == "no") s.*member = text == "yes";
          },
          [member](const Settings& s) { return std::string(s.*member ? "yes" : "no"); }};
}

Row number(std::string_view name, int Settings::*member, int lo, int hi) {
  return {name, [=](Settings& s, std::string_view text) { s.*member = number_in(text, lo, hi, s.*member); },
          [=](const Settings& s) { return base::text_from_int(s.*member); }};
}

Row word(std::string_view name, std::string Settings::*member) {
  return {name, [=](Settings& s, std::string_view text) { s.*member = std::string(text); },
          [=](const Settings& s) { return s.*member; }};
}

std::vector<Row> rows() {
  return {number("text percent", &Settings::text_percent, 75, 300),
          word("language", &Settings::language),
          flag("reduced motion", &Settings::reduced_motion),
          flag("captions", &Settings::captions),
          flag("sound", &Settings::sound),
          flag("dark", &Settings::dark),
          flag("plain letters", &Settings::plain_letters),
          flag("camera by itself", &Settings::camera_by_itself),
          flag("left hand first", &Settings::left_first),
          flag("hold by click", &Settings::hold_by_click),
          number("drag gain percent", &Settings::drag_gain_percent, 50, 200),
          number("steadying ms", &Settings::steadying_ms, 0, 160),
          flag("reading in words", &Settings::reading_in_words),
          word("quality", &Settings::quality)};
}

}  // namespace

Settings settings_from_text(std::string_view text) {
  Settings out;
  const std::vector<Row> table = rows();
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    const std::size_t sign = line.find('=');
    if (sign == std::string_view::npos) continue;
    const std::string_view name = trimmed(line.substr(0, sign)), value = trimmed(line.substr(sign + 1));
    if (name.substr(0, kKeyPrefix.size()) == kKeyPrefix) {
      out.keys[std::string(trimmed(name.substr(kKeyPrefix.size())))] = std::string(value);
      continue;
    }
    const auto row = std::find_if(table.begin(), table.end(), [&](const Row& r) { return r.name == name; });
    if (row != table.end()) row->read(out, value);
  }
  return out;
}

std::string settings_text(const Settings& settings) {
  std::string out;
  for (const Row& row : rows()) out += std::string(row.name) + " = " + row.write(settings) + "\n";
  for (const auto& [command, chord] : settings.keys) out += std::string(kKeyPrefix) + command + " = " + chord + "\n";
  return out;
}

Settings load_settings() {
  const std::string folder = settings_folder();
  if (folder.empty()) return {};
  const auto text = record::load_bytes(folder + "/settings", kLargest);
  return text ? settings_from_text(*text) : Settings{};
}

base::Result<base::Done> save_settings(const Settings& settings) {
  const std::string folder = settings_folder();
  if (folder.empty()) {
    return base::Error{"file-write", "the settings folder", "there is no folder to keep settings in",
                       "set HOME or XDG_CONFIG_HOME to a folder that can be written"};
  }
  return record::save_bytes(folder + "/settings", settings_text(settings));
}

}  // namespace proofstand::desk
