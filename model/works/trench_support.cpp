// What holds upright sides of the dig: sheets, walings and struts in the cellar hole, sheets in
// deep trenches.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/settingout/derive.h"
#include "model/works/cellar_dig.h"
#include "model/works/edge_protection.h"
#include "model/works/ground_parts.h"
#include "model/works/parts.h"
#include "model/works/plan_shapes.h"

namespace model {

namespace {

// Common practice, no source, all of it: what they carry is for a competent designer.
constexpr double kSheet = 0.030, kSheetAbove = 0.100;
constexpr double kWaling = 0.100, kWalingSpacing = 1.200, kFirstWaling = 0.400;
constexpr double kStrutWidth = 0.100, kStrutSpacing = 2.000;
constexpr double kOverSlab = 0.600;  // lowest struts above the slab, to work under
constexpr double kDeepTrench = 1.200;
constexpr double kRoomForWalings = 0.300;

struct Line {
  Vec2 a, b;
};

double highestAlong(const Terrain& terrain, const Vec2& a, const Vec2& b) {
  double high = std::max(terrain.levelAt(a), terrain.levelAt(b));
  for (const double t : terrainBreaks(terrain, a, b)) {
    high = std::max(high, terrain.levelAt(a + (b - a) * t));
  }
  return high;
}

std::vector<Line> edgesOf(const Regions& area) {
  std::vector<Line> edges;
  const auto round = [&](const Polygon& p) {
    for (size_t i = 0; i < p.size(); ++i) edges.push_back({p[i], p[(i + 1) % p.size()]});
  };
  for (const Region& region : area) {
    round(region.outer);
    for (const Polygon& hole : region.holes) round(hole);
  }
  return edges;
}

class CellarSupport {
 public:
  CellarSupport(const Job& job, const SettingOut& out, Works& works)
      : job_(job),
        out_(out),
        works_(works),
        dig_(deriveCellarDig(job, out)),
        hole_(cellarHole(job, out)) {
    for (const Region& r : hole_) {
      for (const Vec2& p : r.outer) high_ = std::max(high_, out.terrain.levelAt(p));
    }
    high_ -= job.ground.topsoil;
    low_ = out.levels.cellarFormation;
  }

  void build() {
    if (!dig_.sides.empty() || high_ <= low_) return;
    // Trenches come in through the side of the hole: nothing stands across them.
    const Regions trenches = foundationAreas(out_);
    sheets(trenches);
    if (dig_.margin - std::max(job_.cellar->toe, job_.cellar->membrane) < kSheet) return;
    if (dig_.margin < kRoomForWalings) return;
    for (const double level : walingLevels()) {
      walings(level, trenches);
      struts(level);
    }
  }

 private:
  Element element(const std::string& id, const std::string& name, Material material) {
    Element e;
    e.id = "cellar support/" + id;
    e.name = name;
    e.kind = ElementKind::TrenchSupport;
    e.material = material;
    return e;
  }

  // The share of the dig after which the bench that a level lies in is dug.
  double reached(double level) const {
    const double bench = 1.0 / static_cast<double>(dig_.benches.size());
    return std::clamp((high_ - level) / (high_ - low_) + bench, 0.0, 1.0);
  }

  void sheets(const Regions& trenches) {
    Regions taken = trenches;
    int number = 0;
    for (const Line& edge : edgesOf(hole_)) {
      const Regions strip{{edgeStrip(edge.a, edge.b, 0, kSheet), {}}};
      const Regions foot = subtract(intersect(strip, hole_), taken);
      taken = unite(taken, strip);
      if (foot.empty()) continue;
      const std::string n = std::to_string(++number);
      Element e = element("sheets " + n, "Trench sheets, cellar side " + n, Material::Steel);
      const double top = highestAlong(out_.terrain, edge.a, edge.b) + kSheetAbove;
      e.solid = prism(foot, low_, top);
      e.quantity = {glm::distance(edge.a, edge.b) * (top - low_), Unit::SquareMetre};
      // Each bench is sheeted when it is dug.
      const double bench = 1.0 / static_cast<double>(dig_.benches.size());
      e.placed = downward({StageKind::CellarDig}, high_, low_ + (high_ - low_) * bench, bench, 1);
      e.removed = supportLeaving(StageKind::CellarBackfill, out_);
      add(works_, std::move(e));
    }
  }

  std::vector<double> walingLevels() const {
    double ground = high_;
    for (const Line& edge : edgesOf(hole_)) {
      ground = std::min(ground, out_.terrain.levelAt(edge.a) - job_.ground.topsoil);
    }
    std::vector<double> levels;
    const double lowest = out_.levels.cellarSlabTop + kOverSlab;
    for (double z = ground - kFirstWaling; z >= lowest; z -= kWalingSpacing) levels.push_back(z);
    return levels;
  }

  void walings(double level, const Regions& trenches) {
    const Regions within = subtract(hole_, edgeStrips(hole_, 0, kSheet));
    const Regions foot =
        subtract(intersect(within, edgeStrips(hole_, 0, kSheet + kWaling)), trenches);
    if (foot.empty()) return;
    const std::string n = std::to_string(++waling_);
    Element e = element("walings " + n, "Walings, row " + n, Material::Timber);
    e.solid = prism(foot, level - kWaling / 2, level + kWaling / 2);
    double length = 0;
    for (const Line& edge : edgesOf(hole_)) length += glm::distance(edge.a, edge.b);
    e.quantity = {length, Unit::Metre};
    e.placed = whole({StageKind::CellarDig}, reached(level - kWaling));
    e.removed =
        whole({StageKind::CellarBackfill}, std::max(0.0, 1 - reached(level - kWaling / 2) - 0.05));
    add(works_, std::move(e));
  }

  // Across the shorter way, out before the wall forms come in.
  void struts(double level) {
    const auto edges = edgesOf(hole_);
    const auto longest = std::max_element(edges.begin(), edges.end(), [](auto& p, auto& q) {
      return glm::distance(p.a, p.b) < glm::distance(q.a, q.b) - 1e-6;
    });
    const Vec2 u = glm::normalize(longest->b - longest->a), v{-u.y, u.x};
    double from = 1e300, to = -1e300, low = 1e300, high = -1e300;
    for (const Line& edge : edges) {
      from = std::min(from, glm::dot(edge.a, u));
      to = std::max(to, glm::dot(edge.a, u));
      low = std::min(low, glm::dot(edge.a, v));
      high = std::max(high, glm::dot(edge.a, v));
    }
    const double inset = 0.8,
                 spaces = std::max(1.0, std::ceil((to - from - 2 * inset) / kStrutSpacing));
    const Regions within = subtract(hole_, edgeStrips(hole_, 0, kSheet + kWaling));
    Regions foot;
    for (double k = 0; k <= spaces; ++k) {
      const double at = from + inset + (to - from - 2 * inset) * k / spaces;
      const Polygon strip =
          rectangleOnPlan(u * at + v * ((low + high) / 2), v, high - low + 2, kStrutWidth);
      for (Region& r : intersect(within, {{strip, {}}})) foot.push_back(std::move(r));
    }
    if (foot.empty() || to - from < 2 * inset) return;
    const std::string n = std::to_string(waling_);
    Element e = element("struts " + n, "Struts, row " + n, Material::Timber);
    e.solid = prism(foot, level - kWaling / 2, level + kWaling / 2);
    e.quantity = {static_cast<double>(foot.size()), Unit::Each};
    e.placed = whole({StageKind::CellarDig}, std::min(1.0, reached(level - kWaling) + 0.02));
    // Out before the walls are begun.
    e.removed = whole({job_.cellar->kind == CellarWallKind::HollowBlock ? StageKind::CellarWalls
                                                                        : StageKind::CellarForms});
    add(works_, std::move(e));
  }

  const Job& job_;
  const SettingOut& out_;
  Works& works_;
  CellarDig dig_;
  Regions hole_;
  double high_ = -1e300, low_ = 0;
  int waling_ = 0;
};

// Sheets along both sides of a trench that is deep, standing on the concrete's level upwards.
void supportTrench(const Job& job, const SettingOut& out, const Polygon outerRings[2],
                   const Polygon innerRings[2], size_t run, double dug, Works& works) {
  const FoundationRun& r = out.foundations[run];
  const WallLine& wall = out.walls[r.wall];
  const double ground =
      highestAlong(out.terrain, wall.at(r.from), wall.at(r.to)) - job.ground.topsoil;
  if (r.onCellar || ground - r.formation <= kDeepTrench || ground - r.top < 0.3) return;
  const Polygon length{wall.at(r.from, -50), wall.at(r.to, -50), wall.at(r.to, 50),
                       wall.at(r.from, 50)};
  Regions foot;
  for (const Polygon* rings : {outerRings, innerRings}) {
    const Polygon strip{rings[0][wall.from], rings[0][wall.to], rings[1][wall.to],
                        rings[1][wall.from]};
    for (Region& piece : intersect({{strip, {}}}, {{length, {}}})) foot.push_back(std::move(piece));
  }
  // The cellar's hole has supports of its own, or sides that lean back and are filled again.
  if (job.cellar) {
    const CellarDig dig = deriveCellarDig(job, out);
    foot = subtract(foot, grown(out.cellarOutline, dig.margin + dig.reach));
  }
  // The trench ends at a building that stays.
  for (const StandingBuilding& building : job.site.buildings) {
    Polygon outline = building.outline;
    if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
    if (building.kind != BuildingKind::Demolish) foot = subtract(foot, {{outline, {}}});
  }
  if (foot.empty()) return;
  Element e;
  e.id = "trench sheets/wall " + wall.name + "/" + std::to_string(std::lround(r.from * 1000));
  e.name = "Trench sheets, wall " + wall.name;
  e.kind = ElementKind::TrenchSupport;
  e.material = Material::Steel;
  e.solid = prism(foot, r.top, ground);
  e.quantity = {2 * (r.to - r.from) * (ground - r.top), Unit::SquareMetre};
  e.placed = whole({StageKind::TrenchDig}, dug);
  e.removed = supportLeaving(StageKind::TrenchBackfill, out);
  e.wall = wall.name;
  add(works, std::move(e));
}

void supportTrenches(const Job& job, const SettingOut& out, Works& works) {
  const double outer = out.faceDistances.foundationOuter, inner = out.faceDistances.foundationInner;
  if (-outer < kSheet + 0.02) return;
  const Polygon outerRings[2] = {out.ring(outer), out.ring(outer + kSheet)};
  const Polygon innerRings[2] = {out.ring(inner - kSheet), out.ring(inner)};
  const auto turn = foundationTurns(out);
  for (size_t i = 0; i < out.foundations.size(); ++i) {
    const double dug = trenchDigShare(turn[i], static_cast<double>(turn.size()))[1];
    supportTrench(job, out, outerRings, innerRings, i, dug, works);
  }
}

}  // namespace

void buildTrenchSupport(const Job& job, const SettingOut& settingOut, Works& works) {
  if (job.cellar) {
    CellarSupport(job, settingOut, works).build();
    buildEdgeProtection(job, settingOut, works);
  }
  supportTrenches(job, settingOut, works);
}

}  // namespace model
