// The booklets, with and without what draws their pictures.
#include <benchmark/benchmark.h>

#include "model/drawing/client_booklet.h"
#include "model/drawing/crew_brief.h"
#include "model/exchange/drawing_pdf.h"
#include "model/exchange/lettering.h"
#include "tests/bench/demo.h"
#include "viewer/commands/booklet_pictures.h"

namespace bench {
namespace {

// Composing the sheets and writing the file, without pictures.
void BM_CrewBriefPdf(benchmark::State& state) {
  for (auto _ : state)
    benchmark::DoNotOptimize(viewer::bookletPdf(demo(), viewer::BookletFor::Crew, {}, {}));
  state.counters["pages"] = double(demo().programme.stages.size());
}
BENCHMARK(BM_CrewBriefPdf)->Unit(benchmark::kMillisecond);

void BM_ClientBookletPdf(benchmark::State& state) {
  for (auto _ : state)
    benchmark::DoNotOptimize(viewer::bookletPdf(demo(), viewer::BookletFor::Client, {}, {}));
  state.counters["pages"] = double(demo().programme.stages.size());
}
BENCHMARK(BM_ClientBookletPdf)->Unit(benchmark::kMillisecond);

// With a picture of each stage. The goal is 20 s for 40 pages in software.
void BM_CrewBriefWithPictures(benchmark::State& state) {
  std::string why;
  const auto offscreen = viewer::Offscreen::create(why);
  if (!offscreen) {
    state.SkipWithError(why.c_str());
    return;
  }
  for (auto _ : state) {
    viewer::Picturer picturer(demo(), *offscreen);
    const auto pictures = viewer::bookletPictures(demo(), picturer, viewer::BookletFor::Crew,
                                                  std::nullopt, [](size_t) { return true; });
    benchmark::DoNotOptimize(viewer::bookletPdf(demo(), viewer::BookletFor::Crew, *pictures, {}));
  }
  state.counters["pages"] = double(demo().programme.stages.size());
}
BENCHMARK(BM_CrewBriefWithPictures)->Unit(benchmark::kSecond)->Iterations(1);

}  // namespace
}  // namespace bench
