// Room beside the building for what a crew puts up there: scaffold, and profile boards.
#include <algorithm>
#include <cmath>
#include <map>

#include <glm/geometric.hpp>

#include "model/checks/parts.h"
#include "model/job/value_words.h"
#include "model/lines/boards.h"
#include "model/works/profile_places.h"
#include "model/works/scaffold_room.h"

namespace model {
namespace {

constexpr double kBoardsReach = 40;  // as far out as boards are looked for

double toMillimetre(double metres) { return std::round(metres * 1000) / 1000; }

bool isOf(const StandingBuilding& building, const std::string& name) {
  return building.kind != BuildingKind::Demolish && building.name == name && !name.empty();
}

// The key of what is in the way.
std::string keyOf(const Job& job, const std::string& beside) {
  for (size_t i = 0; i < job.site.buildings.size(); ++i)
    if (isOf(job.site.buildings[i], beside)) return "site.building[" + std::to_string(i) + "]";
  return beside == "the boundary" ? "site.boundary" : "outline";
}

std::string inWords(const Job& job, const std::string& beside) {
  const bool named = std::any_of(job.site.buildings.begin(), job.site.buildings.end(),
                                 [&](const StandingBuilding& b) { return isOf(b, beside); });
  return named ? "\"" + beside + "\"" : beside;
}

// Sides with nothing straight in front of them, but too little length beside what is.
void checkShortSides(const Checking& check) {
  const std::vector<ScaffoldGap> gaps = scaffoldRoom(check.job, check.settingOut).gaps;
  std::vector<std::string> walls;
  for (const BareSide& side : bareSides(check.job, check.settingOut)) {
    const bool said = std::any_of(gaps.begin(), gaps.end(), [&](const ScaffoldGap& gap) {
      return gap.wall == side.wall && gap.from < side.to && gap.to > side.from;
    });
    const WallLine& wall = check.settingOut.walls[side.wall];
    const bool most = side.to - side.from > wall.length / 2;
    const std::string name = most ? wall.name : "part of " + wall.name;
    if (!said && (walls.empty() || walls.back() != name)) walls.push_back(name);
  }
  if (walls.empty()) return;
  check.warning("outline",
                "no scaffold stands along " + listed(walls) +
                    ": what is free there, between its corners and what stands beside them, is too "
                    "short for one",
                "ask the scaffolder how that side is reached");
}

}  // namespace

// One line for all that one thing is in the way of.
void checkScaffoldRoom(const Checking& check) {
  struct Walls {
    std::vector<std::string> names;
    double room = 1e300, needed = 0;
  };
  std::map<std::string, Walls> byObstacle;
  for (const ScaffoldGap& gap : scaffoldRoom(check.job, check.settingOut).gaps) {
    Walls& walls = byObstacle[gap.beside];
    const WallLine& wall = check.settingOut.walls[gap.wall];
    const bool all = gap.to - gap.from > wall.length - 0.01;
    const std::string& corner = check.settingOut.corners[wall.from].letter;
    walls.names.push_back(all ? wall.name
                              : wall.name + " (from " + lengthWords(toMillimetre(gap.from)) +
                                    " to " + lengthWords(toMillimetre(gap.to)) + " of it, from " +
                                    corner + ")");
    walls.room = std::min(walls.room, gap.room);
    walls.needed = std::max(walls.needed, gap.needed);
  }
  for (const auto& [beside, walls] : byObstacle) {
    check.warning(keyOf(check.job, beside),
                  "there is no room for a scaffold along " + listed(walls.names) + ": " +
                      lengthWords(toMillimetre(walls.room)) + " to " + inWords(check.job, beside) +
                      " at the narrowest, and a scaffold takes " +
                      lengthWords(toMillimetre(walls.needed)),
                  "ask the scaffolder how that side is reached, and the neighbour where it needs "
                  "their ground");
  }
  checkShortSides(check);
}

void checkProfileRoom(const Checking& check) {
  const std::vector<LineEnds> places = placeProfiles(check.job, check.settingOut);
  struct Ends {
    std::vector<std::string> names, offsets, without;
  };
  std::map<std::string, Ends> byObstacle;
  for (size_t i = 0; i < places.size(); ++i) {
    const WallLine& wall = check.settingOut.walls[i];
    for (const bool atEnd : {false, true}) {
      if (!(atEnd ? places[i].noRoomAtEnd : places[i].noRoomAtStart)) continue;
      const auto found = inTheWay(check.job, check.settingOut, wall, atEnd, kBoardsReach);
      Ends& ends = byObstacle[found ? found->what : "the other boards"];
      const std::string& corner = check.settingOut.corners[atEnd ? wall.to : wall.from].letter;
      ends.names.push_back(wall.name + " beyond " + corner +
                           (found ? " (" + lengthWords(toMillimetre(found->away)) + ")" : ""));
      std::vector<std::string>& kept = places[i].offset ? ends.offsets : ends.without;
      const std::string offset =
          places[i].offset ? offsetWords(places[i].offset->out) + " of " : "";
      if (kept.empty() || kept.back() != offset + wall.name) kept.push_back(offset + wall.name);
    }
  }
  for (const auto& [what, ends] : byObstacle) {
    std::string instead;
    if (!ends.offsets.empty()) instead = "string offset lines: " + listed(ends.offsets);
    if (!ends.without.empty()) {
      instead += (instead.empty() ? "" : "; ") +
                 std::string("agree before the dig how the lines of ") + listed(ends.without) +
                 " are kept, such as marks on what stands there: no offset line has room either";
    }
    check.warning(keyOf(check.job, what),
                  "there is no room for profile boards between the dig and " +
                      inWords(check.job, what) + " for the lines of " + listed(ends.names),
                  instead);
  }
}

}  // namespace model
