#include "tests/faults/fault_file.h"

#include <fstream>
#include <sstream>

#include "sim/base/number_text.h"
#include "sim/base/words.h"

namespace proofstand::faults {
namespace {

base::Error fault(const std::string& where, std::string what, std::string instead) {
  return base::Error{"fault-file", where, std::move(what), std::move(instead), false};
}

Edit begin_edit(Edit::Kind kind, std::string_view line) {
  Edit edit;
  edit.kind = kind;
  // "LINE (2)": the second time it stands there
  if (line.size() > 4 && line.back() == ')' && line[line.size() - 3] == '(') {
    const auto n = base::int_from_text(line.substr(line.size() - 2, 1));
    if (n) {
      edit.occurrence = static_cast<int>(*n);
      line = base::trimmed(line.substr(0, line.size() - 3));
    }
  }
  edit.line = std::string(line);
  return edit;
}

// takes one "key: value"; false when the key is unknown
bool take(FaultFile& file, std::string_view key, std::string_view value) {
  const std::string text(value);
  if (key == "rule") {
    file.rule = text;
  } else if (key == "also") {
    const std::size_t because = text.find(" because ");
    if (because == std::string::npos) return false;
    file.also.push_back({text.substr(0, because), text.substr(because + 9)});
  } else if (key == "replace") {
    file.edits.push_back(begin_edit(Edit::Kind::Replace, value));
  } else if (key == "delete") {
    file.edits.push_back(begin_edit(Edit::Kind::Delete, value));
  } else if (key == "after") {
    file.edits.push_back(begin_edit(Edit::Kind::After, value));
  } else if (key == "before") {
    file.edits.push_back(begin_edit(Edit::Kind::Before, value));
  } else if (key == "with" || key == "add") {
    if (file.edits.empty()) return false;
    file.edits.back().lines.push_back(text);
  } else if (key == "set") {
    file.setup_edits.push_back(text);
  } else if (key == "variant" || key == "seed") {
    const auto n = base::int_from_text(value);
    if (!n) return false;
    if (key == "variant") file.variant = static_cast<std::size_t>(*n);
    if (key == "seed") file.seed = static_cast<std::uint64_t>(*n);
  } else if (key == "hand") {
    file.hand = text;
  } else {
    return false;
  }
  return true;
}

}  // namespace

base::Result<FaultFile> read_fault_file(const std::string& path) {
  std::ifstream in(path);
  std::stringstream all;
  all << in.rdbuf();
  const std::string text = all.str();
  FaultFile file;
  const std::size_t slash = path.find_last_of('/');
  file.name = path.substr(slash + 1, path.size() - slash - 7);
  std::size_t number = 0;
  for (const std::string_view raw : base::split_lines(text)) {
    ++number;
    const std::string_view line = base::trimmed(raw);
    if (line.empty()) continue;
    if (line.front() == '#') {
      file.danger += (file.danger.empty() ? "" : " ") + std::string(base::trimmed(line.substr(1)));
      continue;
    }
    const std::size_t colon = line.find(':');
    const std::string where = path + ":" + std::to_string(number);
    if (colon == std::string_view::npos ||
        !take(file, base::trimmed(line.substr(0, colon)), base::trimmed(line.substr(colon + 1)))) {
      return fault(where, "\"" + std::string(line) + "\" is not understood", "see fault_file.h");
    }
  }
  if (file.rule.empty()) return fault(path, "no rule is named that must find this", "add \"rule: ID\"");
  if (file.danger.empty()) return fault(path, "the danger is not said", "begin with \"# ...\"");
  return file;
}

base::Result<std::string> edit_script(const std::string& base_script, const FaultFile& fault_file) {
  std::vector<std::string> lines;
  for (const std::string_view line : base::split_lines(base_script)) lines.emplace_back(line);
  for (const Edit& edit : fault_file.edits) {
    int seen = 0;
    std::size_t at = lines.size();
    for (std::size_t i = 0; i < lines.size() && at == lines.size(); ++i) {
      if (base::trimmed(lines[i]) == edit.line && ++seen == edit.occurrence) at = i;
    }
    if (at == lines.size()) {
      return fault(fault_file.name, "\"" + edit.line + "\" is not in the base script",
                   "name a line as it stands there");
    }
    const std::string indent = lines[at].substr(0, lines[at].find_first_not_of(" \t"));
    std::vector<std::string> coming;
    for (const std::string& line : edit.lines) coming.push_back(indent + line);
    const auto place = lines.begin() + static_cast<std::ptrdiff_t>(at);
    switch (edit.kind) {
      case Edit::Kind::Replace:
      case Edit::Kind::Delete:
        lines.insert(lines.erase(place), coming.begin(), coming.end());
        break;
      case Edit::Kind::After:
        lines.insert(place + 1, coming.begin(), coming.end());
        break;
      case Edit::Kind::Before:
        lines.insert(place, coming.begin(), coming.end());
        break;
    }
  }
  std::string script;
  for (const std::string& line : lines) script += line + "\n";
  return script;
}

}  // namespace proofstand::faults
