// A procedure that waits: written as one function from top to bottom, and let go on whenever bench time has passed.
// Private to this floor.
#pragma once

#include <coroutine>
#include <exception>
#include <utility>

namespace proofstand::hand {

/// What a waiting procedure leaves behind for whoever lets it go on.
struct Waiting {
  std::coroutine_handle<> innermost;  ///< the one that waits; null when nothing does
};

/// A running procedure; owns its frame. Awaiting it runs it to its end before going on.
class [[nodiscard]] Task {
 public:
  struct promise_type {
    std::coroutine_handle<> outer;
    Task get_return_object() { return Task(std::coroutine_handle<promise_type>::from_promise(*this)); }
    std::suspend_always initial_suspend() noexcept { return {}; }
    auto final_suspend() noexcept {
      struct BackToOuter {
        bool await_ready() noexcept { return false; }
        std::coroutine_handle<> await_suspend(std::coroutine_handle<promise_type> self) noexcept {
          const std::coroutine_handle<> waiting = self.promise().outer;
          return waiting ? waiting : std::noop_coroutine();
        }
        void await_resume() noexcept {}
      };
      return BackToOuter{};
    }
    void return_void() {}
    void unhandled_exception() { std::terminate(); }
  };

  Task() = default;
  explicit Task(std::coroutine_handle<promise_type> frame) : frame_(frame) {}
  Task(Task&& other) noexcept : frame_(std::exchange(other.frame_, {})) {}
  Task& operator=(Task&& other) noexcept {
    if (this != &other) {
      drop();
      frame_ = std::exchange(other.frame_, {});
    }
    return *this;
  }
  Task(const Task&) = delete;
  Task& operator=(const Task&) = delete;
  ~Task() { drop(); }

  [[nodiscard]] bool begun() const { return static_cast<bool>(frame_); }
  [[nodiscard]] bool done() const { return frame_ && frame_.done(); }
  [[nodiscard]] std::coroutine_handle<> handle() const { return frame_; }

  bool await_ready() const noexcept { return false; }
  std::coroutine_handle<> await_suspend(std::coroutine_handle<> outer) noexcept {
    frame_.promise().outer = outer;
    return frame_;
  }
  void await_resume() const noexcept {}

 private:
  void drop() {
    if (frame_) frame_.destroy();
    frame_ = {};
  }
  std::coroutine_handle<promise_type> frame_;
};

}  // namespace proofstand::hand
