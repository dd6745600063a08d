#include "sim/cli/commands.h"
#include "sim/cli/moment.h"
#include "sim/cli/studio.h"
#include "sim/cli/talk.h"
#include "sim/picture/png.h"
#include "sim/record/files.h"

namespace proofstand::cli {
namespace {

constexpr int kSamples = 64;  // nobody waits at a frame rate here

base::Result<base::Done> take_picture(const PictureOptions& options) {
  const auto size = size_from_words(options.size);
  if (!size) return size.error();
  auto moments = Moments::open(options.source, options.seed);
  if (!moments) return moments.error();
  base::Tick tick = moments->end();
  if (!options.at.empty()) {
    const auto asked = tick_from_words(options.at);
    if (!asked) return asked.error();
    tick = *asked;
  }
  const auto bench = moments->at(tick);
  if (!bench) return bench.error();
  auto studio = Studio::open(moments->setup());
  if (!studio) return studio.error();
  picture::Quality quality;
  quality.fineness = options.draft ? picture::Fineness::Draft : picture::Fineness::Still;
  quality.samples = kSamples;
  const auto image = studio->take(**bench, options.view, *size, quality);
  if (!image) return image.error();
  const auto png = picture::png_from(*image);
  if (!png) return png.error();
  return record::save_bytes(options.file, *png);
}

}  // namespace

ExitCode draw_picture(const PictureOptions& options) {
  const auto taken = take_picture(options);
  if (!taken) return say_picture_error(taken.error());
  say(options.file);
  return ExitCode::Done;
}

}  // namespace proofstand::cli
