#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "model/geometry/check_solid.h"
#include "model/works/leaf_plan.h"
#include "model/works/parts.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;
using test_support::demoJob;

Works wallsOf(const Job& job, const SettingOut& out) {
  Works works;
  buildCavityWalls(job, out, works);
  buildDampCourse(job, out, works);
  buildLintels(job, out, works);
  return works;
}

double volumeOf(const Works& works, ElementKind kind) {
  double sum = 0;
  for (const Element& e : works.elements) sum += e.kind == kind ? volume(e.solid) : 0;
  return sum;
}

const Element* find(const Works& works, const std::string& id) {
  for (const Element& e : works.elements) {
    if (e.id == id) return &e;
  }
  return nullptr;
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
  EXPECT_NEAR(volumeOf(works, ElementKind::OuterLeaf) + outerLintels,
              planArea(out, 0, 0.1025) * (below + out.levels.outerLeafTop) - openings * 0.1025,
              1e-6);
  EXPECT_NEAR(volumeOf(works, ElementKind::InnerLeaf) + innerLintels,
              planArea(out, 0.2525, 0.3525) * (below + 5.1) - openings * 0.1, 1e-6);
  // Insulation: from 225 below to the rafters' underside at its outer face.
  const double insulationTop = std::min(5.1, out.levels.eavesUnderside + 0.1525 * out.tanPitch);
  EXPECT_NEAR(volumeOf(works, ElementKind::CavityInsulation),
              planArea(out, 0.1525, 0.2525) * (0.225 + insulationTop) - openings * 0.1, 1e-6);
}

TEST(CavityWall, SkewCornersKeepTheSameSum) {
  Job job = demoJob("skew-corner");
  job.roof.edges.clear();
  job.openings.clear();
  const SettingOut out = deriveSettingOut(job);
  const double below = -0.002 - out.levels.foundationTop;
  EXPECT_NEAR(volumeOf(wallsOf(job, out), ElementKind::OuterLeaf),
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
  EXPECT_NEAR(south->quantity.amount, (6.265 - 0.05125) * 1.198 + (mean + 0.05125 - 6.265) * 0.323,
              1e-6);
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
  const Element* corner = find(works, "wall A-B/outer leaf/storey 0/lift 1/corner A");
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

// 3.590 wide, 35 degrees: the triangle over the eaves line, worked by hand.
TEST(Gable, OfTheGarageFillsTheTriangleUnderTheRafters) {
  const Job job = demoJob("garage");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  const double slope = std::tan(35 * M_PI / 180);
  const double under = out.levels.plateTop - 0.2025 * slope;
  ASSERT_NEAR(out.levels.eavesUnderside, under, 1e-9);
  // Height over the outer leaf's level top, as a function of the distance x from the corner, and
  // the mitre: at x the leaf is min(x, 0.1025) thick near the ends.
  const double base = out.levels.outerLeafTop;
  double expected = 0;
  const int parts = 20000;
  for (int i = 0; i < parts; ++i) {
    const double x = (i + 0.5) * (3.590 / 2) / parts;
    expected += 2 * (3.590 / 2 / parts) * std::min(x, 0.1025) * (under + x * slope - base);
  }
  for (const char* wall : {"A-B", "C-D"}) {
    const Element* gable = find(works, std::string("wall ") + wall + "/outer leaf/gable");
    ASSERT_NE(gable, nullptr);
    EXPECT_NEAR(volume(gable->solid), expected, 1e-6);
    EXPECT_NEAR(gable->top, under + 1.795 * slope, 1e-9);
    EXPECT_EQ(gable->placed.stage.kind, StageKind::Gables);
  }
  EXPECT_EQ(find(works, "wall B-C/outer leaf/gable"), nullptr);
}

TEST(Gable, NeverEntersTheRafters) {
  for (unsigned seed = 0; seed < 250; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    for (const Element& e : wallsOf(job, out).elements) {
      if (e.top < out.levels.eavesUnderside - 1e-6) continue;
      for (const Vec3& p : e.solid.points) {
        if (p.z < out.levels.eavesUnderside - 1e-6) continue;
        EXPECT_LE(p.z, out.rafterUndersideAt({p.x, p.y}) + 1e-5) << "seed " << seed << " " << e.id;
      }
    }
  }
}

// A gable askew to its ridge: both faces of both leaves meet the rafters' underside exactly.
TEST(Gable, AskewRunsUpToTheRaftersOnBothFaces) {
  Job job = demoJob("garage");
  job.outline = {{0, 0}, {3.59, 0}, {3.59, 6.8}, {0, 5.4}};
  job.openings.clear();
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  for (const char* leaf : {"outer leaf", "inner leaf"}) {
    const Element* gable = find(works, std::string("wall C-D/") + leaf + "/gable");
    ASSERT_NE(gable, nullptr);
    EXPECT_EQ(solidFault(gable->solid), "");
    int onSlope = 0;
    for (const Vec3& p : gable->solid.points) {
      if (p.z < gable->underside + 1e-6) continue;
      EXPECT_NEAR(p.z, out.rafterUndersideAt({p.x, p.y}), 1e-6);
      ++onSlope;
    }
    // Two ends and the ridge on each face.
    EXPECT_EQ(onSlope, 6);
  }
}

TEST(Gable, KeepsAHoleForItsWindow) {
  Job job = demoJob("orchard-house");
  const auto areaWith = [&] {
    const SettingOut out = deriveSettingOut(job);
    const Works works = wallsOf(job, out);
    const Element* lintel = find(works, "wall E-F/outer leaf/lintel over Loft light");
    return find(works, "wall E-F/outer leaf/gable")->quantity.amount +
           (lintel != nullptr ? volume(lintel->solid) / 0.1025 : 0);
  };
  const double with = areaWith();
  std::erase_if(job.openings, [](const Opening& o) { return o.name == "Loft light"; });
  EXPECT_NEAR(areaWith() - with, 0.685 * 0.9, 1e-5);
}

TEST(Lintels, BearOneHundredAndFiftyAtEachEnd) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  const Element* lintel = find(works, "wall A-B/outer leaf/lintel over Living room window");
  ASSERT_NE(lintel, nullptr);
  const Bounds b = bounds(lintel->solid);
  // Check M20: opening 1810 and 150 mm bearing each end.
  EXPECT_NEAR(b.high.x - b.low.x, 1.810 + 0.300, 1e-9);
  EXPECT_NEAR(b.low.x, 1.340 - 0.150, 1e-9);
  EXPECT_NEAR(b.low.z, 2.100, 1e-9);
  EXPECT_NEAR(b.high.z, 2.250, 1e-9);
  EXPECT_EQ(lintel->placed.stage.kind, StageKind::Lintels);
}

TEST(Lintels, AtAHeightOfTheirOwnRiseWithTheirLift) {
  Job job = demoJob("orchard-house");
  for (Opening& o : job.openings) {
    if (o.name == "Side window") o.head = 1.950;
  }
  const Works works = wallsOf(job, deriveSettingOut(job));
  const Element* lintel = find(works, "wall D-E/inner leaf/lintel over Side window");
  ASSERT_NE(lintel, nullptr);
  EXPECT_EQ(lintel->placed.stage, (StageKey{StageKind::RunIn, 0, 2}));
  // Nothing of a corner stands over it before it is laid.
  for (const Element& e : works.elements) {
    if (e.wall != "D-E" || e.placed.stage.kind != StageKind::RaiseCorners) continue;
    if (e.placed.stage.lift != 2 || e.placed.stage.storey != 0) continue;
    const Bounds corner = bounds(e.solid), held = bounds(lintel->solid);
    EXPECT_TRUE(corner.high.y < held.low.y + 1e-6 || corner.low.y > held.high.y - 1e-6) << e.id;
  }
}

TEST(Lintels, StayUnderTheRaftersAtTheEaves) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  const Element* outer = find(works, "wall A-B/outer leaf/lintel over Bedroom 1 window");
  ASSERT_NE(outer, nullptr);
  EXPECT_NEAR(outer->top, 4.875, 1e-9);
  const Element* inner = find(works, "wall A-B/inner leaf/lintel over Bedroom 1 window");
  ASSERT_NE(inner, nullptr);
  EXPECT_NEAR(inner->top, 4.950, 1e-9);
}

TEST(Lintels, ShareAPierThatIsTooNarrowForTwoBearings) {
  Job job = demoJob("smallest");
  Opening left;
  left.name = "Left";
  left.wall = "A-B";
  left.from = "A";
  left.at = 1.5;
  left.width = 1;
  Opening right = left;
  right.name = "Right";
  right.at = 2.7;
  job.openings = {left, right};
  const Works works = wallsOf(job, deriveSettingOut(job));
  const Bounds a = bounds(find(works, "wall A-B/outer leaf/lintel over Left")->solid);
  const Bounds b = bounds(find(works, "wall A-B/outer leaf/lintel over Right")->solid);
  EXPECT_NEAR(a.high.x, 2.6, 1e-9);
  EXPECT_NEAR(b.low.x, 2.6, 1e-9);
}

TEST(CavityFill, StopsAQuarterMetreLessOneUnderTheDampCourseAndUnderTheGround) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  // Check M16: 225 mm at least below the damp course. The ground at E-F is higher than that.
  const Element* north = find(works, "wall E-F/cavity fill");
  ASSERT_NE(north, nullptr);
  EXPECT_NEAR(north->top, -0.225, 1e-9);
  // Along A-B the ground falls to -0.860 at B.
  const Element* south = find(works, "wall A-B/cavity fill");
  ASSERT_NE(south, nullptr);
  EXPECT_NEAR(south->top, -0.860, 1e-9);
  EXPECT_NEAR(south->underside, -1.200, 1e-9);
  EXPECT_NEAR(bounds(south->solid).high.x, 6.265, 1e-6);    // none over the cellar wall
  EXPECT_EQ(find(works, "wall B-C/cavity fill"), nullptr);  // on the cellar wall, above the ground
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
  const double run = find(works, "wall A-B/outer leaf/storey 0/lift 1/run")->quantity.amount;
  const double a = find(works, "wall A-B/outer leaf/storey 0/lift 1/corner A")->quantity.amount;
  const double b = find(works, "wall A-B/outer leaf/storey 0/lift 1/corner B")->quantity.amount;
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
