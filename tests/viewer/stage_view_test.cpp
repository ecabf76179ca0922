#include "viewer/stage_view.h"

#include <gtest/gtest.h>

#include "viewer/view_state.h"

namespace viewer {
namespace {

model::Model plainHouse() {
  model::Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 7}, {0, 7}};
  return model::buildModel(job);
}

int indexOf(const model::Model& model, model::StageKind kind) {
  const auto& stages = model.programme.stages;
  for (size_t i = 0; i < stages.size(); ++i)
    if (stages[i].key.kind == kind) return int(i);
  return -1;
}

TEST(StageView, LooksDownIntoDigsAndAcrossAtWalls) {
  const model::Model model = plainHouse();
  for (const auto low : {model::StageKind::TrenchDig, model::StageKind::FoundationPour})
    EXPECT_TRUE(stageView(model, indexOf(model, low)).steep);
  for (const auto high : {model::StageKind::WallPlate, model::StageKind::RoofCovering})
    EXPECT_FALSE(stageView(model, indexOf(model, high)).steep);
}

TEST(StageView, HoldsToTheProgramme) {
  const model::Model model = plainHouse();
  EXPECT_EQ(stageView(model, -5), stageView(model, 0));
  EXPECT_EQ(stageView(model, 999), stageView(model, int(model.programme.stages.size()) - 1));
}

TEST(StageView, IsFollowedOnlyWhenAskedForAndOnlyOnceForEachView) {
  Scene scene;
  scene.buildingHigh = {9, 7, 6};
  scene.high = scene.buildingHigh;
  const SheetLayout layout = layOutSheet(1280, 720, 1);
  ViewState state;
  state.followStage({"south-west", true}, scene, layout);
  EXPECT_FALSE(state.easing());
  state.followStages = true;
  state.followStage({"south-west", true}, scene, layout);
  EXPECT_TRUE(state.easing());
  state.advance(9);
  const double steep = state.camera.elevation;
  state.followStage({"south-west", true}, scene, layout);
  EXPECT_FALSE(state.easing()) << "the hand may have turned it since";
  state.followStage({"south-west", false}, scene, layout);
  state.advance(9);
  EXPECT_LT(state.camera.elevation, steep - 0.1);
}

}  // namespace
}  // namespace viewer
