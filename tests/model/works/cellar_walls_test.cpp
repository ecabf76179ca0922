// Cellar walls in blocks: two leaves with concrete between them, or one leaf of hollow blocks.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "model/model.h"
#include "model/takeoff/laid_count.h"
#include "model/works/cellar_leaves.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;

// 8 x 6 m with a cellar under all of it: 2,525 from its slab to its floor, which is 11 courses of
// blocks of 225 and 50 over.
Job cellarJob(CellarWallKind kind) {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  job.cellar = Cellar{};
  job.cellar->kind = kind;
  job.cellar->leaf = 0.140;
  if (kind == CellarWallKind::HollowBlock) job.cellar->wall = 0.390;
  return job;
}

Job filledCavity() { return cellarJob(CellarWallKind::FilledCavity); }
Job hollowBlock() { return cellarJob(CellarWallKind::HollowBlock); }

bool isBlockwork(const Element& e) {
  return e.kind == ElementKind::CellarWall && e.material == Material::Block;
}

double volumeOf(const Works& works, ElementKind kind) {
  double sum = 0;
  for (const Element& e : works.elements)
    if (e.kind == kind) sum += volume(e.solid);
  return sum;
}

const TakeoffRow* rowOf(const Model& m, const std::string& item) {
  for (const TakeoffRow& row : m.takeoff.rows)
    if (row.item == item) return &row;
  return nullptr;
}

const Stage* stageOf(const Model& m, StageKind kind) {
  const auto index = m.programme.indexOf({kind});
  return index ? &m.programme.stages[*index] : nullptr;
}

// By hand: rings between rectangles, times the height.
TEST(CellarWalls, OfAFilledCavityAreTwoLeavesAndTheConcreteBetweenThem) {
  const Model m = buildModel(filledCavity());
  const double height = m.settingOut.levels.cellarWallTop - m.settingOut.levels.cellarSlabTop;
  const auto ringArea = [](double from, double to) {
    return (8 - 2 * from) * (6 - 2 * from) - (8 - 2 * to) * (6 - 2 * to);
  };
  const double leaves = ringArea(0, 0.14) + ringArea(0.31, 0.45), core = ringArea(0.14, 0.31);
  EXPECT_NEAR(volumeOf(m.works, ElementKind::CellarWall), leaves * height, 1e-6);
  EXPECT_NEAR(volumeOf(m.works, ElementKind::Core), core * height, 1e-6);
}

TEST(CellarWalls, InConcreteAreCastAsBefore) {
  const Model m = buildModel(cellarJob(CellarWallKind::Concrete));
  for (const Element& e : m.works.elements) {
    EXPECT_FALSE(isBlockwork(e)) << e.id;
    EXPECT_NE(e.kind, ElementKind::Core) << e.id;
  }
  EXPECT_NE(rowOf(m, "Concrete, cellar walls"), nullptr);
}

TEST(CellarWalls, InBlocksNeedNoForms) {
  for (const Job& job : {filledCavity(), hollowBlock()})
    for (const Element& e : buildModel(job).works.elements)
      EXPECT_NE(e.kind, ElementKind::Formwork) << e.id;
}

// 10.5 courses at the least: what is left over is one course that is cut, at the top.
TEST(CellarWalls, StandInWholeCoursesFromTheSlabWithOneCutAtTheTop) {
  for (const Job& job : {filledCavity(), hollowBlock()}) {
    const Model m = buildModel(job);
    const CellarLeaves cellar = cellarLeaves(job, m.settingOut);
    const double course = job.walls.blockHeight + job.walls.joint;
    for (size_t leaf = 0; leaf < cellar.leaves.size(); ++leaf) {
      const LaidLeaf laid = cellar.laid(job.walls, 0, leaf);
      ASSERT_EQ(laid.bands.size(), std::ceil(cellar.height() / course - 1e-3));
      EXPECT_EQ(laid.bands.front().bottom, cellar.foot);
      EXPECT_EQ(laid.bands.back().top, cellar.top);
      for (size_t i = 0; i + 1 < laid.bands.size(); ++i)
        EXPECT_NEAR(laid.bands[i].top - laid.bands[i].bottom, course, 1e-9);
    }
  }
}

TEST(CellarWalls, ThatDoNotComeOutInWholeCoursesSaySo) {
  Job job = filledCavity();
  const Model odd = buildModel(job);
  const double height = odd.settingOut.levels.cellarWallTop - odd.settingOut.levels.cellarSlabTop;
  const double course = job.walls.blockHeight + job.walls.joint;
  EXPECT_NE(stageOf(odd, StageKind::CellarForms)->what.find("top blocks cut to"), std::string::npos)
      << stageOf(odd, StageKind::CellarForms)->what;
  job.cellar->floor += height - course * std::floor(height / course);
  const Model whole = buildModel(job);
  EXPECT_EQ(stageOf(whole, StageKind::CellarForms)->what.find("cut to"), std::string::npos);
  for (const Element& e : whole.works.elements) {
    if (!isBlockwork(e)) continue;
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i)
      EXPECT_NE(whole.works.units[i].piece, Piece::Split);
  }
}

// Round a square corner each wall runs through to the far face in one course and butts in the
// next: the ends of its courses are a leaf and a joint apart.
TEST(CellarWalls, TurnTheirCornersCourseByCourse) {
  const Job job = filledCavity();
  const Model m = buildModel(job);
  const CellarLeaves cellar = cellarLeaves(job, m.settingOut);
  for (size_t leaf = 0; leaf < 2; ++leaf) {
    for (size_t wall = 0; wall < 4; ++wall) {
      const LaidLeaf laid = cellar.laid(job.walls, wall, leaf);
      const double outer = cellar.leaves[leaf].outer, length = cellar.ring.walls[wall].length;
      for (size_t band = 0; band + 1 < laid.bands.size(); ++band) {
        const MasonryUnit& first = laid.units[laid.firstOf[band]];
        const MasonryUnit& last = laid.units[laid.firstOf[band + 1] - 1];
        const double deep = job.cellar->leaf + job.walls.joint;
        EXPECT_NEAR(first.s0, outer + (band % 2 == 0 ? 0 : deep), 1e-9);
        EXPECT_NEAR(last.s1, length - outer - (band % 2 == 0 ? deep : 0), 1e-9);
      }
    }
  }
}

TEST(CellarWalls, AreFilledOnceTheLeavesAreUpAndHard) {
  const Model m = buildModel(filledCavity());
  const Stage* leaves = stageOf(m, StageKind::CellarForms);
  const Stage* fill = stageOf(m, StageKind::CellarWalls);
  ASSERT_TRUE(leaves && fill);
  EXPECT_GE(leaves->waitDays, 3);
  ASSERT_EQ(fill->after.size(), 1u);
  EXPECT_EQ(m.programme.stages[fill->after.front()].id, leaves->id);
  EXPECT_NE(leaves->holdPoint.find("steel"), std::string::npos);
  EXPECT_NE(fill->caution.find("designer says how high a lift"), std::string::npos);
  std::set<double> tops;
  double underside = 1e9;
  for (const Element& e : m.works.elements) {
    if (e.kind == ElementKind::Core) {
      EXPECT_EQ(e.placed.stage.kind, StageKind::CellarWalls);
      EXPECT_LE(e.top - e.underside, m.job.laying.dayRise + 1e-9);
      tops.insert(e.top);
      underside = std::min(underside, e.underside);
    } else if (isBlockwork(e)) {
      EXPECT_EQ(e.placed.stage.kind, StageKind::CellarForms);
    }
  }
  EXPECT_EQ(underside, m.settingOut.levels.cellarSlabTop);
  EXPECT_EQ(*tops.rbegin(), m.settingOut.levels.cellarWallTop);
  EXPECT_GE(fill->days, static_cast<double>(tops.size()));  // one lift a day at most
}

TEST(CellarWalls, RiseNoMoreThanTheDaysLimitWithCornersFirst) {
  for (const Job& job : {filledCavity(), hollowBlock()}) {
    const Model m = buildModel(job);
    std::map<std::string, double> cornersUp, runBegins;
    for (const Element& e : m.works.elements) {
      if (!isBlockwork(e)) continue;
      EXPECT_LE(e.top - e.underside, job.laying.dayRise + 1e-9) << e.id;
      const std::string of = e.id.substr(0, e.id.rfind('/'));
      if (e.id.find("/corner K") != std::string::npos)
        cornersUp[of] = std::max(cornersUp[of], e.placed.end);
      else
        runBegins[of] = e.placed.begin;
    }
    EXPECT_GE(runBegins.size(), 8u);
    for (const auto& [of, begin] : runBegins) EXPECT_LE(cornersUp.at(of), begin + 1e-9) << of;
  }
}

// What the leaf takes is what its blocks, their joints and what fills them take.
TEST(CellarWalls, OfHollowBlocksAreCountedAsBlocksMortarAndFill) {
  const Job job = hollowBlock();
  const Model m = buildModel(job);
  LaidCount laid;
  for (const Element& e : m.works.elements)
    if (isBlockwork(e)) laid.add(m.works, e);
  const TakeoffRow* fill = rowOf(m, "Concrete, cores of cellar wall blocks");
  const TakeoffRow* blocks = rowOf(m, "Hollow blocks, 390 wide, cellar walls");
  ASSERT_TRUE(fill && blocks);
  EXPECT_NEAR(fill->amount, laid.units * job.cellar->cores, 1e-9);
  EXPECT_EQ(blocks->amount, neededFor(laid, 0.440, 0.215).wholes);
  // 440 x 215 of 450 x 225 is block (check M05); cut ones have more joints.
  EXPECT_NEAR(laid.units / laid.leaf, 0.440 * 0.215 / (0.450 * 0.225), 0.03);
  EXPECT_NE(stageOf(m, StageKind::CellarWalls)->holdPoint.find("steel"), std::string::npos);
  EXPECT_EQ(stageOf(m, StageKind::CellarForms), nullptr);
}

TEST(CellarWalls, OfAFilledCavityAreTakenOffByStage) {
  const Model m = buildModel(filledCavity());
  const TakeoffRow* core = rowOf(m, "Concrete, cellar walls, between their leaves");
  const TakeoffRow* face = rowOf(m, "Blockwork, cellar walls, 140 wide");
  ASSERT_TRUE(core && face);
  EXPECT_NEAR(core->amount, volumeOf(m.works, ElementKind::Core), 1e-9);
  EXPECT_NEAR(face->amount, volumeOf(m.works, ElementKind::CellarWall) / 0.140, 1e-6);
  EXPECT_NE(rowOf(m, "Blocks, 140 wide, cellar walls"), nullptr);
  EXPECT_EQ(rowOf(m, "Concrete, cellar walls"), nullptr);
}

// Whatever the plan: leaves and core together are the ring that a cast wall would be.
RC_GTEST_PROP(CellarWalls, FillTheRingOfACastWall, ()) {
  Job job = *test_support::randomJob();
  RC_PRE(job.cellar.has_value());
  const Works works = buildWorks(job, deriveSettingOut(job));
  job.cellar->kind = CellarWallKind::Concrete;
  const Works cast = buildWorks(job, deriveSettingOut(job));
  const double laid = volumeOf(works, ElementKind::CellarWall) + volumeOf(works, ElementKind::Core);
  RC_ASSERT(std::abs(laid - volumeOf(cast, ElementKind::CellarWall)) < 1e-4);
}

}  // namespace
