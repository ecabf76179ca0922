// The roof against CGAL's straight skeleton, face by face: areas that only add up prove nothing.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/geometry/skeleton.h"
#include "tests/support/cgal_roof.h"
#include "tests/support/random_plans.h"

namespace model {
namespace {

using test::CgalRoof;
using Top = std::array<double, 3>;

std::string describe(const Polygon& outline) {
  std::string text;
  for (const Vec2& p : outline)
    text += "{" + std::to_string(p.x) + ", " + std::to_string(p.y) + "}, ";
  return text;
}

bool holds(const std::vector<Top>& tops, const Top& top) {
  return std::any_of(tops.begin(), tops.end(), [&](const Top& t) {
    return std::abs(t[0] - top[0]) < 1e-5 && std::abs(t[1] - top[1]) < 1e-5 &&
           std::abs(t[2] - top[2]) < 1e-5;
  });
}

void expectSameAreas(const Polygon& outline, const CgalRoof& reference) {
  const SkeletonResult result = roofSkeleton(outline, std::vector<bool>(outline.size(), false));
  ASSERT_EQ(result.refusal, "");
  const auto& faces = result.skeleton->faces;
  ASSERT_EQ(faces.size(), outline.size());
  for (size_t i = 0; i < faces.size(); ++i) {
    EXPECT_EQ(faces[i].edge, i);
    EXPECT_NEAR(signedArea(faces[i].plan), reference.areas[i], 1e-5) << "face over edge " << i;
  }
}

void expectSameTops(const Polygon& outline, const CgalRoof& reference) {
  const SkeletonResult result = roofSkeleton(outline, std::vector<bool>(outline.size(), false));
  ASSERT_EQ(result.refusal, "");
  std::vector<Top> tops;
  for (const RoofFace& face : result.skeleton->faces)
    for (size_t k = 2; k < face.plan.size(); ++k)
      tops.push_back({face.plan[k].x, face.plan[k].y, face.run[k]});
  for (const Top& t : reference.tops)
    EXPECT_TRUE(holds(tops, t)) << "nothing at " << t[0] << ", " << t[1] << ", run " << t[2];
  for (const Top& t : tops)
    EXPECT_TRUE(holds(reference.tops, t))
        << "should not be at " << t[0] << ", " << t[1] << ", run " << t[2];
}

void expectAgrees(const std::vector<Polygon>& plans) {
  const auto references = test::cgalRoofs(plans);
  size_t without = 0;
  for (size_t i = 0; i < plans.size() && !testing::Test::HasFailure(); ++i) {
    SCOPED_TRACE(describe(plans[i]));
    if (!references[i]) {
      ++without;
      continue;
    }
    expectSameAreas(plans[i], *references[i]);
    expectSameTops(plans[i], *references[i]);
  }
  EXPECT_LE(without * 50, plans.size()) << "CGAL answered too seldom to prove anything";
}

TEST(SkeletonAgainstCgal, AgreesOnRandomPlansOfFewCorners) {
  test::Random random(1);
  std::vector<Polygon> plans;
  for (int i = 0; i < 1500; ++i) plans.push_back(test::anyPlan(random, 3 + i % 8, 12));
  expectAgrees(plans);
}

TEST(SkeletonAgainstCgal, AgreesOnRandomPlansOfManyCorners) {
  test::Random random(2);
  std::vector<Polygon> plans;
  for (int i = 0; i < 200; ++i) plans.push_back(test::anyPlan(random, 12 + i % 30, 30));
  expectAgrees(plans);
}

TEST(SkeletonAgainstCgal, AgreesOnSquareGridPlans) {
  test::Random random(3);
  std::vector<Polygon> plans;
  for (int i = 0; i < 1500; ++i) plans.push_back(test::gridPlan(random, 2 + i % 16, false));
  expectAgrees(plans);
}

TEST(SkeletonAgainstCgal, AgreesOnOblongGridPlans) {
  test::Random random(4);
  std::vector<Polygon> plans;
  for (int i = 0; i < 700; ++i)
    plans.push_back(test::gridPlan(random, 2 + i % 16, false, 2.25, 3.6));
  expectAgrees(plans);
}

TEST(SkeletonAgainstCgal, AgreesWhereWallsHavePointsInLine) {
  test::Random random(5);
  std::vector<Polygon> plans;
  for (int i = 0; i < 700; ++i) plans.push_back(test::gridPlan(random, 2 + i % 12, true));
  expectAgrees(plans);
}

// Turned plans are the same plans with rounded coordinates: their walls are in line only nearly.
TEST(SkeletonAgainstCgal, AgreesOnTurnedPlansWithTheRoofsOfTheSquareOnes) {
  test::Random random(6);
  std::vector<Polygon> plans;
  for (int i = 0; i < 1500; ++i)
    plans.push_back(test::gridPlan(random, 2 + i % 16, i % 3 == 0, 1.125, 0.9));
  const auto references = test::cgalRoofs(plans);
  for (size_t i = 0; i < plans.size() && !HasFailure(); ++i) {
    if (!references[i]) continue;
    SCOPED_TRACE(describe(plans[i]));
    expectSameAreas(test::moved(test::turned(plans[i], 0.37 + 0.01 * double(i)), {31.7, -12.3}),
                    *references[i]);
  }
}

TEST(SkeletonAgainstCgal, AgreesOnCombs) {
  std::vector<Polygon> plans;
  for (int teeth = 2; teeth <= 8; ++teeth)
    for (const double gap : {0.5, 1.0, 2.0, 3.5})
      for (const double reach : {0.5, 1.0, 2.0, 6.0})
        plans.push_back(test::combPlan(teeth, 2, gap, reach, 2));
  expectAgrees(plans);
}

TEST(SkeletonAgainstCgal, AgreesOnCrosses) {
  std::vector<Polygon> plans;
  for (const double arm : {0.25, 1.0, 2.0, 5.0}) plans.push_back(test::plusPlan(2, arm));
  expectAgrees(plans);
}

}  // namespace
}  // namespace model
