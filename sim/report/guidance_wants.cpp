#include "sim/report/guidance_wants.h"

#include <algorithm>

namespace proofstand::report {
namespace {

using rules::RuleKind;

bool is_closing(std::string_view kind) { return kind.substr(0, 5) == "left_"; }

std::string_view kind_name(const rules::RuleProgram& program, const rules::Selector& selector) {
  return program.vocabulary.kinds[selector.kind].name;
}

// makes chores of one selector of one rule
class Asking {
 public:
  Asking(const GuideWorld& world, rules::RuleIndex rule, std::vector<Want>& out)
      : world_(world), rule_(rule), out_(out) {}

  // items: which bolts (or others) are meant; empty: whatever the selector allows. false: no chore brings this about
  bool ask(const rules::Selector& selector, const std::vector<std::int64_t>& items, bool surely) {
    selector_ = &selector;
    kind_ = kind_name(world_.program, selector);
    std::vector<ChoreKind> kinds = chores_for(selector, world_.rule(rule_).value);
    for (const ChoreKind chore : kinds) add(chore, items, surely);
    return !kinds.empty();
  }

  [[nodiscard]] std::vector<ChoreKind> chores_for(const rules::Selector& selector, std::int32_t value) const {
    std::vector<std::string_view> fields = fields_read(world_.program, selector.kind, selector.where);
    const auto more = fields_read(world_.program, selector.kind, value);
    fields.insert(fields.end(), more.begin(), more.end());
    std::vector<ChoreKind> kinds;
    for (const EventRow& row : event_table()) {
      if (row.event != kind_name(world_.program, selector)) continue;
      if (!row.field.empty() && std::find(fields.begin(), fields.end(), row.field) == fields.end()) continue;
      if (std::find(kinds.begin(), kinds.end(), row.chore) == kinds.end()) kinds.push_back(row.chore);
    }
    return kinds;
  }

 private:
  [[nodiscard]] std::vector<std::size_t> values(std::string_view field) const {
    return possible_values(world_.program, *selector_, field);
  }

  void put(Chore chore, bool surely) { out_.push_back({rule_, chore, surely}); }

  void each_bolt(ChoreKind kind, const std::vector<std::int64_t>& items, bool surely) {
    for (const std::size_t bolt : bolts(items)) put({kind, static_cast<std::int32_t>(bolt)}, surely && !items.empty());
  }
  [[nodiscard]] std::vector<std::size_t> bolts(const std::vector<std::int64_t>& items) const {
    std::vector<std::size_t> all;
    for (const std::int64_t item : items) all.push_back(static_cast<std::size_t>(item));
    if (all.empty()) {
      for (std::size_t b = 0; b < world_.seen.bolts.size(); ++b) all.push_back(b);
    }
    return all;
  }

  // the rotor that a selector speaks of; where it leaves that open, the one on the hub
  [[nodiscard]] event::ThingId rotor() const {
    const std::vector<std::size_t> allowed = values("rotor");
    if (allowed.size() == 1) return rotor_thing(world_.bench.setup(), allowed.front());
    return world_.seen.rotor != event::kNoThing ? world_.seen.rotor : rotor_to_fit(world_);
  }

  void add(ChoreKind kind, const std::vector<std::int64_t>& items, bool surely) {
    switch (kind) {
      case ChoreKind::Measure:
        return ask_measuring(surely);
      case ChoreKind::MeasureAcross:
        return put({kind, -1, rotor()}, surely);
      case ChoreKind::ReadRunout: {
        const bool before = rotor() == world_.bench.setup().fitted_rotor;
        return put({before ? ChoreKind::ReadRunoutBefore : kind, -1, rotor()}, surely);
      }
      case ChoreKind::LookAt:
        return ask_looking(items, surely);
      case ChoreKind::Write:
        return ask_writing(surely);
      case ChoreKind::WipeSeat:
        return ask_seat();
      case ChoreKind::WipeFace:
        return ask_wiping(items, surely);
      case ChoreKind::PutOn:
        if (!would_apply()) return;
        return put({kind, -1, rotor_to_fit(world_)}, false);
      case ChoreKind::TakeOff:
        return put({kind, -1, world_.bench.setup().fitted_rotor}, false);
      case ChoreKind::Spin: {
        const std::vector<std::size_t> at = values("at");
        return put({kind, !at.empty() && at.back() == 1 ? 1 : 0}, surely);
      }
      case ChoreKind::WheelToBike: {
        const std::vector<std::size_t> to = values("to");
        const bool stand = to.size() == 1 && to.front() == 0;
        return put({stand ? ChoreKind::WheelToStand : kind}, false);
      }
      case ChoreKind::Crack:
      case ChoreKind::RunOut:
      case ChoreKind::PickRecess:
      case ChoreKind::PickHole:
      case ChoreKind::Locker:
      case ChoreKind::Start:
      case ChoreKind::Snug:
      case ChoreKind::Tighten:
        return each_bolt(kind, items, surely);
      default:
        return put({kind}, false);
    }
  }

  // is it about a rotor like the one to fit? Whether that bears an arrow is seen beforehand
  [[nodiscard]] bool would_apply() const {
    const rules::Rule& rule = world_.rule(rule_);
    if (rule.kind != RuleKind::Needs || kind_name(world_.program, rule.x) != "left_rotor") return true;
    event::Record left;
    left.kind = rule.x.kind;
    left.unknown = 0xFFFF;
    const auto arrow = event::Vocabulary::find_field(world_.program.vocabulary.kinds[left.kind], "arrow_forward");
    if (arrow && bench::see_arrow(world_.bench, rotor_to_fit(world_))) {
      left.unknown = static_cast<std::uint16_t>(left.unknown & ~(1U << *arrow));
      left.values[*arrow] = 1.0;
    }
    return rules::matches(world_.program, rule.x, left, world_.engine.fluents) != rules::Truth::No;
  }

  // different places of the rotor: those not yet measured, spread round it
  void ask_measuring(bool surely) {
    const rules::Rule& rule = world_.rule(rule_);
    std::vector<double> done;
    std::int64_t more = 1;
    if (rule.kind == RuleKind::Count && rule.distinct >= 0) {
      const rules::PresenceState& state = world_.engine.presence[static_cast<std::size_t>(rule.slot)];
      done = state.values_si;
      more = rule.count_lo - state.n;
    }
    constexpr std::int32_t spread[] = {0, 3, 1, 4, 2, 5};
    for (const std::int32_t spot : spread) {
      if (more <= 0) return;
      if (std::binary_search(done.begin(), done.end(), static_cast<double>(spot))) continue;
      put({ChoreKind::Measure, spot, rotor()}, surely);
      --more;
    }
  }

  void ask_looking(const std::vector<std::int64_t>& items, bool surely) {
    const std::vector<std::size_t> parts = values("part");
    const event::Kind& kind = world_.program.vocabulary.kinds[selector_->kind];
    const auto field = event::Vocabulary::find_field(kind, "part");
    if (parts.empty() || !field) return;
    const std::string& part = kind.fields[*field].choices[parts.front()];
    const bool seat = part == "seat";
    const bool hole = part == "hole";
    const event::PlaceKind place = seat   ? event::PlaceKind::Boss
                                   : hole ? event::PlaceKind::Hole
                                          : event::PlaceKind::BoltRecess;
    if (!seat && !hole && part != "recess") {
      const bool outer = part != "inner_track";
      return put({ChoreKind::LookAt, -1, rotor(), outer ? event::PlaceKind::TrackOuter : event::PlaceKind::TrackInner},
                 surely);
    }
    for (const std::size_t bolt : bolts(items)) {
      put({ChoreKind::LookAt, static_cast<std::int32_t>(bolt), event::kNoThing, place}, surely);
    }
  }

  // an entry is written where its truth comes to be known
  void ask_writing(bool surely) {
    for (const std::size_t entry : values("entry")) {
      const bench::CardEntryPart& part = world_.bench.setup().card[entry];
      const bool whether_filled = is_closing(kind_);
      if (whether_filled && world_.rule(rule_).kind == RuleKind::Never && !part.needed) continue;
      ChoreKind kind = ChoreKind::Write;
      switch (part.truth) {
        case bench::CardTruth::OldThickness:
        case bench::CardTruth::OldRunout:
        case bench::CardTruth::OldStamp:
          kind = ChoreKind::WriteBefore;
          break;
        case bench::CardTruth::Decision:
          kind = ChoreKind::WriteDecision;
          break;
        default:
          break;
      }
      put({kind, static_cast<std::int32_t>(entry)}, surely && !whether_filled);
    }
  }

  void ask_seat() {
    put({ChoreKind::WipeSeat}, false);
    each_bolt(ChoreKind::PickBoss, {}, false);
    each_bolt(ChoreKind::WipeBoss, {}, false);
  }

  void ask_wiping(const std::vector<std::int64_t>& items, bool surely) {
    const event::Kind& kind = world_.program.vocabulary.kinds[selector_->kind];
    const auto field = event::Vocabulary::find_field(kind, "part");
    std::vector<std::size_t> parts = values("part");
    if (!items.empty()) parts.assign(items.begin(), items.end());
    if (!field) {  // about what is left on the faces
      put({ChoreKind::WipeFace, 0}, false);
      put({ChoreKind::WipeFace, 1}, false);
      return;
    }
    for (const std::size_t part : parts) {
      const std::string& word = kind.fields[*field].choices[part];
      if (word == "outer_track") put({ChoreKind::WipeFace, 0}, surely);
      if (word == "inner_track") put({ChoreKind::WipeFace, 1}, surely);
      if (word == "seat") ask_seat();
    }
  }

  const GuideWorld& world_;
  rules::RuleIndex rule_;
  std::vector<Want>& out_;
  const rules::Selector* selector_ = nullptr;
  std::string_view kind_;
};

// different values of a choice that are still missing
std::vector<std::int64_t> missing_choices(const GuideWorld& world, const rules::Rule& rule) {
  const event::Field& field =
      world.program.vocabulary.kinds[rule.x.kind].fields[static_cast<std::size_t>(rule.distinct)];
  std::vector<std::int64_t> missing;
  if (field.type != event::FieldType::Choice) return missing;
  const std::vector<double>& have = world.engine.presence[static_cast<std::size_t>(rule.slot)].values_si;
  for (const std::size_t value : possible_values(world.program, rule.x, field.name)) {
    if (!std::binary_search(have.begin(), have.end(), static_cast<double>(value))) {
      missing.push_back(static_cast<std::int64_t>(value));
    }
  }
  return missing;
}

const rules::Selector* selector_of(const rules::Rule& rule, const rules::Owed& owed) {
  switch (owed.role) {
    case rules::Role::X:
      return &rule.x;
    case rules::Role::Y:
      return &rule.y;
    case rules::Role::Open:
      return &rule.open;
    case rules::Role::Step:
      return owed.step >= 0 ? &rule.steps[static_cast<std::size_t>(owed.step)] : nullptr;
    default:
      return nullptr;
  }
}

// rules about what is left owe nothing while the run goes on: what they look at is put right all the same
bool ask_closing(const GuideWorld& world, rules::RuleIndex index, std::vector<Want>& out) {
  const rules::Rule& rule = world.rule(index);
  const bool judges = rule.kind == RuleKind::Must || rule.kind == RuleKind::Never || rule.kind == RuleKind::Count ||
                      rule.kind == RuleKind::Measure;
  if (judges && rule.x.given() && is_closing(kind_name(world.program, rule.x))) {
    Asking(world, index, out).ask(rule.x, {}, false);
    return true;
  }
  return false;
}

}  // namespace

GuideWorld guide_world(const rules::RuleProgram& program, const rules::EngineState& engine,
                       const scenario::DrawnScenario& scenario, const bench::Bench& bench) {
  return {program, engine, scenario, bench, compute_seen(bench), rules::live_view(program, engine)};
}

std::vector<Want> wants_of(const GuideWorld& world, rules::RuleIndex index, bool& known_how) {
  std::vector<Want> out;
  const rules::Rule& rule = world.rule(index);
  const rules::LiveRule& live = world.live[static_cast<std::size_t>(index)];
  known_how = true;
  if (live.status == rules::LiveStatus::Met) return out;
  if (ask_closing(world, index, out)) return out;
  if (live.owed.empty()) return out;
  // an order's steps one after the other; everything else at once
  const rules::Selector* selector = selector_of(rule, live.owed.front());
  std::vector<std::int64_t> items;
  for (const rules::Owed& owed : live.owed) {
    if (owed.item >= 0 && owed.role == live.owed.front().role) items.push_back(owed.item);
  }
  if (rule.kind == RuleKind::Count && rule.distinct >= 0 && items.empty()) items = missing_choices(world, rule);
  known_how = selector != nullptr && selector->given() && Asking(world, index, out).ask(*selector, items, true);
  return out;
}

std::vector<Want> all_wants(const GuideWorld& world, std::vector<rules::RuleIndex>& unknown_how) {
  std::vector<Want> wants;
  std::vector<bool> inside(world.program.rules.size(), false);
  for (const rules::Rule& rule : world.program.rules) {
    for (const rules::RuleIndex child : rule.children) inside[static_cast<std::size_t>(child)] = true;
  }
  const auto ask = [&](rules::RuleIndex speaks, rules::RuleIndex asked) {
    bool known_how = true;
    for (Want& want : wants_of(world, asked, known_how)) {
      want.rule = speaks;
      wants.push_back(want);
    }
    if (!known_how) unknown_how.push_back(speaks);
  };
  for (std::size_t i = 0; i < world.program.rules.size(); ++i) {
    const auto index = static_cast<rules::RuleIndex>(i);
    const rules::Rule& rule = world.program.rules[i];
    if (inside[i]) continue;
    if (rule.children.empty()) {
      ask(index, index);
    } else if (world.live[i].status != rules::LiveStatus::Met) {
      // one way is enough where any will do
      for (const rules::RuleIndex child : rule.children) {
        ask(index, child);
        if (rule.kind == RuleKind::AnyOf) break;
      }
    }
  }
  return wants;
}

event::ThingId rotor_to_fit(const GuideWorld& world) {
  const bench::BenchSetup& setup = world.bench.setup();
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    const auto thing = static_cast<event::ThingId>(i);
    if (setup.things[i].kind == bench::ThingKind::Rotor && thing != setup.fitted_rotor) return thing;
  }
  return setup.fitted_rotor;
}

}  // namespace proofstand::report
