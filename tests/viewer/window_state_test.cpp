// What the window remembers: views, switches, quality, the watched file.
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>

#include <unistd.h>

#include "viewer/panels/measure.h"
#include "viewer/panels/section_handle.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/view_quality.h"
#include "viewer/view_state.h"
#include "viewer/watch_file.h"

namespace viewer {
namespace {

Scene boxScene() {
  Scene scene;
  scene.low = {-5, -6, -4};
  scene.high = {17, 15, 8};
  scene.buildingLow = {0, 0, -3};
  scene.buildingHigh = {11, 9, 8};
  return scene;
}

glm::vec2 onSheet(const Camera& camera, const glm::vec3& p, const SheetLayout& layout) {
  const auto at = camera.project(p, double(layout.sheet.width() / layout.sheet.height()));
  return {at->x * layout.sheet.width(), at->y * layout.sheet.height()};
}

TEST(ViewState, StandardViewsFillTheDrawingAreaAndStayInIt) {
  const Scene scene = boxScene();
  for (const float pulledOut : {0.0f, 410.0f}) {
    const SheetLayout layout = layOutSheet(1600, 900, 1, pulledOut);
    for (const std::string& name : viewOrder()) {
      if (name == "plan") continue;  // shows the site
      ViewState state;
      state.goToView(name, scene, layout);
      state.advance(10);
      Box seen{1e9f, 1e9f, -1e9f, -1e9f};
      for (int i = 0; i < 8; ++i) {
        const glm::vec3 corner{i & 1 ? 11 : 0, i & 2 ? 9 : 0, i & 4 ? 8 : -3};
        const glm::vec2 at = onSheet(state.camera, corner, layout);
        seen = {std::min(seen.left, at.x), std::min(seen.top, at.y), std::max(seen.right, at.x),
                std::max(seen.bottom, at.y)};
      }
      EXPECT_TRUE(seen.inside(layout.drawing.grown(14))) << name;
      EXPECT_GT(
          std::max(seen.width() / layout.drawing.width(), seen.height() / layout.drawing.height()),
          0.6f)
          << name;
    }
  }
}

TEST(ViewState, EasesAndArrives) {
  const Scene scene = boxScene();
  const SheetLayout layout = layOutSheet(1600, 900, 1);
  ViewState state;
  state.goToView("south", scene, layout);
  EXPECT_TRUE(state.easing());
  state.advance(0.1);
  EXPECT_TRUE(state.easing());
  state.advance(5);
  EXPECT_FALSE(state.easing());
  EXPECT_TRUE(state.camera.parallel);
  EXPECT_NEAR(state.camera.elevation, 0, 1e-9);
}

TEST(ViewState, ClickingTheViewGoesRoundAllOfThem) {
  const Scene scene = boxScene();
  const SheetLayout layout = layOutSheet(1600, 900, 1);
  ViewState state;
  state.goToView("plan", scene, layout);
  state.advance(5);
  const Camera first = state.camera;
  for (size_t i = 0; i < viewOrder().size(); ++i) {
    state.cycleView(scene, layout);
    state.advance(5);
    const bool back = std::abs(state.camera.elevation - first.elevation) < 1e-6;
    EXPECT_EQ(back, i + 1 == viewOrder().size()) << i;
  }
}

TEST(ViewState, SectionCutsAwayTheSideTowardsTheEye) {
  const Scene scene = boxScene();
  model::Model model;
  model.settingOut.outline = {{0, 0}, {11, 0}, {11, 9}, {0, 9}};
  for (const char* name : {"south", "east", "north", "west", "south-west", "north-east"}) {
    ViewState state;
    state.jumpTo(*standardView(name, scene.buildingLow, scene.buildingHigh, 1.5));
    state.toggleSection(model, scene);
    ASSERT_TRUE(state.section.on);
    const glm::vec3 eye = state.camera.eye();
    EXPECT_GT(state.section.plane.x * eye.x + state.section.plane.y * eye.y +
                  state.section.plane.z * eye.z + state.section.plane.w,
              0)
        << name;
    const glm::vec3 middle = (scene.buildingLow + scene.buildingHigh) * 0.5f;
    EXPECT_LT(std::abs(state.section.plane.x * middle.x + state.section.plane.y * middle.y +
                       state.section.plane.w),
              1.0f)
        << name;
    state.toggleSection(model, scene);
    EXPECT_FALSE(state.section.on);
  }
}

TEST(ViewState, EscapeTakesBackOneThingAtATime) {
  ViewState state;
  state.selected = 3;
  state.tab = Tab::Levels;
  state.measuring = true;
  state.measured = {{1, 2, 3}};
  EXPECT_TRUE(state.backOut());
  EXPECT_TRUE(state.measured.empty());
  EXPECT_TRUE(state.measuring);
  EXPECT_TRUE(state.backOut());
  EXPECT_FALSE(state.measuring);
  EXPECT_TRUE(state.backOut());
  EXPECT_EQ(state.tab, Tab::None);
  EXPECT_TRUE(state.backOut());
  EXPECT_EQ(state.selected, kNothing);
  EXPECT_FALSE(state.backOut());
}

TEST(ViewState, AThirdPointBeginsANewMeasurement) {
  ViewState state;
  state.toggleMeasuring();
  state.addMeasured({0, 0, 0});
  state.addMeasured({1, 0, 0});
  state.addMeasured({2, 0, 0});
  ASSERT_EQ(state.measured.size(), 1u);
  EXPECT_EQ(state.measured[0].x, 2);
}

TEST(ViewState, EachMeasuredPointKeepsWhatItWasPulledTo) {
  ViewState state;
  state.addMeasured({0, 0, 0}, 1, SnapKind::Corner);
  state.addMeasured({1, 0, 0}, 1, SnapKind::Edge);
  const auto snaps = state.measuredSnaps();
  ASSERT_EQ(snaps.size(), 2u);
  EXPECT_EQ(snaps[0].kind, SnapKind::Corner);
  EXPECT_EQ(snaps[1].kind, SnapKind::Edge);
  EXPECT_EQ(snaps[1].point.x, 1);
  state.addMeasured({2, 0, 0}, 1, SnapKind::None);
  ASSERT_EQ(state.measuredSnaps().size(), 1u);
  EXPECT_EQ(state.measuredSnaps()[0].kind, SnapKind::None);
}

TEST(ViewState, MakingRoomForASheetAndBackChangesNothing) {
  const Scene scene = boxScene();
  const SheetLayout wide = layOutSheet(1280, 720, 1), narrow = layOutSheet(1280, 720, 1, 410);
  ViewState state;
  state.goToView("south-west", scene, wide);
  state.advance(10);
  const Camera before = state.camera;
  const double shape = shapeOf(scene);
  state.refit(wide.drawing, narrow.drawing, shape, narrow);
  const glm::vec2 middle =
      onSheet(state.camera, (scene.buildingLow + scene.buildingHigh) * 0.5f, narrow);
  EXPECT_TRUE(narrow.drawing.grown(-60).contains(middle));
  state.refit(narrow.drawing, wide.drawing, shape, wide);
  EXPECT_NEAR(state.camera.distance, before.distance, 1e-9);
  EXPECT_LT(glm::distance(state.camera.target, before.target), 1e-4f);
}

TEST(Measure, SaysPlanHeightAndSlope) {
  const Measurement m = measure({1, 1, 0.5f}, {4, 5, 12.5f});
  EXPECT_NEAR(m.plan, 5, 1e-9);
  EXPECT_NEAR(m.height, 12, 1e-9);
  EXPECT_NEAR(m.slope, 13, 1e-9);
  EXPECT_EQ(measureWords(m),
            (std::vector<std::string>{"plan 5000 mm", "height +12.000 m", "slope 13000 mm"}));
}

TEST(SectionHandle, PullsThePlaneByWhatThePointerMoves) {
  const Scene scene = boxScene();
  const SheetLayout layout = layOutSheet(1600, 900, 1);
  Frame frame;
  frame.camera = *standardView("plan", scene.low, scene.high, 16.0 / 9);
  frame.section.on = true;
  frame.section.plane = {0, -1, 0, 4};  // at y = 4, the south is cut away
  const auto before = sectionHandle(scene, frame, layout);
  ASSERT_TRUE(before);
  dragSection(frame.section, scene, frame, layout, {0, 60});
  const auto after = sectionHandle(scene, frame, layout);
  ASSERT_TRUE(after);
  EXPECT_NEAR(after->y - before->y, 60, 0.5);
  EXPECT_LT(frame.section.plane.w, 4);
}

TEST(SectionHandle, KeepsThePlaneInTheSite) {
  const Scene scene = boxScene();
  const SheetLayout layout = layOutSheet(1600, 900, 1);
  Frame frame;
  frame.camera = *standardView("plan", scene.low, scene.high, 16.0 / 9);
  frame.section.on = true;
  frame.section.plane = {0, -1, 0, 4};
  for (int i = 0; i < 50; ++i) dragSection(frame.section, scene, frame, layout, {0, 100});
  EXPECT_GE(frame.section.plane.w, scene.low.y - 0.02f);
  for (int i = 0; i < 99; ++i) dragSection(frame.section, scene, frame, layout, {0, -100});
  EXPECT_LE(frame.section.plane.w, scene.high.y + 0.02f);
}

TEST(ViewQuality, FallsOnlyWhenSeveralFramesAreSlowAndRecovers) {
  ViewQuality quality;
  quality.measured(0.2);
  quality.measured(0.01);
  quality.measured(0.2);
  EXPECT_EQ(quality.steps(), 0);
  for (int i = 0; i < 100; ++i) quality.measured(0.2);
  EXPECT_EQ(quality.steps(), ViewQuality::kMostSteps);
  for (int i = 0; i < 1000; ++i) quality.measured(0.005);
  EXPECT_EQ(quality.steps(), 0);
}

TEST(ViewQuality, NeverTouchesAFrameThatStandsStillNorTheLines) {
  ViewQuality quality;
  for (int i = 0; i < 100; ++i) quality.measured(1);
  Frame still, moving;
  quality.apply(still, false);
  quality.apply(moving, true);
  EXPECT_EQ(still.samples, 4);
  EXPECT_TRUE(still.shadows);
  EXPECT_EQ(moving.samples, 1);
  EXPECT_FALSE(moving.shadows);
  EXPECT_TRUE(moving.edges);
}

TEST(Filter, FindsEveryWordInAnyOrderAndCase) {
  EXPECT_TRUE(matches("Raise the corners, lift 1", "lift CORN"));
  EXPECT_TRUE(matches("Dig the cellar", ""));
  EXPECT_FALSE(matches("Dig the cellar", "dig roof"));
}

class WatchedFile : public ::testing::Test {
 protected:
  void SetUp() override {
    path_ = (std::filesystem::temp_directory_path() /
             ("stringcourse_watch_" + std::to_string(getpid()) + ".toml"))
                .string();
    write("one");
  }
  void TearDown() override { std::filesystem::remove(path_); }
  void write(const std::string& text) { std::ofstream(path_) << text; }
  std::string path_;
};

TEST_F(WatchedFile, TellsOfAChangeOnceAndOnlyWhenItHasSettled) {
  WatchFile watch(path_);
  EXPECT_FALSE(watch.changed(0));
  write("longer");
  EXPECT_FALSE(watch.changed(1));  // seen, but may still be being written
  write("longer still");
  EXPECT_FALSE(watch.changed(2));
  EXPECT_TRUE(watch.changed(3));
  EXPECT_FALSE(watch.changed(4));
  EXPECT_FALSE(watch.changed(5));
}

TEST_F(WatchedFile, IsPatientWhileTheFileIsGone) {
  WatchFile watch(path_);
  std::filesystem::remove(path_);
  EXPECT_FALSE(watch.changed(1));
  EXPECT_FALSE(watch.changed(2));
  write("another");
  EXPECT_FALSE(watch.changed(3));
  EXPECT_TRUE(watch.changed(4));
}

TEST_F(WatchedFile, SaysWhenTheFileHasGoneAndWhenItIsBack) {
  WatchFile watch(path_);
  EXPECT_FALSE(watch.changed(1));
  EXPECT_FALSE(watch.gone());
  const std::string aside = path_ + ".aside";
  std::filesystem::rename(path_, aside);
  EXPECT_FALSE(watch.changed(2));
  EXPECT_FALSE(watch.gone()) << "it may only be being replaced";
  EXPECT_FALSE(watch.changed(3));
  EXPECT_TRUE(watch.gone());
  std::filesystem::rename(aside, path_);
  EXPECT_FALSE(watch.changed(4)) << "the same file again is nothing new";
  EXPECT_FALSE(watch.changed(5));
  EXPECT_FALSE(watch.gone());
}

TEST_F(WatchedFile, TakesItsOwnSavingAsKnown) {
  WatchFile watch(path_);
  write("what the program itself has written");
  watch.accept();
  for (double now = 1; now < 6; ++now) EXPECT_FALSE(watch.changed(now));
  write("and then somebody else");
  EXPECT_FALSE(watch.changed(6));
  EXPECT_TRUE(watch.changed(7));
}

TEST_F(WatchedFile, LooksNoMoreThanAFewTimesASecond) {
  WatchFile watch(path_);
  EXPECT_FALSE(watch.changed(0));
  write("longer");
  EXPECT_FALSE(watch.changed(0.5));
  for (double now = 0.51; now < 0.79; now += 0.01) EXPECT_FALSE(watch.changed(now));
  EXPECT_TRUE(watch.changed(0.9));
}

}  // namespace
}  // namespace viewer
