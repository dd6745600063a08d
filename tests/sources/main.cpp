// Prints the table of everything checked against a source outside the project, and how much of it agrees.
#include <cmath>
#include <cstdio>

#include "tests/sources/cases.h"

using namespace proofstand::sources;

namespace {

// a rounding above the tolerance is no miss
bool agrees(const Line& line) {
  return std::fabs(line.got - line.expected) <= line.tolerance + 1e-12 * std::fabs(line.expected);
}

// pads to a width in characters, not bytes
std::string padded(const std::string& text, std::size_t width) {
  std::size_t seen = 0;
  for (const char c : text) seen += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1U : 0U;
  return seen < width ? text + std::string(width - seen, ' ') : text;
}

}  // namespace

int main() {
  Table table;
  add_bolt_cases(table);
  add_strength_cases(table);
  add_drive_cases(table);
  add_thread_start_cases(table);
  add_joint_cases(table);
  add_bend_cases(table);
  add_tool_cases(table);
  add_measure_cases(table);
  add_brake_cases(table);
  add_heat_cases(table);
  add_film_cases(table);

  std::printf("%-5s %s %s %s %12s %12s %10s %s  ok\n", "case", padded("model", 46).c_str(),
              padded("source", 58).c_str(), padded("standing", 26).c_str(), "expected", "got", "tolerance",
              padded("unit", 9).c_str());
  std::size_t agreeing = 0;
  std::size_t by_standing[3] = {0, 0, 0};
  for (const Line& line : table.lines) {
    const bool ok = agrees(line);
    if (ok) ++agreeing;
    ++by_standing[static_cast<std::size_t>(line.standing)];
    std::printf("%-5s %s %s %s %12.6g %12.6g %10.3g %s  %s\n", line.number.c_str(), padded(line.model, 46).c_str(),
                padded(line.source, 58).c_str(),
                padded(std::string(proofstand::physics::standing_words(line.standing)), 26).c_str(), line.expected,
                line.got, line.tolerance, padded(line.unit, 9).c_str(), ok ? "yes" : "NO");
  }
  std::printf("sources %zu/%zu agree (%zu published, %zu common practice, no source, %zu from memory)\n", agreeing,
              table.lines.size(), by_standing[0], by_standing[1], by_standing[2]);
  return agreeing == table.lines.size() ? 0 : 1;
}
