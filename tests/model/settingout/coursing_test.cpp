// Lengths of brickwork that come out without cutting.
//
// Source: Brickwork Dimensions, Technical Information Sheet 9 (masonry trade sheet): runs of
// standard bricks with joints of 10, in rows of half bricks.
#include "model/settingout/coursing.h"

#include <gtest/gtest.h>

namespace model {
namespace {

struct Row {
  int halfBricks;
  double millimetres;
};

void expectRows(int joints, const std::vector<Row>& rows) {
  for (const Row& row : rows) {
    EXPECT_NEAR(coordinatingLength({}, row.halfBricks, joints) * 1000, row.millimetres, 1e-9)
        << row.halfBricks << " half bricks";
  }
}

// Check M02: a joint at both ends.
TEST(CoordinatingLength, OfOpeningsIsAsPublished) {
  expectRows(1, {{2, 235}, {3, 347.5}, {8, 910}, {68, 7660}, {78, 8785}});
}

// Check M03: a joint at one end.
TEST(CoordinatingLength, OfProjectionsIsAsPublished) {
  expectRows(0, {{2, 225}, {5, 562.5}, {8, 900}, {68, 7650}, {135, 15187.5}});
}

// Check M04: no joint at either end.
TEST(CoordinatingLength, OfPiersIsAsPublished) {
  expectRows(-1, {{2, 215}, {3, 327.5}, {8, 890}, {68, 7640}});
}

TEST(CoordinatingLength, FollowsTheJobsOwnBricks) {
  WallBuildUp walls;
  walls.brickLength = 0.290;
  walls.joint = 0.012;
  EXPECT_NEAR(coordinatingLength(walls, 4, 1), 2 * 0.302 + 0.012, 1e-12);
}

TEST(HalfBricksOfOpening, AreTheNearestToItsWidth) {
  EXPECT_EQ(halfBricksOfOpening({}, 0.910), 8);
  EXPECT_EQ(halfBricksOfOpening({}, 0.900), 8);
  EXPECT_EQ(halfBricksOfOpening({}, 0.970), 9);
  EXPECT_EQ(halfBricksOfOpening({}, 0.020), 1);
}

}  // namespace
}  // namespace model
