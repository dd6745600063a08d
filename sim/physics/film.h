// Films: how matter goes over at a contact, dries, and what it costs in friction. Conserved: what one body loses the
// other gains.
#pragma once

#include <cstddef>
#include <cstdint>

namespace proofstand::physics {

enum class Species : std::uint8_t { SkinGrease, Oil, Grease, Locker, BrakeFluid, Alcohol, Dust };
inline constexpr std::size_t kSpeciesCount = 7;

/// Kinds of bodies that meet.
enum class Body : std::uint8_t { Skin, Glove, Metal, DryRag, WetRag, Pad, Tool, BenchTop };

/// Shares of the loads that go over in one firm contact of about a second.
struct Exchange {
  double there_1 = 0.0;  ///< from the first body to the second
  double back_1 = 0.0;   ///< from the second to the first; both together <= 1
};
/// Table for two bodies and a species; wet: alcohol still on either, which smears three times as much back.
/// source: directions and orders of magnitude from forensic and hygiene literature, figures common practice, no source
Exchange exchange_of(Body first, Body second, Species species, bool wet);

/// Mass per area of two bodies over the area they share [kg/m²].
struct Loads {
  double first_kg_m2 = 0.0;
  double second_kg_m2 = 0.0;
};
/// After one contact over an area [m²], when the loads are spread over cells of the given areas [m²] (>= area). The sum
/// of load × cell area is kept; neither goes below zero. source: conservation
Loads exchanged(Loads before, Exchange exchange, double area_m2, double first_cell_m2, double second_cell_m2);

/// Film covers this share of the surface [1]: 1 − exp(−ρ/ρ0), ρ0 20 µg/cm². source: own (common practice, no source)
double covered_1(double load_kg_m2);
inline constexpr double kCoveringLoad_kg_m2 = 20e-5;
/// Friction left on a surface [1] with loads by species: each covered share weighs with its own factor. loads_kg_m2
/// [kSpeciesCount] source: factors from memory (boundary friction over dry)
double friction_left_1(const double (&loads_kg_m2)[kSpeciesCount]);
/// Factor of a full film of a species [1].
double film_factor_1(Species species);
/// Share of a film that oily species cover fully from here on [kg/m²]: counts as an oil film. source: own (common
/// practice, no source)
inline constexpr double kOilyLoad_kg_m2 = 20e-5;
/// A rag's fold above this counts as dirty [kg/m²]. source: common practice, no source (50 µg/cm²)
inline constexpr double kDirtyFold_kg_m2 = 50e-5;

/// Mass flux [kg/(m² s)] at which isopropanol leaves a wet surface in still air at 20 °C. source: mass-transfer form k
/// p M/(R T); vapour pressure published at 25 °C, at 20 °C from memory
double alcohol_flux_kg_m2_s();
/// The same for water at a relative humidity [1].
double water_flux_kg_m2_s(double humidity_1);
/// Load left [kg/m²] after a time [s], drying at a constant flux. source: the same
double dried_kg_m2(double load_kg_m2, double flux_kg_m2_s, double time_s);
/// Time [s] a film of a thickness [m] and density [kg/m³] needs. source: the same
double drying_time_s(double thickness_m, double density_kg_m3, double flux_kg_m2_s);
/// Thickness [m] of a mass on an area.
double film_thickness_m(double mass_kg, double area_m2, double density_kg_m3);

/// Typical starting loads [kg/m²]: unwashed mechanic's skin 15, washed 3, fresh glove 0.5 µg/cm². source: own (common
/// practice, no source)
inline constexpr double kWorkedSkin_kg_m2 = 15e-5;
inline constexpr double kWashedSkin_kg_m2 = 3e-5;
inline constexpr double kFreshGlove_kg_m2 = 0.5e-5;
/// Area under one finger tip, light and firm [m²]. source: from memory
inline constexpr double kTouchLight_m2 = 2e-4;
inline constexpr double kTouchFirm_m2 = 3.5e-4;

}  // namespace proofstand::physics
