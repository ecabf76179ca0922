#include "model/programme/stage_order.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/model/programme/small_works.h"

namespace model {
namespace {

using K = StageKind;

size_t indexIn(const std::vector<StageKey>& stages, const StageKey& key) {
  return static_cast<size_t>(std::find(stages.begin(), stages.end(), key) - stages.begin());
}

TEST(StageOrder, LiftsInterleaveWithScaffoldLintelsAndTheNextFloor) {
  Works works = worksIn({{K::RunIn, 1, 1},
                         {K::RunIn, 0, 2},
                         {K::RaiseCorners, 0, 1},
                         {K::RunIn, 0, 1},
                         {K::ScaffoldLift, 0, 2},
                         {K::RaiseCorners, 0, 2},
                         {K::RaiseCorners, 1, 1},
                         {K::UpperFloor, 1},
                         {K::WallPlate}});
  add(works, cube("lintel", whole({K::Lintels, 0}), 1.35, 1.5));
  const std::vector<StageKey> expected{
      {K::SiteSetUp},     {K::SettingOut},         {K::RaiseCorners, 0, 1}, {K::RunIn, 0, 1},
      {K::Lintels, 0},    {K::ScaffoldLift, 0, 2}, {K::RaiseCorners, 0, 2}, {K::RunIn, 0, 2},
      {K::UpperFloor, 1}, {K::RaiseCorners, 1, 1}, {K::RunIn, 1, 1},        {K::WallPlate},
      {K::OutsideWorks},  {K::Completion}};
  EXPECT_EQ(stageOrder(twoStoreys(), works), expected);
}

TEST(StageOrder, LintelsBetweenLiftEndsWaitForTheLiftThatReachesThem) {
  Works works = worksIn({{K::RunIn, 0, 1}, {K::RunIn, 0, 2}});
  add(works, cube("lintel", whole({K::Lintels, 0}), 2.1, 2.25));
  const auto order = stageOrder(twoStoreys(), works);
  EXPECT_GT(indexIn(order, {K::Lintels, 0}), indexIn(order, {K::RunIn, 0, 2}));
}

TEST(StageOrder, AStageInWhichThingsOnlyGoIsAStage) {
  Works works;
  Element scaffold = cube("scaffold", whole({K::ScaffoldLift, 0, 2}));
  scaffold.removed = whole({K::StrikeScaffold});
  add(works, scaffold);
  const auto order = stageOrder(twoStoreys(), works);
  EXPECT_LT(indexIn(order, {K::ScaffoldLift, 0, 2}), indexIn(order, {K::StrikeScaffold}));
  EXPECT_LT(indexIn(order, {K::StrikeScaffold}), order.size());
}

TEST(StageOrder, WhatWasThereBeforeIsNoStage) {
  for (const StageKey& key : stageOrder(twoStoreys(), worksIn({{K::Existing}}))) {
    EXPECT_NE(key.kind, K::Existing);
  }
}

TEST(StageOrder, LinesComeBackOnlyWhereThereAreFoundations) {
  const auto with = stageOrder(twoStoreys(), worksIn({{K::FoundationPour}}));
  const auto without = stageOrder(twoStoreys(), worksIn({{K::CellarWalls}}));
  EXPECT_LT(indexIn(with, {K::LinesBack}), with.size());
  EXPECT_EQ(indexIn(without, {K::LinesBack}), without.size());
}

TEST(StagePredecessors, TheCellarIsFilledRoundOnlyUnderItsLid) {
  const std::vector<StageKey> order{{K::SettingOut},     {K::CellarDig},       {K::CellarWalls},
                                    {K::CellarMembrane}, {K::TrenchDig},       {K::FoundationPour},
                                    {K::LinesBack},      {K::FloorOverCellar}, {K::CellarBackfill}};
  const auto after = stagePredecessors(order);
  EXPECT_EQ(after[8], (std::vector<size_t>{7})) << "the floor implies the walls and the lines";
  // Deepest first: the strip beside the cellar waits for the cellar.
  EXPECT_EQ(after[4], (std::vector<size_t>{3}));
}

TEST(StagePredecessors, WorkThatTheJobHasNoneOfHandsItsPredecessorsOn) {
  const std::vector<StageKey> order{{K::SiteSetUp}, {K::SettingOut}, {K::TrenchDig}};
  const auto after = stagePredecessors(order);
  EXPECT_TRUE(after[0].empty());
  EXPECT_EQ(after[1], (std::vector<size_t>{0})) << "no topsoil, no demolition";
  EXPECT_EQ(after[2], (std::vector<size_t>{1})) << "no cellar";
}

TEST(StagePredecessors, EveryLiftStandsOnTheOneBefore) {
  const std::vector<StageKey> order{
      {K::DampCourse},         {K::RaiseCorners, 0, 1}, {K::RunIn, 0, 1}, {K::ScaffoldLift, 0, 2},
      {K::RaiseCorners, 0, 2}, {K::RunIn, 0, 2},        {K::WallPlate}};
  const auto after = stagePredecessors(order);
  for (size_t i = 1; i < order.size(); ++i) EXPECT_EQ(after[i], (std::vector<size_t>{i - 1})) << i;
}

}  // namespace
}  // namespace model
