// Every level of the building, each worked out once.
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "model/job/birdsmouth.h"
#include "model/settingout/derive.h"

namespace model {

namespace {

// Common practice, no source: storey height left for the walls of the last storey.
constexpr double kLastStoreyWalls = 2.400;
// The concrete's top at least this far under the ground, so that facing starts below it (check
// M19: NBS-based specification F10/780, start of facing brickwork 150 mm below finished ground).
constexpr double kConcreteUnderGround = 0.150;
constexpr double kStripThickness = 0.200;       // common practice, no source
constexpr double kTrenchFillThickness = 0.500;  // common practice, no source
constexpr double kTrenchFillDepth = 0.600;      // common practice, no source

void floors(const Job& job, Levels& levels) {
  for (size_t i = 0; i < job.storeys.size(); ++i) {
    const double finished = job.storeys[i].floor;
    levels.finishedFloor.push_back(finished);
    if (i == 0) {
      const GroundFloor& floor = job.groundFloor;
      levels.structuralFloor.push_back(finished - floor.screed - floor.insulation);
      levels.joistBearing.push_back(0);
      levels.slabUnderside = levels.structuralFloor[0] - floor.slab;
      levels.oversite = levels.slabUnderside - floor.hardcore;
    } else {
      const UpperFloor& floor = job.upperFloor;
      levels.structuralFloor.push_back(finished - floor.finish);
      levels.joistBearing.push_back(levels.structuralFloor[i] - floor.deck - floor.joistDepth);
      levels.ceiling.push_back(levels.joistBearing[i] - floor.ceiling);
    }
  }
}

void wallAndRoof(const Job& job, SettingOut& out) {
  Levels& levels = out.levels;
  const double course = job.walls.course();
  levels.dampCourse = job.walls.dampCourse.value_or(levels.finishedFloor[0]);
  levels.wallTop = job.walls.top.value_or(
      courseNear(levels.finishedFloor.back() + kLastStoreyWalls, levels.dampCourse, course));
  levels.plateTop = levels.wallTop + job.roof.plateDepth;
  // The plate's outer edge is flush with the outer face of the inner leaf; the rafters sit on it
  // with their birdsmouths.
  out.rafterSeat = birdsmouthSeat(job.roof);
  const double inset = out.faceDistances.innerLeafFront + out.rafterSeat;
  levels.eavesUnderside = levels.plateTop - inset * out.tanPitch;
  levels.outerLeafTop =
      courseAtOrUnder(std::min(levels.wallTop, levels.eavesUnderside), levels.dampCourse, course);
  const double thickness = (job.roof.rafterDepth + job.roof.covering) /
                           std::cos(job.roof.pitch * std::numbers::pi / 180);
  levels.eaves = levels.eavesUnderside - job.roof.eaves * out.tanPitch + thickness;
  double highest = 0;
  for (const RoofFace& face : out.roof.faces) {
    for (const double run : face.run) highest = std::max(highest, run);
  }
  levels.ridge = levels.eaves + highest * out.tanPitch;
}

void foundation(const Job& job, Levels& levels) {
  const Foundations& given = job.foundations;
  const double course = job.walls.course(), good = job.ground.goodGround;
  const double underGround = levels.groundLow - kConcreteUnderGround;
  double thickness = given.thickness.value_or(kStripThickness);
  if (given.kind == FoundationKind::TrenchFill) {
    levels.foundationTop =
        given.top.value_or(courseAtOrUnder(underGround, levels.dampCourse, course));
    const double bottom = trenchFillBottom(job, levels.groundLow, levels.foundationTop);
    thickness = given.thickness.value_or(levels.foundationTop - bottom);
  } else {
    const double bearing = levels.groundLow - good + given.blinding + thickness;
    levels.foundationTop = given.top.value_or(
        courseAtOrUnder(std::min(bearing, underGround), levels.dampCourse, course));
  }
  levels.foundationFormation = levels.foundationTop - thickness - given.blinding;
}

void cellar(const Job& job, Levels& levels) {
  if (!job.cellar) return;
  levels.cellarFinishedFloor = job.cellar->floor;
  levels.cellarSlabTop = levels.cellarFinishedFloor - job.cellar->makeUp;
  levels.cellarSlabUnderside = levels.cellarSlabTop - job.cellar->slab;
  levels.cellarFormation = levels.cellarSlabUnderside - job.cellar->blinding;
  levels.cellarWallTop = levels.slabUnderside;
}

void commonHeads(SettingOut& out) {
  for (size_t storey = 0; storey < out.levels.finishedFloor.size(); ++storey) {
    std::map<long, int> counts;  // by tenths of a millimetre
    for (const BuiltOpening& opening : out.openings) {
      if (opening.storey == static_cast<int>(storey)) ++counts[std::lround(opening.head * 1e4)];
    }
    std::optional<long> best;
    for (const auto& [head, count] : counts) {
      if (!best || count > counts[*best]) best = head;
    }
    std::optional<double> level;
    for (const BuiltOpening& opening : out.openings) {
      if (best && opening.storey == static_cast<int>(storey) &&
          std::lround(opening.head * 1e4) == *best) {
        level = opening.head;
        break;
      }
    }
    out.levels.commonHead.push_back(level);
  }
}

}  // namespace

double trenchFillBottom(const Job& job, double groundLow, double top) {
  return std::min(groundLow - std::max(job.ground.goodGround, kTrenchFillDepth),
                  top - kTrenchFillThickness);
}

void deriveLevels(const Job& job, SettingOut& out) {
  out.terrain = deriveTerrain(job);
  const LevelRange ground = levelsAlong(out.terrain, out.outline);
  out.levels.groundLow = ground.low;
  out.levels.groundHigh = ground.high;
  floors(job, out.levels);
  wallAndRoof(job, out);
  out.levels.renderBottom =
      std::max(out.levels.dampCourse,
               levelsAlong(out.terrain, out.ring(out.faceDistances.finishedFace)).high);
  foundation(job, out.levels);
  cellar(job, out.levels);
  commonHeads(out);
}

}  // namespace model
