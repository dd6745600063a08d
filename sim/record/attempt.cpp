#include "sim/record/attempt.h"

namespace proofstand::record {

std::string_view words_of(Way way) {
  switch (way) {
    case Way::Guided:
      return "guided";
    case Way::Practice:
      return "practice";
    case Way::Exam:
      return "exam";
  }
  return "practice";
}

std::optional<Way> way_from_words(std::string_view words) {
  for (const Way way : {Way::Guided, Way::Practice, Way::Exam}) {
    if (words_of(way) == words) return way;
  }
  return std::nullopt;
}

}  // namespace proofstand::record
