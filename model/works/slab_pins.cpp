// The grid of level pins over a slab: lines beside its edges and between them, both ways.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/works/ground_floor.h"
#include "model/works/level_pins.h"

namespace model {

namespace {

// From the slab's edges, for the tamping beam and the boots beside it. Common practice, no source.
constexpr double kClear = 0.300;
constexpr double kSame = 1e-6;

size_t longestWall(const SettingOut& out) {
  size_t longest = 0;
  for (size_t i = 1; i < out.walls.size(); ++i) {
    if (out.walls[i].length > out.walls[longest].length + kSame) longest = i;
  }
  return longest;
}

// Along that wall or square to it, whichever runs more to the east.
Vec2 eastOf(const WallLine& wall) {
  Vec2 east = wall.along;
  const Vec2 across{-wall.along.y, wall.along.x};
  for (const Vec2& other : {-wall.along, across, -across}) {
    if (other.x > east.x + kSame) east = other;
  }
  return east;
}

template <typename Visit>
void eachEdge(const Regions& area, const Visit& visit) {
  const auto round = [&](const Polygon& ring) {
    for (size_t i = 0; i < ring.size(); ++i) visit(ring[i], ring[(i + 1) % ring.size()]);
  };
  for (const Region& region : area) {
    round(region.outer);
    for (const Polygon& hole : region.holes) round(hole);
  }
}

// Where lines that run square to `axis` lie along it: clear of every edge that runs as they do, and
// evenly between those, no more than `spacing` apart. Edges less than half of that on from another
// line have none of their own.
std::vector<double> gridLines(const Regions& area, const Vec2& axis, double spacing) {
  double low = 1e300, high = -1e300;
  std::vector<double> beside;
  eachEdge(area, [&](const Vec2& a, const Vec2& b) {
    low = std::min(low, glm::dot(a, axis));
    high = std::max(high, glm::dot(a, axis));
    if (glm::distance(a, b) < kSame) return;
    const Vec2 along = glm::normalize(b - a), inward{-along.y, along.x};
    if (std::abs(glm::dot(along, axis)) < kSame)
      beside.push_back(glm::dot(a + inward * kClear, axis));
  });
  low += kClear;
  high -= kClear;
  if (high < low - kSame) return {};
  std::sort(beside.begin(), beside.end());
  std::vector<double> kept{low};
  for (const double line : beside) {
    if (line - kept.back() >= spacing / 2 && high - line >= spacing / 2) kept.push_back(line);
  }
  if (high - low > kSame) kept.push_back(high);
  std::vector<double> lines{low};
  for (size_t i = 1; i < kept.size(); ++i) {
    const double length = kept[i] - kept[i - 1];
    const double spaces = std::max(1.0, std::ceil(length / spacing - kSame));
    for (double k = 1; k <= spaces; ++k) lines.push_back(kept[i - 1] + length * k / spaces);
  }
  return lines;
}

double clearOf(const Region& region, const Vec2& p) {
  double clear = distanceToOutline(region.outer, p);
  for (const Polygon& hole : region.holes) clear = std::min(clear, distanceToOutline(hole, p));
  return clear;
}

bool standsIn(const Regions& area, const Vec2& p) {
  return std::any_of(area.begin(), area.end(), [&](const Region& region) {
    return contains(region, p) && clearOf(region, p) > kClear - kSame;
  });
}

bool near(const Regions& area, const Vec2& p, double clear) {
  return std::any_of(area.begin(), area.end(), [&](const Region& region) {
    return contains(region, p) || clearOf(region, p) < clear;
  });
}

struct Slab {
  PinnedConcrete concrete;
  Regions area;
  double foot, top;
  std::string prefix;
};

class PinGrid {
 public:
  PinGrid(const Job& job, const SettingOut& out)
      : out_(out), spacing_(job.settingOut.pinSpacing), wall_(longestWall(out)) {}

  std::vector<LevelPin> over(const Slab& slab) const {
    const WallLine& wall = out_.walls[wall_];
    const Vec2 east = eastOf(wall), north{-east.y, east.x};
    const std::vector<double> columns = gridLines(slab.area, east, spacing_);
    const std::vector<double> rows = gridLines(slab.area, north, spacing_);
    // Concrete that carries the walls over a cellar is none of its slab's.
    const std::vector<HighConcrete> high = slab.concrete == PinnedConcrete::GroundSlab
                                               ? concreteAbove(out_, slab.foot)
                                               : std::vector<HighConcrete>{};
    std::vector<LevelPin> pins;
    for (size_t row = 0; row < rows.size(); ++row) {
      for (size_t column = 0; column < columns.size(); ++column) {
        const Vec2 at = east * columns[column] + north * rows[row];
        if (!standsIn(slab.area, at)) continue;
        if (std::any_of(high.begin(), high.end(), [&](const HighConcrete& concrete) {
              return near(concrete.area, at, kFromConcrete);
            }))
          continue;
        LevelPin pin;
        pin.name = slab.prefix + pinRowLetter(row) + std::to_string(column + 1);
        pin.concrete = slab.concrete;
        pin.at = at;
        pin.foot = slab.foot;
        pin.top = slab.top;
        pin.wall = wall_;
        pin.along = glm::dot(at - wall.start, wall.along);
        pin.inward = -glm::dot(at - wall.start, wall.outward);
        pins.push_back(std::move(pin));
      }
    }
    for (size_t i = 0; i < pins.size(); ++i)
      pins[i].share = static_cast<double>(i) / static_cast<double>(pins.size());
    return pins;
  }

 private:
  static constexpr double kFromConcrete = 0.020;  // a pin and a little

  const SettingOut& out_;
  double spacing_;
  size_t wall_;
};

}  // namespace

std::string pinRowLetter(size_t row) {
  static const std::string letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
  std::string name;
  for (size_t left = row + 1; left > 0; left = (left - 1) / letters.size())
    name.insert(name.begin(), letters[(left - 1) % letters.size()]);
  return name;
}

std::vector<LevelPin> slabPins(const Job& job, const SettingOut& settingOut) {
  const Levels& levels = settingOut.levels;
  const PinGrid grid(job, settingOut);
  std::vector<LevelPin> pins;
  if (job.cellar) {
    const Regions inside{{offsetMitred(settingOut.cellarOutline, job.cellar->wall), {}}};
    pins = grid.over({PinnedConcrete::CellarSlab, inside, levels.cellarSlabUnderside,
                      levels.cellarSlabTop, "K-"});
  }
  if (job.groundFloor.kind != GroundFloorKind::Slab) return pins;
  const Slab ground{PinnedConcrete::GroundSlab, groundSlabArea(settingOut), levels.slabUnderside,
                    levels.structuralFloor[0], ""};
  for (LevelPin& pin : grid.over(ground)) pins.push_back(std::move(pin));
  return pins;
}

}  // namespace model
