// How long placing labels takes: it is done anew for every frame.
#include <benchmark/benchmark.h>

#include <cstdint>

#include "viewer/overlays/label_layout.h"
#include "viewer/overlays/stack_apart.h"

namespace viewer {
namespace {

std::vector<LabelRequest> scattered(int count) {
  std::vector<LabelRequest> requests;
  std::uint32_t seed = 12345;
  const auto next = [&](int below) {
    seed = seed * 1664525u + 1013904223u;
    return float((seed >> 8) % unsigned(below));
  };
  for (int i = 0; i < count; ++i)
    requests.push_back({{next(1920), next(1080)}, {40 + next(120), 18}, {1, 0}, i % 3});
  return requests;
}

void BM_LayOutLabels(benchmark::State& state) {
  const auto requests = scattered(int(state.range(0)));
  LabelRules rules;
  rules.sheet = {0, 0, 1920, 1080};
  rules.taken = {{1500, 850, 1900, 1050}, {40, 980, 1480, 1050}, {20, 20, 800, 160}};
  size_t shown = 0;
  for (auto _ : state) {
    const auto placed = layOutLabels(requests, rules);
    shown = 0;
    for (const auto& label : placed) shown += label.shown;
    benchmark::DoNotOptimize(shown);
  }
  state.counters["shown"] = double(shown);
}
BENCHMARK(BM_LayOutLabels)->Arg(50)->Arg(500)->Unit(benchmark::kMillisecond);

void BM_StackApart(benchmark::State& state) {
  std::vector<float> wanted;
  for (int i = 0; i < state.range(0); ++i) wanted.push_back(float(i / 4 * 60));
  for (auto _ : state) benchmark::DoNotOptimize(stackApart(wanted, 18, 0, 20000));
}
BENCHMARK(BM_StackApart)->Arg(30)->Arg(500)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace viewer
