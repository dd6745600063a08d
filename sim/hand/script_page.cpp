#include "sim/hand/hand_script.h"
#include "sim/hand/script_forms.h"

namespace proofstand::hand {
namespace {

std::string code(std::string_view text) { return "`" + std::string(text) + "`"; }

}  // namespace

std::string script_language_page() {
  std::string page =
      "# Hand scripts\n"
      "\n"
      "One instruction a line, as one would tell a colleague; `#` begins a comment. *The*, *its* and commas may stand\n"
      "anywhere, clauses in any order. Numbers bear units. Things, card entries and bolt positions are called as the\n"
      "scenario calls them; bolts count from 1. What a line leaves out (speed, tilt, depth, whether to pull on after "
      "a\n"
      "click) the hand does as its skill has it.\n"
      "\n"
      "    for each N of 1, 4, 2, 5, 3, 6:\n"
      "        crack bolt N with the key\n"
      "\n"
      "repeats the indented lines, N standing for each value in turn. Blocks may be nested.\n"
      "\n"
      "## Instructions\n"
      "\n";
  for (const Form& form : script_forms()) {
    page += "- " + code(form.head) + ": " + std::string(form.what) + ".\n";
    if (!form.clauses.empty()) {
      page += "  Also:";
      for (std::size_t i = 0; i < form.clauses.size(); ++i) {
        page += (i == 0 ? " " : ", ") + code(form.clauses[i].pattern);
      }
      page += ".\n";
    }
    page += "  Such as: " + code(form.example) + "\n";
  }
  page += "\n## What stands in angle brackets\n\n";
  for (const Slot& slot : script_slots()) {
    page += "- " + code("<" + std::string(slot.name) + ">") + ": " + std::string(slot.words) + "\n";
  }
  return page;
}

}  // namespace proofstand::hand
