// The model made ready to draw: for the demo, and how it grows from 1 to 1,000 copies of it.
#include <benchmark/benchmark.h>

#include <stdexcept>

#include "model/job/read_job.h"
#include "viewer/picking.h"
#include "viewer/scene.h"

namespace {

const model::Model& demo() {
  static const model::Model kModel = [] {
    const model::ReadResult read = model::readJobFile(SOURCE_DIR "/assets/jobs/orchard-house.toml");
    if (!read.job) throw std::runtime_error("the demo job does not read");
    return model::buildModel(*read.job);
  }();
  return kModel;
}

// Copies side by side, in rows of 32, 40 m apart.
model::Model copies(int count) {
  model::Model many = demo();
  many.works.elements.clear();
  for (int i = 0; i < count; ++i) {
    const model::Vec3 shift(40.0 * (i % 32), 40.0 * (i / 32), 0);
    for (model::Element element : demo().works.elements) {
      for (model::Vec3& p : element.solid.points) p += shift;
      many.works.elements.push_back(std::move(element));
    }
  }
  return many;
}

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
  const viewer::Scene scene = viewer::buildScene(demo());
  state.counters["triangles"] = static_cast<double>(scene.indices.size() / 3);
  state.counters["lines"] = static_cast<double>(scene.edges.size() / 2);
}
BENCHMARK(BM_Scene)->Unit(benchmark::kMillisecond);

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

void BM_PickerTree(benchmark::State& state) {
  const viewer::Scene scene = viewer::buildScene(demo());
  for (auto _ : state) {
    const viewer::Picker picker(scene);
    benchmark::DoNotOptimize(&picker);
  }
}
BENCHMARK(BM_PickerTree)->Unit(benchmark::kMillisecond);

void BM_Pick(benchmark::State& state) {
  const viewer::Scene scene = viewer::buildScene(demo());
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
