#include <filesystem>

#include "sim/base/number_text.h"
#include "sim/cli/commands.h"
#include "sim/cli/deep_check.h"
#include "sim/cli/talk.h"
#include "sim/scenario/scenario.h"

namespace proofstand::cli {
namespace {

std::string count_words(std::size_t count, std::string_view one, std::string_view many) {
  return base::text_from_int(static_cast<std::int64_t>(count)) + " " + std::string(count == 1 ? one : many);
}

std::size_t errors_in(const base::Faults& faults) {
  std::size_t errors = 0;
  for (const base::Error& fault : faults.list) errors += fault.warning ? 0 : 1;
  return errors;
}

}  // namespace

ExitCode check_scenarios(const CheckOptions& options) {
  bool missing = false;
  bool faulty = false;
  for (const std::string& path : options.scenarios) {
    std::error_code trouble;
    if (!std::filesystem::exists(path, trouble)) {
      say("proofstand: " + path + ": there is no such file. check the path");
      missing = true;
      continue;
    }
    scenario::Loaded loaded = scenario::load_scenario(path);
    base::Faults faults = loaded.faults;
    if (options.deep && loaded.usable) {
      for (base::Error& fault : deep_faults(path, *loaded.file).list) faults.add(std::move(fault));
    }
    std::string lines;
    for (const base::Error& fault : faults.list) lines += (fault.warning ? "warning: " : "") + fault.sentence() + "\n";
    const std::size_t errors = errors_in(faults);
    const std::size_t warnings = faults.list.size() - errors;
    lines += path + ": " + (errors == 0 ? "fair" : count_words(errors, "fault", "faults"));
    if (warnings > 0) lines += ", " + count_words(warnings, "warning", "warnings");
    if (loaded.usable) lines += ", " + count_words(scenario::variant_count(*loaded.file), "variant", "variants");
    print_data(lines + "\n");
    faulty = faulty || errors > 0;
  }
  if (missing) return ExitCode::Files;
  return faulty ? ExitCode::Negative : ExitCode::Done;
}

}  // namespace proofstand::cli
