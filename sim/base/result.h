// A value or an error for people. Names follow std::expected, which C++20 lacks, so that this can become it one day.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "sim/base/assert.h"

namespace proofstand::base {

/// What went wrong outside this program: a file, a typed word, a database.
struct Error {
  std::string code;      ///< stable short name, e.g. "E08" or "file-missing"
  std::string where;     ///< file:line:column, key or argument; empty where there is none
  std::string what;      ///< what is wrong, with the value found and the one expected
  std::string instead;   ///< what to write or do
  bool warning = false;  ///< loads all the same

  /// One line a person can act on: "where: what; instead [code]".
  [[nodiscard]] std::string sentence() const;
};

/// T or an Error. Reading the value of a failed result is our bug and stops the program.
template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : value_(std::move(value)) {}      // NOLINT: a result is made from its value
  Result(Error error) : error_(std::move(error)) {}  // NOLINT: and from its error
  [[nodiscard]] bool has_value() const { return value_.has_value(); }
  explicit operator bool() const { return has_value(); }
  T& value() & {
    STAND_ASSERT(has_value());
    return *value_;
  }
  const T& value() const& {
    STAND_ASSERT(has_value());
    return *value_;
  }
  T&& value() && {
    STAND_ASSERT(has_value());
    return std::move(*value_);
  }
  T& operator*() { return value(); }
  const T& operator*() const { return value(); }
  T* operator->() { return &value(); }
  const T* operator->() const { return &value(); }
  [[nodiscard]] const Error& error() const {
    STAND_ASSERT(!has_value());
    return error_;
  }

  /// f(value) -> Result<U>; an error passes through.
  template <class F>
  auto and_then(F&& f) const -> decltype(f(std::declval<const T&>())) {
    if (!has_value()) return error_;
    return f(*value_);
  }
  /// f(value) -> U, wrapped; an error passes through.
  template <class F>
  auto transform(F&& f) const -> Result<decltype(f(std::declval<const T&>()))> {
    if (!has_value()) return error_;
    return f(*value_);
  }

 private:
  std::optional<T> value_;
  Error error_;
};

/// For functions that only succeed or fail.
struct Done {};

/// Faults collected while reading, at most fifty; a reader goes on where it can.
struct Faults {
  static constexpr std::size_t kMost = 50;
  std::vector<Error> list;
  void add(Error error) {
    if (list.size() < kMost) list.push_back(std::move(error));
  }
  [[nodiscard]] bool any_error() const {
    for (const Error& e : list) {
      if (!e.warning) return true;
    }
    return false;
  }
};

}  // namespace proofstand::base
