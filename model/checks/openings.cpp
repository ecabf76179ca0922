// Openings: what carries the wall over them, and whether their widths suit the bricks.
#include <algorithm>
#include <cmath>

#include "model/checks/parts.h"
#include "model/job/value_words.h"
#include "model/settingout/coursing.h"
#include "model/walls/leaf_plan.h"

namespace model {
namespace {

// Source of the bearing: check M20, 150 mm for lintels over ordinary openings.
constexpr double kBearing = 0.150;
constexpr double kTolerance = 1e-4;
// A width nearer than this to whole half bricks is taken up in the joints: common practice, no
// source.
constexpr double kTakenUp = 0.005;
// A level nearer than this to a whole course is taken up in the beds: common practice, no source.
constexpr double kOffCourse = 0.002;

std::string pathOf(const Checking& check, size_t opening) {
  return "opening[" + std::to_string(check.settingOut.openings[opening].jobIndex) + "]";
}

// The lintel over an opening in a leaf, or nothing.
const LintelPlan* lintelOver(const LeafPlan& plan, size_t opening) {
  for (const LintelPlan& lintel : plan.lintels)
    if (lintel.opening == opening) return &lintel;
  return nullptr;
}

void checkLintel(const Checking& check, size_t index, const std::vector<LeafPlan>& leaves) {
  const BuiltOpening& opening = check.settingOut.openings[index];
  const std::string name = openingLabel(check.settingOut, index);
  double bearing = kBearing;
  for (const LeafPlan& leaf : leaves) {
    if (leaf.layer.empty()) continue;
    const LintelPlan* lintel = lintelOver(leaf, index);
    if (!lintel) {
      check.warning(pathOf(check, index) + ".head",
                    name + ": there is no room for a lintel over its head at " +
                        levelWords(opening.head) + " in the " + nameOf(leaf.side),
                    "ask the designer what carries the roof over it, or lower the head");
      return;
    }
    bearing = std::min({bearing, opening.s0 - lintel->rect.s0, lintel->rect.s1 - opening.s1});
  }
  if (bearing >= kBearing - kTolerance) return;
  check.warning(pathOf(check, index) + ".at",
                name + ": its lintel has room for a bearing of only " +
                    lengthWords(std::max(0.0, bearing)) + " at one end",
                "150 mm is usual; ask the designer how it bears");
}

}  // namespace

void checkLintels(const Checking& check) {
  for (size_t wall = 0; wall < check.settingOut.walls.size(); ++wall) {
    std::vector<size_t> here;
    for (size_t i = 0; i < check.settingOut.openings.size(); ++i)
      if (check.settingOut.openings[i].wall == wall) here.push_back(i);
    if (here.empty()) continue;
    const std::vector<LeafPlan> leaves{
        leafPlan(check.job, check.settingOut, wall, LeafSide::Outer),
        leafPlan(check.job, check.settingOut, wall, LeafSide::Inner)};
    for (const size_t i : here) checkLintel(check, i, leaves);
  }
}

// One line for all of them.
void checkOpeningWidths(const Checking& check) {
  std::vector<std::string> names;
  size_t first = 0;
  for (size_t i = 0; i < check.settingOut.openings.size(); ++i) {
    const BuiltOpening& opening = check.settingOut.openings[i];
    const double width = opening.s1 - opening.s0;
    const WallBuildUp& walls = check.job.walls;
    const double whole = coordinatingLength(walls, halfBricksOfOpening(walls, width), 1);
    if (std::abs(whole - width) <= kTakenUp) continue;
    if (names.empty()) first = i;
    names.push_back(openingLabel(check.settingOut, i) + " (" + lengthWords(width) + ", nearest " +
                    lengthWords(whole) + ")");
  }
  if (names.empty()) return;
  check.warning(
      pathOf(check, first) + ".width",
      "not a whole number of half bricks wide, so that bricks are cut beside " + listed(names),
      "half bricks with their joints, and one joint more; the drawing decides");
}

// Heads and window sills that bricks would be cut for; one line for all of them.
void checkOpeningCourses(const Checking& check) {
  const double course = check.job.walls.course();
  const double datum = check.settingOut.levels.dampCourse;
  std::vector<std::string> found;
  std::string key;
  bool assumed = false;
  const auto look = [&](size_t index, const char* what, const char* name, double level,
                        bool given) {
    const double under = datum + std::floor((level - datum) / course + 1e-6) * course;
    if (std::min(level - under, under + course - level) <= kOffCourse) return;
    found.push_back(openingLabel(check.settingOut, index) + ", " + what + " " + levelWords(level) +
                    (given ? "" : " (the default)") + ", nearest " + levelWords(under) + " or " +
                    levelWords(under + course));
    if (key.empty()) key = pathOf(check, index) + "." + name;
    assumed = assumed || !given;
  };
  for (size_t i = 0; i < check.settingOut.openings.size(); ++i) {
    const BuiltOpening& built = check.settingOut.openings[i];
    const Opening& given = check.job.openings[built.jobIndex];
    look(i, "head", "head", built.head, given.head.has_value());
    if (built.kind == OpeningKind::Window)
      look(i, "sill", "sill", built.sill, given.sill.has_value());
  }
  if (found.empty()) return;
  check.warning(key, "not a whole number of courses above the damp course: " + listedApart(found),
                assumed
                    ? "the file gives no level where it says default; give the drawing's, or one "
                      "that comes out in courses"
                    : "bricks are cut there; the drawing decides");
}

}  // namespace model
