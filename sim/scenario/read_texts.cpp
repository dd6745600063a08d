#include "sim/scenario/read_texts.h"

#include <algorithm>

#include "sim/base/words.h"

namespace proofstand::scenario {
namespace {

void read_languages(FieldReader& reader, DrawnScenario& scenario) {
  scenario.languages = {"en"};
  reader.list("languages", scenario.languages);
  if (std::find(scenario.languages.begin(), scenario.languages.end(), "en") == scenario.languages.end()) {
    reader.reading().error("S08", reader.spot_of("languages"), "English is missing from the languages",
                           "add \"en\": it stands in wherever another language lacks a text");
  }
}

void read_stages(FieldReader& reader, DrawnScenario& scenario) {
  std::vector<std::string> here;
  std::vector<Spot> spots;
  reader.needs("stages", "list the stages that belong to this exercise, e.g. stages = [\"remove\", \"fit\"]");
  reader.list("stages", here, &spots);
  for (const std::string_view name : stage_names()) {
    scenario.stages.push_back({std::string(name), std::find(here.begin(), here.end(), name) != here.end()});
  }
  for (std::size_t i = 0; i < here.size(); ++i) {
    const auto& known = stage_names();
    if (std::find(known.begin(), known.end(), here[i]) != known.end()) continue;
    const std::string_view near = base::nearest_word(here[i], known);
    reader.reading().error(
        "S16", spots[i], "\"" + here[i] + "\" is no stage of the job",
        near.empty()
            ? "write one of take-in, diagnose, decide, make-safe, remove, prepare, fit, tighten, clean, verify, record"
            : "did you mean \"" + std::string(near) + "\"?");
  }
}

/// `cautions` picks from the `[caution.ID]` tables; each becomes one paragraph.
void read_cautions(FieldReader& reader, DrawnScenario& scenario) {
  std::vector<std::string> wanted;
  std::vector<Spot> spots;
  reader.list("cautions", wanted, &spots);
  const Node* known = reader.table_at("caution");
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const Node* caution = known != nullptr ? known->find(wanted[i]) : nullptr;
    if (caution == nullptr || !caution->is_table()) {
      reader.reading().error("S05", spots[i], "there is no caution called \"" + wanted[i] + "\"",
                             "add [caution.NAME] with its texts, or include the shared cautions");
      continue;
    }
    for (const Member& text : caution->members) {
      std::string& all = scenario.cautions[text.key];
      all += (all.empty() ? "" : "\n\n") + text.node.text;
    }
  }
  if (wanted.empty()) {
    reader.reading().error("S03", reader.table().at, "the exercise names no cautions",
                           "write cautions = [\"brakes\"] and include the shared cautions");
  }
}

void missing_language(const Reading& reading, const Node& texts, const std::string& name,
                      const std::vector<std::string>& languages) {
  for (const std::string& language : languages) {
    if (texts.is_table() ? texts.find(language) != nullptr : language == "en") continue;
    reading.error("S08", texts.at, name + " has no text in \"" + language + "\"",
                  "add " + name + "." + language + ", or take the language out of languages");
  }
}

/// Calls on every text table below `root.KEY.*.label`.
void check_labels(const Reading& reading, const Node& root, std::string_view key,
                  const std::vector<std::string>& languages) {
  const Node* table = root.find(key);
  if (table == nullptr) return;
  for (const Member& member : table->members) {
    const std::string name = std::string(key) + "." + member.key + ".label";
    if (const Node* label = member.node.find("label")) {
      missing_language(reading, *label, name, languages);
    } else {
      reading.error("S08", member.key_at, std::string(key) + "." + member.key + " has no label", "add " + name + ".en");
    }
  }
}

}  // namespace

const std::vector<std::string_view>& stage_names() {
  static const std::vector<std::string_view> names = {"take-in", "diagnose", "decide", "make-safe", "remove", "prepare",
                                                      "fit",     "tighten",  "clean",  "verify",    "record"};
  return names;
}

void read_texts(FieldReader& reader, DrawnScenario& scenario) {
  read_languages(reader, scenario);
  reader.needs("title", "add title.en = \"...\"");
  reader.needs("task", "add task.en = \"...\": what the trainee is asked to do");
  reader.texts("title", scenario.title);
  reader.texts("task", scenario.task);
  reader.texts("sheet_note", scenario.sheet_note);
  reader.text("reference_script", scenario.reference_script);
  double limit_s = 0.0;
  reader.quantity("time_limit", base::Dimension::Time, {1.0, 86400.0}, limit_s);
  scenario.time_limit = base::ticks_from(limit_s);
  read_stages(reader, scenario);
  read_cautions(reader, scenario);
}

void check_languages(const Reading& reading, const Node& root, const DrawnScenario& scenario) {
  for (const char* key : {"title", "task", "sheet_note"}) {
    if (const Node* texts = root.find(key)) missing_language(reading, *texts, key, scenario.languages);
  }
  check_labels(reading, root, "sheet", scenario.languages);
  check_labels(reading, root, "card", scenario.languages);
  if (const Node* cautions = root.find("caution")) {
    for (const Member& caution : cautions->members) {
      missing_language(reading, caution.node, "caution." + caution.key, scenario.languages);
    }
  }
  const Node* rules = root.find("rule");
  if (rules == nullptr) return;
  for (const Member& rule : rules->members) {
    const Node* id = rule.node.find("id");
    const std::string name = id != nullptr ? "rule \"" + id->text + "\"" : std::string("a rule");
    for (const char* key : {"title", "why"}) {
      if (const Node* texts = rule.node.find(key)) {
        missing_language(reading, *texts, name + "." + key, scenario.languages);
      } else {
        reading.error("S08", rule.node.at, name + " has no " + key, std::string("add ") + key + ".en = \"...\"");
      }
    }
  }
}

}  // namespace proofstand::scenario
