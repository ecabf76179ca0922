// The moments of courses.
#include "model/programme/course_times.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "tests/support/many_jobs.h"

namespace model {
namespace {

TEST(CourseTimes, AreNumberedAsOnTheRod) {
  MasonryUnit unit;
  unit.course = 0;
  EXPECT_EQ(courseNumber(unit), 1);
  unit.course = -1;
  EXPECT_EQ(courseNumber(unit), -1);
}

// When the line is pulled, the course under it lies and nothing over it does.
TEST(CourseTimes, TheLineIsAtTheTopOfTheCourseUnderWay) {
  const Model m = buildModel(test_support::demoJob("orchard-house"));
  const auto lines = courseLines(m.works, m.programme);
  ASSERT_FALSE(lines.empty());
  std::map<size_t, double> until;  // a leaf has one line at a time
  for (const CourseLine& line : lines) {
    EXPECT_LT(line.from, line.to);
    EXPECT_NEAR(line.a.z, line.b.z, 1e-12);
    const auto [before, isNew] = until.emplace(line.frame, line.to);
    if (!isNew) {
      EXPECT_GE(line.from, before->second - 1e-9);
      before->second = line.to;
    }
  }
  for (const Element& e : m.works.elements) {
    if (e.unitCount == 0 || e.placed.stage.kind != StageKind::RunIn) continue;
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; i += 7) {
      const MasonryUnit& unit = m.works.units[i];
      const double time = timeOfUnit(m.programme, e.placed, unit) - 1e-9;
      const auto at = std::find_if(lines.begin(), lines.end(), [&](const CourseLine& line) {
        return line.frame == e.frame && line.from <= time && time < line.to;
      });
      ASSERT_NE(at, lines.end()) << e.id;
      EXPECT_EQ(at->number, courseNumber(unit)) << e.id;
      EXPECT_GE(at->a.z, unit.z1 - 1e-9) << e.id;
    }
  }
}

TEST(CourseTimes, StepsGoThroughEveryCourseAndBack) {
  const Model m = buildModel(test_support::demoJob("garage"));
  const auto steps = courseSteps(m.works, m.programme);
  ASSERT_GT(steps.size(), 20u);
  double time = 0;
  size_t forward = 0;
  while (const auto next = nextCourseEnd(steps, time)) {
    EXPECT_GT(*next, time);
    const CourseStep* step = courseAt(steps, *next);
    ASSERT_NE(step, nullptr);
    EXPECT_LE(step->from, *next);
    time = *next;
    ++forward;
  }
  EXPECT_LE(forward, steps.size());
  EXPECT_EQ(time, steps.back().to);
  size_t back = 1;
  while (const auto before = courseEndBefore(steps, time)) {
    time = *before;
    ++back;
  }
  EXPECT_EQ(back, forward);
}

// At that moment the brick lies at the corner, and no brick of the course over it does.
TEST(CourseTimes, OfACourseAtACornerIsWhenItLiesThere) {
  test_support::forManyJobs([](const Model& m) {
    int found = 0;
    for (size_t corner = 0; corner < m.settingOut.corners.size(); ++corner) {
      double before = -1;
      for (int number = 1; number <= 12; ++number) {
        const auto time = timeOfCourse(m.settingOut, m.works, m.programme, corner, number);
        if (!time) continue;
        ++found;
        EXPECT_GT(*time, before) << m.settingOut.corners[corner].letter << number;
        before = *time;
      }
    }
    EXPECT_GT(found, 12);
    EXPECT_FALSE(timeOfCourse(m.settingOut, m.works, m.programme, 0, 5000));
  });
}

}  // namespace
}  // namespace model
