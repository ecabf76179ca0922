// Ties, boards and trays: where they lie, over the demo jobs and drawn ones.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "model/takeoff/sheets.h"
#include "model/works/cavity_parts.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "tests/support/wall_works.h"

namespace model {
namespace {

constexpr double kHair = 1e-6;

// Calls `check` with the plan of every wall of many jobs.
template <typename Check>
void forManyWalls(const Check& check) {
  std::vector<std::pair<std::string, Job>> jobs;
  for (const std::string& name : test_support::demoNames())
    jobs.emplace_back(name, test_support::demoJob(name));
  for (unsigned seed = 0; seed < 40; ++seed)
    jobs.emplace_back("seed " + std::to_string(seed), test_support::seededJob(seed));
  for (const auto& [name, job] : jobs) {
    SCOPED_TRACE(name);
    const SettingOut out = deriveSettingOut(job);
    for (size_t wall = 0; wall < out.walls.size(); ++wall) {
      SCOPED_TRACE(out.walls[wall].name);
      check(job, out, cavityPlan(job, out, wall));
    }
  }
}

std::map<double, std::vector<double>> rowsOf(const CavityPlan& plan) {
  std::map<double, std::vector<double>> rows;
  for (const TiePlan& tie : plan.ties) rows[tie.inner].push_back(tie.s);
  return rows;
}

// Within the joint of a course counted from the damp course, not by the plan's own list of beds.
TEST(WallTies, LieInsideABedOfTheOuterLeafAndFallOutwards) {
  size_t looked = 0;
  forManyWalls([&](const Job& job, const SettingOut& out, const CavityPlan& plan) {
    const double course = job.walls.course(), damp = out.levels.dampCourse;
    for (const TiePlan& tie : plan.ties) {
      const double from = tie.outer > damp ? damp : damp - 0.002;
      const double over = tie.outer - from - course * std::floor((tie.outer - from) / course);
      EXPECT_GT(over - kTieThickness / 2, -kHair) << tie.s;
      EXPECT_LT(over + kTieThickness / 2, job.walls.joint + kHair) << tie.s;
      EXPECT_LE(tie.outer, tie.inner);
      EXPECT_GT(std::fabs(tie.inner - damp), job.walls.joint) << "in the damp course";
      ++looked;
    }
  });
  EXPECT_GT(looked, 20000u);
}

// A level barrier or the tray over one.
bool barrierBetween(const CavityPlan& plan, double low, double high) {
  const auto between = [&](const Rect& r) { return r.z1 > low && r.z0 < high; };
  return std::any_of(plan.barriers.begin(), plan.barriers.end(),
                     [&](const BarrierPlan& b) { return !b.upright && between(b.rect); }) ||
         std::any_of(plan.trays.begin(), plan.trays.end(), [&](const TrayPlan& t) {
           return t.over == TrayPlan::Over::Barrier && between(t.rect());
         });
}

// Check M12: Approved Document A, notes to the table of ties: at most 300 up, within 225.
TEST(WallTies, StandBesideEveryJambAtMost300UpAndWithin225) {
  size_t looked = 0;
  forManyWalls([&](const Job& job, const SettingOut& out, const CavityPlan& plan) {
    for (const BuiltOpening& o : out.openings) {
      if (o.wall != plan.wall) continue;
      for (const bool left : {true, false}) {
        const double jamb = left ? o.s0 : o.s1, way = left ? -1 : 1;
        // Piers too narrow for a tie beside two closers are looked at by eye.
        if (jamb + way * 0.300 < plan.layer.from || jamb + way * 0.300 > plan.layer.to) continue;
        const bool pier =
            std::none_of(out.openings.begin(), out.openings.end(), [&](const auto& p) {
              return p.wall == o.wall && &p != &o && p.s0 < jamb + 0.6 && p.s1 > jamb - 0.6 &&
                     p.head > o.sill && p.sill < o.head + 0.5;
            });
        if (!pier || !plan.slope.empty()) continue;
        double last = o.sill;
        const double until = std::min({o.head, plan.levelTop, plan.outer.levelTop}) - 0.3;
        for (const auto& [level, places] : rowsOf(plan)) {
          if (level < o.sill || level > o.head) continue;
          const bool beside = std::any_of(places.begin(), places.end(), [&](double s) {
            return way * (s - jamb) > 0 && way * (s - jamb) < job.walls.builtIn.tieWithin + kHair;
          });
          if (!beside) continue;
          // No tie lies in a level barrier or goes through the tray over it.
          if (!barrierBetween(plan, last, level)) {
            EXPECT_LE(level - last, 0.300 + job.walls.joint) << o.name << " at " << level;
          }
          last = level;
          ++looked;
        }
        if (!barrierBetween(plan, last, until + 0.3)) {
          EXPECT_GT(last, until) << o.name;
        }
      }
    }
  });
  EXPECT_GT(looked, 500u);
}

TEST(WallTies, OfABlankWallAreStaggeredAndAtTheirSpacing) {
  Job job;
  job.outline = {{0, 0}, {9.89, 0}, {9.89, 5.39}, {0, 5.39}};
  const SettingOut out = deriveSettingOut(job);
  const CavityPlan plan = cavityPlan(job, out, 0);
  const auto rows = rowsOf(plan);
  double last = -1e9;
  std::vector<double> before;
  for (const auto& [level, places] : rows) {
    if (last > -1e8) {
      EXPECT_LE(level - last, 0.450 + 0.003) << level;
    }
    for (size_t i = 1; i < places.size(); ++i)
      EXPECT_NEAR(places[i] - places[i - 1], 0.900, 1e-9) << level;
    if (!before.empty()) {
      EXPECT_NEAR(std::fabs(places[0] - before[0]), 0.450, 1e-9) << level;
    }
    last = level;
    before = places;
  }
  EXPECT_GE(rows.size(), 6u);
}

TEST(InsulationBoards, AreNoLargerThanABoardAndTightToEachOther) {
  Job job;
  job.outline = {{0, 0}, {9.89, 0}, {9.89, 5.39}, {0, 5.39}};
  job.walls.insulation = 0.050;
  const SettingOut out = deriveSettingOut(job);
  const Works works = test_support::wallsOf(job, out);
  double boards = 0, area = 0;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::CavityInsulation || e.wall != "A-B") continue;
    for (const PieceSize& piece : pieceSizes(e.solid, {1, 0, 0})) {
      EXPECT_LE(piece.length, 1.200 + 0.050 + kHair);  // mitred at a corner
      EXPECT_LE(piece.height, 0.450 + 0.012);
      ++boards;
    }
    area += volume(e.solid) / 0.050;
  }
  // From 225 under the damp course to the top, between the corners' mitres; ties take 20 x 6 each.
  const double length = 9.89 - 2 * (0.1025 + 0.050) - 0.050;
  const CavityPlan plan = cavityPlan(job, out, 0);
  const double height =
      std::min(out.levels.wallTop, out.levels.eavesUnderside + 0.1525 * out.tanPitch) + 0.225;
  EXPECT_LT(area, length * height + kHair);
  EXPECT_GT(area, length * height - static_cast<double>(plan.ties.size()) * 0.020 * 0.009);
  EXPECT_GE(boards, 9 * 5);
}

TEST(InsulationBoards, AreOrderedInWholeSheets) {
  EXPECT_EQ(sheetsFor({{1.2, 0.45}, {1.2, 0.45}}, 1.2, 0.45), 2);
  EXPECT_EQ(sheetsFor({{0.7, 0.45}, {0.5, 0.45}, {0.6, 0.45}}, 1.2, 0.45), 2);
  EXPECT_EQ(sheetsFor({{1.0, 0.2}, {1.0, 0.2}, {0.2, 0.2}}, 1.2, 0.45), 1);
  EXPECT_EQ(sheetsFor({{2.0, 0.45}}, 1.2, 0.45), 2);
  EXPECT_EQ(sheetsFor({{1.2, 0.4512}}, 1.2, 0.45), 1);
}

TEST(CavityTrays, CoverEveryLintelOfTheOuterLeafThatHasRoomOverIt) {
  size_t trays = 0, lintels = 0;
  forManyWalls([&](const Job&, const SettingOut&, const CavityPlan& plan) {
    lintels += plan.outer.lintels.size();
    for (const TrayPlan& tray : plan.trays) {
      if (tray.over != TrayPlan::Over::Lintel) continue;
      const LintelPlan& lintel = plan.outer.lintels[tray.lintel];
      EXPECT_EQ(tray.low, lintel.rect.z1);
      EXPECT_GT(tray.high, tray.low);
      EXPECT_LE(tray.from, lintel.rect.s0 + 0.021);
      EXPECT_GE(tray.to, lintel.rect.s1 - 0.021);
      ++trays;
    }
  });
  EXPECT_GT(trays, lintels / 2);
}

Job windowJob() {
  Job job;
  job.outline = {{0, 0}, {8.99, 0}, {8.99, 5.39}, {0, 5.39}};
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 3.6;
  window.width = 2.26;
  job.openings = {window};
  return job;
}

TEST(WeepVents, StandInCrossJointsOfTheOuterLeafNoFartherApartThanTheJobSays) {
  Job job = windowJob();
  job.openings[0].head = 1.950;  // so that there is room for a tray under the rafters
  const SettingOut out = deriveSettingOut(job);
  const Works works = test_support::wallsOf(job, out);
  std::map<std::string, std::vector<double>> places;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::WeepVent || e.wall != "A-B") continue;
    for (const PieceSize& piece : pieceSizes(e.solid, {1, 0, 0})) {
      EXPECT_GT(piece.length, 0.007);
      EXPECT_LT(piece.length, 0.013);
      EXPECT_NEAR(piece.height, 0.065, 1e-6);
    }
    // Each between two bricks that are laid.
    std::set<double> starts;
    for (size_t i = 0; i < e.solid.points.size(); i += 8) {
      const Bounds b = [&] {
        Bounds all;
        for (size_t k = i; k < i + 8; ++k) all.add(e.solid.points[k]);
        return all;
      }();
      size_t beside = 0;
      for (const MasonryUnit& unit : works.units) {
        if (std::fabs(unit.z0 - b.low.z) > 1e-6 || unit.d0 != 0) continue;
        beside += std::fabs(unit.s1 - b.low.x) < 1e-6 || std::fabs(unit.s0 - b.high.x) < 1e-6;
      }
      EXPECT_GE(beside, 2u) << e.id;
      places[e.id].push_back(b.low.x);
    }
  }
  ASSERT_EQ(places.size(), 2u);  // over the window, and at the foot
  for (auto& [id, list] : places) {
    std::sort(list.begin(), list.end());
    EXPECT_GE(list.size(), 3u) << id;
    for (size_t i = 1; i < list.size(); ++i) EXPECT_LE(list[i] - list[i - 1], 0.900 + 1e-3) << id;
  }
}

TEST(Padstones, LieUnderBothEndsOfTheInnerLintelACourseOfBlocksHigh) {
  Job job = windowJob();
  job.openings[0].padstone = 0.440;
  job.openings[0].lintelBearing = 0.200;
  job.openings[0].sillHeight = 0.140;
  const SettingOut out = deriveSettingOut(job);
  Works works;
  buildPadstonesAndSills(job, out, works);
  buildLintels(job, out, works);
  const Element* left = test_support::find(works, "wall A-B/inner leaf/padstone left of Window");
  const Element* lintel = test_support::find(works, "wall A-B/inner leaf/lintel over Window");
  const Element* sill = test_support::find(works, "wall A-B/outer leaf/sill of Window");
  ASSERT_TRUE(left && lintel && sill);
  EXPECT_NEAR(left->top, 2.100, 1e-9);
  EXPECT_NEAR(left->underside, 1.875, 1e-9);
  EXPECT_NEAR(bounds(left->solid).low.x, 3.160, 1e-9);
  EXPECT_NEAR(bounds(left->solid).high.x, 3.600, 1e-9);
  EXPECT_NEAR(bounds(lintel->solid).low.x, 3.400, 1e-9);
  EXPECT_NEAR(sill->top, 1.050, 1e-9);
  EXPECT_NEAR(sill->underside, 0.910, 1e-9);
  EXPECT_NEAR(bounds(sill->solid).low.y, -0.040, 1e-9);
}

}  // namespace
}  // namespace model
