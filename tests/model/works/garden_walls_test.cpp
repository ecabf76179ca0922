// Garden walls as they stand: brick by brick, on their concrete, under their coping.
#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/works/build_works.h"
#include "model/works/garden_plan.h"
#include "model/works/parts.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

Works gardenOf(const Job& job) {
  Works works;
  buildGardenWalls(job, deriveSettingOut(job), works);
  return works;
}

// Of a brick on plan; the walls of drawn jobs lie along the axes.
Bounds boxOf(const UnitFrame& frame, const MasonryUnit& unit) {
  Bounds box;
  for (const double s : {unit.s0, unit.s1})
    for (const double d : {static_cast<double>(unit.d0), static_cast<double>(unit.d1)})
      for (const double z : {unit.z0, unit.z1})
        box.add({frame.start + frame.along * s + frame.inward * d, z});
  return box;
}

RC_GTEST_PROP(GardenWalls, AreBricksThatNeverShareAPlaceAndFillTheirWall, ()) {
  const Job job = *test_support::randomJob();
  RC_PRE(!job.gardenWalls.empty());
  const Works works = gardenOf(job);
  std::vector<std::pair<Bounds, size_t>> bricks;
  double units = 0, walls = 0;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::GardenWall) continue;
    walls += volume(e.solid);
    float last = 0;
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i) {
      const MasonryUnit& u = works.units[i];
      units += u.length() * u.height() * (u.d1 - u.d0);
      bricks.emplace_back(boxOf(works.frames[e.frame], u), i);
      RC_ASSERT(u.z0 > e.underside + 0.005);  // a bed under it
      RC_ASSERT(u.z1 < e.top + 1e-6);
      RC_ASSERT(u.when >= last);
      RC_ASSERT(u.when < 1.0f);
      last = u.when;
    }
  }
  std::sort(bricks.begin(), bricks.end(),
            [](const auto& a, const auto& b) { return a.first.low.x < b.first.low.x; });
  constexpr double kTouch = 1e-4;
  for (size_t i = 0; i < bricks.size(); ++i) {
    const Bounds& a = bricks[i].first;
    for (size_t k = i + 1; k < bricks.size(); ++k) {
      const Bounds& b = bricks[k].first;
      if (b.low.x > a.high.x - kTouch) break;
      RC_ASSERT((a.low.y > b.high.y - kTouch || b.low.y > a.high.y - kTouch ||
                 a.low.z > b.high.z - kTouch || b.low.z > a.high.z - kTouch));
    }
  }
  // 215 x 102.5 x 65 of 225 x 112.5 x 75 (check M01) is 0.75, and so for other bricks; a wall has a
  // joint less along and across than that.
  const WallBuildUp& w = job.walls;
  const double width = (w.brickLength - w.joint) / 2;
  const double usual = w.brickLength * width * w.brickHeight /
                       ((w.brickLength + w.joint) * (width + w.joint) * w.course());
  RC_ASSERT(units / walls > usual - 0.015);
  RC_ASSERT(units / walls < usual + 0.13);
}

// The day's rise is never passed, and every stone of the coping lies on the last course.
RC_GTEST_PROP(GardenWalls, RiseNoMoreThanADaysHeightAndAreCopedThen, ()) {
  Job job = *test_support::randomJob();
  RC_PRE(!job.gardenWalls.empty());
  job.laying.dayRise = *rc::gen::elementOf(std::vector<double>{0.6, 0.9, 1.5});
  const GardenWall& wall = job.gardenWalls[0];
  double bricksUp = 0;
  size_t coping = 0;
  for (const Element& e : gardenOf(job).elements) {
    if (e.kind == ElementKind::GardenWall) {
      RC_ASSERT(e.top - e.underside < job.laying.dayRise + 1e-6);
      bricksUp = std::max(bricksUp, e.placed.end);
    } else if (e.kind == ElementKind::Coping) {
      ++coping;
      RC_ASSERT(std::fabs(e.underside - wall.top) < 1e-9);
      RC_ASSERT(std::fabs(e.top - wall.top - wall.coping) < 1e-9);
      RC_ASSERT(e.placed.begin > bricksUp - 1e-9);
    }
  }
  RC_ASSERT((coping > 0) == (wall.coping > 0));
}

double metresOf(const Works& works, ElementKind kind, const std::string& inId) {
  double metres = 0;
  for (const Element& e : works.elements)
    if (e.kind == kind && e.id.find(inId) != std::string::npos) metres += e.quantity.amount;
  return metres;
}

Job cornerWall() {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  GardenWall wall;
  wall.line = {{0, -5}, {4.49, -5}, {4.49, -7.24}};
  wall.base = -0.450;
  wall.top = 1.200;  // 22 courses
  job.gardenWalls.push_back(wall);
  return job;
}

// The sheet lies on the course at or under its level, in the bed of the next, and comes when that
// course is begun.
TEST(GardenWalls, HaveTheirDampCourseInTheBedAtOrUnderItsLevel) {
  Job job = cornerWall();
  job.gardenWalls[0].dampCourse = 0.040;
  job.gardenWalls[0].pierBricks = 2;
  const Works works = gardenOf(job);
  size_t sheets = 0;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::DampCourse) continue;
    ++sheets;
    EXPECT_NEAR(e.underside, 0.000, 1e-9);  // six courses up: 0.450
    EXPECT_NEAR(e.top, 0.002, 1e-9);
    for (const MasonryUnit& u : works.units)
      EXPECT_FALSE(u.z0 < e.top - 1e-9 && u.z1 > e.underside + 1e-9);
    for (const Element& w : works.elements)
      if (w.kind == ElementKind::GardenWall && w.underside < -1e-9) {
        EXPECT_NEAR(fractionAt(e.placed, {0, 0, 0}), fractionAt(w.placed, {0, 0, 0}), 1e-9);
      }
  }
  EXPECT_EQ(sheets, 4u);  // two lengths, two piers
  // Along the middle of the wall, less the piers: 4490 + 2240, and 107.5 past the outer corner.
  EXPECT_NEAR(metresOf(works, ElementKind::DampCourse, "length"), 6.730 + 0.215 - 0.880, 1e-6);
  EXPECT_NEAR(metresOf(works, ElementKind::DampCourse, "pier"), 0.880, 1e-6);
}

// Each of the last courses is wider than the one below by twice the step, and longer at a free end
// by the step; the coping is as much wider than them as it is than a plain wall.
TEST(GardenWalls, StandOutCourseByCourseAtTheirTop) {
  Job job = cornerWall();
  job.gardenWalls[0].line.pop_back();
  job.gardenWalls[0].corbelCourses = 2;
  const Works works = gardenOf(job);
  size_t courses = 0;
  for (const Element& e : works.elements) {
    const Bounds b = bounds(e.solid);
    double out = 0;
    if (e.id.ends_with("corbel course 1")) out = 0.028;
    if (e.id.ends_with("corbel course 2")) out = 0.056;
    if (e.kind == ElementKind::Coping) out = 0.056 + 0.040;
    courses += out > 0 ? 1 : 0;
    EXPECT_NEAR(b.low.y, -5 - out, 1e-9) << e.id;
    EXPECT_NEAR(b.high.y, -5 + 0.215 + out, 1e-9) << e.id;
    EXPECT_NEAR(b.low.x, -out, 1e-9) << e.id;
    EXPECT_NEAR(b.high.x, 4.490 + out, 1e-9) << e.id;
    // 271 is a header and a quarter, 327 a header and a half.
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i)
      if (out > 0) {
        EXPECT_LE(works.units[i].d1 - works.units[i].d0, 0.2151) << e.id;
      }
  }
  EXPECT_EQ(courses, 3u);
}

TEST(GardenWalls, OfTheGardenStoreStandOnTheirConcreteWithAPierAtEachEnd) {
  const Job job = test_support::demoJob("garden-store");
  ASSERT_FALSE(job.gardenWalls.empty());
  const GardenWall& wall = job.gardenWalls[0];
  const Works works = buildWorks(job, deriveSettingOut(job));
  size_t piers = 0, foundations = 0;
  for (const Element& e : works.elements) {
    if (e.id.find("garden wall 1") == std::string::npos) continue;
    if (e.kind == ElementKind::Foundation) {
      ++foundations;
      EXPECT_NEAR(e.top, wall.base, 1e-9);
      EXPECT_NEAR(e.underside, wall.base - wall.foundationThickness, 1e-9);
    }
    if (e.id.find("/pier") != std::string::npos && e.id.ends_with("day 1")) {
      ++piers;
      const Bounds b = bounds(e.solid);
      EXPECT_NEAR(b.high.x - b.low.x, 0.440, 1e-6);  // two bricks less a joint: TIS-9
      EXPECT_NEAR(b.high.y - b.low.y, 0.440, 1e-6);
    }
  }
  EXPECT_EQ(foundations, 1u);
  EXPECT_GE(piers, 4u);
  // Its concrete is 550 wide, and wider under each pier by as much as the pier is wider than the
  // wall: 775 square. It runs past free ends as far as past the faces, by 167.5.
  const GardenPlan plan = planGardenWall(job, wall);
  double concrete = 0;
  for (const Region& region : gardenGround(job, plan).concrete) concrete += area(region);
  const double strip = 0.550 * (10.240 + 0.335 + 5.390 - 0.215);
  EXPECT_NEAR(concrete, strip + static_cast<double>(piers) * 0.775 * (0.775 - 0.550), 1e-4);
}

}  // namespace
}  // namespace model
