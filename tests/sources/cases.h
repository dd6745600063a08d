// One line of the table of sources: what a published text, common practice or memory expects of a model, and what it
// gives. Every file of this folder fills in the lines of one part of the job.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/physics/dimensions.h"

namespace proofstand::sources {

using physics::Standing;
inline constexpr Standing kPublished = Standing::Published;
inline constexpr Standing kPractice = Standing::CommonPractice;
inline constexpr Standing kMemory = Standing::FromMemory;

struct Line {
  std::string number;  ///< of the case; several lines may belong to one
  std::string model;
  std::string source;
  Standing standing = kMemory;
  double expected = 0.0;
  double got = 0.0;
  double tolerance = 0.0;
  std::string unit;
};

/// Lines of one source, added one after the other.
class Table {
 public:
  /// From here on: this case, this source.
  void open(std::string_view number, std::string_view source, Standing standing) {
    number_ = number;
    source_ = source;
    standing_ = standing;
  }
  void check(std::string_view model, double got, double expected, double tolerance, std::string_view unit) {
    lines.push_back({number_, std::string(model), source_, standing_, expected, got, tolerance, std::string(unit)});
  }
  /// A yes or no of the model: 1 or 0, no tolerance.
  void verdict(std::string_view model, bool got, bool expected) {
    check(model, got ? 1.0 : 0.0, expected ? 1.0 : 0.0, 0.0, "yes");
  }
  std::vector<Line> lines;

 private:
  std::string number_;
  std::string source_;
  Standing standing_ = kMemory;
};

void add_bolt_cases(Table& table);
void add_strength_cases(Table& table);
void add_drive_cases(Table& table);
void add_thread_start_cases(Table& table);
void add_joint_cases(Table& table);
void add_bend_cases(Table& table);
void add_tool_cases(Table& table);
void add_measure_cases(Table& table);
void add_brake_cases(Table& table);
void add_heat_cases(Table& table);
void add_film_cases(Table& table);

}  // namespace proofstand::sources
