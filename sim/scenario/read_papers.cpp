#include "sim/scenario/read_papers.h"

#include <algorithm>
#include <utility>

namespace proofstand::scenario {
namespace {

using base::Dimension;
using bench::CardKind;
using bench::CardTruth;

constexpr std::string_view kJointTorque = "bolt_torque";

constexpr WordFor<CardKind> kCardKinds[] = {
    {"length", CardKind::Length}, {"torque", CardKind::Torque}, {"choice", CardKind::Choice}, {"note", CardKind::Note}};
constexpr WordFor<CardTruth> kTruths[] = {{"none", CardTruth::None},
                                          {"old thickness", CardTruth::OldThickness},
                                          {"new thickness", CardTruth::NewThickness},
                                          {"old runout", CardTruth::OldRunout},
                                          {"new runout", CardTruth::NewRunout},
                                          {"old stamp", CardTruth::OldStamp},
                                          {"torque used", CardTruth::TorqueUsed},
                                          {"decision", CardTruth::Decision},
                                          {"locker used", CardTruth::LockerUsed}};

CardKind kind_that_fits(CardTruth truth, CardKind written) {
  switch (truth) {
    case CardTruth::OldThickness:
    case CardTruth::NewThickness:
    case CardTruth::OldRunout:
    case CardTruth::NewRunout:
    case CardTruth::OldStamp:
      return CardKind::Length;
    case CardTruth::TorqueUsed:
      return CardKind::Torque;
    case CardTruth::Decision:
    case CardTruth::LockerUsed:
      return CardKind::Choice;
    case CardTruth::None:
      break;
  }
  return written;
}

/// The words of a choice go into the setup's one list; returns their indices.
std::vector<std::size_t> take_words(const std::vector<std::string>& words, std::vector<std::string>& all) {
  std::vector<std::size_t> indices;
  for (const std::string& word : words) {
    const auto at = std::find(all.begin(), all.end(), word);
    indices.push_back(static_cast<std::size_t>(at - all.begin()));
    if (at == all.end()) all.push_back(word);
  }
  return indices;
}

void read_choice(FieldReader& reader, const bench::CardEntryPart& entry, std::vector<std::string>& words) {
  reader.needs("words", "list the words to choose from, e.g. words = [\"keep\", \"replace\", \"stop and report\"]");
  reader.list("words", words);
  const bool counted = entry.truth == CardTruth::Decision || entry.truth == CardTruth::LockerUsed;
  if (counted && reader.has("words") && words.size() != 3) {
    reader.reading().error("S13", reader.spot_of("words"),
                           reader.name() + " has to offer exactly three words for its truth",
                           entry.truth == CardTruth::Decision
                               ? "write the words for keep, for replace, and for stop and report, in this order"
                               : "write the words for no locker, for a patch, and for liquid locker, in this order");
  }
}

/// Value and tolerance; false when the value could not be read, so that nothing is said about what hangs on it.
bool read_figure(FieldReader& reader, SheetLine& line) {
  reader.needs("value", "write the figure with its unit, e.g. value = \"5.0 N·m\"");
  const Node* value = reader.raw("value");
  bool sound = false;
  if (value != nullptr && value->kind != NodeKind::Text) {
    reader.reading().error("E08", value->at, reader.name() + ".value has no unit",
                           "write it with its unit in quotes, e.g. \"5.0 N·m\"");
  } else if (value != nullptr) {
    const auto quantity = base::parse_quantity(value->text);
    sound = quantity.has_value();
    if (sound) {
      line.value = *quantity;
    } else {
      reader.reading().error("E08", value->at,
                             reader.name() + ".value = \"" + value->text + "\": " + quantity.error().what,
                             quantity.error().instead);
    }
  }
  if (sound) {
    reader.quantity("tolerance", line.value.dimension, {0.0, 1e6}, line.tolerance_si);
  } else {
    reader.raw("tolerance");
  }
  reader.done();
  return sound;
}

}  // namespace

std::vector<CardLine> read_card(const Reading& reading, const Node& card, NamedParts& parts) {
  std::vector<CardLine> lines;
  for (const Member& member : card.members) {
    const std::string name = "card." + member.key;
    if (!is_table(reading, member, name)) continue;
    FieldReader reader(reading, member.node, name);
    CardLine line{member.key, {}};
    bench::CardEntryPart entry;
    entry.name = member.key;
    reader.texts("label", line.label);
    reader.needs("kind", "say what is written there: length, torque, choice or note");
    reader.word("kind", kCardKinds, entry.kind);
    reader.word("truth", kTruths, entry.truth);
    reader.flag("needed", entry.needed);
    std::vector<std::string> words;
    if (entry.kind == CardKind::Choice) read_choice(reader, entry, words);
    entry.words = take_words(words, parts.setup.card_words);
    reader.done();
    if (kind_that_fits(entry.truth, entry.kind) != entry.kind) {
      reading.error(
          "S13", reader.spot_of("truth"), name + " is of a kind that cannot be compared with this truth",
          "thickness, runout and stamp go with length, torque used with torque, decision and locker used with choice");
    }
    parts.setup.card.push_back(std::move(entry));
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<SheetLine> read_sheet(const Reading& reading, const Node& sheet, NamedParts& parts) {
  std::vector<SheetLine> lines;
  for (const Member& member : sheet.members) {
    const std::string name = "sheet." + member.key;
    if (!is_table(reading, member, name)) continue;
    FieldReader reader(reading, member.node, name);
    SheetLine line{member.key, {}, {}, 0.0};
    reader.texts("label", line.label);
    if (!read_figure(reader, line)) continue;
    if (member.key == kJointTorque) {
      parts.sheet_torque_at = reader.spot_of("value");
      parts.sheet_tolerance_at = reader.spot_of(reader.has("tolerance") ? "tolerance" : "value");
      if (line.value.dimension == Dimension::Torque) {
        parts.setup.sheet_torque_nm = line.value.value_si;
      } else {
        reading.error("E08", parts.sheet_torque_at, "sheet.bolt_torque is not a torque",
                      "write it in N·m, e.g. \"5.0 N·m\"");
      }
    }
    lines.push_back(std::move(line));
  }
  if (sheet.find(kJointTorque) == nullptr) {
    reading.error("S03", sheet.at, "the maker's sheet gives no torque for the bolts",
                  "add [sheet.bolt_torque] with value = \"5.0 N·m\" and tolerance = \"0.4 N·m\"");
  }
  return lines;
}

}  // namespace proofstand::scenario
