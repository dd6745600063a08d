// Pictures of the working view at 1280x720: on a software renderer a moving draft shall cost 33 ms at most, and a start
// up to the first lit picture 0.7 s. The renderer stands beside each figure, since it decides most of them.
#include <benchmark/benchmark.h>

#include <memory>

#include "sim/picture/dark_room.h"
#include "sim/picture/painter.h"
#include "sim/picture/quality.h"
#include "sim/scene/scene.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

using picture::Fineness;
constexpr picture::Size kSize{1280, 720};

/// A bench at its start and everything that draws it.
struct Stage {
  scenario::DrawnScenario scenario = worn_front_rotor(1);
  bench::Bench bench{scenario.setup};
  std::unique_ptr<picture::DarkRoom> room;
  std::unique_ptr<picture::Painter> painter;
  scene::Workshop workshop{scenario.setup};
  scene::Scene scene;
  scene::View view;

  bool open(benchmark::State& state) {
    auto opened = picture::DarkRoom::open();
    if (!opened) return refuse(state, opened.error());
    room = std::move(*opened);
    auto made = picture::Painter::create(room->load());
    if (!made) return refuse(state, made.error());
    painter = std::move(*made);
    painter->keep(workshop.meshes());
    scene = workshop.compute_scene(bench);
    view = scene::view_named(bench, scene, "workplace").value_or(scene::View{});
    state.SetLabel(painter->renderer());
    return true;
  }
  static bool refuse(benchmark::State& state, const base::Error& error) {
    state.SkipWithError(error.sentence().c_str());
    return false;
  }
};

picture::Quality quality_of(Fineness fineness, float scale_1 = 1.0F) {
  picture::Quality quality;
  quality.fineness = fineness;
  quality.scale_1 = scale_1;
  quality.samples = 32;
  return quality;
}

// from the scenario in memory to the bytes of the first picture
void start_to_first_picture(benchmark::State& state) {
  for (auto _ : state) {
    Stage stage;
    if (!stage.open(state)) return;
    stage.painter->draw(stage.scene, stage.view, kSize, quality_of(Fineness::Draft));
    benchmark::DoNotOptimize(stage.painter->read());
  }
}
BENCHMARK(start_to_first_picture)->Unit(benchmark::kMillisecond)->UseRealTime();

// the eye goes round; the argument is the draft's scale in sixteenths, 0 a picture as a graphics card draws it
void looking_round(benchmark::State& state) {
  Stage stage;
  if (!stage.open(state)) return;
  const auto sixteenths = static_cast<float>(state.range(0));
  const picture::Quality quality =
      sixteenths > 0.0F ? quality_of(Fineness::Draft, sixteenths / 16.0F) : quality_of(Fineness::Normal);
  for (auto _ : state) {
    stage.view.round_rad += 0.002F;
    stage.painter->draw(stage.scene, stage.view, kSize, quality);
    benchmark::DoNotOptimize(stage.painter->read());
  }
}
BENCHMARK(looking_round)->Arg(16)->Arg(12)->Arg(8)->Arg(0)->Unit(benchmark::kMillisecond)->UseRealTime();

// a part moves, so that shadows are drawn anew
void working(benchmark::State& state) {
  Stage stage;
  if (!stage.open(state)) return;
  const picture::Quality quality = quality_of(Fineness::Draft, static_cast<float>(state.range(0)) / 16.0F);
  for (auto _ : state) {
    stage.scene.items.back().pose[3][1] += 1e-5F;
    stage.painter->draw(stage.scene, stage.view, kSize, quality);
    benchmark::DoNotOptimize(stage.painter->read());
  }
}
BENCHMARK(working)->Arg(16)->Arg(12)->Arg(8)->Unit(benchmark::kMillisecond)->UseRealTime();

// from rest to all samples of a still
void refined_still(benchmark::State& state) {
  Stage stage;
  if (!stage.open(state)) return;
  for (auto _ : state) {
    stage.painter->draw(stage.scene, stage.view, kSize, quality_of(Fineness::Still));
    while (stage.painter->refine()) {
    }
    benchmark::DoNotOptimize(stage.painter->read());
  }
}
BENCHMARK(refined_still)->Unit(benchmark::kMillisecond)->UseRealTime();

void pick_under_the_pointer(benchmark::State& state) {
  Stage stage;
  if (!stage.open(state)) return;
  for (auto _ : state)
    benchmark::DoNotOptimize(stage.painter->pick_around(stage.scene, stage.view, kSize, {640.0F, 300.0F}, 12.0F));
}
BENCHMARK(pick_under_the_pointer)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace proofstand::testing

BENCHMARK_MAIN();
