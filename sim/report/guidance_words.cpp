#include "sim/report/guidance_words.h"

#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/report/catalogue.h"
#include "sim/report/guidance_lines.h"

namespace proofstand::report {
namespace {

std::string bolt_words(std::int32_t bolt, std::string_view language) {
  return phrase("guide.bolt", language, {base::text_from_int(static_cast<std::int64_t>(bolt) + 1)});
}

std::string place_words(const GuideWorld& world, const Chore& chore, std::string_view language) {
  if (chore.item < 0) return phrase("guide.face-of", language, {thing_name(world.bench, chore.thing)});
  const char* key = chore.place == event::PlaceKind::Hole   ? "guide.hole-of"
                    : chore.place == event::PlaceKind::Boss ? "guide.boss-of"
                                                            : "guide.recess-of";
  return phrase(key, language, {base::text_from_int(static_cast<std::int64_t>(chore.item) + 1)});
}

std::string entry_words(const GuideWorld& world, std::int32_t entry, std::string_view language) {
  const auto at = static_cast<std::size_t>(entry);
  if (at < world.scenario.card_lines.size()) {
    const std::string_view label = scenario::text_in(world.scenario.card_lines[at].label, language);
    if (!label.empty()) return std::string(label);
  }
  return world.bench.setup().card[at].name;
}

std::string say_writing(const GuideWorld& world, const Chore& chore, std::string_view language) {
  const std::string old = thing_name(world.bench, world.bench.setup().fitted_rotor);
  switch (world.bench.setup().card[static_cast<std::size_t>(chore.item)].truth) {
    case bench::CardTruth::OldThickness:
      return phrase("guide.write-least", language, {old});
    case bench::CardTruth::NewThickness:
      return phrase("guide.write-least", language, {thing_name(world.bench, rotor_to_fit(world))});
    case bench::CardTruth::OldRunout:
    case bench::CardTruth::NewRunout:
      return std::string(phrase("guide.write-runout", language));
    case bench::CardTruth::OldStamp:
      return phrase("guide.write-stamp", language, {old});
    case bench::CardTruth::TorqueUsed:
      return std::string(phrase("guide.write-setting", language));
    case bench::CardTruth::LockerUsed:
      return std::string(phrase("guide.write-locking", language));
    case bench::CardTruth::Decision:
      return std::string(phrase("guide.decide", language));
    case bench::CardTruth::None:
      break;
  }
  return phrase("guide.write-note", language, {entry_words(world, chore.item, language)});
}

std::string tool_words(const GuideWorld& world, ChoreKind kind) {
  const GuideKit kit = kit_of(world.bench);
  switch (kind) {
    case ChoreKind::LookAt:
      return kit.lamp.empty() ? kit.pick : kit.lamp;
    case ChoreKind::Measure:
      return kit.micrometer;
    case ChoreKind::MeasureAcross:
      return kit.vernier;
    case ChoreKind::ReadRunoutBefore:
    case ChoreKind::ReadRunout:
      return kit.dial;
    case ChoreKind::PickRecess:
    case ChoreKind::PickHole:
    case ChoreKind::PickBoss:
      return kit.pick;
    case ChoreKind::Crack:
    case ChoreKind::Snug:
      return kit.key;
    case ChoreKind::RunOut:
    case ChoreKind::RunIn:
      return kit.driver;
    case ChoreKind::SetTool:
    case ChoreKind::Tighten:
      return kit.click_driver;
    case ChoreKind::Locker:
      return kit.locker;
    default:
      return kit.rag;
  }
}

}  // namespace

std::string say_chore(const GuideWorld& world, const Chore& chore, std::string_view language) {
  const std::string tool = tool_words(world, chore.kind);
  std::string key = "guide." + std::string(row_of(chore.kind).key);
  std::string about = chore.item >= 0 ? bolt_words(chore.item, language) : thing_name(world.bench, chore.thing);
  std::string figure;
  switch (chore.kind) {
    case ChoreKind::WriteBefore:
    case ChoreKind::WriteDecision:
    case ChoreKind::Write:
      return say_writing(world, chore, language);
    case ChoreKind::LookAt:
      about = place_words(world, chore, language);
      break;
    case ChoreKind::Measure:
      about = thing_name(world.bench, chore.thing);
      figure = spot_text(chore.item);
      break;
    case ChoreKind::HoldRotor:
      about = thing_name(world.bench, world.seen.rotor);
      break;
    case ChoreKind::WipeFace:
      about = thing_name(world.bench, world.seen.rotor);
      key += chore.item == 0 ? "-printed" : "-other";
      break;
    case ChoreKind::Snug:
      figure = torque_text(kSnugShare_1 * figure_nm(world));
      break;
    case ChoreKind::SetTool:
      figure = torque_text(setting_now_nm(world));
      break;
    default:
      break;
  }
  return phrase(key, language, {about, tool, figure});
}

std::string item_words(const GuideWorld& world, const Chore& chore, std::string_view language) {
  if (chore.item < 0) return {};
  switch (chore.kind) {
    case ChoreKind::Measure:
      return phrase("guide.place-at", language, {spot_text(chore.item)});
    case ChoreKind::WriteBefore:
    case ChoreKind::WriteDecision:
    case ChoreKind::Write:
      return entry_words(world, chore.item, language);
    case ChoreKind::WipeFace:
    case ChoreKind::Spin:
      return {};
    default:
      return bolt_words(chore.item, language);
  }
}

std::string rule_title(const scenario::DrawnScenario& scenario, const rules::RuleProgram& program,
                       rules::RuleIndex rule, std::string_view language) {
  const auto index = static_cast<std::size_t>(rule);
  if (index < scenario.rule_lines.size()) {
    const std::string_view title = scenario::text_in(scenario.rule_lines[index].title, language);
    if (!title.empty()) return std::string(title);
  }
  std::string id = program.id_of(rule);
  std::replace(id.begin(), id.end(), '-', ' ');
  return id;
}

std::string rule_why(const scenario::DrawnScenario& scenario, rules::RuleIndex rule, std::string_view language) {
  const auto index = static_cast<std::size_t>(rule);
  if (index >= scenario.rule_lines.size()) return {};
  return std::string(scenario::text_in(scenario.rule_lines[index].why, language));
}

std::string list_words(const std::vector<std::string>& items) {
  std::string out;
  for (const std::string& item : items) out += (out.empty() ? "" : ", ") + item;
  return out;
}

}  // namespace proofstand::report
