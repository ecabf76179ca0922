#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "viewer/panels/measure.h"

namespace viewer {
namespace {

RC_GTEST_PROP(MeasureCard, StaysInItsRoomWhereverThePointsAre, ()) {
  const Box room{40, 8, 40.0f + float(*rc::gen::inRange(300, 3000)),
                 8.0f + float(*rc::gen::inRange(200, 2000))};
  const auto point = [] {
    return glm::vec2(float(*rc::gen::inRange(-200, 4000)), float(*rc::gen::inRange(-200, 2300)));
  };
  const glm::vec2 size{float(*rc::gen::inRange(100, 300)), float(*rc::gen::inRange(60, 190))};
  const glm::vec2 from = point(), to = point();
  RC_ASSERT(measureCardPlace(from, to, size, room, 18).inside(room.grown(0.01f)));
}

TEST(MeasureCard, StandsBesideTheEndFurtherRightElseBesideTheOther) {
  const Box room{0, 0, 1000, 600};
  const Box right = measureCardPlace({500, 300}, {200, 100}, {150, 100}, room, 18);
  EXPECT_EQ(right.left, 518);
  EXPECT_EQ(right.centre().y, 300);
  const Box left = measureCardPlace({950, 300}, {400, 100}, {150, 100}, room, 18);
  EXPECT_EQ(left.right, 382);
  EXPECT_EQ(left.centre().y, 100);
}

}  // namespace
}  // namespace viewer
