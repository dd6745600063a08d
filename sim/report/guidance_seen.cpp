#include "sim/report/guidance_seen.h"

#include "sim/base/assert.h"
#include "sim/report/record_fields.h"

namespace proofstand::report {
namespace {

constexpr double kDry_1 = 0.01;  // share of a face that may still shine

// a record as whoever did it knows it: what only the bench knows cannot be asked for
class Felt {
 public:
  Felt(const event::Vocabulary& vocabulary, const event::Record& record)
      : kind_(vocabulary.kinds[record.kind]), fields_(vocabulary, record) {}

  [[nodiscard]] bool is(std::string_view kind) const { return fields_.is(kind); }
  [[nodiscard]] base::Tick tick() const { return fields_.tick(); }
  [[nodiscard]] double number(std::string_view field) const { return fields_.value_or(checked(field), 0.0); }
  [[nodiscard]] bool flag(std::string_view field) const { return fields_.flag(checked(field)); }
  [[nodiscard]] std::string word(std::string_view field) const { return fields_.word(checked(field)); }
  [[nodiscard]] std::optional<std::size_t> index(std::string_view field) const { return fields_.index(checked(field)); }

 private:
  [[nodiscard]] std::string_view checked(std::string_view field) const {
    const auto at = event::Vocabulary::find_field(kind_, field);
    STAND_ASSERT(at && kind_.fields[*at].standing == event::Standing::Felt);
    return field;
  }
  const event::Kind& kind_;
  RecordFields fields_;
};

// face 0 is the printed one
int face_of(const std::string& part) {
  if (part == "outer_track") return 0;
  return part == "inner_track" ? 1 : -1;
}

class Remembering {
 public:
  Remembering(const bench::Bench& bench, Seen& seen) : bench_(bench), seen_(seen) {}

  void take(const event::Record& record) {
    const Felt felt(bench_.vocabulary(), record);
    if (felt.is("inspected") || felt.is("measured") || felt.is("watched_runout")) return look(felt);
    if (felt.is("wiped")) return wipe(felt);
    if (felt.is("touched") || felt.is("laid_down")) return soil(felt);
    if (felt.is("applied")) return apply(felt);
    if (felt.is("card_length") || felt.is("card_torque") || felt.is("card_choice") || felt.is("card_note")) {
      return write(felt);
    }
    if (felt.is("rotor_on")) {
      seen_.rotor_on_tick = felt.tick();
      return forget_watching();
    }
    if (SeenBolt* bolt = bolt_of(felt); bolt != nullptr) turn(felt, *bolt);
  }

 private:
  SeenBolt* bolt_of(const Felt& felt) {
    static constexpr std::string_view about_bolts[] = {"cracked", "loosened",  "bolt_out",      "started",
                                                       "snugged", "tightened", "thread_cleaned"};
    for (const std::string_view kind : about_bolts) {
      if (!felt.is(kind)) continue;
      const auto at = felt.index("bolt");
      return at && *at < seen_.bolts.size() ? &seen_.bolts[*at] : nullptr;
    }
    return nullptr;
  }

  void turn(const Felt& felt, SeenBolt& bolt) {
    if (felt.is("thread_cleaned")) {
      bolt.thread_picked = true;
    } else if (felt.is("started")) {
      bolt = {bolt.sight, false, felt.flag("turned_back"), false, false, 0.0, bolt.boss_picked, bolt.boss_wiped, true};
      forget_watching();
    } else if (felt.is("bolt_out") || felt.is("loosened") || felt.is("cracked")) {
      bolt.tight = bolt.snug = bolt.held_at_snug = false;
      bolt.clicked_nm = 0.0;
      if (felt.is("bolt_out")) bolt.turned_back = false;
      forget_watching();
    } else if (felt.is("snugged")) {
      bolt.snug = bolt.tight = true;
      bolt.held_at_snug = felt.flag("rotor_held");
    } else if (felt.is("tightened")) {
      bolt.snug = bolt.tight = true;
      if (felt.number("clicks") >= 1.0) bolt.clicked_nm = felt.number("setting");
    }
  }

  void look(const Felt& felt) {
    const auto rotor = felt.index("rotor");
    const event::ThingId thing = rotor ? rotor_thing(bench_.setup(), *rotor) : event::kNoThing;
    if (felt.is("inspected")) {
      const auto bolt = felt.index("bolt");
      if (felt.word("with") == "pick" && felt.word("part") == "seat" && bolt && *bolt < seen_.bolts.size()) {
        seen_.bolts[*bolt].boss_picked = true;
      }
    } else if (thing != event::kNoThing) {
      const bool turn = felt.is("watched_runout") && felt.number("turns") >= 1.0;
      if (turn) seen_.watched[event::index_of(thing)] = true;
      if (felt.is("measured")) seen_.measured[event::index_of(thing)] = true;
    }
  }

  void wipe(const Felt& felt) {
    const std::string part = felt.word("part");
    const int face = face_of(part);
    if (face >= 0 && felt.flag("solvent") && felt.number("coverage") >= 0.5) {
      if (const auto rotor = felt.index("rotor"))
        wiped_[static_cast<std::size_t>(face)] = rotor_thing(bench_.setup(), *rotor);
    }
    if (part != "seat") return;
    const auto bolt = felt.index("bolt");
    if (!bolt) seen_.seat_wiped = true;
    if (bolt && *bolt < seen_.bolts.size()) seen_.bolts[*bolt].boss_wiped = true;
  }

  void soil(const Felt& felt) {
    const auto rotor = felt.index("rotor");
    if (!rotor) return;
    int face = -1;
    if (felt.is("laid_down")) face = felt.word("face") == "outer" ? 0 : 1;
    if (felt.is("touched") && felt.word("skin") == "bare") face = face_of(felt.word("part"));
    if (face >= 0 && wiped_[static_cast<std::size_t>(face)] == rotor_thing(bench_.setup(), *rotor)) {
      wiped_[static_cast<std::size_t>(face)] = event::kNoThing;
    }
  }

  void apply(const Felt& felt) {
    const auto thing = felt.index("thing");
    const bool locker = felt.word("fluid") == "locker";
    if (locker && thing && *thing < seen_.locker_on.size()) seen_.locker_on[*thing] = true;
    const int face = face_of(felt.word("part"));
    if (face >= 0 && felt.word("fluid") != "alcohol") wiped_[static_cast<std::size_t>(face)] = event::kNoThing;
  }

  void write(const Felt& felt) {
    const auto entry = felt.index("entry");
    if (!entry || *entry >= seen_.card.size()) return;
    seen_.card[*entry].written = true;
    if (felt.is("card_choice")) seen_.card[*entry].word = felt.index("word").value_or(0);
  }

  void forget_watching() {
    const bench::ThingId first = bench_.setup().fitted_rotor;
    for (std::size_t i = 0; i < seen_.watched.size(); ++i) {
      if (static_cast<event::ThingId>(i) != first) seen_.watched[i] = false;
    }
  }

 public:
  void finish() {
    for (std::size_t face = 0; face < 2; ++face) {
      seen_.face_wiped[face] = seen_.rotor != event::kNoThing && wiped_[face] == seen_.rotor;
    }
  }

 private:
  const bench::Bench& bench_;
  Seen& seen_;
  std::array<event::ThingId, 2> wiped_{event::kNoThing, event::kNoThing};
};

bool is_gloved(const bench::Bench& bench, std::string_view fluent) {
  bool gloved = false;
  const auto kind = bench.vocabulary().find_kind(fluent);
  for (const event::Record& record : bench.events()) {
    if (kind && record.kind == *kind) gloved = RecordFields(bench.vocabulary(), record).word("skin") == "gloved";
  }
  return gloved;
}

void sense_now(const bench::Bench& bench, Seen& seen) {
  seen.rotor = bench::see_rotor_on_hub(bench);
  seen.printed_out = bench::see_printed_out(bench);
  seen.wheel = bench::see_wheel(bench);
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) {
    const bench::HandSense sense = bench::sense_hand(bench, hand);
    const bool fingers = sense.stage == bench::HandStage::At && sense.holding == event::kNoThing;
    if (fingers && sense.dead_stop && !sense.bears) seen.hand_on_rotor = seen.held_against = true;
  }
  for (const bool printed : {true, false}) {
    if (seen.rotor != event::kNoThing && bench::see_wet_share_1(bench, seen.rotor, printed) > kDry_1) seen.wet = true;
  }
  seen.gloved = is_gloved(bench, "skin_left") && is_gloved(bench, "skin_right");
}

}  // namespace

std::size_t Seen::snug_count() const {
  std::size_t n = 0;
  for (const SeenBolt& bolt : bolts) n += bolt.snug ? 1 : 0;
  return n;
}

bool Seen::snugged_unheld() const {
  bool held = false;
  for (const SeenBolt& bolt : bolts) held = held || bolt.held_at_snug;
  return snug_count() > 0 && !held;
}

event::ThingId rotor_thing(const bench::BenchSetup& setup, std::size_t item) {
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    if (setup.things[i].kind == bench::ThingKind::Rotor && item-- == 0) return static_cast<event::ThingId>(i);
  }
  return event::kNoThing;
}

Seen compute_seen(const bench::Bench& bench) {
  const bench::BenchSetup& setup = bench.setup();
  Seen seen;
  seen.bolts.resize(setup.bolt_count());
  seen.card.resize(setup.card.size());
  seen.locker_on.resize(setup.things.size());
  seen.watched.resize(setup.things.size());
  seen.measured.resize(setup.things.size());
  for (std::size_t b = 0; b < seen.bolts.size(); ++b) {
    seen.bolts[b].sight = bench::see_bolt(bench, static_cast<event::BoltId>(b));
    // what sat there when work began has to be cracked first
    seen.bolts[b].tight = b < setup.fitted_bolts.size() && setup.fitted_bolts[b] != event::kNoThing;
  }
  Remembering remembering(bench, seen);
  for (const event::Record& record : bench.events()) remembering.take(record);
  sense_now(bench, seen);
  remembering.finish();
  return seen;
}

}  // namespace proofstand::report
