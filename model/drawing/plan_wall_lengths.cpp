// Lengths of walls: in chains outside the building, else beside the wall.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/drawing/dimension_line.h"
#include "model/drawing/plan_parts.h"
#include "model/level_text.h"

namespace model {

namespace {

constexpr double kFirst = 9;   // of a chain from the outermost wall, mm
constexpr double kStep = 1.5;  // further out until it is clear
constexpr double kFarthest = 60;
constexpr double kOverall = 8;  // of the overall length from its chain

// One wall as part of a chain. Distances on paper along and out from the group's own direction.
struct Part {
  size_t wall = 0;
  double from = 0, to = 0, out = 0;
};

// Walls that face the same way.
struct Group {
  Vec2 along{1, 0}, outward{0, -1};
  std::vector<Part> parts;
};

std::vector<Group> groupsOf(const PlanPaper& plan) {
  std::vector<Group> groups;
  for (size_t i = 0; i < plan.out.walls.size(); ++i) {
    const WallLine& wall = plan.out.walls[i];
    auto group = std::find_if(groups.begin(), groups.end(), [&](const Group& g) {
      return glm::length(g.outward - wall.outward) < 1e-6;
    });
    if (group == groups.end()) {
      groups.push_back({wall.along, wall.outward, {}});
      group = groups.end() - 1;
    }
    const Vec2 a = plan.at(wall.start), b = plan.at(wall.end);
    group->parts.push_back(
        {i, glm::dot(a, group->along), glm::dot(b, group->along), glm::dot(a, group->outward)});
  }
  for (Group& group : groups)
    std::sort(group.parts.begin(), group.parts.end(),
              [](const Part& a, const Part& b) { return a.from < b.from; });
  return groups;
}

// Nothing of the building lies outside the wall, between its ends.
bool isOutside(const PlanPaper& plan, const Group& group, const Part& part) {
  const auto corner = [&](double s, double o) { return group.along * s + group.outward * o; };
  constexpr double kFar = 5000;
  Polygon strip{corner(part.from + 0.01, part.out + 0.01),
                corner(part.from + 0.01, part.out + kFar), corner(part.to - 0.01, part.out + kFar),
                corner(part.to - 0.01, part.out + 0.01)};
  if (signedArea(strip) < 0) std::reverse(strip.begin(), strip.end());
  return area(intersect({{strip, {}}}, {{plan.at(plan.out.outline), {}}})) < 0.01;
}

DimensionLine dimension(const PlanPaper& plan, const Group& group, const Part& part, double out,
                        const std::string& figure) {
  DimensionLine line;
  line.fromFoot = group.along * part.from + group.outward * part.out;
  line.toFoot = group.along * part.to + group.outward * part.out;
  line.from = group.along * part.from + group.outward * out;
  line.to = group.along * part.to + group.outward * out;
  line.figure = figure;
  line.size = plan.letters;
  return line;
}

// It does not run through a building that stands.
bool offBuildings(const PlanPaper& plan, const DimensionLine& line) {
  for (const StandingBuilding& building : plan.job.site.buildings) {
    if (building.kind == BuildingKind::Demolish) continue;
    const Polygon shape = plan.at(building.outline);
    constexpr int kPieces = 20;
    for (int i = 0; i <= kPieces; ++i)
      if (contains(shape, line.from + (line.to - line.from) * (double(i) / kPieces))) return false;
  }
  return true;
}

bool draw(PlanPaper& plan, const DimensionLine& line) {
  return drawDimension(plan.sheet, plan.space, line, plan.widthOf);
}

std::string figureOf(const PlanPaper& plan, const Part& part) {
  return lengthText(plan.out.walls[part.wall].length);
}

// A place for the overall length over a chain.
void drawOverall(PlanPaper& plan, const Group& group, const std::vector<Part>& parts,
                 double chain) {
  for (double more = kOverall; more < kFarthest; more += kStep) {
    DimensionLine whole = dimension(plan, group, parts.front(), chain + more, "");
    whole.to = dimension(plan, group, parts.back(), chain + more, "").to;
    // The chain's own extension lines lead up to here.
    whole.fromFoot = group.along * parts.front().from + group.outward * (chain + 0.5);
    whole.toFoot = group.along * parts.back().to + group.outward * (chain + 0.5);
    whole.figure =
        lengthText((parts.back().to - parts.front().from) * plan.sheet.view->scale / 1000);
    if (isClear(plan, whole) && offBuildings(plan, whole) && draw(plan, whole)) return;
  }
}

// All outer walls of a group on one line, and their overall length on the next when `overall`.
void drawChain(PlanPaper& plan, const Group& group, const std::vector<Part>& parts, bool overall) {
  double outermost = -1e300;
  for (const Part& part : parts) outermost = std::max(outermost, part.out);
  for (double off = kFirst; off < kFarthest; off += kStep) {
    const double out = outermost + off;
    const auto hasRoom = [&](const Part& part) {
      const DimensionLine line = dimension(plan, group, part, out, "");
      return isClear(plan, line) && offBuildings(plan, line);
    };
    if (!std::all_of(parts.begin(), parts.end(), hasRoom)) continue;
    for (const Part& part : parts)
      draw(plan, dimension(plan, group, part, out, figureOf(plan, part)));
    if (overall) drawOverall(plan, group, parts, out);
    return;
  }
  // Each for itself where there is no room for the whole chain.
  for (const Part& part : parts)
    for (double off = 4; off < kFarthest; off += kStep) {
      const DimensionLine line = dimension(plan, group, part, part.out + off, figureOf(plan, part));
      if (isClear(plan, line) && draw(plan, line)) break;
    }
}

// A wall with more of the building in front of it: beside it, in the recess or within.
void drawBeside(PlanPaper& plan, const Group& group, const Part& part) {
  for (double off = 5; off < 30; off += kStep)
    for (const double side : {1.0, -1.0}) {
      const double least = side < 0 ? 4 : 0;
      const DimensionLine line =
          dimension(plan, group, part, part.out + side * (off + least), figureOf(plan, part));
      if (isClear(plan, line) && draw(plan, line)) return;
    }
}

}  // namespace

void drawWallDimensions(PlanPaper& plan) {
  const std::vector<Group> groups = groupsOf(plan);
  std::vector<std::vector<Part>> outer(groups.size());
  for (size_t i = 0; i < groups.size(); ++i)
    for (const Part& part : groups[i].parts)
      if (isOutside(plan, groups[i], part)) outer[i].push_back(part);
  // One wall on the other side that is as long says the overall length already.
  const auto saidAlready = [&](size_t i) {
    for (size_t j = 0; j < groups.size(); ++j)
      for (const Part& part : outer[j])
        if (glm::length(groups[j].outward + groups[i].outward) < 1e-6 &&
            std::abs(part.from + outer[i].back().to) < 0.01 &&
            std::abs(part.to + outer[i].front().from) < 0.01)
          return true;
    return false;
  };
  for (size_t i = 0; i < groups.size(); ++i) {
    if (outer[i].empty()) continue;
    drawChain(plan, groups[i], outer[i], outer[i].size() > 1 && !saidAlready(i));
  }
  for (const Group& group : groups)
    for (const Part& part : group.parts)
      if (!isOutside(plan, group, part)) drawBeside(plan, group, part);
}

}  // namespace model
