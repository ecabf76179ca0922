#include "model/drawing/paper.h"

#include <gtest/gtest.h>

namespace model {
namespace {

// ISO 216: A3 is 297 by 420 mm, A4 is 210 by 297 mm.
TEST(Paper, HasTheSizesOfTheStandard) {
  const Sheet a3 = blankSheet(Paper::A3, Lie::Landscape), a4 = blankSheet(Paper::A4, Lie::Portrait);
  EXPECT_EQ(a3.width, 420);
  EXPECT_EQ(a3.height, 297);
  EXPECT_EQ(a4.width, 210);
  EXPECT_EQ(a4.height, 297);
}

TEST(Paper, IsNamedInEitherCase) {
  EXPECT_EQ(paperNamed("A3"), Paper::A3);
  EXPECT_EQ(paperNamed("a4"), Paper::A4);
  EXPECT_EQ(paperNamed("A2"), std::nullopt);
  EXPECT_EQ(paperNamed(""), std::nullopt);
}

TEST(Scale, IsReadAsItIsWritten) {
  EXPECT_EQ(readScale("1:50"), 50);
  EXPECT_EQ(readScale("1 : 100"), 100);
  EXPECT_EQ(readScale("75"), 75);
  for (const char* wrong : {"", "1:", "50:1", "1:0", "1:-50", "1:50.5", "1:10001", "half", "1:5O",
                            "1:999999999999999999999"})
    EXPECT_EQ(readScale(wrong), std::nullopt) << wrong;
}

// ISO 5455: reductions 1:20, 1:50, 1:100 and so on, by tens.
TEST(Scale, IsTheFirstStandardOneThatFits) {
  EXPECT_EQ(largestScale([](int scale) { return scale >= 60; }), 100);
  EXPECT_EQ(largestScale([](int) { return true; }), 20);
  EXPECT_EQ(largestScale([](int) { return false; }), std::nullopt);
}

}  // namespace
}  // namespace model
