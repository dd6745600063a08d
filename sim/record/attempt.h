// An attempt: the append-only, hash-chained record of one person's go at one scenario, as it is read from its file.
//
// The file is JSON lines, each sealed by the chain (chain.h). Lines, by the key that makes them what they are:
//   {"proofstand":"attempt","format":1, ...}  first line: versions, scenario in two hashed parts, seeds, way, aids, who
//   {"t":TICK,"do":[ ... ]}                   what hands did, from TICK on, at most a quarter of a second
//   (action_codec.h)
//   {"t":TICK,"state":HASH}                   the bench after all actions before this line, at TICK
//   {"t":TICK,"resumed":true}                 the program had ended; both hands are let go by the actions that follow
//   {"t":TICK,"rewind":TO}                    practice only: what follows goes on from TO
//   {"trace":{ ... }}                         after the last action: the event trace begins; kinds and their fields
//   {"events":[ ... ]}                        its records (trace_codec.h)
//   {"end":TICK,"reason":WORD,"records":N,"trace_hash":HASH}  closed; nothing follows
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/ticks.h"
#include "sim/event/actions.h"
#include "sim/event/record.h"
#include "sim/record/trace_codec.h"

namespace proofstand::record {

inline constexpr std::string_view kFileMark = "proofstand";
inline constexpr int kAttemptFormat = 1;
/// Most ticks an attempt may last: a day. Beyond it a file is not believed.
inline constexpr base::Tick kLongestAttempt = 24 * 3600 * base::kTicksPerSecond;
/// Most ticks in one batch of actions: a quarter of a second.
inline constexpr base::Tick kBatchTicks = base::kTicksPerSecond / 4;
/// Ticks from one state hash to the next, while something happens.
inline constexpr base::Tick kStateTicks = 240;
/// Longest file that is read, in bytes.
inline constexpr std::size_t kLargestAttempt = std::size_t{256} << 20;

/// How the trainee works: told what is next, silent but free to look and go back, or sealed.
enum class Way : std::uint8_t { Guided, Practice, Exam };
std::string_view words_of(Way way);
std::optional<Way> way_from_words(std::string_view words);

/// The first line.
struct AttemptHead {
  int format = kAttemptFormat;
  std::string program;    ///< version of the program that began it
  int bench = 0;          ///< bench version: a replay needs the same one
  std::string scenario;   ///< its id
  std::int64_t seed = 0;  ///< of bench and variant, >= 0
  std::string hand;       ///< "" for a person's hand, else the set of the modelled hand
  std::int64_t hand_seed = 0;
  Way way = Way::Practice;
  std::vector<std::string> aids;  ///< steadiness help and the like; empty: none
  std::string who;                ///< free text, may be empty
  std::string bench_text;         ///< the resolved scenario's two parts
  std::string rules_text;
};

/// A state hash and where it belongs.
struct StateMark {
  base::Tick tick = 0;
  std::size_t actions_before = 0;  ///< of the branch
  std::string hash;
  std::size_t line = 0;  ///< of the file, from 1
};

/// The program had ended here and was started again.
struct Resumption {
  base::Tick tick = 0;
  std::size_t actions_before = 0;
};

/// A practice run was taken back.
struct Rewind {
  base::Tick from = 0;
  base::Tick to = 0;
};

/// How it was closed.
struct Closing {
  base::Tick end = 0;
  event::EndReason reason = event::EndReason::Finished;
  NamedTrace trace;
  std::string trace_hash;
};

/// All of it; actions and marks are those of the last branch.
struct Attempt {
  AttemptHead head;
  std::vector<event::Action> actions;
  std::vector<StateMark> states;
  std::vector<Resumption> resumptions;
  std::vector<Rewind> rewinds;  ///< all of them, also those of earlier branches
  std::optional<Closing> closing;
  base::Tick last_tick = 0;  ///< of the last line
  // the file itself
  std::string last_hash;       ///< chain hash of the last good line
  std::size_t lines = 0;       ///< good ones
  std::size_t good_bytes = 0;  ///< up to the end of the last good line
  std::size_t torn_bytes = 0;  ///< of a broken last line that was left out
};

}  // namespace proofstand::record
