// The main views and the job on its way, drawn and compared with the pictures that are kept. What differs is written to
// the folder `pictures` beside this program, to be looked at; with --accept it becomes what is kept.
// Usage: proofstand_pictures [--accept] [NAME...]
#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

#include "sim/cli/studio.h"
#include "sim/picture/png.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/files.h"
#include "sim/record/replayer.h"
#include "tests/pictures/compare.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

constexpr picture::Size kSize{320, 180};
constexpr std::size_t kLargestPicture = std::size_t{8} << 20;

struct KeptPicture {
  const char* name;
  const char* view;
  int at_s;  // of the reference script
};

// moments by what is done then: measuring, a bolt being run out, the bare seat being wiped, gloved hands fitting,
// turning the rotor against its bolts, wiping the track, the wheel back in the bike
constexpr std::array<KeptPicture, 17> kPictures = {{{"workplace", "workplace", 0},
                                                    {"wheel", "wheel", 0},
                                                    {"rotor", "rotor", 0},
                                                    {"flange", "flange", 0},
                                                    {"bolt", "bolt 4", 0},
                                                    {"tray", "tray", 0},
                                                    {"card", "card", 0},
                                                    {"micrometer", "micrometer", 0},
                                                    {"vernier", "vernier", 0},
                                                    {"dial", "dial", 0},
                                                    {"torque-scale", "torque scale", 0},
                                                    {"measuring", "workplace", 20},
                                                    {"running-out", "rotor", 100},
                                                    {"bare-seat", "flange", 155},
                                                    {"gloved", "workplace", 200},
                                                    {"wiping", "rotor", 556},
                                                    {"in-the-bike", "caliper", 640}}};

struct Count {
  int good = 0;
  int all = 0;
};

picture::Image moved_by(const picture::Image& image, std::size_t texels) {
  picture::Image moved = image;
  std::rotate(moved.bytes.begin(), moved.bytes.begin() + static_cast<std::ptrdiff_t>(3 * texels), moved.bytes.end());
  return moved;
}

// kept pictures are worth nothing when a part could move by a few texels unnoticed
bool notices_movement(const picture::Image& image) { return !is_within_tolerance(compare(image, moved_by(image, 3))); }

void judge(const KeptPicture& kept, const picture::Image& image, bool accept, Count& count) {
  const std::string path = std::string(PROOFSTAND_ROOT) + "/tests/pictures/kept/" + kept.name + ".png";
  const auto png = picture::png_from(image);
  if (!png) return;
  if (accept) {
    if (record::save_bytes(path, *png)) ++count.good;
    return;
  }
  const auto bytes = record::load_bytes(path, kLargestPicture);
  const auto before = bytes ? picture::image_from_png(*bytes) : base::Result<picture::Image>(bytes.error());
  const Apart apart = before ? compare(*before, image) : Apart{};
  const bool good = is_within_tolerance(apart) && notices_movement(image);
  std::printf("   %-14s mean %.2f levels, %.2f %% changed%s\n", kept.name, apart.mean_levels,
              100.0 * apart.changed_share_1, good ? "" : "  DIFFERS");
  if (good) {
    ++count.good;
    return;
  }
  const std::string folder = std::string(PROOFSTAND_ROOT) + "/build/pictures/";
  std::filesystem::create_directories(folder);
  const std::string file = folder + kept.name + ".png";
  if (record::save_bytes(file, *png)) std::printf("      look at %s beside %s\n", file.c_str(), path.c_str());
}

base::Result<base::Done> draw_all(bool accept, const std::vector<std::string>& names, Count& count) {
  const scenario::DrawnScenario scenario = worn_front_rotor(1);
  const ScriptedAttempt worked = work_attempt(scenario, reference_script());
  const auto attempt = record::read_attempt(*worked.bytes, "the reference script");
  if (!attempt) return attempt.error();
  record::Replayer replayer(scenario.setup, attempt->actions);
  auto studio = cli::Studio::open(scenario.setup);
  if (!studio) return studio.error();
  std::printf("   %s\n", studio->renderer().c_str());
  picture::Quality quality;
  quality.fineness = picture::Fineness::Still;
  quality.samples = 32;
  for (const KeptPicture& kept : kPictures) {
    if (!names.empty() && std::find(names.begin(), names.end(), kept.name) == names.end()) continue;
    ++count.all;
    const auto image = studio->take(replayer.at(kept.at_s * base::kTicksPerSecond), kept.view, kSize, quality);
    if (!image) {
      std::printf("   %-14s %s\n", kept.name, image.error().sentence().c_str());
      continue;
    }
    judge(kept, *image, accept, count);
  }
  return base::Done{};
}

}  // namespace
}  // namespace proofstand::testing

int main(int argc, char** argv) {
  std::vector<std::string> names(argv + 1, argv + argc);
  const auto accepted = std::find(names.begin(), names.end(), "--accept");
  const bool accept = accepted != names.end();
  if (accept) names.erase(accepted);
  // the same renderer everywhere, whatever card there is
  setenv("GALLIUM_DRIVER", "llvmpipe", 1);
  setenv("LIBGL_ALWAYS_SOFTWARE", "1", 1);
  proofstand::testing::Count count;
  const auto drawn = proofstand::testing::draw_all(accept, names, count);
  if (!drawn) std::printf("%s\n", drawn.error().sentence().c_str());
  std::printf("pictures %d/%d %s\n", count.good, count.all, accept ? "accepted" : "within tolerance");
  return drawn && count.all > 0 && count.good == count.all ? 0 : 1;
}
