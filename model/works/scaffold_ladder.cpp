// Ladders against the outside of the scaffold, four up to one out, in line with the wall.
#include <algorithm>

#include "model/works/scaffold_plan.h"
#include "model/works/wall_layer.h"
#include "model/works/wall_names.h"

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

Element ladderTo(const Job& job, const WallLine& line, const Lift& lift, Solid solid) {
  Element element;
  element.id = "scaffold/" + liftId(lift) + "/wall " + line.name + "/ladder";
  element.name = "Scaffold for " + liftName(job, lift) + ", wall " + line.name + ", ladder";
  element.kind = ElementKind::Scaffold;
  element.material = Material::Timber;
  element.solid = std::move(solid);
  element.quantity = {1, Unit::Each};
  element.placed = whole({StageKind::ScaffoldLift, lift.storey, lift.number}, 0.9);
  element.wall = line.name;
  return element;
}

}  // namespace

void addLadders(const Job& job, const SettingOut& settingOut, size_t wall, const ScaffoldRows& rows,
                const std::vector<Platform>& platforms, std::vector<Polygon>& taken, Works& works) {
  if (platforms.empty()) return;
  const WallLine& line = settingOut.walls[wall];
  Ladder ladder;
  ladder.distance = rows.outer + kTube * 1.5 + kClearOfRails;
  ladder.top = platforms.back().level + kOverBoards;
  ladder.bottom = levelsAlong(settingOut.terrain, line.at(0, -ladder.distance),
                              line.at(line.length, -ladder.distance))
                      .low;
  ladder.foot = (line.length + ladder.run()) / 2;
  if (ladder.foot - ladder.run() < kFromCorner) return;
  const Polygon area = planOf(line, ladder);
  if (!hasRoom(job, settingOut, area, taken)) return;
  taken.push_back(area);
  for (size_t i = 0; i < platforms.size(); ++i) {
    const Lift& lift = platforms[i].lift;
    ladder.top = platforms[i].level + kOverBoards;
    // Its foot stands where the longest one's will, on ground whose topsoil is off.
    const double s = ladder.foot;
    ladder.bottom =
        levelsAlong(settingOut.terrain,
                    {line.at(s, -ladder.distance - kWidth),
                     line.at(s + kStileDepth, -ladder.distance - kWidth),
                     line.at(s + kStileDepth, -ladder.distance), line.at(s, -ladder.distance)})
            .high -
        job.ground.topsoil;
    Element element = ladderTo(job, line, lift, solidOf(line, ladder));
    const bool last = i + 1 == platforms.size();
    element.removed = last ? whole({StageKind::StrikeScaffold}, 0.9)
                           : whole({StageKind::ScaffoldLift, platforms[i + 1].lift.storey,
                                    platforms[i + 1].lift.number});
    add(works, std::move(element));
  }
}

}  // namespace model
