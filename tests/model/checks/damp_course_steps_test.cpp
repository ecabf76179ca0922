// The ground outside against steps of the damp course.
#include <gtest/gtest.h>

#include <algorithm>

#include "model/checks/check_building.h"
#include "model/job/read_job.h"

namespace {

using namespace model;

// A mound beside the middle of wall A-B.
Job moundHouse(double height, int courses) {
  Job job;
  job.outline = {{0, 0}, {8.99, 0}, {8.99, 5.39}, {0, 5.39}};
  job.site.spots = {{{-0.5, -0.5}, -0.3}, {{9.5, -0.5}, -0.3}, {{9.5, 6}, -0.3}, {{-0.5, 6}, -0.3}};
  job.site.spots.push_back({{4.5, -0.01}, height});
  if (courses > 0) job.dampCourseSteps = {{"A-B", "A", 2, 7, courses}};
  return job;
}

size_t warnings(const Problems& problems, const std::string& words) {
  return static_cast<size_t>(std::count_if(problems.begin(), problems.end(), [&](const Problem& p) {
    return p.severity == Severity::Warning && p.what.find(words) != std::string::npos;
  }));
}

size_t ofSteps(const Job& job) {
  return warnings(checkBuilding(job, deriveSettingOut(job), "", {}), "of the damp course lies at");
}

TEST(DampCourseSteps, AreHeldAgainstTheGroundAlongThem) {
  EXPECT_EQ(ofSteps(moundHouse(0.100, 3)), 1u);  // 225 over the damp course: 125 over the ground
  EXPECT_EQ(ofSteps(moundHouse(0.100, 4)), 0u);
  EXPECT_EQ(ofSteps(moundHouse(0.400, 3)), 1u);  // in the ground
}

TEST(DampCourseSteps, LeaveNothingToSayOfASpotLevelBesideThem) {
  const std::string words = "the ground here";
  EXPECT_EQ(warnings(validateJob(moundHouse(0.1, 0), "", {}), words), 1u);
  EXPECT_EQ(warnings(validateJob(moundHouse(0.1, 4), "", {}), words), 0u);
  Job elsewhere = moundHouse(0.1, 4);
  elsewhere.dampCourseSteps[0].to = 4;
  EXPECT_EQ(warnings(validateJob(elsewhere, "", {}), words), 1u);
}

}  // namespace
