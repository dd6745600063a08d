#include "sim/record/files.h"

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>

#include "sim/base/number_text.h"

namespace proofstand::record {
namespace {

struct Closer {
  void operator()(std::FILE* file) const { std::fclose(file); }
};
using File = std::unique_ptr<std::FILE, Closer>;

// the system's own texts depend on the locale; these do not
std::string reason(int number) {
  switch (number) {
    case ENOENT:
      return "there is no such file or folder";
    case EACCES:
    case EPERM:
      return "permission is missing";
    case EISDIR:
      return "this is a folder";
    case ENOSPC:
    case EDQUOT:
      return "the disk is full";
    case EFBIG:
      return "the file would become larger than this system allows";
    case EROFS:
      return "the disk is read-only";
    case EEXIST:
      return "it exists already";
    case EIO:
      return "the disk reports an error";
    default:
      return "system error " + base::text_from_int(number);
  }
}

base::Error cannot(std::string_view code, std::string_view verb, const std::string& path, int number,
                   std::string_view instead) {
  return {std::string(code), path, "cannot " + std::string(verb) + ": " + reason(number), std::string(instead)};
}

base::Result<std::string> read_all(std::FILE* file, const std::string& path, std::size_t limit_bytes) {
  std::string bytes;
  char block[1 << 16];
  while (true) {
    const std::size_t got = std::fread(block, 1, sizeof block, file);
    bytes.append(block, got);
    if (bytes.size() > limit_bytes) {
      return base::Error{"file-too-large", path,
                         "longer than " + base::text_from_int(static_cast<std::int64_t>(limit_bytes >> 20)) +
                             " MiB, which no such file should be",
                         "check that this is the right file"};
    }
    if (got < sizeof block) break;
  }
  if (std::ferror(file) != 0) return cannot("file-read", "read", path, errno, "check the disk and the permissions");
  return bytes;
}

class FileSink final : public ByteSink {
 public:
  FileSink(File file, std::string path) : file_(std::move(file)), path_(std::move(path)) {}
  base::Result<base::Done> append(std::string_view bytes) override {
    errno = 0;
    const std::size_t written = std::fwrite(bytes.data(), 1, bytes.size(), file_.get());
    if (written == bytes.size() && std::fflush(file_.get()) == 0) return base::Done{};
    return cannot("file-write", "write", path_, errno, "make room or choose another place; what was written stays");
  }

 private:
  File file_;
  std::string path_;
};

}  // namespace

base::Result<std::string> load_bytes(const std::string& path, std::size_t limit_bytes) {
  std::error_code trouble;
  // opening a folder succeeds and reading it gives a riddle, so it is said before
  if (std::filesystem::is_directory(path, trouble)) {
    return cannot("file-read", "read", path, EISDIR, "name a file in it");
  }
  errno = 0;
  const File file(std::fopen(path.c_str(), "rb"));
  if (!file) {
    const bool missing = errno == ENOENT;
    return cannot(missing ? "file-missing" : "file-denied", "open", path, errno, "check the path");
  }
  return read_all(file.get(), path, limit_bytes);
}

base::Result<std::string> load_standard_input(std::size_t limit_bytes) {
  return read_all(stdin, "standard input", limit_bytes);
}

base::Result<base::Done> save_bytes(const std::string& path, std::string_view bytes) {
  errno = 0;
  File file(std::fopen(path.c_str(), "wb"));
  if (!file) return cannot("file-write", "write", path, errno, "choose a place that can be written to");
  FileSink sink(std::move(file), path);
  return sink.append(bytes);
}

base::Result<std::unique_ptr<ByteSink>> create_for_append(const std::string& path) {
  errno = 0;
  File file(std::fopen(path.c_str(), "wbx"));
  if (!file && errno == EEXIST) {
    return cannot("file-exists", "begin an attempt", path, EEXIST, "choose another name, or go on with --resume");
  }
  if (!file) return cannot("file-write", "create", path, errno, "choose a place that can be written to");
  return std::unique_ptr<ByteSink>(std::make_unique<FileSink>(std::move(file), path));
}

base::Result<std::unique_ptr<ByteSink>> reopen_for_append(const std::string& path, std::size_t bytes) {
  std::error_code trouble;
  const auto size = std::filesystem::file_size(path, trouble);
  if (trouble) return cannot("file-missing", "open", path, trouble.value(), "check the path");
  if (size > bytes) std::filesystem::resize_file(path, bytes, trouble);
  if (trouble) return cannot("file-write", "cut", path, trouble.value(), "check the permissions");
  errno = 0;
  File file(std::fopen(path.c_str(), "ab"));
  if (!file) return cannot("file-write", "write", path, errno, "check the permissions");
  return std::unique_ptr<ByteSink>(std::make_unique<FileSink>(std::move(file), path));
}

}  // namespace proofstand::record
