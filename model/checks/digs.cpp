// Digs beside one another and beside what stands already.
#include <algorithm>
#include <cmath>

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
  std::string what;  // "the cellar dig", "the trench for A-B"
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

std::vector<Dig> digsOf(const Checking& check) {
  const SettingOut& out = check.settingOut;
  std::vector<Dig> digs;
  if (check.job.cellar)
    for (const Region& region : deriveCellarDig(check.job, out).bottom)
      digs.push_back({"the cellar dig", region.outer, out.levels.cellarFormation});
  for (const FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    digs.push_back({"the trench for " + out.walls[run.wall].name,
                    trench(out, foundationBand(check.job, out, run.wall), run), run.formation});
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

void checkBuildingBeside(const Checking& check, size_t index, const std::vector<Dig>& digs) {
  const StandingBuilding& building = check.job.site.buildings[index];
  Polygon outline = building.outline;
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  const double bottom =
      levelsAlong(check.settingOut.terrain, outline).low - building.foundationDepth;
  const Dig* worst = nullptr;
  double deepest = kDeeper, away = 0;
  for (const Dig& dig : digs) {
    const double distance = distanceBetween(dig.outline, outline);
    const double depth = below(building, bottom, distance, dig.formation);
    const bool nearer = depth > deepest - 1e-6 && distance < away;
    if (depth <= kDeeper || (depth <= deepest && !nearer)) continue;
    worst = &dig;
    deepest = depth;
    away = distance;
  }
  if (!worst) return;
  const std::string name = building.name.empty() ? "the building" : "\"" + building.name + "\"";
  std::string ask = "ask an engineer, before digging, how its foundations are held meanwhile";
  if (building.kind == BuildingKind::Neighbour)
    ask += ", and ask whether notice to the neighbour is due";
  check.warning("site.building[" + std::to_string(index) + "]",
                worst->what + " goes down to " + levelWords(worst->formation) + ", " +
                    lengthWords(std::round(away * 1000) / 1000) + " from " + name +
                    ", whose foundations go down to about " + levelWords(bottom) +
                    (bottom - away > worst->formation + kDeeper
                         ? "; that is under a line at 45 degrees from them, and may undermine them"
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
    const Polygon strip = trench(out, foundationBand(check.job, out, run.wall), run);
    if (overTheDig(strip, run.formation, dig, out.levels.cellarFormation)) walls.push_back(wall);
  }
  if (walls.empty()) return;
  check.warning("cellar",
                "beside the cellar the foundations of " + listed(walls) +
                    " cross what is dug for it, and stand there on lean concrete down to firm "
                    "ground",
                "ask the designer how they are carried there");
}

void checkNearBuildings(const Checking& check) {
  if (check.job.site.buildings.empty()) return;
  const std::vector<Dig> digs = digsOf(check);
  for (size_t i = 0; i < check.job.site.buildings.size(); ++i)
    if (check.job.site.buildings[i].kind != BuildingKind::Demolish)
      checkBuildingBeside(check, i, digs);
}

}  // namespace model
