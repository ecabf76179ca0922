#include "model/settingout/wall_faces.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include <glm/geometric.hpp>

#include "model/settingout/setting_out.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

void expectAt(const Vec2& found, double x, double y) {
  EXPECT_NEAR(found.x, x, 1e-9);
  EXPECT_NEAR(found.y, y, 1e-9);
}

// 102.5 brick, 150 cavity, 100 block on 750 of concrete.
Job withWalls(Outline outline) {
  Job job;
  job.outline = std::move(outline);
  job.walls.cavity = 0.150;
  job.foundations.width = 0.750;
  return job;
}

TEST(WallFaces, LieAsFarInAsTheLeavesAreThick) {
  const FaceDistances in =
      deriveSettingOut(withWalls({{0, 0}, {8, 0}, {8, 6}, {0, 6}})).faceDistances;
  EXPECT_NEAR(in.outerFace, 0, 1e-12);
  EXPECT_NEAR(in.outerLeafBack, 0.1025, 1e-12);
  EXPECT_NEAR(in.innerLeafFront, 0.2525, 1e-12);
  EXPECT_NEAR(in.innerFace, 0.3525, 1e-12);
  // 750 under 352.5: 198.75 out on either side.
  EXPECT_NEAR(in.foundationOuter, -0.19875, 1e-12);
  EXPECT_NEAR(in.foundationInner, 0.55125, 1e-12);
  EXPECT_NEAR(in.outermost(), -0.19875, 1e-12);
  EXPECT_NEAR(in.innermost(), 0.55125, 1e-12);
}

TEST(WallFaces, MeetAtSquareCorners) {
  const SettingOut out = deriveSettingOut(withWalls({{0, 0}, {8, 0}, {8, 6}, {0, 6}}));
  ASSERT_EQ(out.faces.size(), 4u);
  const WallFaces& ab = out.faces[0];
  EXPECT_EQ(ab.outerFace.name, "outer face");
  expectAt(ab.outerFace.start, 0, 0);
  expectAt(ab.outerFace.end, 8, 0);
  expectAt(ab.outerLeafBack.start, 0.1025, 0.1025);
  expectAt(ab.innerLeafFront.end, 7.7475, 0.2525);
  EXPECT_EQ(ab.innerFace.name, "inner face");
  expectAt(ab.innerFace.start, 0.3525, 0.3525);
  expectAt(ab.innerFace.end, 7.6475, 0.3525);
  EXPECT_EQ(ab.foundationOuter.name, "foundation outer edge");
  expectAt(ab.foundationOuter.start, -0.19875, -0.19875);
  expectAt(ab.foundationOuter.end, 8.19875, -0.19875);
  expectAt(ab.foundationInner.start, 0.55125, 0.55125);
}

TEST(WallFaces, MeetAtASkewCornerOnItsBisector) {
  // B is a corner of 60 degrees: a line d inside both walls meets there d / tan 30 short of B.
  const double height = 8 * std::sqrt(3.0) / 2;
  const SettingOut out = deriveSettingOut(withWalls({{0, 0}, {8, 0}, {4, height}}));
  const WallFaces& ab = out.faces[0];
  const double root = std::sqrt(3.0);
  expectAt(ab.innerFace.end, 8 - 0.3525 * root, 0.3525);
  expectAt(ab.outerLeafBack.start, 0.1025 * root, 0.1025);
  expectAt(ab.foundationOuter.end, 8 + 0.19875 * root, -0.19875);
  expectAt(ab.foundationInner.start, 0.55125 * root, 0.55125);
}

TEST(WallFaces, ReachPastAReEntrantCorner) {
  const Outline outline{{0, 0}, {10, 0}, {10, 5}, {5, 5}, {5, 9}, {0, 9}};
  const SettingOut out = deriveSettingOut(withWalls(outline));
  const WallFaces& cd = out.faces[2];  // runs west to D, where the plan turns in
  expectAt(cd.innerFace.end, 5 - 0.3525, 5 - 0.3525);
  expectAt(cd.foundationOuter.end, 5 + 0.19875, 5 + 0.19875);
}

RC_GTEST_PROP(WallFaces, OfAnyPlanRunAlongTheirWallsAndCloseAtTheCorners, ()) {
  const Job job = *test_support::randomJob();
  const SettingOut out = deriveSettingOut(job);
  RC_ASSERT(out.faces.size() == out.walls.size());
  for (FaceLine WallFaces::*face :
       {&WallFaces::outerFace, &WallFaces::outerLeafBack, &WallFaces::innerLeafFront,
        &WallFaces::innerFace, &WallFaces::foundationOuter, &WallFaces::foundationInner}) {
    for (size_t i = 0; i < out.walls.size(); ++i) {
      const WallLine& wall = out.walls[i];
      const FaceLine& line = out.faces[i].*face;
      for (const Vec2& p : {line.start, line.end}) {
        RC_ASSERT(std::abs(glm::dot(wall.start - p, wall.outward) - line.inward) < 1e-6);
      }
      RC_ASSERT(glm::distance(line.end, (out.faces[wall.to].*face).start) < 1e-9);
    }
  }
  RC_ASSERT(std::abs(out.faceDistances.foundationInner - out.faceDistances.foundationOuter -
                     job.foundations.width) < 1e-9);
}

}  // namespace
}  // namespace model
