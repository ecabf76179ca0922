#include <algorithm>
#include <cmath>

#include "model/level_text.h"
#include "model/programme/fact_text.h"
#include "model/walls/wall_names.h"
#include "model/works/cellar_dig.h"
#include "model/works/cellar_leaves.h"
#include "model/works/ground_parts.h"

namespace model {
namespace {

constexpr double kTolerance = 0.001;

std::string quotedName(const StandingBuilding& building, const char* otherwise) {
  return building.name.empty() ? otherwise : "\"" + building.name + "\"";
}

std::vector<std::string> namesOf(const Job& job, bool stays) {
  std::vector<std::string> names;
  for (const StandingBuilding& b : job.site.buildings) {
    if ((b.kind != BuildingKind::Demolish) == stays)
      names.push_back(quotedName(b, "a standing building"));
  }
  return names;
}

std::string benchMark(const Job& job) {
  if (!job.site.benchMark)
    return "Choose a bench mark that nobody can knock, level it and box it in.";
  const BenchMark& mark = *job.site.benchMark;
  const bool named = !mark.name.empty() && mark.name != BenchMark{}.name;
  return "Mark and box in the bench mark" + (named ? ", \"" + mark.name + "\", at " : " at ") +
         levelText(mark.level) + ".";
}

void addSite(const Job& job, const SettingOut& out, Facts& facts) {
  const std::vector<std::string> staying = namesOf(job, true);
  facts["demolished"] = inSeries(namesOf(job, false));
  facts["photograph"] =
      staying.empty() ? "" : "Photograph " + inSeries(staying) + " as it stands now, every wall. ";
  if (staying.size() > 1)
    facts["photograph"] = "Photograph " + inSeries(staying) + " as they stand now, every wall. ";
  facts["bench-mark"] = benchMark(job);
  facts["topsoil"] = lengthText(job.ground.topsoil);
  facts["spread-topsoil"] = job.ground.topsoil > 0 ? "Spread the topsoil, lay" : "Lay";
  const size_t corners = out.corners.size();
  facts["corners"] =
      corners == 0 ? "" : out.corners.front().letter + " to " + cornerLetter(corners - 1);
  const bool diagonals = corners > 3;
  std::vector<std::string> lengths{"every wall length"};
  if (diagonals) lengths.push_back("the diagonals");
  std::vector<std::string> to = staying;
  if (job.site.boundary.size() >= 3) to.insert(to.begin(), "the boundary");
  if (!to.empty())
    lengths.push_back((to.size() > 1 ? "the distances to " : "the distance to ") + inSeries(to));
  facts["lengths"] = inSeries(lengths);
  facts["diagonals"] = diagonals ? "diagonals" : "lengths";
}

// The walls that have lines pulled for them.
std::string linedWalls(const SettingOut& out, const Works& works) {
  std::vector<std::string> without;
  for (const WallLine& wall : out.walls) {
    const bool lined = std::any_of(
        works.strings.begin(), works.strings.end(),
        [&](const StringLine& line) { return line.name.rfind(wall.name + " ", 0) == 0; });
    if (!lined) without.push_back(wall.name);
  }
  if (without.empty() || without.size() == out.walls.size()) return "every wall";
  return "every wall but " + inSeries(without);
}

// Of cellar walls that are laid and not cast.
void addCellarBlocks(const Job& job, const SettingOut& out, Facts& facts) {
  const Cellar drawn = job.cellar.value_or(Cellar{});
  const CellarLeaves cellar = cellarLeaves(job, out);
  const size_t lifts = cellarFillLifts(job, cellar).size();
  facts["cellar-wall"] = lengthText(drawn.wall);
  facts["cellar-leaf"] = lengthText(drawn.leaf);
  facts["cellar-core"] = lengthText(drawn.wall - 2 * drawn.leaf);
  facts["cellar-top-course"] = topCourseWords(job.walls, cellar.height());
  facts["cellar-lifts"] = lifts < 2 ? "one lift"
                                    : std::to_string(lifts) + " lifts of " +
                                          lengthText(cellar.height() / double(lifts)) +
                                          ", at most one a day";
}

void addCellar(const Job& job, const SettingOut& out, Facts& facts) {
  const Levels& levels = out.levels;
  facts["cellar-formation"] = levelText(levels.cellarFormation);
  facts["cellar-slab-underside"] = levelText(levels.cellarSlabUnderside);
  facts["cellar-slab-top"] = levelText(levels.cellarSlabTop);
  facts["cellar-wall-top"] = levelText(levels.cellarWallTop);
  addCellarBlocks(job, out, facts);
  const bool sloped = job.ground.batter < kUprightBatter;
  const std::string slope =
      "the sides sloped back at " + degreesText(job.ground.batter) + " degrees as the hole deepens";
  facts["dig-sides"] = sloped ? slope : "support going in to hold the sides as the hole deepens";
  facts["dug-sides"] = sloped ? "its sides sloped back" : "its sides held up";
}

void addTrenches(const Job& job, const SettingOut& out, const Works& works, Facts& facts) {
  std::vector<double> tops, formations, leanTops;
  for (const FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    tops.push_back(run.top);
    formations.push_back(run.formation);
  }
  bool reduced = false, sheeted = false;
  for (const Element& e : works.elements) {
    reduced |= e.id == kReducedLevelId;
    sheeted |= e.kind == ElementKind::TrenchSupport && e.placed.stage.kind == StageKind::TrenchDig;
    if (!isLeanFill(e)) continue;
    for (const double formation : formations)
      if (std::abs(e.top - formation) < kTolerance) leanTops.push_back(e.top);
  }
  facts["foundation-width"] = lengthText(job.foundations.width);
  facts["tops"] = levelsInSeries(tops);
  facts["formations"] = levelsInSeries(formations);
  facts["lean-tops"] = levelsInSeries(leanTops);
  facts["blinding"] = lengthText(job.foundations.blinding);
  facts["dig"] =
      reduced ? "Take the ground inside down to " + levelText(out.levels.oversite) + ", then dig"
              : "Dig";
  facts["trench-sides"] = sheeted ? "hold up the sides where it is deep" : "keep the sides upright";
  const auto [low, high] = std::minmax_element(tops.begin(), tops.end());
  const bool steps = !tops.empty() && *high - *low > kTolerance;
  facts["shutter-steps"] =
      steps ? "Shutter the steps, put the drain ducts through" : "Put the drain ducts through";
}

// Up to the damp course, in whole courses where the concrete is so many under it.
void addFootings(const Job& job, const SettingOut& out, const Works& works, Facts& facts) {
  const double course = job.walls.course();
  std::vector<double> odd;
  for (const FoundationRun& run : out.foundations) {
    if (course <= 0) break;
    const double courses = (out.levels.dampCourse - run.top) / course;
    if (std::abs(courses - std::round(courses)) * course > kTolerance) odd.push_back(run.top);
  }
  facts["damp-course"] = levelText(out.levels.dampCourse);
  facts["whole-courses"] = odd.empty() ? " in whole courses" : "";
  facts["odd-height"] = odd.empty() ? ""
                                    : " From " + levelsInSeries(odd) +
                                          " that is no whole number of courses: agree first where "
                                          "the odd height is taken up.";
  double fill = -1e300;
  for (const Element& e : works.elements)
    if (e.kind == ElementKind::CavityFill) fill = std::max(fill, e.top);
  facts["cavity-fill"] = fill < -1e299 ? "under the damp course"
                                       : "at " + levelText(fill) + ", " +
                                             lengthText(out.levels.dampCourse - fill) +
                                             " under the damp course";
}

// Over slabs: pins are set when their bed is laid, or first of all where they have none.
void addSlabPins(const SettingOut& out, const Works& works, Facts& facts) {
  const auto set = [&](StageKind stage) {
    return std::any_of(works.elements.begin(), works.elements.end(), [&](const Element& e) {
      return e.kind == ElementKind::LevelPin && e.placed.stage.kind == stage;
    });
  };
  const std::string toCellar =
      "level pins to top of concrete " + levelText(out.levels.cellarSlabTop);
  const std::vector<double>& floors = out.levels.structuralFloor;
  const std::string toSlab =
      "level pins to top of slab " + (floors.empty() ? "" : levelText(floors.front()));
  facts["pins-in-blinding"] =
      set(StageKind::CellarBlinding) ? " While it is green set the " + toCellar + "." : "";
  facts["pins-on-hardcore"] = set(StageKind::Oversite) ? " Then set the " + toSlab + "." : "";
  facts["cellar-pins-first"] = set(StageKind::CellarSlab) ? "Set the " + toCellar + ". " : "";
  facts["slab-pins-first"] = set(StageKind::GroundSlab) ? "Set the " + toSlab + ". " : "";
}

}  // namespace

bool isLeanFill(const Element& element) { return element.id.rfind("lean concrete/", 0) == 0; }

void addGroundFacts(const Job& job, const SettingOut& out, const Works& works, Facts& facts) {
  addSite(job, out, facts);
  facts["lined-walls"] = linedWalls(out, works);
  addCellar(job, out, facts);
  addTrenches(job, out, works, facts);
  addFootings(job, out, works, facts);
  addSlabPins(out, works, facts);
  const Levels& levels = out.levels;
  facts["oversite"] = levelText(levels.oversite);
  facts["or-lower"] = levels.groundLow - job.ground.topsoil < levels.oversite - kTolerance
                          ? ", or the stripped ground where it lies lower,"
                          : "";
  facts["slab-underside"] = levelText(levels.slabUnderside);
  facts["void"] = lengthText(levels.slabUnderside - levels.oversite);
}

}  // namespace model
