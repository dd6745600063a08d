#include <algorithm>
#include <filesystem>

#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/cli/commands.h"
#include "sim/cli/moment.h"
#include "sim/cli/studio.h"
#include "sim/cli/talk.h"
#include "sim/picture/png.h"
#include "sim/record/files.h"

namespace proofstand::cli {
namespace {

constexpr std::int64_t kMostFrames = 100000;  // more is a mistyped step
constexpr int kBarCells = 30;

struct Reel {
  base::Tick step = 0;
  base::Tick from = 0;
  base::Tick to = 0;
  [[nodiscard]] std::int64_t frames() const { return (to - from) / step + 1; }
};

base::Result<Reel> plan(const FilmOptions& options, base::Tick end) {
  const auto every = base::parse_quantity_as(options.every, base::Dimension::Time);
  const auto plain_s = base::double_from_text(options.every, true);
  if (!every && !plain_s) return every.error();
  const double step_s = every ? *every : *plain_s;
  Reel reel;
  reel.to = end;
  reel.step = static_cast<base::Tick>(step_s * static_cast<double>(base::kTicksPerSecond) + 0.5);
  if (!(step_s > 0.0) || reel.step < 1)
    return base::Error{"time", options.every, "this is no step from frame to frame", "write one such as \"0.1 s\""};
  if (!options.from.empty()) {
    const auto from = tick_from_words(options.from);
    if (!from) return from.error();
    reel.from = *from;
  }
  if (!options.to.empty()) {
    const auto to = tick_from_words(options.to);
    if (!to) return to.error();
    reel.to = std::min(*to, end);
  }
  if (reel.from > reel.to) {
    return base::Error{"time", clock_words(reel.from),
                       "the film would end at " + clock_words(reel.to) + ", before that", "let it begin earlier"};
  }
  if (reel.frames() > kMostFrames) {
    return base::Error{"time", options.every, "that would be " + base::text_from_int(reel.frames()) + " frames",
                       "take a longer step, or a stretch with --from and --to"};
  }
  return reel;
}

std::string bar_words(std::int64_t done, std::int64_t all, base::Tick tick, base::Tick end) {
  const auto filled = static_cast<int>(done * kBarCells / all);
  std::string bar;
  for (int i = 0; i < kBarCells; ++i) bar += i < filled ? "\xE2\x94\x81" : "\xE2\x94\x80";
  return bar + " " + base::text_from_int(done * 100 / all) + " %, " + clock_words(tick) + " of " + clock_words(end);
}

std::string frame_path(const std::string& folder, std::int64_t number) {
  std::string digits = base::text_from_int(number);
  digits.insert(0, digits.size() < 6 ? 6 - digits.size() : 0, '0');
  return folder + "/frame-" + digits + ".png";
}

base::Result<std::int64_t> take_film(const FilmOptions& options) {
  const auto size = size_from_words(options.size);
  if (!size) return size.error();
  auto moments = Moments::open(options.attempt, 0);
  if (!moments) return moments.error();
  if (!moments->is_attempt()) {
    return base::Error{"not-an-attempt", options.attempt, "this is a scenario; nothing happens in it yet",
                       "give an attempt; `run` records one"};
  }
  const auto reel = plan(options, moments->end());
  if (!reel) return reel.error();
  std::error_code trouble;
  std::filesystem::create_directories(options.folder, trouble);
  if (trouble) {
    return base::Error{"file-write", options.folder, "the folder cannot be made (" + trouble.message() + ")",
                       "choose another with -o"};
  }
  auto studio = Studio::open(moments->setup());
  if (!studio) return studio.error();
  picture::Quality quality;
  quality.fineness = options.draft ? picture::Fineness::Draft : picture::Fineness::Normal;
  Progress progress("filming");
  for (std::int64_t frame = 0; frame < reel->frames(); ++frame) {
    const base::Tick tick = reel->from + frame * reel->step;
    progress.show_now(bar_words(frame, reel->frames(), tick, reel->to));
    const auto bench = moments->at(tick);
    if (!bench) return bench.error();
    const auto image = studio->take(**bench, options.view, *size, quality);
    if (!image) return image.error();
    const auto png = picture::png_from(*image);
    if (!png) return png.error();
    const auto saved = record::save_bytes(frame_path(options.folder, frame + 1), *png);
    if (!saved) return saved.error();
  }
  return reel->frames();
}

}  // namespace

ExitCode draw_film(const FilmOptions& options) {
  const auto frames = take_film(options);
  if (!frames) return say_picture_error(frames.error());
  say(base::text_from_int(*frames) + (*frames == 1 ? " frame in " : " frames in ") + options.folder);
  return ExitCode::Done;
}

}  // namespace proofstand::cli
