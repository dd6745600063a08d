#if defined(STAND_CLIPS)
extern "C" {
#include <clips.h>
}

#include <cstdio>
#include <cstdlib>
#include <string>

#include "tests/speed/rules_bench.h"

namespace proofstand::speed {
namespace {

std::string number(int n) { return std::to_string(n); }

// the condition of one rule, over the facts (last KIND INDEX)
std::string condition(int rule) {
  const std::string p = "(last " + number(rule) + " ?p)";
  const std::string r = "(last " + number((rule + 2) % 24) + " ?r)";
  switch (rule % 4) {
    case 0:
      return p + " (test (> (- ?i ?p) 100))";
    case 1:
      return p + " " + r + " (test (> ?p ?r))";
    case 2:
      return r + " (test (= ?r -1000000000))";
    default:
      return p + " " + r + " (test (or (= ?p -1000000000) (> ?r ?p)))";
  }
}

}  // namespace

ClipsTwenty::ClipsTwenty() {
  shell = CreateEnvironment();
  std::string text = "(defglobal ?*lost* = 0)";
  bool good = EnvBuild(shell, text.c_str()) != 0;
  for (int i = 0; i < 20; ++i) {
    text = "(defrule r" + number(i) + " (declare (salience 10)) (event " + number((i + 1) % 24) + " ?i) " +
           condition(i) + " => (bind ?*lost* (+ ?*lost* 1)))";
    good = EnvBuild(shell, text.c_str()) != 0 && good;
  }
  text =
      "(defrule remember (declare (salience -10)) ?e <- (event ?k ?i) ?l <- (last ?k ?) => (retract ?e ?l) "
      "(assert (last ?k ?i)))";
  good = EnvBuild(shell, text.c_str()) != 0 && good;
  if (good) return;
  std::fprintf(stderr, "CLIPS does not take the rules\n");
  std::abort();
}

ClipsTwenty::~ClipsTwenty() { DestroyEnvironment(shell); }

std::int64_t ClipsTwenty::take(const Records& records) {
  EnvReset(shell);
  for (int k = 0; k < 24; ++k) EnvAssertString(shell, ("(last " + number(k) + " -1000000000)").c_str());
  EnvRun(shell, -1);
  long long index = 0;
  for (const event::Record& record : records) {
    char fact[48];
    std::snprintf(fact, sizeof fact, "(event %d %lld)", static_cast<int>(record.kind), index++);
    EnvAssertString(shell, fact);
    EnvRun(shell, -1);
  }
  DATA_OBJECT lost;
  EnvGetDefglobalValue(shell, "lost", &lost);
  return static_cast<std::int64_t>(DOToLong(lost));
}

}  // namespace proofstand::speed
#endif
