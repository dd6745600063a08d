// Whether a chore looks done, and whether it may come next in its round.
#include <algorithm>

#include "sim/report/guidance_plan.h"
#include "sim/rules/rounds_patterns.h"

namespace proofstand::report {
namespace {

using rules::RuleKind;

constexpr double kOffTheFace_m = 0.0010;  // as far as the eye tells
constexpr double kSameLine_nm = 0.03;

}  // namespace

bool looks_done(const GuideWorld& world, const Chore& chore) {
  const Seen& seen = world.seen;
  const auto item = static_cast<std::size_t>(chore.item < 0 ? 0 : chore.item);
  const SeenBolt none;
  const SeenBolt& bolt = chore.item >= 0 && item < seen.bolts.size() ? seen.bolts[item] : none;
  switch (chore.kind) {
    case ChoreKind::WheelToStand:
      return seen.wheel == bench::WheelAt::Stand;
    case ChoreKind::LookAt:
    case ChoreKind::MeasureAcross:
    case ChoreKind::Spin:
    case ChoreKind::HandOver:
      return false;
    case ChoreKind::Measure:
      return seen.measured[event::index_of(chore.thing)];
    case ChoreKind::ReadRunoutBefore:
    case ChoreKind::ReadRunout:
      return seen.watched[event::index_of(chore.thing)];
    case ChoreKind::WriteBefore:
    case ChoreKind::WriteDecision:
    case ChoreKind::Write:
      return seen.card[item].written;
    case ChoreKind::PickRecess:
      return !bolt.sight.recess_dirty;
    case ChoreKind::Crack:
      return !bolt.sight.present || !bolt.tight;
    case ChoreKind::RunOut:
      return !bolt.sight.present;
    case ChoreKind::TakeOff:
      return seen.rotor != chore.thing;
    case ChoreKind::PickHole:
      return bolt.thread_picked;
    case ChoreKind::PickBoss:
      return bolt.boss_picked;
    case ChoreKind::WipeSeat:
      return seen.seat_wiped;
    case ChoreKind::WipeBoss:
      return bolt.boss_wiped;
    case ChoreKind::Glove:
      return seen.gloved;
    case ChoreKind::Locker: {
      const event::ThingId meant = bolt_for_hole(world, item);
      return (bolt.sight.present && bolt.turned_back) || meant == event::kNoThing ||
             bench::see_patch(world.bench, meant) || seen.locker_on[event::index_of(meant)];
    }
    case ChoreKind::PutOn:
      return seen.rotor == chore.thing && seen.printed_out;
    case ChoreKind::Start: {
      const std::vector<event::ThingId>& old = world.bench.setup().fitted_bolts;
      return bolt.sight.present && std::find(old.begin(), old.end(), bolt.sight.thing) == old.end();
    }
    case ChoreKind::RunIn:
      return bolt.sight.present && (bolt.snug || bolt.sight.head_gap_m <= kOffTheFace_m);
    case ChoreKind::HoldRotor:
      return seen.held_against || seen.snug_count() >= 2 || seen.snugged_unheld();
    case ChoreKind::LetGo:
      return !seen.hand_on_rotor || seen.snug_count() < 2;  // until two bolts hold it, it is held on purpose
    case ChoreKind::Snug:
      return bolt.snug;
    case ChoreKind::SetTool: {
      const event::ThingId tool = bench::first_of(world.bench.setup(), bench::ThingKind::ClickDriver);
      if (tool == event::kNoThing) return true;
      const double off_nm = bench::see_setting_nm(world.bench, tool) - setting_now_nm(world);
      return off_nm < kSameLine_nm && off_nm > -kSameLine_nm;
    }
    case ChoreKind::Tighten: {
      const double off_nm = bolt.clicked_nm - figure_nm(world);
      return bolt.sight.present && off_nm < kSameLine_nm && off_nm > -kSameLine_nm;
    }
    case ChoreKind::WipeFace:
      return seen.face_wiped[item];
    case ChoreKind::Dry:
      return !seen.wet;
    case ChoreKind::WheelToBike:
      return seen.wheel == bench::WheelAt::Bike;
  }
  return false;
}

bool keeps_order(const GuideWorld& world, const Chore& chore) {
  const ChoreRow& row = row_of(chore.kind);
  if (chore.item < 0 || row.makes.empty()) return true;
  bool asked = false;
  for (const rules::Rule& rule : world.program.rules) {
    if (rule.kind != RuleKind::Rounds || world.program.vocabulary.kinds[rule.x.kind].name != row.makes.front())
      continue;
    const rules::RoundsState& state = world.engine.rounds[static_cast<std::size_t>(rule.slot)];
    if (!rules::fit_of_pass(rule, state.pass).conforms()) continue;
    asked = true;
    std::vector<std::uint8_t> next = state.pass;
    if (std::find(next.begin(), next.end(), static_cast<std::uint8_t>(chore.item)) != next.end()) continue;
    next.push_back(static_cast<std::uint8_t>(chore.item));
    if (rules::fit_of_pass(rule, next).conforms()) return true;
  }
  return !asked;
}

}  // namespace proofstand::report
