// Cellar walls in blocks, told in the bond's tables and on the gauge rods.
#include "model/exchange/cellar_bond_table.h"

#include <gtest/gtest.h>

#include "model/exchange/rod_table.h"
#include "model/model.h"

namespace model {
namespace {

Model built(CellarWallKind kind) {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  job.cellar = Cellar{};
  job.cellar->kind = kind;
  job.cellar->wall = 0.390;
  return buildModel(job);
}

// 8,000 is 17 blocks of 450 and 350: with a butt joint of 10 against a leaf of 100 there are 240
// left over; the course between begins 110 in and ends at the face.
TEST(CellarBondTable, HasTheCoursesOfEachLeafThatAreLaidAlike) {
  const auto part = cellarBondPart(built(CellarWallKind::FilledCavity));
  ASSERT_TRUE(part);
  ASSERT_EQ(part->table.rows.size(), 4u * 2 * 3);  // walls, leaves; two courses in turn and the top
  const std::vector<std::string>& first = part->table.rows.front();
  EXPECT_EQ(first[0], "K1-K2");
  EXPECT_EQ(first[1], "outer leaf");
  EXPECT_EQ(first[2], "1, 3, 5, 7, 9");
  EXPECT_EQ(first[3], "17");
  EXPECT_EQ(first[4], "240");
}

TEST(CellarBondTable, IsLeftOutWhereWallsAreCast) {
  const Model cast = built(CellarWallKind::Concrete);
  EXPECT_FALSE(cellarBondPart(cast));
  EXPECT_FALSE(cellarGaugeWords(cast));
  Table rods;
  addCellarGauge(cast, rods);
  EXPECT_TRUE(rods.rows.empty());
}

// From the slab at -2.725 to -0.325 are 2,400: ten courses of 225 and 150, a bed and 140 of block.
TEST(CellarGauge, CountsCoursesFromTheSlabAndNamesTheCutOne) {
  for (const CellarWallKind kind : {CellarWallKind::FilledCavity, CellarWallKind::HollowBlock}) {
    const Model m = built(kind);
    EXPECT_EQ(*cellarGaugeWords(m),
              "Cellar walls: 11 courses of blocks from the slab at -2.725 to their top at -0.325, "
              "top blocks cut to 140");
    Table rods = rodsTable(m, {});
    addCellarGauge(m, rods);
    ASSERT_EQ(rods.rows.size(), 12u);
    for (const auto& row : rods.rows) EXPECT_EQ(row.size(), rods.columns.size());
    EXPECT_EQ(rods.rows.front()[1], "-0.325");
    EXPECT_EQ(rods.rows.front()[6], "top blocks cut to 140");
    EXPECT_EQ(rods.rows[1][1], "-0.475");
    EXPECT_EQ(rods.rows[10][3], "1");
    EXPECT_EQ(rods.rows.back()[4], "top of cellar slab");
  }
}

}  // namespace
}  // namespace model
