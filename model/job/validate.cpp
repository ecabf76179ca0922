#include "model/job/validate.h"

#include "model/job/job_names.h"
#include "model/job/key_table.h"
#include "model/job/nearest.h"

namespace model {

namespace {

// "roof.pitch" or "opening[2].at", but neither "roof" nor "opening[2]".
bool isKey(const std::string& path) {
  std::string plain;
  bool inside = false;
  for (const char c : path) {
    if (c == '[') inside = true;
    if (!inside) plain += c;
    if (c == ']') inside = false;
  }
  return findTable(plain) == nullptr;
}

}  // namespace

Place Validation::placeOf(std::string path) const {
  while (!path.empty()) {
    const auto found = places.find(path);
    if (found != places.end()) return found->second;
    const size_t cut = path.find_last_of(".[");
    if (cut == std::string::npos) break;
    path.erase(cut);
  }
  return {};
}

void Validation::error(const std::string& path, std::string what, std::string instead) const {
  problems.push_back({file, placeOf(path), Severity::Error, std::move(what), std::move(instead)});
  if (isKey(path)) broken.insert(path);
}

void Validation::warning(const std::string& path, std::string what, std::string instead) const {
  problems.push_back({file, placeOf(path), Severity::Warning, std::move(what), std::move(instead)});
}

std::string PlanFacts::wallName(size_t wall) const { return nameOfWall(wall, corners()); }

std::string wallsInWords(size_t corners) {
  constexpr size_t kMostListed = 12;
  if (corners > kMostListed) {
    return "the walls run from " + nameOfWall(0, corners) + " to " +
           nameOfWall(corners - 1, corners);
  }
  std::string words;
  for (size_t i = 0; i < corners; ++i) words += (i ? ", " : "") + nameOfWall(i, corners);
  return "the walls are " + words;
}

std::optional<size_t> knownWall(const Validation& v, const std::string& path,
                                const std::string& who, const std::string& name, size_t corners) {
  const auto wall = wallNamed(name, corners);
  if (wall) return wall;
  std::vector<std::string> names;
  for (size_t i = 0; i < corners; ++i) names.push_back(nameOfWall(i, corners));
  const auto near = nearest(name, names);
  v.error(path, who + ": there is no wall \"" + name.substr(0, 60) + "\"",
          (near ? "did you mean \"" + *near + "\"? " : std::string{}) + wallsInWords(corners));
  return std::nullopt;
}

Problems validateReadable(const Job& job, const std::string& file, const KeyPlaces& places,
                          const BrokenParts& broken) {
  Problems problems;
  BrokenParts wrong = broken;
  const Validation v{job, file, places, Known(job, wrong), wrong, problems};
  const auto plan = validateOutline(v);
  const LevelFacts levels = levelFacts(job);
  validateLevels(v, levels);
  if (plan) validateWalls(v, *plan);
  validateBuiltIn(v);
  validateFoundations(v, plan, levels);
  validateCellar(v, plan, levels);
  validateOpenings(v, plan, levels);
  validateStairs(v, plan, levels);
  validateMovementJoints(v, plan);
  validateAirBricks(v, plan, levels);
  validateCavityBarriers(v, plan, levels);
  validateDampCourseSteps(v, plan, levels);
  validateRoof(v, plan, levels);
  validateSite(v, plan);
  validateCorbels(v, plan, levels);
  validateJunctions(v, plan, levels);
  validateGardenWalls(v, plan);
  validateSiteWork(v, plan);
  validateStageViews(v);
  return problems;
}

}  // namespace model
