#include "viewer/camera.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

namespace {

using viewer::Camera;
using viewer::standardView;

constexpr double kAspect = 16.0 / 9;
const glm::vec3 kLow(-5, -4, -2), kHigh(7, 6, 8);

glm::vec3 cornerOf(int i) {
  return {i & 1 ? kHigh.x : kLow.x, i & 2 ? kHigh.y : kLow.y, i & 4 ? kHigh.z : kLow.z};
}

class EveryView : public ::testing::TestWithParam<std::string> {
 protected:
  Camera camera_ = *standardView(GetParam(), kLow, kHigh, kAspect);
};

TEST_P(EveryView, ShowsTheWholeBuildingWithAMarginAndNoSmallerThanItNeeds) {
  double least = 1, most = 0;
  for (int i = 0; i < 8; ++i) {
    const auto at = camera_.project(cornerOf(i), kAspect);
    ASSERT_TRUE(at);
    for (const float c : {at->x, at->y}) {
      EXPECT_GT(c, 0.03);
      EXPECT_LT(c, 0.97);
      least = std::min<double>(least, c);
      most = std::max<double>(most, c);
    }
  }
  EXPECT_GT(most - least, 0.7);
}

TEST_P(EveryView, ProjectAgreesWithTheMatrices) {
  const glm::mat4 m = camera_.projection(kAspect, kLow, kHigh) * camera_.view();
  for (int i = 0; i < 8; ++i) {
    const glm::vec4 clip = m * glm::vec4(cornerOf(i), 1);
    const auto at = camera_.project(cornerOf(i), kAspect);
    EXPECT_NEAR(at->x, (clip.x / clip.w + 1) / 2, 1e-4);
    EXPECT_NEAR(at->y, (1 - clip.y / clip.w) / 2, 1e-4);
    EXPECT_GT(clip.z, -clip.w);  // neither near nor far plane cuts the building
    EXPECT_LT(clip.z, clip.w);
  }
}

TEST_P(EveryView, RayThroughAPointsPixelPassesThroughThePoint) {
  for (int i = 0; i < 8; ++i) {
    const glm::vec3 p = cornerOf(i);
    const auto at = camera_.project(p, kAspect);
    const auto ray = camera_.rayThrough({at->x, at->y}, kAspect);
    EXPECT_NEAR(glm::length(ray.direction), 1, 1e-5);
    const glm::vec3 from = p - ray.from;
    EXPECT_LT(glm::length(from - ray.direction * glm::dot(from, ray.direction)), 5e-3);
  }
}

TEST_P(EveryView, EyeIsAboveTheGround) { EXPECT_GE(camera_.eye().z, kLow.z); }

std::string withoutHyphen(const ::testing::TestParamInfo<std::string>& info) {
  std::string name = info.param;
  for (char& c : name)
    if (c == '-') c = '_';
  return name;
}
INSTANTIATE_TEST_SUITE_P(Views, EveryView, ::testing::ValuesIn(viewer::standardViewNames()),
                         withoutHyphen);

TEST(Camera, ElevationsAreNamedByTheFaceThatIsSeen) {
  const auto eyeOf = [](const char* name) {
    const Camera c = *standardView(name, kLow, kHigh, kAspect);
    return c.eye() - c.target;
  };
  EXPECT_GT(eyeOf("north").y, 1);
  EXPECT_LT(eyeOf("south").y, -1);
  EXPECT_GT(eyeOf("east").x, 1);
  EXPECT_LT(eyeOf("west").x, -1);
  EXPECT_GT(eyeOf("north-east").x, 1);
  EXPECT_GT(eyeOf("north-east").y, 1);
  EXPECT_LT(eyeOf("south-west").x, -1);
  EXPECT_LT(eyeOf("south-west").y, -1);
  EXPECT_GT(eyeOf("plan").z, 1);
}

TEST(Camera, PlanHasNorthUpAndEastRight) {
  const Camera c = *standardView("plan", kLow, kHigh, kAspect);
  const auto middle = *c.project({1, 1, 0}, kAspect);
  EXPECT_LT(c.project({1, 2, 0}, kAspect)->y, middle.y);
  EXPECT_GT(c.project({2, 1, 0}, kAspect)->x, middle.x);
}

TEST(Camera, AnUnknownViewIsNone) { EXPECT_FALSE(standardView("under", kLow, kHigh, kAspect)); }

TEST(Camera, OrbitNeverGoesUnderTheGroundNorOverTheTop) {
  Camera c;
  c.orbit(0, -10);
  EXPECT_EQ(c.elevation, 0);
  c.orbit(0, 10);
  EXPECT_NEAR(c.elevation, std::numbers::pi / 2, 1e-12);
  c.orbit(100, 0);
  EXPECT_LE(std::abs(c.azimuth), std::numbers::pi + 1e-9);
}

TEST(Camera, ZoomKeepsThePointUnderThePointer) {
  for (const bool parallel : {false, true}) {
    Camera c = *standardView("south-west", kLow, kHigh, kAspect);
    c.parallel = parallel;
    const glm::vec2 at(0.3f, 0.62f);
    // A point in the plane through the target, square to the view.
    const auto ray = c.rayThrough(at, kAspect);
    const glm::vec3 forward = glm::normalize(c.target - c.eye());
    const float along = glm::dot(c.target - ray.from, forward) / glm::dot(ray.direction, forward);
    const glm::vec3 p = ray.from + ray.direction * along;
    c.zoomTo(at, 0.4, kAspect);
    const auto after = c.project(p, kAspect);
    EXPECT_NEAR(after->x, at.x, 1e-3);
    EXPECT_NEAR(after->y, at.y, 1e-3);
  }
}

TEST(Camera, PanMovesWhatIsSeenWithThePointer) {
  Camera c = *standardView("south-west", kLow, kHigh, kAspect);
  const glm::vec3 p = c.target;
  c.pan({0.1f, -0.05f}, kAspect);
  const auto at = c.project(p, kAspect);
  EXPECT_NEAR(at->x, 0.6, 1e-3);
  EXPECT_NEAR(at->y, 0.45, 1e-3);
}

TEST(Camera, KeepAboveLiftsTheEyeToTheLevel) {
  Camera c;
  c.target = {0, 0, -3};
  c.distance = 10;
  c.elevation = 0;
  c.keepAbove(0.5);
  EXPECT_GE(c.eye().z, 0.499);
  EXPECT_EQ(c.target.z, -3);  // by tilting only
  c.target.z = -30;
  c.keepAbove(0.5);
  EXPECT_GE(c.eye().z, 0.499);
}

TEST(Camera, KeepSensibleComesBackFromAnywhere) {
  Camera c;
  c.target = {1e6f, -1e6f, 1e6f};
  c.distance = 1e9;
  c.keepSensible(kLow, kHigh);
  const double reach = glm::length(kHigh - kLow);
  EXPECT_LT(glm::distance(c.target, (kLow + kHigh) * 0.5f), reach * 1.5);
  EXPECT_LE(c.distance, reach * 6);
}

TEST(Camera, BetweenStartsAndEndsWhereItShouldAndTakesTheShortWay) {
  const Camera a = *standardView("north-west", kLow, kHigh, kAspect);
  const Camera b = *standardView("north-east", kLow, kHigh, kAspect);
  EXPECT_EQ(between(a, b, 0).azimuth, a.azimuth);
  EXPECT_EQ(between(a, b, 1).azimuth, b.azimuth);
  // By the north, not all the way round by the south.
  EXPECT_GT(between(a, b, 0.5).eye().y, kHigh.y);
}

TEST(Camera, ChangeOfLensKeepsTheSizeOfWhatIsInTheMiddle) {
  const Camera a = *standardView("south", kLow, kHigh, kAspect);
  Camera b = a;
  b.parallel = false;
  const auto sizeOf = [&](const Camera& c) {
    const glm::vec3 up(0, 0, 1);
    return c.project(c.target, kAspect)->y - c.project(c.target + up, kAspect)->y;
  };
  for (double t = 0.001; t < 1; t += 0.111)
    EXPECT_NEAR(sizeOf(between(a, b, t)) / sizeOf(a), 1, 0.01) << t;
}

}  // namespace
