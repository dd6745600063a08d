#include "sim/report/moment.h"

#include <algorithm>

#include "sim/report/guidance_wants.h"
#include "sim/report/record_fields.h"

namespace proofstand::report {
namespace {

using event::PlaceKind;

constexpr std::size_t kMostMoments = 8;

std::optional<PlaceKind> place_of_part(std::string_view part) {
  struct Row {
    std::string_view part;
    PlaceKind place;
  };
  static constexpr Row rows[] = {
      {"outer_track", PlaceKind::TrackOuter},
      {"inner_track", PlaceKind::TrackInner},
      {"edge", PlaceKind::Edge},
      {"arms", PlaceKind::Arms},
      {"inner_edge", PlaceKind::InnerEdge},
      {"outer_carrier", PlaceKind::CarrierOuter},
      {"inner_carrier", PlaceKind::CarrierInner},
      {"bolt_head", PlaceKind::BoltHead},
      {"hole", PlaceKind::Hole},
      {"recess", PlaceKind::BoltRecess},
      {"tyre", PlaceKind::Tyre},
      {"rim", PlaceKind::Rim},
      {"track", PlaceKind::TrackOuter},
      {"lip", PlaceKind::Edge},
  };
  for (const Row& row : rows) {
    if (row.part == part) return row.place;
  }
  return std::nullopt;
}

bool of_kinds(const RecordFields& record, std::initializer_list<std::string_view> kinds) {
  return std::find(kinds.begin(), kinds.end(), record.kind()) != kinds.end();
}

// where a record happened, or what it is about
std::optional<GuideTarget> place_of(const bench::BenchSetup& setup, const RecordFields& record) {
  const auto thing_of = [&](bench::ThingKind kind, PlaceKind place) {
    return GuideTarget{bench::first_of(setup, kind), place, event::kNoBolt};
  };
  const std::optional<std::size_t> bolt = record.index("bolt");
  if (bolt) {
    PlaceKind place = PlaceKind::BoltRecess;
    const std::string part = record.word("part");
    if (of_kinds(record, {"started", "thread_cleaned", "bolt_out"}) || part == "hole") place = PlaceKind::Hole;
    if (record.is("left_boss") || part == "seat") place = PlaceKind::Boss;
    return GuideTarget{bench::first_of(setup, bench::ThingKind::Wheel), place, static_cast<event::BoltId>(*bolt)};
  }
  if (const auto rotor = record.index("rotor")) {
    PlaceKind place = place_of_part(record.word("part")).value_or(PlaceKind::Body);
    const std::string face = record.word("face");
    if (!face.empty()) place = face == "outer" ? PlaceKind::TrackOuter : PlaceKind::TrackInner;
    if (record.is("watched_runout")) place = PlaceKind::TrackOuter;
    return GuideTarget{rotor_thing(setup, *rotor), place, event::kNoBolt};
  }
  if (record.index("entry")) return thing_of(bench::ThingKind::Card, PlaceKind::Body);
  if (of_kinds(record, {"wheel_moved", "wheel_spun"})) return thing_of(bench::ThingKind::Wheel, PlaceKind::Tyre);
  if (record.is("left_joint") || record.word("part") == "seat") {
    return thing_of(bench::ThingKind::Wheel, PlaceKind::HubSeat);
  }
  for (const std::string_view field : {"thing", "tool", "instrument"}) {
    if (const auto thing = record.index(field)) {
      return GuideTarget{static_cast<event::ThingId>(*thing), PlaceKind::Body, event::kNoBolt};
    }
  }
  return std::nullopt;
}

class Finding {
 public:
  Finding(const record::Marking& marking, const rules::RuleResult& result) : marking_(marking), result_(result) {
    out_.rule = result.rule;
  }

  FindingMoments run() {
    for (const rules::Case& proof : result_.bad_cases.empty() ? result_.ok_cases : result_.bad_cases) add(proof);
    choose_plot(marking_.program.rules[static_cast<std::size_t>(result_.rule)]);
    return std::move(out_);
  }

 private:
  void add(const rules::Case& proof) {
    add(proof.anchor);
    for (const rules::Cite& cite : proof.cites) add(cite.position);
    // what never came has no moment, but a place
    const rules::Rule& rule = marking_.program.rules[static_cast<std::size_t>(result_.rule)];
    const auto bolts = marking_.program.vocabulary.find_set(event::kBoltSet);
    if (!bolts || rule.set_size != static_cast<std::int32_t>(marking_.program.vocabulary.sets[*bolts].items.size()))
      return;
    const event::ThingId wheel = bench::first_of(marking_.scenario.setup, bench::ThingKind::Wheel);
    for (const std::int64_t item : proof.missing) {
      add_place({wheel, PlaceKind::BoltRecess, static_cast<event::BoltId>(item)});
      if (!out_.bolt) out_.bolt = static_cast<std::size_t>(item);
    }
  }

  void add(rules::Position position) {
    const auto at = static_cast<std::size_t>(position);
    if (position < 0 || at >= marking_.trace.records.size() || out_.moments.size() >= kMostMoments) return;
    for (const Moment& moment : out_.moments) {
      if (moment.position == at) return;
    }
    const event::Record& record = marking_.trace.records[at];
    const RecordFields fields(marking_.program.vocabulary, record);
    Moment moment{record.tick, at, {}};
    if (const auto place = place_of(marking_.scenario.setup, fields)) {
      moment.places.push_back(*place);
      add_place(*place);
      if (place->bolt != event::kNoBolt && !out_.bolt) out_.bolt = event::index_of(place->bolt);
      const bool printed = place->place == PlaceKind::TrackOuter;
      if ((printed || place->place == PlaceKind::TrackInner) && !out_.printed_face) out_.printed_face = printed;
    }
    out_.moments.push_back(std::move(moment));
  }

  void add_place(const GuideTarget& place) {
    if (std::find(out_.places.begin(), out_.places.end(), place) == out_.places.end()) out_.places.push_back(place);
  }

  // by what the rule looks at
  void choose_plot(const rules::Rule& rule) {
    if (!rule.children.empty()) return choose_plot(marking_.program.rules[static_cast<std::size_t>(rule.children[0])]);
    if (rule.kind == rules::RuleKind::Rounds) {
      out_.plot = PlotKind::Order;
      return;
    }
    if (!rule.x.given()) return;
    const std::string& kind = marking_.program.vocabulary.kinds[rule.x.kind].name;
    std::vector<std::string_view> fields = fields_read(marking_.program, rule.x.kind, rule.x.where);
    for (const std::string_view more : fields_read(marking_.program, rule.x.kind, rule.value)) fields.push_back(more);
    const auto reads = [&](std::string_view field) {
      return std::find(fields.begin(), fields.end(), field) != fields.end();
    };
    const auto is = [&](std::initializer_list<std::string_view> kinds) {
      return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
    };
    if (is({"tightened", "clicked", "cracked", "loosened", "started", "snugged", "tool_slipped"})) {
      out_.plot = PlotKind::TorqueAngle;
    } else if (kind == "left_bolt" && (reads("preload") || reads("clamp"))) {
      out_.plot = PlotKind::Preload;
    } else if (kind == "left_bolt" && (reads("last_torque") || reads("crossed") || reads("stripped"))) {
      out_.plot = PlotKind::TorqueAngle;
    } else if (is({"left_face", "laid_down"}) || (is({"wiped", "touched", "applied"}) && out_.printed_face)) {
      out_.plot = PlotKind::FilmMap;
    } else if (is({"watched_runout", "left_boss"}) || (kind == "left_rotor" && (reads("runout") || reads("seated")))) {
      out_.plot = PlotKind::Runout;
    }
  }

  const record::Marking& marking_;
  const rules::RuleResult& result_;
  FindingMoments out_;
};

}  // namespace

std::vector<FindingMoments> compute_moments(const record::Marking& marking) {
  std::vector<FindingMoments> all;
  for (const rules::RuleResult& result : marking.report.rules) all.push_back(Finding(marking, result).run());
  return all;
}

}  // namespace proofstand::report
