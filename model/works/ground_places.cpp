#include "model/works/ground_places.h"

#include <algorithm>

#include <glm/geometric.hpp>

namespace model {

namespace {

bool in(const Regions& regions, const Vec2& p) {
  return std::any_of(regions.begin(), regions.end(),
                     [&](const Region& r) { return contains(r, p); });
}
bool in(const Polygon& polygon, const Vec2& p) { return !polygon.empty() && contains(polygon, p); }

// The triangle of the ground's surface that a point well inside a face lies in.
size_t triangleAt(const SettingOut& settingOut, const Vec2& p) {
  const auto& points = settingOut.terrain.points;
  for (size_t t = 0; t < settingOut.terrain.triangles.size(); ++t) {
    const auto& corners = settingOut.terrain.triangles[t];
    bool within = true;
    for (size_t k = 0; k < 3 && within; ++k) {
      const Vec2 a(points[corners[k]]), b(points[corners[(k + 1) % 3]]);
      within = cross(b - a, p - a) >= 0;
    }
    if (within) return t;
  }
  return kNowhere;
}

size_t batterAt(const GroundZones& zones, const Vec2& p) {
  size_t best = kNowhere;
  for (size_t i = 0; i < zones.batter.size(); ++i) {
    if (!in(zones.batter[i].area, p)) continue;
    if (best == kNowhere || zones.batter[i].surface.at(p) < zones.batter[best].surface.at(p))
      best = i;
  }
  return best;
}

void findRun(const SettingOut& settingOut, const GroundZones& zones, const Vec2& p,
             GroundPlace& place) {
  for (size_t wall = 0; wall < zones.bands.size() && place.run == kNowhere; ++wall) {
    if (in(zones.bands[wall].band, p)) place.run = GroundZones::runAt(settingOut, wall, p);
  }
  if (place.run == kNowhere) return;
  for (const FoundationLap& lap : zones.laps) {
    if (lap.upper != place.run) continue;
    const WallLine& wall = settingOut.walls[settingOut.foundations[lap.upper].wall];
    const double s = glm::dot(p - wall.start, wall.along);
    const bool fromStart = lap.from <= settingOut.foundations[lap.upper].from;
    if (fromStart ? s > lap.to : s < lap.from) continue;
    if (place.lowerRun == kNowhere ||
        settingOut.foundations[lap.lower].top < settingOut.foundations[place.lowerRun].top)
      place.lowerRun = lap.lower;
  }
}

}  // namespace

GroundPlace groundPlaceAt(const SettingOut& settingOut, const GroundZones& zones, const Vec2& p) {
  GroundPlace place;
  place.onSite = in(zones.site, p);
  if (!place.onSite) return place;
  for (size_t i = 0; i < zones.obstacles.size(); ++i) {
    if (in(zones.obstacles[i].outline, p)) place.obstacle = i;
  }
  place.triangle = triangleAt(settingOut, p);
  place.strip = in(zones.strip, p);
  if (!place.strip) return place;
  place.inside = in(zones.inside, p);
  place.underWalls = !place.inside && in(settingOut.outline, p);
  place.cellarBottom = in(zones.cellarBottom, p);
  place.cellar = in(zones.cellar, p);
  place.cellarInside = in(zones.cellarInside, p);
  place.toe = place.cellar || in(zones.cellarToe, p);
  place.membrane = !place.cellar && in(zones.cellarMembrane, p);
  if (!place.cellarBottom) place.batter = batterAt(zones, p);
  findRun(settingOut, zones, p, place);
  for (size_t i = 0; i < zones.gardens.size(); ++i) {
    if (!in(zones.gardens[i].concrete, p)) continue;
    place.garden = i;
    place.underGarden =
        std::any_of(zones.gardens[i].footprint.begin(), zones.gardens[i].footprint.end(),
                    [&](const Polygon& part) { return in(part, p); });
  }
  return place;
}

}  // namespace model
