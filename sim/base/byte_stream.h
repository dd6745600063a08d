// Field-by-field bytes, little-endian, in declared order: what snapshots and state hashes are made of.
#pragma once

#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>

namespace proofstand::base {

/// Appends fields to a byte string.
class ByteWriter {
 public:
  void put(std::uint64_t word) {
    char out[8];
    for (int i = 0; i < 8; ++i) out[i] = static_cast<char>(word >> (8 * i));
    bytes_.append(out, 8);
  }
  void put(std::int64_t number) { put(static_cast<std::uint64_t>(number)); }
  void put(bool flag) { bytes_.push_back(flag ? '\1' : '\0'); }
  /// -0 is written as 0, so that equal states have equal bytes.
  void put(double number) {
    const double same = number + 0.0;
    std::uint64_t word = 0;
    std::memcpy(&word, &same, sizeof word);
    put(word);
  }
  void put(std::string_view text) {
    put(static_cast<std::uint64_t>(text.size()));
    bytes_.append(text);
  }
  [[nodiscard]] const std::string& bytes() const { return bytes_; }
  void clear() { bytes_.clear(); }

 private:
  std::string bytes_;
};

/// Reads the same fields back. A read past the end gives zeros and sets `failed`, never a crash.
class ByteReader {
 public:
  explicit ByteReader(std::string_view bytes) : bytes_(bytes) {}
  std::uint64_t word() {
    if (bytes_.size() - at_ < 8) return fail();
    std::uint64_t value = 0;
    for (int i = 7; i >= 0; --i) {
      value = (value << 8) | static_cast<unsigned char>(bytes_[at_ + static_cast<std::size_t>(i)]);
    }
    at_ += 8;
    return value;
  }
  std::int64_t number() { return static_cast<std::int64_t>(word()); }
  bool flag() {
    if (at_ >= bytes_.size()) return fail() != 0;
    return bytes_[at_++] != '\0';
  }
  double real() {
    const std::uint64_t bits = word();
    double value = 0.0;
    std::memcpy(&value, &bits, sizeof value);
    return value;
  }
  std::string_view text() {
    const std::uint64_t size = word();
    if (size > bytes_.size() - at_) {
      fail();
      return {};
    }
    const std::string_view out = bytes_.substr(at_, static_cast<std::size_t>(size));
    at_ += static_cast<std::size_t>(size);
    return out;
  }
  [[nodiscard]] bool failed() const { return failed_; }
  [[nodiscard]] bool at_end() const { return at_ == bytes_.size(); }

 private:
  std::uint64_t fail() {
    failed_ = true;
    at_ = bytes_.size();
    return 0;
  }
  std::string_view bytes_;
  std::size_t at_ = 0;
  bool failed_ = false;
};

}  // namespace proofstand::base
