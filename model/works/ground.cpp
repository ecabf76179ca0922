// Everything below the ground floor, cut from one division of the plan: over each piece of it the
// works are followed in order - strip, dig, build, fill - so that nothing overlaps.
#include <algorithm>
#include <cmath>

#include "model/geometry/strata.h"
#include "model/works/ground_cuts.h"
#include "model/works/ground_parts.h"
#include "model/works/ground_places.h"
#include "model/works/parts.h"

namespace model {

namespace {

constexpr double kScreed = 0.075;  // of the cellar's make-up; common practice, no source

class GroundBuilder {
 public:
  GroundBuilder(const Job& job, const SettingOut& out)
      : job_(job),
        out_(out),
        zones_(deriveGroundZones(job, out)),
        mesh_(cutPlan(groundCuts(job, out, zones_))),
        parts_(makeGroundParts(job, out, zones_)),
        strata_(mesh_, exactLevels()) {}

  void build(Works& works) {
    std::vector<GroundPlace> places;
    for (const PlanFace& face : mesh_.faces) {
      places.push_back(groundPlaceAt(out_, zones_, face.inside));
    }
    for (std::uint32_t c = 0; c < mesh_.cells.size(); ++c) {
      const GroundPlace& place = places[mesh_.cells[c].face];
      if (place.onSite) follow(c, place);
    }
    std::vector<Solid> solids = strata_.solids();
    for (size_t i = 0; i < solids.size(); ++i) {
      if (solids[i].empty()) continue;
      GroundPart& part = parts_.parts[i];
      part.element.quantity = quantityOf(part.element.kind, solids[i]);
      if (part.placing) part.placing(part.element, bounds(solids[i]));
      part.element.solid = std::move(solids[i]);
      add(works, std::move(part.element));
    }
  }

 private:
  // In the trade's unit: sheets by the square metre, the rest by the cubic metre.
  Quantity quantityOf(ElementKind kind, const Solid& solid) const {
    const double amount = volume(solid);
    const Bounds b = bounds(solid);
    if (kind == ElementKind::CellarMembrane)
      return {amount / job_.cellar->membrane, Unit::SquareMetre};
    if (kind == ElementKind::FloorInsulation)
      return {amount / (b.high.z - b.low.z), Unit::SquareMetre};
    return {amount, Unit::CubicMetre};
  }

  std::vector<double> exactLevels() const {
    const Levels& l = out_.levels;
    std::vector<double> levels{zones_.base, l.oversite, l.slabUnderside};
    levels.insert(levels.end(), zones_.benches.begin(), zones_.benches.end());
    for (const FoundationRun& run : out_.foundations) {
      levels.insert(levels.end(), {run.top, run.underside, run.formation});
    }
    for (const GroundObstacle& obstacle : zones_.obstacles) levels.push_back(obstacle.bottom);
    for (const GardenGround& garden : zones_.gardens)
      levels.insert(levels.end(), {garden.base, garden.underside});
    if (job_.cellar) {
      levels.insert(levels.end(), {l.cellarFormation, l.cellarSlabUnderside, l.cellarSlabTop,
                                   l.cellarFinishedFloor, l.cellarWallTop});
    }
    return levels;
  }

  // ---- one cell, in the order of the works -----------------------------------

  CornerLevels ground(const GroundPlace& place) const {
    CornerLevels levels{};
    for (size_t k = 0; k < 3; ++k) {
      const Vec2& p = mesh_.points[mesh_.cells[cell_].corners[k]];
      levels[k] = place.triangle == kNowhere ? out_.terrain.levelAt(p)
                                             : out_.terrain.planeOf(place.triangle).at(p);
    }
    return levels;
  }

  static CornerLevels flat(double level) { return {level, level, level}; }
  static CornerLevels lower(const CornerLevels& a, const CornerLevels& b) {
    return {std::min(a[0], b[0]), std::min(a[1], b[1]), std::min(a[2], b[2])};
  }
  static CornerLevels higher(const CornerLevels& a, const CornerLevels& b) {
    return {std::max(a[0], b[0]), std::max(a[1], b[1]), std::max(a[2], b[2])};
  }

  void dig(std::uint32_t part, const CornerLevels& to) {
    if (filled_) return;
    const CornerLevels bottom = lower(surface_, to);
    strata_.add(part, cell_, bottom, surface_);
    surface_ = bottom;
  }

  void fill(std::uint32_t part, const CornerLevels& to) {
    leaveGround();
    const CornerLevels top = higher(surface_, to);
    strata_.add(part, cell_, surface_, top);
    surface_ = top;
  }
  void fill(std::uint32_t part, double to) { fill(part, flat(to)); }

  // From here on what stands is built, not dug.
  void leaveGround() {
    if (filled_) return;
    filled_ = true;
    strata_.add(parts_.ground, cell_, flat(zones_.base), surface_);
  }

  void follow(std::uint32_t cell, const GroundPlace& place) {
    cell_ = cell;
    filled_ = false;
    const CornerLevels grass = ground(place);
    CornerLevels subsoil = grass;
    for (double& z : subsoil) z -= job_.ground.topsoil;
    CornerLevels top = grass, soil = subsoil;
    const GroundObstacle* obstacle =
        place.obstacle == kNowhere ? nullptr : &zones_.obstacles[place.obstacle];
    if (obstacle) {
      top = lower(grass, flat(obstacle->bottom));
      soil = lower(subsoil, top);
    }
    surface_ = soil;
    strata_.add(place.strip ? parts_.topsoilStripped : parts_.topsoilKept, cell_, soil, top);
    if (!place.strip) {
      leaveGround();
      surface_ = top;
      if (obstacle && obstacle->stays) return;
      if (obstacle) {
        fill(parts_.trenchBackfillOutside, subsoil);
        fill(parts_.topsoilBack, grass);
      }
      return;
    }
    digCellar(place);
    buildCellar(place);
    if (place.inside && !place.cellar && !place.membrane)
      dig(parts_.reducedLevel, flat(out_.levels.oversite));
    buildFoundation(place);
    if (place.garden != kNowhere) buildGardenFoundation(place);
    fillUp(place, subsoil, grass);
    leaveGround();
  }

  void digCellar(const GroundPlace& place) {
    if (!place.cellarBottom && place.batter == kNowhere) return;
    CornerLevels bottom = flat(out_.levels.cellarFormation);
    if (!place.cellarBottom) {
      for (size_t k = 0; k < 3; ++k) {
        const Vec2& p = mesh_.points[mesh_.cells[cell_].corners[k]];
        bottom[k] = zones_.batter[place.batter].surface.at(p);
      }
    }
    const CornerLevels before = surface_;
    for (size_t i = 0; i < zones_.benches.size(); ++i) {
      dig(parts_.benches[i], higher(bottom, flat(zones_.benches[i])));
    }
    inCellarDig_ = false;
    for (size_t k = 0; k < 3; ++k) inCellarDig_ |= surface_[k] < before[k] - 1e-4;
  }

  void buildCellar(const GroundPlace& place) {
    if (!place.toe && !place.membrane) return;
    const Levels& levels = out_.levels;
    if (place.toe) {
      fill(parts_.cellarBlinding, levels.cellarSlabUnderside);
      fill(parts_.cellarSlab, levels.cellarSlabTop);
    }
    if (place.cellarInside) {
      fill(parts_.cellarMakeUp,
           std::max(levels.cellarSlabTop, levels.cellarFinishedFloor - kScreed));
      fill(parts_.cellarScreed, levels.cellarFinishedFloor);
    } else if (place.cellar) {
      // Walls of blocks are laid in model/works/cellar_walls.cpp.
      if (job_.cellar->kind == CellarWallKind::Concrete)
        fill(parts_.cellarWall, levels.cellarWallTop);
      else
        surface_ = higher(surface_, flat(levels.cellarWallTop));
    } else if (place.membrane) {
      fill(parts_.cellarMembrane, levels.cellarWallTop);
    }
  }

  void buildFoundation(const GroundPlace& place) {
    if (place.run == kNowhere || place.cellar || place.membrane) return;
    const FoundationRun& run = out_.foundations[place.run];
    if (run.onCellar) {
      // A sliver beside the cellar's wall where the outlines are not square to one another.
      if (place.underWalls) fill(parts_.massFill[place.run], run.top);
      return;
    }
    const size_t deepest = place.lowerRun == kNowhere ? place.run : place.lowerRun;
    const FoundationRun& lowest = out_.foundations[deepest];
    dig(parts_.trench[deepest], flat(lowest.formation));
    fill(parts_.massFill[deepest], lowest.formation);
    fill(parts_.blinding[deepest], lowest.underside);
    fill(parts_.foundation[deepest], lowest.top);
    if (deepest != place.run) fill(parts_.foundation[place.run], run.top);
  }

  void buildGardenFoundation(const GroundPlace& place) {
    const GardenGround& garden = zones_.gardens[place.garden];
    dig(parts_.gardenTrench[place.garden], flat(garden.underside));
    fill(parts_.gardenFoundation[place.garden], garden.base);
  }

  void fillUp(const GroundPlace& place, const CornerLevels& subsoil, const CornerLevels& grass) {
    if (place.underWalls || place.cellarInside || place.underGarden) return;
    const bool dug = (place.cellarBottom || place.batter != kNowhere) && inCellarDig_;
    if (place.inside) {
      const CornerLevels oversite = lower(subsoil, flat(out_.levels.oversite));
      fill(dug ? parts_.cellarBackfill : parts_.trenchBackfillInside, oversite);
      if (job_.groundFloor.kind == GroundFloorKind::Slab)
        fill(parts_.hardcore, out_.levels.slabUnderside);
      return;
    }
    fill(place.garden != kNowhere ? parts_.gardenBackfill[place.garden]
         : dug                    ? parts_.cellarBackfill
                                  : parts_.trenchBackfillOutside,
         subsoil);
    fill(parts_.topsoilBack, grass);
  }

  const Job& job_;
  const SettingOut& out_;
  const GroundZones zones_;
  const PlanMesh mesh_;
  GroundParts parts_;
  Strata strata_;
  std::uint32_t cell_ = 0;
  CornerLevels surface_{};  // of what stands over the cell so far
  bool filled_ = false;     // something is built on the dug ground
  bool inCellarDig_ = false;
};

}  // namespace

void buildGround(const Job& job, const SettingOut& settingOut, Works& works) {
  GroundBuilder(job, settingOut).build(works);
}

}  // namespace model
