// The takeoff over the demo jobs and many drawn ones, against sums taken another way.
#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "model/takeoff/laid_count.h"
#include "tests/support/many_jobs.h"

namespace model {
namespace {

using test_support::forManyJobs;

double amountOf(const Takeoff& takeoff, const std::string& item) {
  for (const TakeoffRow& row : takeoff.rows) {
    if (row.item == item) return row.amount;
  }
  return 0;
}

double volumeOf(const Works& works, ElementKind kind) {
  double sum = 0;
  for (const Element& e : works.elements) sum += e.kind == kind ? volume(e.solid) : 0;
  return sum;
}

TEST(TakeoffOfJobs, StagesAddUpToTheWhole) {
  forManyJobs([](const Model& m) {
    std::map<std::string, double> sums;
    for (const TakeoffRow& row : m.takeoff.byStage) sums[row.item] += row.amount;
    for (const TakeoffRow& row : m.takeoff.rows) {
      EXPECT_NEAR(sums[row.item], row.amount, 1e-6) << row.item;
    }
  });
}

TEST(TakeoffOfJobs, EveryRowIsAnAmountOfSomethingThatCanBeOrdered) {
  forManyJobs([](const Model& m) {
    for (const TakeoffRow& row : m.takeoff.rows) {
      EXPECT_TRUE(std::isfinite(row.amount)) << row.item;
      EXPECT_GT(row.amount, 0) << row.item;
      EXPECT_GE(row.order, row.amount * (1 + row.waste) - 1e-6) << row.item;
      EXPECT_NE(row.basis, "") << row.item;
    }
  });
}

TEST(TakeoffOfJobs, WindowsAndDoorsAreThoseOfTheDrawing) {
  forManyJobs([](const Model& m) {
    double counted = 0, drawn = 0;
    for (const TakeoffRow& row : m.takeoff.rows) {
      for (const char* what : {"Window ", "Door ", "Garage door "}) {
        if (row.item.rfind(what, 0) == 0 && row.unit == "no.") counted += row.amount;
      }
    }
    for (const Opening& opening : m.job.openings) drawn += opening.kind != OpeningKind::Opening;
    EXPECT_EQ(counted, drawn);
  });
}

// Independent of the leaves' solids: the plan's mean perimeter times the height, openings out.
TEST(TakeoffOfJobs, BlocksOfTheGarageAreItsWallsLessItsOpenings) {
  const Job job = test_support::demoJob("garage");
  const Model m = buildModel(job);
  const double inward = job.walls.outerLeaf + job.walls.cavity + job.walls.innerLeaf / 2;
  const double long_ = 6.065 - 2 * inward, short_ = 3.590 - 2 * inward;
  const double bottom = m.settingOut.foundations.front().top;
  double area = 2 * (long_ + short_) * (m.settingOut.levels.wallTop - bottom);
  for (const BuiltOpening& o : m.settingOut.openings) area -= (o.s1 - o.s0) * (o.head - o.sill);
  // Gable triangles stand over it; lintels and the damp course come out of it: a few per cent.
  const double rise = (short_ / 2) * std::tan(job.roof.pitch * std::acos(-1.0) / 180);
  area += 2 * (short_ * rise / 2);
  EXPECT_NEAR(amountOf(m.takeoff, "Blockwork, 100 wide"), area, 0.06 * area);
}

TEST(TakeoffOfJobs, ConcreteIsWhatIsDrawn) {
  forManyJobs([](const Model& m) {
    double counted = 0, drawn = 0;
    for (const TakeoffRow& row : m.takeoff.rows) {
      const bool concrete = row.item.rfind("Concrete, ", 0) == 0 || row.item.rfind("Lean ", 0) == 0;
      if (concrete) counted += row.amount;
    }
    for (ElementKind kind :
         {ElementKind::Blinding, ElementKind::Foundation, ElementKind::CellarSlab,
          ElementKind::Core, ElementKind::CavityFill, ElementKind::GroundSlab}) {
      drawn += volumeOf(m.works, kind);
    }
    // Cast, or what fills the cores of its blocks.
    LaidCount blocks;
    for (const Element& e : m.works.elements) {
      if (e.kind != ElementKind::CellarWall) continue;
      if (e.unitCount > 0)
        blocks.add(m.works, e);
      else
        drawn += volume(e.solid);
    }
    if (m.job.cellar && m.job.cellar->kind == CellarWallKind::HollowBlock)
      drawn += blocks.units * m.job.cellar->cores;
    EXPECT_NEAR(counted, drawn, 1e-6);
  });
}

// The slope's area by the slope factor: the plan of the eaves over the cosine of the pitch.
TEST(TakeoffOfJobs, TrenchesAreTheirPlanTimesTheirDepthUnderWhatIsStripped) {
  const Job job = test_support::demoJob("smallest");
  const Model m = buildModel(job);
  const double plan = 2 * (6.740 + 4.490 - 2 * job.walls.total()) * job.foundations.width;
  const double depth = -0.150 - job.ground.topsoil - m.settingOut.levels.foundationFormation;
  double trenches = 0, inside = 0;
  for (const TakeoffRow& row : m.takeoff.rows) {
    if (row.item == "Dig, foundation trenches") trenches = row.amount;
    if (row.item == "Dig, reduced level inside") inside = row.amount;
  }
  // The reduced level takes off the trenches' inner part what lies above the oversite formation.
  EXPECT_GT(inside, 0);
  const double area = (6.740 - 2 * job.walls.total()) * (4.490 - 2 * job.walls.total());
  const double reduced = -0.150 - job.ground.topsoil - m.settingOut.levels.oversite;
  EXPECT_NEAR(inside, area * reduced, 1e-6);
  const double innerEdge = (job.foundations.width - job.walls.total()) / 2;
  const double innerBand = area - (6.740 - 2 * (job.walls.total() + innerEdge)) *
                                      (4.490 - 2 * (job.walls.total() + innerEdge));
  EXPECT_NEAR(trenches, plan * depth - innerBand * reduced, 1e-6);
}

TEST(TakeoffOfJobs, RoofCoveringIsThePlanOverTheCosineOfThePitch) {
  forManyJobs([](const Model& m) {
    if (m.settingOut.roof.faces.empty()) return;
    const double plan = std::abs(signedArea(m.settingOut.eavesOutline));
    const double slope = plan / std::cos(m.job.roof.pitch * std::acos(-1.0) / 180);
    EXPECT_NEAR(amountOf(m.takeoff, "Roof covering"), slope, 1e-4 * slope);
  });
}

}  // namespace
}  // namespace model
