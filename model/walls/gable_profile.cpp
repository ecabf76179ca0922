#include "model/walls/gable_profile.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include <glm/geometric.hpp>

#include "model/walls/parapet_line.h"

namespace model {

namespace {

constexpr double kOnGrid = 2e-6;       // metres: booleans are worked on a grid of one micrometre
constexpr double kUnderSlope = 0.020;  // masonry left over a hole
constexpr double kSampling = 0.250;    // where front and back differ

// Where a ridge, hip or valley crosses a level line on plan.
struct Crossing {
  size_t roofLine = 0;
  double s = 0;
};

std::vector<Crossing> crossings(const SettingOut& settingOut, const WallLayer& layer, double inward,
                                double s0, double s1) {
  std::vector<Crossing> found;
  const Vec2 a = layer.wall->at(s0, inward), b = layer.wall->at(s1, inward);
  for (size_t i = 0; i < settingOut.roof.lines.size(); ++i) {
    const RoofLine& line = settingOut.roof.lines[i];
    if (line.kind == RoofLineKind::Eaves || line.kind == RoofLineKind::Verge) continue;
    const double d = cross(b - a, line.b - line.a);
    if (std::fabs(d) < 1e-12) continue;
    const double t = cross(line.a - a, line.b - line.a) / d;
    const double u = cross(line.a - a, b - a) / d;
    const double s = s0 + t * (s1 - s0);
    if (u < -1e-9 || u > 1 + 1e-9 || s < s0 + 1e-4 || s > s1 - 1e-4) continue;
    found.push_back({i, s});
  }
  std::sort(found.begin(), found.end(),
            [](const Crossing& p, const Crossing& q) { return p.s < q.s; });
  return found;
}

bool sameLines(const std::vector<Crossing>& a, const std::vector<Crossing>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const Crossing& p, const Crossing& q) { return p.roofLine == q.roofLine; });
}

// Level of a profile at s; beyond its ends, that of the end.
double levelOn(const std::vector<FacePair>& line, bool front, double s) {
  const auto at = [&](size_t i) { return front ? line[i].front : line[i].back; };
  if (s <= at(0).x) return at(0).y;
  for (size_t i = 0; i + 1 < line.size(); ++i) {
    const Vec2 p = at(i), q = at(i + 1);
    if (s <= q.x) return p.y + (q.y - p.y) * (q.x > p.x ? (s - p.x) / (q.x - p.x) : 1);
  }
  return at(line.size() - 1).y;
}

Vec2 nominal(const FacePair& pair) { return (pair.front + pair.back) * 0.5; }

}  // namespace

std::vector<FacePair> rafterLineOn(const SettingOut& settingOut, const WallLayer& layer) {
  const auto under = [&](double s, double inward) {
    return Vec2{s, settingOut.rafterUndersideAt(layer.wall->at(s, inward))};
  };
  const auto front = crossings(settingOut, layer, layer.outer, layer.startFront, layer.endFront);
  const auto back = crossings(settingOut, layer, layer.inner, layer.startBack, layer.endBack);
  std::vector<FacePair> line;
  line.push_back({under(layer.startFront, layer.outer), under(layer.startBack, layer.inner)});
  if (sameLines(front, back)) {
    for (size_t i = 0; i < front.size(); ++i) {
      line.push_back({under(front[i].s, layer.outer), under(back[i].s, layer.inner)});
    }
  } else {
    std::vector<double> places;
    for (const auto* list : {&front, &back}) {
      for (const Crossing& crossing : *list) places.push_back(crossing.s);
    }
    const int parts = static_cast<int>(std::ceil((layer.to - layer.from) / kSampling));
    for (int i = 1; i < parts; ++i) {
      places.push_back(layer.from + (layer.to - layer.from) * i / parts);
    }
    std::sort(places.begin(), places.end());
    double last = layer.from;
    for (const double s : places) {
      if (s < last + 1e-3 || s > layer.to - 1e-3) continue;
      const double z = std::min(under(s, layer.outer).y, under(s, layer.inner).y);
      line.push_back({{s, z}, {s, z}});
      last = s;
    }
  }
  line.push_back({under(layer.endFront, layer.outer), under(layer.endBack, layer.inner)});
  return line;
}

std::vector<FacePair> gableLineOn(const Job& job, const SettingOut& settingOut,
                                  const WallLayer& layer) {
  const auto wall = static_cast<size_t>(layer.wall - settingOut.walls.data());
  const std::vector<Vec2> top = parapetLine(job, settingOut, wall);
  if (top.empty()) return rafterLineOn(settingOut, layer);
  // Level at the ends of the wall, over the mitres of every layer.
  const auto at = [&](double s) {
    size_t i = 1;
    while (i + 1 < top.size() && top[i].x < s) ++i;
    const Vec2 &a = top[i - 1], &b = top[i];
    const double share = std::clamp((s - a.x) / std::max(b.x - a.x, 1e-9), 0.0, 1.0);
    return Vec2{s, a.y + (b.y - a.y) * share};
  };
  std::vector<FacePair> line;
  line.push_back({at(layer.startFront), at(layer.startBack)});
  for (const Vec2& p : top)
    if (p.x > layer.from + 1e-3 && p.x < layer.to - 1e-3) line.push_back({p, p});
  line.push_back({at(layer.endFront), at(layer.endBack)});
  return line;
}

double lowestOf(const std::vector<FacePair>& line) {
  double low = line[0].front.y;
  for (const FacePair& pair : line) low = std::min({low, pair.front.y, pair.back.y});
  return low;
}

double lowestBetween(const std::vector<FacePair>& line, double s0, double s1) {
  double low = 1e300;
  for (const bool front : {true, false}) {
    low = std::min({low, levelOn(line, front, s0), levelOn(line, front, s1)});
    for (const FacePair& pair : line) {
      const Vec2 p = front ? pair.front : pair.back;
      if (p.x > s0 && p.x < s1) low = std::min(low, p.y);
    }
  }
  return low;
}

Solid gableSolid(const WallLayer& layer, const std::vector<FacePair>& line, double bottom,
                 const std::vector<Rect>& cuts) {
  // The elevation's own top: half way between the two faces, from mitre to mitre.
  std::vector<Vec2> top;
  for (const FacePair& pair : line) top.push_back(nominal(pair));
  top.front().x = layer.from;
  top.back().x = layer.to;
  Region whole;
  whole.outer = {{layer.from, bottom}, {layer.to, bottom}};
  whole.outer.insert(whole.outer.end(), top.rbegin(), top.rend());
  Regions holes;
  for (Rect r : cuts) {
    r.s0 = std::max(r.s0, layer.from - 1);
    r.s1 = std::min(r.s1, layer.to + 1);
    if (r.z0 <= bottom + 1e-6) r.z0 = bottom - 1;
    r.z1 = std::min(r.z1, lowestBetween(line, r.s0, r.s1) - kUnderSlope);
    if (r.empty() || r.z1 <= bottom + 1e-6) continue;
    holes.push_back({{{r.s0, r.z0}, {r.s1, r.z0}, {r.s1, r.z1}, {r.s0, r.z1}}, {}});
  }
  const Regions parts = holes.empty() ? Regions{whole} : subtract({whole}, holes);
  const auto placeOf = [&](Vec2 p) -> FacePair {
    for (size_t i = 0; i < top.size(); ++i) {
      if (std::fabs(p.x - top[i].x) < kOnGrid && std::fabs(p.y - top[i].y) < kOnGrid) {
        return line[i];
      }
    }
    if (std::fabs(p.y - bottom) < kOnGrid) p.y = bottom;
    return layer.through(p);
  };
  Solid solid;
  for (const Region& part : parts) {
    std::vector<FacePair> places;
    for (const Vec2& p : regionPoints(part)) places.push_back(placeOf(p));
    solid.append(layer.solid(part, places));
  }
  return solid;
}

}  // namespace model
