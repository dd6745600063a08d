#include "tests/support/worked_job.h"

#include <limits>
#include <utility>

#include "sim/base/number_text.h"

namespace proofstand::testing {

std::vector<event::Record> WorkedJob::records(std::string_view kind) const {
  std::vector<event::Record> found;
  const auto id = bench.vocabulary().find_kind(kind);
  for (const event::Record& record : bench.events()) {
    if (id && record.kind == *id) found.push_back(record);
  }
  return found;
}

double WorkedJob::field(const event::Record& record, std::string_view name) const {
  const auto at = event::Vocabulary::find_field(bench.vocabulary().kinds[record.kind], name);
  if (!at || !record.knows(*at)) return std::numeric_limits<double>::quiet_NaN();
  return record.values[*at];
}

std::string WorkedJob::told() const {
  std::string text;
  for (const event::Record& record : bench.events()) {
    const event::Kind& kind = bench.vocabulary().kinds[record.kind];
    text += base::text_fixed(base::seconds(record.tick), 2) + " " + kind.name;
    for (std::size_t i = 0; i < kind.fields.size(); ++i) {
      if (!record.knows(i)) continue;
      const event::Field& f = kind.fields[i];
      const auto index = static_cast<std::size_t>(record.values[i]);
      text += " " + f.name + "=";
      if (f.type == event::FieldType::Choice && index < f.choices.size()) {
        text += f.choices[index];
      } else if (f.type == event::FieldType::Item && index < bench.vocabulary().sets[f.set].items.size()) {
        text += bench.vocabulary().sets[f.set].items[index];
      } else {
        text += base::text_for_people(record.values[i], 5);
      }
    }
    text += "\n";
  }
  return text;
}

WorkedJob work_job(std::string_view script, bench::BenchSetup setup, const hand::HandSkill& skill, std::uint64_t seed) {
  setup.strength_percentile_1 = skill.strength_percentile_1;
  const hand::ReadScript read = hand::read_hand_script(script, "job.hand", setup);
  WorkedJob job{bench::Bench(std::move(setup)), false, {}};
  if (!read.script) {
    job.trouble = read.faults.list.front();
    return job;
  }
  hand::ModelledHand worker(read.script, skill, seed);
  const hand::ModelledHand::Sink sink = [&job](const event::Action& action) { job.bench.apply(action); };
  hand::ModelledHand::Step step = hand::ModelledHand::Step::Going;
  // no job here takes three hours; one that does goes round in circles
  constexpr base::Tick longest = 3 * 3600 * base::kTicksPerSecond;
  while (step == hand::ModelledHand::Step::Going && job.bench.tick() < longest) step = worker.step(job.bench, sink);
  job.finished = step == hand::ModelledHand::Step::Finished;
  if (!job.finished) job.trouble = worker.trouble();
  if (step == hand::ModelledHand::Step::Going)
    job.trouble.what = "line " + std::to_string(worker.line()) + " takes for ever";
  return job;
}

}  // namespace proofstand::testing
