// Offsets to the boundary and to what stands, where they are shortest; diagonals.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/drawing/dimension_line.h"
#include "model/drawing/plan_parts.h"
#include "model/level_text.h"
#include "model/settingout/offsets.h"

namespace model {

bool isClear(const PlanPaper& plan, const DimensionLine& line) {
  const Vec2 u = glm::normalize(line.to - line.from), n{-u.y, u.x};
  // Ticks and figures reach to both sides of the line.
  const double room = 1.2;
  const Polygon strip{line.from + u * 0.4 - n * room, line.to - u * 0.4 - n * room,
                      line.to - u * 0.4 + n * room, line.from + u * 0.4 + n * room};
  return plan.space.isFree(strip);
}

namespace {

struct Distance {
  Vec2 from, at;  // metres
  double metres;
};

// The shortest to each thing, then what limits are measured to where that is somewhere else.
std::vector<Distance> distancesOf(const PlanPaper& plan, const std::vector<LimitTest>& limits) {
  std::vector<Distance> found;
  for (const SiteOffset& offset : deriveOffsets(plan.job, plan.out))
    found.push_back({offset.from, offset.at, offset.distance});
  for (const LimitTest& limit : limits) {
    if (!isDrawnOnPlan(limit)) continue;
    const bool there = std::any_of(found.begin(), found.end(), [&](const Distance& other) {
      // A boundary that is not quite parallel is as far away in another direction.
      return glm::length(other.from - limit.from) < 0.01 &&
             std::abs(other.metres - limit.found) < 0.005;
    });
    if (!there) found.push_back({limit.from, limit.at, limit.found});
  }
  return found;
}

}  // namespace

void drawOffsets(PlanPaper& plan, const std::vector<LimitTest>& limits) {
  struct Drawn {
    Vec2 from, along;
  };
  std::vector<Drawn> drawn;
  const auto inArea = [&](const Vec2& p) {
    return p.x > plan.area.low.x && p.x < plan.area.high.x && p.y > plan.area.low.y &&
           p.y < plan.area.high.y;
  };
  for (const Distance& offset : distancesOf(plan, limits)) {
    if (offset.metres < 1e-3) continue;
    DimensionLine line;
    line.fromFoot = plan.at(offset.from);
    line.toFoot = plan.at(offset.at);
    line.figure = lengthText(offset.metres);
    line.size = plan.letters;
    // Those that leave the sheet stand in the schedule.
    if (!inArea(line.fromFoot) || !inArea(line.toFoot)) continue;
    const Vec2 u = glm::normalize(line.toFoot - line.fromFoot), side{-u.y, u.x};
    // A second from the same corner the same way steps aside.
    auto same = std::find_if(drawn.begin(), drawn.end(), [&](const Drawn& other) {
      return glm::length(other.from - line.fromFoot) < 2 && glm::dot(other.along, u) > 0.98;
    });
    if (same == drawn.end()) {
      line.from = line.fromFoot;
      line.to = line.toFoot;
      if (drawDimension(plan.sheet, plan.space, line, plan.widthOf))
        drawn.push_back({line.from, u});
      continue;
    }
    for (const double step : {7.0, -7.0, 12.0, -12.0}) {
      line.from = line.fromFoot + side * step;
      line.to = line.toFoot + side * step;
      if (isClear(plan, line) && inArea(line.from) && inArea(line.to) &&
          drawDimension(plan.sheet, plan.space, line, plan.widthOf))
        break;
    }
  }
}

void drawDiagonals(PlanPaper& plan, const std::vector<Tape>& diagonals) {
  constexpr size_t kFew = 6;
  if (diagonals.size() > kFew) {
    const Text text = nameAt(plan, Layer::Diagonals, "diagonals: see the schedule",
                             middleOf(plan.at(plan.out.outline)));
    put(plan, around(text, 3, 8));
    return;
  }
  const Pen pen{kPen013, LineType::Chain};
  for (const Tape& tape : diagonals)
    plan.line(Layer::Diagonals, pen, plan.out.corners[tape.from].at, plan.out.corners[tape.to].at);
  for (const Tape& tape : diagonals) {
    const Vec2 a = plan.at(plan.out.corners[tape.from].at);
    const Vec2 b = plan.at(plan.out.corners[tape.to].at), u = glm::normalize(b - a);
    Text text;
    text.layer = Layer::Diagonals;
    text.text = lengthText(tape.length);
    text.size = std::min(plan.letters, 2.0);
    text.across = Across::Centre;
    text.up = Up::Middle;
    text.angle = readingAngle(u);
    text.halo = true;
    std::vector<Text> places;
    // On the line itself, away from where they cross.
    for (const double part : {0.3, 0.7, 0.25, 0.75, 0.35, 0.65, 0.2, 0.8, 0.4, 0.6, 0.5}) {
      places.push_back(text);
      places.back().at = a + (b - a) * part;
    }
    if (const auto found = plan.space.place(places, plan.widthOf))
      plan.sheet.texts.push_back(*found);
  }
}

}  // namespace model
