// What the drawing says of a level, at the place where it was read.
#include <cmath>

#include "model/asbuilt/read_points.h"
#include "model/job/reading_targets.h"

namespace model {

std::optional<double> ReadPoints::buildingLevel(const std::string& family, size_t storey,
                                                const ReadAt& place) const {
  const Levels& l = out_.levels;
  if (family.starts_with("cellar-") && !job_.cellar) return std::nullopt;
  if (family == "cellar-formation") return l.cellarFormation;
  if (family == "cellar-blinding") return l.cellarSlabUnderside;
  if (family == "cellar-slab-top") return l.cellarSlabTop;
  if (family == "cellar-floor") return l.cellarFinishedFloor;
  if (family == "cellar-wall-top") return l.cellarWallTop;
  if (family == "oversite") return l.oversite;
  if (family == "slab-underside") return l.slabUnderside;
  if (family == "damp-course") return l.dampCourse;
  if (family == "outer-leaf-top") return l.outerLeafTop;
  if (family == "wall-top") return l.wallTop;
  if (family == "plate-top") return l.plateTop;
  if (family == "eaves") return l.eaves;
  if (family == "ridge") return l.ridge;
  const auto of = [&](const std::vector<double>& byStorey) -> std::optional<double> {
    if (storey >= byStorey.size()) return std::nullopt;
    return byStorey[storey];
  };
  if (family == "structural-floor") return of(l.structuralFloor);
  if (family == "finished-floor") return of(l.finishedFloor);
  if (family == "ceiling") return of(l.ceiling);
  if (family == "joist-bearing" && storey > 0) return of(l.joistBearing);
  if (!place.opening) return std::nullopt;
  if (family == "sill") return out_.openings[*place.opening].sill;
  if (family == "head") return out_.openings[*place.opening].head;
  return std::nullopt;
}

std::optional<double> ReadPoints::designLevel(const std::string& target, const ReadAt& place,
                                              double read, std::string& why) const {
  const std::string family = target.substr(0, target.find(':'));
  const size_t storey = storeyOfTarget(target, job_.storeys.size()).value_or(0);
  const ReadingTarget* known = findReadingTarget(target);
  const std::string words = known ? known->words : target;
  const bool formation = family == "formation", blinding = family == "blinding";
  if (!formation && !blinding && family != "top-of-concrete") {
    const auto level = buildingLevel(family, storey, place);
    if (!level) {
      why = family == "sill" || family == "head"
                ? "a " + words + " is held against an opening: name it under at"
                : "the drawing has no " + words;
    }
    return level;
  }
  std::optional<double> nearest;
  for (const FoundationRun* run : runsAt(place)) {
    if (run->onCellar && (formation || blinding)) continue;
    const double level = formation ? run->formation : blinding ? run->underside : run->top;
    if (!nearest || std::abs(level - read) < std::abs(*nearest - read)) nearest = level;
  }
  if (!nearest) why = "there is no " + words + " there: the wall stands on the cellar";
  return nearest;
}

}  // namespace model
