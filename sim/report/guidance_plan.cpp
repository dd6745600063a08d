#include "sim/report/guidance_plan.h"

#include <algorithm>

namespace proofstand::report {
namespace {

using bench::CardTruth;
using rules::RuleKind;
using rules::ScopeForm;

// positions in the order in which a circle is done when no rule says otherwise: always across
std::size_t natural_rank(std::size_t bolt, std::size_t bolts) {
  const std::size_t half = bolts / 2;
  if (bolts % 2 != 0 || half == 0) return bolt;
  return bolt < half ? 2 * bolt : 2 * (bolt - half) + 1;
}

bool needs_stand(const Chore& chore) {
  switch (chore.kind) {
    case ChoreKind::WheelToStand:
    case ChoreKind::Measure:
    case ChoreKind::MeasureAcross:
    case ChoreKind::WriteBefore:
    case ChoreKind::WriteDecision:
    case ChoreKind::Glove:
    case ChoreKind::Locker:
    case ChoreKind::LetGo:
    case ChoreKind::SetTool:
    case ChoreKind::Dry:
    case ChoreKind::WheelToBike:
    case ChoreKind::Spin:
    case ChoreKind::Write:
    case ChoreKind::HandOver:
      return false;
    default:
      return true;
  }
}

class Planner {
 public:
  explicit Planner(const GuideWorld& world) : world_(world) {}

  GuidePlan run() {
    for (const Want& want : all_wants(world_, plan_.unknown_how)) {
      if (stopped_by_decision(want.chore)) continue;
      if (undoes_work(want.chore)) {
        note_undoing(want.rule);
        continue;
      }
      const std::size_t at = demand(want.chore, want.rule, want.surely);
      if (at == kDone) continue;
      Need& need = plan_.needs[at];
      if (!need.direct || speaks_for(want.rule, need) > speaks_for(need.rule, need)) need.rule = want.rule;
      need.direct = true;
    }
    demand({ChoreKind::LetGo}, rules::kNoRule, false);
    demand({ChoreKind::Dry}, rules::kNoRule, false);
    demand({ChoreKind::HandOver}, rules::kNoRule, true);
    name_purposes();
    choose();
    return std::move(plan_);
  }

 private:
  static constexpr std::size_t kDone = static_cast<std::size_t>(-1);

  // of several requirements that ask for one chore: that of its own stage, then the weightiest
  [[nodiscard]] std::int64_t speaks_for(rules::RuleIndex index, const Need& need) const {
    const rules::Rule& rule = world_.rule(index);
    if (rule.competence < 0) return 0;
    const std::string& name = world_.program.marks.competences[static_cast<std::size_t>(rule.competence)].name.text;
    return rule.points_milli + (name == row_of(need.chore.kind).stage ? 1'000'000'000 : 0);
  }

  // what only prepares serves what comes first after it
  void name_purposes() {
    std::vector<std::size_t> direct;
    for (std::size_t i = 0; i < plan_.needs.size(); ++i) {
      if (plan_.needs[i].direct) direct.push_back(i);
    }
    std::stable_sort(direct.begin(), direct.end(), [&](std::size_t a, std::size_t b) {
      return rank(plan_.needs[a].chore) < rank(plan_.needs[b].chore);
    });
    std::vector<bool> named(plan_.needs.size(), false);
    for (const std::size_t i : direct) name_before(i, plan_.needs[i].rule, named);
  }
  void name_before(std::size_t at, rules::RuleIndex rule, std::vector<bool>& named) {
    if (named[at]) return;
    named[at] = true;
    if (!plan_.needs[at].direct) plan_.needs[at].rule = rule;
    for (const std::size_t before : plan_.needs[at].after) name_before(before, rule, named);
  }

  // what was decided to stay on is not taken off
  [[nodiscard]] bool stopped_by_decision(const Chore& chore) const {
    const bench::BenchSetup& setup = world_.bench.setup();
    for (std::size_t e = 0; e < setup.card.size(); ++e) {
      const bench::CardEntryPart& part = setup.card[e];
      const SeenEntry& entry = world_.seen.card[e];
      if (part.truth != CardTruth::Decision || !entry.written || part.words.size() < 2) continue;
      const std::string_view stage = row_of(chore.kind).stage;
      const bool work =
          stage == "remove" || stage == "prepare" || stage == "fit" || stage == "tighten" || stage == "clean";
      if (entry.word != part.words[1] && work) return true;
    }
    return false;
  }

  [[nodiscard]] bool is_old(event::ThingId bolt) const {
    const std::vector<event::ThingId>& old = world_.bench.setup().fitted_bolts;
    return std::find(old.begin(), old.end(), bolt) != old.end();
  }

  // what lies under work that is already done
  [[nodiscard]] bool undoes_work(const Chore& chore) const {
    const Seen& seen = world_.seen;
    switch (chore.kind) {
      case ChoreKind::PickBoss:
      case ChoreKind::WipeSeat:
      case ChoreKind::WipeBoss:
        return !looks_done(world_, chore) && seen.rotor != event::kNoThing &&
               seen.rotor != world_.bench.setup().fitted_rotor;
      case ChoreKind::PickHole: {
        const SeenBolt& bolt = seen.bolts[static_cast<std::size_t>(chore.item)];
        return bolt.sight.present && !is_old(bolt.sight.thing);
      }
      case ChoreKind::HoldRotor:
        return seen.snugged_unheld();
      case ChoreKind::Start: {
        const SeenBolt& bolt = seen.bolts[static_cast<std::size_t>(chore.item)];
        return bolt.sight.present && !is_old(bolt.sight.thing) && bolt.tight;
      }
      default:
        return false;
    }
  }

  void note_undoing(rules::RuleIndex rule) {
    for (const Undoing& known : plan_.undoing) {
      if (known.rule == rule) return;
    }
    plan_.undoing.push_back({rule, world_.seen.rotor_on_tick});
  }

  std::size_t demand(const Chore& chore, rules::RuleIndex rule, bool surely) {
    for (std::size_t i = 0; i < plan_.needs.size(); ++i) {
      if (plan_.needs[i].chore == chore) return i;
    }
    if (!surely && looks_done(world_, chore)) return kDone;
    const std::size_t at = plan_.needs.size();
    plan_.needs.push_back({chore, rule, false, {}});
    std::vector<std::size_t> after;
    const auto first = [&](const Chore& other, bool sure = false) {
      const std::size_t need = demand(other, rule, sure);
      if (need != kDone && need != at) after.push_back(need);
    };
    if (needs_stand(chore)) first({ChoreKind::WheelToStand});
    by_nature(chore, first);
    by_rules(chore, first);
    plan_.needs[at].after = std::move(after);
    return at;
  }

  template <class First>
  void all_bolts(ChoreKind kind, const First& first) {
    for (std::size_t b = 0; b < world_.seen.bolts.size(); ++b) first({kind, static_cast<std::int32_t>(b)});
  }

  // what the parts themselves ask for
  template <class First>
  void by_nature(const Chore& chore, const First& first) {
    const Seen& seen = world_.seen;
    const event::ThingId fit = rotor_to_fit(world_);
    switch (chore.kind) {
      case ChoreKind::Crack:
        return first({ChoreKind::PickRecess, chore.item});
      case ChoreKind::RunOut:
        return first({ChoreKind::Crack, chore.item});
      case ChoreKind::TakeOff:
        return all_bolts(ChoreKind::RunOut, first);
      case ChoreKind::PickHole:
        return first({ChoreKind::RunOut, chore.item});
      case ChoreKind::PickBoss:
      case ChoreKind::WipeSeat:
      case ChoreKind::WipeBoss:
        if (seen.rotor != event::kNoThing) first({ChoreKind::TakeOff, -1, seen.rotor});
        return;
      case ChoreKind::PutOn:
        if (seen.rotor != event::kNoThing) first({ChoreKind::TakeOff, -1, seen.rotor});
        if (bare_fingers_judged()) first({ChoreKind::Glove});
        return;
      case ChoreKind::Start:
        if (seen.bolts[static_cast<std::size_t>(chore.item)].sight.present) first({ChoreKind::RunOut, chore.item});
        if (is_judged(world_, "left_bolt", "locker")) first({ChoreKind::Locker, chore.item});
        return first({ChoreKind::PutOn, -1, fit});
      case ChoreKind::RunIn:
        return first({ChoreKind::Start, chore.item});
      case ChoreKind::HoldRotor:
        return all_bolts(ChoreKind::RunIn, first);
      case ChoreKind::Snug:
        all_bolts(ChoreKind::RunIn, first);
        if (seen.snug_count() >= 2) return first({ChoreKind::LetGo});
        if (is_judged(world_, "left_joint", "clearance")) first({ChoreKind::HoldRotor});
        return;
      case ChoreKind::SetTool:
        return all_bolts(ChoreKind::Snug, first);
      case ChoreKind::Tighten:
        all_bolts(ChoreKind::Snug, first);
        first({ChoreKind::LetGo});
        return first({ChoreKind::SetTool});
      case ChoreKind::WipeFace:
        return first({ChoreKind::PutOn, -1, fit});
      case ChoreKind::ReadRunout:
        first({ChoreKind::Dry});
        first({ChoreKind::PutOn, -1, fit});
        return all_bolts(ChoreKind::Tighten, first);
      case ChoreKind::WheelToBike:
        first({ChoreKind::LetGo});
        return first({ChoreKind::Dry});
      case ChoreKind::Spin:
        return first({chore.item == 1 ? ChoreKind::WheelToBike : ChoreKind::WheelToStand});
      case ChoreKind::WriteBefore:
      case ChoreKind::Write:
        return before_writing(world_.bench.setup().card[static_cast<std::size_t>(chore.item)].truth, first);
      default:
        return;
    }
  }

  template <class First>
  void before_writing(CardTruth truth, const First& first) {
    const event::ThingId old = world_.bench.setup().fitted_rotor;
    switch (truth) {
      case CardTruth::OldThickness:
        return first({ChoreKind::Measure, 0, old});
      case CardTruth::OldRunout:
        return first({ChoreKind::ReadRunoutBefore, -1, old});
      case CardTruth::NewThickness:
        return first({ChoreKind::Measure, 0, rotor_to_fit(world_)});
      case CardTruth::NewRunout:
        return first({ChoreKind::ReadRunout, -1, rotor_to_fit(world_)});
      case CardTruth::TorqueUsed:
        return all_bolts(ChoreKind::Tighten, first);
      case CardTruth::LockerUsed:
        return all_bolts(ChoreKind::Start, first);
      default:
        return;
    }
  }

  [[nodiscard]] bool bare_fingers_judged() const {
    for (const rules::Rule& rule : world_.program.rules) {
      if (rule.kind != RuleKind::Never || world_.program.vocabulary.kinds[rule.x.kind].name != "touched") continue;
      const std::vector<std::size_t> skins = possible_values(world_.program, rule.x, "skin");
      if (skins.size() == 1 && skins.front() == 0) return true;
    }
    return false;
  }

  // what rules want to come before a record of the kind that this chore brings about
  template <class First>
  void by_rules(const Chore& chore, const First& first) {
    const ChoreRow& row = row_of(chore.kind);
    if (row.makes.empty() || chore.kind == ChoreKind::HandOver) return;
    const auto kind = world_.program.vocabulary.find_kind(row.makes.front());
    if (!kind) return;
    for (std::size_t i = 0; i < world_.program.rules.size(); ++i) {
      const rules::Rule& rule = world_.program.rules[i];
      const bool ends_stretch = (rule.form == ScopeForm::BeforeFirst || rule.form == ScopeForm::UntilFirst) &&
                                rule.close.kind == *kind && world_.engine.scopes[i].open;
      const bool needs = rule.kind == RuleKind::Needs && rule.x.kind == *kind;
      if (!ends_stretch && !needs && !later_step(rule, i, *kind)) continue;
      bool known_how = true;
      for (const Want& want : wants_of(world_, static_cast<rules::RuleIndex>(i), known_how)) {
        const bool same_item = !needs || rule.same_x < 0 || want.chore.item == chore.item;
        if (same_item && !(want.chore == chore)) first(want.chore, want.surely);
      }
    }
  }

  // a step of an order before which another one is still owed
  [[nodiscard]] bool later_step(const rules::Rule& rule, std::size_t index, event::KindId kind) const {
    if (rule.kind != RuleKind::Order || world_.live[index].owed.empty()) return false;
    for (std::size_t s = 0; s < rule.steps.size(); ++s) {
      if (rule.steps[s].kind == kind) return static_cast<std::int32_t>(s) > world_.live[index].owed.front().step;
    }
    return false;
  }

  // what a rule forbids outright is never offered
  [[nodiscard]] bool forbidden(const Chore& chore) const {
    const ChoreRow& row = row_of(chore.kind);
    if (row.makes.empty()) return false;
    const auto kind = world_.program.vocabulary.find_kind(row.makes.front());
    for (const rules::Rule& rule : world_.program.rules) {
      const bool outright = rule.kind == RuleKind::Never && rule.x.where < 0 && rule.form == ScopeForm::Run;
      if (kind && outright && rule.x.kind == *kind) return true;
    }
    return false;
  }

  void choose() {
    for (std::size_t i = 0; i < plan_.needs.size(); ++i) {
      if (plan_.needs[i].after.empty() && !forbidden(plan_.needs[i].chore)) plan_.ready.push_back(i);
    }
    std::stable_sort(plan_.ready.begin(), plan_.ready.end(), [&](std::size_t a, std::size_t b) {
      return rank(plan_.needs[a].chore) < rank(plan_.needs[b].chore);
    });
  }

  struct Rank {
    std::size_t stage, kind, order, item;
    bool operator<(const Rank& b) const {
      if (stage != b.stage) return stage < b.stage;
      if (kind != b.kind) return kind < b.kind;
      return order != b.order ? order < b.order : item < b.item;
    }
  };
  [[nodiscard]] Rank rank(const Chore& chore) const {
    const std::string_view stage = row_of(chore.kind).stage;
    std::size_t at = 0;
    while (at < world_.scenario.stages.size() && world_.scenario.stages[at].name != stage) ++at;
    std::size_t item = chore.item < 0 ? 0 : static_cast<std::size_t>(chore.item);
    const bool across = chore.kind == ChoreKind::Crack || chore.kind == ChoreKind::RunOut ||
                        (chore.kind >= ChoreKind::Start && chore.kind <= ChoreKind::Tighten);
    if (chore.kind == ChoreKind::Measure) item = item % 3 * 2 + item / 3;
    if (across && chore.item >= 0) item = natural_rank(item, world_.seen.bolts.size());
    return {at, static_cast<std::size_t>(chore.kind), keeps_order(world_, chore) ? 0U : 1U, item};
  }

  const GuideWorld& world_;
  GuidePlan plan_;
};

}  // namespace

GuidePlan compute_plan(const GuideWorld& world) { return Planner(world).run(); }

}  // namespace proofstand::report
