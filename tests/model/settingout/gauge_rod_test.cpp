#include "model/settingout/gauge_rod.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/settingout/rod_courses.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

using test_support::demoJob;

struct Rods {
  Job job;
  SettingOut out;
  std::vector<GaugeRod> rods;

  explicit Rods(const Job& given)
      : job(given), out(deriveSettingOut(job)), rods(deriveGaugeRods(job, out)) {}
};

std::vector<Job> manyJobs() {
  std::vector<Job> jobs;
  for (const std::string& name : test_support::demoNames()) jobs.push_back(demoJob(name));
  for (unsigned seed = 0; seed < 60; ++seed) jobs.push_back(test_support::seededJob(seed));
  return jobs;
}

const GaugeMark* markOf(const GaugeRod& rod, const std::string& key) {
  const auto found = std::find_if(rod.marks.begin(), rod.marks.end(),
                                  [&](const GaugeMark& mark) { return mark.key == key; });
  return found == rod.marks.end() ? nullptr : &*found;
}

TEST(GaugeRod, BedsAndUnitsAddUpToTheHeights) {
  for (const Job& job : manyJobs()) {
    const Rods made(job);
    SCOPED_TRACE(job.name);
    ASSERT_EQ(made.rods.size(), made.out.corners.size());
    for (const GaugeRod& rod : made.rods) {
      ASSERT_FALSE(rod.courses.empty());
      double level = rod.foot;
      bool meetsDampCourse = false;
      for (const RodCourse& course : rod.courses) {
        EXPECT_NEAR(course.bottom, level, 1e-9);
        meetsDampCourse = meetsDampCourse || std::fabs(level - rod.dampCourse) < 1e-9;
        level += course.bed + course.unit;
      }
      EXPECT_NEAR(level, made.out.levels.wallTop, 1e-9);
      EXPECT_TRUE(meetsDampCourse);
      for (const RodCourse& course : rod.courses) {
        if (course.kind == CourseKind::Cut) {
          EXPECT_GE(course.unit, 0.0245) << oddCourseText(course);
        } else if (course.kind == CourseKind::Whole) {
          EXPECT_NEAR(course.unit, job.walls.brickHeight, 1e-9);
          EXPECT_NEAR(course.bed, job.walls.joint, 0.0005 + 1e-9);
        } else if (course.kind == CourseKind::OddBed) {
          EXPECT_GE(course.bed, 0.0045);
          EXPECT_LE(course.bed, 0.0255);
        }
      }
    }
  }
}

TEST(GaugeRod, StandsOnItsOwnCornersConcrete) {
  for (const Job& job : manyJobs()) {
    const Rods made(job);
    SCOPED_TRACE(job.name);
    for (const GaugeRod& rod : made.rods) {
      const WallLine& in = made.out.walls[rod.walls[0]];
      const WallLine& on = made.out.walls[rod.walls[1]];
      EXPECT_EQ(in.to, rod.corner);
      EXPECT_EQ(on.from, rod.corner);
      double lower = 1e9;
      for (const FoundationRun& run : made.out.foundations) {
        const bool atCorner = (run.wall == rod.walls[0] && run.to == in.length) ||
                              (run.wall == rod.walls[1] && run.from == 0);
        if (atCorner) lower = std::min(lower, run.top);
      }
      EXPECT_EQ(rod.foot, lower);
    }
  }
}

// Every mark is a line of the schedule, and every level of the two walls has its mark.
TEST(GaugeRod, AgreesWithTheSchedule) {
  for (const Job& job : manyJobs()) {
    const Rods made(job);
    SCOPED_TRACE(job.name);
    for (const GaugeRod& rod : made.rods) {
      double before = rod.foot - 1;
      for (const GaugeMark& mark : rod.marks) {
        const auto line = std::find_if(made.out.schedule.begin(), made.out.schedule.end(),
                                       [&](const auto& l) { return l.key == mark.key; });
        ASSERT_NE(line, made.out.schedule.end()) << mark.key;
        EXPECT_EQ(line->level, mark.level);
        EXPECT_EQ(line->name, mark.name);
        EXPECT_GE(mark.level, before);
        before = mark.level;
      }
      ASSERT_NE(markOf(rod, "damp-course"), nullptr);
      ASSERT_NE(markOf(rod, "wall-top"), nullptr);
      EXPECT_NEAR(rod.marks.front().level, rod.foot, 5e-4);
      const auto marked = [&](double level, const std::string& place) {
        return std::any_of(rod.marks.begin(), rod.marks.end(), [&](const GaugeMark& mark) {
          return std::fabs(mark.level - level) < 1e-4 &&
                 mark.where.find(place) != std::string::npos;
        });
      };
      // An opening in a gable is over the rod.
      const auto reaches = [&](double level) { return level > rod.foot && level < rod.top + 1e-4; };
      for (const BuiltOpening& opening : made.out.openings) {
        const bool here = opening.wall == rod.walls[0] || opening.wall == rod.walls[1];
        const std::string place = opening.name + " (" + made.out.walls[opening.wall].name + ")";
        EXPECT_EQ(marked(opening.head, place), here && reaches(opening.head)) << place;
        EXPECT_EQ(marked(opening.sill, place), here && reaches(opening.sill)) << place;
      }
      for (const Lift& lift : made.out.lifts) EXPECT_TRUE(marked(lift.top, "")) << lift.top;
    }
  }
}

TEST(GaugeRod, OfASteppedFoundationIsLongerWhereTheConcreteIsLower) {
  Job job;
  job.outline = {{0, 0}, {6, 0}, {6, 4}, {0, 4}};
  job.foundations.top = -0.975;
  FoundationStep step;
  step.wall = "B-C";
  step.from = 0;
  step.top = -1.200;
  job.foundations.steps.push_back(step);
  const Rods made(job);
  EXPECT_NEAR(made.rods[0].foot, -0.975, 1e-9);
  for (const size_t corner : {size_t(1), size_t(2)}) {
    const GaugeRod& rod = made.rods[corner];
    EXPECT_NEAR(rod.foot, -1.200, 1e-9);
    EXPECT_EQ(rod.courses.front().number, -16);
    EXPECT_EQ(rod.marks.front().where, "B-C");
    EXPECT_NEAR(rod.marks[1].level, -0.975, 1e-9);
    EXPECT_EQ(rod.marks[1].where, corner == 1 ? "A-B" : "C-D");
  }
  EXPECT_EQ(rodSummary(made.rods[0]),
            "13 courses from the foot at -0.975 to the damp course, all whole; 32 courses from "
            "there to the plate bed at +2.400, all whole");
  EXPECT_EQ(coursePlaceText(made.rods[0], -0.975), "-13");
  EXPECT_EQ(coursePlaceText(made.rods[0], 0), "0");
  EXPECT_EQ(coursePlaceText(made.rods[0], 2.100), "28");
  EXPECT_EQ(coursePlaceText(made.rods[0], 2.130), "30 over course 28");
  EXPECT_EQ(coursePlaceText(made.rods[0], 0.030), "30 over the damp course");
  EXPECT_EQ(coursePlaceText(made.rods[0], -0.100), "50 over course -2");
  EXPECT_EQ(fromDampCourseText(made.rods[0], -0.975), "down 975");
  EXPECT_EQ(fromDampCourseText(made.rods[0], 1.050), "up 1050");
  EXPECT_EQ(fromDampCourseText(made.rods[0], 0), "0");
}

// What is left over at the foot, from 0 to a course, and what becomes of it.
TEST(RodCourses, TakeUpWhatIsLeftAtTheFoot) {
  struct Case {
    double rest;
    const char* text;  // of the odd courses, lowest first
  };
  for (const Case& c :
       {Case{0, ""}, Case{0.004, "course -4 on a bed of 14;"},
        Case{0.015, "course -4 on a bed of 25;"},
        Case{0.016, "course -5 cut: bricks 35 high;course -4 cut: bricks 36 high;"},
        Case{0.034, "course -5 cut: bricks 44 high;course -4 cut: bricks 45 high;"},
        Case{0.035, "course -5 cut: bricks 25 high;"},
        Case{0.069, "course -5 cut: bricks 59 high;"}, Case{0.070, "course -5 on a bed of 5;"},
        Case{0.074, "course -5 on a bed of 9;"}}) {
    std::string text;
    for (const RodCourse& course : rodCourses({}, -0.300 - c.rest, 0, 0.300)) {
      const std::string odd = oddCourseText(course);
      if (!odd.empty()) text += odd + ";";
    }
    EXPECT_EQ(text, c.text) << c.rest;
  }
}

TEST(RodCourses, SayWhenNoCourseGoesIn) {
  const auto courses = rodCourses({}, -0.030, 0, 0.075);
  ASSERT_EQ(courses.size(), 2u);
  EXPECT_EQ(oddCourseText(courses[0]), "a bed of 30 only, too low for a course");
  EXPECT_EQ(courses[1].kind, CourseKind::Whole);
}

TEST(RodCourses, TakeUpWhatIsLeftUnderThePlateThere) {
  const auto courses = rodCourses({}, -0.150, 0, 0.350);
  ASSERT_EQ(courses.size(), 7u);
  EXPECT_EQ(courses.front().kind, CourseKind::Whole);
  EXPECT_EQ(oddCourseText(courses.back()), "course 5 cut: bricks 40 high");
}

}  // namespace
}  // namespace model
