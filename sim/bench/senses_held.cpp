#include "sim/bench/senses.h"

namespace proofstand::bench {

bool see_printed_up(const Bench& bench, ThingId rotor) {
  return !bench.state().things[event::index_of(rotor)].inner_up;
}

}  // namespace proofstand::bench
