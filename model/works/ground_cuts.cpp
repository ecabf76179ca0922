#include "model/works/ground_cuts.h"

#include <algorithm>
#include <optional>
#include <set>

#include <glm/geometric.hpp>

namespace model {

namespace {

class Cutter {
 public:
  Cutter(const Job& job, const SettingOut& out, const GroundZones& zones)
      : job_(job), out_(out), zones_(zones) {
    for (size_t t = 0; t < out.terrain.triangles.size(); ++t) {
      Polygon corners;
      for (const unsigned i : out.terrain.triangles[t]) corners.push_back(plan(i));
      triangles_.push_back(std::move(corners));
      planes_.push_back(out.terrain.planeOf(t));
    }
  }

  std::vector<PlanCut> cuts() {
    terrain();
    outline(zones_.site);
    for (const GroundObstacle& obstacle : zones_.obstacles) {
      outline(obstacle.outline);
      subsoilAgainst(obstacle.bottom, boxOf(obstacle.outline));
      grassAgainst(obstacle.bottom, boxOf(obstacle.outline));
    }
    outline(out_.outline);
    outline(zones_.inside);
    outlines(zones_.strip);
    foundations();
    subsoilAgainst(out_.levels.oversite, boxOf(out_.outline));
    cellar();
    gardens();
    return std::move(cuts_);
  }

 private:
  Vec2 plan(unsigned i) const { return Vec2(out_.terrain.points[i]); }

  void line(const Vec2& a, const Vec2& b) { cuts_.push_back({a, b}); }

  void outline(const Polygon& polygon) {
    for (size_t i = 0; i < polygon.size(); ++i) line(polygon[i], polygon[(i + 1) % polygon.size()]);
  }

  void outlines(const Regions& regions) {
    for (const Region& region : regions) {
      outline(region.outer);
      for (const Polygon& hole : region.holes) outline(hole);
    }
  }

  static Polygon boxOf(const Polygon& polygon) {
    Vec2 low = polygon[0], high = polygon[0];
    for (const Vec2& p : polygon) {
      low = glm::min(low, p);
      high = glm::max(high, p);
    }
    return {low, {high.x, low.y}, high, {low.x, high.y}};
  }

  void terrain() {
    std::set<std::array<unsigned, 2>> edges;
    for (const auto& t : out_.terrain.triangles) {
      for (size_t k = 0; k < 3; ++k) {
        const unsigned a = t[k], b = t[(k + 1) % 3];
        edges.insert({std::min(a, b), std::max(a, b)});
      }
    }
    for (const auto& [a, b] : edges) line(plan(a), plan(b));
  }

  // Where `rise` is zero, inside both convex areas.
  void zeroLine(const Plane& rise, const Polygon& area, const Polygon& other) {
    const double square = glm::dot(rise.slope, rise.slope);
    if (square < 1e-12) return;  // level, or nearly: cornerwise levels are good enough
    const Vec2 origin = rise.slope * (-rise.level / square);
    const Vec2 along = glm::normalize(Vec2{-rise.slope.y, rise.slope.x});
    double from = -1e6, to = 1e6;
    for (const Polygon* polygon : {&area, &other}) {
      for (size_t i = 0; i < polygon->size(); ++i) {
        const Vec2 p = (*polygon)[i], u = (*polygon)[(i + 1) % polygon->size()] - p;
        const double start = cross(u, origin - p), step = cross(u, along);
        if (std::abs(step) < 1e-12) {
          if (start < 0) return;
        } else if (step > 0) {
          from = std::max(from, -start / step);
        } else {
          to = std::min(to, -start / step);
        }
      }
    }
    if (to - from > 1e-5) line(origin + along * from, origin + along * to);
  }

  static Plane difference(const Plane& a, const Plane& b) {
    return {a.slope - b.slope, a.level - b.level};
  }

  // Where the underside of the topsoil stands at a level.
  void subsoilAgainst(double level, const Polygon& area) {
    grassAgainst(level + job_.ground.topsoil, area);
  }

  // Where the surface of the ground stands at a level.
  void grassAgainst(double level, const Polygon& area) {
    for (size_t t = 0; t < triangles_.size(); ++t) {
      zeroLine(difference(planes_[t], Plane::flat(level)), triangles_[t], area);
    }
  }

  void across(size_t wall, double s) {
    const FoundationBand& band = zones_.bands[wall];
    const WallLine& w = out_.walls[wall];
    line(w.at(s, band.outer), w.at(s, band.inner));
  }

  void foundations() {
    for (const FoundationBand& band : zones_.bands) outline(band.band);
    for (const FoundationRun& run : out_.foundations) {
      if (run.from > 0) across(run.wall, run.from);
      const Polygon area = boxOf(zones_.bands[run.wall].band);
      grassAgainst(run.top, area);
      const std::set<double> levels{run.top, run.underside, run.formation};
      for (const double level : levels) {
        subsoilAgainst(level, area);
        for (const BatterSide& side : zones_.batter) {
          zeroLine(difference(side.surface, Plane::flat(level)), side.area, area);
        }
      }
    }
    for (const FoundationLap& lap : zones_.laps) {
      const FoundationRun& upper = out_.foundations[lap.upper];
      if (lap.from > upper.from) across(upper.wall, lap.from);
      if (lap.to < upper.to) across(upper.wall, lap.to);
    }
  }

  void cellar() {
    if (zones_.cellar.empty()) return;
    for (const Polygon* p :
         {&zones_.cellar, &zones_.cellarInside, &zones_.cellarToe, &zones_.cellarMembrane}) {
      outline(*p);
    }
    outlines(zones_.cellarBottom);
    for (const double level : zones_.benches) {
      for (const Region& region : zones_.cellarBottom) subsoilAgainst(level, boxOf(region.outer));
    }
    batter();
  }

  void gardens() {
    for (const GardenGround& garden : zones_.gardens) {
      for (const Polygon& part : garden.footprint) outline(part);
      outlines(garden.concrete);
      for (const Region& region : garden.concrete) {
        for (const double level : {garden.base, garden.underside}) {
          grassAgainst(level, boxOf(region.outer));
          subsoilAgainst(level, boxOf(region.outer));
        }
      }
    }
  }

  void batter() {
    std::vector<double> levels = zones_.benches;
    levels.push_back(out_.levels.oversite);
    for (size_t i = 0; i < zones_.batter.size(); ++i) {
      const BatterSide& side = zones_.batter[i];
      line(side.area[1], side.area[2]);  // its two ends
      line(side.area[3], side.area[0]);
      for (const double level : levels) {
        zeroLine(difference(side.surface, Plane::flat(level)), side.area, side.area);
        subsoilAgainst(level, side.area);
      }
      for (size_t t = 0; t < triangles_.size(); ++t) {
        Plane under = planes_[t];
        under.level -= job_.ground.topsoil;
        zeroLine(difference(side.surface, under), side.area, triangles_[t]);
      }
      for (size_t j = i + 1; j < zones_.batter.size(); ++j) {
        zeroLine(difference(side.surface, zones_.batter[j].surface), side.area,
                 zones_.batter[j].area);
      }
    }
  }

  const Job& job_;
  const SettingOut& out_;
  const GroundZones& zones_;
  std::vector<Polygon> triangles_;
  std::vector<Plane> planes_;
  std::vector<PlanCut> cuts_;
};

}  // namespace

std::vector<PlanCut> groundCuts(const Job& job, const SettingOut& settingOut,
                                const GroundZones& zones) {
  return Cutter(job, settingOut, zones).cuts();
}

}  // namespace model
