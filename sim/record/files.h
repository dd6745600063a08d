// Files as bytes: read whole with a limit, append with every line flushed, cut a torn end off. Errors are for people.
#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>

#include "sim/base/result.h"

namespace proofstand::record {

/// Where lines go. A test puts a failing one in its place.
class ByteSink {
 public:
  virtual ~ByteSink() = default;
  /// Appends and hands it to the system, so that it survives the end of this program.
  /// errors: file-write: disk full, taken away ...; a part may have been written
  virtual base::Result<base::Done> append(std::string_view bytes) = 0;
};

/// The whole file. errors: file-missing, file-denied, file-too-large (limit_bytes), file-read
base::Result<std::string> load_bytes(const std::string& path, std::size_t limit_bytes);
/// All of standard input, with the same limit.
base::Result<std::string> load_standard_input(std::size_t limit_bytes);
/// Writes a whole new file over an old one. errors: file-write
base::Result<base::Done> save_bytes(const std::string& path, std::string_view bytes);

/// A new file, which must not exist yet. errors: file-exists, file-write
base::Result<std::unique_ptr<ByteSink>> create_for_append(const std::string& path);
/// An existing file, cut to `bytes` first (a torn last line goes). errors: file-missing, file-write
base::Result<std::unique_ptr<ByteSink>> reopen_for_append(const std::string& path, std::size_t bytes);

}  // namespace proofstand::record
