#include "model/drawing/dimension_line.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <glm/geometric.hpp>

#include "model/works/plan_shapes.h"
#include "tests/model/drawing/plain_letters.h"

namespace model {
namespace {

const TextWidth kWidth = test_support::plainLetters();
const Area kArea{{0, 0}, {200, 150}};

TEST(Dimension, HasItsFigureOverItsMiddle) {
  Sheet sheet;
  ClearSpace space(kArea);
  ASSERT_TRUE(
      drawDimension(sheet, space, {{50, 50}, {90, 50}, {50, 40}, {90, 40}, "4000", 2.5}, kWidth));
  ASSERT_EQ(sheet.texts.size(), 1u);
  EXPECT_NEAR(sheet.texts[0].at.x, 70, 1e-9);
  EXPECT_GT(sheet.texts[0].at.y, 50);
  EXPECT_EQ(sheet.strokes.size(), 5u) << "two extension lines, the line, two ticks";
}

TEST(Dimension, ThatIsShorterThanItsFigureStandsOutWithALeader) {
  Sheet sheet;
  ClearSpace space(kArea);
  for (int i = 0; i < 6; ++i) {
    const double x = 50 + 3 * i;
    ASSERT_TRUE(drawDimension(sheet, space,
                              {{x, 50}, {x + 3, 50}, {x, 50}, {x + 3, 50}, "1234", 2.5}, kWidth));
  }
  for (size_t i = 0; i < sheet.texts.size(); ++i)
    for (size_t j = 0; j < i; ++j)
      EXPECT_FALSE(overlapping(boxOf(sheet.texts[i], kWidth), boxOf(sheet.texts[j], kWidth)));
}

TEST(Dimension, IsLeftOutRatherThanWrittenOverSomething) {
  Sheet sheet;
  ClearSpace space(kArea);
  space.take(kArea.corners());
  EXPECT_FALSE(
      drawDimension(sheet, space, {{50, 50}, {90, 50}, {50, 40}, {90, 40}, "4000", 2.5}, kWidth));
  EXPECT_TRUE(sheet.texts.empty());
  EXPECT_TRUE(sheet.strokes.empty());
}

TEST(ReadingAngle, IsFromTheFootOrTheRight) {
  EXPECT_NEAR(readingAngle({1, 0}), 0, 1e-9);
  EXPECT_NEAR(readingAngle({-1, 0}), 0, 1e-9);
  EXPECT_NEAR(readingAngle({0, 1}), 90, 1e-9);
  EXPECT_NEAR(readingAngle({0, -1}), 90, 1e-9);
  EXPECT_NEAR(readingAngle({0.01, -1}), 90.573, 1e-3) << "a lean does not turn it over";
  EXPECT_NEAR(readingAngle({1, -1}), -45, 1e-9);
}

RC_GTEST_PROP(Dimension, FiguresNeverCoverOneAnotherAndStayOnTheSheet, ()) {
  Sheet sheet;
  ClearSpace space(kArea);
  const auto coordinate = [](int high) { return double(*rc::gen::inRange(0, high)); };
  for (int i = *rc::gen::inRange(1, 40); i > 0; --i) {
    const Vec2 a{coordinate(200), coordinate(150)}, b{coordinate(200), coordinate(150)};
    drawDimension(sheet, space, {a, b, a, b, std::to_string(*rc::gen::inRange(1, 99999)), 2.5},
                  kWidth);
  }
  for (size_t i = 0; i < sheet.texts.size(); ++i) {
    const Polygon box = boxOf(sheet.texts[i], kWidth);
    for (const Vec2& p : box) RC_ASSERT(p.x >= 0 && p.x <= 200 && p.y >= 0 && p.y <= 150);
    for (size_t j = 0; j < i; ++j) RC_ASSERT(!overlapping(box, boxOf(sheet.texts[j], kWidth)));
  }
}

}  // namespace
}  // namespace model
