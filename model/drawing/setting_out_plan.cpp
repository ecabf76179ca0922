// What lies on the ground, and the building's lines.
#include "model/drawing/setting_out_plan.h"

#include <algorithm>
#include <cmath>

#include <glm/common.hpp>
#include <glm/geometric.hpp>

#include "model/drawing/plan_parts.h"

namespace model {

namespace {

void reach(Vec2& low, Vec2& high, const Polygon& points) {
  for (const Vec2& p : points) {
    low = glm::min(low, p);
    high = glm::max(high, p);
  }
}

}  // namespace

Text nameAt(const PlanPaper& plan, Layer layer, const std::string& words, const Vec2& paper) {
  Text text;
  text.layer = layer;
  text.text = words;
  text.size = std::min(plan.letters, 2.0);
  text.across = Across::Centre;
  text.up = Up::Middle;
  text.at = paper;
  text.halo = true;
  return text;
}

Polygon PlanPaper::at(const Polygon& metres) const {
  Polygon points;
  for (const Vec2& p : metres) points.push_back(at(p));
  return points;
}

void PlanPaper::line(Layer layer, const Pen& pen, const Vec2& a, const Vec2& b) {
  for (Stroke& piece : clipped({layer, pen, {at(a), at(b)}, false}, area)) {
    space.takeLine(piece.points.front(), piece.points.back());
    sheet.strokes.push_back(std::move(piece));
  }
}

void PlanPaper::outline(Layer layer, const Pen& pen, const Polygon& polygon) {
  if (polygon.size() < 2) return;
  for (Stroke& piece : clipped({layer, pen, at(polygon), true}, area)) {
    for (size_t i = 0; i + 1 < piece.points.size(); ++i)
      space.takeLine(piece.points[i], piece.points[i + 1]);
    if (piece.closed) space.takeLine(piece.points.back(), piece.points.front());
    sheet.strokes.push_back(std::move(piece));
  }
}

void PlanPaper::fill(Layer layer, double grey, const Polygon& polygon) {
  Polygon points = at(polygon);
  if (signedArea(points) < 0) std::reverse(points.begin(), points.end());
  for (const Region& region : intersect({{points, {}}}, {{area.corners(), {}}}))
    sheet.fills.push_back({layer, grey, region.outer});
}

PlanReach reachOf(const Job& job, const SettingOut& out, const std::vector<LineEnds>& profiles) {
  PlanReach found;
  reach(found.wallsLow, found.wallsHigh, out.ring(out.faceDistances.outermost()));
  reach(found.workLow, found.workHigh, {found.wallsLow, found.wallsHigh});
  reach(found.workLow, found.workHigh, out.cellarOutline);
  for (const LineEnds& ends : profiles)
    for (const auto& end : {ends.atStart, ends.atEnd})
      if (end) reach(found.workLow, found.workHigh, end->board);
  for (const LineEnds& ends : profiles)
    if (ends.offset)
      for (const Polygon& stake : ends.offset->stakes) reach(found.workLow, found.workHigh, stake);
  found.siteLow = found.workLow;
  found.siteHigh = found.workHigh;
  if (!job.site.boundary.empty()) reach(found.siteLow, found.siteHigh, job.site.boundary);
  for (const StandingBuilding& building : job.site.buildings)
    if (building.kind == BuildingKind::Existing)
      reach(found.siteLow, found.siteHigh, building.outline);
  if (job.site.benchMark) reach(found.siteLow, found.siteHigh, {job.site.benchMark->at});
  for (const BenchMark& mark : job.site.marks) reach(found.siteLow, found.siteHigh, {mark.at});
  return found;
}

void drawPlanSite(PlanPaper& plan) {
  for (const StandingBuilding& building : plan.job.site.buildings) {
    const bool stays = building.kind != BuildingKind::Demolish;
    if (stays) plan.fill(Layer::Buildings, 0.87, building.outline);
    plan.outline(Layer::Buildings, stays ? kMediumPen : kConcretePen, building.outline);
  }
  plan.outline(Layer::Boundary, kBoundaryPen, plan.job.site.boundary);
}

void drawPlanBuilding(PlanPaper& plan) {
  const SettingOut& out = plan.out;
  plan.outline(Layer::Cellar, kConcretePen, out.cellarOutline);
  // Walls on the cellar have no concrete of their own, but their line is set out all the same.
  Polygon outer, inner, outerBack, innerFront, innerFace;
  for (const WallFaces& faces : out.faces) {
    outer.push_back(faces.foundationOuter.start);
    inner.push_back(faces.foundationInner.start);
    outerBack.push_back(faces.outerLeafBack.start);
    innerFront.push_back(faces.innerLeafFront.start);
    innerFace.push_back(faces.innerFace.start);
  }
  plan.outline(Layer::Foundations, kConcretePen, outer);
  plan.outline(Layer::Foundations, kConcretePen, inner);
  // At small scales the faces lie close together: thinner pens keep them apart.
  const double scale = plan.sheet.view->scale;
  const bool small = scale > 100;
  const Pen face{small ? kPen013 : kPen018, LineType::Continuous};
  const Pen inside{small ? kPen018 : kPen035, LineType::Continuous};
  const Pen outside{small ? kPen035 : scale > 50 ? kPen050 : kPen070, LineType::Continuous};
  plan.outline(Layer::Faces, face, outerBack);
  plan.outline(Layer::Faces, face, innerFront);
  plan.outline(Layer::Faces, inside, innerFace);
  plan.outline(Layer::Outlines, outside, out.outline);
}

}  // namespace model
