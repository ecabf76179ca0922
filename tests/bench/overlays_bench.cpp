// What is laid over the building, frame by frame: each overlay alone, and the layout of the sheet.
#include <benchmark/benchmark.h>
#include <imgui.h>

#include "tests/support/demo_job.h"
#include "viewer/overlays/overlay_sheet.h"

namespace bench {
namespace {

using viewer::Overlays;

// Orchard house with its readings, ready to be laid over.
struct Laid {
  model::Model model = model::buildModel(test_support::demoJob("orchard-house"));
  viewer::Scene scene = viewer::buildScene(model);
  viewer::Picker picker{scene};
  model::SetOutLines setOut = model::deriveLines(model.job, model.settingOut);
  model::AsBuilt asBuilt = model::deriveAsBuilt(model.job, model.settingOut);
  viewer::JobFacts facts = viewer::deriveJobFacts(model, asBuilt);

  Laid() {
    ImGui::SetCurrentContext(ImGui::CreateContext());
    ImGui::GetIO().IniFilename = nullptr;
    viewer::loadLettering(1);
    ImGui::GetIO().DisplaySize = {1280, 720};
  }
};

const Laid& laid() {
  static const Laid made;
  return made;
}

void BM_SheetOf(benchmark::State& state) {
  const Laid& l = laid();
  Overlays all;
  all.captions = all.levels = all.titleBlock = all.tape = all.rod = true;
  for (auto _ : state)
    benchmark::DoNotOptimize(viewer::sheetOf(l.model, all, 1280, 720, 1).drawing);
}
BENCHMARK(BM_SheetOf)->Unit(benchmark::kMicrosecond);

void overlay(benchmark::State& state, bool Overlays::*which) {
  const Laid& l = laid();
  viewer::PictureOptions how;
  how.overlays.*which = true;
  how.time = double(l.model.programme.stages.size()) / 3;
  const viewer::Frame frame = viewer::frameOf(l.model, l.scene, how);
  viewer::OverlayOptions with;
  with.picker = &l.picker;
  with.setOut = &l.setOut;
  with.asBuilt = &l.asBuilt;
  with.facts = &l.facts;
  with.standing = l.model.job.setUps.front();
  for (auto _ : state) {
    ImGui::NewFrame();
    viewer::drawOverlays(l.model, l.scene, frame, how.overlays, 1280, 720, with);
    ImGui::EndFrame();
  }
}
BENCHMARK_CAPTURE(overlay, levels, &Overlays::levels)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(overlay, lines, &Overlays::lines)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(overlay, corners, &Overlays::corners)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(overlay, dimensions, &Overlays::dimensions)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(overlay, settingOut, &Overlays::settingOut)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(overlay, readings, &Overlays::readings)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(overlay, instrument, &Overlays::instrument)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(overlay, gaugeRods, &Overlays::gaugeRods)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace bench
