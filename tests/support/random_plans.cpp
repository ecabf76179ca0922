#include "tests/support/random_plans.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

namespace model::test {
namespace {

using Cell = std::pair<int, int>;

int pick(Random& random, int low, int high) {
  return low + int(random() % unsigned(high - low + 1));
}

double mm(double metres) { return std::round(metres * 1000) / 1000; }

// Four cells round a crossing of which two, corner to corner, are taken would touch at the corner.
bool touchesAtCorner(const std::set<Cell>& cells) {
  for (const auto& [x, y] : cells)
    for (const int dx : {-1, 1})
      for (const int dy : {-1, 1})
        if (cells.count({x + dx, y + dy}) && !cells.count({x + dx, y}) && !cells.count({x, y + dy}))
          return true;
  return false;
}

std::map<Cell, Cell> borderSteps(const std::set<Cell>& cells) {
  std::map<Cell, Cell> steps;
  for (const auto& [x, y] : cells) {
    if (!cells.count({x, y - 1})) steps[{x, y}] = {x + 1, y};
    if (!cells.count({x + 1, y})) steps[{x + 1, y}] = {x + 1, y + 1};
    if (!cells.count({x, y + 1})) steps[{x + 1, y + 1}] = {x, y + 1};
    if (!cells.count({x - 1, y})) steps[{x, y + 1}] = {x, y};
  }
  return steps;
}

// Empty when the border is not one ring.
std::vector<Cell> border(const std::set<Cell>& cells) {
  const auto steps = borderSteps(cells);
  std::vector<Cell> ring{steps.begin()->first};
  while (ring.size() <= steps.size()) {
    const Cell next = steps.at(ring.back());
    if (next == ring[0]) break;
    ring.push_back(next);
  }
  return ring.size() == steps.size() ? ring : std::vector<Cell>{};
}

}  // namespace

Polygon anyPlan(Random& random, int corners, double size) {
  while (true) {
    Polygon plan;
    for (int i = 0; i < corners; ++i)
      plan.emplace_back(mm(size * (random() % 100000) / 1e5), mm(size * (random() % 100000) / 1e5));
    // Untangle: reversing the run between two crossing edges always shortens the outline.
    for (int round = 0; round < 1000; ++round) {
      const auto crossing = crossingEdges(plan);
      if (!crossing) {
        if (signedArea(plan) < 0) std::reverse(plan.begin(), plan.end());
        return plan;
      }
      const auto [i, j] = *crossing;
      std::reverse(plan.begin() + std::ptrdiff_t(i) + 1, plan.begin() + std::ptrdiff_t(j) + 1);
    }
  }
}

Polygon gridPlan(Random& random, int cells, bool keep, double x, double y) {
  while (true) {
    std::set<Cell> taken{{0, 0}};
    while (int(taken.size()) < cells) {
      auto from = taken.begin();
      std::advance(from, pick(random, 0, int(taken.size()) - 1));
      const int way = pick(random, 0, 3);
      taken.insert({from->first + (way == 0) - (way == 1), from->second + (way == 2) - (way == 3)});
    }
    if (touchesAtCorner(taken)) continue;
    const auto ring = border(taken);
    Polygon plan;
    for (size_t i = 0, n = ring.size(); i < n; ++i) {
      const Cell &a = ring[(i + n - 1) % n], &b = ring[i], &c = ring[(i + 1) % n];
      const bool inLine = (a.first == b.first) == (b.first == c.first);
      if (keep || !inLine) plan.emplace_back(b.first * x, b.second * y);
    }
    if (plan.size() >= 4) return plan;
  }
}

Polygon combPlan(int teeth, double tooth, double gap, double reach, double spine) {
  Polygon plan{{0, 0}};
  const double length = teeth * tooth + (teeth - 1) * gap;
  plan.emplace_back(length, 0);
  for (int k = teeth - 1; k >= 0; --k) {
    const double x0 = k * (tooth + gap), x1 = x0 + tooth;
    if (k < teeth - 1) plan.emplace_back(x1, spine);
    plan.emplace_back(x1, spine + reach);
    plan.emplace_back(x0, spine + reach);
    if (k > 0) plan.emplace_back(x0, spine);
  }
  return plan;
}

Polygon plusPlan(double width, double arm) {
  const double a = width / 2, b = width / 2 + arm;
  return {{-a, -b}, {a, -b}, {a, -a}, {b, -a}, {b, a},   {a, a},
          {a, b},   {-a, b}, {-a, a}, {-b, a}, {-b, -a}, {-a, -a}};
}

Polygon regularPlan(int corners, double radius, double turn) {
  Polygon plan;
  for (int i = 0; i < corners; ++i) {
    const double angle = turn + 2 * std::numbers::pi * i / corners;
    plan.emplace_back(radius * std::cos(angle), radius * std::sin(angle));
  }
  return plan;
}

Polygon turned(const Polygon& polygon, double angle) {
  Polygon result;
  for (const Vec2& p : polygon)
    result.emplace_back(p.x * std::cos(angle) - p.y * std::sin(angle),
                        p.x * std::sin(angle) + p.y * std::cos(angle));
  return result;
}

Polygon moved(const Polygon& polygon, const Vec2& by) {
  Polygon result;
  for (const Vec2& p : polygon) result.push_back(p + by);
  return result;
}

}  // namespace model::test
