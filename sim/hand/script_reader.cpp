#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/hand/hand_script.h"
#include "sim/hand/script_forms.h"
#include "sim/hand/script_match.h"
#include "sim/hand/script_words.h"

namespace proofstand::hand {
namespace {

constexpr std::size_t kMostBytes = 1u << 20;      // a script is written by people; more is not one
constexpr std::size_t kMostInstructions = 20000;  // after blocks are unrolled
constexpr std::size_t kDeepestBlock = 4;

struct Line {
  std::string_view raw;
  std::size_t number = 0;
  std::size_t indent = 0;
  std::vector<Word> words;
};

// a block's variable and what stands for it now
using Standing = std::vector<std::pair<std::string, std::string>>;

struct Reader {
  std::string_view file;
  const bench::BenchSetup& setup;
  std::vector<Line> lines;
  base::Faults faults;
  std::vector<Instruction> out;

  void fault(const Line& line, std::size_t column, std::string what, std::string instead) {
    base::Error error{"hand-script",
                      std::string(file) + ":" + base::text_from_int(static_cast<std::int64_t>(line.number)) + ":" +
                          base::text_from_int(static_cast<std::int64_t>(column)),
                      std::move(what), std::move(instead), false};
    // a faulty line in a block is said once, not once a turn
    for (const base::Error& known : faults.list) {
      if (known.where == error.where) return;
    }
    faults.add(std::move(error));
  }
};

std::string listed(const std::vector<std::string>& parts) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "\"" : "\", \"") + part;
  return text.empty() ? text : text + "\"";
}

// a line that no form took: say where the nearest one stopped
void explain(Reader& reader, const Line& line, const std::vector<Word>& words, const Matched& matched) {
  if (matched.nearest.empty()) {
    std::vector<std::string> firsts;
    for (const Form& form : script_forms()) firsts.push_back(words_of_pattern(form.head).front());
    const std::vector<std::string_view> known(firsts.begin(), firsts.end());
    const std::string_view near = base::nearest_word(words.front().text, known);
    std::string instead = "the language page lists every instruction";
    for (const Form& form : script_forms()) {
      if (!near.empty() && words_of_pattern(form.head).front() == near) {
        instead = "did you mean \"" + std::string(form.head) + "\"?";
        break;
      }
    }
    reader.fault(line, words.front().column, "no instruction begins with \"" + words.front().text + "\"", instead);
    return;
  }
  const bool at_end = matched.at >= words.size();
  const std::size_t column = at_end ? words.back().column + words.back().text.size() : words[matched.at].column;
  const std::string found = at_end ? "the line ends" : "\"" + words[matched.at].text + "\" stands";
  std::string what = found + " where " + (matched.wanted.empty() ? "nothing more" : matched.wanted) + " is expected";
  std::string instead = "write it as \"" + std::string(matched.nearest) + "\"";
  if (!matched.clauses.empty()) instead += ", then any of " + listed(matched.clauses);
  reader.fault(line, column, what, instead);
}

void read_instruction(Reader& reader, const Line& line, const Standing& standing) {
  std::vector<Word> words = line.words;
  for (Word& word : words) {
    for (const auto& [name, value] : standing) {
      if (word.text == name) word.text = value;
    }
  }
  // values such as "1.1 turns" are several words again
  std::vector<Word> split;
  for (const Word& word : words) {
    for (const std::string_view part : base::split_words(word.text)) {
      split.push_back({std::string(part), word.column, word.begin});
    }
  }
  const Matched matched = match_line(line.raw, split, reader.setup);
  if (!matched.ok) {
    explain(reader, line, split, matched);
    return;
  }
  const Misfit misfit = misfit_of(matched.instruction, reader.setup);
  if (!misfit.what.empty()) {
    reader.fault(line, line.words.front().column, misfit.what, misfit.instead);
    return;
  }
  Instruction instruction = matched.instruction;
  instruction.line = line.number;
  instruction.serial = reader.out.size();
  for (const Word& word : split) instruction.text += (instruction.text.empty() ? "" : " ") + word.text;
  reader.out.push_back(std::move(instruction));
}

bool begins_block(const Line& line) {
  return line.words.size() >= 2 && line.words[0].text == "for" && line.words[1].text == "each";
}

// "for each N of 1, 4, 2:" -> N and its values
bool read_block_head(Reader& reader, const Line& line, std::string& name, std::vector<std::string>& values) {
  const std::string form = "write it as \"for each N of 1, 4, 2, 5, 3, 6:\" and indent what it repeats";
  if (line.words.size() < 6 || line.words[3].text != "of" || line.words.back().text != ":") {
    reader.fault(line, line.words.front().column, "this block says not what it goes through", form);
    return false;
  }
  name = line.words[2].text;
  if (name.size() != 1 || name[0] < 'A' || name[0] > 'Z') {
    reader.fault(line, line.words[2].column,
                 "\"" + name + "\" stands for the number, where a single capital letter is expected", form);
    return false;
  }
  const std::size_t begin = line.words[4].begin;
  const std::size_t end = line.words.back().begin;
  std::string_view list = line.raw.substr(begin, end - begin);
  while (!list.empty()) {
    const std::size_t comma = std::min(list.find(','), list.size());
    const std::string_view value = base::trimmed(list.substr(0, comma));
    if (value.empty()) {
      reader.fault(line, line.words[4].column, "a value is missing between two commas", form);
      return false;
    }
    values.emplace_back(value);
    list.remove_prefix(std::min(comma + 1, list.size()));
  }
  return true;
}

std::size_t block_end(const Reader& reader, std::size_t head) {
  std::size_t end = head + 1;
  while (end < reader.lines.size() && reader.lines[end].indent > reader.lines[head].indent) ++end;
  return end;
}

void read_lines(Reader& reader, std::size_t begin, std::size_t end, Standing& standing) {
  for (std::size_t i = begin; i < end; ++i) {
    const Line& line = reader.lines[i];
    if (reader.out.size() > kMostInstructions) {
      reader.fault(line, 1, "the blocks unroll to more than 20000 instructions", "shorten a list or nest fewer blocks");
      return;
    }
    if (line.indent != reader.lines[begin].indent) {
      reader.fault(line, line.words.front().column, "this line is indented but belongs to no block",
                   "indent only the lines under \"for each N of ...:\", all alike");
      continue;
    }
    if (!begins_block(line)) {
      read_instruction(reader, line, standing);
      continue;
    }
    std::string name;
    std::vector<std::string> values;
    const std::size_t inside_end = block_end(reader, i);
    if (standing.size() >= kDeepestBlock) {
      reader.fault(line, line.words.front().column, "blocks are nested more than four deep",
                   "write it without nesting");
    } else if (inside_end == i + 1) {
      reader.fault(line, line.words.front().column, "this block repeats nothing", "indent the lines that it repeats");
    } else if (read_block_head(reader, line, name, values)) {
      for (const std::string& value : values) {
        standing.emplace_back(name, value);
        read_lines(reader, i + 1, inside_end, standing);
        standing.pop_back();
      }
    }
    i = inside_end - 1;
  }
}

}  // namespace

ReadScript read_hand_script(std::string_view text, std::string_view file, const bench::BenchSetup& setup) {
  Reader reader{file, setup, {}, {}, {}};
  ReadScript result;
  if (text.size() > kMostBytes || !base::is_clean_text(text)) {
    result.faults.add({"hand-script", std::string(file),
                       text.size() > kMostBytes ? "larger than 1 MiB" : "not plain UTF-8 text",
                       "a hand script is a text with one instruction a line", false});
    return result;
  }
  std::size_t number = 0;
  for (const std::string_view raw : base::split_lines(text)) {
    ++number;
    const std::string_view said = without_comment(raw);
    std::vector<Word> words = words_of_line(said);
    if (!words.empty()) reader.lines.push_back({said, number, indent_of(said), std::move(words)});
  }
  Standing standing;
  if (!reader.lines.empty()) read_lines(reader, 0, reader.lines.size(), standing);
  if (reader.lines.empty()) {
    result.faults.add({"hand-script", std::string(file), "there is no instruction in it",
                       "write one instruction a line, such as \"take the key\"", false});
    return result;
  }
  result.faults = std::move(reader.faults);
  if (!result.faults.any_error()) {
    auto script = std::make_shared<HandScript>();
    script->file = std::string(file);
    script->instructions = std::move(reader.out);
    result.script = std::move(script);
  }
  return result;
}

}  // namespace proofstand::hand
