#include "model/works/ground_zones.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

#include "model/job/garden_outline.h"
#include "model/settingout/derive.h"
#include "model/works/cellar_dig.h"

namespace model {

namespace {

// Common practice, no source: room for boards, barrows and scaffold round the building.
constexpr double kStripMargin = 2.5;
constexpr double kBeyondBatter = 0.5;  // stripped behind the top of a batter
constexpr double kBesideGarden = 0.6;  // stripped beside the concrete of a garden wall
constexpr double kUnderFormation = 1.5, kUnderGround = 2.5;  // shown below the deepest dig

Polygon anticlockwise(Polygon polygon) {
  if (signedArea(polygon) < 0) std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

double lowestGround(const Terrain& terrain, const Polygon& outline) {
  double low = terrain.levelAt(outline[0]);
  for (size_t i = 0; i < outline.size(); ++i) {
    const Vec2 a = outline[i], b = outline[(i + 1) % outline.size()];
    low = std::min(low, terrain.levelAt(a));
    for (const double t : terrainBreaks(terrain, a, b)) {
      low = std::min(low, terrain.levelAt(a + (b - a) * t));
    }
  }
  return low;
}

void findObstacles(const Job& job, const SettingOut& out, GroundZones& zones) {
  for (const StandingBuilding& building : job.site.buildings) {
    GroundObstacle obstacle;
    obstacle.name = building.name;
    obstacle.outline = anticlockwise(building.outline);
    obstacle.bottom = lowestGround(out.terrain, obstacle.outline) - building.foundationDepth;
    obstacle.stays = building.kind != BuildingKind::Demolish;
    zones.obstacles.push_back(std::move(obstacle));
  }
}

void addLap(const Job& job, const SettingOut& out, const std::vector<FoundationBand>& bands,
            size_t a, size_t b, std::vector<FoundationLap>& laps) {
  const FoundationRun &first = out.foundations[a], &second = out.foundations[b];
  if (first.onCellar || second.onCellar || std::abs(first.top - second.top) < 1e-6) return;
  const bool rising = second.top > first.top;
  FoundationLap lap{rising ? a : b, rising ? b : a, 0, 0};
  const FoundationRun& upper = out.foundations[lap.upper];
  // Higher concrete that goes as deep as the lower has no step under it.
  if (upper.formation <= out.foundations[lap.lower].formation + 1e-6) return;
  const double length = lapAtStep(job.foundations.kind, std::abs(first.top - second.top),
                                  upper.top - upper.underside);
  const FoundationBand& band = bands[upper.wall];
  if (rising) {
    lap.from = upper.from;
    // Round a corner the lap counts from where the other wall's concrete ends.
    const double start = first.wall == second.wall ? upper.from : std::max(0.0, band.startInner);
    lap.to = std::min(start + length, upper.to);
  } else {
    lap.to = upper.to;
    const double end = first.wall == second.wall
                           ? upper.to
                           : std::min(out.walls[upper.wall].length, band.endInner);
    lap.from = std::max(end - length, upper.from);
  }
  laps.push_back(lap);
}

double deepest(const SettingOut& out, const GroundZones& zones, bool hasCellar) {
  double low = out.levels.oversite;
  for (const FoundationRun& run : out.foundations) low = std::min(low, run.formation);
  for (const GroundObstacle& obstacle : zones.obstacles) low = std::min(low, obstacle.bottom);
  for (const GardenGround& garden : zones.gardens) low = std::min(low, garden.underside);
  return hasCellar ? std::min(low, out.levels.cellarFormation) : low;
}

}  // namespace

double lapAtStep(FoundationKind kind, double step, double thickness) {
  if (kind == FoundationKind::TrenchFill) return std::max(2 * step, 1.0);
  return std::max({2 * step, thickness, 0.3});
}

Regions strippedArea(const Job& job, const SettingOut& settingOut) {
  Regions area = grown(settingOut.outline, kStripMargin);
  if (job.cellar) {
    const CellarDig dig = deriveCellarDig(job, settingOut);
    const double reach = dig.reach > 0 ? dig.reach + kBeyondBatter : 0;
    area = unite(area, grown(settingOut.cellarOutline, dig.margin + reach));
  }
  for (const GardenWall& wall : job.gardenWalls) {
    const Polygon footprint = gardenFootprint(job.walls, wall);
    area = unite(area, grown(footprint, gardenReach(job.walls, wall) + kBesideGarden));
  }
  area = intersect(area, {{settingOut.terrain.boundary, {}}});
  for (const StandingBuilding& building : job.site.buildings) {
    if (building.kind == BuildingKind::Demolish) continue;
    area = subtract(area, {{anticlockwise(building.outline), {}}});
  }
  return area;
}

size_t GroundZones::runAt(const SettingOut& settingOut, size_t wall, const Vec2& p) {
  const double s = glm::dot(p - settingOut.walls[wall].start, settingOut.walls[wall].along);
  size_t found = settingOut.foundations.size();
  for (size_t i = 0; i < settingOut.foundations.size(); ++i) {
    const FoundationRun& run = settingOut.foundations[i];
    if (run.wall != wall) continue;
    if (found == settingOut.foundations.size() || run.from <= s) found = i;
  }
  return found;
}

FoundationBand foundationBand(const SettingOut& settingOut, size_t index) {
  const WallLine& wall = settingOut.walls[index];
  const FaceLine& outer = settingOut.faces[index].foundationOuter;
  const FaceLine& inner = settingOut.faces[index].foundationInner;
  FoundationBand band;
  band.outer = outer.inward;
  band.inner = inner.inward;
  band.band = {outer.start, outer.end, inner.end, inner.start};
  band.startInner = glm::dot(inner.start - wall.start, wall.along);
  band.endInner = glm::dot(inner.end - wall.start, wall.along);
  return band;
}

std::vector<FoundationLap> foundationLaps(const Job& job, const SettingOut& settingOut,
                                          const std::vector<FoundationBand>& bands) {
  std::vector<FoundationLap> laps;
  const size_t n = settingOut.foundations.size();
  for (size_t i = 0; i < n && n > 1; ++i) addLap(job, settingOut, bands, i, (i + 1) % n, laps);
  return laps;
}

GroundZones deriveGroundZones(const Job& job, const SettingOut& settingOut) {
  GroundZones zones;
  zones.site = settingOut.terrain.boundary;
  findObstacles(job, settingOut, zones);
  zones.inside = settingOut.ring(settingOut.faceDistances.innerFace);
  zones.strip = strippedArea(job, settingOut);
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    zones.bands.push_back(foundationBand(settingOut, i));
  }
  zones.laps = foundationLaps(job, settingOut, zones.bands);
  if (job.cellar) {
    zones.cellar = settingOut.cellarOutline;
    zones.cellarInside = offsetMitred(zones.cellar, job.cellar->wall);
    zones.cellarToe = offsetMitred(zones.cellar, -job.cellar->toe);
    zones.cellarMembrane = offsetMitred(zones.cellar, -job.cellar->membrane);
    const CellarDig dig = deriveCellarDig(job, settingOut);
    zones.cellarBottom = dig.bottom;
    zones.batter = dig.sides;
    zones.benches = dig.benches;
  }
  for (const GardenWall& wall : job.gardenWalls)
    zones.gardens.push_back(gardenGround(job, planGardenWall(job, wall)));
  double ground = settingOut.levels.groundLow;
  for (const Vec3& p : settingOut.terrain.points) ground = std::min(ground, p.z);
  zones.base = std::min(deepest(settingOut, zones, job.cellar.has_value()) - kUnderFormation,
                        ground - kUnderGround);
  return zones;
}

}  // namespace model
