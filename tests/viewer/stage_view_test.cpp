#include "viewer/stage_view.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "tests/support/demo_job.h"
#include "tests/support/drawn_work.h"
#include "tests/support/random_job.h"
#include "viewer/commands/clear_view.h"
#include "viewer/stage_work.h"
#include "viewer/view_state.h"

namespace viewer {
namespace {

struct Seen {
  std::string stage;
  double share = 1;
  int pixels = 0;
};

// Each stage with work of its own, as drawn from its view.
std::vector<Seen> seenOf(const model::Job& job, Renderer& renderer, Offscreen& offscreen) {
  const model::Model model = model::buildModel(job);
  const Scene scene = buildScene(model);
  const Picker picker(scene);
  const std::vector<StageView> views = stageViews(model, scene, picker);
  const bool tells = std::getenv("STRINGCOURSE_TELL") != nullptr;
  std::vector<Seen> all;
  for (size_t i = 0; i < views.size(); ++i) {
    const DrawnWork drawn = drawnWork(scene, picker, views[i], int(i), renderer, offscreen);
    const std::string& id = model.programme.stages[i].id;
    if (tells)
      std::printf(
          "%-36s %5.1f %% of %6d  by rays %5.1f  az %4.0f el %3.0f cut %d %+.1f %+.1f %+.1f "
          "see %d\n",
          id.c_str(), drawn.share() * 100, drawn.alone, double(views[i].seen) * 100,
          views[i].camera.azimuth * 57.3, views[i].camera.elevation * 57.3, views[i].section.on,
          double(views[i].section.plane.x), double(views[i].section.plane.y),
          double(views[i].section.plane.z), int(views[i].seeThrough));
    if (drawn.alone > 0) all.push_back({id, drawn.share(), drawn.alone});
  }
  return all;
}

class DrawnStageViews : public ::testing::Test {
 protected:
  void SetUp() override {
    std::string why;
    offscreen_ = Offscreen::create(why);
    ASSERT_TRUE(offscreen_) << why;
    renderer_ = std::make_unique<Renderer>();
  }
  std::unique_ptr<Offscreen> offscreen_;
  std::unique_ptr<Renderer> renderer_;
};

class DrawnStageViewsOfDemo : public DrawnStageViews,
                              public ::testing::WithParamInterface<std::string> {};

TEST_P(DrawnStageViewsOfDemo, ShowNineTenthsOfTheWorkOfEveryStage) {
  for (const Seen& seen : seenOf(test_support::demoJob(GetParam()), *renderer_, *offscreen_))
    EXPECT_GE(seen.share, 0.9) << seen.stage << ", " << seen.pixels << " pixels";
}

INSTANTIATE_TEST_SUITE_P(Demos, DrawnStageViewsOfDemo,
                         ::testing::ValuesIn(test_support::demoNames()), [](const auto& demo) {
                           std::string name = demo.param;
                           std::replace(name.begin(), name.end(), '-', '_');
                           return name;
                         });

// Of eight drawn jobs; of one where sanitizers make it slow.
#ifdef STRINGCOURSE_SANITIZED
constexpr unsigned kDrawnJobs = 1;
#else
constexpr unsigned kDrawnJobs = 8;
#endif

class DrawnStageViewsOfSeed : public DrawnStageViews,
                              public ::testing::WithParamInterface<unsigned> {};

TEST_P(DrawnStageViewsOfSeed, ShowNineTenthsOfTheWorkOfNearlyAllStages) {
  std::vector<double> shares;
  for (const Seen& seen : seenOf(test_support::seededJob(GetParam()), *renderer_, *offscreen_)) {
    shares.push_back(seen.share);
    EXPECT_GE(seen.share, 0.5) << seen.stage;
  }
  std::sort(shares.begin(), shares.end());
  EXPECT_GE(shares[shares.size() / 2], 0.95);
  EXPECT_GE(shares[shares.size() / 10], 0.9);
}

INSTANTIATE_TEST_SUITE_P(DrawnJobs, DrawnStageViewsOfSeed, ::testing::Range(1u, kDrawnJobs + 1));

model::Job cellarHouse() { return test_support::demoJob("orchard-house"); }

TEST(StageViews, AreTheSameEachTime) {
  const model::Model model = model::buildModel(cellarHouse());
  const Scene scene = buildScene(model);
  const Picker picker(scene);
  const auto first = stageViews(model, scene, picker), second = stageViews(model, scene, picker);
  ASSERT_EQ(first.size(), model.programme.stages.size());
  for (size_t i = 0; i < first.size(); ++i) EXPECT_TRUE(sameView(first[i], second[i])) << i;
}

TEST(StageViews, HaveTheWorkInTheFrame) {
  const model::Model model = model::buildModel(cellarHouse());
  const Scene scene = buildScene(model);
  const Picker picker(scene);
  const auto views = stageViews(model, scene, picker);
  const SheetLayout layout = layOutSheet(1280, 720, 1);
  for (size_t i = 0; i < views.size(); ++i) {
    const StageWork work = stageWork(scene, int(i));
    if (work.none()) continue;
    const Camera camera = cameraOf(views[i], layout);
    for (int corner = 0; corner < 8; ++corner) {
      const glm::vec3 p{corner & 1 ? work.high.x : work.low.x,
                        corner & 2 ? work.high.y : work.low.y,
                        corner & 4 ? std::min(work.high.z, views[i].high.z) : work.low.z};
      const auto at = camera.project(p, 1280.0 / 720);
      ASSERT_TRUE(at) << model.programme.stages[i].id;
      EXPECT_TRUE(layout.drawing.contains({at->x * 1280, at->y * 720}))
          << model.programme.stages[i].id;
    }
  }
}

TEST(StageViews, ComeNearToSmallWorkHoweverFarTheGardenWallsReach) {
  model::Job job = cellarHouse();
  model::GardenWall wall;
  wall.line = {{-4, -6}, {17, -6}};
  job.gardenWalls.push_back(wall);
  const model::Model model = model::buildModel(job);
  const Scene scene = buildScene(model);
  const auto views = stageViews(model, scene, Picker(scene));
  for (size_t i = 0; i < views.size(); ++i) {
    const StageWork work = stageWork(scene, int(i));
    if (work.none()) continue;
    for (const int axis : {0, 1})
      EXPECT_LE((views[i].high - views[i].low)[axis],
                std::max(6.0f, 2 * (work.high - work.low)[axis] + 1.2f) + 0.01f)
          << model.programme.stages[i].id;
  }
}

TEST(StageViews, LookAtTheBuildingFromItsClearCornerWhereNothingIsMade) {
  const model::Model model = model::buildModel(cellarHouse());
  const Scene scene = buildScene(model);
  const auto views = stageViews(model, scene, Picker(scene));
  const auto clear = standardView(clearView(model), scene.buildingLow, scene.buildingHigh, 1.5);
  ASSERT_TRUE(clear);
  int without = 0;
  for (size_t i = 0; i < views.size(); ++i) {
    if (!stageWork(scene, int(i)).none()) continue;
    ++without;
    EXPECT_NEAR(std::remainder(views[i].camera.azimuth - clear->azimuth, 6.283185307179586), 0,
                1e-6)
        << model.programme.stages[i].id;
    EXPECT_FALSE(views[i].section.on);
  }
  EXPECT_GT(without, 0);
}

TEST(StageViews, SeldomTurnFromStageToStage) {
  const model::Model model = model::buildModel(cellarHouse());
  const Scene scene = buildScene(model);
  const auto views = stageViews(model, scene, Picker(scene));
  size_t turns = 0;
  for (size_t i = 1; i < views.size(); ++i)
    turns += std::abs(std::remainder(views[i].camera.azimuth - views[i - 1].camera.azimuth,
                                     6.283185307179586)) > 0.1;
  EXPECT_LE(turns * 3, views.size());
}

TEST(StageViews, TakeTheJobsOwnWhereItKeepsOne) {
  model::Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 7}, {0, 7}};
  model::KeptView kept;
  kept.stage = "gables";
  kept.eye = {-8, -12};
  kept.eyeLevel = 9;
  kept.target = {4, 3};
  kept.targetLevel = 2;
  kept.cutAway = model::CutAway::South;
  kept.cutAt = 3.5;
  job.programme.views = {kept};
  job.programme.views[0].stage = "corners-ground-1";
  const model::Model model = model::buildModel(job);
  const auto stage = model.programme.find(job.programme.views[0].stage);
  ASSERT_TRUE(stage);
  const Scene scene = buildScene(model);
  const StageView view = stageViews(model, scene, Picker(scene))[*stage];
  EXPECT_TRUE(view.kept);
  const model::Vec3 eye = scene.world(view.camera.eye());
  EXPECT_NEAR(eye.x, -8, 1e-3);
  EXPECT_NEAR(eye.y, -12, 1e-3);
  EXPECT_NEAR(eye.z, 9, 1e-3);
  EXPECT_TRUE(view.section.on);
}

TEST(StageViews, AreFollowedOnlyWhenAskedForAndOnlyOnceForEachStage) {
  Scene scene;
  scene.buildingHigh = {9, 7, 6};
  scene.high = scene.buildingHigh;
  const SheetLayout layout = layOutSheet(1280, 720, 1);
  StageView low, high;
  low.high = high.high = {9, 7, 6};
  low.camera.elevation = 1.2;
  high.camera.elevation = 0.5;
  ViewState state;
  state.followStage(0, low, scene, layout);
  EXPECT_FALSE(state.easing());
  state.followStages = true;
  state.followStage(0, low, scene, layout);
  EXPECT_TRUE(state.easing());
  state.advance(9);
  const double steep = state.camera.elevation;
  state.followStage(0, high, scene, layout);
  EXPECT_FALSE(state.easing()) << "the hand may have turned it since";
  state.followStage(1, high, scene, layout);
  state.advance(9);
  EXPECT_LT(state.camera.elevation, steep - 0.1);
}

TEST(StageViews, BringTheirSectionAndTakeItAwayAgainButLeaveTheHandsAlone) {
  Scene scene;
  scene.buildingHigh = scene.high = {9, 7, 6};
  const SheetLayout layout = layOutSheet(1280, 720, 1);
  StageView cut, plain;
  cut.high = plain.high = {9, 7, 6};
  cut.section = {true, {0, 0, 1, -1.2f}};
  plain.camera.elevation = 0.6;
  ViewState state;
  state.followStages = true;
  state.followStage(0, cut, scene, layout);
  float last = -7;  // over everything
  while (state.advance(0.05)) {
    ASSERT_TRUE(state.section.on);
    EXPECT_GE(state.section.plane.w, last - 1e-4f) << "it comes down without a jolt";
    EXPECT_LT(state.section.plane.w - last, 1.8f);
    last = state.section.plane.w;
  }
  EXPECT_FLOAT_EQ(state.section.plane.w, -1.2f);
  state.followStage(1, plain, scene, layout);
  state.advance(9);
  EXPECT_FALSE(state.section.on);
  state.section = {true, {0, 1, 0, -3}};  // by hand
  state.followStage(2, cut, scene, layout);
  state.advance(9);
  EXPECT_EQ(state.section.plane, glm::vec4(0, 1, 0, -3));
}

}  // namespace
}  // namespace viewer
