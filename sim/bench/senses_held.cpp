#include "sim/bench/senses.h"

namespace proofstand::bench {

bool see_printed_up(const Bench& bench, ThingId rotor) {
  return !bench.state().things[event::index_of(rotor)].inner_up;
}

bool see_patch(const Bench& bench, ThingId bolt) {
  return bench.setup().bolts[bench.setup().things[event::index_of(bolt)].part].patch;
}

double see_bolt_length_m(const Bench& bench, ThingId bolt) {
  return bench.setup().bolts[bench.setup().things[event::index_of(bolt)].part].length_m;
}

}  // namespace proofstand::bench
