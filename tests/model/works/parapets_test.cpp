// Gables that go up past the roof.
#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "model/settingout/gable_edges.h"
#include "model/walls/parapet_line.h"
#include "model/works/build_works.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

constexpr double kPi = 3.14159265358979323846;

// 6.74 by 4.49, ridge along the length, with a parapet on the short wall B-C.
Job gabled(double pitch = 40) {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  job.roof.pitch = pitch;
  job.roof.edges = {{"B-C", EavesKind::Gable, 0.225, 0.075}, {"D-A", EavesKind::Gable, 0, 0.075}};
  return job;
}

const Element& named(const Works& works, const std::string& id) {
  for (const Element& e : works.elements)
    if (e.id == id) return e;
  ADD_FAILURE() << "no " << id;
  return works.elements.front();
}

TEST(Parapets, StandOverTheCoveringByWhatTheDrawingSaysSquareToTheSlope) {
  const Job job = gabled();
  const SettingOut out = deriveSettingOut(job);
  const std::vector<Vec2> top = parapetLine(job, out, 1);
  ASSERT_EQ(top.size(), 5u);
  // The covering's top at the ridge is scheduled; 225 square to a slope of 40 degrees is 293.7
  // plumb.
  EXPECT_NEAR(top[2].x, 4.49 / 2, 1e-9);
  EXPECT_NEAR(top[2].y, out.levels.ridge + 0.225 / std::cos(40 * kPi / 180), 1e-9);
  EXPECT_NEAR((top[2].y - top[1].y) / (top[2].x - top[1].x), out.tanPitch, 1e-9);
  EXPECT_NEAR(top[0].y, top[1].y, 1e-9);
  EXPECT_NEAR(top[1].x, 0.3025 + 0.050, 1e-9);
}

// The roof ends at the inner face of the parapet and goes past the other gable to its verge.
TEST(Parapets, EndTheRoofAtTheirInnerFace) {
  const Job job = gabled();
  const Works works = buildWorks(job, deriveSettingOut(job));
  for (const Element& e : works.elements) {
    const Bounds b = bounds(e.solid);
    if (e.kind == ElementKind::RoofCovering) {
      EXPECT_NEAR(b.high.x, 6.74 - 0.3025, 1e-6);
      EXPECT_NEAR(b.low.x, -0.150, 1e-6);
    }
    if (e.kind == ElementKind::Rafter || e.kind == ElementKind::FasciaBoard) {
      EXPECT_LT(b.high.x, 6.74 - 0.3025 + 1e-6) << e.id;
    }
    if (e.kind == ElementKind::BargeBoard) {
      EXPECT_EQ(e.wall, "D-A");
    }
  }
}

TEST(Parapets, HaveCopingsOfTheirThicknessThatMeetPlumbAtTheApex) {
  const Job job = gabled();
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  const std::vector<Vec2> top = parapetLine(job, out, 1);
  const std::string id = "wall B-C/parapet/";
  const double plumb = 0.075 / std::cos(40 * kPi / 180);
  for (const char* side : {"coping 1", "coping 2"}) {
    const Element& e = named(works, id + side);
    const Bounds b = bounds(e.solid);
    EXPECT_NEAR(b.high.x, 6.74 + 0.040, 1e-9);
    EXPECT_NEAR(b.low.x, 6.74 - 0.3025 - 0.040, 1e-9);
    EXPECT_NEAR(b.high.z, top[2].y + 0.002 + plumb, 1e-6);
    EXPECT_NEAR(b.low.z, top[1].y + 0.002, 1e-6);
    const double slope = (4.49 / 2 - 0.3525) / std::cos(40 * kPi / 180);
    EXPECT_NEAR(e.quantity.amount, slope, 1e-9);
    // 75 square to the slope, 382.5 wide, less the joints of 10 between its stones of 600 at most.
    const double stones = std::ceil((slope + 0.010) / 0.610 - 1e-6);
    EXPECT_NEAR(volume(e.solid), 0.075 * 0.3825 * (slope - (stones - 1) * 0.010), 1e-6);
  }
  EXPECT_NEAR(bounds(named(works, id + "coping 1").solid).high.y, 4.49 / 2, 1e-6);
  EXPECT_NEAR(bounds(named(works, id + "coping 2").solid).low.y, 4.49 / 2, 1e-6);
}

// A level block at each foot, as high as the coping is plumb, against which that ends.
TEST(Parapets, HaveAKneelerAtEachFoot) {
  const Job job = gabled();
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  const std::vector<Vec2> top = parapetLine(job, out, 1);
  const Bounds b = bounds(named(works, "wall B-C/parapet/kneeler B").solid);
  EXPECT_NEAR(b.low.y, -0.040, 1e-9);
  EXPECT_NEAR(b.high.y, 0.3525, 1e-9);
  EXPECT_NEAR(b.low.z, top[0].y + 0.002, 1e-9);
  EXPECT_NEAR(b.high.z - b.low.z, 0.075 / std::cos(40 * kPi / 180), 1e-9);
  named(works, "wall B-C/parapet/kneeler C");
}

// Between the top of the next wall's outer leaf and the kneeler there is brickwork over the whole
// thickness, and its bricks share no place with the gable's own.
TEST(Parapets, HaveEndsThatReturnInBond) {
  const Job job = gabled();
  const SettingOut out = deriveSettingOut(job);
  const Works works = buildWorks(job, out);
  for (const char* corner : {"B", "C"}) {
    const Element& end = named(works, std::string("wall B-C/parapet/end ") + corner);
    EXPECT_NEAR(end.underside, out.levels.outerLeafTop, 1e-9);
    EXPECT_NEAR(end.top, parapetLine(job, out, 1)[0].y, 1e-9);
    ASSERT_GT(end.unitCount, 0u);
    size_t through = 0, behind = 0;
    for (size_t i = end.firstUnit; i < end.firstUnit + end.unitCount; ++i) {
      const MasonryUnit& u = works.units[i];
      const double near = std::min(std::fabs(u.s0), std::fabs(u.s1));
      through += near < 1e-6 ? 1 : 0;
      behind += std::fabs(near - 0.1125) < 1e-6 ? 1 : 0;
    }
    EXPECT_GT(through, 2u);
    EXPECT_GT(behind, 2u);
  }
}

// So that what must hold for every job is tried with them.
TEST(Parapets, AreInDrawnJobsAsCorbelsAndDampCoursesOfGardenWallsAre) {
  int parapets = 0, corbels = 0, sheets = 0;
  for (unsigned seed = 1; seed <= 300; ++seed) {
    const Job job = test_support::seededJob(seed);
    for (const RoofEdge& edge : job.roof.edges) parapets += edge.parapet > 0 ? 1 : 0;
    for (const GardenWall& wall : job.gardenWalls) {
      corbels += wall.corbelCourses > 0 ? 1 : 0;
      sheets += wall.dampCourse ? 1 : 0;
    }
  }
  EXPECT_GT(parapets, 20);
  EXPECT_GT(corbels, 20);
  EXPECT_GT(sheets, 20);
}

TEST(Parapets, ComeAfterTheirBrickworkFromTheFootUp) {
  const Works works = buildWorks(gabled(), deriveSettingOut(gabled()));
  double brickworkUp = 0, sheet = 0, kneeler = 0, coping = 0;
  for (const Element& e : works.elements) {
    if (e.wall != "B-C" || e.placed.stage.kind != StageKind::Gables) continue;
    if (e.kind == ElementKind::OuterLeaf) brickworkUp = e.placed.end;
    if (e.id.ends_with("damp course")) sheet = e.placed.begin;
    if (e.id.find("kneeler") != std::string::npos) kneeler = e.placed.begin;
    if (e.id.find("coping") != std::string::npos) coping = e.placed.begin;
  }
  EXPECT_GT(brickworkUp, 0);
  EXPECT_LT(brickworkUp, sheet);
  EXPECT_LT(sheet, kneeler);
  EXPECT_LT(kneeler, coping);
}

}  // namespace
}  // namespace model
