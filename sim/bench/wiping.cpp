#include "sim/bench/wiping.h"

#include <cmath>

#include "sim/base/math.h"
#include "sim/bench/film_shares.h"
#include "sim/bench/wipe_patch.h"

namespace proofstand::bench {
namespace {

// half of what three fingers press the cloth flat over; wider, and one pass would clean arms and track alike
constexpr double kHalfAcross_m = 0.009;
constexpr double kHalfAlong_m = 0.012;
constexpr double kHandSpeed_m_s = 0.250;
// a rag pressed less than this only hovers
constexpr double kTouchingPress_n = 0.3;
// from this press on a pass takes all that a pass can take
constexpr double kFirmPress_n = 10.0;
constexpr double kMostAngle_rad = 1e4;

std::size_t at(Film film) { return static_cast<std::size_t>(film); }

/// Cells under the rag as a rectangle of sectors, counted without wrapping, by rings.
struct Patch {
  std::int64_t sector_lo = 0, sector_hi = -1, ring_lo = 0, ring_hi = -1;
  [[nodiscard]] bool holds(std::int64_t sector, std::int64_t ring) const {
    return sector >= sector_lo && sector <= sector_hi && ring >= ring_lo && ring <= ring_hi;
  }
};

Patch patch_under(const TrackGrid& grid, double radius_m, double angle_rad) {
  constexpr double sector_rad = base::kTwoPi / static_cast<double>(kSectors);
  const double nearest_m = radius_m < grid.inner_m ? grid.inner_m : radius_m;
  const double half_rad = kHalfAlong_m / nearest_m;
  const auto whole = [](double x) { return static_cast<std::int64_t>(std::floor(x)); };
  Patch patch;
  patch.sector_lo = -whole(-((angle_rad - half_rad) / sector_rad - 0.5));
  patch.sector_hi = whole((angle_rad + half_rad) / sector_rad - 0.5);
  patch.ring_lo = -whole(-((radius_m - kHalfAcross_m - grid.inner_m) / grid.ring_width_m() - 0.5));
  patch.ring_hi = whole((radius_m + kHalfAcross_m - grid.inner_m) / grid.ring_width_m() - 0.5);
  if (patch.ring_lo < 0) patch.ring_lo = 0;
  if (patch.ring_hi > static_cast<std::int64_t>(kRings) - 1) patch.ring_hi = static_cast<std::int64_t>(kRings) - 1;
  return patch;
}

// what newly came under the rag since the tick before meets the fold once
void wipe_face(const World& world, FaceState& face, const TrackGrid& grid, FilmCell& fold, const Patch& now,
               const Patch& before, bool had_before, double strength_1, SweptCells& swept) {
  bool any = false;
  for (std::int64_t sector = now.sector_lo; sector <= now.sector_hi; ++sector) {
    constexpr auto sectors = static_cast<std::int64_t>(kSectors);
    const auto wrapped = static_cast<std::size_t>(((sector % sectors) + sectors) % sectors);
    for (std::int64_t ring = now.ring_lo; ring <= now.ring_hi; ++ring) {
      if (had_before && before.holds(sector, ring)) continue;
      const std::size_t index = wrapped * kRings + static_cast<std::size_t>(ring);
      FilmCell& cell = face.cells[index];
      meet_rag(cell, grid.cell_area_m2(static_cast<std::size_t>(ring)), fold, strength_1, world.state.tick);
      swept[index / 64] |= std::uint64_t{1} << (index % 64);
      any = true;
    }
  }
  if (any) mark_changed(face);
}

void wipe_track(const World& world, const HandState& hand, ContactState& contact, FilmCell& fold, double strength_1) {
  const Thing& what = world.thing(contact.thing);
  RotorSurfaces& surfaces = world.state.rotors[what.part];
  const TrackGrid grid = track_grid(world.setup.rotors[what.part]);
  const auto face = static_cast<std::size_t>(face_of(contact.place));
  const Patch now = patch_under(grid, hand.face_radius_m, hand.face_angle_rad);
  const Patch before = patch_under(grid, contact.last_radius_m, contact.last_angle_rad);
  wipe_face(world, surfaces.faces[face], grid, fold, now, before, contact.has_last, strength_1, contact.swept);
  if (!contact.both_faces) return;
  // seen at the other face the same spot lies at the mirrored angle
  const Patch now_other = patch_under(grid, hand.face_radius_m, -hand.face_angle_rad);
  const Patch before_other = patch_under(grid, contact.last_radius_m, -contact.last_angle_rad);
  wipe_face(world, surfaces.faces[1 - face], grid, fold, now_other, before_other, contact.has_last, strength_1,
            contact.swept_other);
}

}  // namespace

void meet_rag(FilmCell& metal, double area_m2, FilmCell& fold, double strength_1, base::Tick now) {
  constexpr auto alcohol = static_cast<std::size_t>(Film::Alcohol);
  rebase_alcohol(metal, now);
  const double before = metal.load_kg_m2[alcohol];
  const bool wet = fold.load_kg_m2[alcohol] >= kWetFold_kg_m2 || before > 0.0;
  // of a bench top the rag covers only a part at a time
  const double met_m2 = area_m2 < kFoldArea_m2 ? area_m2 : kFoldArea_m2;
  exchange_film(metal.load_kg_m2, area_m2, fold.load_kg_m2, kFoldArea_m2, met_m2, metal_under_rag(wet), strength_1);
  // however wet the rag, what it leaves behind it is a thin film
  const double most = before > kWipedWet_kg_m2 ? before : kWipedWet_kg_m2;
  const double over = metal.load_kg_m2[alcohol] - most;
  if (over <= 0.0) return;
  metal.load_kg_m2[alcohol] = most;
  fold.load_kg_m2[alcohol] += over * (area_m2 / kFoldArea_m2);
}

void step_face(HandState& hand, double full_press_n) {
  const double aim_radius = base::clamp_1(hand.aim_radius_m, 0.0, 1.0);
  const double aim_angle = base::clamp_1(hand.aim_angle_rad, -kMostAngle_rad, kMostAngle_rad);
  const double aim_press = base::clamp_1(hand.aim_press_n, 0.0, full_press_n);
  const double step_m = kHandSpeed_m_s / static_cast<double>(base::kTicksPerSecond);
  const double dr = aim_radius - hand.face_radius_m;
  const double da = aim_angle - hand.face_angle_rad;
  const double arc = da * 0.5 * (aim_radius + hand.face_radius_m);
  const double way = base::sqrt_1(dr * dr + arc * arc);
  if (way <= step_m) {
    hand.face_radius_m = aim_radius;
    hand.face_angle_rad = aim_angle;
  } else {
    hand.face_radius_m += dr * (step_m / way);
    hand.face_angle_rad += da * (step_m / way);
  }
  // press comes and goes as the level of a pull does: four steps of 512 up a tick, sixteen down
  const double rise = full_press_n * (4.0 / 512.0);
  const double fall = full_press_n * (16.0 / 512.0);
  hand.face_press_n = base::clamp_1(aim_press, hand.face_press_n - fall, hand.face_press_n + rise);
}

void begin_wipe(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  if (hand.holding == event::kNoThing || world.kind(hand.holding) != ThingKind::Rag) return;
  end_wipe(world, hand_id);
  ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  RagState& rag = world.state.rags[world.thing(hand.holding).part];
  rebase_alcohol(rag.fold, world.state.tick, kRagSlowness_1);
  contact = ContactState{};
  contact.open = true;
  contact.wiping = true;
  contact.thing = hand.at_thing;
  contact.place = hand.at_place;
  contact.bolt = hand.at_bolt;
  contact.since = world.state.tick;
  contact.load_before_kg_m2 = fouling_kg_m2(rag.fold.load_kg_m2);
  contact.fresh_fold = !rag.fold_used;
  contact.solvent = rag.fold.load_kg_m2[at(Film::Alcohol)] >= kWetFold_kg_m2;
  contact.both_faces = hand.grip == Grip::Pinched && face_of(contact.place) >= 0;
  hand.face_radius_m = base::clamp_1(hand.u_1, 0.0, 1.0);
  hand.face_angle_rad = base::wrap_two_pi(hand.v_1);
  hand.face_press_n = 0.0;
  hand.aim_radius_m = hand.face_radius_m;
  hand.aim_angle_rad = hand.face_angle_rad;
  hand.aim_press_n = 0.0;
}

void step_wipe(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  if (!contact.open || !contact.wiping || hand.holding == event::kNoThing) return;
  constexpr double full_press_n = 30.0;
  step_face(hand, full_press_n);
  if (hand.face_press_n < kTouchingPress_n) {
    contact.has_last = false;
    return;
  }
  RagState& rag = world.state.rags[world.thing(hand.holding).part];
  const double strength_1 = base::clamp_1(hand.face_press_n / kFirmPress_n, 0.1, 1.0);
  contact.press_sum_n += hand.face_press_n;
  ++contact.press_count;
  double moved_m = 0.0;
  if (contact.has_last) {
    const double dr = hand.face_radius_m - contact.last_radius_m;
    const double arc = (hand.face_angle_rad - contact.last_angle_rad) * hand.face_radius_m;
    moved_m = base::sqrt_1(dr * dr + arc * arc);
    contact.path_m += moved_m;
  }
  if (!contact.has_last || moved_m > 0.0) {
    rag.fold_used = true;
    rebase_alcohol(rag.fold, world.state.tick, kRagSlowness_1);
    if (rag.fold.load_kg_m2[at(Film::Alcohol)] >= kWetFold_kg_m2) contact.solvent = true;
    if (world.kind(contact.thing) == ThingKind::Rotor && face_of(contact.place) >= 0) {
      wipe_track(world, hand, contact, rag.fold, strength_1);
    } else {
      wipe_patch(world, contact, rag.fold, strength_1);
    }
  }
  contact.has_last = true;
  contact.last_radius_m = hand.face_radius_m;
  contact.last_angle_rad = hand.face_angle_rad;
}

bool slid_on(const World& world, HandId hand_id) {
  const ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  return contact.open && contact.wiping && contact.has_last &&
         contact.last_angle_rad != world.hand(hand_id).face_angle_rad;
}

void slide_under_hands(const World& world, double delta_rad) {
  const SeatState& seat = world.state.seat;
  if (seat.rotor == event::kNoThing) return;
  for (std::size_t i = 0; i < event::kHands; ++i) {
    const ContactState& contact = world.state.contacts[i];
    if (!contact.open || !contact.wiping || contact.thing != seat.rotor) continue;
    const bool printed_frame = face_of(contact.place) != 1;
    const double back = printed_frame == seat.printed_out ? -delta_rad : delta_rad;
    world.state.hands[i].face_angle_rad += back;
    world.state.hands[i].aim_angle_rad += back;
  }
}

double swept_share_1(const ContactState& contact, bool other_face) {
  int count = 0;
  for (std::uint64_t word : other_face ? contact.swept_other : contact.swept) {
    for (; word != 0; word &= word - 1) ++count;
  }
  return static_cast<double>(count) / static_cast<double>(kSectors * kRings);
}

}  // namespace proofstand::bench
