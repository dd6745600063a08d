#include "sim/physics/film.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

bool oily(Species species) {
  return species == Species::Oil || species == Species::Grease || species == Species::Locker ||
         species == Species::BrakeFluid;
}

// one direction of the table: metal is always the second body here
Exchange onto_metal(Body first, bool liquid) {
  switch (first) {
    case Body::Skin:
      return liquid ? Exchange{0.50, 0.30} : Exchange{0.40, 0.10};
    case Body::Glove:
      return liquid ? Exchange{0.40, 0.40} : Exchange{0.15, 0.15};
    case Body::DryRag:
      return liquid ? Exchange{0.05, 0.50} : Exchange{0.02, 0.30};
    case Body::WetRag:
      return liquid ? Exchange{0.08, 0.75} : Exchange{0.05, 0.80};
    case Body::Pad:
      return liquid ? Exchange{0.20, 0.40} : Exchange{0.10, 0.30};
    case Body::Tool:
      return liquid ? Exchange{0.40, 0.40} : Exchange{0.20, 0.20};
    case Body::BenchTop:
      return liquid ? Exchange{0.40, 0.30} : Exchange{0.10, 0.10};
    case Body::Metal:
      return {0.20, 0.20};
  }
  return {};
}

double flux_kg_m2_s(double transfer_m_s, double pressure_pa, double molar_kg) {
  constexpr double kGas = 8.314462618;
  constexpr double kRoom_k = 293.15;
  return transfer_m_s * pressure_pa * molar_kg / (kGas * kRoom_k);
}

}  // namespace

Exchange exchange_of(Body first, Body second, Species species, bool wet) {
  const bool flipped = first == Body::Metal && second != Body::Metal;
  Exchange e = onto_metal(flipped ? second : first, oily(species) || species == Species::Alcohol);
  if (wet && e.there_1 < e.back_1) {
    // a body that cleans smears more back while alcohol stands on it
    e.there_1 = 3.0 * e.there_1 < 1.0 - e.back_1 ? 3.0 * e.there_1 : 1.0 - e.back_1;
  } else if (wet) {
    e.back_1 = 3.0 * e.back_1 < 1.0 - e.there_1 ? 3.0 * e.back_1 : 1.0 - e.there_1;
  }
  return flipped ? Exchange{e.back_1, e.there_1} : e;
}

Loads exchanged(Loads before, Exchange exchange, double area_m2, double first_cell_m2, double second_cell_m2) {
  // mass that leaves the first cell; it cannot give more than it holds, nor take more than the second holds
  double moved_kg = area_m2 * (exchange.there_1 * before.first_kg_m2 - exchange.back_1 * before.second_kg_m2);
  const double most_kg = before.first_kg_m2 * first_cell_m2;
  const double least_kg = -before.second_kg_m2 * second_cell_m2;
  moved_kg = base::clamp_1(moved_kg, least_kg, most_kg);
  return {before.first_kg_m2 - moved_kg / first_cell_m2, before.second_kg_m2 + moved_kg / second_cell_m2};
}

double covered_1(double load_kg_m2) {
  return load_kg_m2 <= 0.0 ? 0.0 : 1.0 - base::exp_1(-load_kg_m2 / kCoveringLoad_kg_m2);
}

double film_factor_1(Species species) {
  switch (species) {
    case Species::SkinGrease:
      return 0.6;
    case Species::Oil:
      return 0.35;
    case Species::Grease:
      return 0.35;
    case Species::Locker:
      return 0.5;
    case Species::BrakeFluid:
      return 0.4;
    case Species::Alcohol:
      return 0.8;
    case Species::Dust:
      return 0.95;
  }
  return 1.0;
}

double friction_left_1(const double (&loads_kg_m2)[kSpeciesCount]) {
  double left = 1.0;
  for (std::size_t i = 0; i < kSpeciesCount; ++i) {
    if (loads_kg_m2[i] <= 0.0) continue;
    left *= 1.0 - covered_1(loads_kg_m2[i]) * (1.0 - film_factor_1(static_cast<Species>(i)));
  }
  return left;
}

double alcohol_flux_kg_m2_s() {
  // transfer coefficient of water in a still room, carried over by the diffusivities' two thirds
  const double transfer_m_s = 0.005 * base::pow_1(1.0e-5 / 2.5e-5, 2.0 / 3.0);
  return flux_kg_m2_s(transfer_m_s, 4400.0, 0.0601);
}

double water_flux_kg_m2_s(double humidity_1) { return flux_kg_m2_s(0.005, 2339.0, 0.018015) * (1.0 - humidity_1); }

double dried_kg_m2(double load_kg_m2, double flux, double time_s) {
  const double left = load_kg_m2 - flux * time_s;
  return left > 0.0 ? left : 0.0;
}

double drying_time_s(double thickness_m, double density_kg_m3, double flux) {
  return thickness_m * density_kg_m3 / flux;
}

double film_thickness_m(double mass_kg, double area_m2, double density_kg_m3) {
  return mass_kg / (area_m2 * density_kg_m3);
}

}  // namespace proofstand::physics
