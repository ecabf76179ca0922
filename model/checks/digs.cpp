// Digs beside one another and beside what stands already.
#include <algorithm>
#include <cmath>
#include <map>

#include "model/checks/findings.h"
#include "model/checks/parts.h"
#include "model/job/value_words.h"
#include "model/settingout/offsets.h"
#include "model/works/cellar_dig.h"

namespace model {
namespace {

constexpr double kSome = 1e-3;  // square metres: less is rounding
// Distances of the Party Wall etc. Act 1996, section 6: within 3 m and deeper than the neighbour's
// foundations; within 6 m and below a line drawn down at 45 degrees from their underside. Here
// they only say when to ask.
constexpr double kNear = 3.0, kFar = 6.0;
constexpr double kDeeper = 0.010;

// A part of the dig: its outline and the level it goes down to.
struct Dig {
  std::string wall;  // whose trench it is; empty for the cellar's
  Polygon outline;
  double formation = 0;
};

Polygon trench(const SettingOut& settingOut, const FoundationBand& band, const FoundationRun& run) {
  const WallLine& wall = settingOut.walls[run.wall];
  // A run that ends at a corner goes on to the band's mitre.
  const bool fromCorner = run.from<1e-6, toCorner = run.to> wall.length - 1e-6;
  return {fromCorner ? band.band[0] : wall.at(run.from, band.outer),
          toCorner ? band.band[1] : wall.at(run.to, band.outer),
          toCorner ? band.band[2] : wall.at(run.to, band.inner),
          fromCorner ? band.band[3] : wall.at(run.from, band.inner)};
}

std::vector<Dig> digsOf(const Job& job, const SettingOut& out) {
  std::vector<Dig> digs;
  if (job.cellar)
    for (const Region& region : deriveCellarDig(job, out).bottom)
      digs.push_back({"", region.outer, out.levels.cellarFormation});
  for (const FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    digs.push_back(
        {out.walls[run.wall].name, trench(out, foundationBand(out, run.wall), run), run.formation});
  }
  return digs;
}

double distanceBetween(const Polygon& dig, const Polygon& building) {
  if (area(intersect({{dig, {}}}, {{building, {}}})) > kSome) return 0;
  return shortestBetween(dig, building).distance;
}

// How far the dig goes below what the building's foundations seem to need; not positive when it
// keeps clear.
double below(const StandingBuilding& building, double bottom, double distance, double formation) {
  const double line = bottom - distance - formation;  // under the 45 degree line
  if (building.kind == BuildingKind::Existing) return line;
  if (distance > kFar) return 0;
  return distance <= kNear ? bottom - formation : line;
}

// What of a dig lies so near to a building that its depth matters.
double areaBeside(const Dig& dig, const Polygon& building, double reach) {
  return area(intersect({{dig.outline, {}}}, {{offsetMitred(building, -reach), {}}}));
}

std::string inQuotes(const StandingBuilding& building) {
  return building.name.empty() ? "the building" : "\"" + building.name + "\"";
}

// "the cellar dig and the trenches for A-B and B-C".
std::string digWords(const DigBeside& beside) {
  std::string words = beside.cellar ? "the cellar dig" : "";
  if (beside.walls.empty()) return words;
  if (beside.cellar) words += " and ";
  return words + (beside.walls.size() > 1 ? "the trenches for " : "the trench for ") +
         listed(beside.walls);
}

DigBeside besideBuilding(const SettingOut& out, const StandingBuilding& building,
                         const std::vector<Dig>& digs) {
  Polygon outline = building.outline;
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  DigBeside beside;
  beside.bottom = levelsAlong(out.terrain, outline).low - building.foundationDepth;
  std::map<std::string, double> areas;
  double deepest = kDeeper;
  for (const Dig& dig : digs) {
    const double distance = distanceBetween(dig.outline, outline);
    const double depth = below(building, beside.bottom, distance, dig.formation);
    if (depth <= kDeeper) continue;
    const double fall = beside.bottom - dig.formation;
    const double reach =
        building.kind == BuildingKind::Existing ? fall : std::clamp(fall, kNear, kFar);
    beside.cellar |= dig.wall.empty();
    if (!dig.wall.empty()) areas[dig.wall] += areaBeside(dig, outline, reach);
    if (depth < deepest - 1e-6 || (depth < deepest + 1e-6 && distance >= beside.away)) continue;
    deepest = depth;
    beside.formation = dig.formation;
    beside.away = distance;
  }
  for (const auto& [wall, amount] : areas) beside.walls.push_back(wall);
  std::stable_sort(
      beside.walls.begin(), beside.walls.end(),
      [&](const std::string& a, const std::string& b) { return areas[a] > areas[b] + kSome; });
  return beside;
}

void warnOf(const Checking& check, const DigBeside& beside) {
  const StandingBuilding& building = check.job.site.buildings[beside.building];
  std::string ask = "ask an engineer, before digging, how its foundations are held meanwhile";
  if (building.kind == BuildingKind::Neighbour)
    ask += ", and ask whether notice to the neighbour is due";
  const bool several = beside.walls.size() + (beside.cellar ? 1 : 0) > 1;
  const bool undermines = beside.bottom - beside.away > beside.formation + kDeeper;
  check.warning(
      "site.building[" + std::to_string(beside.building) + "]",
      digWords(beside) + (several ? " go down to " : " goes down to ") +
          levelWords(beside.formation) + ", " + lengthWords(std::round(beside.away * 1000) / 1000) +
          " from " + inQuotes(building) + (several ? " at the nearest" : "") +
          ", whose foundations go down to about " + levelWords(beside.bottom) +
          (undermines ? "; that is under a line at 45 degrees from them, and may undermine them"
                      : ""),
      ask);
}

// Does any of the strip lie over the cellar's open dig, with nothing dug out but working space or
// batter under it?
bool overTheDig(const Polygon& strip, double underside, const CellarDig& dig, double formation) {
  if (underside <= formation) return false;
  if (area(intersect({{strip, {}}}, dig.bottom)) > kSome) return true;
  for (const BatterSide& side : dig.sides)
    for (const Region& region : intersect({{strip, {}}}, {{side.area, {}}}))
      for (const Vec2& p : region.outer)
        if (area(region) > kSome && side.surface.at(p) < underside - kDeeper) return true;
  return false;
}

}  // namespace

void checkStripsOverTheDig(const Checking& check) {
  if (!check.job.cellar) return;
  const SettingOut& out = check.settingOut;
  const CellarDig dig = deriveCellarDig(check.job, out);
  std::vector<std::string> walls;
  for (const FoundationRun& run : out.foundations) {
    const std::string& wall = out.walls[run.wall].name;
    if (run.onCellar || (!walls.empty() && walls.back() == wall)) continue;
    const Polygon strip = trench(out, foundationBand(out, run.wall), run);
    if (overTheDig(strip, run.formation, dig, out.levels.cellarFormation)) walls.push_back(wall);
  }
  if (walls.empty()) return;
  check.warning("cellar",
                "beside the cellar the foundations of " + listed(walls) +
                    " cross what is dug for it, and stand there on lean concrete down to firm "
                    "ground",
                "ask the designer how they are carried there");
}

std::vector<DigBeside> digsBesideBuildings(const Job& job, const SettingOut& settingOut) {
  std::vector<DigBeside> found;
  if (job.site.buildings.empty()) return found;
  const std::vector<Dig> digs = digsOf(job, settingOut);
  for (size_t i = 0; i < job.site.buildings.size(); ++i) {
    if (job.site.buildings[i].kind == BuildingKind::Demolish) continue;
    DigBeside beside = besideBuilding(settingOut, job.site.buildings[i], digs);
    beside.building = i;
    if (beside.cellar || !beside.walls.empty()) found.push_back(std::move(beside));
  }
  return found;
}

void checkNearBuildings(const Checking& check) {
  for (const DigBeside& beside : digsBesideBuildings(check.job, check.settingOut))
    warnOf(check, beside);
}

}  // namespace model
