#include "model/drawing/sheet.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <glm/geometric.hpp>

#include "tests/model/drawing/plain_letters.h"

namespace model {
namespace {

const Area kArea{{0, 0}, {100, 50}};

double lengthOf(const std::vector<Stroke>& strokes) {
  double sum = 0;
  for (const Stroke& stroke : strokes)
    for (size_t i = 0; i + (stroke.closed ? 0 : 1) < stroke.points.size(); ++i)
      sum += glm::length(stroke.points[(i + 1) % stroke.points.size()] - stroke.points[i]);
  return sum;
}

TEST(Clipped, LeavesAloneWhatLiesInside) {
  const Stroke square{Layer::Outlines, {}, {{1, 1}, {9, 1}, {9, 9}, {1, 9}}, true};
  const auto pieces = clipped(square, kArea);
  ASSERT_EQ(pieces.size(), 1u);
  EXPECT_TRUE(pieces[0].closed);
  EXPECT_EQ(pieces[0].points, square.points);
}

TEST(Clipped, CutsAtTheEdgeAndJoinsWhatIsOneLine) {
  const Stroke bent{Layer::Outlines, {}, {{-10, 10}, {50, 10}, {50, 70}}, false};
  const auto pieces = clipped(bent, kArea);
  ASSERT_EQ(pieces.size(), 1u);
  EXPECT_EQ(pieces[0].points, (std::vector<Vec2>{{0, 10}, {50, 10}, {50, 50}}));
}

TEST(Clipped, ClosedOutlinesComeBackAsTheirPiecesInside) {
  const Stroke square{Layer::Outlines, {}, {{-10, -10}, {20, -10}, {20, 20}, {-10, 20}}, true};
  EXPECT_NEAR(lengthOf(clipped(square, kArea)), 40, 1e-9);
  const Stroke round{Layer::Outlines, {}, {{-10, -10}, {200, -10}, {200, 200}, {-10, 200}}, true};
  EXPECT_TRUE(clipped(round, kArea).empty());
}

RC_GTEST_PROP(Clipped, StaysInTheAreaAndLosesNothingOfIt, ()) {
  const auto number = rc::gen::map(rc::gen::inRange(-300, 300), [](int n) { return double(n); });
  std::vector<Vec2> points;
  for (int i = *rc::gen::inRange(2, 7); i > 0; --i) points.push_back({*number, *number});
  const Stroke stroke{Layer::Outlines, {}, points, *rc::gen::arbitrary<bool>()};
  const auto pieces = clipped(stroke, kArea);
  for (const Stroke& piece : pieces)
    for (const Vec2& p : piece.points)
      RC_ASSERT(p.x >= -1e-9 && p.x <= 100 + 1e-9 && p.y >= -1e-9 && p.y <= 50 + 1e-9);
  // Walked in small steps, as much lies inside as comes back.
  double inside = 0;
  for (size_t i = 0; i + (stroke.closed ? 0 : 1) < points.size(); ++i) {
    const Vec2 a = points[i], b = points[(i + 1) % points.size()];
    constexpr int kSteps = 2000;
    for (int k = 0; k < kSteps; ++k) {
      const Vec2 p = a + (b - a) * ((k + 0.5) / kSteps);
      if (p.x >= 0 && p.x <= 100 && p.y >= 0 && p.y <= 50) inside += glm::length(b - a) / kSteps;
    }
  }
  RC_ASSERT(std::abs(lengthOf(pieces) - inside) < 5);
}

TEST(BoxOf, TurnsWithItsText) {
  Text text;
  text.text = "12345";
  text.size = 2;
  text.at = {10, 10};
  text.across = Across::Centre;
  text.angle = 90;
  const Polygon box = boxOf(text, test_support::plainLetters());
  EXPECT_GT(signedArea(box), 0);
  for (const Vec2& p : box) {
    EXPECT_NEAR(std::abs(p.y - 10), 4.5, 1e-9) << "half of five letters of 1.8";
    EXPECT_LT(std::abs(p.x - 10), 3);
  }
}

TEST(View, PutsMillimetresOnSiteWhereTheScaleSays) {
  const View view{50, {30, 40}};
  EXPECT_NEAR(view.onPaper({1, 2}).x, 50, 1e-12);
  EXPECT_NEAR(view.onPaper({1, 2}).y, 80, 1e-12);
  EXPECT_NEAR(view.inMetres({50, 80}).y, 2, 1e-12);
}

}  // namespace
}  // namespace model
