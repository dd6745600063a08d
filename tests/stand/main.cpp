// The danger: what a mouse or a key asks for in the window never reaches the bench, or not as meant.
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "sim/bench/senses.h"
#include "tests/stand/window_hand.h"

namespace {

using namespace proofstand;

int g_good = 0;
int g_all = 0;

void check(bool good, const char* words) {
  ++g_all;
  g_good += good ? 1 : 0;
  std::printf("%s  %s\n", good ? "good" : "BAD ", words);
}

std::string held(test::WindowHand& hand) {
  const event::ThingId thing = bench::sense_hand(hand.bench(), event::HandId::Right).holding;
  return thing == event::kNoThing ? std::string() : hand.bench().setup().things[event::index_of(thing)].name;
}

}  // namespace

int main(int argc, char** argv) {
  const std::string attempt =
      argc > 1 ? std::string(argv[1]) : (std::filesystem::temp_directory_path() / "stand-test.attempt").string();
  std::filesystem::remove(attempt);  // a former run's, or it would be gone on with
  auto hand = test::WindowHand::open("six-bolt/worn-front-rotor.toml", record::Way::Practice, attempt);
  if (!hand) return EXIT_FAILURE;
  hand->key(ImGuiKey_C);  // the job card away
  const std::size_t before = hand->stand().workplace()->attempt().session().actions().size();
  hand->move_to({600.0F, 300.0F});
  hand->run_frames(30);
  hand->key(ImGuiKey_F);
  hand->key(ImGuiKey_Home);
  check(hand->stand().workplace()->attempt().session().actions().size() == before,
        "hovering and looking send no action");
  const auto key = hand->spot_of("key", event::PlaceKind::Body, -1);
  check(key.has_value(), "the key is seen and listed");
  if (key) {
    hand->click(*key);
    hand->settle();
    check(held(*hand) == "key", "one click takes the key");
  }
  // bring it to a bolt by the list and the keys, press it home, pull it loose
  const auto recess = hand->spot_of("", event::PlaceKind::BoltRecess, 3);
  check(recess.has_value(), "bolt 4's recess is seen and listed");
  if (recess) {
    hand->click(*recess);
    hand->settle();
    const bench::HandSense at = bench::sense_hand(hand->bench(), event::HandId::Right);
    check(at.stage == bench::HandStage::At, "a click brings it to the bolt");
    // the wheel turns in its stand unless the other hand holds it
    hand->key(ImGuiKey_Space);
    hand->key(ImGuiKey_Home);
    hand->settle();
    const auto tyre = hand->spot_of("", event::PlaceKind::Tyre, -1);
    check(tyre.has_value(), "the tyre is seen and listed for the other hand");
    if (tyre) hand->click(*tyre);
    hand->settle();
    hand->key(ImGuiKey_Space);
    for (int i = 0; i < 8; ++i) hand->key(ImGuiKey_UpArrow);
    hand->run_frames(60);
    const bench::HandSense pressed = bench::sense_hand(hand->bench(), event::HandId::Right);
    check(pressed.press_n > 40.0, "taps inwards press it home");
    for (int i = 0; i < 14; ++i) hand->key(ImGuiKey_LeftArrow);
    hand->run_frames(120);
    const bench::HandSense pulled = bench::sense_hand(hand->bench(), event::HandId::Right);
    std::printf("press %.0f N, pull %.2f N.m, bolt turned %.1f deg, home %d\n", pulled.press_n, pulled.torque_nm,
                pulled.fastener_rad * 57.3, static_cast<int>(pulled.home));
    check(pulled.fastener_rad < -0.02, "taps backwards break the bolt loose");
  }
  std::printf("stand %d/%d: one bolt broken loose by mouse and keys\n", g_good, g_all);
  return g_good == g_all ? EXIT_SUCCESS : EXIT_FAILURE;
}
