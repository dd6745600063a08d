#include "sim/physics/film.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

struct ContactRow {
  FilmBody first{};
  FilmBody second{};
  TransferShares thick;  // grease and what clings like it
  TransferShares thin;   // oil and what runs like it
};

constexpr ContactRow kContacts[] = {
    {FilmBody::Skin, FilmBody::Metal, {0.40, 0.10}, {0.50, 0.30}},
    {FilmBody::Metal, FilmBody::DryRag, {0.30, 0.02}, {0.50, 0.05}},
    {FilmBody::Metal, FilmBody::WetRag, {0.80, 0.05}, {0.75, 0.08}},
    {FilmBody::Metal, FilmBody::Pad, {0.30, 0.10}, {0.40, 0.20}},
    {FilmBody::Glove, FilmBody::Metal, {0.15, 0.15}, {0.40, 0.40}},
    {FilmBody::Tool, FilmBody::Metal, {0.20, 0.20}, {0.40, 0.40}},
    {FilmBody::Bench, FilmBody::Metal, {0.10, 0.10}, {0.40, 0.30}},
    {FilmBody::Skin, FilmBody::DryRag, {0.25, 0.05}, {0.40, 0.10}},
    {FilmBody::Skin, FilmBody::WetRag, {0.60, 0.05}, {0.60, 0.08}},
    {FilmBody::Glove, FilmBody::DryRag, {0.30, 0.02}, {0.50, 0.05}},
    {FilmBody::Glove, FilmBody::WetRag, {0.80, 0.05}, {0.75, 0.08}},
    {FilmBody::Tool, FilmBody::DryRag, {0.30, 0.02}, {0.50, 0.05}},
    {FilmBody::Tool, FilmBody::WetRag, {0.80, 0.05}, {0.75, 0.08}},
    {FilmBody::Skin, FilmBody::Tool, {0.40, 0.10}, {0.50, 0.30}},
    {FilmBody::Glove, FilmBody::Tool, {0.15, 0.15}, {0.40, 0.40}},
};

bool runs(Species species) {
  return species == Species::Oil || species == Species::BrakeFluid || species == Species::Alcohol;
}

}  // namespace

std::string_view species_words(Species species) {
  constexpr std::array<std::string_view, kSpeciesCount> kWords = {"skin grease", "oil",     "grease", "threadlocker",
                                                                  "brake fluid", "alcohol", "dust"};
  return kWords[static_cast<std::size_t>(species)];
}

TransferShares transfer_shares(FilmBody first, FilmBody second, Species species) {
  for (const ContactRow& row : kContacts) {
    const TransferShares& shares = runs(species) ? row.thin : row.thick;
    if (row.first == first && row.second == second) return shares;
    if (row.first == second && row.second == first) return {shares.back_1, shares.there_1};
  }
  return {0.10, 0.10};
}

FilmPair exchange(double first_kg_m2, double first_area_m2, double second_kg_m2, double second_area_m2, double area_m2,
                  const TransferShares& shares, double strength_1) {
  STAND_ASSERT(area_m2 > 0.0 && first_area_m2 >= area_m2 && second_area_m2 >= area_m2);
  STAND_ASSERT(shares.there_1 >= 0.0 && shares.back_1 >= 0.0 && shares.there_1 + shares.back_1 <= 1.0);
  const double strength = base::clamp_1(strength_1, 0.0, 1.0);
  const double wish_kg = strength * area_m2 * (shares.there_1 * first_kg_m2 - shares.back_1 * second_kg_m2);
  const double moved_kg = base::clamp_1(wish_kg, -second_kg_m2 * second_area_m2, first_kg_m2 * first_area_m2);
  FilmPair pair{first_kg_m2 - moved_kg / first_area_m2, second_kg_m2 + moved_kg / second_area_m2, moved_kg};
  // an emptied giver may end a rounding below nothing
  if (pair.first_kg_m2 < 0.0) pair.first_kg_m2 = 0.0;
  if (pair.second_kg_m2 < 0.0) pair.second_kg_m2 = 0.0;
  return pair;
}

double covered_1(double load_kg_m2) { return 1.0 - base::exp_1(-load_kg_m2 / kCoverLoad_kg_m2); }

double full_film_factor_1(Species species) {
  constexpr std::array<double, kSpeciesCount> kFactors_1 = {0.60, 0.35, 0.40, 0.50, 0.35, 1.0, 0.90};
  return kFactors_1[static_cast<std::size_t>(species)];
}

double film_friction_factor_1(const FilmLoads& loads_kg_m2) {
  double total_kg_m2 = 0.0;
  double weighed_kg_m2 = 0.0;
  for (std::size_t i = 0; i < kSpeciesCount; ++i) {
    // alcohol is gone within half a minute and leaves nothing: it is no film to brake on
    if (static_cast<Species>(i) == Species::Alcohol) continue;
    total_kg_m2 += loads_kg_m2[i];
    weighed_kg_m2 += loads_kg_m2[i] * full_film_factor_1(static_cast<Species>(i));
  }
  if (total_kg_m2 <= 0.0) return 1.0;
  return 1.0 - covered_1(total_kg_m2) * (1.0 - weighed_kg_m2 / total_kg_m2);
}

double film_thickness_m(double load_kg_m2, double density_kg_m3) {
  STAND_ASSERT(density_kg_m3 > 0.0);
  return load_kg_m2 / density_kg_m3;
}

double share_after_wipes_1(double share_1, double taken_1, int wipes) {
  double left_1 = share_1;
  for (int i = 0; i < wipes; ++i) left_1 *= 1.0 - taken_1;
  return left_1;
}

}  // namespace proofstand::physics
