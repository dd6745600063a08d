#include "tests/guided/cuts.h"

#include <algorithm>
#include <sstream>

namespace proofstand::testing {
namespace {

// "for each N of 1, 4, 2:" -> N and its values
bool block_head(const std::string& line, char& name, std::vector<std::string>& values) {
  if (line.rfind("for each ", 0) != 0) return false;
  name = line[9];
  values.clear();
  std::string list = line.substr(line.find(" of ") + 4);
  list = list.substr(0, list.rfind(':'));
  for (std::size_t at = 0; at < list.size();) {
    const std::size_t comma = std::min(list.find(", ", at), list.size());
    values.push_back(list.substr(at, comma - at));
    at = comma + 2;
  }
  return true;
}

// the block's letter where it stands alone
std::string with_value(std::string line, char name, const std::string& value) {
  // bytes beyond ASCII belong to a word too: N·m is no N
  const auto is_letter = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
  };
  for (std::size_t i = 0; i < line.size(); ++i) {
    const bool alone =
        line[i] == name && (i == 0 || !is_letter(line[i - 1])) && (i + 1 == line.size() || !is_letter(line[i + 1]));
    if (alone) line.replace(i, 1, value);
  }
  return line;
}

}  // namespace

std::vector<std::string> written_out(const std::string& script) {
  std::vector<std::string> out;
  std::vector<std::string> block, values;
  char name = 0;
  const auto close = [&] {
    for (const std::string& value : values) {
      for (const std::string& line : block) out.push_back(with_value(line, name, value));
    }
    block.clear();
    values.clear();
  };
  std::istringstream in(script);
  for (std::string line; std::getline(in, line);) {
    const std::size_t begin = line.find_first_not_of(' ');
    if (begin == std::string::npos || line[begin] == '#') continue;
    if (begin > 0) {
      block.push_back(line.substr(begin));
      continue;
    }
    close();
    if (!block_head(line, name, values)) out.push_back(line);
  }
  close();
  return out;
}

std::string cut_after(const std::vector<std::string>& lines, std::size_t count) {
  std::string text;
  for (std::size_t i = 0; i < count && i < lines.size(); ++i) text += lines[i] + "\n";
  return text;
}

}  // namespace proofstand::testing
