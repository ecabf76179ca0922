// Brickwork, blockwork and damp-proofing against published figures.
#include <gtest/gtest.h>

#include <algorithm>

#include "model/takeoff/tally.h"
#include "model/takeoff/unit_rates.h"
#include "model/works/cavity_parts.h"
#include "tests/published/rectangle_job.h"

namespace published {
namespace {

using namespace model;

constexpr double kSquareFoot = kFoot * kFoot;

// 59.26 a square metre, quoted as 60: face of 225 x 75 with its joints. Reference.com, "How many
// bricks are required per square metre"; sizes: Technical Information Sheet 9, "Brickwork
// Dimensions". A wall of one brick, which is two such faces, takes 118.5, quoted as 120.
TEST(PublishedMasonry, BricksToASquareMetreOfWall) {
  EXPECT_NEAR(unitsPerSquareMetre(0.215, 0.065, 0.010), 59.26, 0.005);
  EXPECT_NEAR(2 * unitsPerSquareMetre(0.215, 0.065, 0.010), 118.5, 0.05);
}

// 440 x 215 blocks, 450 x 225 with joints: 9.88 a square metre, usually quoted as 10 (common
// trade figure; worked from the block sizes of Technical Information Sheet 9).
TEST(PublishedMasonry, BlocksToASquareMetre) {
  EXPECT_NEAR(unitsPerSquareMetre(0.440, 0.215, 0.010), 9.88, 0.005);
}

// Brick Industry Association, Technical Note 10 (February 2009), "Dimensioning and Estimating
// Brick Masonry": modular brick, nominal 8 x 2 2/3 in, 6.75 a square foot.
TEST(PublishedMasonry, ModularBricksToASquareFoot) {
  const double perSquareMetre =
      unitsPerSquareMetre(7.625 * kInch, (8.0 / 3 - 0.375) * kInch, 0.375 * kInch);
  EXPECT_NEAR(perSquareMetre * kSquareFoot, 6.75, 0.005);
}

// NAVEDTRA 14045, Builder Advanced, chapter 4, Table 4-5 example: a face of 2 3/4 x 8 1/2 in with
// its joint is 6.16 bricks a square foot; a wall of 8 x 14 ft takes 690, with 10 % waste 759.
TEST(PublishedMasonry, BricksOfTheNavysExampleWall) {
  const double perSquareFoot =
      unitsPerSquareMetre(8.25 * kInch, 2.5 * kInch, 0.25 * kInch) * kSquareFoot;
  EXPECT_NEAR(perSquareFoot, 6.16, 0.005);
  EXPECT_NEAR(perSquareFoot * 8 * 14, 690, 0.5);
  EXPECT_EQ(orderOf(690, 0.10, 1), 759);
}

// NAVEDTRA 14045, Table 4-3 page: 8 x 16 in blocks, 1.125 a square foot.
TEST(PublishedMasonry, EightBySixteenBlocksToASquareFoot) {
  const double perSquareMetre = unitsPerSquareMetre(15.625 * kInch, 7.625 * kInch, 0.375 * kInch);
  EXPECT_NEAR(perSquareMetre * kSquareFoot, 1.125, 0.0005);
}

// NAVEDTRA 14043, Builder 3 & 2, Volume 1, chapter 8: a basement of 22 x 32 ft in 8 x 8 x 16 in
// units takes 79 a course, not 81, since the corners are counted once.
TEST(PublishedMasonry, UnitsInACourseCountTheCornersOnce) {
  Job job = rectangleJob(32 * kFoot, 22 * kFoot);
  job.walls.outerLeaf = 8 * kInch;
  job.walls.brickLength = 15.625 * kInch;
  job.walls.brickHeight = 7.625 * kInch;
  job.walls.joint = 0.375 * kInch;
  job.foundations.width = 0.9;
  const Model m = buildModel(job);
  // The outer leaf below the damp course is a plain ring of known height.
  double low = 1e9, high = -1e9, amount = 0;
  for (const Element& e : m.works.elements) {
    if (e.kind != ElementKind::OuterLeaf ||
        e.placed.stage.kind != StageKind::WallsBelowDampCourse) {
      continue;
    }
    low = std::min(low, e.underside);
    high = std::max(high, e.top);
    amount += volume(e.solid) / job.walls.outerLeaf *
              unitsPerSquareMetre(job.walls.brickLength, job.walls.brickHeight, job.walls.joint);
  }
  const double courses = (high - low) / (8 * kInch);
  EXPECT_NEAR(amount / courses, 79, 0.05);
}

// Technical Information Sheet 9: a course of 75; four courses are 300, and one course of 215
// blocks (225) is three courses of bricks.
TEST(PublishedMasonry, FourCoursesAreThreeHundred) {
  Job job = rectangleJob(8.99, 6.6275);
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 2.0;
  window.sill = 0.300;
  window.head = 2.100;
  job.openings = {window};
  const SettingOut out = deriveSettingOut(job);
  const auto sill = std::find_if(out.schedule.begin(), out.schedule.end(), [](const auto& level) {
    return level.name.find("sill") != std::string::npos;
  });
  ASSERT_NE(sill, out.schedule.end());
  EXPECT_NEAR(sill->course, 4, 1e-9);
  EXPECT_TRUE(sill->wholeCourse);
  EXPECT_NEAR(job.walls.blockHeight + job.walls.joint, 3 * job.walls.course(), 1e-12);
}

// The course of a window head that is so many inches over the damp course.
ScheduledLevel headAt(double inches, double courseInches) {
  Job job = rectangleJob(40 * kFoot, 30 * kFoot);
  job.walls.joint = 0.375 * kInch;
  job.walls.brickHeight = courseInches * kInch - job.walls.joint;
  job.walls.dampCourse = 0;
  job.walls.top = 30 * kFoot;
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 2.0;
  window.sill = 0;
  window.head = inches * kInch;
  job.openings = {window};
  for (const ScheduledLevel& level : deriveSettingOut(job).schedule) {
    if (level.name.find("lintel") != std::string::npos) return level;
  }
  return {};
}

// Brick Industry Association, Technical Notes 10B (June 1993), Table 3: modular brick, three
// courses in 8 in: 24 courses 5 ft 4 in, 45 courses 10 ft, 100 courses 22 ft 2 2/3 in.
TEST(PublishedMasonry, ModularBrickCoursing) {
  const double course = 8.0 / 3;
  for (const auto& [courses, inches] : {std::pair{24, 64.0}, {45, 120.0}, {100, 266.0 + 2.0 / 3}}) {
    const ScheduledLevel head = headAt(inches, course);
    EXPECT_NEAR(head.course, courses, 1e-6);
    EXPECT_TRUE(head.wholeCourse);
  }
}

// The same table, engineer brick, five courses in 16 in: 10 courses 2 ft 8 in, 50 courses 13 ft
// 4 in, 100 courses 26 ft 8 in.
TEST(PublishedMasonry, EngineerBrickCoursing) {
  for (const auto& [courses, inches] : {std::pair{10, 32.0}, {50, 160.0}, {100, 320.0}}) {
    const ScheduledLevel head = headAt(inches, 16.0 / 5);
    EXPECT_NEAR(head.course, courses, 1e-6);
    EXPECT_TRUE(head.wholeCourse);
  }
  EXPECT_FALSE(headAt(33, 16.0 / 5).wholeCourse);
}

// LABC Warranty, "How to use cavity wall ties to meet Building Regulations": 900 across by 450 up
// is 2.47 a square metre, specified as 2.5.
// In a blank wall, from the damp course up, each tie has 900 by 450 to itself but at the ends.
TEST(PublishedMasonry, WallTiesToASquareMetre) {
  EXPECT_NEAR(unitsPerSquareMetre(0.900, 0.450, 0), 2.47, 0.005);
  const Model m = buildModel(rectangleJob(26.99, 6.6275));
  double ties = 0;
  for (const Element& e : m.works.elements)
    if (e.kind == ElementKind::WallTie && e.wall == "A-B" &&
        e.placed.stage.kind != StageKind::WallsBelowDampCourse)
      ties += e.quantity.amount;
  const double height = m.settingOut.levels.wallTop - m.settingOut.levels.dampCourse;
  EXPECT_NEAR(ties / (26.99 * height), 2.47, 0.25);
}

// Approved Document A, table of ties, older edition: 750 by 450 for cavities of 76 to 100 is 2.96 a
// square metre.
TEST(PublishedMasonry, TiesAt750AreAsManyMore) {
  Job job = rectangleJob(26.99, 6.6275);
  const double usual = amountOf(buildModel(job), "Wall ties, 225 long");
  job.walls.builtIn.tieAcross = 0.750;
  EXPECT_NEAR(amountOf(buildModel(job), "Wall ties, 225 long") / usual, 2.96 / 2.47, 0.06);
}

// NHBC Good Craftsmanship Guide, Brickwork: at least 50 in each leaf.
TEST(PublishedMasonry, TiesReachFiftyIntoEachLeaf) {
  for (const double cavity : {0.050, 0.075, 0.100, 0.125, 0.150, 0.200}) {
    Job job;
    job.walls.cavity = cavity;
    EXPECT_GE(tieLength(job), cavity + 2 * 0.050);
    EXPECT_LE(tieLength(job), cavity + 2 * 0.0775);
  }
}

// airbergen.com, "What size steel lintel do I need": opening 1800, 150 bearing each end, 2100.
TEST(PublishedMasonry, LintelOverAnOpeningOf1800Is2100Long) {
  Job job = rectangleJob(8.99, 6.6275);
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 2.0;
  window.width = 1.800;
  window.head = 1.950;  // so that the rafters leave room for the whole of it
  job.openings = {window};
  const Model m = buildModel(job);
  EXPECT_EQ(amountOf(m, "Lintel 2100 x 150, outer leaf"), 1);
  EXPECT_EQ(amountOf(m, "Lintel 2100 x 150, inner leaf"), 1);
}

// NHBC Good Craftsmanship Guide, brickwork; Approved Document C: the damp course at least 150
// above the ground outside, the cavity clear for at least 225 below it.
TEST(PublishedMasonry, DampCourseAboveTheGroundAndClearCavityBelowIt) {
  Job job = rectangleJob(8.99, 6.6275);
  job.site.spots = {{{0, 0}, -0.30}, {{9, 0}, -0.62}, {{9, 7}, -0.25}};
  const Model m = buildModel(job);
  EXPECT_GE(m.settingOut.levels.dampCourse - m.settingOut.levels.groundHigh, 0.150 - 1e-9);
  int fills = 0;
  for (const Element& e : m.works.elements) {
    if (e.kind != ElementKind::CavityFill) continue;
    ++fills;
    EXPECT_GE(m.settingOut.levels.dampCourse - e.top, 0.225 - 1e-9) << e.name;
  }
  EXPECT_GT(fills, 0);
}

}  // namespace
}  // namespace published
