#include "sim/hand/seating.h"

namespace proofstand::hand {
namespace {

constexpr double kFirmPress_n = 80.0;
// a tool told to sit only so deep is pressed hardly more than its own friction asks for
constexpr double kBarePress_n = 12.0;

bool turns_bolts(bench::ThingKind kind) {
  return kind == bench::ThingKind::LKey || kind == bench::ThingKind::Driver || kind == bench::ThingKind::ClickDriver;
}

}  // namespace

ThingId turning_tool(Work& work, const Instruction& line) {
  const ThingId tool = line.tool != kNoThing ? line.tool : work.sense(work.memory.main).holding;
  return tool != kNoThing && turns_bolts(work.kind(tool)) ? tool : kNoThing;
}

double press_of(Work& work, const Instruction& line) {
  if (line.force_n) return *line.force_n;
  if (line.share_1) return base::clamp_1(1.0 + (kBarePress_n - 1.0) * *line.share_1, 1.0, kFirmPress_n);
  const HandSkill& skill = work.skill();
  const double share = skill.depth_share_1 + skill.depth_share_sd_1 * work.normal("depth");
  return kFirmPress_n * base::clamp_1(share, 0.05, 1.0);
}

bool told_how(const Instruction& line) { return line.force_n || line.tilt_rad || line.share_1; }

Task seat(Work& work, HandId hand, ThingId tool, Grip grip, const Instruction& line, std::uint64_t attempt) {
  if (!rests_at(work, hand, PlaceKind::BoltRecess, line.bolt) || work.sense(hand).holding != tool) {
    co_await draw_away(work, hand);
    co_await take(work, hand, tool, grip);
    const double tilt_rad = work.skill().tool_tilt_sd_rad * work.normal("tool tilt", attempt);
    Pose pose;
    pose.thing = owner_of(work, PlaceKind::BoltRecess, kNoThing);
    pose.place = PlaceKind::BoltRecess;
    pose.bolt = line.bolt;
    pose.tilt_x_urad = micro(line.tilt_rad ? *line.tilt_rad : tilt_rad / static_cast<double>(1 + attempt));
    co_await bring(work, hand, pose);
  } else {
    co_await grip_at(work, hand, grip);
  }
  co_await press(work, hand, attempt == 0 ? press_of(work, line) : kFirmPress_n);
}

}  // namespace proofstand::hand
