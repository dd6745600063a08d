// Drying of alcohol and water films in still air, in closed form.
#pragma once

namespace proofstand::physics {

/// Figures of a liquid at 20 C.
struct Liquid {
  double vapour_pressure_pa = 0.0;
  double molar_mass_kg_mol_1 = 0.0;  ///< kg/mol
  double transfer_m_s = 0.0;         ///< mass transfer coefficient in still room air
  double density_kg_m3 = 0.0;
};
/// Isopropanol: 4.4 kPa (from memory; 6.03 kPa at 25 C published), coefficient scaled from water by diffusivity^(2/3).
Liquid isopropanol();
/// Water at 20 C; coefficient 0.005 m/s in still air (from memory).
Liquid water();

/// Evaporation flux J = k p M/(R T), times 1 - humidity for water. temperature_k [K]; returns [kg/(m2 s)]
/// source  stagnant film model, ordinary heat and mass transfer (from memory)
double evaporation_flux_kg_m2_s(const Liquid& liquid, double temperature_k, double humidity_1);
/// Flux in use on the bench: isopropanol at 20 C [kg/(m2 s)].
double alcohol_flux_kg_m2_s();
/// Time a film takes to dry off. film_m [m]; returns [s]
double drying_time_s(double film_m, const Liquid& liquid, double temperature_k, double humidity_1);
/// Load left after a time; constant flux, closed form. slowness_1 [1] 1 free surface, less when covered. [kg/m2] >= 0
double load_after_drying_kg_m2(double load_kg_m2, double time_s, double slowness_1 = 1.0);

}  // namespace proofstand::physics
