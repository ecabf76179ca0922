#include "model/geometry/solid.h"

#include <gtest/gtest.h>

#include <cmath>

#include "model/geometry/check_solid.h"
#include "model/geometry/orientation.h"
#include "tests/support/random_plans.h"
#include "tests/support/solid_referee.h"

namespace model {
namespace {

Region square(double side) { return {{{0, 0}, {side, 0}, {side, side}, {0, side}}, {}}; }

TEST(Solid, BoxHasTheVolumeAndSurfaceOfItsSides) {
  const Solid solid = box({-1, 2, 3}, {1, 5, 7});
  EXPECT_EQ(solidFault(solid), "");
  EXPECT_NEAR(volume(solid), 2 * 3 * 4, 1e-12);
  EXPECT_NEAR(surfaceArea(solid), 2 * (6 + 8 + 12), 1e-12);
  EXPECT_EQ(bounds(solid).low, Vec3(-1, 2, 3));
  EXPECT_EQ(bounds(solid).high, Vec3(1, 5, 7));
}

TEST(Solid, WedgeIsClosedWhereItsPlanesMeet) {
  const Solid wedge = prism(square(2), Plane::flat(1), Plane{{0.5, 0}, 1});
  EXPECT_EQ(solidFault(wedge), "");
  EXPECT_NEAR(volume(wedge), 2 * 2 * 1 / 2.0, 1e-12);
  EXPECT_EQ(wedge.points.size(), 6u);
}

TEST(Solid, WedgeOfAPointedPlanIsClosed) {
  const Solid wedge =
      prism(Region{{{0, 0}, {1, 1}, {-1, 1}}, {}}, Plane::flat(0), Plane{{0, 1}, 0});
  EXPECT_EQ(solidFault(wedge), "");
  EXPECT_NEAR(volume(wedge), 2 / 3.0, 1e-12);
}

TEST(Solid, BarIsClosedInEveryDirection) {
  for (const Vec3 to : {Vec3{3, 0, 0}, Vec3{0, -3, 0}, Vec3{0, 0, 3}, Vec3{0, 0, -3}, Vec3{1, 2, 2},
                        Vec3{-2, 1, -2}}) {
    const Solid solid = bar({1, 1, 1}, Vec3{1, 1, 1} + to, 0.1, 0.2);
    EXPECT_EQ(solidFault(solid), "");
    EXPECT_NEAR(volume(solid), 3 * 0.1 * 0.2, 1e-12);
  }
}

TEST(Solid, BarLiesWithItsWidthLevel) {
  const Bounds b = bounds(bar({0, 0, 0}, {5, 0, 0}, 0.1, 0.4));
  EXPECT_NEAR(b.high.y - b.low.y, 0.1, 1e-12);
  EXPECT_NEAR(b.high.z - b.low.z, 0.4, 1e-12);
}

TEST(Solid, PanelIsClosedWithMitredEndsAndHoles) {
  Region wall{{{0, 0}, {5, 0}, {5, 2.4}, {2.5, 4}, {0, 2.4}}, {}};
  wall.holes = {{{1, 0.9}, {1, 2.1}, {2, 2.1}, {2, 0.9}}, {{3, 0.9}, {3, 2.1}, {4, 2.1}, {4, 0.9}}};
  std::vector<Vec3> front, back;
  for (const Vec2& p : regionPoints(wall)) {
    front.emplace_back(p.x, 0, p.y);
    back.emplace_back(p.x == 0 ? 0.1 : p.x == 5 ? 4.9 : p.x, 0.1, p.y);
  }
  const Solid solid = panel(wall, front, back);
  EXPECT_EQ(solidFault(solid), "");
  EXPECT_NEAR(volume(solid), area(wall) * 0.1 - 2 * 0.1 * 0.1 / 2 * 2.4, 0.01);
  EXPECT_NEAR(volume(solid), test::slicedVolume(solid), 1e-9);
}

TEST(Solid, PrismsAreClosedAndOfPlanTimesHeightOnRandomPlans) {
  test::Random random(5);
  for (int round = 0; round < 500; ++round) {
    const Polygon plan = round % 2 ? test::anyPlan(random, 3 + round % 20, 20)
                                   : test::gridPlan(random, 1 + round % 20, true, 1.1, 0.7);
    const Solid solid = prism(Region{plan, {}}, Plane{{0.1, 0}, -9}, Plane{{0, -0.2}, 9});
    EXPECT_EQ(solidFault(solid), "");
    EXPECT_NEAR(volume(solid), test::slicedVolume(solid), 1e-7);
  }
}

TEST(Solid, VolumeKeepsItsDigitsFarFromTheDatum) {
  EXPECT_NEAR(volume(box({4.5e5, 2.5e6, 0}, {4.5e5 + 2, 2.5e6 + 1, 1})), 2, 1e-6);
}

TEST(SolidFault, SeesAnOpenFace) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  solid.triangles.pop_back();
  EXPECT_NE(solidFault(solid).find("open along"), std::string::npos);
}

TEST(SolidFault, SeesATriangleTurnedOver) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  std::swap(solid.triangles[3][0], solid.triangles[3][1]);
  EXPECT_NE(solidFault(solid).find("opposite ways"), std::string::npos);
}

TEST(SolidFault, SeesASolidInsideOut) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  for (auto& t : solid.triangles) std::swap(t[0], t[1]);
  EXPECT_NE(solidFault(solid).find("faces inward"), std::string::npos);
}

TEST(SolidFault, SeesOneShellInsideOutBesideAGoodOne) {
  Solid bad = box({5, 0, 0}, {6, 1, 1});
  for (auto& t : bad.triangles) std::swap(t[0], t[1]);
  Solid solid = box({0, 0, 0}, {3, 3, 3});
  solid.append(bad);
  EXPECT_NE(solidFault(solid), "");
}

TEST(SolidFault, SeesAFaceUsedTwice) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  solid.triangles.push_back(solid.triangles[0]);
  EXPECT_NE(solidFault(solid), "");
}

TEST(SolidFault, SeesACoordinateThatIsNoNumber) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  solid.points[2].x = std::nan("");
  EXPECT_NE(solidFault(solid).find("finite"), std::string::npos);
}

TEST(SolidFault, SeesACornerThatIsMissing) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  solid.triangles[0][0] = 99;
  EXPECT_NE(solidFault(solid), "");
}

TEST(SolidFault, LetsShellsTouchAlongAnEdge) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  solid.append(box({1, 1, 0}, {2, 2, 1}));
  EXPECT_EQ(solidFault(solid), "");
}

TEST(SolidFault, CountsPointsInOnePlaceAsOne) {
  const Solid good = box({0, 0, 0}, {1, 1, 1});
  Solid loose;
  for (const auto& t : good.triangles) {
    const auto n = std::uint32_t(loose.points.size());
    for (const auto i : t) loose.points.push_back(good.points[i]);
    loose.triangles.push_back({n, n + 1, n + 2});
  }
  EXPECT_EQ(solidFault(loose), "");
}

TEST(Orientation, SeesTheLastDigit) {
  EXPECT_EQ(orientation({0, 0}, {1, 1}, {0.5, 0.5}), 0);
  EXPECT_EQ(orientation({0, 0}, {1, 1}, {0.5, std::nextafter(0.5, 1)}), 1);
  EXPECT_EQ(orientation({0, 0}, {1, 1}, {0.5, std::nextafter(0.5, 0)}), -1);
  EXPECT_EQ(orientation({12, 12}, {24, 24}, {0.5, 0.5}), 0);
}

}  // namespace
}  // namespace model
