// The checks behind checkBuilding(), one function and one file each.
#pragma once

#include <string>
#include <vector>

#include "model/checks/check_building.h"

namespace model {

// What every check works with.
struct Checking {
  const Job& job;
  const SettingOut& settingOut;
  const std::string& file;
  const KeyPlaces& places;
  Problems& problems;

  // At the place of the key, or of the nearest thing above it that the file has.
  void warning(std::string path, std::string what, std::string instead) const;
  // Of what must not be built; only where the reader could not know it yet.
  void error(std::string path, std::string what, std::string instead) const;
};

void checkLintels(const Checking&);         // room over the opening, and bearing at both ends
void checkOpeningWidths(const Checking&);   // in whole half bricks
void checkBondKind(const Checking&);        // what a kind of bond leaves to the designer
void checkBond(const Checking&);            // piers in whole half bricks
void checkMovementJoints(const Checking&);  // how far apart they are
void checkOpeningCourses(const Checking&);  // heads and sills in whole courses
void checkConcreteInTheGround(const Checking&);
void checkGoodGround(const Checking&);        // under the foundations
void checkStripsOverTheDig(const Checking&);  // foundations over the cellar's working space
void checkSlopes(const Checking&);            // of the cellar's dig, under what stands
void checkNearBuildings(const Checking&);     // digs beside what stands
void checkScaffoldRoom(const Checking&);      // beside boundary, buildings and other walls
void checkProfileRoom(const Checking&);       // the same for profile boards
void checkLimits(const Checking&);            // of a permission
void checkTrenchDepths(const Checking&);
void checkGroundUnderSteps(const Checking&);  // of the damp course
void checkAirBricks(const Checking&);         // what they lead to, and the ground outside
void checkDeepFill(const Checking&);          // under a slab
void checkBareCellarWalls(const Checking&);   // out of the ground
void checkOpeningsOverDrops(const Checking&);
void checkOpeningsFacingBuildings(const Checking&);
void checkEavesOverOpenings(const Checking&);
void checkEavesOverGround(const Checking&);
void checkStairs(const Checking&);      // steepness, headroom, guarding, room at both ends
void checkRoofOnSite(const Checking&);  // eaves over the boundary or another building

void checkSetUps(const Checking&);  // each instrument on what it stands on

// "A-B", "A-B and B-C", "A-B, B-C and C-D"; beyond a few only how many more there are.
std::string listed(const std::vector<std::string>& names);
// The same between phrases that have commas of their own, "a; b; c".
std::string listedApart(const std::vector<std::string>& phrases);

}  // namespace model
