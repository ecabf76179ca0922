// The network of the programme: 500 stages, the goal is a millisecond.
#include <benchmark/benchmark.h>

#include <random>

#include "model/programme/network.h"
#include "model/programme/physical_needs.h"
#include "tests/bench/demo.h"

namespace bench {
namespace {

struct Network {
  std::vector<model::Activity> activities;
  std::vector<model::Relation> relations;
};

// Each waits for three of the ten before it, one of them with days of the calendar between.
Network network(size_t stages) {
  std::mt19937 dice(7);
  Network result;
  for (size_t i = 0; i < stages; ++i) {
    model::Activity activity;
    activity.days = double(1 + dice() % 10) / 2;
    result.activities.push_back(activity);
    for (int k = 0; i > 0 && k < 3; ++k) {
      const size_t before = i - 1 - dice() % std::min<size_t>(i, 10);
      const bool calendar = k == 0;
      result.relations.push_back({before, i, model::LinkKind::FinishStart, double(dice() % 4),
                                  calendar ? model::LagKind::Calendar : model::LagKind::Working});
    }
  }
  return result;
}

// With the calendar made new each time, as a changed job has it.
void BM_Network(benchmark::State& state) {
  const Network n = network(size_t(state.range(0)));
  model::ProgrammeInput input;
  input.exceptions = {{"2027-12-24", "2028-01-03", 0, "Holiday"}, {"2027-05-31", "", 0, ""}};
  for (auto _ : state) {
    const model::WorkCalendar calendar(input, 20900);
    benchmark::DoNotOptimize(model::scheduleNetwork(n.activities, n.relations, calendar));
  }
  state.SetItemsProcessed(int64_t(state.iterations()) * state.range(0));
}
BENCHMARK(BM_Network)->Arg(50)->Arg(500)->Unit(benchmark::kMicrosecond);

// What a moved stage is held against: asked for only when one is moved.
void BM_PhysicalNeeds(benchmark::State& state) {
  std::vector<model::StageKey> usual;
  for (const model::Stage& stage : demo().programme.stages) usual.push_back(stage.key);
  for (auto _ : state) benchmark::DoNotOptimize(model::physicalNeeds(usual, demo().works));
}
BENCHMARK(BM_PhysicalNeeds)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace bench
