#include "sim/desk/commands.h"

namespace proofstand::desk {
namespace {

using S = Situation;
using Id = CommandId;

constexpr bool kActs = true;

std::vector<S> all() { return {S::Free, S::At, S::AtTyre, S::Work, S::WorkTyre, S::Busy, S::Look}; }
std::vector<S> hands() { return {S::Free, S::At, S::AtTyre, S::Work, S::WorkTyre, S::Busy}; }
std::vector<S> free() { return {S::Free}; }
std::vector<S> engaged() { return {S::At, S::AtTyre, S::Work, S::WorkTyre, S::Busy}; }
std::vector<S> resting() { return {S::At, S::AtTyre, S::Work, S::WorkTyre}; }
std::vector<S> look() { return {S::Look}; }
std::vector<S> idle_wheel() { return {S::Free, S::Busy, S::Look}; }

Chord plain(Key key) { return {key, false, false}; }
Chord ctrl(Key key) { return {key, true, false}; }
Chord both(Key key) { return {key, true, true}; }
std::vector<Chord> twin(Key left, Key right) { return {plain(left), plain(right)}; }

// the list and the cord; columns: name in files, words, what the mouse does, where the step panel has it, keys, when
std::vector<Command> hand_rows() {
  return {
      {Id::ListBack, "list_back", "place before", "point at it", "list", {plain(Key::Left)}, free(), false},
      {Id::ListOn, "list_on", "next place", "point at it", "list", {plain(Key::Right)}, free(), false},
      {Id::BandUp, "band_up", "row of places above", "point at it", "list", {plain(Key::Up)}, free(), false},
      {Id::BandDown, "band_down", "row of places below", "point at it", "list", {plain(Key::Down)}, free(), false},
      {Id::GroupBack, "group_back", "group of places before", "", "list", {ctrl(Key::PageUp)}, hands(), false},
      {Id::GroupOn, "group_on", "next group of places", "", "list", {ctrl(Key::PageDown)}, hands(), false},
      {Id::NextHere, "next_here", "next thing here", "", "also here", twin(Key::X, Key::O), hands(), false},
      {Id::Do,
       "do",
       "take, touch or bring",
       "click",
       "verbs",
       {plain(Key::Enter)},
       {S::Free, S::At, S::Work, S::Busy},
       kActs},
      {Id::HoldNear,
       "hold_near",
       "hold near, not touching",
       "Ctrl and click",
       "verbs",
       {ctrl(Key::Enter)},
       hands(),
       kActs},
      {Id::TapBack, "back", "anti-clockwise", "drag", "cord row", {plain(Key::Left)}, engaged(), kActs},
      {Id::TapOn, "on", "clockwise", "drag", "cord row", {plain(Key::Right)}, engaged(), kActs},
      {Id::TapIn,
       "in",
       "press in; outwards on a face",
       "drag towards the axis, or the tool's end; wheel",
       "in and out row",
       {plain(Key::Up)},
       engaged(),
       kActs},
      {Id::TapOut,
       "out",
       "draw out; inwards on a face",
       "drag from the axis; wheel",
       "in and out row",
       {plain(Key::Down)},
       engaged(),
       kActs},
      {Id::Harder, "harder", "harder, or one notch on", "wheel", "harder", {plain(Key::PageUp)}, resting(), kActs},
      {Id::Softer, "softer", "softer, or one notch back", "wheel", "softer", {plain(Key::PageDown)}, resting(), kActs},
      {Id::SlackOrLeave,
       "slack_or_leave",
       "slack; once more: leave",
       "button up; click on nothing",
       "slack; leave",
       {plain(Key::Escape)},
       all(),
       kActs},
      {Id::Slack, "slack", "slack", "button up", "slack", {}, hands(), kActs},
      {Id::Leave, "leave", "leave", "click on nothing", "leave", {}, hands(), kActs},
      {Id::Keep, "keep", "keep, other hand", "", "keep", {plain(Key::Space)}, all(), kActs},
      {Id::NextGrip, "grip", "hold it another way", "press on that part of it", "grip", twin(Key::D, Key::K), hands(),
       kActs},
      {Id::FreshGrip, "fresh_grip", "fresh grip", "press again", "fresh grip", {plain(Key::Backspace)}, hands(), kActs},
      {Id::TipLeft, "tip_left", "tip to the left", "Ctrl and drag", "tip row", {ctrl(Key::Left)}, hands(), kActs},
      {Id::TipRight, "tip_right", "tip to the right", "Ctrl and drag", "tip row", {ctrl(Key::Right)}, hands(), kActs},
      {Id::TipUp, "tip_up", "tip up", "Ctrl and drag", "tip row", {ctrl(Key::Up)}, hands(), kActs},
      {Id::TipDown, "tip_down", "tip down", "Ctrl and drag", "tip row", {ctrl(Key::Down)}, hands(), kActs},
      {Id::Throw,
       "throw",
       "let the wheel go moving",
       "let go moving",
       "throw",
       {plain(Key::Enter)},
       {S::AtTyre, S::WorkTyre},
       kActs},
      {Id::TurnOver, "turn_over", "turn over, fresh fold, other arm", "drag on nothing", "turn over",
       twin(Key::R, Key::U), hands(), kActs},
      {Id::PassOver, "pass", "give to the other hand", "", "pass", twin(Key::T, Key::P), hands(), kActs},
      {Id::PutBack, "put_back", "put back", "click where it belongs", "put back", twin(Key::B, Key::L), hands(), kActs},
      {Id::Lamp, "lamp", "lamp into this hand, or back", "click on it", "lamp", {plain(Key::F3)}, hands(), kActs},
      {Id::Glove, "glove", "glove on or off", "click on the glove box", "glove", {}, hands(), kActs},
  };
}

std::vector<Command> other_rows() {
  return {
      {Id::LookMode, "look_mode", "look round with the plain keys", "right drag", "look row", twin(Key::E, Key::I),
       all(), false},
      {Id::LookLeft,
       "look_left",
       "look from farther left",
       "right drag",
       "look row",
       {plain(Key::Left)},
       look(),
       false},
      {Id::LookRight,
       "look_right",
       "look from farther right",
       "right drag",
       "look row",
       {plain(Key::Right)},
       look(),
       false},
      {Id::LookUp, "look_up", "look from higher", "right drag", "look row", {plain(Key::Up)}, look(), false},
      {Id::LookDown, "look_down", "look from lower", "right drag", "look row", {plain(Key::Down)}, look(), false},
      {Id::Nearer, "nearer", "nearer", "wheel", "look row", {plain(Key::PageUp)}, idle_wheel(), false},
      {Id::Farther, "farther", "farther", "wheel", "look row", {plain(Key::PageDown)}, idle_wheel(), false},
      {Id::Frame, "frame", "show what the hands work on", "", "look row", twin(Key::F, Key::J), all(), false},
      {Id::FirstView, "first_view", "first view", "", "look row", {plain(Key::Home)}, all(), false},
      {Id::LookClose, "look_close", "look close at a scale", "", "look row", twin(Key::V, Key::N), all(), false},
      {Id::JobCard, "job_card", "job card", "its tab", "tabs", twin(Key::C, Key::F7), all(), false},
      {Id::MakersSheet, "makers_sheet", "maker's sheet", "its tab", "tabs", twin(Key::S, Key::F8), all(), false},
      {Id::StepPanel, "step_panel", "step panel", "its tab", "tabs", {plain(Key::F2)}, all(), false},
      {Id::Help, "help", "help with this screen", "its tab", "tabs", {plain(Key::F1)}, all(), false},
      {Id::ShowWhere, "show_where", "show where", "the link", "links", {plain(Key::G)}, all(), false},
      {Id::Why, "why", "say why", "the link", "links", {plain(Key::H)}, all(), false},
      {Id::TimeLine, "time_line", "time line", "its tab", "tabs", {plain(Key::F5)}, all(), false},
      {Id::LookInside, "look_inside", "look inside", "its tab", "tabs", {plain(Key::F6)}, all(), false},
      {Id::NextPane, "next_pane", "from picture to cards and back", "click", "tabs", {plain(Key::Tab)}, all(), false},
      {Id::TextLarger, "text_larger", "larger text", "settings", "settings", {both(Key::PageUp)}, all(), false},
      {Id::TextSmaller, "text_smaller", "smaller text", "settings", "settings", {both(Key::PageDown)}, all(), false},
      {Id::FullScreen, "full_screen", "full screen", "settings", "settings", {plain(Key::F11)}, all(), false},
  };
}

}  // namespace

const std::vector<Command>& command_table() {
  static const std::vector<Command> table = [] {
    std::vector<Command> rows = hand_rows();
    for (const Command& row : other_rows()) rows.push_back(row);
    return rows;
  }();
  return table;
}

const Command& command_of(CommandId id) { return command_table()[static_cast<std::size_t>(id)]; }

}  // namespace proofstand::desk
