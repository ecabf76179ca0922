// Digging, concrete and setting out against published figures.
#include <gtest/gtest.h>

#include <glm/geometric.hpp>

#include "model/job/read_job.h"
#include "model/takeoff/tally.h"
#include "tests/published/rectangle_job.h"

namespace published {
namespace {

using namespace model;

// A cellar under the whole of a rectangle, dug from level ground at 0 to a bottom of x by y at
// `depth`, its sides leaning out by `run` for each 1 of rise. Nothing else is dug.
Job batteredPit(double x, double y, double depth, double run) {
  constexpr double kSpace = 0.1;
  Job job = rectangleJob(x - 2 * kSpace, y - 2 * kSpace);
  job.site.spots = {{{0, 0}, 0}};
  job.site.boundary = {{-60, -60}, {x + 60, -60}, {x + 60, y + 60}, {-60, y + 60}};
  job.storeys = {{"Ground floor", 0.3}};
  job.walls = {};
  job.walls.outerLeaf = 0.05;
  job.walls.cavity = 0.01;
  job.walls.insulation = 0;
  job.walls.innerLeaf = 0.05;
  job.ground.topsoil = 0;
  job.ground.workingSpace = kSpace;
  job.ground.batter = std::atan2(1, run) * 180 / std::acos(-1.0);
  Cellar cellar;
  cellar.toe = 0;
  cellar.wall = 0.2;
  cellar.blinding = 0;
  cellar.membrane = 0;
  cellar.floor = -depth + cellar.makeUp + cellar.slab;
  job.cellar = cellar;
  return job;
}

double dugVolume(const Job& job) {
  return volumeWhere(buildWorks(job, deriveSettingOut(job)), [](const Element& e) {
    return e.kind == ElementKind::Spoil && e.removed.has_value();
  });
}

// civinnovate.com, "Computation of land": a pit 50 x 40 m at the top, 4 m deep, sides 2
// horizontal to 1 vertical, level ground: 5461.33 m3 by the prismoidal rule.
TEST(PublishedGround, BatteredRectangularPit) {
  EXPECT_NEAR(dugVolume(batteredPit(34, 24, 4, 2)), 5461.33, 0.01);
}

// Moscow Mathematical Papyrus, problem 14: a square frustum, base 4, top 2, height 6: 56.
TEST(PublishedGround, FrustumOfTheMoscowPapyrus) {
  // Plans are cut on a grid of a micrometre.
  EXPECT_NEAR(dugVolume(batteredPit(2, 2, 6, 1.0 / 6)), 56, 1e-4);
}

// Schaufelberger and Migliaccio, Construction Equipment Management, 2nd edition, chapter 5,
// problem 3: bank 2800, loose 2295 lb a cubic yard, a swell of 22 %; (3000 - 950) bank cubic yards
// in trucks of 30 loose: 84 loads.
TEST(PublishedGround, SwellAndTruckLoads) {
  Job job = batteredPit(10, 8, 2, 1);
  job.ground.bulking = 2800.0 / 2295;
  const Model m = buildModel(job);
  EXPECT_NEAR(amountOf(m, "Spoil, loose in the heap") / amountOf(m, "Dig, cellar"), 1.22, 0.005);
  EXPECT_EQ(orderOf((3000 - 950) * job.ground.bulking, 0, 30) / 30, 84);
}

// A building of 20 x 32 ft with 8 in walls on level ground, footings 24 x 12 in under them.
Job navyBuilding() {
  Job job = rectangleJob(32 * kFoot, 20 * kFoot);
  job.walls.outerLeaf = 3.5 * kInch;
  job.walls.cavity = 1 * kInch;
  job.walls.insulation = 0;
  job.walls.innerLeaf = 3.5 * kInch;
  job.foundations.width = 24 * kInch;
  job.foundations.thickness = 12 * kInch;
  job.groundFloor.slab = 4 * kInch;
  return job;
}

// NAVEDTRA 14070, Engineering Aid, Fig. 5-2 example: the footing is 33.33 and 17.33 ft of 2 x 1
// ft, two of each, so that corners are counted once: 202.64 ft3 from the rounded lengths.
TEST(PublishedGround, FootingOfTheNavysExample) {
  const Model m = buildModel(navyBuilding());
  const double printed = 133.32 + 69.32;
  EXPECT_NEAR(volumeOf(m.works, ElementKind::Foundation) / kCubicFoot, printed, 0.05);
  EXPECT_NEAR(volumeOf(m.works, ElementKind::Foundation) / kCubicFoot,
              2 * 2 * (33 + 1.0 / 3 + 17 + 1.0 / 3), 1e-6);
}

// The same example: the slab inside the walls is 18.67 x 30.67 x 0.33 ft, 188.96 ft3; with 4 in
// for 0.33 ft, 190.87.
TEST(PublishedGround, SlabOfTheNavysExample) {
  const Model m = buildModel(navyBuilding());
  const double slab = volumeOf(m.works, ElementKind::GroundSlab) / kCubicFoot;
  EXPECT_NEAR(slab * 0.33 / (4.0 / 12), 188.96, 0.06);  // lengths printed to 0.01 ft
}

// The same example: 10 % is added to order.
TEST(PublishedGround, AllowanceOnTheNavysConcrete) {
  const Model m = buildModel(navyBuilding());
  for (const TakeoffRow& row : m.takeoff.rows) {
    if (row.item == "Concrete, foundations") {
      EXPECT_NEAR(row.waste, 0.10, 1e-12);
      EXPECT_GE(row.order, row.amount * 1.10 - 1e-9);
      EXPECT_LT(row.order, row.amount * 1.10 + 0.25);
      return;
    }
  }
  FAIL() << "no foundations in the takeoff";
}

// The walls of the Navy's building, 2 ft of concrete 8 in thick, as a cellar's.
Job navyWalls() {
  Job job = navyBuilding();
  Cellar cellar;
  cellar.wall = 8 * kInch;
  job.cellar = cellar;
  const Levels levels = deriveSettingOut(job).levels;
  job.cellar->floor = levels.slabUnderside - 2 * kFoot + cellar.makeUp;
  return job;
}

// The same example: walls of 32.00 and 18.67 ft, 0.67 x 2 ft, two of each: 85.76 and 50.04 ft3.
TEST(PublishedGround, FoundationWallOfTheNavysExample) {
  const double walls =
      volumeOf(buildModel(navyWalls()).works, ElementKind::CellarWall) / kCubicFoot;
  EXPECT_NEAR(walls * 0.67 / (8.0 / 12), 85.76 + 50.04, 0.03);  // 8 in printed as 0.67 ft
}

// The whole of it: 527.40 ft3 from rounded lengths, 580.14 with 10 %, 21.49 yd3; from exact inches
// 528.59 ft3, and 21.54 yd3 with its allowance.
TEST(PublishedGround, AllTheConcreteOfTheNavysExample) {
  const Model building = buildModel(navyBuilding());
  const double all = volumeOf(buildModel(navyWalls()).works, ElementKind::CellarWall) +
                     volumeOf(building.works, ElementKind::Foundation) +
                     volumeOf(building.works, ElementKind::GroundSlab);
  EXPECT_NEAR(all / kCubicFoot, 528.59, 0.005);
  EXPECT_NEAR(all / kCubicFoot, 527.40, 1.5);
  double allowance = 0;
  for (const TakeoffRow& row : building.takeoff.rows)
    if (row.item == "Concrete, foundations") allowance = row.waste;
  EXPECT_NEAR(all * (1 + allowance) / (27 * kCubicFoot), 21.54, 0.005);
}

// Centre-line girth, G = 2 (L + W) - 4 t, times the section of the strip: the estimator's usual
// rule (Peterson and Dagostino, Estimating in Building Construction).
TEST(PublishedGround, StripByItsCentreLineGirth) {
  Job job = rectangleJob(8.990, 6.6275);
  job.walls.cavity = 0.150;
  job.foundations.width = 0.750;
  job.foundations.thickness = 0.200;
  const double girth = 2 * (8.990 + 6.6275) - 4 * 0.3525;
  EXPECT_NEAR(volumeOf(buildModel(job).works, ElementKind::Foundation), girth * 0.75 * 0.2, 1e-6);
}

// How far the higher concrete of wall A-B runs on over the lower, where it steps at 4 m.
double lapAtStep(FoundationKind kind, double step, double thickness) {
  Job job = rectangleJob(8.990, 6.6275);
  job.foundations.kind = kind;
  job.foundations.thickness = thickness;
  job.foundations.width = 0.750;
  job.foundations.top = -1.0;
  job.foundations.steps = {{"A-B", 4.0, std::nullopt, -1.0 - step}};
  const SettingOut out = deriveSettingOut(job);
  double high = -1e9, low = 1e9;
  for (const Element& e : buildWorks(job, out).elements) {
    if (e.kind != ElementKind::Foundation || e.wall != "A-B") continue;
    const Bounds b = bounds(e.solid);
    if (std::abs(e.top - -1.0) < 1e-6) high = std::max(high, b.high.x);
    if (std::abs(e.top - (-1.0 - step)) < 1e-6) low = std::min(low, b.low.x);
  }
  return high - low;
}

// Approved Document A, section 2E2(d): strip foundations overlap at a step by twice the step, the
// thickness or 300, whichever is most.
TEST(PublishedGround, OverlapAtAStepOfAStrip) {
  EXPECT_NEAR(lapAtStep(FoundationKind::Strip, 0.225, 0.225), 0.450, 1e-6);
  EXPECT_NEAR(lapAtStep(FoundationKind::Strip, 0.100, 0.150), 0.300, 1e-6);
  EXPECT_NEAR(lapAtStep(FoundationKind::Strip, 0.150, 0.350), 0.350, 1e-6);
}

// The same: trench fill by twice the step or 1 m.
TEST(PublishedGround, OverlapAtAStepOfTrenchFill) {
  EXPECT_NEAR(lapAtStep(FoundationKind::TrenchFill, 0.300, 0.800), 1.000, 1e-6);
  EXPECT_NEAR(lapAtStep(FoundationKind::TrenchFill, 0.600, 0.800), 1.200, 1e-6);
}

// J. Mahun, Open Access Surveying Library, COGO H: area by coordinates, 140,494 ft2 printed from
// products of 2,190,612 and 1,909,624 (exact 140,493.1 from the coordinates as printed).
TEST(PublishedGround, PolygonAreaByCoordinates) {
  const Polygon parcel{
      {1259.97, 406.31}, {1489.47, 235.12}, {1126.40, 65.81}, {942.04, 317.89}, {1282.54, 675.32}};
  EXPECT_NEAR(std::abs(signedArea(parcel)), 140494, 1);
}

// The same library, Traverse computations G, example 1: 102,935.7 ft2.
TEST(PublishedGround, TraverseAreaByCoordinates) {
  const Polygon traverse{
      {2000.000, 500.000}, {1561.426, 323.614}, {1488.321, 526.996}, {1686.956, 719.336}};
  EXPECT_NEAR(std::abs(signedArea(traverse)), 102935.7, 0.05);
}

// US Army EN0069A, "Squaring building lines": the diagonals of a rectangle are equal, the root of
// the sum of the squares; hansenpolebuildings.com: 97.7548 ft for 50 x 84 ft.
TEST(PublishedGround, DiagonalsOfASetOutRectangle) {
  const SettingOut out = deriveSettingOut(rectangleJob(84 * kFoot, 50 * kFoot));
  const double ac = glm::distance(out.corners[0].at, out.corners[2].at) / kFoot;
  const double bd = glm::distance(out.corners[1].at, out.corners[3].at) / kFoot;
  EXPECT_NEAR(ac, 97.7548, 0.00005);
  EXPECT_NEAR(ac, bd, 1e-9);
}

// Approved Document A, section 2E2(c): a strip is as thick as it projects beyond the wall, and at
// least 150. Width 750 under a 300 wall needs 225.
TEST(PublishedGround, AStripThinnerThanItsProjectionIsNoticed) {
  Job job = rectangleJob(8.990, 6.6275);
  job.walls.outerLeaf = job.walls.innerLeaf = 0.100;
  job.walls.cavity = job.walls.insulation = 0.100;
  job.foundations.width = 0.750;
  const auto noticed = [&](double thickness) {
    job.foundations.thickness = thickness;
    for (const Problem& p : validateJob(job, "a.toml", {})) {
      if (p.what.find("beyond the wall") != std::string::npos) return true;
    }
    return false;
  };
  EXPECT_TRUE(noticed(0.220));
  EXPECT_FALSE(noticed(0.225));
}

}  // namespace
}  // namespace published
