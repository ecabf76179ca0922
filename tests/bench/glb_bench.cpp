// Writing the demo as GLB beside writing the same bytes as they are, both to the same disk.
#include <benchmark/benchmark.h>

#include <filesystem>
#include <fstream>

#include "model/exchange/glb.h"
#include "model/job/write_job.h"
#include "tests/bench/demo.h"

namespace bench {
namespace {

std::string path() {
  return (std::filesystem::temp_directory_path() / "stringcourse_bench.glb").string();
}

void setBytes(benchmark::State& state, size_t bytes) {
  state.SetBytesProcessed(int64_t(state.iterations()) * int64_t(bytes));
  state.counters["bytes"] = double(bytes);
  std::filesystem::remove(path());
}

// In memory only: the library's document and our own chunk.
void BM_GlbBytes(benchmark::State& state) {
  size_t bytes = 0;
  for (auto _ : state) {
    const std::string glb = model::glbBytes(demo());
    bytes = glb.size();
    benchmark::DoNotOptimize(glb.data());
  }
  setBytes(state, bytes);
}
BENCHMARK(BM_GlbBytes)->Unit(benchmark::kMillisecond);

void BM_WriteGlb(benchmark::State& state) {
  for (auto _ : state) {
    if (model::writeGlb(demo(), path())) state.SkipWithError("not written");
  }
  setBytes(state, model::glbBytes(demo()).size());
}
BENCHMARK(BM_WriteGlb)->Unit(benchmark::kMillisecond)->UseRealTime();

// The same bytes through the same saving: temporary file, flush to the disk, rename.
void BM_RawSave(benchmark::State& state) {
  const std::string glb = model::glbBytes(demo());
  for (auto _ : state) {
    if (model::saveAtomically(path(), glb)) state.SkipWithError("not written");
  }
  setBytes(state, glb.size());
}
BENCHMARK(BM_RawSave)->Unit(benchmark::kMillisecond)->UseRealTime();

// The same bytes with nothing done to keep the old file or reach the disk.
void BM_RawWrite(benchmark::State& state) {
  const std::string glb = model::glbBytes(demo());
  for (auto _ : state) {
    std::ofstream file(path(), std::ios::binary | std::ios::trunc);
    file.write(glb.data(), std::streamsize(glb.size()));
    file.close();
    if (!file) state.SkipWithError("not written");
  }
  setBytes(state, glb.size());
}
BENCHMARK(BM_RawWrite)->Unit(benchmark::kMillisecond)->UseRealTime();

// The document and its arrays as they grow; 1,000 houses are a file of 2.6 GB.
void BM_GlbOfCopies(benchmark::State& state) {
  const int count = static_cast<int>(state.range(0));
  const model::Model many = copies(count);
  size_t bytes = 0;
  for (auto _ : state) {
    const std::string glb = model::glbBytes(many);
    bytes = glb.size();
    benchmark::DoNotOptimize(glb.data());
  }
  state.counters["bytes/copy"] = static_cast<double>(bytes) / count;
  state.counters["time/copy"] = benchmark::Counter(
      count, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
  state.SetComplexityN(count);
}
BENCHMARK(BM_GlbOfCopies)
    ->RangeMultiplier(10)
    ->Range(1, 1000)
    ->Unit(benchmark::kMillisecond)
    ->Complexity();

}  // namespace
}  // namespace bench
