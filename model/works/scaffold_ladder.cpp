// Ladders against the outside of the scaffold, four up to one out, in line with the wall.
#include <algorithm>

#include "model/walls/wall_layer.h"
#include "model/works/scaffold_plan.h"

namespace model {

namespace {

// Common practice, no source: slope, landing height and sizes of ladders.
constexpr double kSlope = 4.0;
constexpr double kOverBoards = 1.000;
constexpr double kWidth = 0.400;
constexpr double kStile = 0.050, kStileDepth = 0.090;
constexpr double kRung = 0.030, kRungSpacing = 0.250;
constexpr double kClearOfRails = 0.090;
constexpr double kFromCorner = 0.300;

struct Ladder {
  double distance = 0;  // of its near side from the face
  double foot = 0;      // s of its foot
  double bottom = 0, top = 0;

  double run() const { return (top - bottom) / kSlope; }
  double at(double z) const { return foot - (z - bottom) / kSlope; }
};

Polygon planOf(const WallLine& wall, const Ladder& ladder) {
  const double near = ladder.distance, far = ladder.distance + kWidth;
  const double from = ladder.foot - ladder.run(), to = ladder.foot + kStileDepth;
  return {wall.at(from, -far), wall.at(to, -far), wall.at(to, -near), wall.at(from, -near)};
}

Solid between(const WallLine& wall, double near, double far, const Polygon& elevation) {
  WallLayer layer;  // square through
  layer.wall = &wall;
  layer.outer = -far;
  layer.inner = -near;
  layer.from = -1e9;
  layer.to = 1e9;
  return layer.solid(Regions{{elevation, {}}});
}

Solid solidOf(const WallLine& wall, const Ladder& ladder) {
  const double lean = ladder.run();
  const Polygon stile{{ladder.foot, ladder.bottom},
                      {ladder.foot + kStileDepth, ladder.bottom},
                      {ladder.foot + kStileDepth - lean, ladder.top},
                      {ladder.foot - lean, ladder.top}};
  const double near = ladder.distance, far = ladder.distance + kWidth;
  Solid solid = between(wall, near, near + kStile, stile);
  solid.append(between(wall, far - kStile, far, stile));
  for (double z = ladder.bottom + kRungSpacing; z < ladder.top - kRung; z += kRungSpacing) {
    const double s = ladder.at(z) + (kStileDepth - kRung) / 2;
    solid.append(between(wall, near + kStile, far - kStile,
                         {{s, z}, {s + kRung, z}, {s + kRung, z + kRung}, {s, z + kRung}}));
  }
  return solid;
}

Element ladderTo(const WallLine& line, const std::string& place, const Platform& platform,
                 Solid solid) {
  Element element;
  element.id = "scaffold/" + platform.id + "/" + place + "/ladder";
  element.name = "Scaffold for " + platform.purpose + ", " + place + ", ladder";
  element.kind = ElementKind::Scaffold;
  element.material = Material::Timber;
  element.solid = std::move(solid);
  element.quantity = {1, Unit::Each};
  element.placed = whole(platform.stage, 0.9);
  element.wall = line.name;
  return element;
}

// One ladder for each stage that adds boards, to the highest of them.
std::vector<Platform> reached(const std::vector<Platform>& platforms) {
  std::vector<Platform> highest;
  for (const Platform& platform : platforms) {
    if (!platform.boards) continue;
    if (!highest.empty() && highest.back().stage == platform.stage) highest.pop_back();
    highest.push_back(platform);
  }
  return highest;
}

}  // namespace

void addLadders(const Job& job, const SettingOut& settingOut, const ScaffoldLength& length,
                const std::string& place, const std::vector<Platform>& platforms,
                const Placement& struck, std::vector<Polygon>& taken, Works& works) {
  const std::vector<Platform> all = reached(platforms);
  if (all.empty()) return;
  const WallLine& line = settingOut.walls[length.wall];
  const double from = std::max(0.0, length.from), to = std::min(line.length, length.to);
  Ladder ladder;
  ladder.distance = scaffoldRows(job).outer + kTube * 1.5 + kClearOfRails;
  ladder.top = all.back().level + kOverBoards;
  ladder.bottom = levelsAlong(settingOut.terrain, line.at(from, -ladder.distance),
                              line.at(to, -ladder.distance))
                      .low;
  ladder.foot = (from + to + ladder.run()) / 2;
  if (ladder.foot - ladder.run() < from + kFromCorner) return;
  const Polygon area = planOf(line, ladder);
  if (!hasRoom(job, settingOut, area, taken)) return;
  taken.push_back(area);
  for (size_t i = 0; i < all.size(); ++i) {
    ladder.top = all[i].level + kOverBoards;
    // Its foot stands where the longest one's will, on ground whose topsoil is off.
    const double s = ladder.foot;
    ladder.bottom =
        levelsAlong(settingOut.terrain,
                    {line.at(s, -ladder.distance - kWidth),
                     line.at(s + kStileDepth, -ladder.distance - kWidth),
                     line.at(s + kStileDepth, -ladder.distance), line.at(s, -ladder.distance)})
            .high -
        job.ground.topsoil;
    Element element = ladderTo(line, place, all[i], solidOf(line, ladder));
    const bool last = i + 1 == all.size();
    element.removed = last ? struck : whole(all[i + 1].stage);
    add(works, std::move(element));
  }
}

}  // namespace model
