// Films of grease, oil and fluids on surfaces: what moves in a contact, and what a film does to friction.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>
#include <tuple>

namespace proofstand::physics {

/// What a film is made of.
enum class Species : unsigned char { SkinGrease, Oil, Grease, Locker, BrakeFluid, Alcohol, Dust };
inline constexpr std::size_t kSpeciesCount = 7;
std::string_view species_words(Species species);
/// Areal load of each species. [kg/m2]
using FilmLoads = std::array<double, 7>;
static_assert(std::tuple_size_v<FilmLoads> == kSpeciesCount);
/// One microgram a square centimetre in kg/m2.
inline constexpr double kMicrogramPerCm2_kg_m2 = 1e-5;

/// What takes part in a contact.
enum class FilmBody : unsigned char { Skin, Glove, Metal, DryRag, WetRag, Pad, Tool, Bench };

/// Shares of the load that a firm contact of a second moves, each way; there + back <= 1.
struct TransferShares {
  double there_1 = 0.0;
  double back_1 = 0.0;
};
/// Shares from first to second and back, by species; a pair unknown to the table is looked up the other way round, else
/// 0.1 each way.
/// source  common practice, no source (orders of magnitude; one published saliva-to-finger study supports < 10 % to 50
/// %)
TransferShares transfer_shares(FilmBody first, FilmBody second, Species species);

/// Two cells after a contact.
struct FilmPair {
  double first_kg_m2 = 0.0;
  double second_kg_m2 = 0.0;
  double moved_kg = 0.0;  ///< from first to second, net
};
/// Contact over an area: dm = A (there rho_1 - back rho_2); mass is kept, nothing gets below zero.
/// first_area_m2, second_area_m2 >= area_m2 > 0
/// strength_1  [1] 0..1, light or short contacts move less
/// source  conserved transfer, own derivation
FilmPair exchange(double first_kg_m2, double first_area_m2, double second_kg_m2, double second_area_m2, double area_m2,
                  const TransferShares& shares, double strength_1 = 1.0);

/// Load that covers 63 % of a surface [kg/m2]: 20 ug/cm2. common practice, no source
inline constexpr double kCoverLoad_kg_m2 = 20.0 * kMicrogramPerCm2_kg_m2;
/// Load of a rag's face above which it counts as dirty [kg/m2]: 50 ug/cm2. common practice, no source
inline constexpr double kDirtyRag_kg_m2 = 50.0 * kMicrogramPerCm2_kg_m2;
/// Usual loads [kg/m2] of unwashed and washed skin and a fresh glove: 15, 3, 0.5 ug/cm2. common practice, no source
inline constexpr double kSkinLoad_kg_m2 = 15.0 * kMicrogramPerCm2_kg_m2;
inline constexpr double kWashedSkinLoad_kg_m2 = 3.0 * kMicrogramPerCm2_kg_m2;
inline constexpr double kGloveLoad_kg_m2 = 0.5 * kMicrogramPerCm2_kg_m2;
/// Area of a thumb pressed lightly and firmly [m2]. from memory
inline constexpr double kThumbLight_m2 = 2.0e-4;
inline constexpr double kThumbFirm_m2 = 3.5e-4;

/// Share of a surface that a load covers: 1 - exp(-rho/rho_0). [1] 0..1
double covered_1(double load_kg_m2);
/// Friction under a full film of a species, of clean friction. [1] source: skin 0.6 common practice, no source; oil
/// 0.35 from memory; alcohol, dust own
double full_film_factor_1(Species species);
/// Friction factor of a mixed film: the covered share slides on the film, species weighed by load. [1] 0..1
/// source  own derivation
double film_friction_factor_1(const FilmLoads& loads_kg_m2);
/// Thickness of a film. density_kg_m3 > 0. [m]
double film_thickness_m(double load_kg_m2, double density_kg_m3);
/// What is left of a film covering share after n wipes that each take eta of it. [1]
double share_after_wipes_1(double share_1, double taken_1, int wipes);

}  // namespace proofstand::physics
