#include "viewer/film/film_camera.h"

#include <gtest/gtest.h>

namespace viewer {
namespace {

StageView from(double azimuth) {
  StageView view;
  view.camera.azimuth = azimuth;
  view.high = {9, 7, 6};
  return view;
}

TEST(FilmCamera, IsThereAtOnceAndThenGoesGently) {
  Scene scene;
  scene.buildingHigh = scene.high = {9, 7, 6};
  FilmCamera camera(scene, layOutSheet(1280, 720, 1));
  constexpr double kFrame = 0.04;
  const Camera first = camera.next(0, from(0.8), kFrame).camera;
  EXPECT_EQ(camera.next(0, from(0.8), kFrame).camera.eye(), first.eye());
  // No frame jumps, and after two seconds it has come to rest.
  Camera before = first;
  for (int i = 0; i < 50; ++i) {
    const Camera now = camera.next(1, from(2.4), kFrame).camera;
    EXPECT_LT(std::abs(std::remainder(now.azimuth - before.azimuth, 6.2831853)), 0.1) << i;
    before = now;
  }
  EXPECT_EQ(camera.next(1, from(2.4), kFrame).camera.eye(), before.eye());
  EXPECT_GT(std::abs(std::remainder(before.azimuth - first.azimuth, 6.2831853)), 1);
}

TEST(FilmViews, AreTheStagesOwnButForThoseThatAreSoonOver) {
  std::vector<StageView> own;
  for (int i = 0; i < 8; ++i) own.push_back(from(i));
  const std::vector<double> days(own.size(), 1.0);
  const auto calm = filmViews(own, 0, FilmPace(days, 0, 1000));
  ASSERT_EQ(calm.size(), own.size());
  for (size_t i = 0; i < own.size(); ++i) EXPECT_TRUE(sameView(calm[i], own[i]));
  for (const StageView& view : filmViews(own, 0, FilmPace(days, 0, 2)))
    EXPECT_TRUE(sameView(view, own[0])) << "all over in two seconds: no time to go anywhere";
  const auto some = filmViews(own, 2, FilmPace({1, 1}, 2, 100));
  ASSERT_EQ(some.size(), 2u);
  EXPECT_TRUE(sameView(some[0], own[2]));
}

}  // namespace
}  // namespace viewer
