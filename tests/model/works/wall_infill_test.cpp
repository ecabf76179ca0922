#include <gtest/gtest.h>

#include "tests/support/demo_job.h"
#include "tests/support/wall_works.h"

namespace {

using namespace model;
using test_support::demoJob;
using test_support::find;
using test_support::wallsOf;

TEST(CavityFill, StopsAQuarterMetreLessOneUnderTheDampCourseAndUnderTheGround) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  // Check M16: 225 mm at least below the damp course. The ground at E-F is higher than that.
  const Element* north = find(works, "wall E-F/cavity fill");
  ASSERT_NE(north, nullptr);
  EXPECT_NEAR(north->top, -0.225, 1e-9);
  // Along A-B the ground falls to -0.560 at B.
  const Element* south = find(works, "wall A-B/cavity fill");
  ASSERT_NE(south, nullptr);
  EXPECT_NEAR(south->top, -0.560, 1e-9);
  EXPECT_NEAR(south->underside, -1.200, 1e-9);
  EXPECT_NEAR(bounds(south->solid).high.x, 6.265, 1e-6);    // none over the cellar wall
  EXPECT_EQ(find(works, "wall B-C/cavity fill"), nullptr);  // on the cellar wall, above the ground
}

}  // namespace
