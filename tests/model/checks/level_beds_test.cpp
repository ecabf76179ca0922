// Beds that ties cannot lie level across.
#include "model/checks/level_beds.h"

#include <gtest/gtest.h>

#include "model/model.h"
#include "tests/support/demo_job.h"

namespace {

using namespace model;

TEST(LevelBeds, OfBlocksOfThreeCoursesAreLevelWithTheBricks) {
  const Model m = buildModel(test_support::demoJob("garage"));
  const auto uneven = unevenBeds(m.works, m.settingOut.levels.dampCourse);
  EXPECT_TRUE(uneven.empty()) << unevenBedText(uneven.front());
}

TEST(LevelBeds, OfLowerBlocksAreTold) {
  Job job = test_support::demoJob("garage");
  job.walls.blockHeight = 0.190;
  const Model m = buildModel(job);
  const auto uneven = unevenBeds(m.works, m.settingOut.levels.dampCourse);
  ASSERT_FALSE(uneven.empty());
  // The first of 200 with its bed lies between brick beds at 150 and 225.
  EXPECT_NEAR(uneven.front().level - m.settingOut.levels.dampCourse, 0.200, 1e-6);
  EXPECT_NEAR(uneven.front().off, 0.025, 1e-6);
  EXPECT_EQ(uneven.front().walls.size(), m.settingOut.walls.size());
  EXPECT_NE(unevenBedText(uneven.front()).find("is 25 under the nearest brick bed"),
            std::string::npos);
}

}  // namespace
