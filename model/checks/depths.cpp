// How deep: trenches that people work in, fill that a slab lies on, cellar walls that come out of
// the ground.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/checks/findings.h"
#include "model/checks/parts.h"
#include "model/job/value_words.h"

namespace model {
namespace {

// Common practice, no source: deeper trenches have their support drawn by an engineer.
constexpr double kDeepTrench = 2.500;
// Common practice, no source: over more fill than this the ground floor spans from wall to wall.
constexpr double kDeepFill = 0.600;
constexpr double kTolerance = 1e-3;
constexpr double kBare = 0.005;  // less is made up when the ground is put back

struct AtWall {
  std::string wall;
  double amount = 0, level = 0;
};

// The worst of each wall, worst wall first.
std::vector<AtWall> worstFirst(const std::vector<AtWall>& found) {
  std::vector<AtWall> worst;
  for (const AtWall& at : found) {
    const auto same = std::find_if(worst.begin(), worst.end(),
                                   [&](const AtWall& other) { return other.wall == at.wall; });
    if (same == worst.end())
      worst.push_back(at);
    else if (at.amount > same->amount)
      *same = at;
  }
  std::stable_sort(worst.begin(), worst.end(), [](const AtWall& a, const AtWall& b) {
    return a.amount > b.amount + kTolerance;
  });
  return worst;
}

std::vector<std::string> namesOf(const std::vector<AtWall>& walls, bool amounts) {
  std::vector<std::string> names;
  for (const AtWall& at : walls)
    names.push_back(at.wall +
                    (amounts ? " (" + lengthWords(std::round(at.amount * 1000) / 1000) + ")" : ""));
  return names;
}

LevelRange groundAlong(const SettingOut& out, const FoundationRun& run) {
  const WallLine& wall = out.walls[run.wall];
  return levelsAlong(out.terrain, wall.at(run.from), wall.at(run.to));
}

// The lowest ground along the inner face of a run.
double lowInside(const SettingOut& out, const FoundationRun& run) {
  const WallLine& wall = out.walls[run.wall];
  const Vec2 from = out.faces[run.wall].innerFace.start, to = out.faces[run.wall].innerFace.end;
  const double first = glm::dot(from - wall.start, wall.along);
  const double last = glm::dot(to - wall.start, wall.along);
  if (last <= first) return levelsAlong(out.terrain, from, to).low;
  const auto at = [&](double s) {
    return from + (to - from) * ((std::clamp(s, first, last) - first) / (last - first));
  };
  return levelsAlong(out.terrain, at(run.from), at(run.to)).low;
}

// Stripped ground under the floor, away from the walls, at its lowest.
double lowestWithin(const Job& job, const SettingOut& out, const Polygon& inside) {
  double low = 1e300;
  for (const Vec3& spot : out.terrain.points) {
    const Vec2 at(spot);
    if (contains(inside, at) && (out.cellarOutline.empty() || !contains(out.cellarOutline, at)))
      low = std::min(low, spot.z - job.ground.topsoil);
  }
  return low;
}

}  // namespace

DeepTrenches deepTrenches(const SettingOut& settingOut) {
  std::vector<AtWall> found;
  for (const FoundationRun& run : settingOut.foundations) {
    if (run.onCellar) continue;
    const double depth = groundAlong(settingOut, run).high - run.formation;
    if (depth > kDeepTrench + kTolerance)
      found.push_back({settingOut.walls[run.wall].name, depth, run.formation});
  }
  const std::vector<AtWall> worst = worstFirst(found);
  if (worst.empty()) return {};
  return {worst.front().amount, worst.front().level, namesOf(worst, false)};
}

void checkTrenchDepths(const Checking& check) {
  const DeepTrenches deep = deepTrenches(check.settingOut);
  if (deep.walls.empty()) return;
  check.warning("foundations",
                std::string(deep.walls.size() > 1 ? "the trenches for " : "the trench for ") +
                    listed(deep.walls) + (deep.walls.size() > 1 ? " are" : " is") + " up to " +
                    lengthWords(std::round(deep.most * 1000) / 1000) +
                    " deep, with the formation at " + levelWords(deep.formation),
                "below 2500 mm the support of the sides is for an engineer to draw, and piles or "
                "another foundation may serve better: ask before digging");
}

void checkDeepFill(const Checking& check) {
  const Job& job = check.job;
  const SettingOut& out = check.settingOut;
  if (job.groundFloor.kind != GroundFloorKind::Slab) return;
  const double top = out.levels.slabUnderside;
  const Polygon inside = out.ring(out.faceDistances.innerFace);
  std::vector<AtWall> found;
  for (const FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    const double stripped = lowInside(out, run) - job.ground.topsoil;
    const double depth = top - std::min(stripped, out.levels.oversite);
    if (depth > kDeepFill + kTolerance) found.push_back({out.walls[run.wall].name, depth, 0});
  }
  const std::vector<AtWall> worst = worstFirst(found);
  double most = worst.empty() ? 0 : worst.front().amount;
  const double within = lowestWithin(job, out, inside);
  if (within < 1e299) most = std::max(most, top - std::min(within, out.levels.oversite));
  if (most <= kDeepFill + kTolerance) return;
  const std::string depth = lengthWords(std::round(most * 1000) / 1000);
  check.warning("ground_floor.kind",
                "the slab of the ground floor lies on up to " + depth + " of fill" +
                    (worst.empty() ? ""
                                   : "; it is deep inside " + listed(namesOf(worst, true)) +
                                         ", which hold it back"),
                "over 600 mm of fill a suspended floor is usual; walls that hold back fill are for "
                "the engineer");
}

void checkBareCellarWalls(const Checking& check) {
  const SettingOut& out = check.settingOut;
  if (!check.job.cellar) return;
  std::vector<AtWall> found;
  for (const FoundationRun& run : out.foundations) {
    if (!run.onCellar) continue;
    const double ground = groundAlong(out, run).low;
    if (run.top - ground > kBare)
      found.push_back({out.walls[run.wall].name, run.top - ground, ground});
  }
  const std::vector<AtWall> worst = worstFirst(found);
  if (worst.empty()) return;
  check.warning("cellar",
                "the cellar wall and its waterproofing stand bare out of the ground along " +
                    listed(namesOf(worst, true)) + ": top of the cellar wall " +
                    levelWords(out.levels.cellarWallTop) + ", ground " +
                    levelWords(worst.front().level) + " at the lowest",
                "ask the designer how the wall is faced and the waterproofing ended there, or how "
                "the ground is made up");
}

}  // namespace model
