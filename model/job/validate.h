// The checks behind validateJob(), one function for each part of the job.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "model/geometry/polygon.h"
#include "model/job/known.h"
#include "model/job/read_job.h"

namespace model {

// What every check works with. A check looks at the job, and adds what is wrong at the place of the
// key that would have to change.
struct Validation {
  const Job& job;
  const std::string& file;
  const KeyPlaces& places;
  // What could be read and is not wrong by itself. A check asks for every value that it needs, so
  // that none speaks of a default that only stands in, and for no other, so that none is silent
  // without need.
  Known known;
  BrokenParts& broken;  // what `known` goes by
  Problems& problems;

  // The place of a key as the file spells it, or of what it belongs to when it is absent.
  Place placeOf(std::string path) const;
  // A key that is wrong is not known any more, so that nothing else is held against it.
  void error(const std::string& path, std::string what, std::string instead) const;
  void warning(const std::string& path, std::string what, std::string instead) const;
};

// The plan once its outline is known to be sound.
struct PlanFacts {
  Polygon outline;                 // anticlockwise
  std::vector<size_t> wallOfEdge;  // which wall, in the file's order, an edge of `outline` is
  std::vector<size_t> edgeOfWall;  // and back
  std::vector<double> length;      // by wall
  std::vector<double> angle;       // interior, radians, by corner in the file's order
  size_t corners() const { return outline.size(); }
  std::string wallName(size_t wall) const;
};

// Levels that follow from the job when they are not given; as deriveSettingOut() has them.
struct LevelFacts {
  double floor = 0;  // finished ground floor
  double dampCourse = 0;
  double slabUnderside = 0;
  double wallTop = 0;
  double plateTop = 0;
  double eavesUnderside = 0;  // of the rafters at the outer face of a hip wall
  double outerLeafTop = 0;    // at a hip wall
  double lowestGround = 0;    // about: of the spot levels on and near the plan
  double tanPitch = 0;
};

// True when a level lies within reach of the ground floor; otherwise millimetres were probably
// given for metres, and the problem is added at `path`.
bool nearFloor(const Validation& v, const std::string& path, const std::string& who, double level);

// "A-B, B-C, C-D", or only how many there are when that is many.
std::string wallsInWords(size_t corners);
// The wall that `name` names, or nothing with the problem added at `path`; `who` begins the
// message.
std::optional<size_t> knownWall(const Validation& v, const std::string& path,
                                const std::string& who, const std::string& name, size_t corners);

// True when the points make a simple polygon of some size; otherwise what is wrong is added at
// `path`. `who` is "outline" or `building "Shed"`, `cornerName` names point i.
bool soundOutline(const Validation& v, const Outline& outline, const std::string& path,
                  const std::string& who, const std::function<std::string(size_t)>& cornerName);

std::optional<PlanFacts> validateOutline(const Validation& v);
LevelFacts levelFacts(const Job& job);
void validateLevels(const Validation& v, const LevelFacts& levels);
void validateWalls(const Validation& v, const PlanFacts& plan);
void validateBuiltIn(const Validation& v);
void validateFoundations(const Validation& v, const std::optional<PlanFacts>& plan,
                         const LevelFacts& levels);
void validateCellar(const Validation& v, const std::optional<PlanFacts>& plan,
                    const LevelFacts& levels);
// The cellar's outline is sound and anticlockwise.
void validateCellarDig(const Validation& v, const Polygon& cellar);
void validateTrenches(const Validation& v, const PlanFacts& plan);
void validateOpenings(const Validation& v, const std::optional<PlanFacts>& plan,
                      const LevelFacts& levels);
// After validateOpenings() and validateCellar().
void validateStairs(const Validation& v, const std::optional<PlanFacts>& plan,
                    const LevelFacts& levels);
void validateMovementJoints(const Validation& v, const std::optional<PlanFacts>& plan);
// Openings are known to lie in their walls.
void validateAirBricks(const Validation& v, const std::optional<PlanFacts>& plan,
                       const LevelFacts& levels);
// Openings are known to lie in their walls.
void validateCavityBarriers(const Validation& v, const std::optional<PlanFacts>& plan,
                            const LevelFacts& levels);
// Openings are known to lie in their walls.
void validateDampCourseSteps(const Validation& v, const std::optional<PlanFacts>& plan,
                             const LevelFacts& levels);
// After validateRoof() and validateSite(): openings, gables and buildings are known to be sound.
void validateCorbels(const Validation& v, const std::optional<PlanFacts>& plan,
                     const LevelFacts& levels);
// After validateSite(), by which buildings are known to be sound.
void validateJunctions(const Validation& v, const std::optional<PlanFacts>& plan,
                       const LevelFacts& levels);
// After validateSite(): by then site and plan are known to be sound, or not.
void validateGardenWalls(const Validation& v, const std::optional<PlanFacts>& plan);
void validateRoof(const Validation& v, const std::optional<PlanFacts>& plan,
                  const LevelFacts& levels);
void validateSite(const Validation& v, const std::optional<PlanFacts>& plan);
// After validateSite(), by which the boundary is known to be sound.
void validateSiteWork(const Validation& v, const std::optional<PlanFacts>& plan);

void validateStageViews(const Validation& v);

// Validates all that was readable.
Problems validateReadable(const Job& job, const std::string& file, const KeyPlaces& places,
                          const BrokenParts& broken);

}  // namespace model
