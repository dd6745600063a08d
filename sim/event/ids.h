// Identities that actions, events and the bench share. Each kind its own type, so that none is taken for another.
#pragma once

#include <cstdint>

namespace proofstand::event {

/// A trainee's hand.
enum class HandId : std::uint8_t { Left = 0, Right = 1 };
inline constexpr std::size_t kHands = 2;

/// A thing of the workplace: tool, rag, bottle, rotor, bolt, wheel ... Index into the setup's list of things.
enum class ThingId : std::uint16_t {};
inline constexpr ThingId kNoThing{0xFFFF};

/// A fastener's position in its joint, 0 .. n-1 counter-clockwise seen from outside (people count from 1).
enum class BoltId : std::uint8_t {};
inline constexpr BoltId kNoBolt{0xFF};

/// A field of the job card; index into the setup's list.
enum class CardEntryId : std::uint8_t {};

template <class Id>
constexpr std::size_t index_of(Id id) {
  return static_cast<std::size_t>(id);
}

}  // namespace proofstand::event
