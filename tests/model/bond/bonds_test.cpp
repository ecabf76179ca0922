// Every bond: how it turns a corner, ends at a jamb, laps and is broken.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/bond/bond_count.h"
#include "model/bond/bond_moves.h"
#include "model/bond/bond_pattern.h"
#include "model/bond/dry_bond.h"
#include "tests/model/bond/laid.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

constexpr BondKind kAll[] = {
    BondKind::Stretcher,        BondKind::Header,  BondKind::Stack,
    BondKind::English,          BondKind::Flemish, BondKind::EnglishGardenWall,
    BondKind::FlemishGardenWall};

// So many quarter bricks from face to face.
double facesOf(int quarters) { return quarters * 0.05625 - 0.010; }

Job rectangle(BondKind bond, int along, int across) {
  Job job;
  job.walls.bond = bond;
  job.outline = {
      {0, 0}, {facesOf(along), 0}, {facesOf(along), facesOf(across)}, {0, facesOf(across)}};
  return job;
}

// Face lengths in quarters with their joints; 0 for what is no such piece.
std::vector<int> quartersOf(const std::vector<LaidPiece>& laid) {
  std::vector<int> all;
  for (const LaidPiece& piece : laid) {
    if (piece.front > 0) continue;
    const double quarters = (piece.length() + 0.010) / 0.05625;
    all.push_back(std::fabs(quarters - std::round(quarters)) < 1e-4
                      ? static_cast<int>(std::lround(quarters))
                      : 0);
  }
  return all;
}

struct Corner {
  BondKind bond;
  int along, across;                      // of a plan that comes out, in quarters
  std::vector<std::vector<int>> courses;  // how wall A-B begins and ends, course by course
};

class Bond : public testing::TestWithParam<Corner> {};

TEST_P(Bond, TurnsItsCornerAndComesOut) {
  const Corner& corner = GetParam();
  const Laid laid(rectangle(corner.bond, corner.along, corner.across));
  for (const WallBond& wall : laid.bond.walls) {
    EXPECT_TRUE(wall.stretches[0].fit.regular);
    EXPECT_FALSE(wall.odd);
  }
  for (size_t course = 0; course < corner.courses.size(); ++course) {
    // And again after its period.
    for (const int above : {static_cast<int>(course), static_cast<int>(course) + 8}) {
      std::vector<int> pieces = quartersOf(layCourse(laid.bond, 0, above, {}));
      const auto& expected = corner.courses[course];
      ASSERT_GT(pieces.size(), expected.size());
      EXPECT_TRUE(std::equal(expected.begin(), expected.end(), pieces.begin())) << course;
      EXPECT_TRUE(std::equal(expected.begin(), expected.end(), pieces.rbegin())) << course;
    }
  }
  // The wall round the corner has the other of the courses that change about.
  for (const size_t course : {0u, 1u}) {
    EXPECT_NE(laid.bond.walls[0].end.through[course], laid.bond.walls[1].start.through[course]);
  }
}

INSTANTIATE_TEST_SUITE_P(
    All, Bond,
    testing::Values(Corner{BondKind::Stretcher, 160, 120, {{4, 4, 4}, {4, 4, 4}}},
                    Corner{BondKind::Stack, 160, 120, {{4, 4, 4}, {2, 4, 4}}},
                    Corner{BondKind::Header, 160, 118, {{3, 2, 2}, {2, 2, 2}}},
                    Corner{BondKind::English, 160, 120, {{4, 4, 4}, {1, 2, 2, 2}}},
                    Corner{BondKind::Flemish, 160, 118, {{4, 2, 4, 2}, {1, 4, 2, 4, 2}}},
                    Corner{BondKind::EnglishGardenWall,
                           160,
                           120,
                           {{3, 2, 2}, {4, 4, 4}, {4, 4, 4}, {4, 4, 4}, {3, 2, 2}}},
                    Corner{BondKind::FlemishGardenWall,
                           164,
                           122,
                           {{4, 2, 4, 4, 4, 2, 4}, {1, 4, 4, 2, 4, 4, 4, 2}}}));

// The header course goes round at one level: here the walls that butt have a header and a closer.
TEST(EnglishGardenWall, HasItsHeadersAtOneLevelAllRound) {
  const Laid laid(rectangle(BondKind::EnglishGardenWall, 160, 120));
  const std::vector<int> through = quartersOf(layCourse(laid.bond, 0, 4, {}));
  const std::vector<int> butting = quartersOf(layCourse(laid.bond, 1, 4, {}));
  EXPECT_EQ(through[0], kThreeQuarter);
  EXPECT_EQ(butting[0], kCloser);
  EXPECT_EQ(std::count(through.begin() + 1, through.end() - 1, kHeader),
            static_cast<std::ptrdiff_t>(through.size()) - 2);
}

// Wherever a window stands in half bricks, no sliver is at its jambs and everything laps a quarter.
TEST(EveryBond, EndsAtJambsWithHeadersOrMoreAndLaps) {
  for (const BondKind bond : kAll) {
    if (bond == BondKind::Stack) continue;
    for (int half = 8; half < 20; ++half) {
      SCOPED_TRACE(std::to_string(static_cast<int>(bond)) + " at " + std::to_string(half));
      Job job = rectangle(bond, 160, 118);
      Opening window;
      window.name = "Window";
      window.wall = "A-B";
      window.from = "A";
      window.at = facesOf(2 * half);
      window.width = 0.910;
      job.openings = {window};
      const Laid laid(job);
      for (int above = 0; above < 8; ++above) {
        for (const LaidPiece& piece :
             layCourse(laid.bond, 0, above, {{window.at, window.at + 0.910}})) {
          if (std::fabs(piece.to - window.at) > 1e-6 &&
              std::fabs(piece.from - window.at - 0.910) > 1e-6)
            continue;
          EXPECT_GT(piece.length(), 0.099);
        }
      }
      EXPECT_GT(countBond(laid.job, laid.out, laid.bond)[0].leastLap, 0.0535);
    }
  }
}

TEST(FlemishBond, SaysWhatLengthItsPatternWouldComeOutIn) {
  Job job = rectangle(BondKind::Flemish, 162, 118);
  const Laid laid(job);
  EXPECT_FALSE(laid.bond.walls[0].stretches[0].fit.regular);
  EXPECT_GE(laid.bond.walls[0].stretches[0].fit.lap, 0.054);
  const std::vector<WallMoves> moves = brickSizeMoves(laid.bond);
  EXPECT_NEAR(moves[0].longer, -2 * 0.05625, 1e-9);
  EXPECT_NEAR(moves[0].otherLonger, 4 * 0.05625, 1e-9);
  EXPECT_EQ(moves[1].longer, 0);
  const Laid moved(rectangle(BondKind::Flemish, 160, 118));
  EXPECT_TRUE(moved.bond.walls[0].stretches[0].fit.regular);
}

// An opening of 900 has four bricks under it in five joints of 8.
TEST(DryBond, GivesInTheJointsAtTheJambsToo) {
  Job job = rectangle(BondKind::Stretcher, 160, 118);
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 1.790;
  window.width = 0.900;
  job.openings = {window};
  // The pier behind it is as much longer, which its joints take up.
  const Laid laid(job);
  const DryStretch& under = laid.bond.walls[0].stretches[1];
  EXPECT_TRUE(under.fit.regular);
  EXPECT_NEAR(under.fit.joint, 0.008, 1e-9);
  EXPECT_TRUE(laid.bond.walls[0].stretches[2].fit.regular);
  for (int above = 0; above < 2; ++above) {
    for (const LaidPiece& piece : layCourse(laid.bond, 0, above, {}))
      EXPECT_NEAR(piece.length(), 0.215, 0.0015);
  }
}

TEST(MovementJoint, PartsEveryCourseAndEndsTheBondOnBothSides) {
  for (const BondKind bond : kAll) {
    SCOPED_TRACE(static_cast<int>(bond));
    Job job = rectangle(bond, 160, 118);
    job.movementJoints = {{"A-B", "A", facesOf(80) + 0.008, 0.016}};
    const Laid laid(job);
    for (int above = -3; above < 6; ++above) {
      int ends = 0;
      for (const LaidPiece& piece : layCourse(laid.bond, 0, above, {})) {
        EXPECT_TRUE(piece.to < facesOf(80) + 1e-6 || piece.from > facesOf(80) + 0.016 - 1e-6);
        const bool atEdge = std::fabs(piece.to - facesOf(80)) < 1e-6 ||
                            std::fabs(piece.from - facesOf(80) - 0.016) < 1e-6;
        if (!atEdge) continue;
        EXPECT_GT(piece.length(), 0.099);
        ++ends;
      }
      EXPECT_EQ(ends, 2);
    }
  }
}

// Five walls of headers and stretchers do not close; beyond a movement joint either may begin.
TEST(MovementJoint, LetsTheCoursesMeetWithoutABreak) {
  Job job = rectangle(BondKind::Stretcher, 160, 118);
  job.outline[2].y += 0.1125;
  job.outline[3].y += 0.1125;
  job.outline.push_back({0, 3.0});
  job.outline.insert(job.outline.begin() + 1, {4.0, 0});
  const Laid broken(job);
  job.movementJoints = {{"B-C", "B", 2.0, 0.016}};
  const Laid parted(job);
  EXPECT_TRUE(parted.bond.brokenToClose.empty());
  int even = 0;
  for (const WallBond& wall : parted.bond.walls) even += wall.odd ? 0 : 1;
  EXPECT_EQ(even % 2, 0);
}

struct Area {
  double x0, y0, x1, y1;
};

// All pieces of a course on plan; the outline's sides are along the axes.
std::vector<Area> onPlan(const Laid& laid, int above) {
  std::vector<Area> all;
  for (size_t wall = 0; wall < laid.out.walls.size(); ++wall) {
    const WallLine& line = laid.out.walls[wall];
    for (const LaidPiece& piece : layCourse(laid.bond, wall, above, {})) {
      const double back = piece.back > 0 ? piece.back : laid.bond.sizes.thickness;
      const Vec2 a = line.at(piece.from, piece.front), b = line.at(piece.to, back);
      all.push_back(
          {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)});
    }
  }
  return all;
}

// English, Flemish and the rest in one brick and more: nothing overlaps, in corners either, and
// what is not brick is joints.
TEST(SolidWall, IsFilledWithoutOverlapRoundEveryCorner) {
  for (const BondKind bond : {BondKind::English, BondKind::Flemish, BondKind::Header,
                              BondKind::EnglishGardenWall, BondKind::FlemishGardenWall}) {
    for (const auto& [bent, thick] : {std::pair{false, 0.215},
                                      {true, 0.215},
                                      {false, 0.3275},
                                      {true, 0.3275},
                                      {false, 0.440},
                                      {true, 0.440}}) {
      Job job = rectangle(bond, 160, 120);
      job.walls.outerLeaf = thick;
      job.foundations.width = 0.9;
      if (bent) {
        const Vec2 in{facesOf(80), facesOf(60)};
        job.outline = {job.outline[0],           job.outline[1], {job.outline[1].x, in.y}, in,
                       {in.x, job.outline[2].y}, job.outline[3]};
      }
      const Laid laid(job);
      double ring = 0;
      for (const WallLine& line : laid.out.walls) ring += line.length * thick;
      ring -= (bent ? 5 - 1 : 4) * thick * thick;
      for (int above = 0; above < 4; ++above) {
        SCOPED_TRACE(std::to_string(static_cast<int>(bond)) + " " + std::to_string(above) + " " +
                     std::to_string(thick));
        const std::vector<Area> pieces = onPlan(laid, above);
        double area = 0;
        for (size_t i = 0; i < pieces.size(); ++i) {
          const Area& a = pieces[i];
          area += (a.x1 - a.x0) * (a.y1 - a.y0);
          for (size_t k = 0; k < i; ++k) {
            const Area& b = pieces[k];
            const bool apart = a.x1 < b.x0 + 0.005 || b.x1 < a.x0 + 0.005 || a.y1 < b.y0 + 0.005 ||
                               b.y1 < a.y0 + 0.005;
            EXPECT_TRUE(apart) << a.x0 << " " << a.y0 << " over " << b.x0 << " " << b.y0;
          }
        }
        EXPECT_GT(area / ring, 0.88);
        EXPECT_LT(area / ring, 0.97);
      }
    }
  }
}

// Any bond round any plan: corners turn, pieces keep apart, none is longer than a brick.
RC_GTEST_PROP(EveryBond, RoundAnyPlanTurnsItsCornersAndLaysPiecesApart, ()) {
  Job job = *test_support::randomJob();
  job.walls.bond = *rc::gen::elementOf(std::vector<BondKind>(std::begin(kAll), std::end(kAll)));
  const Laid laid(job);
  const size_t n = laid.out.walls.size();
  for (size_t i = 0; i < n; ++i) {
    const WallBond &wall = laid.bond.walls[i], &next = laid.bond.walls[(i + 1) % n];
    RC_ASSERT(wall.joints.size() == coursesOf(job.walls.bond));
    for (int above = -2; above < 34; above += above < 6 ? 1 : 5) {
      const size_t course = courseParity(above);
      RC_ASSERT(wall.end.through[course] != next.start.through[course]);
      const LaidPiece* before = nullptr;
      const auto pieces = layCourse(laid.bond, i, above, openAt(laid.job, laid.out, i, above));
      for (const LaidPiece& piece : pieces) {
        if (piece.front > 0) continue;
        RC_ASSERT(piece.length() > 0);
        RC_ASSERT(piece.special || piece.length() < laid.bond.sizes.brick + 0.0035);
        if (before) {
          RC_ASSERT(piece.from - before->to > laid.bond.sizes.least - 1e-6);
        }
        before = &piece;
      }
    }
  }
}

// Courses over one another lap by a quarter, less what joints give, and the same courses of the
// bond have their perpends over one another; but where it is told that there is no room.
RC_GTEST_PROP(EveryBond, OfAnyPlanLapsWhereItSaysSo, ()) {
  Job job = *test_support::randomJob();
  job.walls.bond = *rc::gen::elementOf(std::vector<BondKind>(std::begin(kAll), std::end(kAll)));
  if (job.walls.bond == BondKind::Stack) return;
  const Laid laid(job);
  for (const WallBond& wall : laid.bond.walls) {
    bool told = false;
    for (const DryStretch& stretch : wall.stretches)
      told = told || stretch.fit.lap < laid.bond.sizes.leastLap() - 1e-9 ||
             stretch.to - stretch.from < 0.4;
    if (told) continue;
    for (size_t k = 0; k < wall.joints.size(); ++k)
      for (const CrossJoint& a : wall.joints[k])
        for (const CrossJoint& b : wall.joints[(k + 1) % wall.joints.size()])
          RC_ASSERT(std::fabs(a.at - b.at) >= laid.bond.sizes.leastLap() - 1e-6);
  }
}

}  // namespace
}  // namespace model
