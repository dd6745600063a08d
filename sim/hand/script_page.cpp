#include "sim/hand/hand_script.h"
#include "sim/hand/script_forms.h"

namespace proofstand::hand {

std::string script_language_page() {
  std::string page =
      "Hand scripts\n"
      "\n"
      "One instruction a line; '#' begins a comment; \"the\", \"its\" and commas may stand anywhere. Numbers bear "
      "units.\n"
      "Things, card entries and bolt positions are called as the scenario calls them; bolts count from 1.\n"
      "What a line leaves out (speed, tilt, depth) the hand does as its skill has it.\n"
      "\n"
      "  for each N of 1, 4, 2, 5, 3, 6:\n"
      "      crack bolt N with the key\n"
      "\n"
      "repeats the indented lines, N standing for each value in turn. Blocks may be nested.\n"
      "\n";
  for (const Form& form : script_forms()) {
    page += std::string(form.head) + "\n    " + std::string(form.what) + "\n";
    if (!form.clauses.empty()) {
      page += "    also:";
      for (std::size_t i = 0; i < form.clauses.size(); ++i) {
        page += (i == 0 ? " " : " | ") + std::string(form.clauses[i].pattern);
      }
      page += "\n";
    }
    page += "    such as: " + std::string(form.example) + "\n\n";
  }
  page += "What stands in angle brackets:\n";
  for (const Slot& slot : script_slots()) {
    page += "    <" + std::string(slot.name) + ">  " + std::string(slot.words) + "\n";
  }
  return page;
}

}  // namespace proofstand::hand
