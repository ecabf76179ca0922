// Writing the demo as GLB beside writing the same bytes as they are, both to the same disk.
#include <benchmark/benchmark.h>

#include <filesystem>
#include <fstream>
#include <stdexcept>

#include "model/exchange/glb.h"
#include "model/job/read_job.h"
#include "model/job/write_job.h"

namespace {

const model::Model& demo() {
  static const model::Model kModel = [] {
    const model::ReadResult read = model::readJobFile(SOURCE_DIR "/assets/jobs/orchard-house.toml");
    if (!read.job) throw std::runtime_error("the demo job does not read");
    return model::buildModel(*read.job);
  }();
  return kModel;
}

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

}  // namespace
