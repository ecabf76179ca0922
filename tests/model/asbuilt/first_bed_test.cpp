// What concrete off its level does to the first bed and the courses below ground.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/asbuilt/as_built_rod.h"
#include "tests/model/asbuilt/as_built_support.h"

namespace asbuilt_test {
namespace {

// Thirteen courses from concrete to damp course; ground 150 below the floor.
Job thirteenCourses() {
  Job job = rectangle(8, 6);
  job.walls.dampCourse = 0;
  job.foundations.top = -0.975;
  return job;
}

FirstBed bedAt(Job job, double millimetres) {
  addSet(job, {levelAt("top-of-concrete", "C", -0.975 + millimetres / 1000)});
  return derive(job).beds.at(0);
}

// Figures of the trade brief, common practice: 7 to 15 normal, thick to 25, a slip or split course
// to 40 low, then another course; a cut course to 40 high, then break out.
TEST(FirstBed, IsAnsweredByHowFarOffTheConcreteIs) {
  const Job job = thirteenCourses();
  const auto answer = [&](double mm) { return bedAt(job, mm).answer; };
  EXPECT_EQ(answer(0), BedAnswer::Normal);
  EXPECT_EQ(answer(-5), BedAnswer::Normal);
  EXPECT_EQ(answer(-6), BedAnswer::Thick);
  EXPECT_EQ(answer(-15), BedAnswer::Thick);
  EXPECT_EQ(answer(-16), BedAnswer::Slip);
  EXPECT_EQ(answer(-40), BedAnswer::Slip);
  EXPECT_EQ(answer(-41), BedAnswer::ExtraCourse);
  EXPECT_EQ(answer(3), BedAnswer::Normal);
  EXPECT_EQ(answer(4), BedAnswer::Thin);
  EXPECT_EQ(answer(5), BedAnswer::Thin);
  EXPECT_EQ(answer(6), BedAnswer::CutCourse);
  EXPECT_EQ(answer(40), BedAnswer::CutCourse);
  EXPECT_EQ(answer(41), BedAnswer::BreakOut);
}

TEST(FirstBed, IsSaidAsAForemanWould) {
  const Job job = thirteenCourses();
  EXPECT_EQ(bedAt(job, -12).words,
            "corner C is 12 low: first bed 22, thick: stiff mix and let it firm, or use a split "
            "course; or share it over the 11 courses below ground, joints 11.1");
  EXPECT_TRUE(
      says(bedAt(job, -24).words, "first bed 34, too thick: use a slip of slate or tile 14"));
  EXPECT_TRUE(says(bedAt(job, -24).words, "the gauge cannot take it up") ||
              says(bedAt(job, -24).words, "joints"));
  EXPECT_TRUE(says(bedAt(job, 20).words, "cut the first course to 45"));
  EXPECT_TRUE(says(bedAt(job, -76).words, "add a course on a bed of 11"));
  EXPECT_TRUE(says(bedAt(job, -50).words, "far too thick: add a split course 40 high"));
  EXPECT_TRUE(says(bedAt(job, -200).words, "add 2 courses and a split course 40 high"));
  EXPECT_TRUE(says(bedAt(job, -150).words, "add 2 courses on a bed of 10"));
  EXPECT_TRUE(says(bedAt(job, 60).words, "break out"));
}

TEST(FirstBed, SharesOnlyOverCoursesBelowGroundAndSaysWhenTheyCannot) {
  Job job = thirteenCourses();
  job.site.spots = {{{0, 0}, -0.750}};  // three courses stand below ground
  const FirstBed bed = bedAt(job, -12);
  EXPECT_EQ(bed.regauge.courses, 3);
  EXPECT_FALSE(bed.regauge.within);
  EXPECT_NEAR(bed.regauge.joint, 0.014, 1e-9);
  EXPECT_TRUE(says(bed.words, "the gauge cannot take it up: joints of 14 in the 3 courses"));
}

TEST(FirstBed, TakesACourseMoreOrLessWhereThatComesOut) {
  const FirstBed bed = bedAt(thirteenCourses(), -70);  // 11 courses: 895; 12 of 74.6
  ASSERT_TRUE(bed.other.has_value());
  EXPECT_EQ(bed.other->courses, 12);
  EXPECT_NEAR(bed.other->joint, 0.895 / 12 - 0.065, 1e-9);
}

// Orchard house's cellar walls end 325 under the damp course: four courses and a bed of 35.
TEST(FirstBed, ThatTheDrawingItselfMakesThickIsNoNewsWhenBuiltSo) {
  Job job = thirteenCourses();
  job.foundations.top = -0.325;
  job.site.spots = {{{0, 0}, -0.150}};
  addSet(job, {levelAt("top-of-concrete", "C", -0.327), levelAt("top-of-concrete", "B", -0.337)});
  const auto built = derive(job);
  EXPECT_TRUE(built.beds[0].asDrawn);
  EXPECT_TRUE(says(built.beds[0].words, "(35 as drawn)"));
  EXPECT_FALSE(built.beds[1].asDrawn);
  EXPECT_FALSE(anyChangeSays(built, "corner C"));
  EXPECT_TRUE(anyChangeSays(built, "corner B"));
}

TEST(AsBuiltRod, StandsOnTheConcreteReadAndMeetsTheDampCourse) {
  Job job = thirteenCourses();
  addSet(job, {levelAt("top-of-concrete", "C", -0.987), levelAt("top-of-concrete", "A", -0.999),
               levelAt("top-of-concrete", "B", -0.900)});
  const SettingOut out = deriveSettingOut(job);
  const auto rods = deriveAsBuiltRods(job, out, deriveAsBuilt(job, out));
  ASSERT_EQ(rods.size(), 2u);  // A and C; B is to be broken out, D was not read
  EXPECT_EQ(rods[0].corner, 0u);
  const GaugeRod& c = rods[1];
  EXPECT_NEAR(c.foot, -0.987, 1e-9);
  // Shared over the eleven courses below ground; the two over it and all above are as drawn.
  for (const RodCourse& course : c.courses) {
    const double joint = course.number <= -3 ? 0.010 + 0.012 / 11 : 0.010;
    EXPECT_NEAR(course.bed, joint, 1e-9) << course.number;
    EXPECT_NEAR(course.unit, 0.065, 1e-9);
  }
  EXPECT_EQ(c.marks.front().key, "top-of-concrete");
  EXPECT_NEAR(c.marks.front().level, -0.987, 1e-9);
  EXPECT_NEAR(c.courses.back().top(), out.levels.wallTop, 0.025);
}

RC_GTEST_PROP(FirstBed, AndCoursesAddUpToTheHeightFromConcreteToDampCourse, ()) {
  const auto seed = *rc::gen::inRange<unsigned>(0, 100000);
  Job job = test_support::seededJob(seed);
  job.readings.clear();
  const SettingOut out = deriveSettingOut(job);
  const double off = *rc::gen::inRange(-400, 121) / 1000.0;
  std::vector<Reading> rows;
  for (const FoundationRun& run : out.foundations) {
    rows.push_back(levelAt("top-of-concrete", out.walls[run.wall].name, run.top + off,
                           (run.from + run.to) / 2));
    // Names may run the other way round.
    const WallLine& wall = out.walls[run.wall];
    rows.back().at = out.corners[wall.from].letter + "-" + out.corners[wall.to].letter;
  }
  addSet(job, rows);
  const AsBuilt built = deriveAsBuilt(job, out);
  RC_ASSERT(built.beds.size() == rows.size());
  const double brick = job.walls.brickHeight, joint = job.walls.joint;
  for (const FirstBed& bed : built.beds) {
    const double read = built.deviations[bed.deviation].read;
    RC_ASSERT(std::abs(bed.height - (out.levels.dampCourse - read)) < 1e-9);
    if (bed.courses > 0) {
      RC_ASSERT(std::abs(bed.bed + bed.courses * brick + (bed.courses - 1) * joint - bed.height) <
                1e-9);
    }
    if (bed.answer == BedAnswer::BreakOut) continue;
    // What the answer lays comes out too: bed, slip or cut course with a joint, whole courses.
    double laid = bed.bedThen + bed.wholeCourses * brick + (bed.wholeCourses - 1) * joint;
    if (bed.unit > 0) laid += bed.unit + joint;
    RC_ASSERT(bed.unit >= 0 && bed.unit <= brick + 1e-9);
    if (bed.wholeCourses > 0) RC_ASSERT(std::abs(laid - bed.height) < 1e-9);
    if (bed.regauge.courses > 0) {
      const int above = bed.courses - bed.regauge.courses;
      RC_ASSERT(std::abs(bed.regauge.courses * (brick + bed.regauge.joint) +
                         above * (brick + joint) - bed.height) < 1e-9);
    }
    const std::vector<RodCourse> courses = asBuiltCourses(job, out, bed);
    if (courses.empty()) continue;
    RC_ASSERT(std::abs(courses.front().bottom - read) < 1e-9);
    RC_ASSERT(std::abs(courses.back().top() - out.levels.dampCourse) < 1e-9);
    RC_ASSERT(courses.back().number == -1);
    for (size_t i = 1; i < courses.size(); ++i)
      RC_ASSERT(std::abs(courses[i].bottom - courses[i - 1].top()) < 1e-9);
  }
}

}  // namespace
}  // namespace asbuilt_test
