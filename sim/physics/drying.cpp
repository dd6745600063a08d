#include "sim/physics/drying.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kGas_j_mol_k = 8.314462618;
constexpr double kRoom_k = 293.15;
constexpr double kWaterTransfer_m_s = 0.005;
constexpr double kWaterDiffusivity_m2_s = 2.5e-5;
constexpr double kAlcoholDiffusivity_m2_s = 1.0e-5;

}  // namespace

Liquid isopropanol() {
  const double slower_1 = base::pow_1(kAlcoholDiffusivity_m2_s / kWaterDiffusivity_m2_s, 2.0 / 3.0);
  return {4400.0, 0.0601, kWaterTransfer_m_s * slower_1, 785.0};
}

Liquid water() { return {2339.0, 0.018015, kWaterTransfer_m_s, 998.0}; }

double evaporation_flux_kg_m2_s(const Liquid& liquid, double temperature_k, double humidity_1) {
  STAND_ASSERT(temperature_k > 0.0);
  return liquid.transfer_m_s * liquid.vapour_pressure_pa * liquid.molar_mass_kg_mol_1 / (kGas_j_mol_k * temperature_k) *
         (1.0 - humidity_1);
}

double alcohol_flux_kg_m2_s() { return evaporation_flux_kg_m2_s(isopropanol(), kRoom_k, 0.0); }

double drying_time_s(double film_m, const Liquid& liquid, double temperature_k, double humidity_1) {
  return film_m * liquid.density_kg_m3 / evaporation_flux_kg_m2_s(liquid, temperature_k, humidity_1);
}

double load_after_drying_kg_m2(double load_kg_m2, double time_s, double slowness_1) {
  const double left_kg_m2 = load_kg_m2 - alcohol_flux_kg_m2_s() * slowness_1 * time_s;
  return left_kg_m2 > 0.0 ? left_kg_m2 : 0.0;
}

}  // namespace proofstand::physics
