// Render on the outer leaf, outside the outline: from its bell beads up to the top of the leaf or
// the slope of a gable, mitred at the corners, none behind a building that the wall joins.
#include <algorithm>

#include <glm/geometric.hpp>

#include "model/works/gable_profile.h"
#include "model/works/leaf_plan.h"
#include "model/works/parts.h"
#include "model/works/wall_names.h"

namespace model {

namespace {

constexpr double kShortest = 1e-3;  // metres: a shorter or lower piece is none
constexpr double kAtCorner = 0.010;

// A length of wall and the level at which its render begins.
struct Stretch {
  double from = 0, to = 0, bottom = 0;
};

class WallRender {
 public:
  WallRender(const Job& job, const SettingOut& settingOut, size_t wall)
      : job_(job),
        settingOut_(settingOut),
        wall_(wall),
        line_(settingOut.walls[wall]),
        layer_(layerOf(settingOut, wall, -job.walls.render, 0)) {}

  void build(Works& works) const {
    if (layer_.empty()) return;
    int part = 0;
    for (const Stretch& stretch : stretches()) {
      Solid solid = solidOf(stretch);
      if (solid.empty()) continue;
      ++part;
      Element element;
      element.id = layerId(line_, "render");
      element.name = layerName(line_, "render");
      if (part > 1) {
        element.id += "/part " + std::to_string(part);
        element.name += ", part " + std::to_string(part);
      }
      element.kind = ElementKind::Render;
      element.material = Material::Render;
      element.quantity = {volume(solid) / layer_.thickness(), Unit::SquareMetre};
      const Bounds extent = bounds(solid);
      const auto walls = static_cast<double>(settingOut_.walls.size());
      const double begin = static_cast<double>(wall_) / walls;
      element.placed =
          downward({StageKind::Render}, extent.high.z, extent.low.z, begin, begin + 1 / walls);
      element.solid = std::move(solid);
      element.wall = line_.name;
      add(works, std::move(element));
    }
  }

 private:
  // A building that stays and touches the render's place keeps it off, up to its own roof.
  std::vector<Stretch> besideBuildings() const {
    const Polygon strip{
        line_.at(layer_.startFront, layer_.outer), line_.at(layer_.endFront, layer_.outer),
        line_.at(layer_.endBack, layer_.inner), line_.at(layer_.startBack, layer_.inner)};
    std::vector<Stretch> found;
    for (const StandingBuilding& building : job_.site.buildings) {
      if (building.kind == BuildingKind::Demolish) continue;
      Polygon outline = building.outline;
      if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
      // Its roof rises less than this within the thickness of the render.
      const double top =
          levelsAlong(settingOut_.terrain, outline).low + building.height + job_.walls.render;
      for (const Region& region : intersect({{strip, {}}}, {{outline, {}}})) {
        Stretch stretch{1e300, -1e300, top};
        for (const Vec2& p : region.outer) {
          const double s = glm::dot(p - line_.start, line_.along);
          stretch.from = std::min(stretch.from, s);
          stretch.to = std::max(stretch.to, s);
        }
        // What stands in a mitre only keeps the corner off with it.
        stretch.from = std::min(stretch.from, layer_.to - kAtCorner);
        stretch.to = std::max(stretch.to, layer_.from + kAtCorner);
        found.push_back(stretch);
      }
    }
    return found;
  }

  std::vector<Stretch> stretches() const {
    const std::vector<Stretch> beside = besideBuildings();
    std::vector<double> ends{layer_.from, layer_.to};
    for (const Stretch& b : beside) {
      for (const double s : {b.from, b.to})
        if (s > layer_.from + kShortest && s < layer_.to - kShortest) ends.push_back(s);
    }
    std::sort(ends.begin(), ends.end());
    std::vector<Stretch> all;
    for (size_t i = 0; i + 1 < ends.size(); ++i) {
      Stretch stretch{ends[i], ends[i + 1], settingOut_.levels.renderBottom};
      const double middle = (stretch.from + stretch.to) / 2;
      for (const Stretch& b : beside)
        if (b.from < middle && middle < b.to) stretch.bottom = std::max(stretch.bottom, b.bottom);
      if (!all.empty() && all.back().bottom == stretch.bottom)
        all.back().to = stretch.to;
      else
        all.push_back(stretch);
    }
    return all;
  }

  Solid solidOf(const Stretch& stretch) const {
    WallLayer part = layer_;
    if (stretch.from > layer_.from) part.from = part.startFront = part.startBack = stretch.from;
    if (stretch.to < layer_.to) part.to = part.endFront = part.endBack = stretch.to;
    const std::vector<Rect> openings = openingsIn(settingOut_, part, wall_);
    if (line_.eaves == EavesKind::Gable) {
      const auto slope = rafterLineOn(settingOut_, part);
      if (lowestOf(slope) < stretch.bottom + kShortest) return {};
      return gableSolid(part, slope, stretch.bottom, openings);
    }
    const Levels& levels = settingOut_.levels;
    const double top = std::min(levels.outerLeafTop,
                                levels.eavesUnderside - job_.walls.render * settingOut_.tanPitch);
    if (top < stretch.bottom + kShortest || part.empty()) return {};
    return part.solid(fromRectangles({{part.from, stretch.bottom, part.to, top}}, openings));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  size_t wall_;
  const WallLine& line_;
  WallLayer layer_;
};

}  // namespace

void buildRender(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    WallRender(job, settingOut, wall).build(works);
  }
}

}  // namespace model
