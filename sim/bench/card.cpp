#include "sim/bench/card.h"

#include "sim/base/math.h"
#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/base/words.h"
#include "sim/bench/card_truth.h"
#include "sim/bench/draft.h"

namespace proofstand::bench {
namespace {

constexpr std::size_t kLongestText = 2000;

/// "1,78 mm" and "1.78" alike; the everyday unit where none is written.
std::optional<double> quantity_from(std::string_view text, base::Dimension dimension, double unit_si) {
  if (const auto plain = base::double_from_text(text, true)) return *plain * unit_si;
  std::string with_point(text);
  for (char& c : with_point) {
    if (c == ',') c = '.';
  }
  const auto parsed = base::parse_quantity_as(with_point, dimension);
  if (!parsed.has_value()) return std::nullopt;
  return *parsed;
}

double distance(double a, double b) { return a < b ? b - a : a - b; }

Refusal write_length(const World& world, CardEntryId id, const std::string& text, CardState& state) {
  const auto written = quantity_from(base::trimmed(text), base::Dimension::Length, 0.001);
  if (!written || !(*written >= 0.0 && *written <= 1.0)) return Refusal::NotANumber;
  const auto truth = card_truth(world, world.setup.card[event::index_of(id)]);
  // of all that was shown, the last and the least are what people write
  double indicated = state.indicated_m;
  if (distance(*written, state.least_m) < distance(*written, indicated)) indicated = state.least_m;
  Draft card(world, "card_length");
  card.with("entry", static_cast<double>(event::index_of(id))).with("written", *written);
  card.with_if(state.was_indicated, "indicated", base::clamp_1(indicated, 0.0, 1.0));
  card.with_if(state.was_indicated, "off_indicated", distance(*written, indicated));
  card.with_if(truth.has_value(), "truth", truth.value_or(0.0));
  card.with_if(truth.has_value(), "off_truth", distance(*written, truth.value_or(0.0))).emit();
  state.written_1 = *written;
  return Refusal::None;
}

Refusal write_torque(const World& world, CardEntryId id, const std::string& text, CardState& state) {
  const auto written = quantity_from(base::trimmed(text), base::Dimension::Torque, 1.0);
  if (!written || !(*written >= 0.0 && *written <= 100.0)) return Refusal::NotANumber;
  const auto clicked = card_truth(world, world.setup.card[event::index_of(id)]);
  Draft card(world, "card_torque");
  card.with("entry", static_cast<double>(event::index_of(id))).with("written", *written);
  card.with_if(clicked.has_value(), "indicated", clicked.value_or(0.0));
  card.with_if(clicked.has_value(), "off_indicated", distance(*written, clicked.value_or(0.0))).emit();
  state.written_1 = *written;
  return Refusal::None;
}

Refusal write_choice(const World& world, CardEntryId id, const std::string& text, CardState& state) {
  const CardEntryPart& entry = world.setup.card[event::index_of(id)];
  const std::string_view wanted = base::trimmed(text);
  for (const std::size_t word : entry.words) {
    if (world.setup.card_words[word] != wanted) continue;
    const auto right = card_truth(world, entry);
    Draft card(world, "card_choice");
    card.with("entry", static_cast<double>(event::index_of(id))).with("word", static_cast<double>(word));
    card.with_if(right.has_value(), "right", right.value_or(0.0));
    card.with_if(right.has_value(), "agrees", right == static_cast<double>(word) ? 1.0 : 0.0).emit();
    state.written_1 = static_cast<double>(word);
    return Refusal::None;
  }
  return Refusal::NotANumber;
}

Refusal write_note(const World& world, CardEntryId id, const std::string& text) {
  double letters = 0.0;
  for (const char c : text) {
    // bytes that continue a letter do not count
    if ((static_cast<unsigned char>(c) & 0xC0u) != 0x80u) letters += 1.0;
  }
  world.emit("card_note", {{"entry", static_cast<double>(event::index_of(id))}, {"letters", letters}});
  return Refusal::None;
}

}  // namespace

Refusal write_card(const World& world, CardEntryId id, const std::string& text) {
  if (event::index_of(id) >= world.setup.card.size()) return Refusal::NoSuchPlace;
  if (text.size() > kLongestText || !base::is_clean_text(text)) return Refusal::NotANumber;
  CardState& state = world.state.card[event::index_of(id)];
  Refusal refusal = Refusal::None;
  switch (world.setup.card[event::index_of(id)].kind) {
    case CardKind::Length:
      refusal = write_length(world, id, text, state);
      break;
    case CardKind::Torque:
      refusal = write_torque(world, id, text, state);
      break;
    case CardKind::Choice:
      refusal = write_choice(world, id, text, state);
      break;
    case CardKind::Note:
      refusal = write_note(world, id, text);
      break;
  }
  if (refusal != Refusal::None) return refusal;
  state.filled = !base::trimmed(text).empty();
  state.text = text;
  return Refusal::None;
}

}  // namespace proofstand::bench
