#include "model/takeoff/takeoff.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "model/takeoff/measure.h"
#include "model/takeoff/tally.h"
#include "model/takeoff/unit_rates.h"

namespace model {
namespace {

using K = StageKind;

Element boxed(ElementKind kind, Material material, const Placement& placed, const Vec3& size) {
  Element e;
  e.id = "box";
  e.kind = kind;
  e.material = material;
  e.placed = placed;
  e.solid = box({0, 0, 0}, size);
  return e;
}

Element soil(const StageKey& dug, double cubicMetres) {
  Element e = boxed(ElementKind::Spoil, Material::Earth, whole({K::Existing}), {cubicMetres, 1, 1});
  e.removed = whole(dug);
  return e;
}

Programme stagesOf(const std::vector<StageKey>& keys) {
  Programme programme;
  for (const StageKey& key : keys) {
    Stage stage;
    stage.key = key;
    stage.name = "stage " + std::to_string(programme.stages.size() + 1);
    programme.stages.push_back(stage);
  }
  return programme;
}

Takeoff takeoffOf(const std::vector<Element>& elements, const Job& job = {},
                  const SettingOut& settingOut = {}) {
  Works works;
  std::vector<StageKey> keys;
  for (const Element& e : elements) {
    add(works, e);
    keys.push_back(e.removed ? e.removed->stage : e.placed.stage);
  }
  std::sort(keys.begin(), keys.end());
  keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
  return deriveTakeoff(job, settingOut, works, stagesOf(keys));
}

const TakeoffRow* rowOf(const std::vector<TakeoffRow>& rows, const std::string& item) {
  for (const TakeoffRow& row : rows) {
    if (row.item == item) return &row;
  }
  return nullptr;
}

TEST(Takeoff, SpoilIsCountedInTheBankAndLoose) {
  Job job;
  job.ground.bulking = 1.25;
  const Takeoff t = takeoffOf({soil({K::CellarDig}, 40), soil({K::TrenchDig}, 8)}, job);
  EXPECT_NEAR(rowOf(t.rows, "Dig, cellar")->amount, 40, 1e-9);
  EXPECT_NEAR(rowOf(t.rows, "Dig, foundation trenches")->amount, 8, 1e-9);
  EXPECT_NEAR(rowOf(t.rows, "Spoil, loose in the heap")->amount, 60, 1e-9);
  EXPECT_NEAR(rowOf(t.rows, "Muck away, loose")->amount, 60, 1e-9);
}

TEST(Takeoff, TheReducedLevelIsALineOfItsOwnBesideTheTrenches) {
  Element inside = soil({K::TrenchDig}, 5);
  inside.id = "spoil/reduced level";
  const Takeoff t = takeoffOf({inside, soil({K::TrenchDig}, 8)});
  EXPECT_NEAR(rowOf(t.rows, "Dig, foundation trenches")->amount, 8, 1e-9);
  EXPECT_NEAR(rowOf(t.rows, "Dig, reduced level inside")->amount, 5, 1e-9);
  EXPECT_NEAR(rowOf(t.rows, "Spoil, loose in the heap")->amount, 13 * Job{}.ground.bulking, 1e-9);
}

TEST(Takeoff, WhatGoesBackIsNotCartedAway) {
  Job job;
  job.ground.bulking = 1.5;
  const Takeoff t = takeoffOf(
      {soil({K::CellarDig}, 40),
       boxed(ElementKind::Backfill, Material::Earth, whole({K::CellarBackfill}), {10, 1, 1})},
      job);
  EXPECT_NEAR(rowOf(t.rows, "Backfill from the dig")->amount, 10, 1e-9);
  EXPECT_NEAR(rowOf(t.rows, "Muck away, loose")->amount, 45, 1e-9);
}

TEST(Takeoff, NothingIsCartedAwayWhenAllGoesBack) {
  const Takeoff t =
      takeoffOf({soil({K::TrenchDig}, 4), boxed(ElementKind::Backfill, Material::Earth,
                                                whole({K::TrenchBackfill}), {5, 1, 1})});
  EXPECT_EQ(rowOf(t.rows, "Muck away, loose"), nullptr);
}

TEST(Takeoff, TopsoilThatIsNotPutBackIsCartedAwayBulked) {
  Job job;
  job.ground.bulking = 1.25;
  Element strip = boxed(ElementKind::Topsoil, Material::Topsoil, whole({K::Existing}), {57, 1, 1});
  strip.removed = whole({K::TopsoilStrip});
  const auto back = [](double amount) {
    return boxed(ElementKind::Topsoil, Material::Topsoil, whole({K::OutsideWorks}), {amount, 1, 1});
  };
  const Takeoff t = takeoffOf({strip, back(35)}, job);
  const TakeoffRow* row = rowOf(t.rows, "Muck away, topsoil, loose");
  ASSERT_NE(row, nullptr);
  EXPECT_NEAR(row->amount, 22 * 1.25, 1e-9);
  EXPECT_NEAR(row->order, 28, 1e-9);
  EXPECT_EQ(rowOf(takeoffOf({strip, back(57)}, job).rows, "Muck away, topsoil, loose"), nullptr);
}

TEST(Takeoff, ConcreteIsOrderedInQuartersWithItsAllowance) {
  const Takeoff t = takeoffOf({boxed(ElementKind::Foundation, Material::Concrete,
                                     whole({K::FoundationPour}), {4.47, 1, 1})});
  const TakeoffRow* row = rowOf(t.rows, "Concrete, foundations");
  ASSERT_NE(row, nullptr);
  EXPECT_NEAR(row->amount, 4.47, 1e-9);
  EXPECT_EQ(row->unit, "m3");
  EXPECT_NEAR(row->order, 5.0, 1e-9);  // 4.917
}

TEST(Takeoff, TheBasisOfBrickworkIsTheTrueSizeOfItsBricks) {
  Job job;
  job.walls.brickLength = 0.1937;
  job.walls.brickHeight = 0.0572;
  job.walls.joint = 0.0095;
  const Element leaf =
      boxed(ElementKind::OuterLeaf, Material::Brick, whole({K::RunIn, 0, 1}), {5, 0.1025, 2});
  EXPECT_EQ(rowOf(takeoffOf({leaf}, job).rows, "Facing brickwork")->basis,
            "face, openings taken out; a m2 has 73.78 bricks of 193.7 x 57.2 with joints of 9.5");
}

TEST(Takeoff, TiesAreCountedAsTheyAreLaidAndBoardsByTheSheet) {
  Element ties =
      boxed(ElementKind::WallTie, Material::Steel, whole({K::RunIn, 0, 1}), {1, 0.1, 0.003});
  ties.quantity = {37, Unit::Each};
  SettingOut out;
  out.walls = {WallLine{}};
  out.walls[0].name = "A-B";
  Element board = boxed(ElementKind::CavityInsulation, Material::Insulation,
                        whole({K::RunIn, 0, 1}), {0.7, 0.1, 0.45});
  board.wall = "A-B";
  const Takeoff t = takeoffOf({ties, board, board}, Job{}, out);
  EXPECT_NEAR(rowOf(t.rows, "Wall ties, 225 long")->amount, 37, 1e-9);
  EXPECT_NEAR(rowOf(t.rows, "Cavity insulation, 100")->amount, 2 * 0.315, 1e-9);
  EXPECT_NEAR(rowOf(t.rows, "Insulation boards, 1200 x 450 x 100")->amount, 2, 1e-9);
}

TEST(Takeoff, LintelsAreOrderedByLengthAndLeaf) {
  SettingOut out;
  WallLine wall;
  wall.name = "A-B";
  wall.end = {8, 0};
  wall.length = 8;
  out.walls = {wall};
  Element outer =
      boxed(ElementKind::Lintel, Material::Concrete, whole({K::Lintels, 0}), {1.21, .1, .15});
  outer.wall = "A-B";
  Element inner = outer;
  inner.solid = box({0, 0.25, 0}, {1.21, 0.35, 0.15});
  Element longer = outer;
  longer.solid = box({0, 0, 0}, {2.1, 0.1, 0.15});
  const Takeoff t = takeoffOf({outer, inner, outer, longer}, Job{}, out);
  EXPECT_EQ(rowOf(t.rows, "Lintel 1210 x 150, outer leaf")->amount, 2);
  EXPECT_EQ(rowOf(t.rows, "Lintel 1210 x 150, inner leaf")->amount, 1);
  EXPECT_EQ(rowOf(t.rows, "Lintel 2100 x 150, outer leaf")->amount, 1);
}

TEST(Takeoff, JoistsAreCountedAndMeasured) {
  Job job;
  Element joists =
      boxed(ElementKind::Joist, Material::Timber, whole({K::UpperFloor, 1}), {4, 0.047, 0.22});
  joists.solid.append(box({0, 0.4, 0}, {3, 0.447, 0.22}));
  const Takeoff t = takeoffOf({joists}, job);
  EXPECT_NEAR(rowOf(t.rows, "Joists 47 x 220")->amount, 7, 1e-9);
  EXPECT_EQ(rowOf(t.rows, "Joists 47 x 220, number")->amount, 2);
  EXPECT_NEAR(rowOf(t.rows, "Joists 47 x 220")->order, 7.8, 1e-9);  // 7.7 in steps of 0.3
}

TEST(Takeoff, StagesAddUpToTheWhole) {
  Job job;
  const Takeoff t = takeoffOf(
      {soil({K::CellarDig}, 40), soil({K::TrenchDig}, 8),
       boxed(ElementKind::OuterLeaf, Material::Brick, whole({K::RunIn, 0, 1}), {5, 0.1025, 2}),
       boxed(ElementKind::OuterLeaf, Material::Brick, whole({K::Gables}), {2, 0.1025, 2}),
       boxed(ElementKind::Backfill, Material::Earth, whole({K::CellarBackfill}), {10, 1, 1})},
      job);
  std::map<std::string, double> sums;
  for (const TakeoffRow& row : t.byStage) {
    EXPECT_NE(row.stage, "");
    sums[row.item] += row.amount;
  }
  ASSERT_EQ(sums.size(), t.rows.size());
  for (const TakeoffRow& row : t.rows) EXPECT_NEAR(sums[row.item], row.amount, 1e-9) << row.item;
  EXPECT_EQ(rowOf(t.byStage, "Facing brickwork")->stage, "stage 4");
}

TEST(Order, IsRoundedUpTheWayItIsSold) {
  EXPECT_NEAR(orderOf(4.47, 0.10, 0.25), 5.0, 1e-12);
  EXPECT_NEAR(orderOf(5.0, 0, 0.25), 5.0, 1e-12) << "a whole number of steps is not one more";
  EXPECT_NEAR(orderOf(0.1 + 0.2, 0, 0.3), 0.3, 1e-12) << "nor is a last digit";
  EXPECT_NEAR(orderOf(100, 0.05, 1), 105, 1e-12);
  EXPECT_NEAR(orderOf(12.3, 0, 0), 12.3, 1e-12) << "what is not ordered is left alone";
}

TEST(Measure, PiecesOfASolidAreCounted) {
  Solid solid = box({0, 0, 0}, {1, 1, 1});
  EXPECT_EQ(pieceCount(solid), 1u);
  solid.append(box({1, 0, 0}, {2, 1, 1}));
  EXPECT_EQ(pieceCount(solid), 2u) << "touching is not being one";
  EXPECT_EQ(pieceCount(Solid{}), 0u);
}

TEST(Measure, ExtentIsTakenAlongTheWallHoweverItLies) {
  const Solid solid = box({0, 0, 0}, {3, 4, 1});
  EXPECT_NEAR(extentAlong(solid, {1, 0, 0}), 3, 1e-12);
  EXPECT_NEAR(extentAlong(solid, {0.6, 0.8, 0}), 5, 1e-12);
}

TEST(UnitRates, ASizeOfNothingCountsNothing) {
  EXPECT_EQ(unitsPerSquareMetre(0, 0.065, 0.01), 0);
  EXPECT_EQ(unitsPerSquareMetre(0.215, -1, 0.01), 0);
}

}  // namespace
}  // namespace model
