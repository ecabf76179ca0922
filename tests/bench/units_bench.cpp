// Bricks and blocks made ready to draw, beside writing as many plain records of 16 bytes.
#include <benchmark/benchmark.h>

#include <array>
#include <vector>

#include "tests/bench/demo.h"
#include "viewer/leaf_table.h"
#include "viewer/scene_units.h"

namespace bench {
namespace {

constexpr size_t kCount = 10000;

void BM_PlainRecords(benchmark::State& state) {
  std::vector<std::array<std::uint32_t, 4>> records(kCount);
  std::uint32_t i = 0;
  for (auto _ : state) {
    for (auto& record : records) {
      ++i;
      record = {i, i + 1, i + 2, i + 3};
    }
    benchmark::DoNotOptimize(records.data());
    benchmark::ClobberMemory();
  }
}
BENCHMARK(BM_PlainRecords)->Unit(benchmark::kMicrosecond);

// The first 10,000 units of the demo.
void BM_PackUnits(benchmark::State& state) {
  const auto& works = demo().works;
  const size_t count = std::min(kCount, works.units.size());
  const std::vector<std::uint8_t> depths(count);
  std::vector<viewer::UnitInstance> units(count);
  for (auto _ : state) {
    viewer::packUnits({7, -2000, -20000, 3, 4}, {works.units.data(), count}, depths, units.data());
    benchmark::DoNotOptimize(units.data());
    benchmark::ClobberMemory();
  }
  state.counters["units"] = static_cast<double>(count);
}
BENCHMARK(BM_PackUnits)->Unit(benchmark::kMicrosecond);

// The bond of all leaves as flat faces read it.
void BM_LeafTable(benchmark::State& state) {
  size_t texels = 0;
  for (auto _ : state) {
    const viewer::LeafTable table = viewer::buildLeafTable(demo().works);
    texels = table.texels.size();
    benchmark::DoNotOptimize(table.texels.data());
  }
  state.counters["kB"] = static_cast<double>(texels) * 16 / 1000;
}
BENCHMARK(BM_LeafTable)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace bench
