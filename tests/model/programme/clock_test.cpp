#include <gtest/gtest.h>

#include "tests/model/programme/small_works.h"

namespace model {
namespace {

using K = StageKind;

Programme twoStages() {
  Programme programme;
  programme.stages.resize(2);
  programme.stages[0].key = {K::TopsoilStrip};
  programme.stages[1].key = {K::TrenchDig};
  return programme;
}

TEST(Clock, WhatWasThereBeforeHasTimeMinusOne) {
  EXPECT_EQ(timeAt(twoStages(), whole({K::Existing}), {0, 0, 0}), -1);
}

TEST(Clock, AStageWithoutAPlaceInTheProgrammeNeverComes) {
  EXPECT_EQ(timeAt(twoStages(), whole({K::CellarDig}), {0, 0, 0}), kNever);
}

TEST(Clock, GrowthStaysInsideItsStage) {
  const Placement rising = upward({K::TrenchDig}, 0, 2);
  const Programme programme = twoStages();
  const double start = timeAt(programme, rising, {0, 0, 0});
  const double middle = timeAt(programme, rising, {0, 0, 1});
  const double end = timeAt(programme, rising, {0, 0, 2});
  EXPECT_GT(start, 1.0);
  EXPECT_NEAR(middle, 1.5, 1e-12);
  EXPECT_LT(end, 2.0);
  EXPECT_NEAR(start, 1.02, 1e-12);
  EXPECT_NEAR(end, 1.98, 1e-12);
}

TEST(Clock, AtTheEndOfAStageAllOfItStandsAndNothingOfTheNext) {
  Works works;
  add(works, cube("first", upward({K::TopsoilStrip}, 0, 1)));
  add(works, cube("second", upward({K::TrenchDig}, 0, 1)));
  EXPECT_EQ(standingAt(twoStages(), works, 1.0), (std::vector<size_t>{0}));
  EXPECT_EQ(standingAt(twoStages(), works, 0.0), (std::vector<size_t>{}));
  EXPECT_EQ(standingAt(twoStages(), works, 2.0), (std::vector<size_t>{0, 1}));
}

TEST(Clock, WhatIsBeingDugStandsUntilTheLastOfItHasGone) {
  Works works;
  Element soil = cube("soil", whole({K::Existing}), -1, 0);
  soil.removed = downward({K::TrenchDig}, 0, -1);
  add(works, soil);
  const Programme programme = twoStages();
  EXPECT_EQ(standingAt(programme, works, -1), (std::vector<size_t>{0}));
  EXPECT_EQ(standingAt(programme, works, 1.5), (std::vector<size_t>{0}));
  EXPECT_EQ(standingAt(programme, works, 1.985), (std::vector<size_t>{}));
}

TEST(Clock, ARemovalThatNeverComesLeavesTheThingStanding) {
  Works works;
  Element post = cube("post", whole({K::TopsoilStrip}));
  post.removed = whole({K::StrikeScaffold});
  add(works, post);
  EXPECT_EQ(standingAt(twoStages(), works, 2.0), (std::vector<size_t>{0}));
}

}  // namespace
}  // namespace model
