// The bench's insides for those who only look: senses and the probe. Private to this floor.
#pragma once

#include <vector>

#include "sim/bench/bench.h"
#include "sim/bench/world.h"

namespace proofstand::bench {

/// Everything that works on a World may read through this one; nothing called with it may change the state or tell an
/// event, for the bench is the caller's and const. Events told all the same are lost.
class ReadWorld {
 public:
  explicit ReadWorld(const Bench& bench)
      : world_{bench.setup(), bench.vocabulary(), const_cast<BenchState&>(bench.state()), none_} {}
  ReadWorld(const ReadWorld&) = delete;
  ReadWorld& operator=(const ReadWorld&) = delete;
  [[nodiscard]] const World& world() const { return world_; }

 private:
  std::vector<event::Record> none_;
  World world_;
};

}  // namespace proofstand::bench
