// The one table of everything a person can ask for: words, keys, when it works and why not. Cards, key dispatch, the
// step panel, the help page and the settings are made from it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/hand/gesture_two_hands.h"

namespace proofstand::desk {

/// Keys that commands may use. Letters are the printed ones; see printed_key().
enum class Key : std::uint8_t {
  None,
  B,
  C,
  D,
  E,
  F,
  G,
  H,
  I,
  J,
  K,
  L,
  N,
  O,
  P,
  R,
  S,
  T,
  U,
  V,
  X,
  Left,
  Right,
  Up,
  Down,
  PageUp,
  PageDown,
  Home,
  Enter,
  Space,
  Escape,
  Backspace,
  Tab,
  F1,
  F2,
  F3,
  F5,
  F6,
  F7,
  F8,
  F11,
};

/// A key with what is held down. Shift makes motions fine and belongs to no chord but those of the text size.
struct Chord {
  Key key = Key::None;
  bool ctrl = false;
  bool shift = false;
};
bool operator==(const Chord& a, const Chord& b);

enum class CommandId : std::uint8_t {
  // choosing
  ListBack,
  ListOn,
  BandUp,
  BandDown,
  GroupBack,
  GroupOn,
  NextHere,
  Do,
  HoldNear,
  // the cord
  TapBack,
  TapOn,
  TapIn,
  TapOut,
  Harder,
  Softer,
  SlackOrLeave,
  Slack,
  Leave,
  Keep,
  NextGrip,
  FreshGrip,
  TipLeft,
  TipRight,
  TipUp,
  TipDown,
  Throw,
  // the thing held
  TurnOver,
  PassOver,
  PutBack,
  Lamp,
  Glove,
  // looking
  LookMode,
  LookLeft,
  LookRight,
  LookUp,
  LookDown,
  Nearer,
  Farther,
  Frame,
  FirstView,
  LookClose,
  // papers and the window
  JobCard,
  MakersSheet,
  StepPanel,
  Help,
  ShowWhere,
  Why,
  TimeLine,
  LookInside,
  NextPane,
  TextLarger,
  TextSmaller,
  FullScreen,
};

/// What the active hand and the window are at: decides what a chord means.
enum class Situation : std::uint8_t { Free, At, AtTyre, Work, WorkTyre, Busy, Look };

struct Command {
  CommandId id = CommandId::Help;
  std::string_view name;              ///< in the settings file; never changes
  std::string_view words;             ///< on buttons and in the help page, English
  std::string_view mouse;             ///< what the mouse does for it; empty when nothing
  std::string_view panel;             ///< where the step panel has it
  std::vector<Chord> chords;          ///< by default; both halves of the keyboard where there are two
  std::vector<Situation> situations;  ///< in which it may be asked for
  bool acts = false;                  ///< asks the hands for something; else only looks or opens
};

/// Every command once, in the order of CommandId.
const std::vector<Command>& command_table();
const Command& command_of(CommandId id);

/// Keys as a person has set them: kept between runs.
struct Bindings {
  std::vector<std::vector<Chord>> chords;  ///< by CommandId
  bool letters = true;                     ///< off: no letter does anything; the panel has it all
};
Bindings default_bindings();
/// Gives a command other chords. errors: chord-clash, with the command that has it already in one of its situations
base::Result<Bindings> rebound(const Bindings& from, CommandId id, std::vector<Chord> chords);
/// Two commands on one chord in one situation, as sentences; empty when there are none.
std::vector<std::string> clashes(const Bindings& bindings);
/// What a chord means now; nothing when it means nothing. Shift is dropped unless a chord has it.
std::optional<CommandId> command_for(const Bindings& bindings, const Chord& chord, Situation situation);

/// "Ctrl+Enter", "X or O".
std::string words_of(const Chord& chord);
std::string words_of(const std::vector<Chord>& chords);
/// position  letter that a US keyboard has there, 'A'..'Z'; printed  what the layout prints, as UTF-8, may be empty
/// returns   the key by its printed letter; by position where the script has no Latin letters; None when no command may
///           use that letter
Key printed_key(char position, std::string_view printed);

/// Situation from hands and window.
Situation situation_of(const hand::TwoHands& hands, const bench::Bench& bench, bool look_mode);
/// Why a command does nothing now, as a sentence; empty when it works.
std::string why_not(CommandId id, const hand::TwoHands& hands, const bench::Bench& bench, bool look_mode);
/// Runs a command that acts. NotMine for all that the window does itself: lists, looking, papers.
hand::Answer run(CommandId id, hand::TwoHands& hands, bool fine, int count = 1);

/// A row of the help page.
struct HelpRow {
  std::string words, mouse, keys, panel;
};
std::vector<HelpRow> help_rows(const Bindings& bindings);

}  // namespace proofstand::desk
