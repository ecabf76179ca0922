// Lines against the site, limits, pegs, and the site moved as a whole.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include <glm/trigonometric.hpp>

#include "model/settingout/offsets.h"
#include "tests/model/lines/lines_support.h"

namespace lines_test {
namespace {

TEST(WallRuns, TellDistancesAtBothEndsAndWhereTheyAreLeast) {
  // A boundary that closes in on B-C from 2.0 at B to 1.0 at C.
  Job job = rectangle(8, 6);
  job.site.boundary = {{-4, -6}, {10 + 1, -6}, {10 - 7.0 / 6, 7}, {-4, 7}};
  const Derived d(job);
  const SetOutLine& line = d.lines.lines[1];
  ASSERT_TRUE(line.boundary);
  EXPECT_EQ(line.boundary->to, "boundary 2");
  ASSERT_TRUE(line.boundary->squareAtStart && line.boundary->squareAtEnd);
  EXPECT_NEAR(*line.boundary->squareAtStart, 2, 1e-9);
  EXPECT_NEAR(*line.boundary->squareAtEnd, 1, 1e-9);
  EXPECT_NEAR(line.boundary->nearest.running, 6, 1e-9);
  EXPECT_NEAR(line.boundary->nearest.distance, 1, 1e-9);  // not further on, past C
  EXPECT_FALSE(line.building);
}

TEST(WallRuns, MeasureFromTheRender) {
  Job job = rectangle(8, 6);
  job.site.boundary = {{-3, -3}, {11, -3}, {11, 9}, {-3, 9}};
  job.walls.render = 0.020;
  const Derived d(job);
  for (const SetOutLine& line : d.lines.lines)
    EXPECT_NEAR(line.boundary->nearest.distance, 2.980, 1e-9);
}

// Nothing straight ahead of a wall is nearer than its nearest, and that is there.
TEST(WallRuns, TellTheNearestOfAllThatIsStraightAhead) {
  for (unsigned seed = 0; seed < 150; ++seed) {
    Job job = test_support::seededJob(seed);
    job.site.boundary = siteBoundary(job);
    const Derived d(job);
    const Polygon ring = d.out.ring(d.out.faceDistances.finishedFace);
    for (const SetOutLine& line : d.lines.lines) {
      ASSERT_TRUE(line.boundary) << seed;
      const WallLine& wall = d.out.walls[line.wall];
      const FaceDistance& nearest = line.boundary->nearest;
      ASSERT_LT(distanceToOutline(job.site.boundary, nearest.at), 1e-6) << seed;
      ASSERT_NEAR(glm::length(nearest.at - nearest.from), nearest.distance, 1e-9);
      for (int k = 0; k <= 20; ++k) {
        const Vec2 from = ring[wall.from] + (ring[wall.to] - ring[wall.from]) * (k / 20.0);
        double away = 0;  // by small steps until the site ends
        while (contains(job.site.boundary, from + wall.outward * away)) away += 0.01;
        ASSERT_GT(away, nearest.distance - 0.001) << seed << " " << wall.name;
      }
    }
  }
}

TEST(Parallels, OfASquarePlanAreParallelToNothingAtAll) {
  for (const char* name : {"orchard-house", "garage", "smallest"}) {
    const Derived d(test_support::demoJob(name));
    EXPECT_EQ(d.lines.parallels.size(), 2u);
    for (const ParallelGroup& group : d.lines.parallels) {
      EXPECT_TRUE(group.parallel);
      for (const ParallelLine& line : group.lines) EXPECT_NEAR(line.near - line.far, 0, 1e-12);
    }
  }
  const Derived house(test_support::demoJob("orchard-house"));
  const ParallelGroup& group = house.lines.parallels.front();
  ASSERT_EQ(group.lines.size(), 3u);
  EXPECT_NEAR(group.lines[1].near, 6.065, 1e-12);
  EXPECT_NEAR(group.lines[2].near, 9.665, 1e-12);
}

TEST(Parallels, AWallThatIsNearlyParallelIsFound) {
  Job job = rectangle(8, 6);
  job.outline[2].y += 0.030;
  const Derived d(job);
  const auto group = std::find_if(d.lines.parallels.begin(), d.lines.parallels.end(),
                                  [](const ParallelGroup& g) { return !g.parallel; });
  ASSERT_NE(group, d.lines.parallels.end());
  EXPECT_NEAR(std::abs(group->lines[1].near - group->lines[1].far), 0.030, 1e-4);
}

Limit limit(LimitKind kind, double value, std::string wall = {}) {
  Limit l;
  l.kind = kind;
  l.wall = std::move(wall);
  (kind == LimitKind::Ridge || kind == LimitKind::Eaves ? l.most : l.least) = value;
  return l;
}

TEST(Limits, AreClearAtTheLimitOrOver) {
  Job job = rectangle(8, 6);
  job.site.boundary = {{-3, -1}, {11, -1}, {11, 9}, {-3, 9}};
  const double ridge = deriveSettingOut(job).levels.ridge;
  job.limits = {limit(LimitKind::Boundary, 1.000, "A-B"), limit(LimitKind::Boundary, 1.040, "A-B"),
                limit(LimitKind::Boundary, 2.500, "B-C"), limit(LimitKind::Ridge, ridge - 0.0004),
                limit(LimitKind::Ridge, ridge + 0.5)};
  const Derived d(job);
  const auto& tests = d.lines.limits;
  EXPECT_EQ(tests[0].verdict, LimitVerdict::AtTheLimit);
  EXPECT_EQ(tests[0].words, "at the limit: 0 to spare");
  EXPECT_EQ(tests[1].verdict, LimitVerdict::Over);
  EXPECT_EQ(tests[1].words, "over by 40");
  EXPECT_EQ(tests[1].what, "wall A-B to boundary 1");
  EXPECT_EQ(tests[2].what, "wall B-C to boundary 2");
  EXPECT_EQ(tests[2].verdict, LimitVerdict::Clear);
  EXPECT_EQ(tests[2].words, "clear by 500");
  EXPECT_EQ(tests[3].verdict, LimitVerdict::Over);
  EXPECT_EQ(tests[3].words, "over by less than 1");
  EXPECT_EQ(tests[4].words, "clear by 500");
}

TEST(Limits, CountTheRenderAndTellWhatReachesFurther) {
  Job job = rectangle(8, 6);
  job.site.boundary = {{-3, -1}, {11, -1}, {11, 9}, {-3, 9}};
  job.walls.render = 0.020;
  job.limits = {limit(LimitKind::Boundary, 1.000)};
  const Derived d(job);
  EXPECT_EQ(d.lines.limits[0].words, "over by 20");
  EXPECT_EQ(d.lines.limits[0].further,
            "eaves 700, foundation " + lengthText(1 + d.out.faceDistances.foundationOuter));
}

TEST(Limits, WithoutAnyTellWhatTheLeastDistancesAre) {
  const Derived house(test_support::demoJob("smallest"));
  std::set<LimitKind> kinds;
  for (const LimitTest& test : house.lines.limits) {
    if (test.given) continue;
    EXPECT_EQ(test.verdict, LimitVerdict::Told);
    kinds.insert(test.kind);
  }
  EXPECT_TRUE(kinds.count(LimitKind::Ridge) && kinds.count(LimitKind::Eaves));
}

TEST(Limits, ABuildingThatIsTakenDownSetsNone) {
  Job job = rectangle(8, 6);
  StandingBuilding shed;
  shed.name = "Shed";
  shed.outline = {{9, 0}, {10, 0}, {10, 2}, {9, 2}};
  job.site.buildings = {shed};
  job.limits = {limit(LimitKind::Building, 1.5)};
  EXPECT_EQ(Derived(job).lines.limits[0].words, "over by 500");
  job.site.buildings[0].kind = BuildingKind::Demolish;
  EXPECT_EQ(Derived(job).lines.limits[0].verdict, LimitVerdict::Told);
}

TEST(Pegs, LieInTheGridThatTheJobGives) {
  SiteGrid grid;
  grid.east = 1000;
  grid.north = 2000;
  grid.turn = 90;  // the drawing's up lies east
  const Vec2 up = inGrid(grid, {0, 10}), right = inGrid(grid, {10, 0});
  EXPECT_NEAR(up.x, 1010, 1e-9);
  EXPECT_NEAR(up.y, 2000, 1e-9);
  EXPECT_NEAR(right.x, 1000, 1e-9);
  EXPECT_NEAR(right.y, 1990, 1e-9);
}

TEST(Pegs, HaveNamesOfTheirOwnAndKeepTheirDistancesInTheGrid) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    Job job = test_support::seededJob(seed);
    job.site.grid = SiteGrid{412.5, 87.25, 33.0 + seed};
    const Derived d(job);
    std::set<std::string> names;
    const auto& pegs = d.lines.pegs;
    for (const SetOutPeg& peg : pegs) {
      ASSERT_TRUE(names.insert(peg.name).second) << seed << peg.name;
      const Vec2 grid = Vec2{peg.east, peg.north} - Vec2{pegs[0].east, pegs[0].north};
      ASSERT_NEAR(glm::length(grid), glm::length(peg.at - pegs[0].at), 1e-9);
    }
    for (const Corner& corner : d.out.corners) {
      const auto found = std::find_if(pegs.begin(), pegs.end(), [&](const SetOutPeg& peg) {
        return peg.name == corner.letter + "-OF";
      });
      ASSERT_NE(found, pegs.end()) << seed;
      ASSERT_NEAR(glm::length(found->at - corner.at), 0, 1e-9);
    }
  }
}

TEST(Pegs, OfTheCellarAndOfConcreteStandWhereThoseDo) {
  const Derived house(test_support::demoJob("orchard-house"));
  const auto peg = [&](const std::string& name) {
    const auto& pegs = house.lines.pegs;
    const auto found =
        std::find_if(pegs.begin(), pegs.end(), [&](const SetOutPeg& p) { return p.name == name; });
    return found == pegs.end() ? nullptr : &*found;
  };
  ASSERT_TRUE(peg("K1-CI"));
  EXPECT_NEAR(peg("K1-CI")->at.x, 6.290 + 0.450, 1e-9);
  EXPECT_NEAR(peg("K1-CI")->at.y, 0.450, 1e-9);
  EXPECT_NEAR(peg("K1-CI")->level, house.out.levels.cellarSlabTop, 1e-9);
  // The step is at A; over the cellar, at C, there is no strip.
  ASSERT_TRUE(peg("A-FO") && peg("A-OF"));
  EXPECT_NEAR(peg("A-OF")->level, -1.200, 1e-9);
  EXPECT_NEAR(peg("A-FO")->level, -1.425, 1e-9);
  EXPECT_FALSE(peg("C-FO"));
}

// Wherever the site lies and however it is turned, every distance is the same.
RC_GTEST_PROP(RigidMotion, LeavesEveryDistanceAlone, ()) {
  Job job = *test_support::randomJob();
  job.site.boundary = siteBoundary(job);
  Motion motion;
  motion.turn = glm::radians(*rc::gen::inRange(0, 36000) / 100.0);
  motion.move = {*rc::gen::inRange(-50000, 50000) / 1000.0,
                 *rc::gen::inRange(-50000, 50000) / 1000.0};
  const Derived a(job), b(moved(job, motion));
  constexpr double kNear = 1e-6;
  RC_ASSERT(a.lines.lines.size() == b.lines.lines.size());
  for (size_t i = 0; i < a.lines.lines.size(); ++i) {
    const SetOutLine &p = a.lines.lines[i], &q = b.lines.lines[i];
    RC_ASSERT(std::abs(p.length - q.length) < kNear);
    for (const auto member : {&SetOutLine::boundary, &SetOutLine::building}) {
      RC_ASSERT((p.*member).has_value() == (q.*member).has_value());
      if (!(p.*member)) continue;
      RC_ASSERT(std::abs((p.*member)->nearest.distance - (q.*member)->nearest.distance) < kNear);
      RC_ASSERT(std::abs((p.*member)->atStart.distance - (q.*member)->atStart.distance) < kNear);
    }
  }
  RC_ASSERT(a.lines.tape.base == b.lines.tape.base);
  for (size_t i = 0; i < a.lines.tape.fixes.size(); ++i) {
    const TapeFix &p = a.lines.tape.fixes[i], &q = b.lines.tape.fixes[i];
    RC_ASSERT(p.corner == q.corner);
    for (size_t k = 0; k < 2; ++k)
      RC_ASSERT(std::abs(p.tapes[k].length - q.tapes[k].length) < kNear);
  }
  for (size_t i = 0; i < a.lines.limits.size(); ++i)
    RC_ASSERT(std::abs(a.lines.limits[i].found - b.lines.limits[i].found) < kNear ||
              a.lines.limits[i].found > 1e299);
  // Boards are looked for in steps of 50.
  RC_ASSERT(a.lines.boards.boards.size() == b.lines.boards.boards.size());
  for (size_t i = 0; i < a.lines.boards.boards.size(); ++i) {
    const Board &p = a.lines.boards.boards[i], &q = b.lines.boards.boards[i];
    RC_ASSERT(p.name == q.name);
    RC_ASSERT(std::abs(p.beyond - q.beyond) < 0.051);
    RC_ASSERT(p.marks.size() == q.marks.size());
    for (size_t k = 0; k < p.marks.size(); ++k)
      RC_ASSERT(std::abs(p.marks[k].along - q.marks[k].along) < kNear);
  }
}

}  // namespace
}  // namespace lines_test
