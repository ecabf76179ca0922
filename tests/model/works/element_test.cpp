#include <set>

#include <gtest/gtest.h>

#include "model/works/element.h"

namespace {

using namespace model;

const StageKey kStage{StageKind::RunIn, 0, 1};

TEST(Placement, ThatIsWholeIsThereFromItsBeginningEverywhere) {
  const Placement p = whole(kStage, 0.25);
  EXPECT_DOUBLE_EQ(fractionAt(p, {0, 0, -9}), 0.25);
  EXPECT_DOUBLE_EQ(fractionAt(p, {5, 1, 9}), 0.25);
}

TEST(Placement, UpwardReachesTheTopLast) {
  const Placement p = upward(kStage, 1, 3, 0.5, 1.0);
  EXPECT_DOUBLE_EQ(fractionAt(p, {7, 7, 1}), 0.5);
  EXPECT_DOUBLE_EQ(fractionAt(p, {7, 7, 2}), 0.75);
  EXPECT_DOUBLE_EQ(fractionAt(p, {7, 7, 3}), 1.0);
  EXPECT_DOUBLE_EQ(fractionAt(p, {7, 7, 99}), 1.0);
  EXPECT_DOUBLE_EQ(fractionAt(p, {7, 7, -99}), 0.5);
}

TEST(Placement, DownwardReachesTheBottomLast) {
  const Placement p = downward(kStage, 0, -2);
  EXPECT_DOUBLE_EQ(fractionAt(p, {0, 0, 0}), 0);
  EXPECT_DOUBLE_EQ(fractionAt(p, {0, 0, -1.5}), 0.75);
  EXPECT_DOUBLE_EQ(fractionAt(p, {0, 0, -2}), 1);
}

TEST(Placement, OverNoHeightIsStillAFraction) {
  const double f = fractionAt(upward(kStage, 2, 2), {0, 0, 2});
  EXPECT_GE(f, 0);
  EXPECT_LE(f, 1);
}

TEST(Works, TakesLevelsFromTheSolidAndDropsWhatHasNone) {
  Works works;
  add(works, Element{});
  EXPECT_TRUE(works.elements.empty());
  Element block;
  block.solid = box({0, 0, -0.3}, {1, 1, 0.7});
  add(works, block);
  ASSERT_EQ(works.elements.size(), 1u);
  EXPECT_DOUBLE_EQ(works.elements[0].underside, -0.3);
  EXPECT_DOUBLE_EQ(works.elements[0].top, 0.7);
}

TEST(Names, OfKindsMaterialsAndUnitsAreAllDifferentAndNoneIsEmpty) {
  std::set<std::string> kinds, materials, units;
  for (int i = 0; i <= static_cast<int>(ElementKind::EdgeProtection); ++i) {
    const std::string name = nameOf(static_cast<ElementKind>(i));
    EXPECT_FALSE(name.empty()) << i;
    EXPECT_TRUE(kinds.insert(name).second) << name;
  }
  for (int i = 0; i <= static_cast<int>(Material::Masonry); ++i) {
    const std::string name = nameOf(static_cast<Material>(i));
    EXPECT_FALSE(name.empty()) << i;
    EXPECT_TRUE(materials.insert(name).second) << name;
  }
  for (int i = 0; i <= static_cast<int>(Unit::CubicMetre); ++i) {
    EXPECT_TRUE(units.insert(nameOf(static_cast<Unit>(i))).second);
  }
}

TEST(Names, TemporaryWorksAreThoseThatGoAgain) {
  EXPECT_TRUE(isTemporary(ElementKind::Scaffold));
  EXPECT_TRUE(isTemporary(ElementKind::ProfileBoard));
  EXPECT_FALSE(isTemporary(ElementKind::OuterLeaf));
  EXPECT_FALSE(isTemporary(ElementKind::Spoil));
}

}  // namespace
