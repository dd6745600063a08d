#include "tests/support/captured_command.h"

#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "sim/base/assert.h"
#include "sim/cli/command_line.h"

namespace proofstand::testing {
namespace {

// one of the two streams, turned into a file for a while
class Caught {
 public:
  Caught(std::FILE* stream, int number, std::string path) : stream_(stream), number_(number), path_(std::move(path)) {
    std::fflush(stream_);
    kept_ = dup(number_);
    std::FILE* file = std::fopen(path_.c_str(), "wb");
    STAND_ASSERT(file != nullptr);
    dup2(fileno(file), number_);
    std::fclose(file);
  }
  std::string stop() {
    std::fflush(stream_);
    dup2(kept_, number_);
    close(kept_);
    std::ifstream in(path_, std::ios::binary);
    std::stringstream bytes;
    bytes << in.rdbuf();
    return bytes.str();
  }

 private:
  std::FILE* stream_;
  int number_;
  int kept_ = -1;
  std::string path_;
};

}  // namespace

Captured call(const std::vector<std::string>& arguments) {
  const ScratchFolder folder;
  std::vector<std::string> words = {"proofstand"};
  words.insert(words.end(), arguments.begin(), arguments.end());
  std::vector<char*> argv;
  for (std::string& word : words) argv.push_back(word.data());
  argv.push_back(nullptr);
  Captured captured;
  // the command prints through both kinds of streams
  std::fflush(nullptr);
  Caught out(stdout, STDOUT_FILENO, folder.path("out"));
  Caught err(stderr, STDERR_FILENO, folder.path("err"));
  captured.code = cli::run_command_line(static_cast<int>(words.size()), argv.data(), "test");
  captured.out = out.stop();
  captured.err = err.stop();
  return captured;
}

ScratchFolder::ScratchFolder() {
  std::string name = (std::filesystem::temp_directory_path() / "proofstand-XXXXXX").string();
  STAND_ASSERT(mkdtemp(name.data()) != nullptr);
  folder_ = name;
}

ScratchFolder::~ScratchFolder() {
  std::error_code trouble;
  std::filesystem::remove_all(folder_, trouble);
}

std::string ScratchFolder::write(const std::string& name, const std::string& bytes) const {
  std::ofstream(path(name), std::ios::binary) << bytes;
  return path(name);
}

std::string ScratchFolder::read(const std::string& name) const {
  std::ifstream in(path(name), std::ios::binary);
  std::stringstream bytes;
  bytes << in.rdbuf();
  return bytes.str();
}

}  // namespace proofstand::testing
