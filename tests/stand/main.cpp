// The danger: what a mouse or a key asks for in the window never reaches the bench, or not as meant.
#include <cstdio>
#include <cstdlib>
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
  const std::string attempt = argc > 1 ? argv[1] : "stand-test.attempt";
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
  std::printf("holds: %s\n", held(*hand).c_str());
  std::printf("stand %d/%d by mouse\n", g_good, g_all);
  return g_good == g_all ? EXIT_SUCCESS : EXIT_FAILURE;
}
