#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/geometry/check_solid.h"
#include "model/model.h"
#include "model/works/parts.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;

Works rendered(const Job& job) {
  Works works;
  buildRender(job, deriveSettingOut(job), works);
  return works;
}

bool inReveal(const Element& e) { return e.id.find("/reveals of ") != std::string::npos; }

// On the faces of the walls only.
std::vector<Element> faces(const Works& works) {
  std::vector<Element> found;
  for (const Element& e : works.elements)
    if (!inReveal(e)) found.push_back(e);
  return found;
}

// 6.74 x 4.49 m, hipped, render 20, one door and one window.
Job plainJob() {
  Job job = test_support::demoJob("smallest");
  job.walls.render = 0.020;
  Opening door, window;
  door.name = "Door";
  door.kind = OpeningKind::Door;
  door.wall = "A-B";
  door.from = "A";
  door.at = 1.125;
  door.width = 1.0225;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "B";
  window.at = 1.125;
  window.width = 1.360;
  job.openings = {door, window};
  return job;
}

TEST(Render, IsNoneWhereTheDrawingGivesNone) {
  Job job = plainJob();
  job.walls.render = 0;
  EXPECT_TRUE(rendered(job).elements.empty());
  EXPECT_FALSE(buildModel(job).programme.indexOf({StageKind::Render}));
}

TEST(Render, LiesOutsideTheOutlineFromTheDampCourseToTheTopOfTheOuterLeaf) {
  const Job job = plainJob();
  const SettingOut out = deriveSettingOut(job);
  const Works works = rendered(job);
  ASSERT_EQ(faces(works).size(), 4u);
  for (const Element& e : faces(works)) {
    EXPECT_EQ(e.kind, ElementKind::Render);
    EXPECT_NEAR(e.underside, out.levels.dampCourse, 1e-9) << e.id;
    EXPECT_LE(e.top, out.levels.outerLeafTop + 1e-9) << e.id;
    EXPECT_GT(e.top, out.levels.outerLeafTop - 0.020 * out.tanPitch - 1e-9) << e.id;
    const WallLine& wall = out.walls[*out.wallNamed(e.wall)];
    for (const Vec3& p : e.solid.points) {
      const double outside = glm::dot(Vec2(p) - wall.start, wall.outward);
      EXPECT_TRUE(std::abs(outside) < 1e-9 || std::abs(outside - 0.020) < 1e-9) << outside;
    }
  }
}

// Worked by hand: the mean of both faces' lengths, less the door and the window.
TEST(Render, IsMeasuredWithItsOpeningsTakenOut) {
  const auto walls = faces(rendered(plainJob()));
  const double high = walls[0].top - walls[0].underside;
  EXPECT_EQ(walls[0].quantity.unit, Unit::SquareMetre);
  EXPECT_NEAR(walls[0].quantity.amount, (6.740 + 0.020) * high - 1.0225 * 2.100 - 1.360 * 1.050,
              1e-6);
  EXPECT_NEAR(walls[1].quantity.amount, (4.490 + 0.020) * high, 1e-6);
}

// Worked by hand: 20 thick round jambs and head, from the render's face back to the frame, 20 + 30;
// the window's jambs stand on the sill, 40 high.
TEST(Render, ReturnsIntoTheRevealsToTheFrames) {
  const Works works = rendered(plainJob());
  std::vector<Element> reveals;
  for (const Element& e : works.elements)
    if (inReveal(e)) reveals.push_back(e);
  ASSERT_EQ(reveals.size(), 2u);
  for (const Element& e : reveals) {
    const Bounds b = bounds(e.solid);
    EXPECT_NEAR(b.low.y, -0.020, 1e-9) << e.id;
    EXPECT_NEAR(b.high.y, 0.030, 1e-9) << e.id;
    EXPECT_NEAR(b.high.z, 2.100, 1e-9) << e.id;
    EXPECT_EQ(solidFault(e.solid), "") << e.id;
  }
  const double door = 2 * 0.020 * 2.100 + (1.0225 - 0.040) * 0.020;
  const double window = 2 * 0.020 * (1.050 - 0.040) + (1.360 - 0.040) * 0.020;
  EXPECT_NEAR(volume(reveals[0].solid), door * 0.050, 1e-9);
  EXPECT_NEAR(volume(reveals[1].solid), window * 0.050, 1e-9);
  EXPECT_NEAR(reveals[1].quantity.amount, window * 0.050 / 0.020, 1e-9);
  EXPECT_NEAR(bounds(reveals[1].solid).low.z, 1.050 + 0.040, 1e-9);
}

TEST(Render, IsDoneAfterTheFramesAndBeforeTheScaffoldIsStruck) {
  Job job = plainJob();
  const Programme programme = buildModel(job).programme;
  const auto at = [&](StageKind kind) { return programme.indexOf({kind}).value(); };
  EXPECT_LT(at(StageKind::WindowsAndDoors), at(StageKind::Render));
  EXPECT_LT(at(StageKind::Render), at(StageKind::StrikeScaffold));
  const Stage& stage = programme.stages[at(StageKind::Render)];
  EXPECT_EQ(stage.name, "Render the walls");
  EXPECT_NE(stage.what.find("to 20"), std::string::npos) << stage.what;
  const auto& before = programme.stages[at(StageKind::StrikeScaffold)].after;
  EXPECT_NE(std::find(before.begin(), before.end(), at(StageKind::Render)), before.end());
}

TEST(Render, GoesUpTheSlopeOfAGable) {
  Job job = plainJob();
  job.roof.edges = {{"B-C", EavesKind::Gable}};
  const SettingOut out = deriveSettingOut(job);
  const Works works = rendered(job);
  const Element gable = faces(works)[1];
  EXPECT_GT(gable.top, out.levels.outerLeafTop + 1);
  for (const Vec3& p : gable.solid.points) EXPECT_LE(p.z, out.rafterUndersideAt(Vec2(p)) + 1e-6);
}

TEST(Render, StaysOffAWallBehindABuildingThatItJoinsAndGoesOnOverItsRoof) {
  Job job = plainJob();
  StandingBuilding low;
  low.name = "Old wash house";
  low.outline = {{6.740, 1}, {9, 1}, {9, 3}, {6.740, 3}};
  low.height = 1.5;
  job.site.buildings = {low};
  const SettingOut out = deriveSettingOut(job);
  const Works works = rendered(job);
  const double roof = levelsAlong(out.terrain, low.outline).low + low.height;
  int over = 0;
  for (const Element& e : works.elements) {
    if (e.wall != "B-C") continue;
    const Bounds b = bounds(e.solid);
    const bool beside = b.low.y > 0.9 && b.high.y < 3.1;
    if (beside) {
      ++over;
      EXPECT_GE(e.underside, roof);
      EXPECT_NEAR(b.low.y, 1, 1e-6);
      EXPECT_NEAR(b.high.y, 3, 1e-6);
    } else {
      EXPECT_TRUE(b.high.y < 1 + 1e-6 || b.low.y > 3 - 1e-6) << e.id;
    }
  }
  EXPECT_EQ(over, 1);
}

TEST(Render, LeavesTheScaffoldClearOfIt) {
  Job job = plainJob();
  job.walls.render = 0.100;
  const Model model = buildModel(job);
  int boards = 0;
  for (const Element& e : model.works.elements) {
    if (e.kind != ElementKind::Scaffold) continue;
    ++boards;
    for (const Vec3& p : e.solid.points)
      EXPECT_FALSE(contains(model.settingOut.ring(-0.100), Vec2(p), -1e-6)) << e.id;
  }
  EXPECT_GT(boards, 0);
}

TEST(Render, SillsStandOutInFrontOfIt) {
  const Job job = plainJob();
  Works works;
  buildWindowsAndDoors(job, deriveSettingOut(job), works);
  const auto sill = std::find_if(works.elements.begin(), works.elements.end(),
                                 [](const Element& e) { return e.id.ends_with("/sill"); });
  ASSERT_NE(sill, works.elements.end());
  EXPECT_NEAR(bounds(sill->solid).low.y, -0.060, 1e-9);
}

TEST(Render, OfEveryJobIsClosedAndOutOfTheGround) {
  int seen = 0;
  for (unsigned seed = 0; seed < 120; ++seed) {
    Job job = test_support::seededJob(seed);
    if (job.walls.render == 0) job.walls.render = 0.025;
    const SettingOut out = deriveSettingOut(job);
    Works works;
    buildRender(job, out, works);
    for (const Element& e : works.elements) {
      ++seen;
      EXPECT_EQ(solidFault(e.solid), "") << seed << " " << e.id;
      for (const Vec3& p : e.solid.points)
        EXPECT_GE(p.z, out.terrain.levelAt(Vec2(p)) - 1e-6) << seed << " " << e.id;
    }
  }
  EXPECT_GT(seen, 400);
}

}  // namespace
