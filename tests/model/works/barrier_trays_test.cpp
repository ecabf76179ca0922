// Cavity trays over level cavity barriers.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <glm/geometric.hpp>

#include "model/job/read_job.h"
#include "model/takeoff/sheets.h"
#include "model/works/cavity_parts.h"
#include "tests/support/random_job.h"
#include "tests/support/wall_works.h"

namespace model {
namespace {

Job houseWith(const std::vector<CavityBarrier>& barriers) {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  job.walls.insulation = 0.050;
  job.cavityBarriers = barriers;
  EXPECT_FALSE(hasErrors(validateJob(job, "", {})));
  return job;
}

CavityBarrier levelOne(const std::string& wall, double level) {
  return {wall, "", std::nullopt, level, 0.075};
}

std::vector<const Element*> traysIn(const Works& works, const std::string& wall) {
  std::vector<const Element*> trays;
  for (const Element& e : works.elements)
    if (e.kind == ElementKind::CavityTray && e.wall == wall) trays.push_back(&e);
  return trays;
}

TEST(BarrierTrays, RiseFromTheFirstBrickBedOverTheBarrierToABlockBed) {
  const Job job = houseWith({levelOne("A-B", 1.210)});
  const SettingOut out = deriveSettingOut(job);
  const Works works = test_support::wallsOf(job, out);
  const auto trays = traysIn(works, "A-B");
  ASSERT_EQ(trays.size(), 1u);
  EXPECT_EQ(trays[0]->name, "Cavity tray over the level barrier, wall A-B, with stop ends");
  EXPECT_NEAR(trays[0]->underside, 1.350, 1e-9);             // bed 18; the barrier ends at 1.285
  EXPECT_NEAR(trays[0]->top, 1.575 + kTrayThickness, 1e-9);  // the first of blocks 140 over it
  // From corner to corner of the cavity's inner face, less what its stop ends stand off.
  EXPECT_NEAR(trays[0]->quantity.amount, 6.74 - 2 * 0.2025 - 2 * 0.020, 1e-9);
  EXPECT_EQ(pieceSizes(trays[0]->solid, {1, 0, 0}).size(), 3u);
}

TEST(BarrierTrays, AreMitredWhereTheBarrierGoesOnRoundTheCorner) {
  const Job job = houseWith({levelOne("A-B", 1.2), levelOne("B-C", 1.2), levelOne("C-D", 1.35)});
  const SettingOut out = deriveSettingOut(job);
  const Works works = test_support::wallsOf(job, out);
  const auto first = traysIn(works, "A-B"), second = traysIn(works, "B-C"),
             third = traysIn(works, "C-D");
  ASSERT_EQ(first.size() + second.size() + third.size(), 3u);
  EXPECT_TRUE(first[0]->name.ends_with("with a stop end, mitred at corner B")) << first[0]->name;
  EXPECT_TRUE(second[0]->name.ends_with("with a stop end, mitred at corner B"));
  EXPECT_TRUE(third[0]->name.ends_with("with stop ends")) << "another level";
  EXPECT_EQ(pieceSizes(first[0]->solid, {1, 0, 0}).size(), 2u);
  EXPECT_EQ(pieceSizes(third[0]->solid, {1, 0, 0}).size(), 3u);
  // The cut at the corner is the same in both: its points are on the line between the corners of
  // the cavity's faces.
  const auto onMitre = [](const Element& e) {
    std::vector<Vec3> points;
    for (const Vec3& p : e.solid.points)
      if (std::fabs((6.74 - p.x) - p.y) < 1e-9 && p.y < 0.3) points.push_back(p);
    std::sort(points.begin(), points.end(), [](const Vec3& a, const Vec3& b) {
      return std::pair(a.x, a.z) < std::pair(b.x, b.z);
    });
    return points;
  };
  const auto a = onMitre(*first[0]), b = onMitre(*second[0]);
  ASSERT_EQ(a.size(), 4u);
  ASSERT_EQ(b.size(), 4u);
  for (size_t i = 0; i < 4; ++i) EXPECT_LT(glm::length(a[i] - b[i]), 1e-9);
}

TEST(BarrierTrays, EndAtOpeningsAndAtWhatIsBuiltInRoundThem) {
  Job job = houseWith({levelOne("A-B", 1.5)});
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 2;
  job.openings = {window};
  const SettingOut out = deriveSettingOut(job);
  const CavityPlan plan = cavityPlan(job, out, 0);
  std::vector<TrayPlan> trays;
  for (const TrayPlan& tray : plan.trays)
    if (tray.over == TrayPlan::Over::Barrier) trays.push_back(tray);
  ASSERT_EQ(trays.size(), 2u);
  EXPECT_NEAR(trays[0].to, 2 - 0.075, 1e-9);
  EXPECT_NEAR(trays[1].from, 2.91 + 0.075, 1e-9);
  EXPECT_EQ(namesOf(out, plan, trays[1]).over, "the level barrier, wall A-B, 2 of 2");
  // Each stretch drains by itself.
  const Works works = test_support::wallsOf(job, out);
  size_t vents = 0;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::WeepVent || e.name.find("level barrier") == std::string::npos)
      continue;
    EXPECT_GE(e.quantity.amount, 2);
    EXPECT_NEAR(e.underside, trays[0].low + 0.010, 1e-9);  // over the bed
    ++vents;
  }
  EXPECT_EQ(vents, 2u);
}

TEST(BarrierTrays, LetAnUprightBarrierGoOnOverAndUnderThem) {
  Job job = houseWith({levelOne("A-B", 1.2)});
  const CavityBarrier upright{"A-B", "A", 3.0, std::nullopt, 0.100};
  const auto volumeOf = [&](const Job& j) {
    double sum = 0;
    for (const Element& e : test_support::wallsOf(j, deriveSettingOut(j)).elements)
      if (e.kind == ElementKind::CavityBarrier && e.name.find("upright") != std::string::npos)
        sum += volume(e.solid);
    return sum;
  };
  job.cavityBarriers.push_back(upright);
  Job alone = job;
  alone.cavityBarriers = {upright};
  // But for the sheet all of the slit is filled; the level barrier is cut round it.
  EXPECT_NEAR(volumeOf(alone) - volumeOf(job), 0.100 * 0.100 * kTrayThickness, 1e-9);
}

// The sheet and the tie at many places across the cavity.
TEST(BarrierTrays, AreCrossedByNoTieAndLeaveAsManyTies) {
  size_t looked = 0;
  for (unsigned seed = 0; seed < 80; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    for (size_t wall = 0; wall < out.walls.size(); ++wall) {
      const CavityPlan plan = cavityPlan(job, out, wall);
      for (const TrayPlan& tray : plan.trays) {
        if (tray.over != TrayPlan::Over::Barrier) continue;
        EXPECT_LE(tray.low - plan.barriers[tray.barrier].rect.z1, job.walls.course());
        EXPECT_GE(tray.low, plan.barriers[tray.barrier].rect.z1 - 2e-4);
        EXPECT_LE(tray.rect().z1, plan.topBetween(tray.from, tray.to) + 1e-9);
        for (const TiePlan& tie : plan.ties) {
          if (tie.s < tray.from || tie.s > tray.to) continue;
          for (double d = plan.layer.outer; d < plan.layer.inner; d += 0.005) {
            const double across = (d - plan.layer.outer) / plan.layer.thickness();
            const double z = tie.outer + (tie.inner - tie.outer) * across;
            const double sheet = tray.low + (tray.high - tray.low) * across;
            EXPECT_TRUE(z + kTieThickness / 2 < sheet ||
                        z - kTieThickness / 2 > sheet + kTrayThickness)
                << seed << " " << out.walls[wall].name << " " << tie.s << " " << z;
            ++looked;
          }
        }
      }
    }
  }
  EXPECT_GT(looked, 1000u);
  for (const double level : {0.3, 0.7, 0.95, 1.2, 1.44, 1.6}) {
    const Job without = houseWith({}), with = houseWith({levelOne("A-B", level)});
    const SettingOut out = deriveSettingOut(with);
    EXPECT_GE(cavityPlan(with, out, 0).ties.size(), cavityPlan(without, out, 0).ties.size())
        << level;
  }
}

TEST(BarrierTrays, OfAGableEndUnderItsSlope) {
  Job job = houseWith({});
  job.roof.edges.push_back({"B-C", EavesKind::Gable});
  const double top = cavityPlan(job, deriveSettingOut(job), 1).levelTop;
  job.cavityBarriers = {levelOne("B-C", std::floor(top * 1000) / 1000 - 0.075)};
  const SettingOut out = deriveSettingOut(job);
  const CavityPlan plan = cavityPlan(job, out, 1);
  ASSERT_EQ(plan.trays.size(), 1u);
  const TrayPlan& tray = plan.trays[0];
  EXPECT_GT(tray.from, plan.layer.from + 0.05);
  EXPECT_GE(plan.topBetween(tray.from, tray.to), tray.rect().z1 + 0.020 - 1e-6);
  EXPECT_LE(plan.topBetween(tray.from, tray.to), tray.rect().z1 + 0.100);
  EXPECT_GT(tray.to - tray.from, 2);
}

}  // namespace
}  // namespace model
