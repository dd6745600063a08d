// Settling: what a short, stiff joint loses when its faces bed into each other, and what a second pass gives back.
#pragma once

namespace proofstand::physics {

/// Preload lost [N] to an embedding [m]: f/δ. source: VDI 2230 form
double embedding_loss_n(double embedding_m, double compliance_m_n);
/// Share of preload gone after a time, metal on metal, approaching 5 %. source: NASA-STD-5020B table 1 (5 %); time
/// constant from memory
double relaxed_share_1(double time_s);
/// Embedding still to come [m] at a bolt after so much has settled, on its n-th visit: the first pull leaves most of
/// it, each further one two fifths of what is left. clean: bare faces (2 µm in all); dirt adds a tenth of its height.
/// source: MIL-HDBK-60 5.7 for the effect of re-tightening; sizes from memory of VDI 2230 table 5, reduced for this
/// short grip
double embedding_left_m(double dirt_m, double settled_m);
/// The part of it that one visit at full torque settles [1]. source: common practice, no source
inline constexpr double kSettledPerVisit_1 = 0.6;

}  // namespace proofstand::physics
