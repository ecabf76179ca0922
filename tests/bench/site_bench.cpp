// What setting out and readings cost, once for each job, and what overlays keep of it.
#include <benchmark/benchmark.h>

#include "model/asbuilt/as_built.h"
#include "model/levelling/set_up.h"
#include "model/lines/level_sights.h"
#include "model/lines/set_out_lines.h"
#include "tests/bench/demo.h"
#include "tests/support/demo_job.h"
#include "viewer/overlays/job_facts.h"

namespace bench {
namespace {

// With its readings, which demoJob() leaves in their files.
const model::Model& readHouse() {
  static const model::Model made = model::buildModel(test_support::demoJob("orchard-house"));
  return made;
}

void BM_DeriveLines(benchmark::State& state) {
  const model::Model& m = readHouse();
  for (auto _ : state) benchmark::DoNotOptimize(model::deriveLines(m.job, m.settingOut));
}
BENCHMARK(BM_DeriveLines)->Unit(benchmark::kMicrosecond);

void BM_DeriveAsBuilt(benchmark::State& state) {
  const model::Model& m = readHouse();
  size_t readings = 0;
  for (auto _ : state) {
    const model::AsBuilt built = model::deriveAsBuilt(m.job, m.settingOut);
    readings = built.deviations.size();
    benchmark::DoNotOptimize(readings);
  }
  state.counters["readings"] = double(readings);
}
BENCHMARK(BM_DeriveAsBuilt)->Unit(benchmark::kMicrosecond);

void BM_DeriveJobFacts(benchmark::State& state) {
  const model::Model& m = readHouse();
  const model::AsBuilt built = model::deriveAsBuilt(m.job, m.settingOut);
  for (auto _ : state) benchmark::DoNotOptimize(viewer::deriveJobFacts(m, built));
}
BENCHMARK(BM_DeriveJobFacts)->Unit(benchmark::kMicrosecond);

// Of a point that the staff cannot reach: asked for while the pointer moves.
void BM_SightOfPoint(benchmark::State& state) {
  const model::Model& m = readHouse();
  const model::SetUp& setUp = m.job.setUps.front();
  const model::Vec3 high{m.settingOut.corners[0].at, 9};
  for (auto _ : state)
    benchmark::DoNotOptimize(model::sightOfPoint(m.job, m.settingOut, setUp, high));
}
BENCHMARK(BM_SightOfPoint)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace bench
