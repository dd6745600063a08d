// The command line called in this process, with what it wrote caught.
#pragma once

#include <string>
#include <vector>

namespace proofstand::testing {

struct Captured {
  int code = 0;
  std::string out;  ///< data
  std::string err;  ///< what was said about it
};
/// arguments without the program's name.
Captured call(const std::vector<std::string>& arguments);

/// A fresh folder for files of a test, gone with it.
class ScratchFolder {
 public:
  ScratchFolder();
  ~ScratchFolder();
  ScratchFolder(const ScratchFolder&) = delete;
  ScratchFolder& operator=(const ScratchFolder&) = delete;
  [[nodiscard]] std::string path(const std::string& name) const { return folder_ + "/" + name; }
  /// Writes a file into it; returns its path.
  [[nodiscard]] std::string write(const std::string& name, const std::string& bytes) const;
  [[nodiscard]] std::string read(const std::string& name) const;

 private:
  std::string folder_;
};

}  // namespace proofstand::testing
