// Names on the plan, wherever there is room for them.
#include <algorithm>
#include <cmath>

#include <glm/common.hpp>
#include <glm/geometric.hpp>

#include "model/drawing/dimension_line.h"
#include "model/drawing/plan_parts.h"
#include "model/level_text.h"
#include "model/lines/boards.h"
#include "model/works/plan_shapes.h"

namespace model {

Vec2 middleOf(const Polygon& polygon) {
  Vec2 low{1e300, 1e300}, high{-1e300, -1e300}, best{0, 0};
  for (const Vec2& p : polygon) {
    low = glm::min(low, p);
    high = glm::max(high, p);
  }
  double room = -1;
  constexpr int kTries = 20;
  for (int i = 1; i < kTries; ++i)
    for (int j = 1; j < kTries; ++j) {
      const Vec2 p = low + (high - low) * Vec2{double(i) / kTries, double(j) / kTries};
      if (!contains(polygon, p)) continue;
      const double here = distanceToOutline(polygon, p);
      if (here > room + 1e-9) {
        room = here;
        best = p;
      }
    }
  return room < 0 ? (low + high) / 2.0 : best;
}

std::vector<Text> around(const Text& text, double step, int rings) {
  std::vector<Text> places;
  for (int ring = 0; ring <= rings; ++ring) {
    const int count = ring == 0 ? 1 : 12;
    for (int k = 0; k < count; ++k) {
      const double angle = 2 * 3.14159265358979323846 * k / count;
      places.push_back(text);
      places.back().at += Vec2{std::cos(angle), std::sin(angle)} * (step * ring);
    }
  }
  return places;
}

bool put(PlanPaper& plan, const std::vector<Text>& places, int most) {
  const auto text = plan.space.place(places, plan.widthOf, most);
  if (text) plan.sheet.texts.push_back(*text);
  return text.has_value();
}

std::vector<Text> besideLine(const Text& text, const Vec2& a, const Vec2& b, double off) {
  const Vec2 u = glm::normalize(b - a), n{-u.y, u.x};
  std::vector<Text> places;
  for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8, 0.0, 1.0})
    for (const double side : {off, -off}) {
      places.push_back(text);
      places.back().at = a + (b - a) * part + n * side;
      places.back().angle = readingAngle(u);
    }
  return places;
}

namespace {

void nameBenchMark(PlanPaper& plan, const BenchMark& mark) {
  const Vec2 at = plan.at(mark.at);
  const Polygon figure = rectangleOnPlan(at, {1, 0}, 3.4, 3.4);
  if (!plan.space.isFree(figure)) return;
  plan.space.take(figure);
  plan.sheet.circles.push_back({Layer::Levels, kMediumPen, at, 1.4, false});
  plan.sheet.line(Layer::Levels, kMediumPen, at - Vec2{1.4, 0}, at + Vec2{1.4, 0});
  plan.sheet.line(Layer::Levels, kMediumPen, at - Vec2{0, 1.4}, at + Vec2{0, 1.4});
  const std::string level = "BM " + levelText(mark.level);
  // The whole name clear of lines, the level alone clear of lines, then whatever there is.
  for (const int most : {0, 1000})
    for (const std::string& words : {level + " " + mark.name, level}) {
      const Text text = nameAt(plan, Layer::Levels, words, at);
      const double half = plan.widthOf(words, text.size, false) / 2;
      std::vector<Text> places;
      for (const double y : {0.0, 4.0, -4.0, 8.0, -8.0})
        for (const double x : {half + 2.4, -half - 2.4, 0.0}) {
          places.push_back(text);
          places.back().at = at + Vec2{x, y};
        }
      if (put(plan, places, most)) return;
    }
}

void nameBuilding(PlanPaper& plan, const StandingBuilding& building) {
  Polygon points = plan.at(building.outline);
  if (signedArea(points) < 0) std::reverse(points.begin(), points.end());
  const Regions seen = intersect({{points, {}}}, {{plan.area.corners(), {}}});
  if (seen.empty()) return;
  const Polygon& shape = seen.front().outer;
  const Vec2 middle = middleOf(shape);
  const bool goes = building.kind == BuildingKind::Demolish;
  const std::string full = building.name + (goes ? " (comes down)" : "");
  // Within it as far as it has room, else beside it.
  std::vector<Text> within;
  for (const std::string& words : {full, building.name})
    for (const double angle : {0.0, 90.0}) {
      Text text = nameAt(plan, Layer::Buildings, words, middle);
      text.angle = angle;
      const Polygon box = boxOf(text, plan.widthOf, 0.5);
      if (std::all_of(box.begin(), box.end(), [&](const Vec2& p) { return contains(shape, p); }))
        within.push_back(text);
    }
  if (put(plan, within)) return;
  std::vector<Text> places = around(nameAt(plan, Layer::Buildings, full, middle), 3, 8);
  const size_t level = places.size();
  for (size_t i = 0; i < level; ++i) {
    places.push_back(places[i]);
    places.back().angle = 90;
  }
  put(plan, places);
}

// Along the inside of a figure's edge.
std::vector<Text> alongEdge(const PlanPaper& plan, Layer layer, const std::string& words,
                            const Polygon& figure, size_t edge) {
  const Vec2 a = figure[edge], b = figure[(edge + 1) % figure.size()];
  const double length = glm::length(b - a);
  if (length < 1e-6) return {};
  const Vec2 u = (b - a) / length;
  const Vec2 inward = Vec2{-u.y, u.x} * (signedArea(figure) < 0 ? -1.0 : 1.0);
  std::vector<Text> places;
  for (const double part : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
    Text text = nameAt(plan, layer, words, a + (b - a) * part + inward * 2.4);
    text.angle = readingAngle(u);
    places.push_back(text);
  }
  return places;
}

// The strings between stakes that keep a line where no board has room.
void nameOffsetLines(PlanPaper& plan) {
  for (size_t i = 0; i < plan.out.walls.size(); ++i) {
    const auto& offset = plan.profiles[i].offset;
    if (!offset) continue;
    const WallLine& wall = plan.out.walls[i];
    const Vec2 a = plan.at(wall.at(offset->s[0], -offset->out)),
               b = plan.at(wall.at(offset->s[1], -offset->out));
    for (const std::string& words : {wall.name + " offset line, " + offsetWords(offset->out),
                                     wall.name + " offset " + lengthText(std::abs(offset->out))})
      if (put(plan, besideLine(nameAt(plan, Layer::Strings, words, a), a, b, 2.2), 4)) break;
  }
}

}  // namespace

void drawPlanNames(PlanPaper& plan) {
  if (plan.job.site.benchMark) nameBenchMark(plan, *plan.job.site.benchMark);
  for (const BenchMark& mark : plan.job.site.marks) nameBenchMark(plan, mark);
  for (const StandingBuilding& building : plan.job.site.buildings) nameBuilding(plan, building);
  const Polygon boundary = plan.at(plan.job.site.boundary);
  for (size_t i = 0; i < boundary.size(); ++i)
    put(plan, alongEdge(plan, Layer::Boundary, "boundary " + std::to_string(i + 1), boundary, i));
  const Polygon cellar = plan.at(plan.out.cellarOutline);
  std::vector<Text> places;
  for (size_t i = 0; i < cellar.size(); ++i)
    for (Text& text : alongEdge(plan, Layer::Cellar, "cellar", cellar, i))
      places.push_back(std::move(text));
  put(plan, places);
  nameOffsetLines(plan);
}

}  // namespace model
