// What is said about garden walls, with this job's levels.
#include <algorithm>

#include "model/level_text.h"
#include "model/programme/fact_text.h"
#include "model/works/garden_plan.h"

namespace model {
namespace {

// "1 brick", "1 1/2 bricks".
std::string bricksText(double bricks) {
  const int halves = static_cast<int>(2 * bricks + 0.5);
  const std::string whole = halves > 1 ? std::to_string(halves / 2) : "";
  const std::string half = halves % 2 ? (whole.empty() ? "half a" : " 1/2") : "";
  return whole + half + (halves > 2 ? " bricks" : " brick");
}

std::string bondText(BondKind bond) {
  switch (bond) {
    case BondKind::Stretcher:
      return "stretcher bond";
    case BondKind::Header:
      return "header bond";
    case BondKind::Stack:
      return "stack bond";
    case BondKind::English:
      return "English bond";
    case BondKind::Flemish:
      return "Flemish bond";
    case BondKind::EnglishGardenWall:
      return "English garden wall bond";
    case BondKind::FlemishGardenWall:
      return "Flemish garden wall bond";
  }
  return "";
}

// Lengths that no whole bricks come out in.
std::string cutText(const Job& job) {
  std::vector<std::string> cuts;
  for (size_t i = 0; i < job.gardenWalls.size(); ++i) {
    const GardenPlan plan = planGardenWall(job, job.gardenWalls[i]);
    for (size_t k = 0; k < plan.lengths.size(); ++k) {
      if (plan.lengths[k].run.cut == 0) continue;
      cuts.push_back(gardenWallName(job, i) +
                     (plan.lengths.size() > 1 ? ", length " + std::to_string(k + 1) : "") + " to " +
                     lengthText(plan.lengths[k].run.cut));
    }
  }
  if (cuts.empty()) return "";
  return " Whole bricks do not come out everywhere: cut one near the middle of each course, in " +
         inSeries(cuts) + ".";
}

// " Damp course in the bed under course 6, at -0.150, ..."
std::string dampCourseText(const Job& job) {
  std::vector<std::string> places;
  for (size_t i = 0; i < job.gardenWalls.size(); ++i) {
    const GardenPlan plan = planGardenWall(job, job.gardenWalls[i]);
    if (!plan.dampCourse) continue;
    const std::string of =
        job.gardenWalls.size() > 1 ? " of " + gardenWallName(job, i) : std::string();
    places.push_back("on course " + std::to_string(*plan.dampCourse) + of + ", at " +
                     levelText(plan.levelOf(*plan.dampCourse)));
  }
  if (places.empty()) return "";
  return " Bed the damp course in mortar right through wall and piers, " + inSeries(places) + ".";
}

std::string corbelText(const Job& job) {
  std::vector<std::string> walls;
  for (size_t i = 0; i < job.gardenWalls.size(); ++i) {
    const GardenWall& wall = job.gardenWalls[i];
    if (wall.corbelCourses == 0) continue;
    const std::string of =
        job.gardenWalls.size() > 1 ? " of " + gardenWallName(job, i) : std::string();
    walls.push_back((wall.corbelCourses > 1
                         ? "the last " + std::to_string(wall.corbelCourses) + " courses" + of +
                               ", each " + lengthText(wall.corbelStep)
                         : "the last course" + of + " " + lengthText(wall.corbelStep)) +
                    " past the one below at each side");
  }
  if (walls.empty()) return "";
  return " Stand out " + inSeries(walls) +
         ": headers, their joints filled, weighted down before the next.";
}

}  // namespace

void addGardenFacts(const Job& job, const Works& works, Facts& facts) {
  std::vector<std::string> names, bonds;
  std::vector<double> formations, bases, tops;
  bool coping = false;
  for (size_t i = 0; i < job.gardenWalls.size(); ++i) {
    const GardenWall& wall = job.gardenWalls[i];
    names.push_back(gardenWallName(job, i));
    const std::string bond = bricksText(wall.bricks) + " in " + bondText(wall.bond);
    if (std::find(bonds.begin(), bonds.end(), bond) == bonds.end()) bonds.push_back(bond);
    formations.push_back(wall.base - wall.foundationThickness);
    bases.push_back(wall.base);
    tops.push_back(wall.top);
  }
  for (const Element& e : works.elements) coping |= e.kind == ElementKind::Coping;
  facts["garden-walls"] = names.empty() ? "the garden wall" : inSeries(names);
  facts["garden-bonds"] = bonds.empty() ? "every end and corner in its bond"
                                        : "every end and corner in its bond: " + inSeries(bonds);
  facts["garden-formations"] = levelsInSeries(formations);
  facts["garden-bases"] = levelsInSeries(bases);
  facts["garden-tops"] = levelsInSeries(tops);
  facts["garden-cut"] = cutText(job) + dampCourseText(job) + corbelText(job);
  facts["garden-coping"] =
      coping ? ", then bed the coping with its drips clear of both faces, over a damp course" : "";
  facts["garden-stand"] = names.size() > 1 ? "Garden walls stand" : "The garden wall stands";
  facts["day-rise"] = lengthText(job.laying.dayRise);
}

}  // namespace model
