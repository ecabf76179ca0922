// Tube-and-board scaffold round the outline, one platform after another as the walls go up.
#include <algorithm>
#include <array>
#include <cmath>

#include "model/walls/wall_layer.h"
#include "model/works/parts.h"
#include "model/works/scaffold_plan.h"

namespace model {

namespace {

constexpr double kBay = 2.000;  // of standards: common practice, no source
constexpr double kPlate = 0.150, kPlateThickness = 0.006;
constexpr double kInsideFrom = 0.100;  // no board nearer to the face
constexpr double kToeBoard = 0.150, kToeBoardThickness = 0.025;
constexpr double kFromCorner = 0.120;
constexpr double kClearOfGround = 0.250;

// The scaffold along one length of wall, from the ground up.
class WallScaffold {
 public:
  WallScaffold(const Job& job, const SettingOut& settingOut, const ScaffoldLength& length,
               std::string place)
      : job_(job),
        settingOut_(settingOut),
        length_(length),
        place_(std::move(place)),
        rows_(scaffoldRows(job)) {}

  // `next`: the platform above, if there is one.
  void put(const Platform& platform, const Platform* next, const Placement& placed,
           const Placement& removed, Works& works) {
    tubes_ = boards_ = untilNext_ = Solid{};
    standards(platform);
    if (platform.boards) {
      const double under = platform.level - kBoardThickness;
      rail(rows_.inner + kTube, under - kTube * 1.5);
      rail(rows_.outer - kTube, under - kTube * 1.5);
      transoms(platform, under);
      boardsOf(platform);
    }
    guards(platform, next);
    const char* part = platform.boards ? "tubes" : "rails";
    add(works, element(platform, part, Material::Steel, tubes_, placed, removed));
    add(works, element(platform, "boards", Material::Timber, boards_, placed, removed));
    if (next == nullptr) return;
    add(works,
        element(platform, "end rails", Material::Steel, untilNext_, placed, whole(next->stage)));
  }

  // Level of the highest ground under the scaffold.
  double highestGround() const {
    const WallLayer band = layer(rows_.inner, rows_.outer);
    const WallLine& wall = settingOut_.walls[length_.wall];
    return levelsAlong(settingOut_.terrain,
                       {wall.at(band.startFront, band.outer), wall.at(band.endFront, band.outer),
                        wall.at(band.endBack, band.inner), wall.at(band.startBack, band.inner)})
        .high;
  }

 private:
  // The layer between two distances outside the face.
  WallLayer layer(double from, double to) const {
    return scaffoldLayer(settingOut_, length_, from, to);
  }

  // All along, mitred at the corners.
  void band(double from, double to, double z0, double z1, Solid& solid) const {
    const WallLayer along = layer(from, to);
    along.addBox({along.from, z0, along.to, z1}, solid);
  }

  void post(double s, double distance, double width, double z0, double z1) {
    const WallLayer row = layer(distance - width / 2, distance + width / 2);
    row.addBox({s - width / 2, z0, s + width / 2, z1}, tubes_);
  }

  // A tube along the wall, mitred at the corners.
  void rail(double distance, double z) {
    band(distance - kTube / 2, distance + kTube / 2, z - kTube / 2, z + kTube / 2, tubes_);
  }

  bool hasInsideBoards(const Platform& platform) const {
    return platform.insideFrom + kBoardWidth < rows_.inner - kTube / 2 - kBoardGap;
  }

  double transomsFrom(const Platform& platform) const {
    return hasInsideBoards(platform) ? platform.insideFrom : rows_.inner + kTube / 2;
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
    const WallLine& wall = settingOut_.walls[length_.wall];
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

  // The highest rail's middle.
  static double highestRail(const Platform& platform) {
    const double more = std::ceil((platform.guardTo - kGuardHeight) / kGuardGap - 1e-9);
    return platform.level + kGuardHeight + std::max(0.0, more) * kGuardGap;
  }

  // Where no platform goes on round the corner, rails close the end, and a standard carries them.
  bool endOpen(const Platform& platform, bool start) const {
    return platform.endsFree || !(start ? length_.roundStart : length_.roundEnd);
  }

  void standards(const Platform& platform) {
    for (const bool outer : {false, true}) {
      const double distance = outer ? rows_.outer : rows_.inner;
      const std::vector<double> places = standardsOf(distance);
      std::vector<double>& tops = tops_[outer ? 1 : 0];
      if (platform.first) tops.assign(places.size(), 0);
      for (size_t i = 0; i < places.size(); ++i) {
        const bool end = (i == 0 && endOpen(platform, true)) ||
                         (i + 1 == places.size() && endOpen(platform, false));
        const bool high = outer || (end && platform.boards);
        if (!high && !platform.boards) continue;
        const double top =
            high ? highestRail(platform) + kStandardOver : platform.level + kInnerOver;
        double bottom = tops[i];
        if (platform.first) {
          const double ground = foot(places[i], distance);
          bottom = ground + kPlateThickness;
          post(places[i], distance, kPlate, ground, bottom);
        }
        if (top - bottom < 1e-3) continue;
        post(places[i], distance, kTube, bottom, top);
        tops[i] = top;
      }
    }
  }

  // Rails along the outside, and across open ends; none where one of the platform below is.
  void guards(const Platform& platform, const Platform* next) {
    for (double z = platform.level + kGuardGap; z < highestRail(platform) + 1e-6; z += kGuardGap) {
      const bool there = std::any_of(railed_.begin(), railed_.end(), [&](double other) {
        return std::fabs(other - z) < kTube + 1e-6;
      });
      if (there) continue;
      railed_.push_back(z);
      rail(rows_.outer + kTube, z);
      if (!platform.boards) continue;
      for (const bool start : {true, false}) {
        if (!endOpen(platform, start)) continue;
        // Some must make way for the next platform's boards and what carries them.
        const bool inTheWay = next != nullptr && next->boards && z > next->level - kTube * 4 &&
                              z < next->level + kToeBoard + kTube;
        if (inTheWay && next->stage == platform.stage) continue;
        endRail(inTheWay ? untilNext_ : tubes_, start, z);
      }
    }
  }

  // Across the end, outside its two standards.
  void endRail(Solid& rails, bool start, double z) {
    const auto place = [&](double distance) {
      const std::vector<double> places = standardsOf(distance);
      return start ? places.front() : places.back();
    };
    const double inner = rows_.inner - kTube / 2, outer = rows_.outer + kTube / 2;
    const double a = place(rows_.inner), b = place(rows_.outer), half = kTube / 2;
    // Askew where the outer row runs on round the corner.
    const double lean = (b - a) / (rows_.outer - rows_.inner) * half;
    const double beside = (kTube + std::fabs(lean)) * (start ? -1 : 1);
    WallLayer across = layer(inner, outer);
    const auto frontOf = [&](double side) { return b + beside + lean + side * half; };
    const auto backOf = [&](double side) { return a + beside - lean + side * half; };
    across.startFront = frontOf(-1);
    across.startBack = backOf(-1);
    across.endFront = frontOf(1);
    across.endBack = backOf(1);
    across.from = 0;
    across.to = 1;
    across.addBox({0, z - half, 1, z + half}, rails);
  }

  // Across, on the ledgers, beside the standards.
  void transoms(const Platform& platform, double top) {
    const WallLayer across = layer(transomsFrom(platform), rows_.outer - kTube / 2);
    for (const double s : bays()) {
      const double s0 = s + kTube / 2;
      across.addBox({s0, top - kTube, s0 + kTube, top}, tubes_);
    }
  }

  void boardRow(double distance, double level) {
    band(distance, distance + kBoardWidth, level - kBoardThickness, level, boards_);
  }

  void boardsOf(const Platform& platform) {
    const double first = rows_.inner + kTube / 2 + kBoardGap;
    for (int i = 0; i < kBoards; ++i) {
      boardRow(first + i * (kBoardWidth + kBoardGap), platform.level);
    }
    const double last = first + kBoards * (kBoardWidth + kBoardGap) - kBoardGap;
    band(last - kToeBoardThickness - kBoardGap, last - kBoardGap, platform.level,
         platform.level + kToeBoard, boards_);
    if (!hasInsideBoards(platform)) return;
    for (double d = platform.insideFrom; d + kBoardWidth < rows_.inner - kTube / 2 - kBoardGap;
         d += kBoardWidth + kBoardGap) {
      boardRow(d, platform.level);
    }
  }

  Element element(const Platform& platform, const std::string& part, Material material,
                  const Solid& solid, const Placement& placed, const Placement& removed) const {
    Element e;
    e.id = "scaffold/" + platform.id + "/" + place_ + "/" + part;
    e.name = "Scaffold for " + platform.purpose + ", " + place_ + ", " + part;
    e.kind = ElementKind::Scaffold;
    e.material = material;
    e.solid = solid;
    e.quantity = {length_.to - length_.from, Unit::Metre};
    e.placed = placed;
    e.removed = removed;
    e.wall = settingOut_.walls[length_.wall].name;
    return e;
  }

  const Job& job_;
  const SettingOut& settingOut_;
  ScaffoldLength length_;
  std::string place_;
  ScaffoldRows rows_;
  std::array<std::vector<double>, 2> tops_;  // of the inner and the outer standards
  std::vector<double> railed_;               // levels of the rails along the outside
  Solid tubes_, boards_, untilNext_;
};

// "wall A-B", or "wall A-B, part 2" for the second length along it.
std::vector<std::string> placesOf(const SettingOut& settingOut,
                                  const std::vector<ScaffoldLength>& lengths) {
  std::vector<std::string> places;
  int part = 1;
  for (size_t i = 0; i < lengths.size(); ++i) {
    part = i > 0 && lengths[i - 1].wall == lengths[i].wall ? part + 1 : 1;
    places.push_back("wall " + settingOut.walls[lengths[i].wall].name +
                     (part > 1 ? ", part " + std::to_string(part) : ""));
  }
  return places;
}

}  // namespace

void buildScaffold(const Job& job, const SettingOut& settingOut, Works& works) {
  const auto all = platforms(job, settingOut);
  if (all.empty()) return;
  const std::vector<ScaffoldLength> lengths = scaffoldRoom(job, settingOut).lengths;
  const std::vector<std::string> places = placesOf(settingOut, lengths);
  std::vector<WallScaffold> scaffolds;
  std::vector<std::vector<Platform>> platforms;
  std::vector<Polygon> taken;
  double highest = all.back().level;
  for (size_t i = 0; i < lengths.size(); ++i) {
    taken.push_back(scaffoldBand(job, settingOut, lengths[i]));
    scaffolds.emplace_back(job, settingOut, lengths[i], places[i]);
    const double ground = scaffolds.back().highestGround() + kClearOfGround;
    platforms.push_back(platformsOf(job, settingOut, all, lengths[i].wall, ground));
    if (!platforms.back().empty()) highest = std::max(highest, platforms.back().back().level);
  }
  const double lowest = settingOut.levels.groundLow - 1, over = kGuardHeight + kStandardOver;
  // Struck from the top: a platform goes with its rails, the ladder gets shorter with them.
  const auto moment = [&](double level) {
    return (highest + over - level) / (highest + over - lowest);
  };
  const StageKey strike{StageKind::StrikeScaffold};
  for (size_t i = 0; i < lengths.size(); ++i) {
    for (size_t k = 0; k < platforms[i].size(); ++k) {
      const Platform& platform = platforms[i][k];
      const Platform* next = k + 1 < platforms[i].size() ? &platforms[i][k + 1] : nullptr;
      const bool roof = platform.stage.kind == StageKind::ScaffoldRoof;
      const double from = platform.first ? lowest : roof ? all.back().previous : platform.previous;
      const double to = (roof ? highest : platform.level) + over;
      scaffolds[i].put(platform, next, upward(platform.stage, from, to),
                       whole(strike, moment(platform.level)), works);
    }
    if (platforms[i].empty()) continue;
    const Placement sinking =
        downward(strike, highest + over, lowest, 0, moment(platforms[i].front().level));
    addLadders(job, settingOut, lengths[i], places[i], platforms[i], sinking, taken, works);
  }
}

}  // namespace model
