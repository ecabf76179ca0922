// Foundations against the ground over them and under them.
#include <algorithm>
#include <cmath>

#include "model/checks/parts.h"
#include "model/job/value_words.h"

namespace model {
namespace {

constexpr double kTolerance = 1e-3;

// The key that gives a run its top of concrete, or nothing when no key does.
std::string keyOf(const Checking& check, const FoundationRun& run) {
  const Foundations& given = check.job.foundations;
  for (size_t i = 0; i < given.steps.size(); ++i) {
    const bool here = check.settingOut.wallNamed(given.steps[i].wall) == run.wall;
    if (here && given.steps[i].top == run.top)
      return "foundations.step[" + std::to_string(i) + "].top";
  }
  return given.top && *given.top == run.top ? "foundations.top" : "";
}

}  // namespace

void checkConcreteInTheGround(const Checking& check) {
  const SettingOut& out = check.settingOut;
  std::vector<std::string> walls;
  std::string key;
  double top = 0, ground = 0, most = kTolerance;
  for (const FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    const WallLine& wall = out.walls[run.wall];
    const double low = levelsAlong(out.terrain, wall.at(run.from), wall.at(run.to)).low;
    const std::string given = keyOf(check, run);
    if (given.empty() || run.top - low <= kTolerance) continue;
    if (walls.empty() || walls.back() != wall.name) walls.push_back(wall.name);
    if (run.top - low <= most) continue;
    most = run.top - low;
    key = given;
    top = run.top;
    ground = low;
  }
  if (walls.empty()) return;
  check.warning(key,
                "the top of concrete stands out of the ground under " + listed(walls) + ": it is " +
                    levelWords(top) + " where the ground is " + levelWords(ground),
                "it is usually covered by 150 mm or more; step it down there, or the drawing says "
                "how the ground is made up");
}

namespace {

// The runs that one key gives, and the place along them where the most is missing.
struct ShortOfGoodGround {
  std::string key;
  std::vector<std::string> walls;
  double above = 0;  // formation over good ground, metres
  double formation = 0;
};

ShortOfGoodGround& groupOf(std::vector<ShortOfGoodGround>& groups, const std::string& key) {
  for (ShortOfGoodGround& group : groups) {
    if (group.key == key) return group;
  }
  groups.push_back({key, {}, 0, 0});
  return groups.back();
}

}  // namespace

void checkGoodGround(const Checking& check) {
  const SettingOut& out = check.settingOut;
  std::vector<ShortOfGoodGround> groups;
  for (const FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    const WallLine& wall = out.walls[run.wall];
    const double low = levelsAlong(out.terrain, wall.at(run.from), wall.at(run.to)).low;
    const double above = run.formation - (low - check.job.ground.goodGround);
    if (above <= kTolerance) continue;
    const std::string given = keyOf(check, run);
    // Out of the ground altogether has its own message.
    if (!given.empty() && run.top - low > kTolerance) continue;
    ShortOfGoodGround& group = groupOf(groups, given.empty() ? "foundations" : given);
    if (group.walls.empty() || group.walls.back() != wall.name) group.walls.push_back(wall.name);
    if (above <= group.above) continue;
    group.above = above;
    group.formation = run.formation;
  }
  for (const ShortOfGoodGround& group : groups) {
    check.warning(group.key,
                  "the foundations do not reach good ground along " + listed(group.walls) +
                      ": formation at " + levelWords(group.formation) + " is up to " +
                      lengthWords(std::round(group.above * 1000) / 1000) +
                      " above it, which ground.good_ground puts " +
                      lengthWords(check.job.ground.goodGround) + " under the surface",
                  "take the concrete down to it, or ask the designer what it may stand on");
  }
}

}  // namespace model
