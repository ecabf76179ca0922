// Limits of distances: the line that the building must keep behind, and whether it does.
#include <cmath>
#include <utility>

#include <glm/common.hpp>
#include <glm/geometric.hpp>

#include "model/drawing/plan_parts.h"
#include "model/level_text.h"
#include "model/works/plan_shapes.h"

namespace model {

namespace {

constexpr double kHalf = 12;   // of the line drawn, mm: more would cover the dimensions
constexpr double kNear = 30;   // how far along the line the mark may stand, mm
constexpr int kAnyhow = 1000;  // lines that words may lie on
constexpr double kMark = 1.4;  // half of a mark

// Open circle clear, open diamond at the limit, black triangle over: as shapeOf() writes them.
void drawMark(PlanPaper& plan, const Vec2& at, LimitVerdict verdict) {
  Sheet& sheet = plan.sheet;
  if (verdict == LimitVerdict::Clear) {
    sheet.circles.push_back({Layer::Limits, kMediumPen, at, kMark, true});
  } else if (verdict == LimitVerdict::AtTheLimit) {
    sheet.outline(
        Layer::Limits, kMediumPen,
        {at + Vec2{kMark, 0}, at + Vec2{0, kMark}, at - Vec2{kMark, 0}, at - Vec2{0, kMark}});
  } else {
    sheet.fills.push_back(
        {Layer::Limits,
         0,
         {at + Vec2{-kMark, -kMark}, at + Vec2{kMark, -kMark}, at + Vec2{0, 1.2 * kMark}}});
  }
}

// The line that a limit draws, on the paper: through `middle` along `along`, both ways as far as
// the wall reaches that it is set for.
struct LimitLine {
  Vec2 middle{0, 0}, along{1, 0};
  Vec2 outward{0, 1};  // towards what it is measured from
  double before = -kNear, beyond = kNear;
};

// The side of a figure that a point is on or nearest to: the point of it, and the unit vector
// square to it to its left.
struct Side {
  double away = 1e300;
  Vec2 foot{0, 0}, left{0, 0};
};

Side sideAt(const Outline& outline, const Vec2& p) {
  Side best;
  for (size_t i = 0; i < outline.size(); ++i) {
    const Vec2 a = outline[i], d = outline[(i + 1) % outline.size()] - a;
    const double length = glm::length(d);
    if (length < 1e-9) continue;
    const double part = glm::clamp(glm::dot(p - a, d) / (length * length), 0.0, 1.0);
    const Vec2 foot = a + d * part;
    const double away = glm::length(p - foot);
    if (away < best.away - 1e-9) best = {away, foot, Vec2{-d.y, d.x} / length};
  }
  return best;
}

// Of the boundary or of the building that it is measured from.
Side measuredFrom(const PlanPaper& plan, const LimitTest& limit) {
  if (limit.kind == LimitKind::Boundary) {
    const Outline& boundary = plan.job.site.boundary;
    Side side = sideAt(boundary, limit.at);
    if (signedArea(boundary) < 0) side.left = -side.left;  // into the site
    return side;
  }
  Side best;
  for (const StandingBuilding& building : plan.job.site.buildings) {
    const Side side = sideAt(building.outline, limit.at);
    if (building.kind != BuildingKind::Demolish && side.away < best.away) best = side;
  }
  const Vec2 way = limit.from - limit.at;
  const double distance = glm::length(way);
  if (distance < 1e-9) return best;
  if (glm::dot(best.left, way) < 0) best.left = -best.left;
  // Round a building's corner it is the corner that counts.
  if (glm::dot(best.left, way) < 0.999 * distance) best.left = way / distance;
  return best;
}

LimitLine lineOf(const PlanPaper& plan, const LimitTest& limit) {
  const Side side = measuredFrom(plan, limit);
  LimitLine line;
  line.middle = plan.at(side.foot + side.left * limit.allowed);
  line.along = {-side.left.y, side.left.x};
  line.outward = -side.left;
  const auto wall = plan.out.wallNamed(plan.job.limits[*limit.given].wall);
  if (!wall) return line;
  const WallLine& of = plan.out.walls[*wall];
  line.before = glm::dot(plan.at(of.start) - line.middle, line.along);
  line.beyond = glm::dot(plan.at(of.end) - line.middle, line.along);
  if (line.before > line.beyond) std::swap(line.before, line.beyond);
  return line;
}

std::vector<std::string> wordsOf(const LimitTest& limit) {
  const std::string to = limit.what.substr(limit.what.find(" to ") + 4);
  const std::string asked = "limit " + lengthText(limit.allowed);
  return {asked + " from " + to + ": " + limit.words, asked + ": " + limit.words, limit.words};
}

bool inArea(const PlanPaper& plan, const Vec2& p) {
  const Vec2 low = plan.area.low, high = plan.area.high;
  return p.x > low.x + 2 && p.x < high.x - 2 && p.y > low.y + 2 && p.y < high.y - 2;
}

// Places for words beside the line, towards what it is measured from: close by, then where a leader
// takes them.
std::vector<Text> placesOf(const Text& text, const Vec2& at, const LimitLine& line) {
  std::vector<Text> places;
  const Vec2 a = at - line.along * kHalf, b = at + line.along * kHalf;
  for (const Text& close : besideLine(text, a, b, 2.4)) places.push_back(close);
  for (const double off : {8.0, 12.0, 16.0, 20.0, 25.0})
    for (const double s : {0.0, 8.0, -8.0, 16.0, -16.0}) {
      places.push_back(text);
      places.back().at = at + line.outward * off + line.along * s;
      places.back().angle = readingAngle(line.along);
    }
  return places;
}

void drawLeader(PlanPaper& plan, const Vec2& mark, const Text& text, const LimitLine& line) {
  const double off = std::abs(glm::dot(text.at - mark, line.outward));
  if (off < 5) return;
  const Vec2 way = glm::normalize(text.at - mark);
  const Vec2 from = mark + way * kMark, to = text.at - line.outward * text.size;
  plan.sheet.line(Layer::Limits, {kPen013, LineType::Continuous}, from, to);
  plan.space.takeLine(from, to);
}

// The mark, a piece of the line and the words round a point of it. False, with nothing drawn, where
// they would cover something, or the words lie on more than `most` lines.
bool drawAt(PlanPaper& plan, const LimitTest& limit, const LimitLine& line, double s,
            const std::string& words, int most) {
  const Vec2 at = line.middle + line.along * s;
  const Vec2 a = at - line.along * kHalf, b = at + line.along * kHalf;
  const Polygon mark = rectangleOnPlan(at, {1, 0}, 2 * kMark + 0.4, 2 * kMark + 0.4);
  if (!inArea(plan, at)) return false;
  const bool clear = plan.space.isFree(mark) && plan.space.isFree(a, b);
  if (!clear && most < kAnyhow) return false;
  ClearSpace before = plan.space;
  plan.space.take(mark);
  const auto said = plan.space.place(placesOf(nameAt(plan, Layer::Limits, words, at), at, line),
                                     plan.widthOf, most);
  if (!said) {
    plan.space = std::move(before);
    return false;
  }
  plan.line(Layer::Limits, kLimitPen, plan.sheet.view->inMetres(a), plan.sheet.view->inMetres(b));
  drawLeader(plan, at, *said, line);
  drawMark(plan, at, limit.verdict);
  plan.sheet.texts.push_back(*said);
  return true;
}

// Where all fails it stands in the schedule only.
void drawLimit(PlanPaper& plan, const LimitTest& limit) {
  const LimitLine line = lineOf(plan, limit);
  for (const int most : {0, 1, 3, kAnyhow})
    for (const std::string& words : wordsOf(limit))
      for (const double part : {0.5, 0.3, 0.7, 0.4, 0.6, 0.2, 0.8, 0.1, 0.9})
        if (drawAt(plan, limit, line, line.before + part * (line.beyond - line.before), words,
                   most))
          return;
}

}  // namespace

bool isDrawnOnPlan(const LimitTest& limit) {
  return limit.given && limit.verdict != LimitVerdict::Told &&
         (limit.kind == LimitKind::Boundary || limit.kind == LimitKind::Building);
}

void drawPlanLimits(PlanPaper& plan, const std::vector<LimitTest>& limits) {
  for (const LimitTest& limit : limits)
    if (isDrawnOnPlan(limit)) drawLimit(plan, limit);
}

}  // namespace model
