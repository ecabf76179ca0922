#include "model/drawing/stage_plan.h"

#include <algorithm>
#include <array>
#include <climits>
#include <cmath>
#include <map>
#include <numeric>
#include <set>

#include <glm/common.hpp>

#include "model/drawing/plan_parts.h"
#include "model/drawing/wrap_text.h"

namespace model {

namespace {

constexpr double kMargin = 7;    // for letters, mm
constexpr double kBelow = 4.5;   // for the words
constexpr int kSmallest = 1000;  // 1:1000
constexpr double kMade = 0.55, kTaken = 0.85;

struct PlanExtent {
  Vec2 low{1e300, 1e300}, high{-1e300, -1e300};
  void add(const Vec2& p) {
    low = glm::min(low, p);
    high = glm::max(high, p);
  }
  Vec2 size() const { return high - low; }
};

// Larger first, so that an island lies over the hole that it is in.
void sortForFilling(Regions& regions) {
  std::stable_sort(regions.begin(), regions.end(), [](const Region& a, const Region& b) {
    return signedArea(a.outer) > signedArea(b.outer);
  });
}

void drawRegions(PlanPaper& plan, Regions regions, double grey, const Pen& pen) {
  sortForFilling(regions);
  for (const Region& region : regions) {
    plan.fill(Layer::Outlines, grey, region.outer);
    for (const Polygon& hole : region.holes) plan.fill(Layer::Outlines, 1, hole);
  }
  for (const Region& region : regions) {
    plan.outline(Layer::Outlines, pen, region.outer);
    for (const Polygon& hole : region.holes) plan.outline(Layer::Outlines, pen, hole);
  }
}

size_t rootOf(std::vector<size_t>& parent, size_t i) {
  while (parent[i] != i) i = parent[i] = parent[parent[i]];
  return i;
}

using Triangles = std::vector<std::array<Vec2, 3>>;

// The triangles that face up, more than slivers, by the separate pieces of a solid: to unite a
// whole roof frame at once takes its square.
std::map<size_t, Triangles> piecesOf(const Solid& solid) {
  std::vector<size_t> parent(solid.points.size());
  std::iota(parent.begin(), parent.end(), size_t{0});
  for (const auto& [a, b, c] : solid.triangles) {
    parent[rootOf(parent, a)] = rootOf(parent, b);
    parent[rootOf(parent, b)] = rootOf(parent, c);
  }
  std::map<size_t, Triangles> pieces;
  for (const auto& triangle : solid.triangles) {
    std::array<Vec2, 3> points;
    for (size_t i = 0; i < 3; ++i) points[i] = Vec2(solid.points[triangle[i]]);
    if (cross(points[1] - points[0], points[2] - points[0]) > 1e-6)
      pieces[rootOf(parent, triangle[0])].push_back(points);
  }
  return pieces;
}

// The edges of triangles beside one another that no neighbour has the other way round, chained:
// what is inside lies on their left.
std::vector<Polygon> edgesOf(const Triangles& triangles) {
  using Key = std::pair<long long, long long>;
  const auto keyOf = [](const Vec2& p) {
    return Key{std::llround(p.x * 1e6), std::llround(p.y * 1e6)};
  };
  std::map<Key, Vec2> points;
  std::set<std::pair<Key, Key>> edges;
  for (const auto& triangle : triangles)
    for (size_t i = 0; i < 3; ++i) {
      const Key a = keyOf(triangle[i]), b = keyOf(triangle[(i + 1) % 3]);
      points.emplace(a, triangle[i]);
      if (a != b && edges.erase({b, a}) == 0) edges.insert({a, b});
    }
  std::vector<Polygon> loops;
  while (!edges.empty()) {
    Polygon loop;
    auto [start, at] = *edges.begin();
    edges.erase(edges.begin());
    loop.push_back(points.at(start));
    while (at != start) {
      loop.push_back(points.at(at));
      const auto next = edges.lower_bound({at, Key{LLONG_MIN, LLONG_MIN}});
      if (next == edges.end() || next->first != at) break;
      at = next->second;
      edges.erase(next);
    }
    if (loop.size() > 2) loops.push_back(std::move(loop));
  }
  return loops;
}

Regions regionsOf(const Triangles& triangles) {
  Regions outers, holes;
  for (Polygon& loop : edgesOf(triangles)) {
    const bool hole = signedArea(loop) < 0;
    if (hole) std::reverse(loop.begin(), loop.end());
    (hole ? holes : outers).push_back({std::move(loop), {}});
  }
  if (holes.empty() && outers.size() == 1) return outers;
  return subtract(unite(outers, {}), holes);
}

std::vector<StringLine> stringsOf(const Model& model, size_t stage) {
  std::vector<StringLine> found;
  for (const StringLine& line : model.works.strings)
    if (model.programme.indexOf(line.placed.stage) == stage) found.push_back(line);
  return found;
}

}  // namespace

Regions footprintsOf(const std::vector<const Element*>& elements) {
  Regions seen;
  for (const Element* element : elements)
    for (const auto& [piece, facingUp] : piecesOf(element->solid))
      for (Region& region : regionsOf(facingUp)) seen.push_back(std::move(region));
  return seen;
}

bool drawStagePlan(Sheet& sheet, const Area& area, const Model& model, const BriefFacts& facts,
                   size_t stage, const TextWidth& widthOf) {
  const Regions made = footprintsOf(facts.placed(stage));
  const Regions taken = footprintsOf(facts.removed(stage));
  const std::vector<StringLine> strings = stringsOf(model, stage);
  if (made.empty() && taken.empty() && strings.empty()) return false;
  PlanExtent reach;
  for (const Vec2& p : model.settingOut.ring(model.settingOut.faceDistances.outermost()))
    reach.add(p);
  // Boards and scaffolds may run out of it; what is built may not.
  for (const auto& elements : {facts.placed(stage), facts.removed(stage)})
    for (const Element* element : elements) {
      if (isTemporary(element->kind)) continue;
      for (const Vec3& p : element->solid.points) reach.add({p.x, p.y});
    }
  const Area drawn{area.low + Vec2{0, kBelow}, area.high};
  int scale = 0;
  for (const int each : {20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, kSmallest}) {
    const Vec2 size = reach.size() * (1000.0 / each);
    if (size.x + 2 * kMargin > drawn.width() || size.y + 2 * kMargin > drawn.height()) continue;
    scale = each;
    break;
  }
  if (scale == 0) return false;
  const Vec2 middle = (drawn.low + drawn.high) / 2.0;
  sheet.view = View{double(scale), middle - (reach.low + reach.high) / 2.0 * (1000.0 / scale)};
  const std::vector<LineEnds> none;
  PlanPaper plan{model.job, model.settingOut, none, widthOf, sheet, drawn, ClearSpace(drawn)};
  drawRegions(plan, taken, kTaken, kConcretePen);
  drawRegions(plan, made, kMade, kFinePen);
  plan.outline(Layer::Outlines, kMediumPen, model.settingOut.outline);
  for (const StringLine& line : strings)
    plan.line(Layer::Strings, kStringPen, {line.a.x, line.a.y}, {line.b.x, line.b.y});
  drawCornerLetters(plan);
  sheet.view.reset();
  std::string words = "1:" + std::to_string(scale);
  if (!made.empty()) words += "; dark: this stage";
  if (!taken.empty()) words += "; light, dashed: taken away";
  if (!strings.empty()) words += "; chain: lines";
  Text text;
  text.layer = Layer::Tables;
  text.size = 1.8;
  text.text = shortened(words, area.width(), {text.size, false}, widthOf);
  text.at = area.low + Vec2{0, 1};
  sheet.texts.push_back(text);
  return true;
}

}  // namespace model
