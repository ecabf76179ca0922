// Mortar between leaves that end against one another.
#include "viewer/leaf_meetings.h"

#include <gtest/gtest.h>

#include <set>

#include "model/job/read_job.h"
#include "model/works/build_works.h"
#include "viewer/unit_instance.h"

namespace {

using namespace model;

// How many units of a part bring mortar.
size_t bringers(const Works& works, const std::string& part) {
  size_t count = 0;
  for (const auto& [unit, what] : viewer::jointsBetweenLeaves(works))
    for (const Element& e : works.elements)
      if (unit >= e.firstUnit && unit < e.firstUnit + e.unitCount &&
          e.id.find(part) != std::string::npos)
        ++count;
  return count;
}

TEST(LeafMeetings, AGardenWallBringsTheMortarAtItsPier) {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  GardenWall& wall = job.gardenWalls.emplace_back();
  wall.line = {{0, -6}, {6.74, -6}};
  wall.pierBricks = 2;
  wall.pierEvery = 4;
  ASSERT_FALSE(hasErrors(validateJob(job, "", {})));
  const Works works = buildWorks(job, deriveSettingOut(job));
  // 22 courses, a pier at each end and one in the middle: four places, at least a brick in each.
  EXPECT_GE(bringers(works, "garden wall 1/"), 22u * 4u);
  EXPECT_EQ(bringers(works, "pier"), 0u) << "its mortar would stand out past the wall";
}

TEST(LeafMeetings, ThePlainCourseBringsItWhereOneThatStandsOutStops) {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  job.corbels = {{"A-B", 1.5, 2, 0.015}};
  ASSERT_FALSE(hasErrors(validateJob(job, "", {})));
  const Works works = buildWorks(job, deriveSettingOut(job));
  EXPECT_EQ(bringers(works, "/corbel "), 0u);
  EXPECT_EQ(bringers(works, "A-B/outer leaf/"), 4u);
}

TEST(LeafMeetings, LeavesThatDoNotMeetHaveNone) {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  EXPECT_TRUE(viewer::jointsBetweenLeaves(buildWorks(job, deriveSettingOut(job))).empty());
}

}  // namespace
