// How whole units are cut up.
#include "model/takeoff/cut_plan.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace model {
namespace {

TEST(CutPlan, TwoHalvesComeFromOneBrick) {
  const CutPlan plan = planCuts({{tenthsOf(0.1025), 7}}, 0.215);
  EXPECT_EQ(plan.wholes, 4);
  EXPECT_NEAR(plan.lost, 4 * 0.215 - 7 * 0.1025, 1e-9);
}

TEST(CutPlan, AThreeQuarterAndItsEndAreTwoPieces) {
  // 215 less 158.75 and a saw cut of 4 leaves 52.
  EXPECT_EQ(planCuts({{tenthsOf(0.15875), 10}, {tenthsOf(0.050), 10}}, 0.215).wholes, 10);
  EXPECT_EQ(planCuts({{tenthsOf(0.15875), 10}, {tenthsOf(0.0525), 10}}, 0.215).wholes, 14)
      << "three from each of four more";
}

TEST(CutPlan, AHalfAndAHalfWithoutRoomForTheSawAreTwoBricks) {
  EXPECT_EQ(planCuts({{tenthsOf(0.106), 2}}, 0.215).wholes, 2);
  EXPECT_EQ(planCuts({{tenthsOf(0.1055), 2}}, 0.215).wholes, 1);
}

RC_GTEST_PROP(CutPlan, CutsNoMoreThanThereIs, ()) {
  PieceLengths pieces;
  const int kinds = *rc::gen::inRange(0, 12);
  int count = 0;
  double length = 0;
  for (int i = 0; i < kinds; ++i) {
    const int tenths = *rc::gen::inRange(300, 2150), number = *rc::gen::inRange(1, 40);
    pieces[tenths] += number;
    count += number;
    length += tenths * 1e-4 * number;
  }
  const CutPlan plan = planCuts(pieces, 0.215);
  RC_ASSERT(plan.wholes <= count);
  // Every piece but one from each whole unit costs a saw cut, and none comes from nothing.
  const double sawn = (count - plan.wholes) * (kSawCut - 1e-9);
  RC_ASSERT(plan.wholes * 0.215 + 1e-9 >= length + sawn - plan.wholes * kSawCut);
  RC_ASSERT(std::abs(plan.wholes * 0.215 - length - plan.lost) < 1e-6);
  // Half the number that there is room for in no case: two ends that are left over would have
  // made one piece more.
  RC_ASSERT(plan.wholes <= 2 * std::ceil((length + count * kSawCut) / 0.215) + 1);
}

}  // namespace
}  // namespace model
