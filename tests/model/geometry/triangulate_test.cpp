#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "model/geometry/check_solid.h"
#include "model/geometry/orientation.h"
#include "model/geometry/solid.h"

namespace model {
namespace {

using Edge = std::pair<unsigned, unsigned>;

// Everything that triangulate() promises, checked from its result alone.
void expectTriangulates(const Region& region) {
  const auto points = regionPoints(region);
  const auto triangles = triangulate(region);
  ASSERT_EQ(triangles.size(), points.size() - 2 + 2 * region.holes.size());
  std::map<Edge, int> sides;
  double sum = 0;
  for (const auto& [a, b, c] : triangles) {
    EXPECT_EQ(orientation(points[a], points[b], points[c]), 1);
    sum += cross(points[b] - points[a], points[c] - points[a]) / 2;
    for (const Edge& e : {Edge{a, b}, Edge{b, c}, Edge{c, a}}) ++sides[e];
  }
  EXPECT_NEAR(sum, area(region), 1e-9 * (1 + sum));
  unsigned first = 0;
  const auto expectRing = [&](const Polygon& ring) {
    for (unsigned k = 0; k < ring.size(); ++k) {
      const Edge e{first + k, first + unsigned((k + 1) % ring.size())};
      EXPECT_EQ(sides[e], 1) << "the outline's own edge " << e.first;
      EXPECT_EQ(sides.count({e.second, e.first}), 0u);
      sides.erase(e);
    }
    first += unsigned(ring.size());
  };
  expectRing(region.outer);
  for (const Polygon& hole : region.holes) expectRing(hole);
  for (const auto& [edge, count] : sides) {
    EXPECT_EQ(count, 1);
    EXPECT_EQ(sides.count({edge.second, edge.first}), 1u);
  }
}

Polygon rectangle(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}
Polygon reversed(Polygon polygon) {
  std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

Polygon turned(const Polygon& polygon, double angle) {
  Polygon result;
  for (const Vec2& p : polygon)
    result.emplace_back(p.x * std::cos(angle) - p.y * std::sin(angle),
                        p.x * std::sin(angle) + p.y * std::cos(angle));
  return result;
}

// A wall as builders draw them: sills and heads on few common levels, so that nearly every corner
// is in line with others; points of its own along the outline; a notched top.
Region randomWall(std::mt19937& random) {
  const auto pick = [&](int low, int high) {
    return std::uniform_int_distribution<int>(low, high)(random);
  };
  Region wall;
  const int columns = pick(1, 8);
  const double height = 2.4, sills[] = {0.6, 0.9, 1.05}, heads[] = {1.5, 2.1, 1.2};
  double x = 0;
  std::vector<double> marks;
  for (int k = 0; k < columns; ++k) {
    x += 0.225 * pick(1, 4);
    const double x1 = x + 0.225 * pick(1, 6);
    if (pick(0, 3) > 0)
      wall.holes.push_back(reversed(rectangle(x, sills[pick(0, 2)], x1, heads[pick(0, 2)])));
    if (pick(0, 4) == 0) wall.holes.push_back(reversed(rectangle(x, 0.15, x1, 0.45)));
    marks.push_back(x);
    if (pick(0, 1)) marks.push_back(x1);
    x = x1;
  }
  const double length = x + 0.225 * pick(1, 4);
  wall.outer.emplace_back(0, 0);
  for (const double m : marks) wall.outer.emplace_back(m, 0);
  wall.outer.emplace_back(length, 0);
  if (pick(0, 1)) wall.outer.emplace_back(length, 1.05);
  wall.outer.emplace_back(length, height);
  for (size_t k = marks.size(); k-- > 0;) wall.outer.emplace_back(marks[k], height);
  wall.outer.emplace_back(0, height);
  if (pick(0, 1)) wall.outer.emplace_back(0, 2.1);
  if (pick(0, 1)) wall.outer.emplace_back(0, 1.05);
  std::shuffle(wall.holes.begin(), wall.holes.end(), random);
  return wall;
}

TEST(Triangulate, CutsTwoTrianglesFromARectangle) {
  EXPECT_EQ(triangulate({rectangle(0, 0, 3, 2), {}}).size(), 2u);
}

TEST(Triangulate, KeepsPointsInLineOnEverySide) {
  expectTriangulates(
      {{{0, 0}, {1, 0}, {2, 0}, {3, 0}, {3, 1}, {3, 2}, {2, 2}, {0, 2}, {0, 1}}, {}});
}

TEST(Triangulate, KeepsPointsInLineOnTheLongSideOfATriangle) {
  expectTriangulates({{{0, 0}, {1, 0}, {2, 0}, {3, 0}, {4, 0}, {2, 3}}, {}});
}

TEST(Triangulate, HandlesOpeningsInLineBothWays) {
  Region wall{rectangle(0, 0, 10, 6), {}};
  for (int i = 0; i < 4; ++i)
    for (int j = 0; j < 2; ++j)
      wall.holes.push_back(reversed(rectangle(1 + 2 * i, 1 + 2.5 * j, 2 + 2 * i, 2.5 + 2.5 * j)));
  expectTriangulates(wall);
}

TEST(Triangulate, KeepsEveryPointOfFiveThousandRandomWalls) {
  std::mt19937 random(7);
  for (int round = 0; round < 5000 && !HasFailure(); ++round) {
    const Region wall = randomWall(random);
    SCOPED_TRACE(round);
    expectTriangulates(wall);
  }
}

TEST(Triangulate, MakesClosedWallsOfRoundedCoordinatesToo) {
  std::mt19937 random(11);
  for (int round = 0; round < 2000 && !HasFailure(); ++round) {
    Region wall = randomWall(random);
    const double angle = 0.001 * round;
    wall.outer = turned(wall.outer, angle);
    for (Polygon& hole : wall.holes) hole = turned(hole, angle);
    const Solid solid = prism(wall, 0, 0.1);
    SCOPED_TRACE(round);
    EXPECT_EQ(solidFault(solid), "");
    EXPECT_NEAR(volume(solid), area(wall) * 0.1, 1e-9);
  }
}

TEST(Triangulate, GivesTheSameTrianglesEveryTime) {
  std::mt19937 random(3);
  const Region wall = randomWall(random);
  EXPECT_EQ(triangulate(wall), triangulate(wall));
}

}  // namespace
}  // namespace model
