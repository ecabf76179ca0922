#include "viewer/film/film_camera.h"

#include <gtest/gtest.h>

namespace viewer {
namespace {

model::Model plainHouse() {
  model::Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 7}, {0, 7}};
  return model::buildModel(job);
}

TEST(FilmCamera, IsThereAtOnceAndThenGoesGently) {
  Scene scene;
  scene.buildingHigh = scene.high = {9, 7, 6};
  FilmCamera camera(scene, layOutSheet(1280, 720, 1));
  constexpr double kFrame = 0.04;
  const StageView south{"south-west", false}, east{"south-east", false};
  const Camera first = camera.next(south, kFrame);
  EXPECT_EQ(camera.next(south, kFrame).eye(), first.eye());
  // No frame jumps, and after two seconds it has come to rest.
  Camera before = first;
  for (int i = 0; i < 50; ++i) {
    const Camera now = camera.next(east, kFrame);
    EXPECT_LT(std::abs(std::remainder(now.azimuth - before.azimuth, 6.2831853)), 0.1) << i;
    before = now;
  }
  EXPECT_EQ(camera.next(east, kFrame).eye(), before.eye());
  EXPECT_GT(std::abs(std::remainder(before.azimuth - first.azimuth, 6.2831853)), 1);
}

TEST(FilmViews, AreTheStagesOwnButForThoseThatAreSoonOver) {
  const model::Model model = plainHouse();
  const size_t count = model.programme.stages.size();
  const std::vector<double> days(count, 1.0);
  const auto calm = filmViews(model, 0, FilmPace(days, 0, 1000));
  ASSERT_EQ(calm.size(), count);
  for (size_t i = 0; i < count; ++i) EXPECT_EQ(calm[i], stageView(model, static_cast<int>(i)));
  for (const StageView& view : filmViews(model, 0, FilmPace(days, 0, 2)))
    EXPECT_EQ(view, stageView(model, 0)) << "all over in two seconds: no time to go anywhere";
  const auto some = filmViews(model, 2, FilmPace({1, 1}, 2, 100));
  ASSERT_EQ(some.size(), 2u);
  EXPECT_EQ(some[0], stageView(model, 2));
}

}  // namespace
}  // namespace viewer
