// The bond of a house of some 12,000 bricks, laid dry and then course by course.
#include <benchmark/benchmark.h>

#include "model/bond/bond_count.h"

namespace bench {
namespace {

// Two storeys with a window to every 3 m of wall.
model::Job houseOf(model::BondKind bond) {
  model::Job job;
  job.walls.bond = bond;
  job.outline = {{0, 0}, {11.240, 0}, {11.240, 8.990}, {0, 8.990}};
  job.storeys = {model::Storey{}, model::Storey{"First floor", 2.7}};
  const char* walls[] = {"A-B", "B-C", "C-D", "D-A"};
  const char* corners[] = {"A", "B", "C", "D"};
  for (int storey = 0; storey < 2; ++storey) {
    for (int wall = 0; wall < 4; ++wall) {
      for (int i = 0; i < 3; ++i) {
        model::Opening window;
        window.wall = walls[wall];
        window.from = corners[wall];
        window.at = 1.115 + i * 2.7;
        window.width = 0.910;
        window.storey = storey;
        job.openings.push_back(window);
      }
    }
  }
  return job;
}

void BM_Bond(benchmark::State& state) {
  const model::Job job = houseOf(static_cast<model::BondKind>(state.range(0)));
  const model::SettingOut out = model::deriveSettingOut(job);
  int pieces = 0;
  for (auto _ : state) {
    const model::DryBond bond = model::deriveDryBond(job, out);
    const std::vector<model::BondCount> counts = model::countBond(job, out, bond);
    pieces = 0;
    for (const model::BondCount& count : counts) {
      pieces += count.whole + count.half + count.closer;
      for (const auto& [length, number] : count.cut) pieces += number;
    }
    benchmark::DoNotOptimize(pieces);
  }
  state.counters["pieces"] = pieces;
}
BENCHMARK(BM_Bond)->DenseRange(0, 6)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace bench
