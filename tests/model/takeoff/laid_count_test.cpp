// Units counted, and what is mortar between them.
#include "model/takeoff/laid_count.h"

#include <gtest/gtest.h>

#include "model/takeoff/loading.h"
#include "model/takeoff/takeoff.h"

namespace model {
namespace {

using K = StageKind;

MasonryUnit unitAt(double s, double z, double length, Piece piece = Piece::Whole) {
  MasonryUnit unit;
  unit.s0 = s;
  unit.s1 = s + length;
  unit.z0 = z;
  unit.z1 = z + 0.065;
  unit.d1 = 0.1025f;
  unit.piece = piece;
  return unit;
}

// One leaf with two courses of four bricks each, the second ending in halves.
Works smallLeaf() {
  Works works;
  works.frames.push_back({});
  for (int i = 0; i < 4; ++i) works.units.push_back(unitAt(0.225 * i, 0.010, 0.215));
  works.units.push_back(unitAt(0, 0.085, 0.1025, Piece::Half));
  for (int i = 0; i < 3; ++i) works.units.push_back(unitAt(0.1125 + 0.225 * i, 0.085, 0.215));
  works.units.push_back(unitAt(0.7875, 0.085, 0.1025, Piece::Half));
  Element leaf;
  leaf.id = "wall A-B/outer leaf";
  leaf.kind = ElementKind::OuterLeaf;
  leaf.material = Material::Brick;
  leaf.wall = "A-B";
  leaf.solid = box({0, 0, 0}, {0.890, 0.1025, 0.150});
  leaf.placed = upward({K::RunIn, 0, 1}, 0, 0.150);
  leaf.unitCount = works.units.size();
  add(works, leaf);
  return works;
}

TEST(LaidCount, OfALeafAreItsUnitsAndTheMortarBetween) {
  const Works works = smallLeaf();
  LaidCount count;
  count.add(works, works.elements[0]);
  EXPECT_EQ(count.whole, 7);
  EXPECT_EQ(count.half, 2);
  EXPECT_EQ(count.laid(), 9);
  EXPECT_EQ(neededFor(count, 0.215, 0.065).wholes, 8) << "two halves from one";
  // By hand: two beds of 10, three cross joints of 10 in one course and four in the other.
  const double joints = 2 * 0.890 * 0.010 + (3 + 4) * 0.065 * 0.010;
  EXPECT_NEAR(count.mortar(), joints * 0.1025, 1e-9);
}

TEST(LaidCount, ARakedOrMitredUnitHasWhatIsLeftOfIt) {
  UnitFrame frame;
  frame.skewStart = 1;  // 45 degrees
  MasonryUnit unit = unitAt(0, 0, 0.200);
  unit.mitredStart = true;
  EXPECT_NEAR(volumeOf(unit, frame), (0.200 - 0.1025 / 2) * 0.065 * 0.1025, 1e-7);
  unit = unitAt(0, 0, 0.200, Piece::Raked);
  unit.rake0 = 0.0650f;
  unit.rake1 = 0;
  EXPECT_NEAR(volumeOf(unit, frame), 0.200 * 0.065 / 2 * 0.1025, 1e-7);
  unit.rake0 = 0.1300f;  // only over half of its length
  EXPECT_NEAR(volumeOf(unit, frame), 0.200 * (0.5 + 0.25) * 0.065 * 0.1025, 1e-7);
  unit.rake0 = unit.rake1 = -0.010f;
  EXPECT_EQ(volumeOf(unit, frame), 0);
}

Programme oneLift() {
  Programme programme;
  Stage stage;
  stage.key = {K::RunIn, 0, 1};
  stage.name = "Run in";
  programme.stages.push_back(stage);
  return programme;
}

double amountOf(const Takeoff& takeoff, const std::string& item) {
  for (const TakeoffRow& row : takeoff.rows)
    if (row.item == item) return row.amount;
  return 0;
}

TEST(LaidCount, TheTakeoffTellsPiecesAndMixesTheMortar) {
  Job job;
  job.laying.mixSand = 3;
  const Takeoff t = deriveTakeoff(job, {}, smallLeaf(), oneLift());
  EXPECT_EQ(amountOf(t, "Facing bricks"), 8);
  EXPECT_EQ(amountOf(t, "Facing bricks, laid whole"), 7);
  EXPECT_EQ(amountOf(t, "Facing bricks, halves"), 2);
  EXPECT_NEAR(amountOf(t, "Facing bricks, lost in cutting"), 10.0 / 215, 1e-6);
  const double mortar = amountOf(t, "Mortar for brickwork, 1 : 3");
  EXPECT_GT(mortar, 0);
  EXPECT_NEAR(amountOf(t, "Sand for mortar, loose and dry"), mortar * 38 / 27 * 3 / 4, 1e-9);
}

TEST(Loading, IsInHalfPacksForEachRunAndInWholeOnesForTheLift) {
  SettingOut out;
  for (const char* name : {"A-B", "B-C"}) {
    WallLine wall;
    wall.name = name;
    out.walls.push_back(wall);
  }
  Works works = smallLeaf();
  Element second = works.elements[0];
  second.id = second.wall = "B-C";
  works.elements.push_back(second);
  second.id = "upper";
  second.placed.stage.lift = 2;
  works.elements.push_back(second);
  Programme programme = oneLift();
  programme.stages.push_back(programme.stages[0]);
  programme.stages[1].key.lift = 2;
  Job job;
  job.laying.bricksInPack = 15;
  const auto loads = deriveLoading(job, out, works, programme);
  ASSERT_EQ(loads.size(), 2u);
  EXPECT_EQ(loads[0].name, "Ground floor, lift 1");
  ASSERT_EQ(loads[0].runs.size(), 2u);
  EXPECT_EQ(loads[0].runs[0].bricks, 9) << "8 and 5 % waste";
  EXPECT_EQ(loads[0].runs[0].brickPacks, 1) << "over a half";
  EXPECT_EQ(loads[0].bricks, 18);
  EXPECT_EQ(loads[0].brickPacks, 2);
  EXPECT_EQ(loads[1].bricks, 9);
  EXPECT_EQ(loads[1].brickPacks, 0) << "12 are left of the lift before";
}

}  // namespace
}  // namespace model
