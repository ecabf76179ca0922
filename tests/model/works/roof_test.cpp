// Plates, rafters and covering together with the walls that carry them.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include <glm/geometric.hpp>

#include "model/geometry/check_solid.h"
#include "tests/support/random_job.h"
#include "tests/support/roofed_job.h"
#include "tests/support/solid_referee.h"

namespace model {
namespace {

using test::ofKind;
using test::roofed;
using test::RoofedJob;

const Outline kOblong{{0, 0}, {10, 0}, {10, 6}, {0, 6}};
const Outline kL{{0, 0}, {11.24, 0}, {11.24, 6.065}, {5.39, 6.065}, {5.39, 9.665}, {0, 9.665}};

std::string describe(const RoofedJob& made) {
  std::string text = "pitch " + std::to_string(made.job.roof.pitch) + " ";
  for (const Vec2& p : made.job.outline)
    text += "{" + std::to_string(p.x) + ", " + std::to_string(p.y) + "}, ";
  for (const RoofEdge& edge : made.job.roof.edges) text += " gable " + edge.wall;
  return text;
}

void expectSound(const RoofedJob& made) {
  SCOPED_TRACE(describe(made));
  std::set<std::string> ids;
  std::vector<const Solid*> solids;
  for (const Element& element : made.works.elements) {
    EXPECT_EQ(solidFault(element.solid), "") << element.name;
    EXPECT_TRUE(ids.insert(element.id).second) << element.id << " twice";
    const double v = volume(element.solid);
    EXPECT_NEAR(test::slicedVolume(element.solid), v, 1e-6 * (1 + v)) << element.name;
    solids.push_back(&element.solid);
  }
  for (const auto& [a, b, common] : test::overlaps(solids))
    ADD_FAILURE() << made.works.elements[a].name << " and " << made.works.elements[b].name
                  << " share " << common * 1e9 << " mm3";
}

void expectInsideEaves(const RoofedJob& made) {
  SCOPED_TRACE(describe(made));
  for (const Element& element : made.works.elements) {
    if (element.kind != ElementKind::Rafter && element.kind != ElementKind::RoofCovering) continue;
    for (const Vec3& p : element.solid.points)
      EXPECT_TRUE(contains(made.settingOut.eavesOutline, Vec2{p.x, p.y}, 1e-6)) << element.name;
  }
}

TEST(Roof, IsClosedAndClearOfTheWallsOnTheDemoPlan) { expectSound(roofed(kL, 40, {"E-F"})); }

TEST(Roof, IsClosedAndClearOfTheWallsOnRandomPlans) {
  for (const RoofedJob& made : test::roofedAtRandom(1, 40)) {
    expectSound(made);
    if (HasFailure()) break;
  }
}

// The same over jobs of every kind, with the walls as the job builds them.
TEST(Roof, IsClosedAndClearOfTheWallsOnVariedJobs) {
  for (unsigned seed = 0; seed < 40 && !HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    expectSound(test::roofed(test_support::seededJob(seed)));
  }
}

TEST(Roof, KeepsInsideTheEavesOutline) {
  for (const RoofedJob& made : test::roofedAtRandom(2, 30)) {
    expectInsideEaves(made);
    if (HasFailure()) break;
  }
}

TEST(WallPlates, LieOnTheInnerLeafFlushWithItsOuterFace) {
  const RoofedJob made = roofed(kOblong);
  const auto plates = ofKind(made.works, ElementKind::WallPlate);
  ASSERT_EQ(plates.size(), 4u);
  const Bounds b = bounds(plates[0]->solid);
  EXPECT_EQ(plates[0]->id, "wall A-B/wall plate");
  EXPECT_NEAR(b.low.y, 0.1025 + 0.1, 1e-12);
  EXPECT_NEAR(b.high.y, 0.1025 + 0.1 + 0.1, 1e-12);
  EXPECT_EQ(b.low.z, made.settingOut.levels.wallTop);
  EXPECT_EQ(b.high.z, made.settingOut.levels.plateTop);
  EXPECT_NEAR(plates[0]->quantity.amount, 10 - 2 * 0.2025, 1e-12);
}

TEST(WallPlates, LieOnlyWhereRaftersBear) {
  const RoofedJob made = roofed(kOblong, 40, {"B-C", "D-A"});
  const auto plates = ofKind(made.works, ElementKind::WallPlate);
  ASSERT_EQ(plates.size(), 2u);
  EXPECT_EQ(plates[0]->wall, "A-B");
  EXPECT_EQ(plates[1]->wall, "C-D");
}

TEST(WallPlates, MeetTheRaftersWhereTheSeatEnds) {
  const RoofedJob made = roofed(kOblong, 35);
  const double seat = 0.0375 / std::sin(35 * M_PI / 180);  // a quarter of 150, square to the slope
  EXPECT_NEAR(made.settingOut.rafterSeat, seat, 1e-12);
  for (const Element* plate : ofKind(made.works, ElementKind::WallPlate)) {
    const WallLine& wall = made.settingOut.walls[*made.settingOut.wallNamed(plate->wall)];
    EXPECT_NEAR(made.settingOut.rafterUndersideAt(wall.at(wall.length / 2, 0.2025 + seat)),
                made.settingOut.levels.plateTop, 1e-9);
  }
}

// The area of the timber's faces that look down at the plate's top, and of those that look square
// at its outer edge.
struct Bearing {
  double seat = 0, plumb = 0;
};

Bearing bearingOf(const Solid& solid, const WallLine& wall, double edge, double plateTop) {
  Bearing bearing;
  for (const auto& [i, j, k] : solid.triangles) {
    const Vec3 &a = solid.points[i], &b = solid.points[j], &c = solid.points[k];
    const Vec3 normal = glm::cross(b - a, c - a) * 0.5;
    const auto at = [&](const Vec3& p) { return -glm::dot(Vec2(p) - wall.start, wall.outward); };
    const auto level = [&](const Vec3& p) { return std::fabs(p.z - plateTop) < 1e-7; };
    const auto onEdge = [&](const Vec3& p) { return std::fabs(at(p) - edge) < 1e-6; };
    if (level(a) && level(b) && level(c) && normal.z < 0) bearing.seat -= normal.z;
    if (onEdge(a) && onEdge(b) && onEdge(c)) bearing.plumb -= glm::dot(Vec2(normal), wall.outward);
  }
  return bearing;
}

TEST(Rafters, SitOnThePlateWithASeatAndAPlumbCut) {
  for (const double pitch : {15.0, 22.5, 40.0, 55.0}) {
    const RoofedJob made = roofed(kOblong, pitch, {"B-C", "D-A"});
    const double seat = std::min(0.100, 0.0375 / std::sin(pitch * M_PI / 180));
    int seated = 0;
    for (const Element* rafter : ofKind(made.works, ElementKind::Rafter)) {
      if (rafter->wall.empty()) continue;
      const WallLine& wall = made.settingOut.walls[*made.settingOut.wallNamed(rafter->wall)];
      const Bounds b = bounds(rafter->solid);
      const bool outside = b.low.x < 0.15 || b.high.x > 10 - 0.15;  // over the gables' outer leaves
      const Bearing bearing =
          bearingOf(rafter->solid, wall, 0.2025, made.settingOut.levels.plateTop);
      EXPECT_NEAR(bearing.seat, outside ? 0 : seat * 0.047, 1e-9) << pitch << rafter->id;
      EXPECT_NEAR(bearing.plumb, outside ? 0 : seat * made.settingOut.tanPitch * 0.047, 1e-9);
      seated += !outside;
    }
    EXPECT_GT(seated, 40);
  }
}

// Hip boards sit on two plates at once, and valley boards too.
TEST(Rafters, SoDoTheBoardsOverTheCorners) {
  const RoofedJob made = roofed(kL);
  int boards = 0;
  for (const Element* board : ofKind(made.works, ElementKind::Rafter)) {
    if (!board->wall.empty() || board->name.starts_with("Ridge")) continue;
    if (board->underside > made.settingOut.levels.plateTop) continue;
    double seat = 0;
    for (const WallLine& wall : made.settingOut.walls) {
      seat = std::max(seat,
                      bearingOf(board->solid, wall, 0.2025, made.settingOut.levels.plateTop).seat);
    }
    EXPECT_GT(seat, 0.058 * 0.047) << board->name;
    ++boards;
  }
  EXPECT_GE(boards, 6);
}

TEST(Rafters, StandAtTheSpacingAndPairAtTheRidge) {
  const RoofedJob made = roofed(kOblong, 40, {"B-C", "D-A"});
  std::set<long> south, north;
  for (const Element* rafter : ofKind(made.works, ElementKind::Rafter)) {
    const Bounds b = bounds(rafter->solid);
    const long middle = std::lround((b.low.x + b.high.x) * 500);  // mm
    if (rafter->wall == "A-B") south.insert(middle);
    if (rafter->wall == "C-D") north.insert(middle);
  }
  EXPECT_EQ(south, north);
  ASSERT_GE(south.size(), 25u);
  for (auto at = std::next(south.begin()); at != south.end(); ++at)
    EXPECT_LE(*at - *std::prev(at), 400);
}

TEST(Rafters, AreOfTheirDepthAndWidth) {
  const RoofedJob made = roofed(kOblong, 40, {"B-C", "D-A"});
  const double seat = 0.0375 / std::sin(40 * M_PI / 180);
  const double notch = seat * seat * std::tan(40 * M_PI / 180) / 2 * 0.047;
  for (const Element* rafter : ofKind(made.works, ElementKind::Rafter)) {
    if (rafter->wall.empty()) continue;
    const Bounds b = bounds(rafter->solid);
    const bool outside = b.low.x < 0.15 || b.high.x > 10 - 0.15;
    EXPECT_NEAR(volume(rafter->solid),
                rafter->quantity.amount * 0.150 * 0.047 - (outside ? 0 : notch), 1e-9);
  }
}

TEST(Rafters, AreCutToBoardsAlongHipsValleysAndRidges) {
  const RoofedJob made = roofed(kL);
  std::map<std::string, int> boards;
  for (const Element* element : ofKind(made.works, ElementKind::Rafter))
    if (element->wall.empty()) ++boards[element->name.substr(0, element->name.find(' '))];
  EXPECT_EQ(boards["Valley"], 1);
  EXPECT_GE(boards["Hip"], 5);
  EXPECT_GE(boards["Ridge"], 2);
}

TEST(Rafters, AppearOneAfterAnotherBoardsFirst) {
  const RoofedJob made = roofed(kL);
  double last = -1;
  for (const Element* element : ofKind(made.works, ElementKind::Rafter)) {
    EXPECT_EQ(element->placed.stage.kind, StageKind::Rafters);
    EXPECT_GT(element->placed.begin, last);
    last = element->placed.begin;
  }
  EXPECT_LT(last, 1);
}

TEST(RoofCovering, IsOfTrueSlopeAreaAndThickness) {
  const RoofedJob made = roofed(kL, 40, {"E-F"});
  double slopes = 0, volumes = 0;
  for (const Element* covering : ofKind(made.works, ElementKind::RoofCovering)) {
    slopes += covering->quantity.amount;
    volumes += volume(covering->solid);
  }
  const double cosine = std::cos(40 * 0.017453292519943295);
  EXPECT_NEAR(slopes, signedArea(made.settingOut.eavesOutline) / cosine, 1e-6);
  EXPECT_NEAR(volumes, slopes * 0.060, 1e-6);
}

TEST(RoofCovering, ReachesTheScheduledEavesAndRidge) {
  const RoofedJob made = roofed(kL, 40, {"E-F"});
  double low = 1e9, high = -1e9;
  for (const Element* covering : ofKind(made.works, ElementKind::RoofCovering)) {
    const Bounds b = bounds(covering->solid);
    high = std::max(high, b.high.z);
    low = std::min(low, b.low.z);
  }
  const Levels& levels = made.settingOut.levels;
  EXPECT_NEAR(high, levels.ridge, 1e-9);
  EXPECT_NEAR(low, levels.eaves - 0.060 / std::cos(40 * 0.017453292519943295), 1e-9);
}

TEST(RoofCovering, GrowsFromTheEavesToTheRidge) {
  const RoofedJob made = roofed(kOblong);
  const auto coverings = ofKind(made.works, ElementKind::RoofCovering);
  ASSERT_EQ(coverings.size(), 4u);
  for (const Element* covering : coverings) {
    const WallLine& wall = made.settingOut.walls[*made.settingOut.wallNamed(covering->wall)];
    const auto at = [&](double inward) {
      const Vec2 p = wall.at(wall.length / 2, inward);
      return fractionAt(covering->placed, Vec3{p.x, p.y, made.settingOut.rafterUndersideAt(p)});
    };
    EXPECT_NEAR(at(-0.3), 0, 1e-9);
    EXPECT_NEAR(at(-0.3 + 3.3 / 2), 0.5, 1e-9);
    EXPECT_NEAR(at(3), 1, 1e-9);
  }
}

}  // namespace
}  // namespace model
