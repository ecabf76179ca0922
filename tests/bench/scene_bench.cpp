// The model made ready to draw: for the demo, and how it grows from 1 to 1,000 copies of it.
#include <benchmark/benchmark.h>

#include <memory>
#include <utility>

#include "tests/bench/demo.h"
#include "tests/support/folders.h"
#include "viewer/commands/load_job.h"
#include "viewer/job_loader.h"
#include "viewer/picking.h"
#include "viewer/scene.h"

namespace bench {
namespace {

size_t bytesOf(const viewer::Scene& scene) {
  return scene.vertices.size() * sizeof(viewer::Vertex) +
         scene.indices.size() * sizeof(std::uint32_t) +
         scene.edges.size() * sizeof(viewer::EdgeVertex);
}

void BM_Scene(benchmark::State& state) {
  for (auto _ : state) {
    const viewer::Scene scene = viewer::buildScene(demo());
    benchmark::DoNotOptimize(scene.vertices.data());
  }
  const viewer::Scene& scene = demoScene();
  state.counters["triangles"] = static_cast<double>(scene.indices.size() / 3);
  state.counters["lines"] = static_cast<double>(scene.edges.size() / 2);
}
BENCHMARK(BM_Scene)->Unit(benchmark::kMillisecond)->UseRealTime();

void BM_SceneOfCopies(benchmark::State& state) {
  const int count = static_cast<int>(state.range(0));
  const model::Model many = copies(count);
  size_t bytes = 0;
  for (auto _ : state) {
    const viewer::Scene scene = viewer::buildScene(many);
    bytes = bytesOf(scene);
    benchmark::DoNotOptimize(bytes);
  }
  state.counters["bytes/copy"] = static_cast<double>(bytes) / count;
  state.counters["time/copy"] = benchmark::Counter(
      count, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
  state.SetComplexityN(count);
}
BENCHMARK(BM_SceneOfCopies)
    ->RangeMultiplier(10)
    ->Range(1, 1000)
    ->Unit(benchmark::kMillisecond)
    ->Complexity();

// What a change to the job file costs until the window has all it needs to draw: the file read,
// checked, built and made ready, as the window's loader does. The goal is a frame, 16.7 ms.
void BM_Rebuild(benchmark::State& state) {
  const std::string path = test_support::sourceFolder() + "/assets/jobs/orchard-house.toml";
  for (auto _ : state) {
    viewer::LoadedJob loaded = viewer::loadJob(path, false);
    auto ready =
        std::make_unique<viewer::ReadyJob>(std::move(*loaded.model), std::move(loaded.places));
    benchmark::DoNotOptimize(ready->scene.vertices.data());
    state.PauseTiming();
    ready.reset();  // the stages' own views, which are chosen beside, are given up
    state.ResumeTiming();
  }
}
BENCHMARK(BM_Rebuild)->Unit(benchmark::kMillisecond)->UseRealTime();

// The tree is made at the first pick.
void BM_PickerTree(benchmark::State& state) {
  const viewer::Scene& scene = demoScene();
  viewer::Frame frame;
  for (auto _ : state) {
    const viewer::Picker picker(scene);
    benchmark::DoNotOptimize(picker.pick({{0, 0, 100}, {0, 0, -1}}, frame));
  }
}
BENCHMARK(BM_PickerTree)->Unit(benchmark::kMillisecond);

void BM_Pick(benchmark::State& state) {
  const viewer::Scene& scene = demoScene();
  const viewer::Picker picker(scene);
  viewer::Frame frame;
  frame.time = scene.stageCount;
  frame.camera = *viewer::standardView("south-west", scene.low, scene.high, 16.0 / 9);
  int i = 0;
  for (auto _ : state) {
    const glm::vec2 at(0.3f + 0.4f * static_cast<float>(i % 97) / 97,
                       0.3f + 0.4f * static_cast<float>(i % 89) / 89);
    ++i;
    benchmark::DoNotOptimize(picker.pick(frame.camera.rayThrough(at, 16.0 / 9), frame));
  }
}
BENCHMARK(BM_Pick)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace bench
