// Tube-and-board scaffold round the outline, one platform after another as the walls go up.
#include <algorithm>
#include <cmath>

#include "model/works/parts.h"
#include "model/works/scaffold_plan.h"
#include "model/works/wall_layer.h"
#include "model/works/wall_names.h"

namespace model {

namespace {

constexpr double kBay = 2.000;  // of standards: common practice, no source
constexpr double kPlate = 0.150, kPlateThickness = 0.006;
constexpr double kInsideFrom = 0.100;  // first inside board from the face
constexpr double kToeBoard = 0.150, kToeBoardThickness = 0.025;
constexpr double kFromCorner = 0.120;
constexpr double kClearOfGround = 0.250;

class WallScaffold {
 public:
  WallScaffold(const Job& job, const SettingOut& settingOut, size_t wall, const ScaffoldRows& rows)
      : job_(job), settingOut_(settingOut), wall_(wall), rows_(rows) {}

  void put(const Platform& platform, const Placement& placed, const Placement& removed,
           Works& works) {
    tubes_ = boards_ = Solid{};
    standards(platform);
    const double under = platform.level - kBoardThickness;
    rail(rows_.inner + kTube, under - kTube * 1.5);
    rail(rows_.outer - kTube, under - kTube * 1.5);
    transoms(platform, under);
    boardsOf(platform);
    rail(rows_.outer + kTube, platform.level + kGuardHeight);
    rail(rows_.outer + kTube, platform.level + kGuardHeight / 2);
    add(works, element(platform, "tubes", Material::Steel, tubes_, placed, removed));
    add(works, element(platform, "boards", Material::Timber, boards_, placed, removed));
  }

  // Level of the highest ground under the scaffold.
  double highestGround() const {
    const WallLayer band = layer(rows_.inner, rows_.outer);
    const WallLine& wall = settingOut_.walls[wall_];
    return levelsAlong(settingOut_.terrain,
                       {wall.at(band.startFront, band.outer), wall.at(band.endFront, band.outer),
                        wall.at(band.endBack, band.inner), wall.at(band.startBack, band.inner)})
        .high;
  }

 private:
  // The layer between two distances outside the face.
  WallLayer layer(double from, double to) const { return layerOf(settingOut_, wall_, -to, -from); }

  Solid bandSolid(double from, double to, double z0, double z1) const {
    const WallLayer band = layer(from, to);
    return band.solid(fromRectangles({{band.from, z0, band.to, z1}}, {}));
  }

  Solid post(double s, double distance, double width, double z0, double z1) const {
    const WallLayer row = layer(distance - width / 2, distance + width / 2);
    return row.solid(fromRectangles({{s - width / 2, z0, s + width / 2, z1}}, {}));
  }

  // A tube along the wall, mitred at the corners.
  void rail(double distance, double z) {
    tubes_.append(
        bandSolid(distance - kTube / 2, distance + kTube / 2, z - kTube / 2, z + kTube / 2));
  }

  double transomsFrom(bool insideBoards) const {
    return insideBoards ? kInsideFrom : rows_.inner + kTube / 2;
  }

  // Where transoms and their standards stand: clear of both corners over the whole width.
  std::vector<double> bays() const {
    const WallLayer band = layer(kInsideFrom, rows_.outer + kPlate / 2);
    const double from = band.from + kFromCorner, to = band.to - kFromCorner;
    std::vector<double> places;
    if (to - from < kTube * 3) return {(from + to) / 2};
    const double count = std::ceil((to - from) / kBay);
    for (double i = 0; i <= count; ++i) places.push_back(from + (to - from) * i / count);
    return places;
  }

  // One row's standards: those of the bays, and one at each corner where the row runs on.
  std::vector<double> standardsOf(double distance) const {
    std::vector<double> places = bays();
    const WallLayer row = layer(distance - kPlate / 2, distance + kPlate / 2);
    const double first = places.front(), last = places.back();
    if (row.from + kFromCorner < first - 0.3) places.insert(places.begin(), row.from + kFromCorner);
    if (row.to - kFromCorner > last + 0.3) places.push_back(row.to - kFromCorner);
    return places;
  }

  // The ground as it is then: topsoil stripped round the building.
  double foot(double s, double distance) const {
    const WallLine& wall = settingOut_.walls[wall_];
    const double half = kPlate / 2;
    Polygon plate;
    for (const Vec2& to : {Vec2{-half, half}, {half, half}, {half, -half}, {-half, -half}}) {
      plate.push_back(wall.at(s + to.x, -(distance + to.y)));
    }
    double high = levelsAlong(settingOut_.terrain, plate).high;
    for (const Vec3& spot : settingOut_.terrain.points) {
      if (contains(plate, Vec2(spot))) high = std::max(high, spot.z);
    }
    return high - job_.ground.topsoil;
  }

  void standards(const Platform& platform) {
    for (const double distance : {rows_.inner, rows_.outer}) {
      for (const double s : standardsOf(distance)) {
        const double over = distance < rows_.outer ? kInnerOver : kStandardOver;
        const double top = platform.level + over;
        double bottom = platform.previous + over;
        if (platform.first) {
          const double ground = foot(s, distance);
          bottom = ground + kPlateThickness;
          tubes_.append(post(s, distance, kPlate, ground, bottom));
        }
        tubes_.append(post(s, distance, kTube, bottom, top));
      }
    }
  }

  // Across, on the ledgers, beside the standards.
  void transoms(const Platform& platform, double top) {
    const WallLayer across = layer(transomsFrom(platform.insideBoards), rows_.outer - kTube / 2);
    for (const double s : bays()) {
      const double s0 = s + kTube / 2;
      tubes_.append(across.solid(fromRectangles({{s0, top - kTube, s0 + kTube, top}}, {})));
    }
  }

  void boardRow(double distance, double level) {
    boards_.append(bandSolid(distance, distance + kBoardWidth, level - kBoardThickness, level));
  }

  void boardsOf(const Platform& platform) {
    const double first = rows_.inner + kTube / 2 + kBoardGap;
    for (int i = 0; i < kBoards; ++i) {
      boardRow(first + i * (kBoardWidth + kBoardGap), platform.level);
    }
    const double last = first + kBoards * (kBoardWidth + kBoardGap) - kBoardGap;
    boards_.append(bandSolid(last - kToeBoardThickness - kBoardGap, last - kBoardGap,
                             platform.level, platform.level + kToeBoard));
    if (!platform.insideBoards) return;
    for (double d = kInsideFrom; d + kBoardWidth < rows_.inner - kTube / 2 - kBoardGap;
         d += kBoardWidth + kBoardGap) {
      boardRow(d, platform.level);
    }
  }

  Element element(const Platform& platform, const std::string& part, Material material,
                  const Solid& solid, const Placement& placed, const Placement& removed) const {
    const WallLine& wall = settingOut_.walls[wall_];
    Element e;
    e.id = "scaffold/" + liftId(platform.lift) + "/wall " + wall.name + "/" + part;
    e.name = "Scaffold for " + liftName(job_, platform.lift) + ", wall " + wall.name + ", " + part;
    e.kind = ElementKind::Scaffold;
    e.material = material;
    e.solid = solid;
    e.quantity = {wall.length, Unit::Metre};
    e.placed = placed;
    e.removed = removed;
    e.wall = wall.name;
    return e;
  }

  const Job& job_;
  const SettingOut& settingOut_;
  size_t wall_;
  ScaffoldRows rows_;
  Solid tubes_, boards_;
};

}  // namespace

void buildScaffold(const Job& job, const SettingOut& settingOut, Works& works) {
  const auto all = platforms(job, settingOut);
  if (all.empty()) return;
  const ScaffoldRows rows = scaffoldRows(job);
  const std::vector<bool> room = wallsWithRoom(job, settingOut, rows);
  const double lowest = settingOut.levels.groundLow - 1;
  const Placement removed =
      downward({StageKind::StrikeScaffold}, all.back().level + kStandardOver, lowest);
  std::vector<Polygon> taken;
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    if (room[wall]) taken.push_back(scaffoldBand(settingOut, wall, rows));
  }
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    if (!room[wall]) continue;
    WallScaffold scaffold(job, settingOut, wall, rows);
    const double ground = scaffold.highestGround() + kClearOfGround;
    std::vector<Platform> here;
    for (Platform platform : all) {
      // On the high side of a slope the first platform may be too near the ground.
      if (platform.level < ground) continue;
      platform.first = here.empty();
      here.push_back(platform);
      const double from = platform.first ? lowest : platform.previous;
      scaffold.put(platform,
                   upward({StageKind::ScaffoldLift, platform.lift.storey, platform.lift.number},
                          from, platform.level + kStandardOver),
                   removed, works);
    }
    addLadders(job, settingOut, wall, rows, here, taken, works);
  }
}

}  // namespace model
