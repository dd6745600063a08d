#include "sim/scenario/texts.h"

namespace proofstand::scenario {

std::string_view text_in(const Texts& texts, std::string_view language) {
  for (const std::string_view wanted : {language, std::string_view("en")}) {
    const auto at = texts.find(std::string(wanted));
    if (at != texts.end()) return at->second;
  }
  return texts.empty() ? std::string_view() : std::string_view(texts.begin()->second);
}

}  // namespace proofstand::scenario
