// From the text of the demo job to its model, step by step and whole, and how that grows.
#include <benchmark/benchmark.h>

#include <vector>

#include "model/job/read_job.h"
#include "model/model.h"
#include "tests/bench/demo.h"

namespace bench {
namespace {

void BM_ReadJob(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(model::readJob(demoText(), "demo.toml"));
  state.SetBytesProcessed(int64_t(state.iterations()) * int64_t(demoText().size()));
}
BENCHMARK(BM_ReadJob)->Unit(benchmark::kMicrosecond);

void BM_DeriveSettingOut(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(model::deriveSettingOut(demoJob()));
}
BENCHMARK(BM_DeriveSettingOut)->Unit(benchmark::kMicrosecond);

void BM_BuildWorks(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(model::buildWorks(demoJob(), demo().settingOut));
  }
  state.counters["elements"] = double(demo().works.elements.size());
}
BENCHMARK(BM_BuildWorks)->Unit(benchmark::kMicrosecond)->UseRealTime();

void BM_DeriveProgramme(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(model::deriveProgramme(demoJob(), demo().settingOut, demo().works));
  }
}
BENCHMARK(BM_DeriveProgramme)->Unit(benchmark::kMicrosecond);

void BM_DeriveTakeoff(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        model::deriveTakeoff(demoJob(), demo().settingOut, demo().works, demo().programme));
  }
}
BENCHMARK(BM_DeriveTakeoff)->Unit(benchmark::kMicrosecond);

// The goal is 16 ms to the draw buffers; this is the way there without the buffers.
void BM_JobTextToModel(benchmark::State& state) {
  for (auto _ : state) {
    const model::ReadResult read = model::readJob(demoText(), "demo.toml");
    benchmark::DoNotOptimize(model::buildModel(*read.job));
  }
}
BENCHMARK(BM_JobTextToModel)->Unit(benchmark::kMillisecond)->UseRealTime();

// A street of demo houses, each a model of its own: time for all, and per house.
void BM_Street(benchmark::State& state) {
  for (auto _ : state) {
    std::vector<model::Model> street;
    for (int64_t i = 0; i < state.range(0); ++i) street.push_back(model::buildModel(demoJob()));
    benchmark::DoNotOptimize(street.data());
  }
  state.SetComplexityN(state.range(0));
  state.counters["houses/s"] =
      benchmark::Counter(double(state.range(0)), benchmark::Counter::kIsIterationInvariantRate);
}
BENCHMARK(BM_Street)
    ->RangeMultiplier(10)
    ->Range(1, 1000)
    ->Unit(benchmark::kMillisecond)
    ->Complexity(benchmark::oN);

}  // namespace
}  // namespace bench
