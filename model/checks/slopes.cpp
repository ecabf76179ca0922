// The sloped sides of the cellar's dig: what they take away beyond its bottom, where the ground is
// as high as it is.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/checks/parts.h"
#include "model/job/value_words.h"
#include "model/settingout/offsets.h"
#include "model/works/cellar_dig.h"

namespace model {
namespace {

constexpr double kSome = 1e-3;     // square metres: less is rounding
constexpr double kShallow = 0.01;  // metres: less is rounding

struct Box {
  Vec2 low{1e300, 1e300}, high{-1e300, -1e300};
};

Box boxOf(const Polygon& polygon) {
  Box box;
  for (const Vec2& p : polygon) {
    box.low = glm::min(box.low, p);
    box.high = glm::max(box.high, p);
  }
  return box;
}

bool apart(const Box& a, const Box& b) {
  return a.high.x < b.low.x || b.high.x < a.low.x || a.high.y < b.low.y || b.high.y < a.low.y;
}

class Slopes {
 public:
  explicit Slopes(const Checking& check)
      : check_(check), dig_(deriveCellarDig(check.job, check.settingOut)) {}

  // Where the sides cut into the ground within `area`: the corners of what is dug there, the line
  // on which they come out of the ground included. Nothing when they keep out of it.
  std::vector<Vec2> dugWithin(const Regions& area) const {
    std::vector<Vec2> points;
    for (const BatterSide& side : dig_.sides) {
      for (const Region& region : intersect({{side.area, {}}}, area)) {
        for (const Region& piece : planePieces(region)) addDug(piece.outer, side, points);
      }
    }
    return points;
  }

  double distanceFromBottom(const Vec2& p) const {
    double least = 1e300;
    for (const Region& region : dig_.bottom) {
      least = std::min(least, contains(region, p) ? 0.0 : distanceToOutline(region.outer, p));
    }
    return least;
  }

  double distanceFromBottom(const Polygon& outline) const {
    double least = 1e300;
    for (const Region& region : dig_.bottom) {
      least = std::min(least, shortestBetween(region.outer, outline).distance);
    }
    return least;
  }

  const CellarDig& dig() const { return dig_; }

 private:
  // The ground is plane between the edges of its triangles, and so is the soil on a slope.
  Regions planePieces(const Region& region) const {
    const Terrain& terrain = check_.settingOut.terrain;
    const Box box = boxOf(region.outer);
    Regions pieces, rest{region};
    for (const auto& corners : terrain.triangles) {
      Polygon triangle;
      for (const unsigned i : corners) triangle.push_back(Vec2(terrain.points[i]));
      if (apart(box, boxOf(triangle))) continue;
      for (Region& piece : intersect({region}, {{triangle, {}}}))
        pieces.push_back(std::move(piece));
      rest = subtract(rest, {{triangle, {}}});
    }
    pieces.insert(pieces.end(), rest.begin(), rest.end());
    std::erase_if(pieces, [](const Region& piece) { return area(piece) <= kSome; });
    return pieces;
  }

  double soilOn(const BatterSide& side, const Vec2& p) const {
    return check_.settingOut.terrain.levelAt(p) - check_.job.ground.topsoil - side.surface.at(p);
  }

  void addDug(const Polygon& piece, const BatterSide& side, std::vector<Vec2>& points) const {
    std::vector<double> soil;
    for (const Vec2& p : piece) soil.push_back(soilOn(side, p));
    if (*std::max_element(soil.begin(), soil.end()) <= kShallow) return;
    for (size_t i = 0; i < piece.size(); ++i) {
      const size_t next = (i + 1) % piece.size();
      if (soil[i] > 0) points.push_back(piece[i]);
      if ((soil[i] > 0) == (soil[next] > 0)) continue;
      points.push_back(piece[i] + (piece[next] - piece[i]) * (soil[i] / (soil[i] - soil[next])));
    }
  }

  const Checking& check_;
  CellarDig dig_;
};

std::string degrees(double angle) {
  const double tenths = std::round(angle * 10) / 10;
  std::string text = std::to_string(tenths);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text + " degrees";
}

double toMillimetre(double metres) { return std::round(metres * 1000) / 1000; }

const char* kHeldUp = "have that side held up instead, ground.batter = 90, or ";

void checkUnder(const Checking& check, const Slopes& slopes, const StandingBuilding& building) {
  Polygon outline = building.outline;
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  const double away = slopes.distanceFromBottom(outline);
  double under = 0;
  for (const Vec2& p : slopes.dugWithin({{outline, {}}})) {
    under = std::max(under, slopes.distanceFromBottom(p) - away);
  }
  if (under <= 0) return;
  const std::string name = building.name.empty() ? "a building" : "\"" + building.name + "\"";
  check.error("ground.batter",
              "sloped at " + degrees(check.job.ground.batter) +
                  ", the side of the cellar dig runs " + lengthWords(toMillimetre(under)) +
                  " under " + name + ", which stands " + lengthWords(toMillimetre(away)) +
                  " from the dig's bottom",
              kHeldUp + ("keep the cellar " + lengthWords(std::ceil(under * 1000) / 1000)) +
                  " further from it; holding a building up over a dig is for its engineer to draw");
}

void checkOverBoundary(const Checking& check, const Slopes& slopes) {
  const Polygon& boundary = check.settingOut.terrain.boundary;
  // Where the bottom itself goes over it, that has its message already.
  if (area(subtract(slopes.dig().bottom, {{boundary, {}}})) > kSome) return;
  Regions sides;
  for (const BatterSide& side : slopes.dig().sides) sides = unite(sides, {{side.area, {}}});
  double over = 0;
  for (const Vec2& p : slopes.dugWithin(subtract(sides, {{boundary, {}}}))) {
    over = std::max(over, distanceToOutline(boundary, p));
  }
  if (over <= kShallow) return;
  check.warning("ground.batter",
                "sloped at " + degrees(check.job.ground.batter) +
                    ", the side of the cellar dig goes " + lengthWords(toMillimetre(over)) +
                    " over the boundary",
                kHeldUp + std::string("agree it with the neighbour"));
}

}  // namespace

void checkSlopes(const Checking& check) {
  if (!check.job.cellar) return;
  const Slopes slopes(check);
  if (slopes.dig().sides.empty()) return;
  for (const StandingBuilding& building : check.job.site.buildings) {
    if (building.kind != BuildingKind::Demolish) checkUnder(check, slopes, building);
  }
  if (check.job.site.boundary.size() >= 3) checkOverBoundary(check, slopes);
}

}  // namespace model
