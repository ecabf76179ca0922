// Boards, stakes and strings, and the letters of the corners.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/drawing/plan_parts.h"
#include "model/works/plan_shapes.h"

namespace model {

namespace {

bool inArea(const PlanPaper& plan, const Polygon& metres) {
  return std::all_of(metres.begin(), metres.end(), [&](const Vec2& p) {
    const Vec2 q = plan.at(p);
    return q.x > plan.area.low.x && q.x < plan.area.high.x && q.y > plan.area.low.y &&
           q.y < plan.area.high.y;
  });
}

void drawBoard(PlanPaper& plan, const LineEnd& end) {
  if (!inArea(plan, end.board)) return;
  plan.sheet.outline(Layer::Profiles, kFinePen, plan.at(end.rail));
  for (const Polygon& stake : end.stakes) {
    plan.sheet.fills.push_back({Layer::Profiles, 0, plan.at(stake)});
    plan.sheet.outline(Layer::Profiles, kFinePen, plan.at(stake));
  }
  // The rail is thinner than ink at most scales: a heavier line shows it.
  plan.sheet.line(Layer::Profiles, kMediumPen, plan.at((end.rail[0] + end.rail[1]) / 2.0),
                  plan.at((end.rail[2] + end.rail[3]) / 2.0));
  plan.space.take(plan.at(end.board));
}

// The string between two stakes beside the wall, and how far off it is.
void drawOffsetLine(PlanPaper& plan, const WallLine& wall, const OffsetLine& line) {
  plan.line(Layer::Strings, kStringPen, wall.at(line.s[0], -line.out),
            wall.at(line.s[1], -line.out));
  for (size_t k = 0; k < 2; ++k) {
    if (!inArea(plan, line.stakes[k])) continue;
    const Vec2 centre = plan.at(wall.at(line.s[k], -line.out));
    plan.sheet.circles.push_back({Layer::Profiles, kMediumPen, centre, 0.8, true});
    plan.space.take(rectangleOnPlan(centre, {1, 0}, 2, 2));
  }
}

}  // namespace

void drawPlanProfiles(PlanPaper& plan) {
  for (size_t i = 0; i < plan.out.walls.size(); ++i) {
    const WallLine& wall = plan.out.walls[i];
    for (const auto& end : {plan.profiles[i].atStart, plan.profiles[i].atEnd}) {
      if (!end) continue;
      plan.line(Layer::Strings, kStringPen, end->s < 0 ? wall.start : wall.end, wall.at(end->s));
      drawBoard(plan, *end);
    }
    if (plan.profiles[i].offset) drawOffsetLine(plan, wall, *plan.profiles[i].offset);
  }
}

void drawCornerLetters(PlanPaper& plan) {
  const size_t count = plan.out.corners.size();
  const double radius = 1.16 * plan.letters;
  for (size_t i = 0; i < count; ++i) {
    const Corner& corner = plan.out.corners[i];
    const Vec2 before = plan.out.walls[(i + count - 1) % count].outward,
               after = plan.out.walls[i].outward;
    Vec2 away = before + after;
    away = glm::length(away) > 1e-6 ? glm::normalize(away) : after;
    std::vector<Text> places;
    const Text text = [&] {
      Text made = nameAt(plan, Layer::Corners, corner.letter, {0, 0});
      made.size = plan.letters;
      made.bold = true;
      made.halo = false;
      return made;
    }();
    const Vec2 at = plan.at(corner.at);
    // Outside on the bisector, then turned away from it, then inside.
    for (const double distance : {6.5, 8.5, 11.0, 14.0})
      for (const double turn : {0.0, 0.35, -0.35, 0.7, -0.7, 3.14159, 2.8, -2.8}) {
        const Vec2 d{away.x * std::cos(turn) - away.y * std::sin(turn),
                     away.x * std::sin(turn) + away.y * std::cos(turn)};
        Text made = text;
        made.at = at + d * distance;
        places.push_back(made);
      }
    // The circle round the letter counts, not the letter alone.
    const Text* best = nullptr;
    int fewest = 0;
    for (const Text& place : places) {
      const Polygon box = rectangleOnPlan(place.at, {1, 0}, 2 * radius, 2 * radius);
      if (!plan.space.isFree(box)) continue;
      const int lines = plan.space.linesUnder(box);
      if (!best || lines < fewest) {
        best = &place;
        fewest = lines;
      }
    }
    if (!best) best = &places.front();
    plan.space.take(rectangleOnPlan(best->at, {1, 0}, 2 * radius + 0.6, 2 * radius + 0.6));
    const double width = plan.widthOf(text.text, text.size, true);
    Text letter = *best;
    if (width > 1.6 * radius) letter.size *= 1.6 * radius / width;
    const Vec2 toCorner = glm::normalize(at - letter.at);
    plan.sheet.line(Layer::Corners, {kPen013, LineType::Continuous}, letter.at + toCorner * radius,
                    at);
    plan.sheet.circles.push_back({Layer::Corners, kFinePen, letter.at, radius, true});
    plan.sheet.texts.push_back(letter);
  }
}

}  // namespace model
