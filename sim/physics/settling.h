// Preload that settling takes after a pull, and what a second pass gives back.
#pragma once

namespace proofstand::physics {

/// Height that clean bare faces of this joint lose under their first full load [m]: thread, head and seat.
/// source: VDI 2230 guide values are 5..7 um for longer grips (from memory); this short grip takes a third of it, own
inline constexpr double kCleanEmbed_m = 1.2e-6;
/// The same with crumbs of paint or old locker under the rotor [m]; 5 to 20 um. common practice, no source
inline constexpr double kDirtyEmbed_m = 8e-6;
/// Share of what a surface has left to give that one pull takes. own
inline constexpr double kEmbedShare_1 = 0.75;
/// Short-term relaxation of an all-metal joint, share of the preload. source: NASA-STD-5020B table 1
inline constexpr double kRelaxation_1 = 0.05;

/// Loss of preload by embedding: f/delta. embed_m [m] >= 0, compliance_m_n [m/N] > 0; returns [N]
/// source  VDI 2230 (from memory)
double embedding_loss_n(double embed_m, double compliance_m_n);
/// Height that settles in a pull that reaches preload_n when settled_m has gone already: each surface has only so much
/// to give, in proportion to the load, so a second pull finds little left. [m] >= 0
/// full_m   [m] at reference_n, e.g. kCleanEmbed_m
/// source   own derivation
double embed_in_pull_m(double full_m, double settled_m, double preload_n, double reference_n);
/// Preload after a time: F (1 - r (1 - exp(-t/t_r))). relaxation_1 [1] 0..1, time_s, time_constant_s > 0
/// source  NASA-STD-5020B table 1 and A.3; time constant MIL-HDBK-60 5.7 "minutes to hours"
double relaxed_preload_n(double preload_n, double relaxation_1, double time_s, double time_constant_s);
/// Change of preload when clamped parts and bolt warm by dt. expansions [1/K], grip_m [m]
/// source  ordinary thermoelasticity
double thermal_preload_change_n(double clamped_expansion_1_k, double bolt_expansion_1_k, double warming_k,
                                double grip_m, double compliance_m_n);

}  // namespace proofstand::physics
