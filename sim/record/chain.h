// The hash chain of an attempt: every line ends with the hash of the previous line's hash and its own bytes. It shows
// damage; it does not stop somebody who recomputes it.
#pragma once

#include <string>
#include <string_view>

namespace proofstand::record {

/// What stands before the first line: 64 zeros.
std::string_view chain_start();

/// A JSON object's text, sealed: `,"hash":"..."` is put in before its last brace. No line end.
/// previous    hash text of the line before
/// returns     the sealed line; its hash is what link_of() reads out of it
std::string sealed(std::string_view previous, std::string_view object_text);

/// How a line's seal stands.
enum class Seal { Right, Wrong, Missing };
struct Link {
  Seal seal = Seal::Missing;
  std::string_view hash;    ///< as it stands in the line
  std::string_view before;  ///< the line up to its seal: what is hashed
};
/// line without its line end; compared as text, upper case is wrong.
Link link_of(std::string_view previous, std::string_view line);

}  // namespace proofstand::record
