// Heights in courses.
#include "model/settingout/height_gauge.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;

const CourseHeight* named(const std::vector<CourseHeight>& heights, const std::string& what) {
  const auto found = std::find_if(heights.begin(), heights.end(),
                                  [&](const CourseHeight& h) { return h.what == what; });
  return found == heights.end() ? nullptr : &*found;
}

TEST(CourseHeights, OfTheOrchardHouseAreWholeButForItsJoistsAndItsCellar) {
  const Job job = test_support::demoJob("orchard-house");
  const auto heights = courseHeights(job, deriveSettingOut(job));
  for (const CourseHeight& h : heights) {
    // The cellar's wall ends under its floor.
    const bool cut = h.what == "joist bearing" || h.what == "top of cellar wall";
    EXPECT_EQ(h.cutCourse != 0, cut) << h.what << " " << h.where;
  }
  // 2458 is 32 courses and 58.
  const CourseHeight* joists = named(heights, "joist bearing");
  ASSERT_NE(joists, nullptr);
  EXPECT_EQ(joists->courses, 33);
  EXPECT_NEAR(joists->over, -0.017, 1e-9);
  EXPECT_EQ(comesOutText(*joists), "course 33 cut to 48");
  EXPECT_NEAR(joists->bed, 2.458 / 33 - 0.065, 1e-9);
  EXPECT_TRUE(joists->bedWithin) << "9.5";
}

TEST(CourseHeights, BelowTheDampCourseAreCountedDown) {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  job.foundations.top = -0.970;
  const auto heights = courseHeights(job, deriveSettingOut(job));
  const CourseHeight* concrete = named(heights, "top of concrete");
  ASSERT_NE(concrete, nullptr);
  EXPECT_EQ(concrete->where, "A-B, B-C, C-D, D-A");
  EXPECT_EQ(concrete->courses, 13);
  EXPECT_EQ(comesOutText(*concrete), "course -13 cut to 60");
}

TEST(CourseHeights, OfEveryJobAddUpAgain) {
  for (unsigned seed = 0; seed < 200; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    double last = -1e9;
    for (const CourseHeight& h : courseHeights(job, out)) {
      EXPECT_GE(h.level, last);
      last = h.level;
      EXPECT_NEAR(h.courses * job.walls.course() + h.over, h.height, 1e-9);
      EXPECT_LE(std::fabs(h.over), job.walls.course() / 2 + 1e-9);
      if (h.courses > 0) {
        EXPECT_NEAR(h.courses * (job.walls.brickHeight + h.bed), h.height, 1e-9);
      }
      if (h.cutTo == 0) continue;
      // The courses under the cut one, its bed and what is left of it are the height.
      const int whole = std::abs(h.cutCourse) - 1;
      EXPECT_NEAR(whole * job.walls.course() + job.walls.joint + h.cutTo, h.height, 1e-9);
      EXPECT_LT(h.cutTo, job.walls.brickHeight);
    }
  }
}

}  // namespace
