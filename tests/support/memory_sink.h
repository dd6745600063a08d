// A place for lines in memory, which can be told to fail at its Nth append, as a full disk does: after a part.
#pragma once

#include <memory>
#include <string>

#include "sim/record/files.h"

namespace proofstand::record {

class MemorySink final : public ByteSink {
 public:
  /// fail_at: which append fails, from 1; 0: none. part: how many of its bytes are written all the same.
  explicit MemorySink(std::shared_ptr<std::string> bytes, std::size_t fail_at = 0, std::size_t part = 0)
      : bytes_(std::move(bytes)), fail_at_(fail_at), part_(part) {}
  base::Result<base::Done> append(std::string_view bytes) override {
    ++appends_;
    if (fail_at_ != 0 && appends_ >= fail_at_) {
      if (appends_ == fail_at_) bytes_->append(bytes.substr(0, part_));
      return base::Error{"file-write", "memory", "cannot write: the disk is full", "make room"};
    }
    bytes_->append(bytes);
    return base::Done{};
  }

 private:
  std::shared_ptr<std::string> bytes_;
  std::size_t fail_at_;
  std::size_t part_;
  std::size_t appends_ = 0;
};

}  // namespace proofstand::record
