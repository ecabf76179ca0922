#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "model/geometry/check_solid.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "tests/support/wall_works.h"

namespace {

using namespace model;
using test_support::demoJob;
using test_support::find;
using test_support::wallsOf;

double volumeOf(const Works& works, ElementKind kind) {
  double sum = 0;
  for (const Element& e : works.elements) sum += e.kind == kind ? volume(e.solid) : 0;
  return sum;
}

// Metres times their width of 75.
double closersFace(const Works& works) {
  double face = 0;
  for (const Element& e : works.elements)
    if (e.kind == ElementKind::CavityCloser) face += e.quantity.amount * 0.075;
  return face;
}

void expectClosed(const Works& works, const std::string& job) {
  std::set<std::string> ids;
  for (const Element& e : works.elements) {
    EXPECT_EQ(solidFault(e.solid), "") << job << ": " << e.id;
    EXPECT_TRUE(ids.insert(e.id).second) << job << ": " << e.id;
    EXPECT_GT(e.quantity.amount, 0) << job << ": " << e.id;
  }
}

TEST(CavityWall, EveryPartOfEveryDemoJobIsClosed) {
  for (const auto& name : test_support::demoNames()) {
    const Job job = demoJob(name);
    expectClosed(wallsOf(job, deriveSettingOut(job)), name);
  }
}

TEST(CavityWall, EveryPartOfDrawnJobsIsClosed) {
  for (unsigned seed = 0; seed < 120; ++seed) {
    const Job job = test_support::seededJob(seed);
    expectClosed(wallsOf(job, deriveSettingOut(job)), "seed " + std::to_string(seed));
  }
}

// The plan area of a leaf all round, by the shoelace formula on its two faces.
double planArea(const SettingOut& out, double outer, double inner) {
  return signedArea(out.ring(outer)) - signedArea(out.ring(inner));
}

// Hips all round, level foundations: a leaf's volume is its plan area times its height less the
// openings; worked without elevations, mitres or triangles.
TEST(CavityWall, LeavesHoldTheVolumeOfTheirPlanTimesHeightLessOpenings) {
  Job job = demoJob("orchard-house");
  job.roof.edges.clear();
  job.cellar.reset();
  job.foundations.steps.clear();
  std::erase_if(job.openings, [](const Opening& o) { return o.name == "Loft light"; });
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  double openings = 0, outerLintels = 0, innerLintels = 0;
  for (const BuiltOpening& o : out.openings) openings += (o.s1 - o.s0) * (o.head - o.sill);
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::Lintel) continue;
    (e.id.find("outer leaf") != std::string::npos ? outerLintels : innerLintels) += volume(e.solid);
  }
  const double below = 0.975 - 0.002;
  EXPECT_NEAR(volumeOf(works, ElementKind::OuterLeaf) + volumeOf(works, ElementKind::WeepVent) +
                  outerLintels,
              planArea(out, 0, 0.1025) * (below + out.levels.outerLeafTop) - openings * 0.1025,
              1e-6);
  EXPECT_NEAR(volumeOf(works, ElementKind::InnerLeaf) + innerLintels,
              planArea(out, 0.2525, 0.3525) * (below + 5.1) - openings * 0.1, 1e-6);
  // Insulation: from 225 below to the rafters' underside at its outer face.
  const double insulationTop = std::min(5.1, out.levels.eavesUnderside + 0.1525 * out.tanPitch);
  // What ties and trays take of it is little.
  const double boards = volumeOf(works, ElementKind::CavityInsulation);
  const double room = planArea(out, 0.1525, 0.2525) * (0.225 + insulationTop) - openings * 0.1 -
                      closersFace(works) * 0.1;
  EXPECT_LT(boards, room);
  EXPECT_GT(boards, room * 0.998);
}

TEST(CavityWall, SkewCornersKeepTheSameSum) {
  Job job = demoJob("skew-corner");
  job.roof.edges.clear();
  job.openings.clear();
  const SettingOut out = deriveSettingOut(job);
  const double below = -0.002 - out.levels.foundationTop;
  EXPECT_NEAR(volumeOf(wallsOf(job, out), ElementKind::OuterLeaf) +
                  volumeOf(wallsOf(job, out), ElementKind::WeepVent),
              planArea(out, 0, 0.1025) * (below + out.levels.outerLeafTop), 1e-6);
  EXPECT_NEAR(volumeOf(wallsOf(job, out), ElementKind::InnerLeaf),
              planArea(out, 0.2025, 0.3025) * (below + out.levels.wallTop), 1e-6);
}

TEST(CavityWall, StandsOnTheStepsOfItsFoundations) {
  const Job job = demoJob("orchard-house");
  const Works works = wallsOf(job, deriveSettingOut(job));
  EXPECT_NEAR(find(works, "wall A-B/outer leaf/below damp course")->underside, -1.2, 1e-9);
  EXPECT_NEAR(find(works, "wall B-C/outer leaf/below damp course")->underside, -0.325, 1e-9);
  EXPECT_NEAR(find(works, "wall E-F/inner leaf/below damp course")->underside, -0.975, 1e-9);
  // 6.265 m at -1.200 and the rest, to the mitre, on the cellar wall at -0.325; face to face.
  const Element* south = find(works, "wall A-B/outer leaf/below damp course");
  const double mean = 11.24 - 0.1025;
  const Element* vents = find(works, "wall A-B/weep vents/foot of the cavity");
  ASSERT_NE(vents, nullptr);
  EXPECT_NEAR(south->quantity.amount + volume(vents->solid) / 0.1025,
              (6.265 - 0.05125) * 1.198 + (mean + 0.05125 - 6.265) * 0.323, 1e-6);
}

TEST(CavityWall, TheWallBelowStopsUnderTheDampCourseAndLiftsBeginOnIt) {
  const Job job = demoJob("garage");
  const Works works = wallsOf(job, deriveSettingOut(job));
  EXPECT_NEAR(find(works, "wall A-B/outer leaf/below damp course")->top, -0.002, 1e-12);
  const Element* damp = find(works, "wall A-B/damp course/outer leaf");
  ASSERT_NE(damp, nullptr);
  EXPECT_NEAR(damp->underside, -0.002, 1e-12);
  EXPECT_NEAR(damp->top, 0, 1e-12);
  // 3.590 long, mitred 102.5 at both ends, less the garage door.
  EXPECT_NEAR(damp->quantity.amount, 3.590 - 0.1025 - 2.485, 1e-6);
  EXPECT_NEAR(find(works, "wall C-D/damp course/outer leaf")->quantity.amount, 3.590 - 0.1025,
              1e-6);
}

TEST(CavityWall, CornersAreRackedBackHalfABrickACourse) {
  const Job job = demoJob("smallest");
  const Works works = wallsOf(job, deriveSettingOut(job));
  const Element* corner = find(works, "wall A-B/outer leaf/Ground floor/lift 1/corner A");
  ASSERT_NE(corner, nullptr);
  // How far it reaches along the wall at each course, read off its points.
  std::map<int, double> reach;
  for (const Vec3& p : corner->solid.points) {
    const int course = static_cast<int>(std::lround(p.z / 0.075));
    reach[course] = std::max(reach[course], p.x);
  }
  ASSERT_GE(reach.size(), 3u);
  const int top = reach.rbegin()->first;
  for (int course = top - 1; course > top - 5; --course) {
    EXPECT_NEAR(reach[course] - reach[course + 1], 0.1125, 1e-9) << course;
  }
}

TEST(CavityWall, TheOuterLeafStopsOnWholeCoursesInEveryLift) {
  int offCourse = 0;
  for (unsigned seed = 0; seed < 60; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    for (const Lift& lift : out.lifts) {
      const double courses = (lift.top - out.levels.dampCourse) / job.walls.course();
      offCourse += std::fabs(courses - std::round(courses)) > 1e-3;
    }
    for (const Element& e : wallsOf(job, out).elements) {
      const StageKind kind = e.placed.stage.kind;
      const bool inLift = kind == StageKind::RunIn || kind == StageKind::RaiseCorners;
      // Weep holes and steps of the damp course are no courses.
      const bool drained = !job.cavityBarriers.empty() || !job.dampCourseSteps.empty();
      if (!out.openings.empty() || drained) continue;
      if (e.kind != ElementKind::OuterLeaf || !inLift) continue;
      for (const Vec3& p : e.solid.points) {
        const double courses = (p.z - out.levels.dampCourse) / job.walls.course();
        EXPECT_NEAR(courses, std::round(courses), 1e-3) << seed << " " << e.id;
      }
    }
  }
  EXPECT_GT(offCourse, 10);  // so that it was looked at
}

TEST(CavityWall, UnderAFloorTheInnerLeafStopsAtTheJoistsAndTheOuterAtTheCourseUnder) {
  const Job job = demoJob("orchard-house");
  const Works works = wallsOf(job, deriveSettingOut(job));
  const Element* inner = find(works, "wall B-C/inner leaf/Ground floor/lift 3/run");
  const Element* outer = find(works, "wall B-C/outer leaf/Ground floor/lift 3/run");
  EXPECT_NEAR(inner->top, 2.458, 1e-9);
  EXPECT_NEAR(outer->top, 2.400, 1e-9);  // course 32
  EXPECT_NEAR(find(works, "wall B-C/outer leaf/First floor/lift 1/run")->underside, 2.400, 1e-9);
  EXPECT_NEAR(find(works, "wall B-C/inner leaf/First floor/lift 1/run")->underside, 2.458, 1e-9);
  // 358 from the heads: a whole course of 225, and 133 of which the bed is 10.
  EXPECT_EQ(
      inner->name,
      "Wall B-C, inner leaf, Ground floor lift 3, between the corners, top blocks cut to 123");
}

TEST(CavityWall, CornersComeBeforeTheRunBetweenThem) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  for (const Element& e : wallsOf(job, out).elements) {
    if (e.kind != ElementKind::OuterLeaf && e.kind != ElementKind::InnerLeaf) continue;
    const bool corner = e.id.find("/corner ") != std::string::npos;
    const bool run = e.id.size() > 4 && e.id.compare(e.id.size() - 4, 4, "/run") == 0;
    if (corner) {
      EXPECT_EQ(e.placed.stage.kind, StageKind::RaiseCorners) << e.id;
    }
    if (run) {
      EXPECT_EQ(e.placed.stage.kind, StageKind::RunIn) << e.id;
    }
    EXPECT_GE(fractionAt(e.placed, {0, 0, e.top}), fractionAt(e.placed, {0, 0, e.underside}));
  }
}

TEST(CavityWall, LeavesOfOneStageRiseTogether) {
  const Job job = demoJob("orchard-house");
  std::map<StageKey, std::pair<double, double>> ranges;
  for (const Element& e : wallsOf(job, deriveSettingOut(job)).elements) {
    if (e.kind != ElementKind::OuterLeaf && e.kind != ElementKind::InnerLeaf) continue;
    const auto range = std::make_pair(e.placed.low, e.placed.high);
    const auto [known, isNew] = ranges.insert({e.placed.stage, range});
    if (!isNew) {
      EXPECT_EQ(known->second, range) << e.id;
    }
  }
  EXPECT_GT(ranges.size(), 10u);
}

TEST(CavityWall, OpeningsThatTouchLiftLinesLeaveNoSlips) {
  Job job = demoJob("smallest");
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 2;
  window.width = 1;
  window.sill = 1.350;  // a lift line
  window.head = 2.100;  // the next
  job.openings = {window};
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  expectClosed(works, "touching");
  const double run = find(works, "wall A-B/outer leaf/Ground floor/lift 1/run")->quantity.amount;
  const double a = find(works, "wall A-B/outer leaf/Ground floor/lift 1/corner A")->quantity.amount;
  const double b = find(works, "wall A-B/outer leaf/Ground floor/lift 1/corner B")->quantity.amount;
  EXPECT_NEAR(run + a + b, (6.74 - 0.1025) * 1.350, 1e-6);
}

TEST(CavityWall, TurningTheSiteChangesNoQuantity) {
  const Job job = demoJob("orchard-house");
  Job moved = job;
  const auto turn = [](Vec2& p) { p = {p.x * 0.6 - p.y * 0.8 + 31, p.x * 0.8 + p.y * 0.6 - 12}; };
  for (auto& p : moved.outline) turn(p);
  for (auto& p : moved.site.boundary) turn(p);
  for (auto& p : moved.cellar->outline) turn(p);
  for (auto& spot : moved.site.spots) turn(spot.at);
  const Works a = wallsOf(job, deriveSettingOut(job));
  const Works b = wallsOf(moved, deriveSettingOut(moved));
  ASSERT_EQ(a.elements.size(), b.elements.size());
  for (size_t i = 0; i < a.elements.size(); ++i) {
    EXPECT_EQ(a.elements[i].id, b.elements[i].id);
    EXPECT_NEAR(a.elements[i].quantity.amount, b.elements[i].quantity.amount, 1e-5)
        << a.elements[i].id;
  }
}

TEST(CavityWall, IsTheSameEveryTime) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works a = wallsOf(job, out), b = wallsOf(job, out);
  ASSERT_EQ(a.elements.size(), b.elements.size());
  for (size_t i = 0; i < a.elements.size(); ++i) {
    EXPECT_EQ(a.elements[i].solid.points, b.elements[i].solid.points);
    EXPECT_EQ(a.elements[i].solid.triangles, b.elements[i].solid.triangles);
  }
}

}  // namespace
