#include "model/programme/level_made.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

#include <glm/geometric.hpp>

namespace model {
namespace {

using Kinds = std::vector<ElementKind>;

constexpr double kSame = 0.0015;  // metres: levels are scheduled to the millimetre
constexpr double kAlways = -1;

// What makes a level, by the beginning of its key: the first of the kinds that has it does.
struct Rule {
  const char* key;
  std::vector<Kinds> makers;
};

const std::vector<Rule>& rules() {
  using K = ElementKind;
  static const std::vector<Rule> all{
      {"ridge", {{K::RoofCovering}}},
      {"eaves", {{K::RoofCovering}}},
      {"plate-top", {{K::WallPlate}}},
      {"wall-top", {{K::InnerLeaf}}},
      {"outer-leaf-top", {{K::OuterLeaf}}},
      {"head:", {{K::Lintel}, {K::OuterLeaf}, {K::InnerLeaf}}},
      {"sill:",
       {{K::OuterLeaf}, {K::InnerLeaf}, {K::DampCourse}, {K::Foundation}, {K::CellarWall}}},
      {"damp-course", {{K::DampCourse}}},
      {"finished-floor:",
       {{K::Screed}, {K::FloorInsulation}, {K::Deck}, {K::GroundSlab, K::BeamFloor}}},
      {"structural-floor:", {{K::GroundSlab, K::BeamFloor}, {K::Deck}}},
      {"joist-bearing:", {{K::InnerLeaf}, {K::Joist}}},
      {"lift:", {{K::InnerLeaf}, {K::OuterLeaf}}},
      {"slab-underside", {{K::GroundSlab, K::BeamFloor}}},
      {"oversite", {{K::Hardcore}, {K::Spoil}, {K::Topsoil}, {K::BeamFloor}}},
      {"top-of-concrete", {{K::Foundation}}},
      {"blinding", {{K::Blinding}}},
      {"formation", {{K::Spoil}, {K::Blinding}, {K::Foundation}}},
      {"cellar-wall-top", {{K::Core}, {K::CellarWall}}},
      {"cellar-floor", {{K::Screed}, {K::FloorInsulation}, {K::CellarSlab}}},
      {"cellar-slab-top", {{K::CellarSlab}}},
      {"cellar-slab-underside", {{K::CellarSlab}}},
      {"cellar-blinding", {{K::Blinding}}},
      {"cellar-formation", {{K::Spoil}, {K::Blinding}, {K::CellarSlab}}},
  };
  return all;
}

bool begins(const std::string& text, const char* with) { return text.rfind(with, 0) == 0; }

// The levels are the building's, whatever in the garden has one of them; and upright damp courses,
// beside openings, make none.
bool makesNone(const Element& element) {
  const StageKind stage = (element.removed ? *element.removed : element.placed).stage.kind;
  if (element.kind == ElementKind::DampCourse) return stage != StageKind::DampCourse;
  return stage == StageKind::GardenFoundations || stage == StageKind::GardenWalls;
}

// When soil is wholly gone, or anything else wholly there.
double doneAt(const Programme& programme, const Element& element) {
  const bool soil = element.kind == ElementKind::Spoil || element.kind == ElementKind::Topsoil;
  if (soil && !element.removed) return kNever;
  const Placement& placement = soil ? *element.removed : element.placed;
  if (element.solid.points.empty()) return kAlways;
  // Along its growth the clock only rises or only falls.
  const auto along = [&](const Vec3& a, const Vec3& b) {
    return glm::dot(placement.direction, a) < glm::dot(placement.direction, b);
  };
  const auto [first, last] =
      std::minmax_element(element.solid.points.begin(), element.solid.points.end(), along);
  return std::max(
      {kAlways, timeAt(programme, placement, *first), timeAt(programme, placement, *last)});
}

bool hasFaceAt(const Element& element, double level) {
  if (level < element.underside - kSame || level > element.top + kSame) return false;
  return std::any_of(element.solid.points.begin(), element.solid.points.end(),
                     [&](const Vec3& p) { return std::abs(p.z - level) < kSame; });
}

// A level inside a thing, such as the oversite in hardcore that fills up low ground.
bool reachesAcross(const Element& element, double level) {
  const bool soil = element.kind == ElementKind::Spoil || element.kind == ElementKind::Topsoil;
  return !soil && level >= element.underside - kSame && level <= element.top + kSame;
}

// Where nobody fills up or digs to the level: the ground under a void, left as it was stripped.
bool isStripped(const Element& element, double) {
  return element.kind == ElementKind::Topsoil && element.removed;
}

// Names of the walls with the openings that have the level; of none for other levels.
std::set<std::string> wallsOf(const SettingOut& out, const ScheduledLevel& line) {
  std::set<std::string> walls;
  const bool heads = begins(line.key, "head:");
  if (!heads && !begins(line.key, "sill:")) return walls;
  for (const BuiltOpening& opening : out.openings)
    if (std::abs((heads ? opening.head : opening.sill) - line.level) < kSame)
      walls.insert(out.walls[opening.wall].name);
  return walls;
}

class Times {
 public:
  Times(const SettingOut& out, const Works& works, const Programme& programme)
      : out_(out), works_(works), programme_(programme) {}

  double of(const ScheduledLevel& line) const {
    if (begins(line.key, "ground-")) return kAlways;
    const std::set<std::string> walls = wallsOf(out_, line);
    // The longest key that fits: "cellar-formation" is no "formation".
    const Rule* rule = nullptr;
    for (const Rule& each : rules())
      if (begins(line.key, each.key) &&
          (!rule || std::string(each.key).size() > std::string(rule->key).size()))
        rule = &each;
    if (!rule) return kNever;
    for (const auto& made : {hasFaceAt, reachesAcross, isStripped})
      for (const Kinds& kinds : rule->makers) {
        const double last = lastOf(kinds, walls, line.level, made);
        if (last != kNever) return last;
      }
    return kNever;
  }

 private:
  using Makes = bool (*)(const Element&, double level);

  double lastOf(const Kinds& kinds, const std::set<std::string>& walls, double level,
                Makes makes) const {
    double last = kNever;
    for (const Element& element : works_.elements) {
      if (std::find(kinds.begin(), kinds.end(), element.kind) == kinds.end()) continue;
      if (makesNone(element)) continue;
      if (!walls.empty() && !element.wall.empty() && !walls.count(element.wall)) continue;
      if (!makes(element, level)) continue;
      const double done = doneAt(programme_, element);
      last = last == kNever ? done : std::max(last, done);
    }
    return last;
  }

  const SettingOut& out_;
  const Works& works_;
  const Programme& programme_;
};

}  // namespace

std::vector<double> timesOfLevels(const SettingOut& settingOut, const Works& works,
                                  const Programme& programme) {
  const Times made(settingOut, works, programme);
  std::vector<double> times;
  for (const ScheduledLevel& line : settingOut.schedule) times.push_back(made.of(line));
  return times;
}

}  // namespace model
