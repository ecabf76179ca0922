// Render on the outer leaf, outside the outline: from its bell beads up to the top of the leaf or
// the slope of a gable, mitred at the corners, none behind a building that the wall joins. It
// returns into the reveals, to the frames.
#include <algorithm>

#include <glm/geometric.hpp>

#include "model/bond/wall_corbel.h"
#include "model/walls/gable_profile.h"
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/parts.h"
#include "model/works/reveals.h"

namespace model {

namespace {

constexpr double kShortest = 1e-3;  // metres: a shorter or lower piece is none
constexpr double kAtCorner = 0.010;
constexpr double kUnderSlope = 0.020;  // as openings in a gable are kept under it

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
        layer_(layerOf(settingOut, wall, -job.walls.render, 0)) {
    if (layer_.empty()) return;
    const LeafPlan leaf = leafPlan(job, settingOut, wall, LeafSide::Outer);
    for (const SillPlan& sill : leaf.sills) bare_.push_back(sill.rect);
    for (const VentPlan& vent : leaf.vents) bare_.push_back(vent.rect);
    if (leaf.corbels.empty()) return;
    const LaidLeaf laid = layLeaf(job, settingOut, deriveLeafBonds(job, settingOut), leaf);
    for (const CorbelPlan& corbel : leaf.corbels)
      for (size_t band = 0; band < laid.bands.size(); ++band)
        if (const auto rect = corbelRect(corbel, laid, band)) bare_.push_back(*rect);
  }

  void build(Works& works) const {
    if (layer_.empty()) return;
    int part = 0;
    double high = -1e300, low = 1e300;
    for (const Stretch& stretch : stretches()) {
      Solid solid = solidOf(stretch);
      if (solid.empty()) continue;
      ++part;
      const std::string which = part > 1 ? "part " + std::to_string(part) : "";
      const Bounds extent = bounds(solid);
      high = std::max(high, extent.high.z);
      low = std::min(low, extent.low.z);
      put(which, which, std::move(solid), extent.high.z, extent.low.z, works);
    }
    if (part == 0) return;
    for (size_t i = 0; i < settingOut_.openings.size(); ++i) {
      if (settingOut_.openings[i].wall != wall_) continue;
      const std::string which = "reveals of " + openingLabel(settingOut_, i);
      put(which, which, revealsOf(settingOut_.openings[i]), high, low, works);
    }
  }

 private:
  // From the top of the wall down, wall by wall.
  void put(const std::string& id, const std::string& name, Solid solid, double high, double low,
           Works& works) const {
    if (solid.empty()) return;
    Element element;
    element.id = layerId(line_, "render") + (id.empty() ? "" : "/" + id);
    element.name = layerName(line_, "render") + (name.empty() ? "" : ", " + name);
    element.kind = ElementKind::Render;
    element.material = Material::Render;
    element.quantity = {volume(solid) / layer_.thickness(), Unit::SquareMetre};
    const auto walls = static_cast<double>(settingOut_.walls.size());
    const double begin = static_cast<double>(wall_) / walls;
    element.placed = downward({StageKind::Render}, high, low, begin, begin + 1 / walls);
    element.solid = std::move(solid);
    element.wall = line_.name;
    add(works, std::move(element));
  }

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
    std::vector<Rect> openings = openingsIn(settingOut_, part, wall_);
    openings.insert(openings.end(), bare_.begin(), bare_.end());
    if (line_.eaves == EavesKind::Gable) {
      const auto slope = gableLineOn(job_, settingOut_, part);
      if (lowestOf(slope) < stretch.bottom + kShortest) return {};
      return gableSolid(part, slope, stretch.bottom, openings);
    }
    const Levels& levels = settingOut_.levels;
    const double top = std::min(levels.outerLeafTop,
                                levels.eavesUnderside - job_.walls.render * settingOut_.tanPitch);
    if (top < stretch.bottom + kShortest || part.empty()) return {};
    return part.solid(fromRectangles({{part.from, stretch.bottom, part.to, top}}, openings));
  }

  // The highest that the render on a level-topped wall goes, or a gable's between two places.
  double topOver(double s0, double s1) const {
    if (line_.eaves == EavesKind::Gable)
      return lowestBetween(gableLineOn(job_, settingOut_, layer_), s0, s1) - kUnderSlope;
    return std::min(settingOut_.levels.outerLeafTop,
                    settingOut_.levels.eavesUnderside - job_.walls.render * settingOut_.tanPitch);
  }

  // Jambs and head, flush with the render outside and back to the frame, over the sill; through the
  // leaf where there is no frame. None where the opening takes the end of the wall with it.
  Solid revealsOf(const BuiltOpening& opening) const {
    const double t = layer_.thickness();
    const bool frame = hasFrame(opening);
    if (opening.s1 - opening.s0 < 3 * t) return {};
    const double top = std::min(opening.head, topOver(opening.s0, opening.s1));
    const bool window = opening.kind == OpeningKind::Window && frame;
    const double sill = opening.sill + (window ? kSillHeight : 0);
    std::vector<Rect> lining;
    for (const Stretch& stretch : stretches()) {
      const double bottom = std::max(stretch.bottom, sill);
      if (top < bottom + t + kShortest) continue;
      if (opening.s0 > std::max(stretch.from, layer_.from + kAtCorner) && opening.s0 < stretch.to)
        lining.push_back({opening.s0, bottom, opening.s0 + t, top});
      if (opening.s1 < std::min(stretch.to, layer_.to - kAtCorner) && opening.s1 > stretch.from)
        lining.push_back({opening.s1 - t, bottom, opening.s1, top});
      const Rect head{std::max(opening.s0, stretch.from), top - t, std::min(opening.s1, stretch.to),
                      top};
      if (top == opening.head && !head.empty()) lining.push_back(head);
    }
    WallLayer reveal;  // square through: a reveal has no mitres
    reveal.wall = &line_;
    reveal.outer = layer_.outer;
    reveal.inner = frame ? kReveal : settingOut_.faceDistances.outerLeafBack;
    reveal.from = -1e9;
    reveal.to = 1e9;
    return reveal.solid(fromRectangles(lining, {}));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  size_t wall_;
  const WallLine& line_;
  WallLayer layer_;
  std::vector<Rect> bare_;  // sills, air bricks, courses that stand out
};

}  // namespace

void buildRender(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    WallRender(job, settingOut, wall).build(works);
  }
}

}  // namespace model
