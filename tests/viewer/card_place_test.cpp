// The card of a thing stands clear of the thing while there is room.
#include "viewer/card_place.h"

#include <gtest/gtest.h>

#include "tests/support/sample_model.h"
#include "viewer/view_state.h"

namespace viewer {
namespace {

constexpr Box kRoom{50, 100, 750, 600};
constexpr glm::vec2 kCard{300, 200};

std::vector<SeenTriangle> rectangle(const Box& b) {
  return {{{{b.left, b.top}, {b.right, b.top}, {b.right, b.bottom}}},
          {{{b.left, b.top}, {b.right, b.bottom}, {b.left, b.bottom}}}};
}

TEST(CardPlace, IsBottomRightWhenTheThingIsElsewhere) {
  const Box card = cardPlace(kCard, kRoom, rectangle({60, 110, 200, 200}));
  EXPECT_EQ(card.right, kRoom.right);
  EXPECT_EQ(card.bottom, kRoom.bottom);
}

TEST(CardPlace, StepsAsideForAThingWhereverThatStands) {
  for (float x = 50; x <= 700; x += 25)
    for (float y = 100; y <= 550; y += 25) {
      const auto thing = rectangle({x, y, x + 50, y + 50});
      const Box card = cardPlace(kCard, kRoom, thing);
      EXPECT_TRUE(card.inside(kRoom));
      for (const auto& triangle : thing) EXPECT_FALSE(covers(card, triangle)) << x << " " << y;
    }
}

// A bounding box would fill the room; the bar itself leaves two corners free.
TEST(CardPlace, GoesByTheShapeAndNotByTheBoxRoundIt) {
  const std::vector<SeenTriangle> bar{{{{50, 100}, {70, 100}, {750, 600}}}};
  const Box card = cardPlace(kCard, kRoom, bar);
  EXPECT_EQ(card.left, kRoom.left);
  EXPECT_EQ(card.bottom, kRoom.bottom);
}

TEST(CardPlace, CoversLeastWhereNothingIsFree) {
  const Box card = cardPlace(kCard, kRoom, rectangle({0, 0, 800, 500}));
  EXPECT_EQ(card.bottom, kRoom.bottom) << "the foot of the room is free below 500";
}

TEST(CardPlace, TakesAThingAsItFallsOnTheSheet) {
  const Scene scene = buildScene(support::sampleModel());
  Frame frame;
  frame.camera = *standardView("south", scene.buildingLow, scene.buildingHigh, 1.5);
  const Box sheet{0, 0, 900, 600};
  const auto seen = seenTriangles(scene, frame, sheet, support::kSouthWall);
  ASSERT_FALSE(seen.empty());
  float left = 1e9f, right = -1e9f;
  for (const auto& triangle : seen)
    for (const auto& p : triangle) left = std::min(left, p.x), right = std::max(right, p.x);
  EXPECT_NEAR((left + right) / 2, 450, 1) << "in the middle, where it is framed";
  EXPECT_GT(right - left, 300);
}

}  // namespace
}  // namespace viewer
