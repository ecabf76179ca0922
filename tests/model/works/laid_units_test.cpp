// Leaves as units: what a bricklayer could build.
#include <algorithm>
#include <cmath>
#include <map>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "tests/support/wall_works.h"

namespace {

using namespace model;
using test_support::demoJob;

// Those of a cellar in blocks too.
Works wallsOf(const Job& job, const SettingOut& out) {
  Works works = test_support::wallsOf(job, out);
  buildCellarWalls(job, out, works);
  return works;
}

bool isLeaf(const Element& e) {
  return e.kind == ElementKind::OuterLeaf || e.kind == ElementKind::InnerLeaf ||
         (e.kind == ElementKind::CellarWall && e.material == Material::Block);
}

// Of its rectangle under the slope.
double faceOf(const MasonryUnit& u) {
  if (u.piece != Piece::Raked) return u.length() * u.height();
  // A straight line from rake0 to rake1, cut off at the top of the unit.
  constexpr int kSteps = 400;
  double sum = 0;
  for (int i = 0; i < kSteps; ++i) {
    const double at = (i + 0.5) / kSteps;
    sum += std::min(u.z1, u.rake0 + (u.rake1 - u.rake0) * at) - u.z0;
  }
  return sum * u.length() / kSteps;
}

std::vector<Vec2> planOf(const UnitFrame& f, const MasonryUnit& u) {
  const auto at = [&](double s, double d) { return f.start + f.along * s + f.inward * d; };
  const double deep = u.d1 - u.d0;
  const double s0 = u.s0 + (u.mitredStart ? f.skewStart * deep : 0);
  const double s1 = u.s1 + (u.mitredEnd ? f.skewEnd * deep : 0);
  return {at(u.s0, u.d0), at(u.s1, u.d0), at(s1, u.d1), at(s0, u.d1)};
}

// Its face over its depth, and of a mitred one what it really has on plan.
double volumeOf(const UnitFrame& f, const MasonryUnit& u) {
  return faceOf(u) / u.length() * std::fabs(signedArea(planOf(f, u)));
}

// Whether two convex quadrilaterals share more than a tenth of a millimetre.
bool share(const std::vector<Vec2>& a, const std::vector<Vec2>& b) {
  for (const auto* one : {&a, &b}) {
    for (size_t i = 0; i < 4; ++i) {
      const Vec2 side = (*one)[(i + 1) % 4] - (*one)[i];
      const double length = std::hypot(side.x, side.y);
      if (length < 1e-9) continue;
      const Vec2 axis(side.y / length, -side.x / length);
      double lowA = 1e300, highA = -1e300, lowB = 1e300, highB = -1e300;
      for (const Vec2& p : a) {
        lowA = std::min(lowA, p.x * axis.x + p.y * axis.y);
        highA = std::max(highA, p.x * axis.x + p.y * axis.y);
      }
      for (const Vec2& p : b) {
        lowB = std::min(lowB, p.x * axis.x + p.y * axis.y);
        highB = std::max(highB, p.x * axis.x + p.y * axis.y);
      }
      if (highA < lowB + 1e-4 || highB < lowA + 1e-4) return false;
    }
  }
  return true;
}

struct Placed {
  std::vector<Vec2> plan;
  double x0, x1;
  const MasonryUnit* unit;
  const Element* element;
};

std::string told(const Placed& p) {
  return p.element->id + " course " + std::to_string(p.unit->course) + " s " +
         std::to_string(p.unit->s0) + " to " + std::to_string(p.unit->s1) + " z " +
         std::to_string(p.unit->z0) + " to " + std::to_string(p.unit->z1) +
         (p.unit->mitredStart ? " mitred start " : "") + (p.unit->mitredEnd ? " mitred end" : "");
}

// The first two units that are in one another's place; nothing when there are none.
std::string overlap(const Works& works) {
  std::vector<Placed> all;
  for (const Element& e : works.elements) {
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i) {
      Placed p{planOf(works.frames[e.frame], works.units[i]), 1e300, -1e300, &works.units[i], &e};
      for (const Vec2& q : p.plan) {
        p.x0 = std::min(p.x0, q.x);
        p.x1 = std::max(p.x1, q.x);
      }
      all.push_back(std::move(p));
    }
  }
  std::map<int, std::vector<const Placed*>> byHeight;
  for (const Placed& p : all)
    for (int z = static_cast<int>(std::floor(p.unit->z0 / 0.2));
         z <= static_cast<int>(std::floor(p.unit->z1 / 0.2)); ++z)
      byHeight[z].push_back(&p);
  for (auto& [height, list] : byHeight) {
    std::sort(list.begin(), list.end(),
              [](const Placed* a, const Placed* b) { return a->x0 < b->x0; });
    for (size_t i = 0; i < list.size(); ++i) {
      for (size_t k = i + 1; k < list.size() && list[k]->x0 < list[i]->x1 - 1e-4; ++k) {
        const MasonryUnit &a = *list[i]->unit, &b = *list[k]->unit;
        if (a.z1 < b.z0 + 1e-4 || b.z1 < a.z0 + 1e-4) continue;
        if (share(list[i]->plan, list[k]->plan)) return told(*list[i]) + "\n" + told(*list[k]);
      }
    }
  }
  return "";
}

struct Filled {
  double units = 0, leaf = 0;
};

std::map<ElementKind, Filled> filled(const Works& works) {
  std::map<ElementKind, Filled> sums;
  for (const Element& e : works.elements) {
    if (!isLeaf(e)) continue;
    sums[e.kind].leaf += volume(e.solid);
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i)
      sums[e.kind].units += volumeOf(works.frames[e.frame], works.units[i]);
  }
  return sums;
}

// A brick is 215 x 65 of 225 x 75 and a block 440 x 215 of 450 x 225 (check M01 and M05): the
// shares of a leaf that are not mortar, but for cut ones, whose joints are more.
TEST(LaidUnits, FillTheLeavesOfTheDemoButForTheirJoints) {
  const Job job = demoJob("orchard-house");
  const auto sums = filled(wallsOf(job, deriveSettingOut(job)));
  const Filled bricks = sums.at(ElementKind::OuterLeaf), blocks = sums.at(ElementKind::InnerLeaf);
  EXPECT_NEAR(bricks.units / bricks.leaf, 215 * 65 / (225.0 * 75), 0.012);
  EXPECT_NEAR(blocks.units / blocks.leaf, 440 * 215 / (450.0 * 225), 0.03);
}

RC_GTEST_PROP(LaidUnits, AreNeverInOneAnothersPlace, ()) {
  const Job job = *test_support::randomJob();
  const Works works = wallsOf(job, deriveSettingOut(job));
  const std::string found = overlap(works);
  if (!found.empty()) RC_FAIL(found);
}

// What is not unit is mortar: never more of it than joints of twice the nominal would be.
RC_GTEST_PROP(LaidUnits, LeaveOnlyJointsForMortar, ()) {
  const Job job = *test_support::randomJob();
  const WallBuildUp& w = job.walls;
  for (const auto& [kind, sum] : filled(wallsOf(job, deriveSettingOut(job)))) {
    const bool brick = kind == ElementKind::OuterLeaf;
    const double length = brick ? w.brickLength : w.blockLength;
    const double height = brick ? w.brickHeight : w.blockHeight;
    const double usual = length * height / ((length + w.joint) * (height + w.joint));
    RC_ASSERT(sum.units < sum.leaf);
    RC_ASSERT(1 - sum.units / sum.leaf < 2.5 * (1 - usual));
  }
}

// A drawn job with an inner leaf of 365 in blocks 240 long, no corner square: its angle units once
// were left out, as no single block reaches the back of such a mitre.
TEST(LaidUnits, FillACornerWhoseMitreIsLongerThanABlock) {
  const Job job = test_support::seededJob(41344);
  ASSERT_GT(job.walls.innerLeaf, job.walls.blockLength);
  const Filled blocks = filled(wallsOf(job, deriveSettingOut(job))).at(ElementKind::InnerLeaf);
  EXPECT_GT(blocks.units / blocks.leaf, 0.88);
  EXPECT_LT(blocks.units / blocks.leaf, 0.96);
}

// Of the storey's second lift, which begins at half the height of its windows: leads stand at the
// jambs, course over course stepped back, and the run is laid between them.
TEST(LaidUnits, AreRackedBackAtRevealsThatALiftBeginsBeside) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  const Element* reveals =
      test_support::find(works, "wall A-B/outer leaf/Ground floor/lift 2/reveals");
  ASSERT_NE(reveals, nullptr);
  EXPECT_EQ(reveals->placed.stage, (StageKey{StageKind::RaiseCorners, 0, 2}));
  std::map<int, double> furthest;  // by course, right of the living room window
  const auto window = std::find_if(out.openings.begin(), out.openings.end(),
                                   [](const auto& o) { return o.name == "Living room window"; });
  ASSERT_NE(window, out.openings.end());
  for (size_t i = reveals->firstUnit; i < reveals->firstUnit + reveals->unitCount; ++i) {
    const MasonryUnit& u = works.units[i];
    if (u.s0 < window->s1 - 1e-6 || u.s0 > window->s1 + 2) continue;
    furthest[u.course] = std::max(furthest[u.course], u.s1);
  }
  ASSERT_GT(furthest.size(), 4u);
  double last = 1e9;
  for (const auto& [course, s] : furthest) {
    EXPECT_LE(s, last + 0.006) << course;
    last = s;
  }
  EXPECT_LT(furthest.rbegin()->second, furthest.begin()->second - 0.2);
}

// Every element's units lie in its own box and are laid in order while it grows.
RC_GTEST_PROP(LaidUnits, AreLaidInOrderInsideTheirPart, ()) {
  const Job job = *test_support::randomJob();
  const Works works = wallsOf(job, deriveSettingOut(job));
  size_t next = 0;
  for (const Element& e : works.elements) {
    if (!isLeaf(e) || e.unitCount == 0) continue;  // where there is room for mortar alone
    RC_ASSERT(e.firstUnit == next);
    next += e.unitCount;
    float last = 0;
    for (size_t i = e.firstUnit; i < next; ++i) {
      const MasonryUnit& u = works.units[i];
      RC_ASSERT(u.z0 > e.underside - 1e-6);
      RC_ASSERT((u.piece == Piece::Raked || u.z1 < e.top + 1e-6));
      RC_ASSERT(u.s1 - u.s0 > 0.0199);
      RC_ASSERT(u.when >= last);
      RC_ASSERT(u.when <= 1.0f);
      last = u.when;
    }
  }
  RC_ASSERT(next == works.units.size());
}

}  // namespace
