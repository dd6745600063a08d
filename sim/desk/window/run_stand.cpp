#include "sim/desk/window/run_stand.h"

#include <chrono>
#include <cstdio>

#include "sim/base/number_text.h"
#include "sim/picture/png.h"
#include "sim/record/files.h"

namespace proofstand::desk {
namespace {

// a quarter of a second of bench time is the most that may be lost
constexpr double kIdle_s = 0.2;
constexpr int kMostFramesOfAPicture = 200;

double seconds_now() {
  const std::chrono::duration<double> now = std::chrono::steady_clock::now().time_since_epoch();
  return now.count();
}

Settings settings_for(const StandRun& run) {
  Settings out = run.stand.settings ? *run.stand.settings : load_settings();
  if (!run.language.empty()) out.language = run.language;
  if (run.text_percent > 0) out.text_percent = run.text_percent;
  return out;
}

// a clock of its own, so that the same asking gives the same picture
base::Result<base::Done> draw_once(WindowLayer& window, Stand& stand, const std::string& file) {
  double now_s = 0.0;
  for (int i = 0; i < kMostFramesOfAPicture && (i < 8 || stand.due()); ++i) {
    stand.frame(now_s);
    now_s += 1.0 / 30.0;
  }
  const Picture drawn = window.read();
  picture::Image image{{drawn.width, drawn.height}, {}};
  for (std::size_t i = 0; i + 3 < drawn.bytes.size(); i += 4) {
    image.bytes.insert(image.bytes.end(), drawn.bytes.begin() + static_cast<std::ptrdiff_t>(i),
                       drawn.bytes.begin() + static_cast<std::ptrdiff_t>(i) + 3);
  }
  const auto png = picture::png_from(image);
  if (!png) return png.error();
  return record::save_bytes(file, *png);
}

base::Result<base::Done> live(WindowLayer& window, Stand& stand) {
  while (!stand.done() && !window.closing()) {
    window.take_events(stand.due() ? 0.0 : kIdle_s);
    if (stand.input_waits() || stand.due()) {
      stand.frame(seconds_now());
    } else {
      stand.idle(seconds_now());
    }
    if (stand.lost()) {
      return base::Error{"no-opengl", "the window", "the graphics driver took the window's picture away",
                         "start the stand again: the attempt is kept and goes on where it was"};
    }
  }
  return base::Done{};
}

}  // namespace

base::Result<glm::ivec2> size_from_words(const std::string& words) {
  const std::size_t cross = words.find('x');
  const std::string second = cross == std::string::npos ? std::string() : words.substr(cross + 1);
  const std::int64_t width = base::int_from_text(words.substr(0, cross)).value_or(0);
  const std::int64_t height = base::int_from_text(second).value_or(0);
  if (width < 64 || height < 64 || width > 16384 || height > 16384) {
    return base::Error{"size", words, "that is no size of a picture",
                       "write width and height in pixels, such as 1280x720"};
  }
  return glm::ivec2{static_cast<int>(width), static_cast<int>(height)};
}

base::Result<base::Done> run_stand(const StandRun& run) {
  const auto size = size_from_words(run.size);
  if (!size) return size.error();
  WindowAsk ask;
  ask.size_px = *size;
  ask.screenless = !run.picture.empty();
  auto window = WindowLayer::open(ask);
  if (!window) return window.error();
  StandAsk asked = run.stand;
  const bool own = asked.settings.has_value() || ask.screenless || !run.language.empty() || run.text_percent > 0;
  if (own) asked.settings = settings_for(run);
  auto stand = Stand::open(**window, std::move(asked));
  if (!stand) return stand.error();
  return ask.screenless ? draw_once(**window, **stand, run.picture) : live(**window, **stand);
}

}  // namespace proofstand::desk
