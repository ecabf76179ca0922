#include "model/checks/check_building.h"

#include "model/checks/parts.h"

namespace model {

namespace {

constexpr size_t kMostListed = 6;

// Of the key, or of the nearest thing above it that the file has.
Place placeOf(const KeyPlaces& places, std::string path) {
  while (!path.empty()) {
    const auto found = places.find(path);
    if (found != places.end()) return found->second;
    const size_t cut = path.find_last_of(".[");
    if (cut == std::string::npos) break;
    path.erase(cut);
  }
  return {};
}

}  // namespace

void Checking::warning(std::string path, std::string what, std::string instead) const {
  problems.push_back({file, placeOf(places, std::move(path)), Severity::Warning, std::move(what),
                      std::move(instead)});
}

void Checking::error(std::string path, std::string what, std::string instead) const {
  problems.push_back({file, placeOf(places, std::move(path)), Severity::Error, std::move(what),
                      std::move(instead)});
}

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (size_t i = 0; i < names.size(); ++i) {
    if (i == kMostListed) return text + " and " + std::to_string(names.size() - i) + " more";
    const bool last = i + 1 == names.size();
    if (i > 0) text += last ? " and " : ", ";
    text += names[i];
  }
  return text;
}

std::string listedApart(const std::vector<std::string>& phrases) {
  std::string text;
  for (size_t i = 0; i < phrases.size(); ++i) {
    if (i > 0) text += "; ";
    if (i == kMostListed) return text + "and " + std::to_string(phrases.size() - i) + " more";
    text += phrases[i];
  }
  return text;
}

Problems checkBuilding(const Job& job, const SettingOut& settingOut, const std::string& file,
                       const KeyPlaces& places) {
  Problems problems;
  const Checking checking{job, settingOut, file, places, problems};
  checkLintels(checking);
  checkOpeningWidths(checking);
  checkBondKind(checking);
  checkBond(checking);
  checkMovementJoints(checking);
  checkOpeningCourses(checking);
  checkConcreteInTheGround(checking);
  checkGoodGround(checking);
  checkStripsOverTheDig(checking);
  checkSlopes(checking);
  checkNearBuildings(checking);
  checkScaffoldRoom(checking);
  checkProfileRoom(checking);
  checkLimits(checking);
  checkRoofOnSite(checking);
  checkTrenchDepths(checking);
  checkGroundUnderSteps(checking);
  checkAirBricks(checking);
  checkDeepFill(checking);
  checkBareCellarWalls(checking);
  checkOpeningsOverDrops(checking);
  checkOpeningsFacingBuildings(checking);
  checkEavesOverOpenings(checking);
  checkEavesOverGround(checking);
  checkStairs(checking);
  checkSetUps(checking);
  return problems;
}

Problems checkBrickSizes(const Job& job, const SettingOut& settingOut, const std::string& file,
                         const KeyPlaces& places) {
  Problems problems;
  const Checking checking{job, settingOut, file, places, problems};
  checkOpeningWidths(checking);
  checkBond(checking);
  return problems;
}

}  // namespace model
