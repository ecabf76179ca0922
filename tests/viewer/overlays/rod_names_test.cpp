#include "viewer/overlays/rod_names.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

namespace viewer {
namespace {

struct Case {
  std::vector<RodName> names;
  RodNameRoom room;
  float edge = 0, way = 1;
  std::vector<PlacedRodName> placed;
};

Case someCase() {
  Case c;
  c.room.sheet = {20, 100, 20.0f + float(*rc::gen::inRange(200, 1200)),
                  100.0f + float(*rc::gen::inRange(100, 900))};
  const int count = *rc::gen::inRange(1, 40);
  for (int i = 0; i < count; ++i)
    c.names.push_back({c.room.sheet.top + c.room.sheet.height() * float(i) / float(count),
                       float(*rc::gen::inRange(30, 400)), *rc::gen::inRange(0, 5)});
  const int taken = *rc::gen::inRange(0, 5);
  for (int i = 0; i < taken; ++i)
    c.room.taken.push_back(
        Box::at({float(*rc::gen::inRange(0, 1200)), float(*rc::gen::inRange(80, 900))},
                {float(*rc::gen::inRange(10, 300)), float(*rc::gen::inRange(10, 200))}));
  c.edge = float(*rc::gen::inRange(20, 1220));
  c.way = *rc::gen::element(-1.0f, 1.0f);
  c.placed = placeRodNames(c.names, c.edge, c.way, c.room);
  return c;
}

RC_GTEST_PROP(RodNames, StandApartInTheirOrderOnTheSheetAndClearOfWhatIsTaken, ()) {
  const Case c = someCase();
  for (size_t i = 0; i < c.placed.size(); ++i) {
    const Box& box = c.placed[i].box;
    RC_ASSERT(box.inside(c.room.sheet.grown(0.02f)));
    RC_ASSERT((c.way > 0 ? box.left : box.right) == c.edge);
    for (const Box& taken : c.room.taken) RC_ASSERT(!box.grown(c.room.gap - 0.05f).overlaps(taken));
    if (i == 0) continue;
    RC_ASSERT(box.top >= c.placed[i - 1].box.bottom - 0.02f);
    RC_ASSERT(c.placed[i].name > c.placed[i - 1].name);
  }
}

RC_GTEST_PROP(RodNames, GiveUpTheLeastImportantOnes, ()) {
  const Case c = someCase();
  if (c.placed.empty()) return;
  std::set<size_t> kept;
  int least = 100;
  for (const PlacedRodName& each : c.placed) {
    kept.insert(each.name);
    least = std::min(least, c.names[each.name].priority);
  }
  for (size_t i = 0; i < c.names.size(); ++i)
    if (!kept.count(i)) RC_ASSERT(c.names[i].priority <= least);
}

TEST(RodNames, AreAllThereAtTheirOwnHeightsWhereThereIsRoom) {
  RodNameRoom room;
  room.sheet = {0, 0, 800, 600};
  const auto placed = placeRodNames({{100, 80, 0}, {300, 120, 4}, {500, 60, 2}}, 200, 1, room);
  ASSERT_EQ(placed.size(), 3u);
  EXPECT_FLOAT_EQ(placed[0].box.centre().y, 100);
  EXPECT_FLOAT_EQ(placed[1].box.centre().y, 300);
  EXPECT_FLOAT_EQ(placed[1].box.width(), 120);
}

TEST(RodNames, HaveNoColumnWhereItWouldBeTooNarrow) {
  RodNameRoom room;
  room.sheet = {0, 0, 800, 600};
  EXPECT_TRUE(placeRodNames({{100, 300, 0}}, 750, 1, room).empty());
  EXPECT_EQ(placeRodNames({{100, 300, 0}}, 750, -1, room).size(), 1u);
  EXPECT_EQ(placeRodNames({{100, 40, 0}}, 750, 1, room).size(), 1u) << "a short one fits";
}

}  // namespace
}  // namespace viewer
