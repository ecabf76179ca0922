#include "viewer/overlays/label_layout.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "viewer/overlays/stack_apart.h"

namespace viewer {
namespace {

LabelRules rulesFor(float width, float height) {
  LabelRules rules;
  rules.sheet = {0, 0, width, height};
  return rules;
}

std::vector<LabelRequest> someRequests() {
  const int count = *rc::gen::inRange(1, 120);
  std::vector<LabelRequest> requests;
  for (int i = 0; i < count; ++i) {
    LabelRequest r;
    r.anchor = {float(*rc::gen::inRange(-50, 1350)), float(*rc::gen::inRange(-50, 770))};
    r.size = {float(*rc::gen::inRange(8, 260)), float(*rc::gen::inRange(12, 40))};
    r.towards = {float(*rc::gen::inRange(-1, 2)), float(*rc::gen::inRange(-1, 2))};
    r.priority = *rc::gen::inRange(0, 3);
    requests.push_back(r);
  }
  return requests;
}

RC_GTEST_PROP(Labels, neverOverlapEachOtherNorWhatIsTakenNorLeaveTheSheet, ()) {
  const auto requests = someRequests();
  LabelRules rules = rulesFor(1280, 720);
  rules.taken = {{1000, 500, 1260, 700}, {30, 640, 900, 700}, {0, 0, 400, 120}};
  const auto placed = layOutLabels(requests, rules);
  RC_ASSERT(placed.size() == requests.size());
  for (size_t i = 0; i < placed.size(); ++i) {
    if (!placed[i].shown) continue;
    RC_ASSERT(placed[i].box.inside(rules.sheet));
    for (const Box& taken : rules.taken) RC_ASSERT(!placed[i].box.overlaps(taken));
    for (size_t j = i + 1; j < placed.size(); ++j)
      RC_ASSERT(!placed[j].shown || !placed[i].box.overlaps(placed[j].box));
  }
}

RC_GTEST_PROP(Labels, keepTheSizeAskedForAndStayWithinReach, ()) {
  const auto requests = someRequests();
  const LabelRules rules = rulesFor(1280, 720);
  const auto placed = layOutLabels(requests, rules);
  for (size_t i = 0; i < placed.size(); ++i) {
    if (!placed[i].shown) continue;
    RC_ASSERT(std::abs(placed[i].box.width() - requests[i].size.x) < 0.01f);
    RC_ASSERT(std::abs(placed[i].box.height() - requests[i].size.y) < 0.01f);
    const glm::vec2 start = leaderStart(placed[i].box, requests[i].anchor);
    RC_ASSERT(std::hypot(start.x - requests[i].anchor.x, start.y - requests[i].anchor.y) <=
              rules.reach + 0.01f);
  }
}

RC_GTEST_PROP(Labels, areTheSameForTheSameRequests, ()) {
  const auto requests = someRequests();
  const LabelRules rules = rulesFor(1280, 720);
  const auto once = layOutLabels(requests, rules), again = layOutLabels(requests, rules);
  for (size_t i = 0; i < once.size(); ++i) {
    RC_ASSERT(once[i].shown == again[i].shown);
    RC_ASSERT(once[i].box.left == again[i].box.left && once[i].box.top == again[i].box.top);
  }
}

TEST(Labels, StandOnTheSideAskedForWhenThereIsRoom) {
  LabelRequest right{{600, 300}, {80, 20}, {1, 0}, 0};
  LabelRequest up{{300, 300}, {80, 20}, {0, -1}, 0};
  const auto placed = layOutLabels({right, up}, rulesFor(1280, 720));
  ASSERT_TRUE(placed[0].shown && placed[1].shown);
  EXPECT_GT(placed[0].box.left, 600);
  EXPECT_LT(placed[1].box.bottom, 300);
  EXPECT_FALSE(placed[0].leader);
}

TEST(Labels, OfHigherPriorityChooseFirst) {
  const LabelRequest low{{600, 300}, {80, 20}, {1, 0}, 0};
  LabelRequest high = low;
  high.priority = 1;
  const auto alone = layOutLabels({high}, rulesFor(1280, 720));
  const auto both = layOutLabels({low, high}, rulesFor(1280, 720));
  EXPECT_EQ(both[1].box.left, alone[0].box.left);
  EXPECT_EQ(both[1].box.top, alone[0].box.top);
  ASSERT_TRUE(both[0].shown);
  EXPECT_FALSE(both[0].box.overlaps(both[1].box));
}

TEST(Labels, ThatHadToStandOffGetALeader) {
  std::vector<LabelRequest> crowd(12, LabelRequest{{600, 300}, {120, 20}, {1, 0}, 0});
  const auto placed = layOutLabels(crowd, rulesFor(1280, 720));
  EXPECT_FALSE(placed.front().leader);
  EXPECT_TRUE(std::any_of(placed.begin(), placed.end(),
                          [](const PlacedLabel& p) { return p.shown && p.leader; }));
}

TEST(Labels, WithoutRoomAreLeftOutNotSquashed) {
  LabelRules rules = rulesFor(300, 200);
  rules.taken = {{0, 0, 300, 200}};
  EXPECT_FALSE(layOutLabels({{{150, 100}, {50, 20}, {1, 0}, 0}}, rules)[0].shown);
}

TEST(Labels, SayNothingOfWhatSomethingLiesOver) {
  LabelRules rules = rulesFor(1280, 720);
  rules.over = {{500, 200, 700, 400}};
  LabelRequest request{{600, 300}, {50, 20}, {1, 0}, 0};
  EXPECT_FALSE(layOutLabels({request}, rules)[0].shown);
  request.others.push_back({{720, 300}, {1, 0}});
  const PlacedLabel other = layOutLabels({request}, rules)[0];
  ASSERT_TRUE(other.shown);
  EXPECT_EQ(other.anchor, glm::vec2(720, 300));
}

RC_GTEST_PROP(StackApart, keepsTextsApartInOrderAndInside, ()) {
  std::vector<float> wanted;
  const int count = *rc::gen::inRange(0, 40);
  for (int i = 0; i < count; ++i) wanted.push_back(float(*rc::gen::inRange(-100, 900)));
  std::sort(wanted.begin(), wanted.end());
  const float height = 18, from = 20, to = 760;
  const auto placed = stackApart(wanted, height, from, to);
  RC_ASSERT(placed.has_value() == (float(count) * height <= to - from));
  if (!placed) return;
  for (size_t i = 0; i < placed->size(); ++i) {
    RC_ASSERT((*placed)[i] >= from + height / 2 - 0.01f);
    RC_ASSERT((*placed)[i] <= to - height / 2 + 0.01f);
    if (i) RC_ASSERT((*placed)[i] - (*placed)[i - 1] >= height - 0.01f);
  }
}

TEST(StackApart, LeavesAloneWhatIsApartAlready) {
  const std::vector<float> wanted{40, 80, 200};
  EXPECT_EQ(*stackApart(wanted, 20, 0, 300), wanted);
}

TEST(StackApart, SharesTheMoveBetweenTwoThatCollide) {
  const auto placed = stackApart({100, 104}, 20, 0, 300);
  EXPECT_FLOAT_EQ((*placed)[0], 92);
  EXPECT_FLOAT_EQ((*placed)[1], 112);
}

}  // namespace
}  // namespace viewer
