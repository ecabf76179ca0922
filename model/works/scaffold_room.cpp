#include "model/works/scaffold_room.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include <glm/geometric.hpp>

#include "model/works/scaffold_plan.h"

namespace model {

namespace {

constexpr double kOutside = 0.150;   // room outside the outer row
constexpr double kShortest = 0.600;  // of a whole wall's scaffold, and of a gap worth a word
constexpr double kShortestPart = 1.200;
constexpr double kClear = 0.050;   // from the end of a scaffold to what is in its way
constexpr double kNothing = 1e-4;  // square metres
constexpr double kFascia = 0.030;  // outside the eaves

// A hair outside the finished face.
double nearestTo(const Job& job) { return job.walls.render + 1e-3; }

struct Obstacle {
  std::string name;
  Polygon outline;
};

struct Interval {
  double from = 0, to = 0;
};

Polygon anticlockwise(Polygon polygon) {
  if (signedArea(polygon) < 0) std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

bool apart(const Polygon& a, const Polygon& b) {
  const auto boxOf = [](const Polygon& polygon) {
    Bounds box;
    for (const Vec2& p : polygon) box.add({p, 0});
    return box;
  };
  const Bounds p = boxOf(a), q = boxOf(b);
  return p.high.x < q.low.x || q.high.x < p.low.x || p.high.y < q.low.y || q.high.y < p.low.y;
}

// A piece of ground beside one wall, between two distances from its face.
class GroundBeside {
 public:
  GroundBeside(const WallLine& wall, const WallLayer& band) : wall_(wall), band_(band) {}

  Polygon whole() const {
    return placed({{band_.startFront, far()},
                   {band_.endFront, far()},
                   {band_.endBack, near()},
                   {band_.startBack, near()}});
  }
  Polygon straight(double from, double to, double distance) const {
    return placed({{from, distance}, {to, distance}, {to, near()}, {from, near()}});
  }
  Polygon straight() const { return straight(band_.from, band_.to, far()); }
  // What goes round a corner, beyond the straight part; empty when there is nothing.
  Polygon corner(bool start) const {
    const double a = start ? band_.startFront : band_.to, b = start ? band_.from : band_.endFront;
    const double c = start ? band_.from : band_.endBack, d = start ? band_.startBack : band_.to;
    const Polygon part = placed({{a, far()}, {b, far()}, {c, near()}, {d, near()}});
    return std::fabs(signedArea(part)) < kNothing ? Polygon{} : part;
  }

 private:
  double far() const { return -band_.outer; }
  double near() const { return -band_.inner; }

  // From s and the distance outside the face; a point that comes twice is put once.
  Polygon placed(const std::vector<Vec2>& places) const {
    Polygon polygon;
    for (const Vec2& p : places) {
      const Vec2 at = wall_.at(p.x, -p.y);
      if (polygon.empty() || glm::distance(polygon.back(), at) > 1e-9) polygon.push_back(at);
    }
    while (polygon.size() > 1 && glm::distance(polygon.front(), polygon.back()) < 1e-9) {
      polygon.pop_back();
    }
    return polygon;
  }

  const WallLine& wall_;
  const WallLayer& band_;
};

class RoomFinder {
 public:
  RoomFinder(const Job& job, const SettingOut& out)
      : out_(out),
        rows_(scaffoldRows(job)),
        near_(nearestTo(job)),
        eaves_(offsetMitred(out.eavesOutline, -kFascia)) {
    fixed_.push_back({"", out.ring(out.faceDistances.finishedFace)});
    for (const StandingBuilding& building : job.site.buildings) {
      if (building.kind == BuildingKind::Demolish) continue;
      fixed_.push_back({building.name.empty() ? "a standing building" : building.name,
                        anticlockwise(building.outline)});
    }
  }

  ScaffoldRoom find() {
    for (size_t wall = 0; wall < out_.walls.size(); ++wall) along(wall);
    return std::move(room_);
  }

 private:
  double needed() const { return rows_.outer + kOutside; }
  // The scaffold itself, without the way between it and the wall.
  double tubesFrom() const { return rows_.inner - kTube; }

  WallLayer band(size_t wall, double near) const { return layerOf(out_, wall, -needed(), -near); }

  std::vector<Polygon> inTheWay(const Polygon& area, const Polygon& tubes) const {
    std::vector<Polygon> found;
    if (area.empty()) return found;
    const auto note = [&](const Regions& regions) {
      for (const Region& region : regions) {
        if (model::area(region) > kNothing) found.push_back(region.outer);
      }
    };
    const auto meet = [&](const Polygon& here, const Polygon& other) {
      if (!here.empty() && !apart(here, other)) note(intersect({{here, {}}}, {{other, {}}}));
    };
    for (const Obstacle& obstacle : fixed_) meet(area, obstacle.outline);
    for (const Polygon& other : taken_) meet(area, other);
    meet(tubes, eaves_);
    note(subtract({{area, {}}}, {{out_.terrain.boundary, {}}}));
    return found;
  }

  // Parts of the straight band that are free from face to outside, in order along the wall.
  std::vector<Interval> freeParts(size_t wall, const WallLayer& layer,
                                  const std::vector<Polygon>& inWay) const {
    const WallLine& line = out_.walls[wall];
    std::vector<Interval> blocked;
    for (const Polygon& polygon : inWay) {
      Interval interval{1e300, -1e300};
      for (const Vec2& p : polygon) {
        const double s = glm::dot(p - line.start, line.along);
        interval = {std::min(interval.from, s - kClear), std::max(interval.to, s + kClear)};
      }
      blocked.push_back(interval);
    }
    std::sort(blocked.begin(), blocked.end(),
              [](const Interval& a, const Interval& b) { return a.from < b.from; });
    std::vector<Interval> free;
    double at = layer.from;
    for (const Interval& interval : blocked) {
      if (interval.from - at >= kShortestPart) free.push_back({at, interval.from});
      at = std::max(at, interval.to);
    }
    if (layer.to - at >= kShortestPart) free.push_back({at, layer.to});
    return free;
  }

  void along(size_t wall) {
    const WallLayer layer = band(wall, near_), tubes = band(wall, tubesFrom());
    if (layer.to - layer.from < kShortest) return;
    const WallLine& line = out_.walls[wall];
    const GroundBeside all(line, layer), onlyTubes(line, tubes);
    if (inTheWay(all.whole(), onlyTubes.whole()).empty()) {
      room_.lengths.push_back({wall, layer.from, layer.to, true, true});
      taken_.push_back(all.whole());
      return;
    }
    const auto free = freeParts(wall, layer, inTheWay(all.straight(), onlyTubes.straight()));
    const bool roundStart = inTheWay(all.corner(true), onlyTubes.corner(true)).empty();
    const bool roundEnd = inTheWay(all.corner(false), onlyTubes.corner(false)).empty();
    double done = std::max(0.0, layer.from);
    for (const Interval& part : free) {
      addGap(wall, done, part.from);
      done = part.to;
      room_.lengths.push_back({wall, part.from, part.to, part.from == layer.from && roundStart,
                               part.to == layer.to && roundEnd});
      const WallLayer own = scaffoldLayer(out_, room_.lengths.back(), near_, needed());
      taken_.push_back(GroundBeside(line, own).whole());
    }
    addGap(wall, done, std::min(line.length, layer.to));
  }

  // The other wall of this building that stands nearest in front of a length.
  std::string wallAt(const Vec2& p) const {
    std::string name;
    double least = 1e300;
    for (const WallLine& line : out_.walls) {
      const double s = std::clamp(glm::dot(p - line.start, line.along), 0.0, line.length);
      const double distance = glm::distance(p, line.at(s));
      if (distance < least - 1e-9) {
        least = distance;
        name = "wall " + line.name;
      }
    }
    return name;
  }

  void addGap(size_t wall, double from, double to) {
    if (to - from < kShortest) return;
    const WallLine& line = out_.walls[wall];
    const WallLayer layer = band(wall, near_);
    // Opposite this wall another of the same building may have its scaffold: look past that.
    const Polygon strip = GroundBeside(line, layer).straight(from, to, 2 * needed());
    ScaffoldGap gap{wall, from, to, 2 * needed(), needed(), ""};
    const auto nearer = [&](const Regions& regions, const std::string& name) {
      for (const Region& region : regions) {
        for (const Vec2& p : region.outer) {
          const double distance = std::max(0.0, glm::dot(p - line.start, line.outward));
          if (distance >= gap.room - 1e-9) continue;
          gap.room = distance < near_ + 1e-3 ? 0 : distance;
          gap.beside = name.empty() ? wallAt(p) : name;
        }
      }
    };
    for (const Obstacle& obstacle : fixed_) {
      nearer(intersect({{strip, {}}}, {{obstacle.outline, {}}}), obstacle.name);
    }
    nearer(subtract({{strip, {}}}, {{out_.terrain.boundary, {}}}), "the boundary");
    if (!gap.beside.empty()) room_.gaps.push_back(gap);
  }

  const SettingOut& out_;
  ScaffoldRows rows_;
  double near_ = 0;
  Polygon eaves_;
  std::vector<Obstacle> fixed_;
  std::vector<Polygon> taken_;
  ScaffoldRoom room_;
};

}  // namespace

WallLayer scaffoldLayer(const SettingOut& settingOut, const ScaffoldLength& length, double near,
                        double far) {
  WallLayer layer = layerOf(settingOut, length.wall, -far, -near);
  if (!length.roundStart) layer.from = layer.startFront = layer.startBack = length.from;
  if (!length.roundEnd) layer.to = layer.endFront = layer.endBack = length.to;
  return layer;
}

Polygon scaffoldBand(const Job& job, const SettingOut& settingOut, const ScaffoldLength& length) {
  const double far = scaffoldRows(job).outer + kOutside;
  const WallLayer layer = scaffoldLayer(settingOut, length, nearestTo(job), far);
  return GroundBeside(settingOut.walls[length.wall], layer).whole();
}

ScaffoldRoom scaffoldRoom(const Job& job, const SettingOut& settingOut) {
  if (platforms(job, settingOut).empty()) return {};
  return RoomFinder(job, settingOut).find();
}

std::vector<BareSide> bareSides(const Job& job, const SettingOut& settingOut) {
  if (platforms(job, settingOut).empty()) return {};
  Regions covered{{settingOut.outline, {}}};
  for (const ScaffoldLength& length : scaffoldRoom(job, settingOut).lengths)
    covered = unite(covered, {{scaffoldBand(job, settingOut, length), {}}});
  const ScaffoldRows rows = scaffoldRows(job);
  std::vector<BareSide> bare;
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    const WallLine& wall = settingOut.walls[i];
    const Polygon strip{wall.at(0, -rows.outer), wall.at(wall.length, -rows.outer),
                        wall.at(wall.length, -rows.inner), wall.at(0, -rows.inner)};
    std::vector<Interval> here;
    for (const Region& region : subtract({{strip, {}}}, covered)) {
      Interval interval{1e300, -1e300};
      for (const Vec2& p : region.outer) {
        const double s = glm::dot(p - wall.start, wall.along);
        interval = {std::min(interval.from, s), std::max(interval.to, s)};
      }
      here.push_back(interval);
    }
    std::sort(here.begin(), here.end(),
              [](const Interval& a, const Interval& b) { return a.from < b.from; });
    for (const Interval& interval : here)
      if (interval.to - interval.from >= kShortest) bare.push_back({i, interval.from, interval.to});
  }
  return bare;
}

}  // namespace model
