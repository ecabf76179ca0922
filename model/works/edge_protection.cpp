#include "model/works/edge_protection.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/works/cellar_dig.h"
#include "model/works/plan_shapes.h"

namespace model {

namespace {

// Common practice, no source.
constexpr double kFromEdge = 0.400;
constexpr double kPost = 0.050, kRail = 0.045, kBay = 2.000;
constexpr double kHeight = 1.000;
constexpr double kClear = 0.250;  // of trenches and buildings
constexpr double kOff = 0.002;

Polygon anticlockwise(Polygon polygon) {
  if (signedArea(polygon) < 0) std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

Regions buildings(const Job& job, double clear) {
  Regions result;
  for (const StandingBuilding& building : job.site.buildings) {
    if (building.kind == BuildingKind::Demolish) continue;
    result = unite(result, grown(anticlockwise(building.outline), clear));
  }
  return result;
}

class RailBuilder {
 public:
  RailBuilder(const Job& job, const SettingOut& out, Works& works)
      : job_(job),
        out_(out),
        works_(works),
        dig_(deriveCellarDig(job, out)),
        strip_(strippedArea(job, out)) {
    const Regions trenches = foundationAreas(out);
    for (const Region& r : trenches) keepOut_ = unite(keepOut_, grown(r.outer, kClear));
    // Where the walls come up, on the cellar too.
    const Polygon within = out.ring(out.faceDistances.innerFace + kClear);
    keepOut_ = unite(keepOut_, subtract(grown(out.outline, kClear), {{within, {}}}));
    keepOut_ = unite(keepOut_, buildings(job, kClear));
    site_ = {{out.terrain.boundary, {}}};
  }

  void build() {
    const double margin = dig_.margin + dig_.reach + kFromEdge;
    const Polygon inside = out_.ring(out_.faceDistances.innerFace);
    for (const Region& region : grown(out_.cellarOutline, margin)) {
      for (size_t i = 0; i < region.outer.size(); ++i) {
        side(region.outer[i], region.outer[(i + 1) % region.outer.size()], inside);
      }
    }
    // Inside the building the ground is reduced with the trenches: the rails there are set again.
    put("outside", rails_[0], whole({StageKind::CellarDig}),
        whole({StageKind::CellarBackfill}, 0.9));
    put("inside", rails_[1], whole({StageKind::CellarDig}), whole({StageKind::TrenchDig}));
    put("inside, reset", rails_[2], whole({StageKind::TrenchDig}, 0.9),
        whole({StageKind::CellarBackfill}, 0.9));
  }

 private:
  void put(const std::string& id, const Solid& solid, const Placement& placed,
           const Placement& removed) {
    Element e;
    e.id = "edge protection/" + id;
    e.name = "Rails round the cellar hole, " + id;
    e.kind = ElementKind::EdgeProtection;
    e.material = Material::Timber;
    e.solid = solid;
    e.quantity = {length_[&solid - rails_], Unit::Metre};
    e.placed = placed;
    e.removed = removed;
    add(works_, std::move(e));
  }

  bool free(const Polygon& figure) const {
    if (!holds(site_, figure)) return false;
    return intersect({{figure, {}}}, keepOut_).empty();
  }

  // Posts at equal bays; rails between neighbours where both, and the way between, are free.
  void side(const Vec2& a, const Vec2& b, const Polygon& inside) {
    const Vec2 along = glm::normalize(b - a);
    const double length = glm::distance(a, b), inset = 0.1;
    if (length < 1) return;
    const double bays = std::max(1.0, std::ceil((length - 2 * inset) / kBay));
    std::vector<Vec2> posts;
    for (double k = 0; k <= bays; ++k) {
      posts.push_back(a + along * (inset + (length - 2 * inset) * k / bays));
    }
    for (size_t i = 0; i + 1 < posts.size(); ++i) {
      const Vec2 middle = (posts[i] + posts[i + 1]) / 2.0;
      const Polygon way =
          rectangleOnPlan(middle, along, glm::distance(posts[i], posts[i + 1]) + kPost, kPost);
      if (!free(way)) continue;
      const bool within = contains(inside, middle);
      bay(within ? 1 : 0, posts[i], posts[i + 1], along, false);
      if (within) bay(2, posts[i], posts[i + 1], along, true);
    }
  }

  double surface(const Vec2& post, const Vec2& along, bool reduced) const {
    const Polygon foot = rectangleOnPlan(post, along, kPost, kPost);
    // The ground may have a ridge or a peak within the foot.
    double high = levelsAlong(out_.terrain, foot).high;
    for (const Vec3& spot : out_.terrain.points) {
      if (contains(foot, Vec2(spot))) high = std::max(high, spot.z);
    }
    if (holds(strip_, foot)) high -= job_.ground.topsoil;
    return reduced ? std::min(high, out_.levels.oversite) : high;
  }

  // Both posts of each bay are its own half, so that neighbouring bays never share timber.
  void bay(size_t set, const Vec2& a, const Vec2& b, const Vec2& along, bool reduced) {
    const double half = kPost / 2;
    const Vec2 first = a + along * half, last = b - along * half;
    const double za = surface(first, along, reduced), zb = surface(last, along, reduced);
    Solid& solid = rails_[set];
    for (const auto& [at, z] : {std::pair{first, za}, std::pair{last, zb}}) {
      solid.append(
          prism(Region{rectangleOnPlan(at, along, kPost - kOff, kPost), {}}, z, z + kHeight));
    }
    const Vec2 from = first + along * (half + kRail / 2), to = last - along * (half + kRail / 2);
    for (const double height : {kHeight / 2, kHeight - kRail}) {
      solid.append(bar({from, za + height}, {to, zb + height}, kRail, kRail));
    }
    length_[set] += glm::distance(a, b);
  }

  const Job& job_;
  const SettingOut& out_;
  Works& works_;
  CellarDig dig_;
  Regions strip_, keepOut_, site_;
  Solid rails_[3];
  double length_[3] = {0, 0, 0};
};

}  // namespace

Regions cellarHole(const Job& job, const SettingOut& settingOut) {
  const Regions bottom = deriveCellarDig(job, settingOut).bottom;
  return subtract(intersect(bottom, {{settingOut.terrain.boundary, {}}}), buildings(job, 0));
}

Regions foundationArea(const SettingOut& settingOut, size_t index) {
  const FoundationRun& run = settingOut.foundations[index];
  const WallLine& wall = settingOut.walls[run.wall];
  const FoundationBand band = foundationBand(settingOut, run.wall);
  const double far = 50;  // beyond any mitre
  const double from = run.from > 0 ? run.from : -far;
  const double to = run.to < wall.length ? run.to : wall.length + far;
  const Polygon length{wall.at(from, far), wall.at(from, -far), wall.at(to, -far),
                       wall.at(to, far)};
  return intersect({{band.band, {}}}, {{length, {}}});
}

Regions foundationAreas(const SettingOut& settingOut) {
  Regions areas;
  for (size_t i = 0; i < settingOut.foundations.size(); ++i) {
    if (settingOut.foundations[i].onCellar) continue;
    areas = unite(areas, foundationArea(settingOut, i));
  }
  return areas;
}

void buildEdgeProtection(const Job& job, const SettingOut& settingOut, Works& works) {
  RailBuilder(job, settingOut, works).build();
}

}  // namespace model
