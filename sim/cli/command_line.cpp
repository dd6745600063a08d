#include "sim/cli/command_line.h"

#include <CLI/CLI.hpp>
#include <exception>

#include "sim/bench/bench.h"
#include "sim/cli/commands.h"
#include "sim/cli/talk.h"
#include "sim/record/attempt.h"
#include "sim/record/trace_file.h"

namespace proofstand::cli {
namespace {

constexpr const char* kExamples =
    "Examples:\n"
    "  proofstand run scenarios/six-bolt/worn-front-rotor.toml --script demo/scripts/worn-front-rotor.hand \\\n"
    "      --attempt my.attempt\n"
    "  proofstand mark my.attempt --html my.html\n"
    "  proofstand replay my.attempt --events > my.trace\n"
    "  proofstand check scenarios/six-bolt/worn-front-rotor.toml --deep\n"
    "  proofstand picture my.attempt --view rotor -o rotor.png\n"
    "  proofstand joint --thread M5x0.8 --torque \"5 N\xC2\xB7m\" --arm \"4 in\"\n"
    "\n"
    "Brakes are safety parts. This program trains and examines judgement and sequence; it replaces neither the\n"
    "maker's instructions, nor supervised practice on real parts, nor local rules and licensed practice.\n"
    "\n"
    "Exit codes: 0 done or passed \xC2\xB7 1 judged negative \xC2\xB7 2 usage \xC2\xB7 3 input that cannot be read as "
    "what it "
    "should be \xC2\xB7 4 files \xC2\xB7 70 a bug of ours\n";

struct Asked {
  RunOptions run;
  MarkOptions mark;
  ReplayOptions replay;
  JudgeOptions judge;
  CheckOptions check;
  JointOptions joint;
  StandOptions stand;
  PictureOptions picture;
  FilmOptions film;
};

void add_run(CLI::App& app, RunOptions& options) {
  CLI::App* run = app.add_subcommand("run", "work a scenario with a hand script and record the attempt");
  run->add_option("SCENARIO", options.scenario, "scenario file (.toml)")->required();
  run->add_option("--script", options.script, "hand script (.hand)")->required();
  run->add_option("--attempt", options.attempt, "file to record to (.attempt); must not exist yet")->required();
  run->add_option("--seed", options.seed, "draws the variant and the bench's own scatter")
      ->check(CLI::NonNegativeNumber)
      ->capture_default_str();
  run->add_option("--hand", options.hand, "who works: novice or journeyman")
      ->check(CLI::IsMember({"novice", "journeyman"}))
      ->capture_default_str();
  run->add_option("--hand-seed", options.hand_seed, "draws the hand's own scatter")
      ->check(CLI::NonNegativeNumber)
      ->capture_default_str();
  run->add_option("--way", options.way, "guided, practice or exam")
      ->check(CLI::IsMember({"guided", "practice", "exam"}))
      ->capture_default_str();
  run->add_option("--who", options.who, "name to stand on the mark sheet; may be left out");
  run->add_flag("--resume", options.resume, "go on with an attempt that was cut off");
  run->footer(
      "Example:\n  proofstand run scenarios/six-bolt/worn-front-rotor.toml --script "
      "demo/scripts/worn-front-rotor.hand --seed 3 --attempt a.attempt\n");
}

void add_mark(CLI::App& app, MarkOptions& options) {
  CLI::App* mark = app.add_subcommand("mark", "mark an attempt: text by default; exit code 0 passed, 1 not");
  mark->add_option("ATTEMPT", options.attempt, "attempt file")->required();
  mark->add_flag("--json", options.json, "the mark sheet as JSON");
  mark->add_option("--html", options.html, "write the mark sheet as one self-contained page to this file");
  mark->add_option("--language", options.language, "language tag of the sentences")->capture_default_str();
  mark->footer("Example:\n  proofstand mark a.attempt --html a.html\n");
}

void add_replay(CLI::App& app, ReplayOptions& options) {
  CLI::App* replay = app.add_subcommand("replay", "work an attempt again and compare; 0 equal, 1 diverged");
  replay->add_option("ATTEMPT", options.attempt, "attempt file")->required();
  replay->add_flag("--events", options.events, "print the events as JSON lines, as `judge` reads them");
  replay->footer("Example:\n  proofstand replay a.attempt --events > a.trace\n");
}

void add_judge(CLI::App& app, JudgeOptions& options) {
  CLI::App* judge = app.add_subcommand("judge", "judge a trace by rules alone, to try a rule or to doubt one");
  judge->add_option("RULES", options.rules, "file with rules (.rules.toml, or a scenario)")->required();
  judge->add_option("--events", options.events, "trace as JSON lines, or - for standard input")->required();
  judge->add_flag("--json", options.json, "cases, verdicts and evidence as JSON");
  judge->footer(
      "Example:\n  proofstand replay a.attempt --events | proofstand judge my.rules.toml --events -\n\n"
      "A trace begins with a line that may bring kinds of its own:\n"
      "  "
      "{\"proofstand\":\"trace\",\"format\":1,\"ticks_per_s\":240,\"sets\":[{\"name\":\"cups\",\"items\":[\"red\","
      "\"blue\"]}],"
      "\"kinds\":[{\"name\":\"poured\",\"fields\":[{\"name\":\"cup\",\"type\":\"item\",\"set\":\"cups\"}]}]}\n"
      "  {\"t\":120,\"kind\":\"poured\",\"cup\":\"red\"}\n"
      "  {\"end\":480,\"reason\":\"finished\"}\n");
}

void add_check(CLI::App& app, CheckOptions& options) {
  CLI::App* check = app.add_subcommand("check", "check scenario files; 0 clean, 1 faults found");
  check->add_option("SCENARIO", options.scenarios, "scenario files")->required();
  check->add_flag("--deep", options.deep,
                  "also search for rules that cannot all hold, and work the reference script on every variant");
  check->footer("Example:\n  proofstand check scenarios/six-bolt/*.toml --deep\n");
}

void add_joint(CLI::App& app, JointOptions& options) {
  CLI::App* joint = app.add_subcommand("joint", "compute a bolted joint from its torque");
  joint->add_option("--thread", options.thread, "metric thread, such as M5x0.8")->required();
  joint->add_option("--torque", options.torque, "such as \"5 N\xC2\xB7m\" or \"44 in-lbf\"")->required();
  joint
      ->add_option("--friction", options.friction,
                   "clean, dry, patch, locker-wet, oiled, greased ... or a number such as 0.14")
      ->capture_default_str();
  joint->add_option("--bearing", options.bearing, "mean bearing diameter under the head")->capture_default_str();
  joint->add_option("--engagement", options.engagement, "length of full thread engaged")->capture_default_str();
  joint->add_option("--grade", options.grade, "8.8, 10.9, 12.9 or A2-70")->capture_default_str();
  joint->add_option("--arm", options.arm, "distance of the hand from the bolt: adds the force it needs");
  joint->add_flag("--json", options.json, "figures as JSON");
  joint->footer(
      "Example:\n  proofstand joint --thread M5x0.8 --torque \"5 N\xC2\xB7m\" --friction 0.14 --arm \"4 in\"\n");
}

void add_picture(CLI::App& app, PictureOptions& options) {
  CLI::App* picture = app.add_subcommand("picture", "draw the workplace at one moment; needs no display");
  picture->add_option("SOURCE", options.source, "scenario or attempt")->required();
  picture->add_option("-o,--output", options.file, "file to write the picture to (.png)")->required();
  picture->add_option("--at", options.at, "moment of an attempt, such as 83.5 or 1:23.5; its end when left out");
  picture->add_option("--view", options.view, "what is looked at, such as workplace, rotor, \"bolt 4\" or micrometer")
      ->capture_default_str();
  picture->add_option("--size", options.size, "width x height in pixels")->capture_default_str();
  picture->add_option("--seed", options.seed, "draws a scenario's variant")
      ->check(CLI::NonNegativeNumber)
      ->capture_default_str();
  picture->add_flag("--draft", options.draft, "quick: rough edges, hard shadows");
  picture->footer("Example:\n  proofstand picture a.attempt --at 1:23.5 --view rotor -o rotor.png\n");
}

void add_film(CLI::App& app, FilmOptions& options) {
  CLI::App* film = app.add_subcommand("film", "draw an attempt as a row of pictures; needs no display");
  film->add_option("ATTEMPT", options.attempt, "attempt file")->required();
  film->add_option("-o,--output", options.folder, "folder for frame-000001.png and on; made when it is missing")
      ->required();
  film->add_option("--every", options.every, "time from frame to frame")->capture_default_str();
  film->add_option("--from", options.from, "moment to begin at");
  film->add_option("--to", options.to, "moment to end at");
  film->add_option("--view", options.view, "what is looked at, as for picture")->capture_default_str();
  film->add_option("--size", options.size, "width x height in pixels")->capture_default_str();
  film->add_flag("--draft", options.draft, "quick: rough edges, hard shadows");
  film->footer("Example:\n  proofstand film a.attempt --every \"0.25 s\" --from 1:00 --to 1:20 -o frames\n");
}

void add_stand(CLI::App& app, StandOptions& options) {
  CLI::App* stand = app.add_subcommand("stand", "open the stand: do the job by hand in its window");
  stand->add_option("SCENARIO", options.scenario, "scenario file (.toml); left out: the start sheet");
  stand->add_option("--way", options.way, "guided, practice or exam")
      ->check(CLI::IsMember({"guided", "practice", "exam"}))
      ->capture_default_str();
  stand->add_option("--attempt", options.attempt, "file to record to; one that is still open is gone on with");
  stand->add_option("--seed", options.seed, "draws the variant and the bench's own scatter")
      ->check(CLI::NonNegativeNumber)
      ->capture_default_str();
  stand->add_option("--who", options.who, "name to stand on the mark sheet; may be left out");
  stand->add_option("--language", options.language, "language tag of the window");
  stand->add_option("--text", options.text_percent, "size of words in per cent, 75 to 300")->check(CLI::Range(75, 300));
  stand->add_option("--picture", options.picture,
                    "draw the window once into this PNG file, without a display, and end");
  stand->add_option("--size", options.size, "of that picture")->capture_default_str();
  stand->footer("Example:\n  proofstand stand scenarios/six-bolt/worn-front-rotor.toml --way guided\n");
}

int parse_and_run(int argc, char** argv, const std::string& version, const OpenStand& stand) {
  CLI::App app{"proofstand: a bench on which removing and fitting disc-brake rotors is practised and proved"};
  app.footer(kExamples);
  app.require_subcommand(0, 1);  // none: the stand
  app.set_version_flag("--version", "proofstand " + version + " (bench " + std::to_string(bench::kBenchVersion) +
                                        ", attempt format " + std::to_string(record::kAttemptFormat) +
                                        ", trace format " + std::to_string(record::kTraceFormat) + ")");
  Asked asked;
  asked.run.program = version;
  add_run(app, asked.run);
  add_mark(app, asked.mark);
  add_replay(app, asked.replay);
  add_judge(app, asked.judge);
  add_check(app, asked.check);
  add_joint(app, asked.joint);
  asked.stand.program = version;
  add_stand(app, asked.stand);
  add_picture(app, asked.picture);
  add_film(app, asked.film);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    // help and version are asked for, not wrong
    const int code = app.exit(error);
    return code == 0 ? 0 : static_cast<int>(ExitCode::Usage);
  }
  ExitCode code = ExitCode::Usage;
  if (app.got_subcommand("run")) code = run_scenario(asked.run);
  if (app.got_subcommand("mark")) code = mark_attempt_file(asked.mark);
  if (app.got_subcommand("replay")) code = replay_attempt_file(asked.replay);
  if (app.got_subcommand("judge")) code = judge_trace(asked.judge);
  if (app.got_subcommand("check")) code = check_scenarios(asked.check);
  if (app.got_subcommand("joint")) code = compute_joint(asked.joint);
  if (app.got_subcommand("stand") || app.get_subcommands().empty()) code = open_stand(asked.stand, stand);
  if (app.got_subcommand("picture")) code = draw_picture(asked.picture);
  if (app.got_subcommand("film")) code = draw_film(asked.film);
  return static_cast<int>(code);
}

}  // namespace

int run_command_line(int argc, char** argv, const std::string& version, const OpenStand& stand) {
  try {
    return parse_and_run(argc, argv, version, stand);
  } catch (const std::exception& trouble) {
    say(std::string("proofstand: this is a bug of ours: ") + trouble.what());
    return static_cast<int>(ExitCode::OurBug);
  }
}

}  // namespace proofstand::cli
