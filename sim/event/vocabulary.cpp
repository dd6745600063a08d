#include "sim/event/vocabulary.h"

#include "sim/event/record.h"

namespace proofstand::event {
namespace {

template <class List>
auto index_of(const List& list, std::string_view name) -> std::optional<std::size_t> {
  for (std::size_t i = 0; i < list.size(); ++i) {
    if (list[i].name == name) return i;
  }
  return std::nullopt;
}

}  // namespace

std::optional<KindId> Vocabulary::find_kind(std::string_view name) const {
  const auto at = index_of(kinds, name);
  if (!at) return std::nullopt;
  return static_cast<KindId>(*at);
}

std::optional<SetId> Vocabulary::find_set(std::string_view name) const {
  const auto at = index_of(sets, name);
  if (!at) return std::nullopt;
  return static_cast<SetId>(*at);
}

std::optional<std::size_t> Vocabulary::find_field(const Kind& kind, std::string_view name) {
  return index_of(kind.fields, name);
}

std::optional<std::size_t> Vocabulary::find_item(SetId set, std::string_view word) const {
  if (set >= sets.size()) return std::nullopt;
  const std::vector<std::string>& items = sets[set].items;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (items[i] == word) return i;
  }
  return std::nullopt;
}

std::string_view end_words(EndReason reason) {
  switch (reason) {
    case EndReason::Finished:
      return "finished";
    case EndReason::Timeout:
      return "timeout";
    case EndReason::Stopped:
      return "stopped";
    case EndReason::Aborted:
      return "aborted";
  }
  return "aborted";
}

}  // namespace proofstand::event
